package text

import (
	"sort"
	"strings"
	"unicode/utf8"

	"tuckmark/marking/length"
	"tuckmark/pdfout/ink"
)

// Rules of this file: how a text is broken into lines, and shortened where it must
// be. Names and prose are broken at any space (wrap), what has measures in it never
// inside one (wrapMeasures).

// Wrap breaks the text into lines no longer than limit mm, at its spaces; a
// word longer than a whole line is broken where the line ends. It returns at
// least one line.
func Wrap(text string, s ink.Style, limit float64) []string {
	return wrapWords(strings.Fields(text), s, limit)
}

// WrapMeasures is wrap that keeps every measure, such as "17 11/16 in", together.
func WrapMeasures(text string, s ink.Style, limit float64) []string {
	return wrapWords(length.Words(text), s, limit)
}

// wrapWords is wrap for a text that is taken apart already: it breaks between
// its words, whatever is in them.
func wrapWords(words []string, s ink.Style, limit float64) []string {
	lines := []string{""}
	for _, word := range words {
		last := &lines[len(lines)-1]
		if *last == "" {
			*last = word
		} else if longer := *last + " " + word; s.Width(longer) <= limit {
			*last = longer
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

// Shorten returns the text, or as much of its start as fits into limit mm
// together with the sign that something is left out; that sign at least.
func Shorten(text string, s ink.Style, limit float64) string {
	const more = "…"
	if s.Width(text) <= limit {
		return text
	}
	n := fitting(text, s, limit-s.Width(more))
	if short := strings.TrimRight(text[:n], " ,") + more; s.Width(short) <= limit {
		return short
	}
	return more
}

// WrapShortened is wrap in at most most lines: the last is shortened.
func WrapShortened(text string, s ink.Style, limit float64, most int) []string {
	lines := Wrap(text, s, limit)
	if len(lines) <= most {
		return lines
	}
	rest := strings.Join(lines[most-1:], " ")
	return append(lines[:most-1:most-1], Shorten(rest, s, limit))
}

// WithinLines is wrapMeasures in at most most lines. What is left out is left out at
// the end, by whole words where that can be, so that no number is cut short, and a
// sign says so.
func WithinLines(text string, s ink.Style, limit float64, most int) []string {
	lines := WrapMeasures(text, s, limit)
	if len(lines) <= most {
		return lines
	}
	last := length.Words(lines[most-1])
	for n := len(last); n > 0; n-- {
		if short := strings.TrimRight(strings.Join(last[:n], " "), ",;") + " …"; s.Width(short) <= limit {
			return append(lines[:most-1:most-1], short)
		}
	}
	return append(lines[:most-1:most-1], Shorten(lines[most-1]+" …", s, limit))
}

// NamesWithin joins names in limit mm; those that do not fit are counted.
func NamesWithin(names []string, s ink.Style, limit float64) string {
	for shown := len(names); shown > 0; shown-- {
		if text := SomeNames(names, shown); s.Width(text) <= limit {
			return text
		}
	}
	return Shorten(SomeNames(names, 1), s, limit)
}

// NameLines sets names in at most most lines; the last of them counts the names left
// over.
func NameLines(names []string, s ink.Style, limit float64, most int) []string {
	for shown := len(names); shown > 1; shown-- {
		if lines := Wrap(SomeNames(names, shown), s, limit); len(lines) <= most {
			return lines
		}
	}
	return WrapShortened(SomeNames(names, 1), s, limit, most)
}
