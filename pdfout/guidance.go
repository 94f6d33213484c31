package pdfout

import (
	"cmp"
	"fmt"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/report"
	"tuckmark/pdfout/text"
)

// Rules of this file: what the first page tells, in plain words, and only what is true
// of these pages: nothing of joining where nothing is joined.

// sizeLine says what the pages are, and of what size.
func (b *book) sizeLine() string {
	kind := cmp.Or(b.set.Kind, "Full-size marking sheets")
	if b.set.SizeLine() == "" {
		return kind
	}
	return kind + ", " + b.set.SizeLine()
}

// measuring says what to do with the check square.
func (b *book) measuring() []string {
	other := "other"
	if len(b.figures) > 0 {
		other = "full-size" // figures are read, not measured
	}
	off := "Should it measure less or more, turn off “fit to page” and every other scaling where you print, and print this page again."
	if s := b.paper.Printed; !s.IsTrue() {
		off = "These sheets are drawn for a printer that prints at " + s.String() + ", and come out true only on that one. Should the square be off, measure the page that was not corrected once more."
	}
	small := fmt.Sprintf("Every %s page has a square of %s, to be measured in the same way.", other, paper.SmallSquare(b.set.Unit).Name)
	if b.paper.WhollyOnOne() {
		small = fmt.Sprintf("The small square is to measure %s in the same way.", paper.SmallSquare(b.set.Unit).Name)
	}
	return []string{
		"Lay a ruler across it, and then upward, each time from outside edge to outside edge. The outer frame is 4 in, the inner one 100 mm; both begin in the lower left corner.",
		off,
		"Mark no cloth until it measures true both ways.",
		small,
	}
}

// printing says at what scale the pages are to be printed.
func (b *book) printing() string {
	if b.paper.Printed.IsTrue() {
		return "Print at 100 %, on one side of the paper, with no “fit to page”."
	}
	return "Print with the settings, and on the paper, of the page that was measured."
}

// onPaper says how many pages there are, and of what paper.
func (b *book) onPaper() string {
	if b.paper.Cut == paper.Single {
		return "one page for all"
	}
	return fmt.Sprintf("%s on %s", text.PageCount(b.pages), b.paper.Title)
}

// joining says which pages come first and how to put the others together.
func (b *book) joining() (string, []string) {
	// What names pages is too short to be broken: the room for pictures does
	// not hang on the page numbers, which are not known before they are laid.
	var steps []string
	if b.paper.WhollyOnOne() {
		if len(b.figures) > 0 {
			steps = append(steps, report.Heading+": in frames beside this one.")
		}
		if len(b.forms) > 0 {
			steps = append(steps, "To be sewn and filled in first: what is in the frames with steps to follow.")
		}
		return "The pages", append(steps, "Every piece is whole: there is nothing to join.")
	}
	front := len(b.pictures)
	if n := len(b.figures); n > 0 {
		steps = append(steps, report.Heading+": "+text.PageRange(front+1, front+n, "", "")+".")
		front += n
	}
	if len(b.forms) > 0 {
		pages := text.PageRange(front+1, front+len(b.forms), "", "")
		if len(b.sheets) == 0 {
			return "The pages", append(steps, "To be sewn and filled in: "+pages+".")
		}
		steps = append(steps, "To be sewn and filled in first: "+pages+".")
	}
	if !b.joined() {
		return "The pages", append(steps, "Every piece is whole on its page: there is nothing to join.")
	}
	steps = append(steps,
		"Take the pages of a piece in their order. The first stays as it is; cut each other one along the trim lines at its left and at its top, where it has them, with scissors, or with a blade along a metal ruler on a cutting mat.",
		"Lay it on those that lie already, its cut edge on their short corners and its half circles on the circles of the same number. Paste or tape it down.",
	)
	if slices.Contains(b.roles, mark.Window) {
		steps = append(steps, "Where a window of a template lies across a join, leave a bridge of paper there, as wide as those between windows.")
	}
	if slices.ContainsFunc(b.sheets, func(s *laidSheet) bool { return s.Slips() }) {
		steps = append(steps, "A page that belongs above one that lies already, or to its left, goes under that one's cut edge.")
	}
	if b.blank() > 0 {
		steps = append(steps, "Hatched pages have no line on them and are not printed.")
	}
	return "Join the pages", steps
}
