package text

import (
	"strings"
	"unicode/utf8"

	"tuckmark/marking/length"
	"tuckmark/pdfout/ink"
)

// Rules of this file: how a text is broken into lines, and shortened where it must
// be. Words without measures are broken at any space (Wrap), what may have measures in it
// never inside one (WrapMeasures).

// Wrap breaks the text into lines no longer than limit mm, at its spaces; a
// word longer than a whole line is broken where the line ends. It returns at
// least one line.
func Wrap(text string, s ink.Style, limit float64) []string {
	return wrapWords(strings.Fields(text), s, limit)
}

// WrapMeasures is Wrap that keeps every measure, such as "17 11/16 in", together.
func WrapMeasures(text string, s ink.Style, limit float64) []string {
	return wrapWords(length.Words(text), s, limit)
}

// wrapWords is Wrap for a text that is taken apart already: it breaks between
// its words, whatever is in them.
func wrapWords(words []string, s ink.Style, limit float64) []string {
	var lines []string
	text := strings.Join(words, " ") // of which each line is a part
	last := s.Line("")
	begin, at := 0, 0 // of that line, and of the word
	for _, word := range words {
		end := at + len(word)
		if last.Text() != "" {
			if longer := last.Grown(text[begin:end]); longer.Width() <= limit {
				last, at = longer, end+1
				continue
			}
			lines = append(lines, last.Text())
		}
		begin = at
		for last = s.Line(word); last.Width() > limit && utf8.RuneCountInString(last.Text()) > 1; last = s.Line(text[begin:end]) {
			n := fitting(last.Text(), s, limit)
			lines, begin = append(lines, text[begin:begin+n]), begin+n
		}
		at = end + 1
	}
	return append(lines, last.Text())
}

// LongestWord is how wide the longest of some words is, in mm.
func LongestWord(words []string, s ink.Style) float64 {
	longest := 0.0
	for _, word := range words {
		longest = max(longest, s.Width(word))
	}
	return longest
}

// fitting returns how many bytes of the text, whole letters and at least one,
// are no longer than limit mm.
func fitting(text string, s ink.Style, limit float64) int {
	fits, line := 0, s.Line("")
	for i, r := range text {
		end := i + utf8.RuneLen(r)
		if line = line.Grown(text[:end]); line.Width() > limit && fits > 0 {
			break
		}
		fits = end
	}
	return fits
}
