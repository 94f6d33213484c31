package piece

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: the grain where the file says nothing, as a teacher of pattern
// drawing would put it (common practice).
//
//   - A fold of the cloth runs along the grain.
//   - A belt, a string or a tie is cut along its length.
//   - Another piece has its grain along its centre front or centre back, where an edge or
//     a line is called so or is a centre line.
//   - A piece whose two halves are alike has it down its middle. Where that is so both ways,
//     as of a rectangle, it runs along its length; but square to its hem, as of a skirt that
//     is wider than it is long, and a sleeve square to its cuff.
//   - Another sleeve has it square to its cuff, or to its hem.
//   - Then it runs along the longest stretch that is straight, whether that is an edge, a
//     part of one or several; but of those that are about as long along the one with more
//     square corners, for a centre is square to hem and waist, and a side slants. One that
//     is short beside the piece, a shoulder of a piece that is curved elsewhere, tells
//     nothing.
//   - Of what is left it runs upward as it is drawn.
//
// A straight edge that the grain runs along all the same is named, so that a maker finds
// it with her ruler.

const (
	// longNarrow is how many times as long as it is wide a belt, a string or a tie is, at
	// least (common practice).
	longNarrow = 4.0
	// leastSide is how much of the length of a piece a straight side takes up, at least,
	// that the grain is taken along.
	leastSide = 1.0 / 3
	// aboutAsLong is how much of the longest straight side another has, at least, that the
	// grain is taken along because it has more square corners.
	aboutAsLong = 0.75
	// squareCorner bounds the cosine of the angle of a square corner: two degrees off.
	squareCorner = 0.035
	// sameHalf bounds how far, in mm, two halves may lie off each other and count as
	// alike: a sixteenth of an inch, a step of the ruler.
	sameHalf = 25.4 / 16
	// BesideGrain bounds the sine of the angle at which a straight edge, or a fold of the
	// cloth, runs along a grain: half a degree, more than a drawing is off by chance.
	BesideGrain = 0.0087
	// alongLength bounds the sine of the angle between the sides of a long narrow piece
	// and its length: ten degrees, as of a tie that gets wider.
	alongLength = 0.17
	// oneLine bounds the sine of the angle between two stretches that are one straight
	// line: far less than two neighbouring parts of a drawn curve turn.
	oneLine = 0.0005
)

// side is a straight stretch of an outline.
type side struct {
	edge      string // the key of the edge that has most of it
	length    float64
	direction plane.Point // of length 1
	square    int         // how many of its two corners are square
}

// likelyGrain returns the grain where the file says nothing, for an outline of the piece.
// An edge that is straight when the piece is finished may not be so when it lies flat.
func (p *Piece) likelyGrain(outline Ring) Grain {
	if fold, ok := p.foldSide(outline); ok {
		return Grain{Direction: fold.direction}
	}
	main := p.mainSide(outline)
	if direction, how, ok := p.lengthOrMiddle(outline, main); ok {
		if main.length > 0 && math.Abs(main.direction.Cross(direction)) <= BesideGrain {
			direction, how = main.direction, "along "+main.edge
		}
		return Grain{Direction: direction, Guess: how}
	}
	if main.length > 0 {
		return Grain{Direction: main.direction, Guess: "along " + main.edge}
	}
	return Grain{Direction: plane.Point{Y: 1}, Guess: "straight up"}
}

// lengthOrMiddle returns the grain of a long narrow piece, of one with a centre or of one
// whose halves are alike; false where it is none of these.
func (p *Piece) lengthOrMiddle(outline Ring, main side) (direction plane.Point, how string, ok bool) {
	long, spread := outline.Path.LongWay()
	across := long.Left()
	middle := outline.Path.Middle()
	alikeLong, alikeAcross := spread && halvesAlike(outline.Path, middle, long), spread && halvesAlike(outline.Path, middle, across)
	us, vs := Frame{Along: long, Out: across}.Extent(outline.Path)
	narrow := spread && vs.To-vs.From >= longNarrow*(us.To-us.From)
	centre, called := p.centreSide(outline)
	cuff, sleeve := p.cuffSide(outline)
	switch {
	case narrow && !alikeLong && main.length > 0 && math.Abs(main.direction.Cross(long)) <= alongLength:
		return main.direction, "along " + main.edge, true
	case narrow:
		return long, "along its length", true
	case called:
		return centre.direction, "along " + centre.edge, true
	case alikeLong && alikeAcross && (p.hemsRunAlong(long) || sleeve && math.Abs(cuff.direction.Dot(long)) >= runsAlong):
		return across, "down its middle", true
	case alikeLong && alikeAcross:
		return long, "along its length", true
	case alikeLong:
		return long, "down its middle", true
	case alikeAcross:
		return across, "down its middle", true
	case sleeve:
		return cuff.direction.Left(), "square to " + cuff.edge, true
	}
	return plane.Point{}, "", false
}

// hemsRunAlong reports whether a piece has hems, and all of them run in some direction.
func (p *Piece) hemsRunAlong(direction plane.Point) bool {
	hems := 0
	for _, e := range p.Edges {
		if e.Hem == 0 {
			continue
		}
		if way := e.Given[len(e.Given)-1].Sub(e.Given[0]).Unit(); math.Abs(way.Dot(direction)) < runsAlong {
			return false
		}
		hems++
	}
	return hems > 0
}

var (
	sleeveWords = wordsOf(`sleeve`)
	// partWords are what is sewn to a sleeve, and is none.
	partWords = wordsOf(`cuff|band|binding|facing|frill|ruffle|placket|tab|tie|head`)
	cuffWords = wordsOf(`cuff|wrist|hem`)
)

