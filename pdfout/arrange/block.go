package arrange

import (
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: text that belongs together is set in lines before it has a place, and
// is moved, and never set smaller or broken anew, until it finds one.

// Block is text set in lines, with nothing free around it, not yet anywhere.
type Block struct {
	text.Lines
	Width float64 // of its longest line, in mm
}

// BlockOf sets lines of a style under each other, all beginning at the left.
func BlockOf(lines []string, s ink.Style) Block {
	b := Block{Lines: text.Lines{Height: s.Up() + s.Down() - s.Step()}, Width: text.LongestWord(lines, s)}
	b.AddAt(lines, s, 0, s.Down())
	return b
}

// Around returns the room of the block with its middle at a place and its lines along u, of
// length 1.
func (b Block) Around(middle, u plane.Point) text.Slab {
	return text.Slab{Centre: middle, Half: plane.Point{X: b.Width / 2, Y: b.Height / 2}, U: u}
}

// Placed returns the lines of the block with its middle at a place, along u.
func (b Block) Placed(middle, u plane.Point) []text.Label {
	corner := middle.Sub(u.Mul(b.Width / 2)).Add(u.Left().Mul(b.Height / 2))
	var lines []text.Label
	for _, l := range b.Labels {
		l.U = u
		l.At = corner.Add(u.Mul(l.At.X)).Add(u.Left().Mul(l.At.Y))
		lines = append(lines, l.Measured())
	}
	return lines
}
