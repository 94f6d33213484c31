package marking

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A plain lay shows how much cloth will do. It promises no
// least cloth: a patient maker can often push pieces closer. From the end of the
// cloth on:
//
//   - First comes what is torn, from single cloth. A torn strip runs from selvage to
//     selvage and is as long, along the cloth, as the longest thing that comes out of
//     it. The longest are torn first; what is as long or less, and still fits beside
//     them, comes out of the same strip.
//   - Then the cloth is folded lengthwise, selvage on selvage. A piece with an edge on
//     the fold lies with it there, where that edge runs along the grain. Of any other
//     piece two are cut at a time, one out of each layer: a left and a right.
//   - Then comes single cloth again, for what is left: the odd one of three or five,
//     what is wider than the folded cloth, and a piece whose fold does not run along
//     the grain, which is opened out. Of more than one of a piece without a fold every
//     second is turned over, so that these too are left and right.
//   - The grain of every piece runs along the cloth. A piece may be turned end for end,
//     where it can lie lower that way: the cloth has neither nap nor a pattern that
//     goes one way.
//   - On each part the pieces are laid in turn, the longest along the cloth first, and
//     as they stand in the file where they are equally long. Each lies as near to the
//     end of the cloth as those before it let it, and then as far left; but nothing is
//     put into a gap behind another piece.
//
// That pieces are cut two at a time from folded cloth, and that narrow cloth is torn,
// is common practice.

// Lay is a plain lay of everything that is cut from the cloth. Without a width of
// cloth it is empty, and without anything to cut it has no parts.
type Lay struct {
	Width   float64   // of the cloth between its selvages, mm
	Length  float64   // that the lay takes along the cloth, mm
	Parts   []LayPart // one after another along the cloth, from its end; none is empty
	TooWide []string  // names of what is wider than the cloth, and so is not laid; each once
}

// LayPart is a stretch of cloth that lies one way.
type LayPart struct {
	Folded   bool    // lengthwise, selvage on selvage: two layers, half as wide
	From, To float64 // along the cloth, mm; each part begins where the one before it ends
	Pieces   []LaidPiece
}

// LaidPiece is one thing as it lies on the cloth. On folded cloth it stands for two
// layers, or lies on the fold.
type LaidPiece struct {
	Name string
	// Outline is closed and runs counter-clockwise, in mm; x across the cloth from the
	// fold, or from the left selvage on single cloth, y along it from the end of the
	// whole lay.
	Outline plane.Path
	OnFold  bool // the outline is half of the piece, and the other half the layer below
}

// layItem is something to be cut.
type layItem struct {
	name string
	// outline is closed, counter-clockwise, as it is drawn flat; half the piece where
	// it has a fold, all of it to one side of that. Without an area it is not laid.
	outline plane.Path
	// grain is the direction of the cloth's length on the outline, of length 1. It has
	// no arrow: the thing may be turned end for end.
	grain plane.Point
	count int        // how many are cut, at least 1
	fold  plane.Path // two points: the straight edge that lies on the fold; nil where none
	torn  bool       // a rectangle that is torn across the whole width of the cloth
}

const (
	// scissorsRoom is how far apart pieces lie at least, in mm, so that each can be cut
	// out without a nick in the next: an eighth of an inch (common practice). What is
	// torn needs none, nor does a fold or a selvage.
	scissorsRoom = 25.4 / 8

	// layStep is how finely a piece is shifted across the cloth, in mm: by a sixteenth
	// of an inch, a step of the ruler, two of which are the room for scissors. Only on
	// cloth wider than any that is woven, beyond 6 m, the skyline takes wider steps.
	layStep = 25.4 / 16

	// alongGrain bounds the sine of the angle between the grain and a fold that runs
	// along it: half a degree, more than a drawing is off by chance. Such a piece is
	// laid by its fold.
	alongGrain = 0.0087
)

// layOut lays everything out on cloth of a width in mm. It lays nothing where that is
// 0 or less.
func layOut(items []layItem, width float64) Lay {
	if !(width > 0) {
		return Lay{}
	}
	lay := Lay{Width: width}
	double := plane.NewSkyline(width/2, layStep, scissorsRoom)
	single := plane.NewSkyline(width, layStep, scissorsRoom)
	var torn, onDouble, onSingle []toLay
	for _, item := range items {
		if item.count < 1 || math.Abs(item.outline.Area()) < leastArea {
			continue
		}
		open := item.fold != nil && (item.torn || !item.foldsAlongGrain())
		if open {
			item = item.opened()
		}
		path := item.alongCloth()
		box := path.Bounds()
		one := toLay{name: item.name, length: box.Height(), count: item.count, sides: []plane.Path{path}}
		switch {
		case item.fold != nil && double.Fits(box.Width()):
			one.onFold = true
			onDouble = append(onDouble, one)
		case item.fold != nil || !single.Fits(box.Width()):
			// Half a piece too wide for half the cloth is too wide for all of it too.
			if !slices.Contains(lay.TooWide, item.name) {
				lay.TooWide = append(lay.TooWide, item.name)
			}
		case item.torn:
			torn = append(torn, one)
		case open: // it is its own mirror image
			onSingle = append(onSingle, one)
		case double.Fits(box.Width()):
			pair := one
			pair.count /= 2
			one.count %= 2
			onDouble, onSingle = append(onDouble, pair), append(onSingle, one)
		default:
			one.sides = append(one.sides, path.Mirrored(plane.Point{}, plane.Point{X: 1}))
			onSingle = append(onSingle, one)
		}
	}
	lay.add(false, tear(torn, single))
	double.FillTo(lay.Length)
	lay.add(true, nest(onDouble, double))
	room := 0.0 // to what was cut from the folded cloth; what is torn needs none
	if n := len(lay.Parts); n > 0 && lay.Parts[n-1].Folded {
		room = scissorsRoom
	}
	single.FillTo(lay.Length + room)
	lay.add(false, nest(onSingle, single))
	return lay
}

