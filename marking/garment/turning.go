package garment

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file. A line turns at its corners and along its curves. It turns sharply
// where it does so within cornerWithin, by much, and by much more than it does on either
// side of that; all other turning is a curve's. A curve is a stretch that turns one way and
// is not broken by a straight length much longer than the steps it is drawn with; what turns
// the other way beside it, as the point between two scallops does, is none of it. What a
// curve turns by is told by its steps, and by half a step more at either end, where no
// corner of two steps tells it.
//
// Roughness is taken out first: the to and fro of a line that was traced would add up to
// turns, outward and hollow alike, that are on no cloth.

const (
	// leastCorner is how far a line must turn, in radians (30 degrees), for something
	// to be laid in a corner rather than eased round.
	leastCorner = 30 * math.Pi / 180
	// cornerWithin bounds the length of line, in mm, over which a corner may turn
	// that is drawn with more points than one.
	cornerWithin = 2
	// sharper is how many times as far a corner turns as the line does to either side
	// of it, within cornerWithin or a step of a curve; what turns more evenly is one.
	sharper = 2
	// noTurn bounds the turn, in radians, of a point that stands on a straight line.
	noTurn = 1e-5
	// gentlePoint is the turn, in radians (5 degrees), from which on a point may be
	// the first or last of a corner: smooth curves of more than 10 mm radius are drawn
	// with points of less.
	gentlePoint = 5 * math.Pi / 180
	// roughness bounds how far a line that was traced strays from the one that was
	// meant, in mm, and how far a curve lies from the steps that it is drawn with: of
	// longer steps it is a line of many corners.
	roughness = 0.75
	// straightGap is how many times as long as the steps beside it a straight length is
	// that parts two curves.
	straightGap = 3
)

// turning is a corner or a curve of a line.
type turning struct {
	angle  float64 // in radians, left above 0, as at a corner that points out of a piece
	length float64 // of line that turns, in mm; 0 for a corner
	radius float64 // the least over which a curve turns by leastCorner, in mm; endless where it turns by less
}

// sharp reports whether it is a corner.
func (t turning) sharp() bool { return t.length == 0 }

// point is where a line turns from one step into the next.
type point struct {
	angle         float64 // in radians, left above 0
	before, after float64 // the lengths of the two steps
	at            float64 // along the line
}

// step is the length of a curve that a point stands for: half a step on either side, of the
// shorter of the two, for a longer one is straight.
func (p point) step() float64 { return min(p.before, p.after) }

// bit is a little of a curve: what it turns by, in radians, and how long it is.
type bit struct{ angle, length float64 }

// backward is the point of a line that is gone along the other way.
func (p point) backward() point { return point{p.angle, p.after, p.before, p.at} }

// ending is what a curve has between the middle of the last step between its points and its
// end, beside what its last point turns by: nothing where that turns too far, or its steps
// are too long, for those of a curve. A last step that is shorter than the one before it may
// be cut from one as long, as where a line ends at the crossing with its neighbour: its
// point then turns as between whole steps, and the point before tells how much of that is
// beyond the end.
func ending(points []point) bit {
	last := points[len(points)-1]
	if math.Abs(last.angle) >= leastCorner || last.step() > longestStep(last.angle) {
		return bit{}
	}
	if last.after >= last.before || len(points) == 1 {
		return bit{last.angle * last.step() / (last.before + last.after), last.step() / 2}
	}
	whole, cut := math.Abs(last.angle)*2/(last.before+last.after), math.Abs(last.angle)/last.before
	before := points[len(points)-2]
	bend := max(cut, min(whole, 2*math.Abs(before.angle)/(before.before+before.after)))
	return bit{math.Copysign(bend*(last.before/2+last.after), last.angle) - last.angle, last.before / 2}
}

// beginning is what a curve has before its first point, as ending behind its last.
func beginning(points []point) bit {
	first := points[0].backward()
	if len(points) == 1 {
		return ending([]point{first})
	}
	return ending([]point{points[1].backward(), first})
}

// longestStep is how long the steps of a curve may be, in mm, that turns by an angle from one
// to the next, for it to lie within roughness of them: an arc that turns by a over a chord c
// lies a x c / 8 from its middle.
func longestStep(angle float64) float64 { return 8 * roughness / math.Abs(angle) }

