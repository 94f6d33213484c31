package terminal

import (
	"strings"
	"unicode/utf8"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
)

// Rules of this file. Words wrap between words; a number is never parted. What has to be
// looked at begins with "!".

// Width is how many letters a line of a screen has, where nothing says how wide that is.
const Width = 80

const (
	indent    = "  " // before everything under a heading
	warning   = "! " // the same before what has to be looked at
	writeRule = 30   // letters of a line to write on
)

// pictureNote stands for a picture, which a screen of letters cannot show.
const pictureNote = "How it lies is drawn in the PDF that `tuckmark sheet` makes."

// Text gives a report as plain text of at most so many letters in a line, or a few
// more where the numbers of a table need them; a width below 1 counts as 1. Every line
// ends with a line end.
func Text(r mark.Report, width int) string {
	s := screen{width: max(1, width)}
	if r.Title != "" {
		s.paragraph("", r.Title)
	}
	for _, note := range r.Notes {
		s.paragraph("", note)
	}
	for _, section := range r.Sections {
		s.line("")
		s.section(section)
	}
	return s.text.String()
}

// screen is text that is being set.
type screen struct {
	text  strings.Builder
	width int // in letters
}

func (s *screen) section(section mark.Section) {
	s.paragraph("", section.Title)
	s.line(strings.Repeat("-", min(s.width, letters(section.Title))))
	for i, t := range section.Tables {
		if i > 0 {
			s.line("")
		}
		if t.Title != "" {
			s.paragraph(indent, t.Title)
		}
		for _, line := range tableLines(t, s.width-letters(indent)) {
			s.line(indent + line)
		}
		s.say(t.Lines)
	}
	if len(section.Tables) > 0 && len(section.Lines) > 0 {
		s.line("")
	}
	s.say(section.Lines)
	if section.Picture != nil {
		s.paragraph(indent, pictureNote)
	}
}

func (s *screen) say(lines mark.Lines) {
	for _, said := range lines {
		begin, text := indent, said.Text
		switch {
		case said.Entry != "":
			text = said.Entry
		case said.Place != "":
			text = said.Place + ": " + said.Text
		}
		if said.Warning {
			begin = warning
		}
		if said.Blank {
			text += " " + strings.Repeat("_", writeRule)
		}
		s.paragraph(begin, text)
	}
}

// paragraph sets a text in lines, the first behind what it begins with and the others
// under it.
func (s *screen) paragraph(begin, text string) {
	for _, line := range Wrapped(text, s.width-letters(begin)) {
		s.line(begin + line)
		begin = strings.Repeat(" ", letters(begin))
	}
}

func (s *screen) line(text string) { s.text.WriteString(strings.TrimRight(text, " ") + "\n") }

// letters is how many letters wide a text is.
func letters(text string) int { return utf8.RuneCountInString(text) }

// Wrapped parts a text into lines of at most limit letters, between words; a word that
// is longer has a line of its own. A length with its unit is one word.
func Wrapped(text string, limit int) []string {
	lines := []string{""}
	for _, word := range length.Words(text) {
		last := &lines[len(lines)-1]
		switch {
		case *last == "":
			*last = word
		case letters(*last)+1+letters(word) <= limit:
			*last += " " + word
		default:
			lines = append(lines, word)
		}
	}
	return lines
}
