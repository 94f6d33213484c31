package report

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: a report is set in bands (band.go), in as many columns as a page has
// room for where every table fits one, else in fewer. What stays together is a heading
// with what it is over, a table that is no longer than a column, of a longer one the first
// two and the last two rows, the first two and the last two lines of a sentence, and a
// picture with the sentence before it. That is bounded in height, so that it fits on any
// page: headings have few lines, the words of a row as well, and a picture takes no more
// than its share of a page.

// Heading stands in the header of the pages of figures.
const Heading = "Figures for the cutting table"

const (
	headingLines  = 3     // the most lines of a title or a heading
	mostMeasure   = 160.0 // the most a line of a sentence is long, in mm
	leastColumn   = 80.0  // a column is as wide as this, where there are several, in mm
	sectionAbove  = 7.0   // free above a section, in mm
	tableAbove    = 3.5   // above a table
	pictureAbove  = 3.0   // above a picture
	sentenceAbove = 1.3   // above a sentence
	underHeading  = 1.2   // under the heading of a section
	underTitle    = 1.0   // between the title and the notes
)

// setter sets a report in bands for a paper.
type setter struct {
	paper paper.Paper
	page  plane.Box // what bands may fill of a page
	count int       // how many columns of a page they stand in
	width float64   // of a column, in mm
}

// across is the setter for what stands across the whole page.
func across(p paper.Paper) setter { return setter{p, p.UnderHeader(), 1, p.UnderHeader().Width()} }

// inColumns is the setter for some columns of a page.
func inColumns(p paper.Paper, count int) setter {
	return setter{p, p.UnderHeader(), count, columnWidth(p.UnderHeader().Width(), count)}
}

// mostColumns is how many columns a page has room for.
func mostColumns(p paper.Paper) int {
	return max(1, int((p.UnderHeader().Width()+columnsApart)/(leastColumn+columnsApart)))
}

// Lay lays a report on pages of a paper. No report, and one that says nothing, has
// none; neither a title alone nor a heading over nothing says anything. A table whose
// numbers are wider than the paper is refused.
func Lay(r *mark.Report, p paper.Paper) ([]Page, error) {
	if r == nil {
		return nil, nil
	}
	s := across(p)
	over := s.over(*r)
	if heightOf(over) <= overShare*s.page.Height() {
		for n := mostColumns(p); n > 1 && s.count == 1; n-- {
			if narrow := inColumns(p, n); narrow.fits(*r) {
				s = narrow
			}
		}
	}
	bands, err := s.sections(*r)
	if err != nil {
		return nil, err
	}
	if len(bands) == 0 && !slices.ContainsFunc(r.Notes, func(note string) bool { return note != "" }) {
		return nil, nil
	}
	return s.paged(over, bands), nil
}

// over sets what a report begins with: its title and its notes.
func (s setter) over(r mark.Report) []band {
	var bands []band
	if r.Title != "" {
		title := s.heading(r.Title, ink.Part())
		title.Space(underTitle)
		bands = append(bands, title)
	}
	for _, note := range r.Notes {
		bands = append(bands, s.sentence(mark.Sentence{Text: note})...)
	}
	return bands
}

// sections sets the sections of a report.
func (s setter) sections(r mark.Report) ([]band, error) {
	var bands []band
	for _, section := range r.Sections {
		more, err := s.section(section)
		if err != nil {
			return nil, err
		}
		bands = append(bands, s.under(section.Title, more)...)
	}
	return bands, nil
}

// under says of the bands of a section what heads it, which comes again, as one that goes on,
// where a column begins with one of them.
func (s setter) under(title string, bands []band) []band {
	for i := range bands {
		b := &bands[i]
		b.section = title
		if i == 0 || title == "" {
			continue
		}
		if b.again = slices.Clone(b.again); len(b.again) > 0 {
			b.again[0].above = underHeading
		}
		b.again = append([]band{s.heading(title+continued, ink.Heading())}, b.again...)
	}
	return bands
}

// section sets a section: its tables, its sentences and its picture.
func (s setter) section(section mark.Section) ([]band, error) {
	var bands []band
	among := gridOf(s.width).of(section.Tables)
	for _, t := range section.Tables {
		more, err := s.table(t, among)
		if err != nil {
			return nil, err
		}
		bands = append(bands, more...)
	}
	if section.Picture == nil {
		return s.finished(section, bands, s.sentences(section.Lines)), nil
	}
	drawn := s.picture(*section.Picture)
	if s.count > 1 && drawn.hardToRead() {
		// Beside tables only the last sentence goes with the picture; what does not,
		// stays in the column.
		title, first, rest := section.Title, []mark.Sentence(nil), section.Lines
		if len(bands) > 0 {
			title, first = "", allButLast(section.Lines)
			rest = section.Lines[len(first):]
		}
		if b, ok := s.acrossPage(title, rest, *section.Picture, drawn); ok {
			if len(bands) > 0 {
				bands = s.headed(section.Title, append(bands, s.sentences(first)...))
			}
			return append(bands, b), nil
		}
	}
	return s.finished(section, bands, s.pictured(section.Lines, drawn)), nil
}

// finished puts a section's heading over its tables and what comes after them. One
// without tables is kept whole.
func (s setter) finished(section mark.Section, tables, after []band) []band {
	all := s.headed(section.Title, append(tables, after...))
	if len(tables) == 0 {
		s.keepWhole(all)
	}
	return all
}

// keepWhole keeps bands together, if a column has room for them under a heading, and a
// single one under the report's title as well.
func (s setter) keepWhole(bands []band) {
	over := headingLines*ink.Heading().Step() + underHeading
	if s.count == 1 {
		over += headingLines*ink.Part().Step() + underTitle + sectionAbove
	}
	if heightOf(bands) <= s.page.Height()-over {
		keepAll(bands)
	}
}

// heading sets a heading in a few lines.
func (s setter) heading(words string, style ink.Style) band {
	return headingOf(text.WithinLines(words, style, s.width, headingLines), style)
}

// headed puts a section's heading, if it has any, over what it says; nothing where
// it says nothing.
func (s setter) headed(title string, bands []band) []band {
	if len(bands) == 0 {
		return nil
	}
	if title != "" {
		bands[0].above = underHeading
		heading := s.heading(title, ink.Heading())
		bands = append([]band{heading}, bands...)
	}
	bands[0].above = sectionAbove
	return bands
}

// pictured sets a picture under some sentences, with the last of them.
func (s setter) pictured(lines []mark.Sentence, drawn setPicture) []band {
	bands := s.sentences(lines)
	if len(bands) > 0 {
		bands[len(bands)-1].keep = true
	}
	return append(bands, drawn.bands...)
}

// acrossPage sets a picture across the page, with a heading and sentences that go with
// it, if it can be read better there than in a column and leaves something of the page.
func (s setter) acrossPage(title string, lines []mark.Sentence, p mark.Picture, inColumn setPicture) (band, bool) {
	wide := across(s.paper)
	drawn := wide.picture(p)
	if !drawn.easierThan(inColumn) {
		return band{}, false
	}
	b := band{across: wide.headed(title, wide.pictured(lines, drawn))}
	return b, heightOf(b.across) <= acrossShare*s.page.Height()
}

// allButLast returns the sentences before the last.
func allButLast(lines []mark.Sentence) []mark.Sentence {
	return lines[:max(0, len(lines)-1)]
}
