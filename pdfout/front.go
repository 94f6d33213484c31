package pdfout

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: what stands in front comes always in one order: what is made, the
// check square with the key beside it, the pieces; then the order of work, how pages are
// joined and how they lie, and the cautions. Each of these stands whole in the first column
// with room for it, behind what comes before it. The drawings of the pieces are as large as
// they can be, but smaller where all then stands on the first page, or the order of work. Where
// it saves a page the cautions stand beside the pieces, under the key, and go on in the next column
// between two of them.

// frontPage is a page in front as planned: its entry lies as it is on the page.
type frontPage struct {
	entry
	foot float64 // how high the lowest of it stands, in mm
}

const (
	// leastDrawing is how large the largest small drawing is at least where all that is in
	// front stands on one page, and leastWithWork where the order of work is on the first,
	// in mm.
	leastDrawing, leastWithWork = 18.0, 36.0
)

// workTitle heads the pages in front but the first.
const workTitle = "How to work"

// section is what stands together in front.
type section struct {
	// heading stands over it, and once more where it goes on; "" where its entries are not the
	// same in every width, so that it goes on without.
	heading string
	// set sets it: entries one under the other, in a width, for what is left of a column in height.
	// Those of a section with a heading do not hang on that.
	set func(width, height float64) []entry
}

// goesOn stands behind the heading of a section that goes on in another column.
const goesOn = ", continued"

// layFront lays the pages in front.
func (b *Book) layFront() []frontPage {
	begun := b.measuringPage()
	plain, inTwo := b.startOf(begun), b.startOf(begun.inTwo())
	work, join, care := onceAWidth(workHeading, b.workSection), onceAWidth(joinHeading, b.joinSection), onceAWidth(careHeading, b.careSection)
	pictures, under, beside := section{set: b.pictureSection}, section{set: b.careUnderPictures}, section{set: b.careBesidePictures}
	inOrder := []section{work, join, pictures, care}
	onOne := func(f flow) bool { return len(f.pages) == 1 }
	for _, try := range []struct {
		start
		least float64
		wanted
	}{
		{plain, leastDrawing, onOne},
		{inTwo, leastDrawing, onOne},
		{plain, leastWithWork, func(f flow) bool { return onOne(f) || f.onFirst > 0 }},
	} {
		for i, scale := range try.scales {
			if i > 0 && largest(b.drawn, scale) < try.least {
				break
			}
			if f := b.layAll(try.begun, scale, inOrder, try.wanted); try.wanted(f) {
				return f.pages
			}
		}
	}
	all := b.layAll(plain.begun, plain.scales[0], []section{work, join, under}, func(flow) bool { return true })
	fewer := func(f flow) bool { return len(f.pages) < len(all.pages) }
	tries := [][]section{inOrder, {work, join, beside}}
	for _, sections := range tries {
		if f := b.layAll(plain.begun, plain.scales[0], sections, fewer); fewer(f) {
			all = f
		}
	}
	for i, scale := range inTwo.scales {
		if i > 0 && largest(b.drawn, scale) < leastDrawing {
			break
		}
		if f := b.layAll(inTwo.begun, scale, []section{care, work, join, pictures}, fewer); fewer(f) {
			return f.pages
		}
	}
	return all.pages
}

// onceAWidth is a section whose entries do not hang on a height, set once for each width: the
// pages in front are tried with the pieces drawn in many sizes.
func onceAWidth(heading string, set func(width, height float64) []entry) section {
	known := map[float64][]entry{}
	return section{heading, func(width, height float64) []entry {
		all, ok := known[width]
		if !ok {
			all = set(width, height)
			known[width] = all
		}
		return all
	}}
}

// start is a first page without its pieces, and the scales at which their drawings fit into its
// column: from the first at which all have room under the check square; where they would be too
// small for that, from one at which the last go on on a page of their own.
type start struct {
	begun  flow
	scales []float64
}

// startOf is the start from a page.
func (b *Book) startOf(begun flow) start {
	most := plane.Point{X: min(begun.columns[0].Width(), begun.further[0].Width()), Y: b.leaf.UnderHeader().Height() / 2}
	scales := scalesFor(b.drawn, most)
	for len(scales) > 1 && largest(b.drawn, scales[1]) >= leastMiniature &&
		stacked(b.pieceRows(scales[0], begun.columns[0].Width())) > begun.columns[0].Height() {
		scales = scales[1:]
	}
	return start{begun, scales}
}

// layAll lays the pieces at a scale on the first page, and sections behind them, until the pages
// are no longer as they are wanted.
func (b *Book) layAll(begun flow, scale float64, sections []section, as wanted) flow {
	f := begun.copied()
	f.wanted = as
	rows := b.pieceRows(scale, f.columns[0].Width())
	if stacked(rows) > f.columns[0].Height() {
		rows = b.pieceRows(scale, f.narrowest())
	}
	f.run(section{}, rows)
	for i, s := range slices.Concat(f.waiting, sections) {
		if f.put(s) && len(f.pages) == 1 {
			f.onFirst = i + 1
		}
	}
	return f
}

// drawFront draws a page in front, whose number says where it is.
func (b *Book) drawFront(d ink.Canvas, i int, number string) {
	if i > 0 {
		b.drawFrontHeader(d, workTitle+": "+b.fullTitle(), number)
	}
	b.front[i].draw(d)
}
