package sheet

import (
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A block whose tucks end on it is shown small on the cutting sheet, the
// whole of it: down to the end of the tucks as wide as its top edge measures, from there on
// spreading to what it is wide at its bottom, and within that the lines to which it is drawn
// in. Its widths are in the proportion of the numbers beside them; its height is not.

const (
	sketchWide = 50.0 // of the block at its widest, in mm on the paper
	sketchHigh = 22.0 // of the block
	sketchText = 5.0  // kept for a line of words above it and below
	sketchHead = 1.4  // of the head of an arrow
	// sketchTucks is how many tucks are shown on either half: as a sign, and not their number.
	sketchTucks = 3
	// sketchDraw is how far up from the bottom the arrows are, as a share of what is open.
	sketchDraw = 0.2
)

// blockSketch shows how a stitched block lies, and to what it is drawn in; nil where its tucks
// run on to the bottom, or hang from both ends.
func blockSketch(b *piece.Block, unit length.Unit) *mark.Sketch {
	open := b.OpenBelow()
	if open == 0 || b.OpenAtTop() > 0 {
		return nil
	}
	scale := sketchWide / (b.TopIs() + open)
	top, foot := b.TopIs()*scale/2, sketchWide/2 // half of each width
	s := &mark.Sketch{Width: sketchWide, Height: sketchHigh + 2*sketchText}
	at := func(u, v float64) plane.Point { return plane.Point{X: sketchWide/2 + u, Y: sketchText + v} }
	line := func(places ...plane.Point) { s.Lines = append(s.Lines, places) }
	end := sketchHigh * (1 - deepestEnd(b)/b.Length)
	line(at(-top, sketchHigh), at(top, sketchHigh))
	line(at(-foot, 0), at(foot, 0))
	for _, side := range []float64{-1, 1} {
		line(at(side*top, sketchHigh), at(side*top, 0))
		line(at(side*top, end), at(side*foot, 0))
		for k := range sketchTucks {
			u := side * top * (0.5 + float64(k)) / (sketchTucks + 1)
			line(at(u, sketchHigh), at(u, end))
		}
		from, to := at(side*(foot-(foot-top)*sketchDraw), end*sketchDraw), at(side*top, end*sketchDraw)
		line(from, to)
		for _, up := range []float64{-1, 1} {
			line(to.Add(plane.Point{X: side * sketchHead, Y: up * sketchHead / 2}), to)
		}
	}
	s.Labels = []mark.SketchLabel{
		{Text: unit.OnRuler(b.TopIs()), At: at(0, sketchHigh+sketchText/2)},
		{Text: "draw in", At: at(0, end*sketchDraw)},
		{Text: "as it lies " + unit.OnRuler(b.TopIs()+open), At: at(0, -sketchText/2)},
	}
	return s
}

// deepestEnd is how far below the torn top the tucks of a block end that are open below, the
// deepest of them.
func deepestEnd(b *piece.Block) float64 {
	deepest := 0.0
	for _, r := range b.Group.Rows {
		if b.Begin(r) == b.UpperEdge() {
			for _, end := range blockDepths(b, r).ends {
				deepest = max(deepest, end)
			}
		}
	}
	return deepest
}
