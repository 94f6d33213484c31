package pdfout

import (
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: the first page proves the scale before any cloth is marked, and shows
// what is made. Its check square is two frames with one lower left corner: 4 in, which is
// 288 units, and 100 mm, which is 283.465 units; under the outer one runs a rule of inches,
// beside the inner one a rule of centimetres. Along two edges of the page run rules as long
// as it allows: the longer a line, the less a ruler misses on it.

const (
	besideRule = 15.0 // free beside the long rule at the left edge, in mm
	overRule   = 12.5 // and over the one at the foot
	ruleWords  = 8.6  // how far the words of a long rule lie from it, in mm
	squareRule = 8.0  // the room for a rule of the check square, in mm
	lastNumber = 1.8  // half of the number at the end of a rule, and a little over, in mm
	overSquare = 4.6  // free over the check square for the name of its outer frame
)

// ruleMargin is how far the long rules stay from the edges of the page, in mm.
const ruleMargin = 5 * paper.SquareGrid

// longRules are the rules along the left edge and the foot of the first page, with the
// place where both begin.
func (b *Book) longRules() (zero plane.Point, across, up rule) {
	box := b.leaf.Printable()
	least := plane.Box{Max: b.leaf.Size()}.Grown(-ruleMargin)
	zero = plane.Point{
		X: paper.SnapUp(max(box.Min.X, least.Min.X) + tickWidth/2),
		Y: paper.SnapUp(max(box.Min.Y, least.Min.Y) + tickWidth/2),
	}
	far := plane.Point{X: min(box.Max.X, least.Max.X), Y: min(box.Max.Y, least.Max.Y)}.Sub(zero)
	right, over := plane.Point{X: 1}, plane.Point{Y: 1}
	across = ruleWithin(far.X-lastNumber, b.set.Unit, right, over)
	up = ruleWithin(far.Y-lastNumber, b.set.Unit, over, right)
	across.bare, up.bare = longestTick, longestTick
	return zero, across, up
}

// insideRules is what the first page has inside its rules.
func (b *Book) insideRules() plane.Box {
	box := b.leaf.Front()
	zero, _, _ := b.longRules()
	box.Min.X, box.Min.Y = max(box.Min.X, zero.X+besideRule), max(box.Min.Y, zero.Y+overRule)
	return box
}

// measuringPage begins the pages in front: the first has its rules, its heading, the check
// square and the key. On one that stands the heading is at the top, and the key beside the
// square; on one that lies the key is under the square, and the heading beside both.
func (b *Book) measuringPage() flow {
	f := flow{
		pages:   []frontPage{{}},
		columns: columnsOf(b.insideRules(), halfWidth),
		further: columnsOf(b.leaf.UnderHeader(), columnWidth),
	}
	p, column := &f.pages[0], &f.columns[0]
	box := *column
	right := paper.SnapUp(box.Min.X+squareRule) + paper.LargeSquare
	lies := box.Width() > box.Height()
	if lies {
		column.Min.X = right + text.Gutter
	}
	f.stack(b.heading(column.Width()))
	if !lies {
		box.Max.Y = column.Max.Y
	}
	corner := plane.Point{X: right - paper.LargeSquare, Y: paper.SnapDown(box.Max.Y - overSquare - paper.LargeSquare)}
	p.put(largeSquare{}, corner)
	p.With(b.inSquare(), corner)
	left := *column
	under := corner.Y - squareRule
	column.Max.Y = box.Max.Y - overSquare
	if lies {
		box.Max.X, box.Max.Y = right, under-betweenEntries
		*column = box
	} else {
		column.Min.X = right + text.Gutter
	}
	if key := b.keySection(column.Width(), column.Height()); column.Width() >= leastKeyBeside && stacked(key) <= column.Height() {
		f.stack(key[0])
	} else {
		f.waiting = []section{{set: b.keySection}}
	}
	if !lies {
		left.Max.Y = min(under, column.Max.Y) - betweenEntries
		f.beside = *column
		f.beside.Max.Y -= betweenEntries
	}
	*column = left
	b.putRules(p) // last, since it is read last
	return f
}

// leastKeyBeside is the least width of the key beside the check square, in mm: A4 leaves 50.
const leastKeyBeside = 45.0

// The least width of a column where a page in front has two, in mm: of one with the check
// square and the key beside it, and of another.
const halfWidth, columnWidth = 170.0, 110.0

// heading says what the pages are, above a fine line.
func (b *Book) heading(width float64) entry {
	var h entry
	name, kind, small := ink.Title(), ink.Lead(), ink.Caption()
	titleWidth := width
	number := b.pageNumber(1)
	if number != "" {
		titleWidth -= small.Width("page 1 of 8888") + text.Gutter
	}
	h.Add(text.WrapShortened(b.title(), name, titleWidth, 3), name)
	if number != "" {
		h.Say(number, small, plane.Point{X: width - small.Width(number), Y: name.Foot() - name.Step()})
	}
	pages, size := b.pagesOnPaper(), b.sizeLine()
	if kind.Width(size)+text.Gutter+small.Width(pages) <= width {
		h.Add([]string{size}, kind)
		h.Say(pages, small, plane.Point{X: width - small.Width(pages), Y: kind.Foot() - h.Height})
	} else {
		h.Add(text.WrapShortened(size, kind, width, 2), kind)
		h.Add(text.WrapShortened(pages, small, width, 1), small)
	}
	h.Space(headingGap)
	h.Add(text.WrapShortened(b.printing(), ink.Heading(), width, 2), ink.Heading())
	h.Space(2)
	h.RuleOff(plane.Point{Y: -h.Height}, width)
	h.Space(2)
	return h
}

// putRules puts the long rules on the page, with what they are to measure.
func (b *Book) putRules(p *frontPage) {
	zero, across, up := b.longRules()
	p.foot = zero.Y
	words := func(r rule) string {
		return "This rule is " + b.set.Unit.AsWritten(r.long()) + " long from its first tick to its last: measure it."
	}
	style := ink.Text()
	for _, r := range []rule{across, up} {
		p.put(r, zero)
		at := zero.Add(r.along.Mul((r.long() - style.Width(words(r))) / 2)).Add(r.out.Mul(ruleWords))
		if r.along.Y > 0 {
			at = at.Add(r.out.Mul(style.Up()))
		}
		p.Labels = append(p.Labels, text.Label{Text: words(r), Style: style, At: at, U: r.along})
	}
}

// inSquare sets what to do with the check square in the middle of it, about its lower left
// corner.
func (b *Book) inSquare() text.Lines {
	const inset = 8.0
	heading := "Measure before you mark any cloth"
	if b.isRuled() {
		heading = "Measure before you read anything off"
	}
	var words entry
	for _, one := range paragraphs(heading, b.measuring(), paper.InnerSquare-2*inset) {
		words.under(one)
	}
	var placed text.Lines
	placed.With(words.Lines, plane.Point{X: inset, Y: (paper.InnerSquare + words.Height) / 2})
	return placed
}

// largeSquare is the check square of the first page, with its rules, drawn from its lower
// left corner.
type largeSquare struct{}

// draw draws it.
func (largeSquare) draw(d ink.Canvas, corner plane.Point) {
	ink.DrawCheckSquare(d, corner, paper.LargeSquare)
	ink.DrawCheckSquare(d, corner, paper.InnerSquare)
	ruleWithin(paper.LargeSquare+length.Rounding, length.Inch, plane.Point{X: 1}, plane.Point{Y: -1}).draw(d, corner)
	ruleWithin(paper.InnerSquare+length.Rounding, length.Centimetre, plane.Point{Y: 1}, plane.Point{X: -1}).draw(d, corner)
	const away, outer, inner = 1.2, "4 in", "100 mm"
	style := ink.StrongText()
	ink.Write(d, corner.Add(plane.Point{X: paper.LargeSquare - style.Width(outer), Y: paper.LargeSquare + away}), style, outer)
	ink.Write(d, corner.Add(plane.Point{
		X: paper.InnerSquare - away - ink.FrameWidth - style.Width(inner),
		Y: paper.InnerSquare - away - ink.FrameWidth - style.Up(),
	}), style, inner)
}