// turnings returns the corners and curves of a line, in its order; of a closed one from
// somewhere on.
func turnings(line plane.Path) []turning {
	line = line.WithoutRoughness(roughness).WithoutStraightPoints()
	closed := line.Closed()
	if closed {
		line = begunWithin(line)
	}
	points := pointsOf(line)
	var all []turning
	owed := 0.0 // what a curve beside the last corner has of the corner's turn
	for i := 0; i < len(points); {
		corner, next := cornerAt(points, i)
		if next > i {
			all = append(all, turning{angle: corner - owed})
			i, owed = next, 0
			continue
		}
		end := i + 1
		for end < len(points) {
			if _, next := cornerAt(points, end); next > end {
				break
			}
			end++
		}
		first, last := beginning(points[i:end]), ending(points[i:end])
		if i > 0 {
			all[len(all)-1].angle -= first.angle
		} else if closed {
			first = bit{}
		}
		if owed = last.angle; end == len(points) && closed {
			last = bit{}
		}
		all = append(all, curvesOf(points[i:end], first, last)...)
		i = end
	}
	return all
}

// begunWithin returns a closed line begun in the middle of its longest step, so that no corner
// lies over its beginning, nor a curve where the line has a straight length.
func begunWithin(line plane.Path) plane.Path {
	longest := 1
	for i := 1; i < len(line); i++ {
		if line[i].Distance(line[i-1]) > line[longest].Distance(line[longest-1]) {
			longest = i
		}
	}
	middle := line[longest-1].Toward(line[longest], 0.5)
	begun := plane.Path{middle}
	begun = append(begun, line[longest:]...)
	begun = append(begun, line[1:longest]...)
	return append(begun, middle)
}

// pointsOf returns where a line turns.
func pointsOf(line plane.Path) []point {
	var points []point
	walked := 0.0
	for i := 1; i+1 < len(line); i++ {
		in, out := line[i].Sub(line[i-1]), line[i+1].Sub(line[i])
		walked += in.Length()
		if angle := plane.Turn(in, out); math.Abs(angle) > noTurn {
			points = append(points, point{angle, in.Length(), out.Length(), walked})
		}
	}
	return points
}

// cornerAt returns by how much a line turns at the corner that begins at point i, and the
// point behind it; i itself where none begins there. What turns the other way ends a corner,
// and is not set against what turns beside it.
func cornerAt(points []point, i int) (angle float64, next int) {
	if math.Abs(points[i].angle) < gentlePoint {
		return 0, i
	}
	way := math.Copysign(1, points[i].angle)
	sum := 0.0
	for k := i; k < len(points) && points[k].at-points[i].at <= cornerWithin; k++ {
		if sum += points[k].angle; way*sum > way*angle && way*points[k].angle >= gentlePoint {
			angle, next = sum, k+1
		}
	}
	if math.Abs(angle) < leastCorner {
		return 0, i
	}
	beside := max(cornerWithin, longestStep(angle))
	before, after := 0.0, 0.0 // the most that it turns the same way beside the corner
	sum = 0
	for k := i - 1; k >= 0 && points[i].at-points[k].at <= beside; k-- {
		sum += points[k].angle
		before = max(before, way*sum)
	}
	sum = 0
	for k := next; k < len(points) && points[k].at-points[next-1].at <= beside; k++ {
		sum += points[k].angle
		after = max(after, way*sum)
	}
	if max(before, after) > math.Abs(angle)/sharper {
		return 0, i
	}
	return angle, next
}

// curvesOf divides what lies between two corners of a line, or its ends, into curves: first
// and last are what it has outside of its points.
func curvesOf(points []point, first, last bit) []turning {
	var all []turning
	begin := 0
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		if a.angle*b.angle < 0 || b.before > straightGap*max(a.step(), b.step()) {
			all = append(all, curveOf(points[begin:i], first, ending(points[begin:i])))
			begin, first = i, beginning(points[i:])
		}
	}
	return append(all, curveOf(points[begin:], first, last))
}

// curveOf returns a curve of points that turn one way, and what it has outside of them.
func curveOf(points []point, first, last bit) turning {
	t := turning{angle: first.angle + last.angle, length: first.length + last.length, radius: math.Inf(1)}
	from, angle, long := 0, 0.0, 0.0 // the shortest part up to here that turns by leastCorner
	for _, p := range points {
		t.angle, t.length = t.angle+p.angle, t.length+p.step()
		angle, long = angle+math.Abs(p.angle), long+p.step()
		for least := points[from]; angle-math.Abs(least.angle) >= leastCorner; least = points[from] {
			angle, long = angle-math.Abs(least.angle), long-least.step()
			from++
		}
		if angle >= leastCorner {
			t.radius = min(t.radius, long/angle)
		}
	}
	return t
}
