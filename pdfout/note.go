package pdfout

import (
	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// Rules of this file: what is told in front besides, and goes where there is room for it.

// note is one of these.
type note int

const (
	keyNote  note = iota // the key of the lines
	joinNote             // how pages are joined, or how pieces are used that are not joined
	careNote             // what is to be heeded
)

// What stands over how pages are joined, and over what is to be heeded.
const (
	joinHeading = "Join the pages"
	useHeading  = "Use them"
	careHeading = "Take care"
)

// noteBlock sets a note in a width; empty where there is nothing to say.
func (b *book) noteBlock(n note, width float64) block {
	switch {
	case n == keyNote:
		return b.keyBlock(width)
	case n == joinNote && b.joined():
		return b.joinBlock(width)
	case n == joinNote && len(b.set.Use) > 0:
		return paragraphs(useHeading, b.set.Use, width)
	case n == joinNote:
	case len(b.set.Cautions) > 0:
		return paragraphs(careHeading, b.set.Cautions, width)
	}
	return block{}
}

// joinBlock shows and says how pages are joined.
func (b *book) joinBlock(width float64) block {
	all := underHeading(joinHeading, width)
	drawn := block{Lines: text.Lines{Height: joinHigh}}
	drawn.put(joinDrawing{min(joinWide, width)}, plane.Point{})
	if beside := width - joinWide - text.Gutter; beside >= leastBesideDrawing {
		var words block
		words.sayAll(b.joining(), beside)
		all.with(words, plane.Point{X: joinWide + text.Gutter, Y: -all.Height})
		drawn.Height = max(drawn.Height, words.Height)
		all.under(drawn)
		return all
	}
	all.under(drawn)
	all.Space(headingGap)
	all.sayAll(b.joining(), width)
	return all
}

// leastBesideDrawing is the least width of words beside the drawing of how pages are joined, in mm.
const leastBesideDrawing = 60.0
