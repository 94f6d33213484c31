package folded

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// All returns every piece of a pattern, in the order of the file, as it looks folded.
func All(pattern *garment.Pattern, halves mark.Halves) []mark.Pressed {
	var all []mark.Pressed
	for i := range pattern.Pieces {
		all = append(all, Of(&pattern.Pieces[i], pattern.Unit, halves))
	}
	return all
}

// Of returns a piece as it looks when its tucks and pleats are sewn and pressed. Lengths that its
// notes name are in a unit.
func Of(p *piece.Piece, unit length.Unit, halves mark.Halves) mark.Pressed {
	w := newWork(p, halves)
	c, ok := w.folded()
	if !ok {
		w.leaveUnfolded()
		c, _ = w.folded()
	}
	m := mark.Pressed{Key: p.Key, Name: p.Name, Halves: w.halves, Outline: w.outline(), Sewn: w.sewn(), Flat: w.flat()}
	pile := newPile(c.parts, w.frame())
	m.Layers, m.Counts = pile.layers(append(places(m.Outline, w.groups), w.pleatPlaces()...))
	outline := plane.NewTree(m.Outline)
	slices.SortStableFunc(c.lines, func(a, b line) int { return cmp.Compare(a.level, b.level) })
	for _, l := range c.lines {
		for _, seen := range pile.seen(l) {
			switch {
			case seen.kind == fullness:
				m.Fullness = append(m.Fullness, inside(outline, seen.Path)...)
				continue
			case seen.kind == edge:
				m.Shadows = append(m.Shadows, shadows(seen, m.Outline)...)
			}
			m.Marks = append(m.Marks, seen.Mark)
		}
	}
	m.Marks = append(m.Marks, w.onTop()...)
	m.Notes = w.notes(unit)
	return m
}

// mostParts bounds into how many parts the folds of a piece may part its cloth: as many as a
// hundred tucks one way and fifty the other make. More would take a browser long, and nobody
// could tell them apart.
const mostParts = 50_000

// folded returns the cloth with all folds in; ok is false where they would part it into too
// many parts.
func (w *work) folded() (c cloth, ok bool) {
	c = w.begin()
	for _, g := range w.groups {
		if len(c.parts)*len(g.Folding.Cells()) > mostParts {
			return cloth{}, false
		}
		if w.whole && !g.OnAxis && hasEnds(g) {
			c = c.foldedOnBothSides(g, w.axis)
		} else {
			c = c.folded(g)
		}
	}
	c = w.finish(c)
	if w.whole && w.halves == mark.OneHalf {
		c = c.half(w.axis)
	}
	return c, true
}

// hasEnds reports whether some fold of a group ends on the piece.
func hasEnds(g piece.FlatGroup) bool {
	return slices.ContainsFunc(g.Folding.Folds(), func(one plane.Fold) bool {
		return !math.IsInf(one.From, 0) || !math.IsInf(one.To, 0)
	})
}

// inside returns what of a line lies inside an outline.
func inside(outline *plane.Tree, line plane.Path) []plane.Path {
	var parts []plane.Path
	for _, s := range piece.InsideStretches(outline, plane.NewTree(line)) {
		parts = append(parts, line.Between(s.From, s.To))
	}
	return parts
}

// How wide the shadow beside the free edge of a flap is: a share of the width of the flap, and
// no more than so many mm. Half as wide another lies on it, so that it fades.
const (
	shadowShare = 0.3
	shadowMost  = 1.5
)

// shadows returns the shadow beside the free edge of a flap, which lies to its left, inside an
// outline.
func shadows(edge line, outline plane.Path) []plane.Path {
	wide := min(edge.width*shadowShare, shadowMost)
	var all []plane.Path
	for i := 1; i < len(edge.Path); i++ {
		a, b := edge.Path[i-1], edge.Path[i]
		for _, share := range []float64{1, 0.5} {
			right := b.Sub(a).Unit().Left().Mul(-wide * share)
			if shadow := convexPart(outline, plane.Path{b, a, a.Add(right), b.Add(right)}); shadow != nil {
				all = append(all, shadow)
			}
		}
	}
	return all
}

// convexPart returns what of an outline lies in a convex shape, whose corners are given
// counter-clockwise: a closed path, or nil for nothing.
func convexPart(outline, corners plane.Path) plane.Path {
	for i, from := range corners {
		to := corners[(i+1)%len(corners)]
		outline = outline.Side(from, to.Sub(from).Unit().Left())
	}
	return outline
}
