package lay

import (
	"math"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file: how a thing lies before it has a place.
//
//   - Its grain runs along the cloth. A fold that runs along the grain is taken for it.
//   - A piece on the fold lies there by its half, or is opened out and lies by the
//     whole; then it is its own mirror image.
//   - Of more than one of any other piece on single cloth every second is turned over,
//     so that they are left and right.

// Item is something to be cut.
type Item struct {
	Name string
	// Outline is closed, counter-clockwise, as it is drawn flat; half the piece where
	// it has a fold, all of it to one side of that. Without an area it is not laid.
	Outline plane.Path
	// Grain is the direction of the cloth's length on the outline, of length 1. It has
	// no arrow: the thing may be turned end for end.
	Grain plane.Point
	Count int        // how many are cut, at least 1
	Fold  plane.Path // two points: the straight edge that lies on the fold; nil where none
	Torn  bool       // a rectangle that is torn across the whole width of the cloth
}

// isLaid reports whether there is anything to be laid.
func (i Item) isLaid() bool { return i.Count > 0 && math.Abs(i.Outline.Area()) >= piece.LeastArea }

// foldsAlongGrain reports whether the fold runs along the grain.
func (i Item) foldsAlongGrain() bool {
	return math.Abs(i.foldDirection().Cross(i.Grain)) <= piece.AlongGrain
}

// foldDirection is the direction of the fold, of length 1, with the piece to the right
// of it.
func (i Item) foldDirection() plane.Point {
	along := i.Fold[1].Sub(i.Fold[0]).Unit()
	farthest := 0.0 // to the left
	for _, q := range i.Outline {
		if u := q.Sub(i.Fold[0]).Dot(along.Left()); math.Abs(u) > math.Abs(farthest) {
			farthest = u
		}
	}
	if farthest > 0 {
		return along.Mul(-1)
	}
	return along
}

// opened returns the whole of a thing, where half of it is drawn the two halves
// together. Its fold runs along the cloth, or its grain where there is none or the two
// are not the same.
func (i Item) opened() *toLay {
	along := i.Grain
	outline := i.Outline
	if i.Fold != nil {
		outline = i.wholeOutline()
		if i.foldsAlongGrain() {
			along = i.foldDirection()
		}
	}
	return newToLay(i.Name, outline, along)
}

// wholeOutline returns the outline of the whole of a piece of which the half is drawn.
// What lies between the ends of the fold comes to lie within it.
func (i Item) wholeOutline() plane.Path {
	ring := i.Outline[:len(i.Outline)-1]
	nearest := func(to plane.Point) int {
		best := 0
		for k, q := range ring {
			if q.Distance(to) < ring[best].Distance(to) {
				best = k
			}
		}
		return best
	}
	// With the piece to its right the fold runs against the outline.
	along := i.foldDirection()
	from, to := nearest(i.Fold[0]), nearest(i.Fold[1])
	if i.Fold[1].Sub(i.Fold[0]).Dot(along) < 0 {
		from, to = to, from
	}
	return piece.BothHalves(i.Outline, from, to, i.Fold[0], along.Left())
}

// cutPiece is a piece in all the ways it can be laid.
type cutPiece struct {
	count  int
	whole  *toLay
	half   *toLay // lies on the fold; nil where it has none along the grain
	double *toLay // the whole as it lies on folded cloth; nil where it is too wide for that
	opened bool   // it has a fold, but none to lie on
}

// cutFrom returns the ways in which a piece, of which the whole is given, can be laid
// on cloth, single and folded.
func (i Item) cutFrom(cloth, folded *skyline, whole *toLay) cutPiece {
	p := cutPiece{count: i.Count, whole: whole}
	if i.Fold != nil && i.foldsAlongGrain() {
		onFold := newToLay(i.Name, i.Outline, i.foldDirection())
		// A fold drawn a hair crooked may make the half wider than half the whole.
		if folded.fits(onFold.width) {
			onFold.onFold = true
			onFold.see(cloth, 1)
			p.half = onFold
		}
	}
	p.opened = i.Fold != nil && p.half == nil
	faces := 1
	if i.Fold == nil && i.Count > 1 {
		faces = 2
	}
	whole.see(cloth, faces)
	if folded.fits(whole.width) {
		p.double = &toLay{}
		*p.double = *whole
		p.double.faces = whole.faces[:1] // the layer below is the one turned over
	}
	return p
}

// toLay is a thing as it lies one way on the cloth.
type toLay struct {
	name          string
	path          plane.Path // with what runs along the cloth upward
	width, length float64    // across and along the cloth, mm
	onFold        bool       // the path is half of it, to the right of its fold
	// faces are laid in turn: as it is, and turned over where that matters. Each is seen
	// as it stands and end for end. What is torn has none: it is not laid by them.
	faces [][2]*profile
}

// newToLay turns an outline so that a direction, of length 1, runs along the cloth.
func newToLay(name string, outline plane.Path, along plane.Point) *toLay {
	turned := make(plane.Path, len(outline))
	for k, q := range outline {
		turned[k] = plane.Point{X: -q.Dot(along.Left()), Y: q.Dot(along)}
	}
	box := turned.Bounds()
	return &toLay{name: name, path: turned, width: box.Width(), length: box.Height()}
}

// see makes so many faces, 1 or 2.
func (t *toLay) see(cloth *skyline, faces int) {
	for over := range faces {
		t.faces = append(t.faces, [2]*profile{cloth.profileOf(t.turned(over, 0)), cloth.profileOf(t.turned(over, 1))})
	}
}

// turned returns the path turned over, if over is 1, and end for end, if end is 1.
// What lies on the fold and is turned end for end comes to lie on the other side of
// it, and there it looks as though it were turned upside down.
func (t *toLay) turned(over, end int) plane.Path {
	x, y := plane.Point{X: 1}, plane.Point{Y: 1}
	path := t.path
	if over == 1 {
		path = path.Mirrored(plane.Point{}, x)
	}
	if end == 1 {
		path = path.Mirrored(plane.Point{}, y)
		if !t.onFold {
			path = path.Mirrored(plane.Point{}, x)
		}
	}
	return path
}

// layPlace is a thing that has its place on the cloth.
type layPlace struct {
	thing     *toLay
	over, end int         // 1 where it is turned over, or end for end
	at        plane.Point // the lower left corner of its box
	upper     bool        // it is cut out of the upper layer only
}

// lowest returns where the kth of a thing lies lowest, and of its two ends the one
// that lies lower; false where there is no room for it.
func (t *toLay) lowest(cloth *skyline, k int) (p layPlace, ok bool) {
	look := cloth.lowest
	if t.onFold {
		look = cloth.lowestAtLeft
	}
	p = layPlace{thing: t, over: k % len(t.faces), at: plane.Point{Y: math.Inf(1)}}
	for end, profile := range t.faces[p.over] {
		if at, lower := look(profile, p.at.Y); lower {
			p.at, p.end, ok = at, end, true
		}
	}
	return p, ok
}

// profile is the thing as the skyline it is put into sees it.
func (p layPlace) profile() *profile { return p.thing.faces[p.over][p.end] }

// outline returns the thing where it lies.
func (p layPlace) outline() plane.Path {
	path := p.thing.turned(p.over, p.end)
	step := p.at.Sub(path.Bounds().Min)
	moved := make(plane.Path, len(path))
	for k, q := range path {
		moved[k] = q.Add(step)
	}
	return moved
}
