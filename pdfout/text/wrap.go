package text

import (
	"sort"
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
	lines := []string{""}
	for _, word := range words {
		last := &lines[len(lines)-1]
		if *last == "" {
			*last = word
		} else if longer := *last + " " + word; s.Width(longer) <= limit {
			*last = longer
			continue
		} else {
			lines = append(lines, word)
		}
		for rest := lines[len(lines)-1]; s.Width(rest) > limit && utf8.RuneCountInString(rest) > 1; {
			n := fitting(rest, s, limit)
			lines[len(lines)-1] = rest[:n]
			rest = rest[n:]
			lines = append(lines, rest)
		}
	}
	return lines
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
	var ends []int // of each letter
	for i, r := range text {
		ends = append(ends, i+utf8.RuneLen(r))
	}
	n := sort.Search(len(ends), func(i int) bool { return s.Width(text[:ends[i]]) > limit })
	return ends[max(0, n-1)]
}
