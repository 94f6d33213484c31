package report

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a sentence is set in lines that are easy to read, over measures
// that are never broken. A warning is bold and has a mark in front of it, so that it
// is seen without being read.

const (
	flagRoom     = 5.0 // what the mark of a warning takes up in front of it, in mm
	flagWidth    = 3.6 // of that mark
	flagHeight   = 3.2
	flagDown     = 0.4 // how far it reaches below the base line
	flagSignSize = 6.5 // of the sign in it, in points
	flagSignUp   = 0.4 // how far the sign stands over the foot of the mark, in mm
	flagSign     = "!"
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
	style, indent := ink.Plain(figureSize), 0.0
	if said.Warning {
		style, indent = ink.Strong(figureSize), flagRoom
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
		bands[0].flag()
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

// flag puts the mark of a warning at the left of the band: a filled triangle with
// a sign in it.
func (b *band) flag() {
	sign := ink.Strong(flagSignSize).In(ink.White())
	foot := plane.Point{Y: -b.Height + ink.Plain(figureSize).Foot() - flagDown}
	b.flags = append(b.flags, plane.Path{foot, foot.Add(plane.Point{X: flagWidth}), foot.Add(plane.Point{X: flagWidth / 2, Y: flagHeight})})
	b.Say(flagSign, sign, foot.Add(plane.Point{X: (flagWidth - sign.Width(flagSign)) / 2, Y: flagSignUp}))
}
