package sheet

import (
	"fmt"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file. Where all folds of a row end at one depth, it is measured on the sheet:
// beside all lines of a block, which has one torn edge; on a piece beside the last fold. At
// other ends each depth stands at its fold (rowwords.go).

// depthBeside is how far beside the lines of folds their depth is measured, in mm, and how
// far from there the next.
const depthBeside = 25.4 / 4

// depthText says what is measured.
func depthText(r piece.FoldRow, end float64, edge string, unit length.Unit) string {
	return fmt.Sprintf("%s %ss end %s %s", r.Key, r.Makes, unit.OnRuler(end), fromEdge(r, edge))
}

// measureEnds measures how deep the rows of a block end, on the side on which they lie.
func measureEnds(m *mark.Marking, b *piece.Block, unit length.Unit) {
	us, _ := linesReach(b)
	beside := map[bool]float64{true: us.To, false: us.From}
	for _, r := range b.Group.Rows {
		ends := blockEnds(b, r)
		if len(ends) == 0 || !level(ends) {
			continue
		}
		outward := b.FlatU(r, 1) > b.FlatU(r, 0)
		beside[outward] += b.FlatU(r, depthBeside) - b.FlatU(r, 0)
		u := beside[outward]
		m.Dimensions = append(m.Dimensions, mark.Dimension{
			From: b.At(u, b.Begin(r)), To: b.At(u, b.Level(r, r.Folds[0])), Text: depthText(r, ends[0], tornEdge, unit)})
	}
}

// measureEnd measures how deep a row of a flat piece ends.
func (c creased) measureEnd(m *mark.Marking, ends []float64, unit length.Unit) {
	if len(ends) == 0 || !level(ends) || len(c.lines) == 0 {
		return
	}
	n := len(c.lines) - 1
	beside := c.out.Mul(c.folds[n].Width + depthBeside)
	// The fold may lie in parts, or its line beside the piece: it is measured back from its end.
	to := c.lines[n][1].Add(beside)
	m.Dimensions = append(m.Dimensions, mark.Dimension{
		From: to.Sub(c.Downward().Mul(ends[0])), To: to, Text: depthText(c.FoldRow, ends[0], cutEdge, unit)})
}
