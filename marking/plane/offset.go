package plane

import (
	"math"
)

// Rules of this file. The offset of a path is what is left of the lines drawn
// beside each of its segments and round each of its corners once everything
// nearer to the path than the wanted distance is taken away:
//
//  1. bridge the hollows of the path that are crowded with points;
//  2. draw the raw line: every segment moved sideways, joined at the corners;
//  3. cut it wherever it crosses itself, and where it comes into reach of the
//     path's two ends, of its sharp corners or of its other side;
//  4. throw away every part that is nearer to the path than the distance;
//  5. walk from part to part over the places where they meet.
//
// hollow.go bridges, raw.go draws and prunes the raw line, parts.go does the rest. For n
// points that takes time in proportion to n log n as long as few lines cross each other
// beside any one place: so it is beside smooth edges and, once bridged, rough ones.

// The tolerances of an offset.
const (
	// rounding bounds how far apart, in mm, a place may lie that is worked out in
	// two ways: by so much an offset may be nearer to its path than the distance
	// asked for, and ends no farther apart are one place.
	rounding = 1e-6

	// roundness bounds how far outside the true arc the offset round a corner, or
	// over a bridge, may lie, in mm, and so how far inside another such arc it may
	// begin.
	roundness = 0.005

	// gentleTurn is the turn of a corner, in radians (4 degrees), below which
	// its sharp join lies so near to the round one (less than 0.07 % of the
	// distance beyond it) that there is nothing to choose between them.
	gentleTurn = 4 * math.Pi / 180

	// mitreLimit bounds how far a sharp corner may run out, in distances from
	// the corner of the path; a slit whose sides stand at less than 19 degrees
	// runs out farther and is rounded instead.
	mitreLimit = 6

	// cornerReach is how far from a corner, in distances, the path is looked
	// at to tell a corner from a roughness of the line: seen from there it
	// must still turn half as much.
	cornerReach = 0.25

	// sharpAtEnd is how far, in radians (60 degrees), a corner nearer to an end of the
	// path than it is looked at may turn and keep its point, which lies a sixth of the
	// distance out: nothing tells there a corner from the first of many teeth.
	sharpAtEnd = math.Pi / 3

	// islandLength is how long the parts cut off behind a place where the
	// offset meets itself must be, in distances, to be a region of their own
	// rather than crumbs beside a corner.
	islandLength = 2

	// tongueLength is how far behind such a place the path may run on, in
	// distances, and still be passed by without a word: as far as it does in
	// a corner that is as sharp as the mitre limit allows. Cloth that reaches
	// farther is a strap, not a corner.
	tongueLength = 1.2 * mitreLimit

	// tabLength, tabMouth and tabWidth tell a tab from a corner where the path runs
	// on less far: one that reaches farther than this behind the place, in
	// distances, whose mouth is wider than this, in distances, so that it is no
	// roughness, and whose middle and mouth differ by no more than this share. A
	// corner is half as wide there, a tab with straight sides as wide.
	tabLength = 2
	tabMouth  = 0.25
	tabWidth  = 0.75
)

// OffsetLine is the line beside a path.
type OffsetLine struct {
	Path Path
	// Pinched is true when the line meets itself somewhere and passes by what
	// lies behind that place, At, though it is more than a corner: a region
	// that would have a line of its own, or a strap or tab too narrow for one.
	// So it is where such a strap lies beyond one of its ends.
	Pinched bool
	At      Point
}

// Offset returns the line d mm to the left of the path, with both ends run out
// straight by run mm. Beside the path no point of it is nearer to the path than
// d, by more than a millionth of a millimetre (where one rounded corner passes
// into another: by more than 0.005 mm), and none is farther but where the path
// turns a corner away from it: there it stays sharp, up to six distances out,
// and is round beyond that. A roughness of the path much finer than d is no
// corner and is passed round at the distance d, or 0.005 mm more where it is crowded
// with points. Loops that would appear where the path bends tighter than d are gone. What
// is run out keeps no distance.
//
// At distance 0 it is the path itself with its ends run out. Where the path
// comes so near to one of its own ends that nothing beside that end keeps the
// distance, the line begins or ends where it first does. ok is false when
// nothing is left. d must not be negative. A path that crosses or touches itself has no side
// to keep the distance on: what comes of it is a line or none, and nothing is promised of it.
func Offset(p Path, d, run float64) (line OffsetLine, ok bool) {
	p = withoutRepeats(p)
	if len(p) < 2 {
		return OffsetLine{}, false
	}
	if d <= 0 {
		return OffsetLine{Path: runOut(p, p.StartDirection(), p.EndDirection(), run)}, true
	}
	source := NewTree(p)
	left, straps := withoutHollows(p, d)
	right, _ := withoutHollows(p.Reversed(), d)
	r := drawRaw(NewTree(left), d)
	r.prune(source)
	other := drawRaw(NewTree(right), d)
	other.prune(source)
	r.cut(other, source)
	r.test(source)
	line, ok = r.walk()
	if !ok || len(line.Path) < 2 { // a line that has shrunk to one place
		return OffsetLine{}, false
	}
	if len(straps) > 0 {
		line.Pinched, line.At = true, straps[0]
	}
	start, end := left.StartDirection(), left.EndDirection()
	// An end beside the end of the path runs out the way the path does, even
	// where a corner close by has trimmed off all that lay beside its last
	// segment; any other end goes straight on.
	if line.Path[0].Distance(r.path[0]) > rounding {
		start = line.Path.StartDirection()
	}
	if line.Path[len(line.Path)-1].Distance(r.path[len(r.path)-1]) > rounding {
		end = line.Path.EndDirection()
	}
	line.Path = runOut(line.Path, start, end, run).WithoutStraightPoints()
	return line, true
}

// withoutRepeats returns the path without points that repeat their
// predecessor: a segment needs a direction.
func withoutRepeats(p Path) Path {
	var q Path
	for _, a := range p {
		if len(q) == 0 || a.Distance(q[len(q)-1]) > touch {
			q = append(q, a)
		}
	}
	return q
}

// runOut returns the path with both ends run out straight, in the directions in
// which it sets out and arrives.
func runOut(p Path, start, end Point, run float64) Path {
	if run <= 0 {
		return p
	}
	q := make(Path, 0, len(p)+2)
	q = append(q, p[0].Sub(start.Mul(run)))
	q = append(q, p...)
	return append(q, p[len(p)-1].Add(end.Mul(run)))
}

// WithoutStraightPoints returns the path without points that lie on the line
// between their neighbours, as the cuts of straight segments do.
func (p Path) WithoutStraightPoints() Path {
	if len(p) < 3 {
		return p
	}
	q := Path{p[0]}
	for i := 1; i+1 < len(p); i++ {
		a, b := q[len(q)-1], p[i+1]
		if foot, _ := nearestOnSegment(a, b, p[i]); foot.Distance(p[i]) > touch {
			q = append(q, p[i])
		}
	}
	return append(q, p[len(p)-1])
}
