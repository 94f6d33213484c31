package sheet

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. Where all folds of a row end at one depth, it is measured on the sheet:
// beside all lines of a block, which has one torn edge; on a piece beside the last fold. At
// other ends each depth stands at its fold. Folds that begin on the piece as well have two
// depths: as far as they begin, and as far as they end.

// depthBeside is how far beside the lines of folds their depth is measured, in mm, and how
// far from there the next.
const depthBeside = 25.4 / 4

// The edges from which the depth of a row is measured.
const (
	cutEdge  = "cut"  // of a piece
	tornEdge = "torn" // of a block
)

// rowDepths is how far from an edge the tucks or pleats of a row end, each at its own fold line,
// and begin where they are free; none for a row from edge to edge.
type rowDepths struct {
	edge         string
	ends, begins []float64
}

// blockDepths returns the depths of a row on its block.
func blockDepths(b *piece.Block, r piece.FoldRow) rowDepths {
	d := rowDepths{edge: tornEdge}
	for _, f := range r.Folds {
		if f.End.Given && f.Number == len(d.ends) {
			d.ends = append(d.ends, math.Abs(b.Level(r, f)-b.Begin(r)))
			if f.End.Free {
				d.begins = append(d.begins, math.Abs(b.First(r, f)-b.Begin(r)))
			}
		}
	}
	return d
}

// pieceDepths returns the depths of a row on its flat piece.
func pieceDepths(p *piece.Piece, r piece.FoldRow) rowDepths {
	d := rowDepths{edge: cutEdge}
	for i, one := range p.Depths(r) {
		if r.Folds[i].Number == len(d.ends) {
			d.ends = append(d.ends, one.Cut)
			if one.Long > 0 {
				d.begins = append(d.begins, one.Cut-one.Long)
			}
		}
	}
	return d
}

// level reports whether all depths are one.
func level(depths []float64) bool {
	return !slices.ContainsFunc(depths, func(one float64) bool { return math.Abs(one-depths[0]) >= piece.SamePoint })
}

// depths writes how deep the folds of a row end, and begin where they are free, as far as that
// is not the same for all; and returns where the next row of words begins at their ends. Where not
// all have room it is told in the notes.
func (w foldWords) depths(c creased, d rowDepths, above, below float64, unit length.Unit) (next float64) {
	write := func(end int, depths []float64, from float64) float64 {
		if level(depths) {
			return from
		}
		told := c.told(end, depthOf(depths, unit))
		if len(withRoom(told)) < len(told) {
			w.m.Notes = append(w.m.Notes, d.describe(c.FoldRow, [...]string{"begin", "end"}[end], depths, unit)...)
		}
		return w.row(told, from, fromEdge(c.FoldRow, d.edge))
	}
	write(0, d.begins, above)
	return write(1, d.ends, below)
}

// depthOf tells how deep a fold ends.
func depthOf(depths []float64, unit length.Unit) func(int, piece.Fold) string {
	return func(_ int, f piece.Fold) string { return length.Bare(unit.OnRuler(depths[f.Number])) }
}

// fromEdge says from which edge the depth of a row is measured, and on which side of it the
// row ends: "below the cut edge".
func fromEdge(r piece.FoldRow, edge string) string {
	return r.Hangs().From() + " the " + edge + " edge"
}

// describeEnds says how far from an edge the tucks or pleats of a row end, and begin where they
// are free.
func describeEnds(r piece.FoldRow, d rowDepths, unit length.Unit) []string {
	return append(d.describe(r, "begin", d.begins, unit), d.describe(r, "end", d.ends, unit)...)
}

// describe says how far from the edge the tucks or pleats of a row end or begin, each at its own
// fold line: in one number, or in one for each. Nothing for a row that does not.
func (d rowDepths) describe(r piece.FoldRow, do string, depths []float64, unit length.Unit) []string {
	if len(depths) == 0 {
		return nil
	}
	var told []string
	for _, one := range depths {
		told = append(told, unit.OnRuler(one))
	}
	if len(slices.Compact(slices.Clone(told))) == 1 {
		return []string{"the " + depthText(r, do, told[0], d.edge)}
	}
	for i := range len(told) - 1 { // the last has the unit
		told[i] = length.Bare(told[i])
	}
	return []string{fmt.Sprintf("the %s, from the first to the last: %s %s", r.Does(do), strings.Join(told, ", "), fromEdge(r, d.edge))}
}

// measured measures the depths that are the same for all, from the edge to where the folds begin
// and end; from the first of the two to the second where both are.
func (d rowDepths) measured(r piece.FoldRow, edge, begin, end plane.Point, unit length.Unit) []mark.Dimension {
	var all []mark.Dimension
	if len(d.begins) > 0 && level(d.begins) {
		all = append(all, mark.Dimension{From: edge, To: begin, Text: depthText(r, "begin", unit.OnRuler(d.begins[0]), d.edge)})
	}
	if len(d.ends) > 0 && level(d.ends) {
		to := mark.Dimension{From: edge, To: end, Text: depthText(r, "end", unit.OnRuler(d.ends[0]), d.edge)}
		if len(all) > 0 {
			to = mark.Dimension{From: begin, To: end, Text: fmt.Sprintf("%s: %s long", r.Called(), unit.OnRuler(d.ends[0]-d.begins[0]))}
		}
		all = append(all, to)
	}
	return all
}

// measureEnds measures how deep the rows of a block end, on the side on which they lie.
func measureEnds(m *mark.Marking, b *piece.Block, unit length.Unit) {
	us, _ := linesReach(b)
	beside := map[bool]float64{true: us.To, false: us.From}
	for _, r := range b.Group.Rows {
		outward := b.FlatU(r, 1) > b.FlatU(r, 0)
		u, first := beside[outward]+b.FlatU(r, depthBeside)-b.FlatU(r, 0), r.Folds[0]
		measured := blockDepths(b, r).measured(r, b.At(u, b.Begin(r)), b.At(u, b.First(r, first)), b.At(u, b.Level(r, first)), unit)
		if len(measured) > 0 {
			beside[outward] = u
		}
		m.Dimensions = append(m.Dimensions, measured...)
	}
}

// measureEnd measures how deep a row of a flat piece ends.
func (c creased) measureEnd(m *mark.Marking, d rowDepths, unit length.Unit) {
	if len(d.ends) == 0 || len(c.lines) == 0 {
		return
	}
	n := len(c.lines) - 1
	beside := c.out.Mul(c.folds[n].Width + depthBeside)
	// The fold may lie in parts, or its line beside the piece: it is measured back from its end.
	to := c.lines[n][1].Add(beside)
	depth := func(depths []float64) float64 {
		if level(depths) {
			return depths[0]
		}
		return depths[c.folds[n].Number]
	}
	edge := to.Sub(c.Downward().Mul(depth(d.ends)))
	begin := edge
	if len(d.begins) > 0 {
		begin = edge.Add(c.Downward().Mul(depth(d.begins)))
	}
	m.Dimensions = append(m.Dimensions, d.measured(c.FoldRow, edge, begin, to, unit)...)
}

// depthText says what is measured.
func depthText(r piece.FoldRow, do, depth, edge string) string {
	return fmt.Sprintf("%s %s %s", r.Does(do), depth, fromEdge(r, edge))
}
