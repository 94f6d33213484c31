package text

import (
	"strings"

	"tuckmark/marking/length"
	"tuckmark/pdfout/ink"
)

// Rules of this file: what is left out of a text is left out at its end, and a sign or a
// count says so.

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

// WrapShortened is Wrap in at most most lines: the last is shortened.
func WrapShortened(text string, s ink.Style, limit float64, most int) []string {
	lines := Wrap(text, s, limit)
	if len(lines) <= most {
		return lines
	}
	rest := strings.Join(lines[most-1:], " ")
	return append(lines[:most-1:most-1], Shorten(rest, s, limit))
}

// WithinLines is WrapMeasures in at most most lines. What is left out is left out at
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

// NameLines sets names in at most most lines; the last of them counts the names left
// over.
func NameLines(names []string, s ink.Style, limit float64, most int) []string {
	for shown := namesWithin(names, s, float64(most)*(limit+s.Width(" "))); shown > 1; shown-- {
		if lines := Wrap(someNames(names, shown), s, limit); len(lines) <= most {
			return lines
		}
	}
	return WrapShortened(someNames(names, 1), s, limit, most)
}

// namesWithin returns how many of some names are no longer together than limit mm: more do not
// fit lines that are so long together, with the spaces at which these are broken.
func namesWithin(names []string, s ink.Style, limit float64) int {
	together := 0.0
	for i, name := range names {
		if together += s.Width(strings.Join(strings.Fields(name), " ")); together > limit {
			return i
		}
	}
	return len(names)
}
