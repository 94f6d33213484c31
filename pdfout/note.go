package pdfout

import (
	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// Rules of this file: what is told in front besides the order of work: how pages are joined,
// and what is to be heeded.

// What stands over them.
const (
	joinHeading = "Join the pages"
	useHeading  = "Use them"
	careHeading = "Take care"
)

// careSection is what is to be heeded.
func (b *Book) careSection(width, _ float64) []entry {
	if len(b.set.Cautions) == 0 {
		return nil
	}
	return paragraphs(careHeading, b.set.Cautions, width)
}

// joinSection shows and says how pages are joined, or says how pieces are used that are not.
func (b *Book) joinSection(width, _ float64) []entry {
	switch {
	case b.joined():
	case len(b.set.Use) > 0:
		return paragraphs(useHeading, b.set.Use, width)
	default:
		return nil
	}
	all := underHeading(joinHeading, width)
	drawn := entry{Lines: text.Lines{Height: joinHigh}}
	drawn.put(joinDrawing{min(joinWide, width)}, plane.Point{})
	if beside := width - joinWide - text.Gutter; beside >= leastBesideDrawing {
		var words entry
		words.sayAll(b.joining(), min(beside, mostText))
		drawn.with(words, plane.Point{X: joinWide + text.Gutter})
		drawn.Height = max(drawn.Height, words.Height)
		all.under(drawn)
		return []entry{all}
	}
	all.under(drawn)
	all.Space(headingGap)
	all.sayAll(b.joining(), width)
	return []entry{all}
}

// leastBesideDrawing is the least width of words beside the drawing of how pages are joined, in mm.
const leastBesideDrawing = 60.0
