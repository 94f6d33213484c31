package gauge

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file. The strip along an edge is too narrow to be named and held, so it has a
// handle on the side that lies on the cut edge: beyond it there is no cloth, and nothing is
// drawn there. Beside the handle at least half of the cutting line is left to be laid on the
// edge; across the handle it is a line, to which the edge is laid under it. The handle stands upright, so that what is written on it can be read, and stays clear
// of the strip, which may bend round it. Where it has no room there is none.
//
// What survives the cutting is inside the card: the side on the cut edge is hatched along its
// whole length, and the other is named, as are both ends.

const (
	handleHigh   = 22.0 // beyond the cutting line, in mm: three lines of writing
	handleClear  = 4.0  // between the handle and the strip beside it, in mm
	handleFoot   = 8.0  // of its sides, in mm, that may lie nearer to the strip they begin at
	handleLook   = 1.0  // how far apart its sides are looked at, in mm
	handleShare  = 0.5  // of the cutting line that it takes, at most
	handleStep   = 5.0  // by which a place for it is looked for, in mm
	laidApart    = 1.5  // from one stroke of the hatching to the next, in mm
	laidWide     = 2.0  // of the hatching along a side, in mm, at most
	laidShare    = 0.3  // of the strip, at most
	laidClear    = 0.8  // of its width that a stroke keeps, at its end, from any part of the side
	wideStrip    = 25.0 // of a strip that needs no handle, in mm
	leastNamed   = 75.0 // of an inner side on which the ends are named too, in mm
	endNameShare = 3    // into so many parts it is divided then
)

// handleWidths are those a handle may have, in mm, the best first.
func handleWidths() []float64 { return []float64{55, 45, 35} }

// finished returns a bare strip as it is cut out: with its handle, its hatching, and the
// names of its two ends, of which the first lies at the left.
func finished(m mark.Marking, allowance float64, ends [2]string) mark.Marking {
	outer, inner := m.Marks[0], m.Marks[2]
	outers, across := []mark.Mark{outer}, []mark.Mark(nil)
	if allowance < wideStrip {
		if with, line := withHandle(m.Outline, outer.Path); with != nil {
			outers, across = with, append(across, mark.Mark{Role: mark.Placement, Name: "cut edge", Path: line})
		}
	}
	whole := card(slices.Concat(outers, m.Marks[1:2], namedEnds(inner, ends), m.Marks[3:4]))
	whole.Marks = append(whole.Marks, across...)
	whole.Marks = append(whole.Marks, laidAlong(m.Outline, outer.Path, min(laidWide, laidShare*allowance))...)
	m.Outline, m.Marks = whole.Outline, append(whole.Marks, m.Marks[4:]...)
	return m
}

// laidAlong returns the hatching, so wide, along the first side of a card, which is laid on
// the cut edge: strokes of one length, at 45 degrees to the side wherever they stand. One that
// would come nearer to another part of the side, or leave the card, is left out.
func laidAlong(outline, side plane.Path, wide float64) []mark.Mark {
	card, laid := plane.NewTree(outline), plane.NewTree(side)
	var strokes []mark.Mark
	for at := laidApart / 2; at < laid.Length(); at += laidApart {
		from, along := side.At(at)
		to := from.Add(along.Add(along.Left()).Mul(wide))
		if card.Holds(to) && !laid.Nearer(to, laidClear*wide) {
			strokes = append(strokes, mark.Mark{Role: mark.Laid, Path: plane.Path{from, to}})
		}
	}
	return strokes
}

// namedEnds returns the inner side of a strip, which runs from right to left, with its ends
// named where it is long enough.
func namedEnds(inner mark.Mark, ends [2]string) []mark.Mark {
	long := inner.Path.Length()
	if long < leastNamed {
		return []mark.Mark{inner}
	}
	at := func(k int) float64 { return long * float64(k) / endNameShare }
	names := []string{ends[1], inner.Name, ends[0]}
	var parts []mark.Mark
	for k, name := range names {
		parts = append(parts, mark.Mark{Role: mark.Cut, Name: name, Path: inner.Path.Between(at(k), at(k+1))})
	}
	for k := 1; k < len(parts); k++ { // they meet to the last digit
		parts[k].Path[0] = parts[k-1].Path[len(parts[k-1].Path)-1]
	}
	return parts
}

// withHandle returns the outer side of a strip, whose outline is given, with a handle, and
// the line across the handle; nil where there is no room for one.
func withHandle(outline, outer plane.Path) (sides []mark.Mark, across plane.Path) {
	strip, side := plane.NewTree(outline), plane.NewTree(outer)
	box := outer.Bounds()
	for _, wide := range handleWidths() {
		if wide > handleShare*outer.Length() {
			continue
		}
		for away := 0.0; away <= (box.Width()-wide)/2; away += handleStep {
			for _, x := range []float64{box.Centre().X - away, box.Centre().X + away} {
				if sides, across := handleAt(strip, side, x-wide/2, x+wide/2); sides != nil {
					return sides, across
				}
			}
		}
	}
	return nil, nil
}

// handleAt returns the outer side with a handle between two places across, and the line
// across that; nil where it would not lie clear.
func handleAt(strip, side *plane.Tree, left, right float64) (sides []mark.Mark, across plane.Path) {
	from, ok := seenFromBelow(side, left)
	to, found := seenFromBelow(side, right)
	if !ok || !found || to <= from || from < handleClear || to > side.Length()-handleClear || to-from > handleShare*side.Length() {
		return nil, nil
	}
	outer := side.Path()
	base := outer.Between(from, to)
	box, last := base.Bounds(), len(base)-1
	foot := box.Min.Y - handleHigh
	handle := plane.Path{base[0], {X: base[0].X, Y: foot}, {X: base[last].X, Y: foot}, base[last]}
	tree := plane.NewTree(handle)
	if box.Min.X < base[0].X-handleClear || box.Max.X > base[last].X+handleClear {
		return nil, nil
	}
	for at := handleFoot; at <= tree.Length()-handleFoot; at += handleLook {
		if q := tree.At(at); strip.Nearer(q, handleClear) || strip.Holds(q) {
			return nil, nil
		}
	}
	before, after := outer.Between(0, from), outer.Between(to, side.Length())
	before[len(before)-1], after[0] = base[0], base[last]
	sides = []mark.Mark{{Role: mark.Cut, Path: before}}
	for k := 1; k < len(handle); k++ {
		sides = append(sides, cutSide("", handle[k-1], handle[k]))
	}
	return append(sides, mark.Mark{Role: mark.Cut, Path: after}), base
}

// seenFromBelow returns how far along a side the place is that is seen from below at x; ok
// is false where there is none.
func seenFromBelow(side *plane.Tree, x float64) (along float64, ok bool) {
	box := side.Bounds().Grown(1)
	line := plane.NewTree(plane.Path{{X: x, Y: box.Min.Y}, {X: x, Y: box.Max.Y}})
	lowest := line.Length()
	for _, c := range plane.Crossings(line, side) {
		if c.A <= lowest {
			lowest, along, ok = c.A, c.B, true
		}
	}
	return along, ok
}
