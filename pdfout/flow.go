package pdfout

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// Rules of this file: pages in front are filled column by column, from the top down, and
// nothing goes back to a column that was left.

// flow is pages in front as they are filled.
type flow struct {
	pages   []frontPage
	columns []plane.Box // what is left of the last page: of the column that is filled, and those after it
	further []plane.Box // the columns of a page behind the first
	empty   bool        // nothing stands yet in the column that is filled
	waiting []section   // what had no room beside the check square
	beside  plane.Box   // what is left under the key, down to the foot of the page; may be empty
	onFirst int         // how many sections have begun on the first page
	wanted
}

// wanted reports whether pages in front, full or not, are as they are wanted: those that are not
// become so by nothing that is put on them.
type wanted func(flow) bool

// columnsOf are the columns of a box: two where it is wider than high and each is as wide as
// it is to be at least, in mm, else one.
func columnsOf(box plane.Box, least float64) []plane.Box {
	left, right := box, box
	left.Max.X = box.Centre().X - text.Gutter/2
	right.Min.X = box.Centre().X + text.Gutter/2
	if box.Width() < box.Height() || left.Width() < least {
		return []plane.Box{box}
	}
	return []plane.Box{left, right}
}

// copied returns the pages for more to be put on them: those it is of stay as they are.
func (f flow) copied() flow {
	f.pages, f.columns = slices.Clone(f.pages), slices.Clone(f.columns)
	for i := range f.pages {
		f.pages[i].entry = f.pages[i].clipped()
	}
	return f
}

// inTwo returns the pages with two columns under the check square: what is under it, and what
// is under the key.
func (f flow) inTwo() flow {
	if f.beside.Width() > 0 {
		under := f.columns[0]
		under.Max.X = f.beside.Min.X - text.Gutter
		f.columns = slices.Insert(slices.Clone(f.columns[1:]), 0, under, f.beside)
	}
	return f
}

// narrowest is the width that all columns have, in mm.
func (f flow) narrowest() float64 {
	least := f.further[0].Width()
	for _, column := range f.columns {
		least = min(least, column.Width())
	}
	return least
}

// put puts a section whole into the first column with room for it; one that has room in no
// empty one goes on from column to column. It reports whether it is there: one that says nothing
// is not, nor what comes where pages are no longer as they are wanted.
func (f *flow) put(s section) bool {
	for f.wanted(*f) {
		column := f.columns[0]
		all := s.set(column.Width(), column.Height())
		if len(all) == 0 {
			return false
		}
		if f.empty || stacked(all) <= column.Height() {
			f.run(s, all)
			return true
		}
		f.next()
	}
	return false
}

// run puts the entries of a section one under the other, and goes on in the next column where
// one is full: there under its heading once more, and set in the width of that. It stops where
// pages are no longer as they are wanted.
func (f *flow) run(s section, all []entry) {
	for i := range all {
		if !f.wanted(*f) {
			return
		}
		one := all[i]
		if i > 0 && s.heading != "" && one.Height > f.columns[0].Height() {
			f.next()
			width := f.columns[0].Width()
			all = s.set(width, 0)
			one = underHeading(s.heading+goesOn, width)
			one.under(all[i])
		}
		for one.Height > f.columns[0].Height() {
			if !f.empty {
				f.next()
				continue
			}
			first, rest := one.split(f.columns[0].Height())
			if rest.Height == 0 {
				break
			}
			f.stack(first)
			one = rest
		}
		f.stack(one)
	}
	f.columns[0].Max.Y -= betweenEntries
}

// stack puts an entry into the column that is filled.
func (f *flow) stack(one entry) {
	p, column := &f.pages[len(f.pages)-1], &f.columns[0]
	p.with(one, plane.Point{X: column.Min.X, Y: column.Max.Y})
	column.Max.Y -= one.Height
	p.foot = min(p.foot, column.Max.Y)
	f.empty = false
}

// next goes on in the next column.
func (f *flow) next() {
	if f.columns = f.columns[1:]; len(f.columns) == 0 {
		f.pages = append(f.pages, frontPage{foot: f.further[0].Max.Y})
		f.columns = slices.Clone(f.further)
	}
	f.empty = true
}

// stacked is how high entries are one under the other, in mm.
func stacked(all []entry) float64 {
	high := 0.0
	for _, one := range all {
		high += one.Height
	}
	return high
}
