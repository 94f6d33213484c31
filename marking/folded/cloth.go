package folded

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. The cloth of a piece is parts, with no fold in them, and lines on
// their right sides; where cloth ends is seen from both. One group of folds after the other
// takes it on: every cell of the plane (plane.Cell) takes along what lies in it. Which of two
// parts lies on the other is a number, their level, however many groups there are. A tuck is a
// flap on the cloth beside it; a pleat lies under that.

// cloth is a piece at a stage of its folding.
type cloth struct {
	parts []part
	lines []line
}

// part is a part of the cloth with no fold in it.
type part struct {
	path   plane.Path // closed
	turned bool       // its wrong side lies up
	level  int        // it lies on those of a lower one
}

// line is a line on a part.
type line struct {
	mark.Mark
	level int // that of the part
	kind  lineKind
	width float64 // of the flap whose edge it is
}

// lineKind is what a line is to the picture.
type lineKind int

const (
	marked   lineKind = iota // a line like any other
	edge                     // the free edge of a flap, which lies to its left
	fullness                 // a hint at cloth that is let go
)

// axis is the fold of the cloth that a piece lies on: a line through origin, square to in,
// which points into the half that is drawn.
type axis struct{ origin, in plane.Point }

// folded returns the cloth with a group of folds in.
func (c cloth) folded(g piece.FlatGroup) cloth { return c.foldedOver(g, c.span()).ranked() }

// foldedOver returns the cloth with a group of folds in, whose levels lie so far apart.
func (c cloth) foldedOver(g piece.FlatGroup, span int) cloth {
	cells := g.Folding.Cells()
	levels := levelsOf(g, cells)
	var next cloth
	for i, cell := range cells {
		lifted := func(level int) int {
			if cell.Mirrored {
				level = -level
			}
			return levels[i]*span + level
		}
		for _, p := range c.parts {
			if area := cell.Area(p.path); area != nil {
				next.parts = append(next.parts, part{area, p.turned != cell.Mirrored, lifted(p.level)})
			}
		}
		for _, l := range c.lines {
			if cell.Mirrored && l.Role != mark.Cut {
				continue // it lies on the side that is down
			}
			for _, path := range cell.Lines(l.Path) {
				l.Path, l.level = path, lifted(l.level)
				next.lines = append(next.lines, l)
			}
		}
	}
	next.lines = append(next.lines, c.foldLines(g, cells, levels, span)...)
	return next
}

// span is so large that levels of the next folding, made that many times as large, lie clear
// of these.
func (c cloth) span() int {
	most := 0
	for _, p := range c.parts {
		most = max(most, p.level, -p.level)
	}
	return 2*most + 1
}

// ranked returns the cloth with its levels counted from 0, none left out: every folding makes
// them many times as large, and there may be many.
func (c cloth) ranked() cloth {
	var levels []int
	for _, p := range c.parts {
		levels = append(levels, p.level)
	}
	for _, l := range c.lines {
		levels = append(levels, l.level)
	}
	slices.Sort(levels)
	levels = slices.Compact(levels)
	for i := range c.parts {
		c.parts[i].level, _ = slices.BinarySearch(levels, c.parts[i].level)
	}
	for i := range c.lines {
		c.lines[i].level, _ = slices.BinarySearch(levels, c.lines[i].level)
	}
	return c
}

// levelsOf returns the levels of cells, no two of which are the same: of cells at one height the
// later ones lie on the earlier.
func levelsOf(g piece.FlatGroup, cells []plane.Cell) []int {
	levels := make([]int, len(cells))
	height := 0
	for i, cell := range cells {
		if i > 0 && cell.Mirrored != cells[i-1].Mirrored { // there is a crease between them
			k := cell.Fold
			if cell.Part == plane.BeforeStrip {
				k--
			}
			height += rise(g, k)
		}
		levels[i] = height*len(cells) + i
	}
	return levels
}

// rise is +1 where the cloth beyond a fold lies on what is folded of it, -1 where under that.
func rise(g piece.FlatGroup, k int) int {
	if g.Folding.Folds()[k].Back == (g.Of[k].Row.Makes == piece.TuckFolds) {
		return 1
	}
	return -1
}

// half returns what of the cloth lies on one side of a line: that to which in points.
func (c cloth) half(a axis) cloth {
	var half cloth
	for _, p := range c.parts {
		if p.path = p.path.Side(a.origin, a.in); p.path != nil {
			half.parts = append(half.parts, p)
		}
	}
	for _, l := range c.lines {
		for _, s := range plane.HalfPlane(l.Path, make([]int, len(l.Path)), a.origin, a.in) {
			l.Path = s.Path
			half.lines = append(half.lines, l)
		}
	}
	return half
}

// mirrored returns the cloth as it lies on the other side of a line.
func (c cloth) mirrored(a axis) cloth {
	image := cloth{slices.Clone(c.parts), slices.Clone(c.lines)}
	for i := range image.parts {
		image.parts[i].path = image.parts[i].path.Mirrored(a.origin, a.in)
	}
	for i := range image.lines {
		image.lines[i].Path = image.lines[i].Path.Mirrored(a.origin, a.in)
	}
	return image
}

// foldedOnBothSides returns the cloth of a whole piece with folds in that are known of one half
// of it, and lie on the other as its image.
func (c cloth) foldedOnBothSides(g piece.FlatGroup, a axis) cloth {
	other, span := axis{a.origin, a.in.Mul(-1)}, c.span()
	near, far := c.half(a).foldedOver(g, span), c.half(other).mirrored(a).foldedOver(g, span).mirrored(a)
	return cloth{append(near.parts, far.parts...), append(near.lines, far.lines...)}.ranked()
}
