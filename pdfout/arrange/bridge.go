package arrange

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: where pages are joined no window is cut. A window across a join is drawn
// in parts, each square at both ends, hatched, and with an arrow of its own; the paper between
// them is left for a bridge. One that runs along a join would be lost in so wide a bridge: it
// keeps off the join, and as far from where it crosses as a bridge is wide, measured along it;
// one that lies on the join all along stays. The lines themselves, and holes, are as they are.
//
// A window is a closed line one side of which, beginning where the line begins or ends, has
// the tip of its arrow in its middle.

const (
	// joinBridge is the least of the paper left on either side of a join, in mm: more than the
	// overlap of two pages has beyond its trim line, and room for glue.
	joinBridge = 6.0
	// leastPart is the shortest part of a window, in mm, that is worth cutting.
	leastPart = 4.0
	// alongJoin is how many times as long as square across it a window may be in the bridge
	// of a join that it crosses: at 30 degrees; one that is longer runs along the join.
	alongJoin = 2.0
	// onSide bounds how far the tip of an arrow is from its window, in mm.
	onSide = 0.01
)

// window is an opening by the side that a pencil runs along, with the opening at its left.
type window struct {
	side  *plane.Tree
	wide  float64 // in mm
	arrow float64 // the length of its arrow, in mm
}

// windowOf returns the window of a closed line by its arrow; ok is false where the arrow is
// of another.
func windowOf(ring, arrow Line) (w window, ok bool) {
	path, tip := ring.Path(), arrow.Path()[len(arrow.Path())-1]
	if !ring.Bounds().Grown(onSide).Holds(tip) {
		return window{}, false
	}
	_, along, away := ring.Path().Nearest(tip)
	if away > onSide {
		return window{}, false
	}
	if along > ring.Length()/2 {
		path, along = path.Reversed(), ring.Length()-along
	}
	side := path.Between(0, 2*along)
	if path.Area() < 0 {
		side = side.Reversed()
	}
	return window{plane.NewTree(side), path[len(path)-2].Distance(path[0]), arrow.Length()}, true
}

// crossing is how a window lies at a join.
type crossing int

const (
	across crossing = iota // it leaves room for the bridge on either side
	along                  // it would be lost in that
)

// taken are the stretches of the window's side, from and to in mm, in the bridge of a join that
// it crosses so. The far side of a window, and its corners, lie no nearer to the join than they
// may.
func (w window) taken(join plane.Box, how crossing) (all [][2]float64) {
	off, more := joinBridge, 0.0
	if how == along {
		off, more = 0, joinBridge
	}
	for _, run := range w.side.Clip(join.Grown(off + w.wide)) {
		all = append(all, [2]float64{run.Start - more, run.Start + run.Path.Length() + more})
	}
	return all
}

// parts are the stretches of the window's side, from and to in mm, that are left beside some
// joins: all of it where the window lies on one.
func (w window) parts(joins []plane.Box) [][2]float64 {
	var taken, narrow [][2]float64
	for _, join := range joins {
		wide, off := w.taken(join, across), w.taken(join, along)
		narrow = append(narrow, off...)
		if slices.ContainsFunc(wide, func(t [2]float64) bool { return t[1]-t[0] > w.longest() }) {
			wide = off
		}
		taken = append(taken, wide...)
	}
	for _, kept := range [][][2]float64{taken, narrow} {
		if parts := w.besides(kept); len(parts) > 0 {
			return parts
		}
	}
	if w.side.Length() > w.longest() {
		return [][2]float64{{0, w.side.Length()}}
	}
	return nil
}

// longest is how long a window may be in the bridge of a join that it crosses, in mm.
func (w window) longest() float64 { return alongJoin * 2 * (joinBridge + w.wide) }

// besides are the stretches of the side beside some that are taken, but those too short to cut.
func (w window) besides(taken [][2]float64) (parts [][2]float64) {
	slices.SortFunc(taken, func(a, b [2]float64) int { return cmp.Compare(a[0], b[0]) })
	from := 0.0
	for _, t := range append(taken, [2]float64{w.side.Length(), math.Inf(1)}) {
		if t[0]-from >= leastPart {
			parts = append(parts, [2]float64{from, t[0]})
		}
		from = max(from, t[1])
	}
	return parts
}

// part draws a stretch of the window, with those of its strokes of hatching that lie in it.
func (w window) part(from, to float64, hatching []Line) []Line {
	side := w.side.Path().Between(from, to)
	beside, ok := plane.Offset(side, w.wide, 0)
	if !ok {
		return nil
	}
	path := slices.Concat(side.Reversed(), beside.Path)
	ring := NewLine(mark.Window, "", append(path, path[0]))
	at, along := side.At((to - from) / 2)
	lines := []Line{ring, NewLine(mark.DrawHere, "", plane.Path{at.Sub(along.Left().Mul(w.arrow)), at})}
	for _, stroke := range hatching {
		if !slices.ContainsFunc(stroke.Path(), func(q plane.Point) bool { return !ring.Holds(q) && !ring.Nearer(q, onSide) }) {
			lines = append(lines, stroke)
		}
	}
	return lines
}

// bridged returns the piece with its windows in parts where joins are.
func (p Piece) bridged(joins []plane.Box) Piece {
	of := func(role mark.Role) []Line {
		return slices.DeleteFunc(slices.Clone(p.Lines), func(l Line) bool { return l.Role != role })
	}
	arrows, hatching := of(mark.DrawHere), of(mark.Waste)
	whole := map[*plane.Tree]bool{} // what is in parts instead
	var parts []Line
	for _, ring := range of(mark.Window) {
		near := slices.DeleteFunc(slices.Clone(joins), func(join plane.Box) bool { return !join.Grown(joinBridge).Meets(ring.Bounds()) })
		if len(near) == 0 {
			continue
		}
		for _, arrow := range arrows {
			w, ok := windowOf(ring, arrow)
			if !ok {
				continue
			}
			own := slices.DeleteFunc(slices.Clone(hatching), func(l Line) bool { return !ring.Holds(l.At(l.Length() / 2)) })
			for _, l := range append(own, ring, arrow) {
				whole[l.Tree] = true
			}
			for _, part := range w.parts(near) {
				parts = append(parts, w.part(part[0], part[1], own)...)
			}
		}
	}
	if len(whole) > 0 {
		p.Lines = append(slices.DeleteFunc(slices.Clone(p.Lines), func(l Line) bool { return whole[l.Tree] }), parts...)
	}
	return p
}

// bridgeWindows leaves bridges of paper in the windows of all pieces where pages are joined.
func (s *Sheet) bridgeWindows() {
	if len(s.Joins) == 0 {
		return
	}
	var joins []plane.Box
	for _, j := range s.Joins {
		joins = append(joins, plane.EmptyBox().With(j.from).With(j.to))
	}
	s.Pieces = slices.Clone(s.Pieces)
	for i, p := range s.Pieces {
		s.Pieces[i] = p.bridged(joins)
	}
	s.Field = NewField(s.Pieces)
}
