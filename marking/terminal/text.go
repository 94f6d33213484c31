package terminal

import (
	"strings"
	"unicode/utf8"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
)

// Rules of this file: a report as plain text, for a screen that is so many letters
// wide. Words wrap; a number is never parted. What has to be looked at begins with "!".

const (
	textIndent = 2  // letters before everything under a heading
	textGap    = 2  // letters between two columns
	leastFirst = 16 // letters that a word in the first column keeps, whatever the others need
	headWidth  = 11 // letters of a head over numbers, before it wraps
	writeRule  = 30 // letters of a line to write on
)

// pictureNote stands for a picture, which a screen of letters cannot show.
const pictureNote = "How it lies is drawn in the PDF that `tuckmark sheet` makes."

// Text gives a report as plain text of at most so many letters in a line, or a few
// more where the numbers of a table need them.
func Text(r mark.Report, width int) string {
	var b strings.Builder
	paragraph := func(first, rest, text string) {
		for i, line := range wrapped(text, width-utf8.RuneCountInString(first)) {
			if i > 0 {
				first = rest
			}
			b.WriteString(first + line + "\n")
		}
	}
	if r.Title != "" {
		paragraph("", "", r.Title)
	}
	for _, note := range r.Notes {
		paragraph("", "", note)
	}
	indent := strings.Repeat(" ", textIndent)
	say := func(all []mark.Sentence) {
		for _, s := range all {
			first := indent
			if s.Warning {
				first = "! "
			}
			text := s.Text
			if s.Blank {
				text += " " + strings.Repeat("_", writeRule)
			}
			paragraph(first, indent, text)
		}
	}
	for _, s := range r.Sections {
		b.WriteString("\n")
		paragraph("", "", s.Title)
		b.WriteString(strings.Repeat("-", min(width, utf8.RuneCountInString(s.Title))) + "\n")
		for i, t := range s.Tables {
			if i > 0 {
				b.WriteString("\n")
			}
			if t.Title != "" {
				paragraph(indent, indent, t.Title)
			}
			for _, line := range tableLines(t, width-textIndent) {
				b.WriteString(strings.TrimRight(indent+line, " ") + "\n")
			}
			say(t.Lines)
		}
		if len(s.Tables) > 0 && len(s.Lines) > 0 {
			b.WriteString("\n")
		}
		say(s.Lines)
		if s.Picture != nil {
			paragraph(indent, indent, pictureNote)
		}
	}
	return b.String()
}

// wrapped parts a text into lines of at most limit letters, between words; a word that
// is longer has a line of its own. A length with its unit is one word.
func wrapped(text string, limit int) []string {
	lines := []string{""}
	for _, word := range length.Words(text) {
		last := &lines[len(lines)-1]
		switch {
		case *last == "":
			*last = word
		case utf8.RuneCountInString(*last)+1+utf8.RuneCountInString(word) <= limit:
			*last += " " + word
		default:
			lines = append(lines, word)
		}
	}
	return lines
}