// cuffSide returns the edge of a sleeve that is called its cuff, wrist or hem, or else has a
// hem, from corner to corner; false where there is none, or where two run different ways, as
// of a front with its sleeve cut in one.
func (p *Piece) cuffSide(outline Ring) (cuff side, ok bool) {
	name := p.Words()
	if !sleeveWords.MatchString(name) || partWords.MatchString(name) {
		return side{}, false
	}
	var called, hemmed []side
	for _, run := range outline.Runs() {
		switch e := p.Edges[run.Edge]; {
		case cuffWords.MatchString(wording.InWords(e.Key)):
			called = append(called, p.sideOf(run))
		case e.Hem > 0:
			hemmed = append(hemmed, p.sideOf(run))
		}
	}
	if len(called) == 0 {
		called = hemmed
	}
	for _, s := range called {
		if math.Abs(s.direction.Dot(called[0].direction)) < runsAlong {
			return side{}, false
		}
		if s.length > cuff.length {
			cuff = s
		}
	}
	return cuff, cuff.length > SamePoint
}

// halvesAlike reports whether a closed path is its own mirror image over a line through a
// place.
func halvesAlike(path plane.Path, place, along plane.Point) bool {
	tree := plane.NewTree(path)
	for _, q := range path.Mirrored(place, along.Left()) {
		if tree.Distance(q, 2*sameHalf) > sameHalf {
			return false
		}
	}
	return true
}

// foldSide returns the edge on the fold, where there is one and it is straight.
func (p *Piece) foldSide(outline Ring) (fold side, ok bool) {
	for _, run := range outline.Runs() {
		if p.Edges[run.Edge].OnFold && run.Path.Straightness() <= Straightness {
			return p.sideOf(run), true
		}
	}
	return side{}, false
}

// centreSide returns the longest straight edge that is called a centre, or else a straight
// line that is called so or is a centre line.
func (p *Piece) centreSide(outline Ring) (centre side, ok bool) {
	for _, run := range outline.Runs() {
		if s := p.sideOf(run); isCentre(s.edge) && run.Path.Straightness() <= Straightness && s.length > centre.length+SamePoint {
			centre = s
		}
	}
	for _, l := range p.Lines {
		if n := len(l.Path); centre.length == 0 && n > 1 && (l.Role == mark.Centre || isCentre(l.Key)) && l.Path.Straightness() <= Straightness {
			centre = sideBetween(l.Key, l.Path[0], l.Path[n-1])
		}
	}
	return centre, centre.length > 0
}

// centreForm is the name of a centre front or back, written out or as cf, c.b.
var centreForm = wording.FormOf(`centre|center|^c\.? ?[fb]\.?$`)

// isCentre reports whether a name is that of a centre front or back.
func isCentre(name string) bool { return centreForm.MatchString(wording.InWords(name)) }

// mainSide returns the straight stretch of an outline that tells most of its grain, which
// may be a whole edge, a part of one, or parts of several in one line. Its length is 0 where
// none is long beside the piece.
func (p *Piece) mainSide(outline Ring) side {
	all := append(p.straightEdges(outline), p.straightStretches(outline)...)
	longest := 0.0
	for _, s := range all {
		longest = max(longest, s.length)
	}
	box := outline.Path.Bounds()
	if longest < leastSide*max(box.Width(), box.Height()) {
		return side{}
	}
	var main side
	for _, s := range all {
		if s.length >= aboutAsLong*longest && (s.square > main.square || s.square == main.square && s.length > main.length+SamePoint) {
			main = s
		}
	}
	return main
}

// straightEdges returns the edges of an outline that are straight as far as a measured line
// is, with what they turn through to those beside them.
func (p *Piece) straightEdges(outline Ring) []side {
	var sides []side
	runs := outline.Runs()
	for k, run := range runs {
		if s := p.sideOf(run); run.Path.Straightness() <= Straightness {
			s.countSquare(runs[(k+len(runs)-1)%len(runs)].Path.EndDirection(), runs[(k+1)%len(runs)].Path.StartDirection())
			sides = append(sides, s)
		}
	}
	return sides
}

// straightStretches returns what of an outline runs straight on from segment to segment.
func (p *Piece) straightStretches(outline Ring) []side {
	path, n := outline.Path, len(outline.Edges)
	way := func(k int) plane.Point { return path[(k+n)%n+1].Sub(path[(k+n)%n]).Unit() }
	turns := func(k int) bool { // where segment k begins
		return math.Abs(way(k-1).Cross(way(k))) > oneLine || way(k-1).Dot(way(k)) < 0
	}
	first := 0
	for first < n && !turns(first) {
		first++
	}
	var sides []side
	for from := first; from < first+n; {
		to, longest := from+1, from // the segments from one to before the other
		for to < first+n && !turns(to) {
			if path[to%n].Distance(path[to%n+1]) > path[longest%n].Distance(path[longest%n+1]) {
				longest = to
			}
			to++
		}
		s := sideBetween(p.Edges[outline.Edges[longest%n]].Key, path[from%n], path[(to-1)%n+1])
		s.countSquare(way(from-1), way(to))
		sides = append(sides, s)
		from = to
	}
	return sides
}

// countSquare counts the square corners of a side between what runs up to it and away from it.
func (s *side) countSquare(before, after plane.Point) {
	for _, other := range []plane.Point{before, after} {
		if math.Abs(other.Dot(s.direction)) <= squareCorner {
			s.square++
		}
	}
}

// sideOf returns a run of an edge as a side.
func (p *Piece) sideOf(run EdgeRun) side {
	return sideBetween(p.Edges[run.Edge].Key, run.Path[0], run.Path[len(run.Path)-1])
}

// sideBetween returns a side between two places.
func sideBetween(edge string, from, to plane.Point) side {
	return side{edge: edge, length: from.Distance(to), direction: to.Sub(from).Unit()}
}
