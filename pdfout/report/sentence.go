package report

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a sentence is set in lines that are easy to read, over measures
// that are never broken. A warning is bold and has a black bar in front of all its lines,
// with a sign beside the first, so that it is seen without being read, in grey as well.

const (
	flagRoom  = 5.5 // what the bar of a warning takes up in front of it, in mm
	flagWidth = 3.8 // of that bar at the first line, where the sign stands in it
	barWidth  = 1.2 // of it at the others
	flagSign  = "!"
)

// sentences sets sentences one under the other.
func (s setter) sentences(lines []mark.Sentence) []band {
	var bands []band
	for _, line := range lines {
		bands = append(bands, s.sentence(line)...)
	}
	return bands
}

// sentence sets a sentence: a warning bold and with a mark in front of it, a
// blank with a line to write on behind its words, or under them where there is
// not enough room behind.
func (s setter) sentence(said mark.Sentence) []band {
	if said.Text == "" && !said.Blank {
		return nil
	}
	style, indent := ink.Text(), 0.0
	if said.Warning {
		style, indent = ink.StrongText(), flagRoom
	}
	width := min(s.width, mostMeasure)
	lines := text.WrapMeasures(said.Text, style, width-indent)
	last, from := len(lines)-1, indent
	if lines[last] != "" {
		from += style.Width(lines[last]) + text.RuleAway
	}
	if said.Blank && width-from < text.LeastToWrite {
		lines, last, from = append(lines, ""), last+1, indent
	}
	bands := bandsOf(lines, style, indent)
	if said.Blank {
		bands[last] = toWriteOn(lines[last], style, indent, from, width)
	}
	keepEnds(bands)
	if said.Warning {
		flag(bands)
	}
	bands[0].above = sentenceAbove
	return bands
}

// toWriteOn is a line of a text with a line to write on behind it, between two places,
// and the height that handwriting needs.
func toWriteOn(words string, s ink.Style, left, from, to float64) band {
	b := band{Lines: text.Lines{Height: text.WriteStep - s.Step()}}
	b.AddAt([]string{words}, s, left, s.Foot())
	b.RuleOff(plane.Point{X: from, Y: -b.Height + s.Foot() - text.RuleUnder}, to-from)
	return b
}

// flag puts the bar of a warning at the left of its bands, with a sign at the first.
func flag(bands []band) {
	for i := range bands {
		wide := barWidth
		if i == 0 {
			wide = flagWidth
		}
		b := &bands[i]
		b.flags = append(b.flags, plane.Box{Min: plane.Point{Y: -b.Height}, Max: plane.Point{X: wide}}.Outline())
	}
	sign := ink.StrongText().In(ink.White())
	bands[0].Say(flagSign, sign, plane.Point{X: (flagWidth - sign.Width(flagSign)) / 2, Y: -bands[0].Height + sign.Foot()})
}