// add adds a part to the end of the lay; nothing where there is nothing on it.
func (l *Lay) add(folded bool, pieces []LaidPiece) {
	if len(pieces) == 0 {
		return
	}
	part := LayPart{Folded: folded, From: l.Length, Pieces: pieces}
	for _, p := range pieces {
		l.Length = max(l.Length, p.Outline.Bounds().Max.Y)
	}
	part.To = l.Length
	l.Parts = append(l.Parts, part)
}

// foldsAlongGrain reports whether the fold runs along the grain.
func (i layItem) foldsAlongGrain() bool {
	return math.Abs(i.foldDirection().Cross(i.grain)) <= alongGrain
}

// foldDirection is the direction of the fold, of length 1, with the piece to the right
// of it.
func (i layItem) foldDirection() plane.Point {
	along := i.fold[1].Sub(i.fold[0]).Unit()
	farthest := 0.0 // to the left
	for _, q := range i.outline {
		if u := q.Sub(i.fold[0]).Dot(along.Left()); math.Abs(u) > math.Abs(farthest) {
			farthest = u
		}
	}
	if farthest > 0 {
		return along.Mul(-1)
	}
	return along
}

// opened returns the whole of a piece of which the half is drawn. What lies between
// the ends of the fold comes to lie within it.
func (i layItem) opened() layItem {
	ring := i.outline[:len(i.outline)-1]
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
	from, to := nearest(i.fold[0]), nearest(i.fold[1])
	if i.fold[1].Sub(i.fold[0]).Dot(along) < 0 {
		from, to = to, from
	}
	ring = slices.Concat(ring[from:], ring[:from])
	half := ring[:(to-from+len(ring))%len(ring)+1]
	i.outline = bothHalves(half, i.fold[0], along.Left())
	i.fold = nil
	return i
}

// alongCloth returns the outline turned so that the grain runs along y: along the
// fold where there is one, with the piece to the right of it.
func (i layItem) alongCloth() plane.Path {
	along := i.grain
	if i.fold != nil {
		along = i.foldDirection()
	}
	turned := make(plane.Path, len(i.outline))
	for k, q := range i.outline {
		turned[k] = plane.Point{X: -q.Dot(along.Left()), Y: q.Dot(along)}
	}
	return turned
}

// toLay is a thing that is laid some number of times on one part of the lay.
type toLay struct {
	name   string
	length float64      // along the cloth, mm
	count  int          // may be 0
	sides  []plane.Path // laid in turn: the thing as it is, and turned over if that matters
	onFold bool
}

// longestFirst sorts by length along the cloth. What differs by rounding alone stays
// in order.
func longestFirst(all []toLay) {
	slices.SortStableFunc(all, func(a, b toLay) int {
		return cmp.Compare(math.Round(b.length/samePoint), math.Round(a.length/samePoint))
	})
}

// tear lays what is torn, in strips across the whole cloth.
func tear(all []toLay, cloth *plane.Skyline) []LaidPiece {
	longestFirst(all)
	type strip struct{ at, taken float64 }
	var strips []strip
	var laid []LaidPiece
	end := 0.0
	for _, one := range all {
		shape := cloth.Profile(one.sides[0])
		for range one.count {
			fits := func(s strip) bool { return cloth.Fits(s.taken + shape.Width()) }
			k := slices.IndexFunc(strips, fits)
			if k < 0 {
				k = len(strips)
				strips = append(strips, strip{at: end})
				end += one.length
			}
			laid = append(laid, LaidPiece{Name: one.name, Outline: shape.At(plane.Point{X: strips[k].taken, Y: strips[k].at})})
			strips[k].taken += shape.Width()
		}
	}
	return laid
}

// nest lays pieces on the cloth, each as near to its end as it goes.
func nest(all []toLay, cloth *plane.Skyline) []LaidPiece {
	longestFirst(all)
	var laid []LaidPiece
	for _, one := range all {
		lowest := cloth.Lowest
		if one.onFold {
			lowest = cloth.LowestAtLeft
		}
		var sides [][2]*plane.Profile // as it is, and end for end
		for _, path := range one.sides {
			sides = append(sides, [2]*plane.Profile{cloth.Profile(path), cloth.Profile(one.endForEnd(path))})
		}
		for k := range one.count {
			side := sides[k%len(sides)]
			shape := side[0]
			at, _ := lowest(shape, math.Inf(1)) // there is one: layOut gives only what fits
			if other, lower := lowest(side[1], at.Y); lower {
				shape, at = side[1], other
			}
			cloth.Put(shape, at)
			laid = append(laid, LaidPiece{Name: one.name, Outline: shape.At(at), OnFold: one.onFold})
		}
	}
	return laid
}

// endForEnd returns an outline turned end for end. What lies on the fold comes to lie
// on the other side of it, and there it looks as though it were turned upside down.
func (t toLay) endForEnd(path plane.Path) plane.Path {
	if t.onFold {
		return path.Mirrored(plane.Point{}, plane.Point{Y: 1})
	}
	turned := make(plane.Path, len(path))
	for k, q := range path {
		turned[k] = q.Mul(-1)
	}
	return turned
}
