package folded

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. Of a tuck that is folded the crease shows, at the free edge of its flap,
// and the stitching, along the line where the flap is sewn. Of a pleat across the piece shows
// the crease, which lies where it is laid to; the flap lies under.

// foldLines returns the lines of the folds of a group that may be seen, folded: on all parts
// of the cloth as it lies before. levels are those of the cells.
func (c cloth) foldLines(g piece.FlatGroup, cells []plane.Cell, levels []int, span int) []line {
	var lines []line
	for k, one := range g.Folding.Folds() {
		of := g.Of[k]
		top := 3*k + 1 // the cell whose edge is seen, of those before the strip, its halves and beyond
		sewn, crease := one.At, one.At+one.Width
		if one.Back {
			top, sewn = 3*k+2, one.End()
		}
		if of.Row.Makes == piece.PleatFolds {
			if top, crease = 3*k, one.At; !one.Back {
				top, crease = 3*k+3, one.End()
			}
		}
		for _, p := range c.parts {
			if p.turned {
				continue
			}
			level := levels[top]*span + p.level
			add := func(u float64, role mark.Role, kind lineKind) {
				for _, path := range g.Folding.Across(p.path, u, k) {
					for i := range path {
						path[i] = cells[top].Folded(path[i])
					}
					// It runs toward greater v, to the left of which u is less.
					if kind == edge && rise(g, k) > 0 {
						path = path.Reversed()
					}
					lines = append(lines, line{mark.Mark{Role: role, Key: of.Row.FoldKey(of.Fold, role), Path: path}, level, kind, one.Width})
				}
			}
			if of.Row.Makes == piece.TuckFolds {
				add(sewn, mark.TuckStitch, marked)
				add(crease, mark.TuckFold, edge)
			} else {
				add(crease, mark.PleatFold, edge)
			}
			lines = append(lines, softBeyond(g, k, p, levelBeside(g, levels, k)*span+p.level)...)
		}
	}
	return lines
}

// levelBeside is the higher of the levels of the cloth on either side of a fold, and of others that
// meet it on one line, where these end.
func levelBeside(g piece.FlatGroup, levels []int, k int) int {
	top := levels[3*k]
	for j := k; j < len(g.Of) && g.Folding.Seam(j)-g.Folding.Seam(k) < piece.SamePoint; j++ {
		top = max(top, levels[3*j+3])
	}
	return top
}
