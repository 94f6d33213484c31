package report

import (
	"math"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: the figures that are read at the cutting table have pages
// of their own. They are set in bands (band.go), in two columns where every table
// fits one, else in one. What stays together is a heading with what it is over, the
// first two and the last two rows of a table, the first two and the last two lines
// of a sentence, and a picture with the sentence before it. That is bounded in
// height, so that it fits on any page: headings have few lines, the words of a row
// as well, and a picture takes no more than its share of a page. A table that goes
// on in the next column says again what it is called and what its columns are.

// Heading stands in the header of the pages of figures.
const Heading = "Figures for the cutting table"

const (
	figuresTitle   = 15.0 // sizes in points: of the title on the first page
	sectionSize    = 11.0
	figureSize     = 9.0 // of tables and sentences
	asideSize      = 8.0 // of what is said under a picture
	headingLines   = 3   // the most lines of a title or a heading
	MostMeasure    = 160 // the most a line of a sentence is long, in mm
	sectionAbove   = 6.0 // free above a section, in mm
	tableAbove     = 3.5 // above a table
	pictureAbove   = 3.0 // above a picture
	underHeading   = 1.2 // under the heading of a section
	sentenceAbove  = 1.3 // above a sentence
	underTheTitle  = 1.0 // between the title and the notes
	flagRoom       = 5.0 // what the mark of a warning takes up in front of it, in mm
	flagWidth      = 3.6 // of that mark
	flagHeight     = 3.2
	flagDown       = 0.4 // how far it reaches below the base line
	FlagSignSize   = 6.5 // of the sign in it, in points
	flagSignUp     = 0.4 // how far the sign stands over the foot of the mark, in mm
	FlagSign       = "!"
	continuedWords = " (continued)"
)

// Setter sets a report in bands.
type Setter struct {
	width float64 // of the bands, in mm
	half  bool    // they stand in one of two columns of a page
	Page  plane.Box
	Paper paper.Paper
}

// Lay lays the report of a set on pages; a report that says nothing has
// none.
func Lay(set arrange.Set, p paper.Paper) ([]Page, error) {
	if set.Report == nil {
		return nil, nil
	}
	r := *set.Report
	whole := Setter{Page: p.UnderHeader(), Paper: p}.across()
	s, count := whole, 1
	over := whole.over(r)
	if half := whole.Halved(); half.fits(r) && heightOf(over) <= overShare*whole.Page.Height() {
		s, count = half, 2
	}
	bands, err := s.Report(r)
	if err != nil {
		return nil, err
	}
	if len(bands) == 0 && !slices.ContainsFunc(r.Notes, func(note string) bool { return note != "" }) {
		return nil, nil
	}
	if count == 1 {
		bands, over = append(over, bands...), nil
	}
	return paged(over, bands, whole.Page, count), nil
}

// across is the setter for what stands across the whole page.
func (s Setter) across() Setter {
	s.width, s.half = s.Page.Width(), false
	return s
}

// Halved is the setter for one of two columns of the page.
func (s Setter) Halved() Setter {
	s.width, s.half = ColumnWidth(s.Page.Width(), 2), true
	return s
}

// over sets what a report begins with: its title and its notes.
func (s Setter) over(r mark.Report) []band {
	var bands []band
	if r.Title != "" {
		title := s.heading(r.Title, ink.Strong(figuresTitle))
		title.Space(underTheTitle)
		bands = append(bands, title)
	}
	for _, note := range r.Notes {
		bands = append(bands, s.sentence(mark.Sentence{Text: note})...)
	}
	return bands
}

// Report sets the sections of a report.
func (s Setter) Report(r mark.Report) ([]band, error) {
	var bands []band
	for _, section := range r.Sections {
		more, err := s.section(section)
		if err != nil {
			return nil, err
		}
		bands = append(bands, more...)
	}
	return bands, nil
}

// section sets a section: its tables, its sentences and its picture.
func (s Setter) section(section mark.Section) ([]band, error) {
	var bands []band
	for _, t := range section.Tables {
		more, err := s.table(t, section.Title)
		if err != nil {
			return nil, err
		}
		bands = append(bands, more...)
	}
	if section.Picture == nil {
		return s.finished(section, bands, s.sentences(section.Lines)), nil
	}
	drawn := s.picture(*section.Picture)
	if s.half && drawn.hardToRead() {
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
// without tables is rather not broken.
func (s Setter) finished(section mark.Section, tables, after []band) []band {
	all := s.headed(section.Title, append(tables, after...))
	if len(tables) == 0 && len(all) > 0 {
		all[0].whole = len(all)
	}
	return all
}

// heading sets a heading in a few lines.
func (s Setter) heading(words string, style ink.Style) band {
	return headingOf(text.WithinLines(words, style, s.width, headingLines), style)
}

// headed puts a section's heading, if it has any, over what it says; nothing where
// it says nothing.
func (s Setter) headed(title string, bands []band) []band {
	if len(bands) == 0 {
		return nil
	}
	if title != "" {
		bands[0].above = underHeading
		heading := s.heading(title, ink.Strong(sectionSize))
		bands = append([]band{heading}, bands...)
	}
	bands[0].above = sectionAbove
	return bands
}

// pictured sets a picture under some sentences, with the last of them.
func (s Setter) pictured(lines []mark.Sentence, drawn setPicture) []band {
	bands := s.sentences(lines)
	if len(bands) > 0 {
		bands[len(bands)-1].keep = true
	}
	return append(bands, drawn.bands...)
}

// acrossPage sets a picture across the page, with a heading and sentences that go with
// it, if it can be read better there than in a column and leaves something of the page.
func (s Setter) acrossPage(title string, lines []mark.Sentence, p mark.Picture, inColumn setPicture) (band, bool) {
	wide := s.across()
	drawn := wide.picture(p)
	if !drawn.easierThan(inColumn) {
		return band{}, false
	}
	b := band{across: wide.headed(title, wide.pictured(lines, drawn))}
	return b, heightOf(b.across) <= acrossShare*s.Page.Height()
}

// allButLast returns the sentences before the last.
func allButLast(lines []mark.Sentence) []mark.Sentence {
	return lines[:max(0, len(lines)-1)]
}

// sentences sets sentences one under the other.
func (s Setter) sentences(lines []mark.Sentence) []band {
	var bands []band
	for _, line := range lines {
		bands = append(bands, s.sentence(line)...)
	}
	return bands
}

// sentence sets a sentence: a warning bold and with a mark in front of it, a
// blank with a line to write on behind its words, or under them where there is
// not enough room behind.
func (s Setter) sentence(said mark.Sentence) []band {
	if said.Text == "" && !said.Blank {
		return nil
	}
	style, indent := ink.Plain(figureSize), 0.0
	if said.Warning {
		style, indent = ink.Strong(figureSize), flagRoom
	}
	width := math.Min(s.width, MostMeasure)
	lines := text.WrapMeasures(said.Text, style, width-indent)
	bands := bandsOf(lines, style, indent)
	if said.Blank {
		from := indent
		if last := lines[len(lines)-1]; last != "" {
			from += style.Width(last) + text.RuleAway
		}
		if width-from < text.LeastToWrite {
			bands, from = append(bands, band{}), indent
		}
		bands[len(bands)-1].writeOn(from, width)
	}
	keepEnds(bands)
	if said.Warning {
		bands[0].flag()
	}
	bands[0].above = sentenceAbove
	return bands
}

// writeOn gives the band a line to write on between two places, and the height
// that handwriting needs.
func (b *band) writeOn(from, to float64) {
	for i := range b.Labels {
		b.Labels[i].At.Y -= text.WriteStep - b.Height
	}
	b.Height = text.WriteStep
	b.RuleOff(plane.Point{X: from, Y: -b.Height + ink.Plain(figureSize).Foot() - text.RuleUnder}, to-from)
}

// flag puts the mark of a warning at the left of the band: a filled triangle with
// a sign in it.
func (b *band) flag() {
	sign := ink.Strong(FlagSignSize).In(ink.White())
	foot := plane.Point{Y: -b.Height + ink.Plain(figureSize).Foot() - flagDown}
	b.flags = append(b.flags, plane.Path{foot, foot.Add(plane.Point{X: flagWidth}), foot.Add(plane.Point{X: flagWidth / 2, Y: flagHeight})})
	b.Say(FlagSign, sign, foot.Add(plane.Point{X: (flagWidth - sign.Width(FlagSign)) / 2, Y: flagSignUp}))
}

// Check refuses what the fonts cannot print, and a picture that is none.
func Check(r *mark.Report) error {
	if r == nil {
		return nil
	}
	for _, text := range Texts(*r) {
		if bad, found := ink.Unprintable(text); found {
			return ink.NoLetter(bad, "a text of the figures")
		}
	}
	for _, section := range r.Sections {
		if p := section.Picture; p != nil && !drawable(*p) {
			return &fault.Fault{Cause: "the figures have a picture that leads nowhere on paper"}
		}
	}
	return nil
}

// drawable reports whether a picture has a size, and all its places are some.
func drawable(p mark.Picture) bool {
	if !(p.Width > 0 && p.Height > 0 && ink.IsPlace(plane.Point{X: p.Width, Y: p.Height})) {
		return false
	}
	for _, shape := range p.Shapes {
		if slices.ContainsFunc(shape.Outline, func(q plane.Point) bool { return !ink.IsPlace(q) }) {
			return false
		}
	}
	return !slices.ContainsFunc(p.Bands, func(b mark.Band) bool {
		return !ink.IsPlace(plane.Point{X: b.From, Y: b.To}) || !ink.IsPlace(plane.Point{X: b.Width})
	})
}

// Texts returns every text of a report.
func Texts(r mark.Report) []string {
	texts := append([]string{r.Title}, r.Notes...)
	say := func(lines []mark.Sentence) {
		for _, line := range lines {
			texts = append(texts, line.Text)
		}
	}
	for _, section := range r.Sections {
		texts = append(texts, section.Title)
		for _, t := range section.Tables {
			texts = append(append(texts, t.Title), t.Heads...)
			for _, row := range t.Rows {
				texts = append(texts, row.Cells...)
			}
			say(t.Lines)
		}
		say(section.Lines)
		if p := section.Picture; p != nil {
			texts = append(texts, p.Caption)
			for _, shape := range p.Shapes {
				texts = append(texts, shape.Name)
			}
			for _, b := range p.Bands {
				texts = append(texts, b.Text)
			}
		}
	}
	return texts
}
