package pdfout

import (
	"cmp"
	"fmt"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: what the first page tells, in plain words, and only what is true
// of these pages: nothing of joining where nothing is joined.

// sizeLine says what the pages are, and of what size.
func (b *Book) sizeLine() string {
	kind := cmp.Or(b.set.Kind, "Full-size marking sheets")
	if b.set.SizeLine() == "" {
		return kind
	}
	return kind + ", " + b.set.SizeLine()
}

// measuring says what to do with the check square and the rules.
func (b *Book) measuring() []string {
	_, across, up := b.longRules()
	long := b.set.Unit.AsWritten
	small := fmt.Sprintf("Every full-size page has a square of %s, to be measured in the same way.", paper.SmallSquare(b.set.Unit).Name)
	if b.paper.WhollyOnOne() {
		small = fmt.Sprintf("The small square is to measure %s in the same way.", paper.SmallSquare(b.set.Unit).Name)
	}
	until := "Mark no cloth"
	if b.isRuled() {
		until = "Read nothing off"
	}
	return slices.Concat([]string{
		"Measure this square across, and then down, each time from outside edge to outside edge. The outer frame is 4 in, the inner one 100 mm; both begin in the lower left corner.",
		fmt.Sprintf("Then measure the rules at the foot, %s, and at the left edge, %s: the longer a line, the more it shows.", long(across.long()), long(up.long())),
	}, b.whenOff(), []string{
		until + " until all measure true both ways. " + small,
	})
}

// whenOff says what to do where the square or a rule measures too little or too much.
func (b *Book) whenOff() []string {
	if s := b.paper.Printed; !s.IsTrue() {
		return []string{"These sheets are drawn for a printer that prints at " + s.String() + ", and come out true only on that one. Should one be off, measure the page that was not corrected once more."}
	}
	if b.set.Scale == "" {
		return []string{"Should one be off, turn off every scaling where this is printed, drawn or cut, or set the machine right, and measure again."}
	}
	_, across, up := b.longRules()
	long := b.set.Unit.AsWritten
	return []string{
		"Should one be off, turn off “fit to page” and every other scaling where you print, and print this page again. If it stays off, type this as one line, with what the rules measure in place of the dots:",
		fmt.Sprintf(`%s --of "%s x %s" --across ... --down ...`, b.set.Scale, long(across.long()), long(up.long())),
	}
}

// isRuled reports whether the set is ruled paper, off which is read.
func (b *Book) isRuled() bool {
	return slices.ContainsFunc(b.set.Pieces, func(m mark.Marking) bool { return m.Kind.Ruled() })
}

// printing says at what scale the pages are to be printed.
func (b *Book) printing() string {
	if b.paper.Printed.IsTrue() {
		return "Print at 100 %, on one side of the paper, with no “fit to page”."
	}
	return "Print with the settings, and on the paper, of the page that was measured."
}

// pagesOnPaper says how many pages there are, and of what paper, and whether nothing is
// joined.
func (b *Book) pagesOnPaper() string {
	all := "one page for all"
	if b.paper.Cut != paper.Single {
		all = fmt.Sprintf("%s on %s", text.PageCount(b.pages), b.paper.Title)
	}
	if b.paper.WhollyOnOne() || len(b.sheets) > 0 && !b.joined() {
		all += "; every piece is whole, there is nothing to join"
	}
	return all
}

// joining says how pages are joined, beside the drawing of it.
func (b *Book) joining() []string {
	steps := []string{
		"Take the pages of a piece in their order. The first stays as it is. Of each other one, cut off what is hatched here: along the trim lines at its left and at its top, where it has them.",
		"Lay it on those that lie already, its cut edge on their short corners, and make the circles of each number whole. Paste or tape it down.",
	}
	if slices.ContainsFunc(b.sheets, func(s *laidSheet) bool { return s.Slips() }) {
		steps = append(steps, "A page that belongs above one that lies already, or to its left, goes under that one’s cut edge.")
	}
	if b.blank() > 0 {
		steps = append(steps, "Pages hatched in the pictures have no line on them and are not printed.")
	}
	return steps
}
