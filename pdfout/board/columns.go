package board

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: parts that belong together stand in a row, and under each other in columns.
// A row that would be too long for a screen is broken into several of one length, in all rows at
// the same columns.

// inColumns lays parts in rows, one under the other, and in columns, with more parts in a row under
// them. Parts with nothing to draw keep their place free and have no number. Captions have a
// size.
func inColumns(rows [][]Part, under []Part, caption float64) Board {
	longest := 0
	for _, row := range rows {
		longest = max(longest, len(row))
	}
	best, least := columns(rows, under, caption), math.Inf(1)
	for n := longest; n > 0; n-- {
		var broken [][]Part
		for _, row := range rows {
			broken = append(broken, slices.Collect(slices.Chunk(row, n))...)
		}
		if b := columns(broken, under, caption); b.need() < least {
			best, least = b, b.need()
		}
	}
	return best
}

// columns lays them so, with no row broken.
func columns(rows [][]Part, under []Part, caption float64) Board {
	b, gap := Board{Caption: caption}, apart*caption
	var wide []float64
	for _, row := range rows {
		for i, p := range row {
			if i == len(wide) {
				wide = append(wide, 0)
			}
			wide[i] = max(wide[i], p.Box.Width())
		}
	}
	top := gap
	lay := func(row []Part, width func(i int) float64) {
		if len(row) == 0 {
			return
		}
		left, high := gap, 0.0
		top += captionRoom * caption
		for i, p := range row {
			left, high = left+width(i)+gap, max(high, p.Box.Height())
			if p.Elements == nil {
				continue
			}
			at := plane.Point{X: left - width(i) - gap, Y: top}
			p.Number, p.Box = len(b.Parts)+1, plane.Box{Min: at, Max: at.Add(p.Box.Max)}
			b.Parts = append(b.Parts, p)
			b.Size.X = max(b.Size.X, p.Box.Max.X+gap)
		}
		top += high + gap
	}
	for _, row := range rows {
		lay(row, func(i int) float64 { return wide[i] })
	}
	lay(under, func(i int) float64 { return under[i].Box.Width() })
	b.Size.Y = top
	return b
}
