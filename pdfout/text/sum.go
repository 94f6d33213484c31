package text

import (
	"strings"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: a sum to be done by hand is words with spaces for numbers among
// them, line by line, in more lines than one where it must. A line with a space in it is
// higher, and a space is never broken.

const (
	// sumStep is the height of a line of the sum that has a space in it, in
	// mm: fractions are written higher than words.
	sumStep = 11.0
	// sumSpace is the width of that space, in mm: "10 1/16 in" written by
	// hand, 10 signs of some 3 mm each, and a little to spare.
	sumSpace = 34.0
	// sumMark is what stands for a space in the text of a sum.
	sumMark = "____"
)

// SumOf sets a sum, line by line.
func SumOf(lines []string, s ink.Style, width float64) Lines {
	var all Lines
	for _, line := range lines {
		all.Under(sumLine(line, s, width))
	}
	return all
}

// sumWord is a word of a sum or a space for a number.
type sumWord struct {
	text  string // "" for a space
	apart bool   // from the word before it
}

// length is how long the word is, without what keeps it apart.
func (w sumWord) length(s ink.Style) float64 {
	if w.text == "" {
		return sumSpace
	}
	return s.Width(w.text)
}

// wordsOfSum takes the text of a sum apart. A word longer than limit mm is cut.
func wordsOfSum(text string, s ink.Style, limit float64) []sumWord {
	var words []sumWord
	for _, word := range strings.Fields(text) {
		apart := true
		for i, piece := range strings.Split(word, sumMark) {
			if i > 0 {
				words = append(words, sumWord{"", apart})
				apart = false
			}
			if piece == "" {
				continue
			}
			for _, cut := range Wrap(piece, s, limit) {
				words = append(words, sumWord{cut, apart})
				apart = false
			}
		}
	}
	return words
}

// sumLine sets a line of a sum, in more lines than one where it must.
func sumLine(text string, s ink.Style, width float64) Lines {
	words := wordsOfSum(text, s, width)
	var set Lines
	for len(words) > 0 {
		n, long, space := 0, 0.0, false
		for n < len(words) {
			next := long + words[n].length(s)
			if n > 0 {
				next += words[n-1].before(words[n], s)
			}
			if n > 0 && next > width {
				break
			}
			long, space = next, space || words[n].text == ""
			n++
		}
		if space {
			set.Space(sumStep)
		} else {
			set.Space(s.Step() + s.Ems(ItemGap))
		}
		saySum(&set, words[:n], s)
		words = words[n:]
	}
	return set
}

// before is how far the next word of a sum stays from this one, in mm.
func (w sumWord) before(next sumWord, s ink.Style) float64 {
	switch {
	case w.text == "" || next.text == "":
		return RuleAway
	case next.apart:
		return s.Width(" ")
	}
	return 0
}

// saySum sets words of a sum as the last line of a text. Words between two spaces are
// one text.
func saySum(set *Lines, words []sumWord, s ink.Style) {
	base := plane.Point{Y: -set.Height + s.Foot()}
	for i := 0; i < len(words); {
		if i > 0 {
			base.X += RuleAway
		}
		if words[i].text == "" {
			set.RuleOff(base.Sub(plane.Point{Y: RuleUnder}), sumSpace)
			base.X += sumSpace
			i++
			continue
		}
		text := words[i].text
		for i++; i < len(words) && words[i].text != ""; i++ {
			if words[i].apart {
				text += " "
			}
			text += words[i].text
		}
		set.Say(text, s, base)
		base.X += s.Width(text)
	}
}
