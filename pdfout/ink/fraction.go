package ink

import (
	"iter"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Rules of this file: a fraction of a length, such as the one of "17 11/16 in", is set as one:
// small figures, raised and lowered, about a slanting stroke. All are built alike, of the
// font's raised and lowered figures, so that eighths look as sixteenths do; so is a fraction
// of one letter. The figures are set larger than the font sets them in its own eighths,
// as high as a small x, and so close that they reach no higher than other letters: 3/16
// taken for 5/16 is cloth cut wrong.
//
// What counts as a fraction is what is printed as a length: a numerator without a common
// factor with a larger denominator, which is a power of 2 to 64, or 3. It stands between
// spaces or signs; a part of a date, and what a page or a size is numbered with, is none.

// How a fraction is built, in sizes of the text.
const (
	figureScale = 1.19 // of the letters that are used as figures, which are 0.45 high
	// figureStep is from one figure to the next, and figureLeft what is taken off to the left
	// of each: the letters have more room about them.
	figureStep = 0.38 * figureScale
	figureLeft = 0.03 * figureScale
	// raisedDown and loweredUp bring the feet of the lower figures a little under the base
	// line, and the heads of the upper ones a little over the capitals.
	raisedDown = 0.15
	loweredUp  = 0.12
	strokeGap  = 0.20 * figureScale // between the upper and the lower figures
	// strokeScale is that of the slanting stroke, which begins strokeLeft before the gap and
	// stands strokeDown under the line.
	strokeScale = 1.10
	strokeLeft  = -0.005
	strokeDown  = 0.04
	// wholeGap is between a whole number and its fraction, and fractionSide beside a
	// fraction.
	wholeGap     = 0.10
	fractionSide = 0.03
)

// strokeSign is the slanting stroke.
const strokeSign = "⁄"

// raised and lowered are the small figures, from 0 to 9.
func raised() [10]string {
	return [...]string{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"}
}

func lowered() [10]string {
	return [...]string{"₀", "₁", "₂", "₃", "₄", "₅", "₆", "₇", "₈", "₉"}
}

// part is a part of a text that is set at one size.
type part struct {
	text string
	size float64 // in sizes of the text
	// right and up are where it begins, in sizes of the text.
	right, up float64
}

// partsOf takes a text apart and returns how long it is, in sizes of its letters. One without
// a fraction is one part.
func (f *face) partsOf(text string) (parts []part, ems float64) {
	ems = f.eachPart(text, func(p part) { parts = append(parts, p) })
	return parts, ems
}

// eachPart is partsOf that keeps no part: most texts are measured many times, and written once.
func (f *face) eachPart(text string, visit func(part)) (ems float64) {
	plain := func(text string) {
		if text != "" {
			visit(part{text, 1, ems, 0})
			ems += f.ems(text)
		}
	}
	done := 0
	for found := range fractionsIn(text) {
		plain(text[done:found.from])
		if found.whole {
			ems += wholeGap
		}
		ems += fractionSide
		figures := func(number string, of [10]string, up float64) {
			for _, digit := range number {
				visit(part{of[digit-'0'], figureScale, ems - figureLeft, up})
				ems += figureStep
			}
		}
		figures(found.over, raised(), -raisedDown)
		visit(part{strokeSign, strokeScale, ems - strokeLeft, -strokeDown})
		ems += strokeGap
		figures(found.under, lowered(), loweredUp)
		ems += fractionSide
		done = found.to
	}
	plain(text[done:])
	return ems
}

// fraction is where a fraction stands in a text, in bytes, the space behind a whole number
// among it.
type fraction struct {
	from, to    int
	over, under string
	whole       bool // a whole number stands before it
}

// letterFractions are the fractions of one letter that the font has.
var letterFractions = [...]rune{'½', '¼', '¾', '⅛', '⅜', '⅝', '⅞'}

var letterParts = [...][2]string{{"1", "2"}, {"1", "4"}, {"3", "4"}, {"1", "8"}, {"3", "8"}, {"5", "8"}, {"7", "8"}}

// mayHaveFraction reports whether a text may have a fraction; most have none.
func mayHaveFraction(text string) bool {
	for i := range len(text) {
		if text[i] == '/' || text[i] >= utf8.RuneSelf {
			return true
		}
	}
	return false
}

// fractionsIn finds the fractions of a text, from left to right.
func fractionsIn(text string) iter.Seq[fraction] {
	return func(yield func(fraction) bool) {
		if !mayHaveFraction(text) {
			return
		}
		done := 0
		for at, r := range text {
			f, is := fractionAt(text, at, r, done)
			if !is {
				continue
			}
			if !yield(f) {
				return
			}
			done = f.to
		}
	}
}

// fractionAt is the fraction whose one letter, or whose stroke, is the letter at a place of a
// text, behind what is done of it.
func fractionAt(text string, at int, r rune, done int) (fraction, bool) {
	if r == '/' {
		return fractionAbout(text, at, done)
	}
	k := slices.Index(letterFractions[:], r)
	if k < 0 {
		return fraction{}, false
	}
	f := fraction{from: at, to: at + utf8.RuneLen(r), over: letterParts[k][0], under: letterParts[k][1]}
	return f.afterWhole(text, done), true
}

// fractionAbout is the fraction about a stroke of a text, behind what is done of it.
func fractionAbout(text string, stroke, done int) (fraction, bool) {
	f := fraction{from: stroke, to: stroke + 1}
	for f.from > done && isDigit(text[f.from-1]) {
		f.from--
	}
	for f.to < len(text) && isDigit(text[f.to]) {
		f.to++
	}
	f.over, f.under = text[f.from:stroke], text[stroke+1:f.to]
	if !isLength(f.over, f.under) || !opens(text[done:f.from]) || !closes(text[f.to:]) {
		return f, false
	}
	return f.afterWhole(text, done), true
}

// afterWhole takes up the space between a whole number and its fraction.
func (f fraction) afterWhole(text string, done int) fraction {
	before := strings.TrimRight(text[done:f.from], " \u00a0")
	gap := f.from - done - len(before)
	digits := len(before) - len(strings.TrimRight(before, "0123456789"))
	if digits > 0 && (gap == 1 || gap == 0 || text[done+len(before):f.from] == "\u00a0") && opens(before[:len(before)-digits]) {
		f.from -= gap
		f.whole = true
	}
	return f
}

func isDigit(b byte) bool { return b >= '0' && b <= '9' }

// isLength reports whether a fraction is one that lengths are printed with.
func isLength(over, under string) bool {
	if len(over) == 0 || len(over) > 2 || over[0] == '0' {
		return false
	}
	switch under {
	case "2", "4", "8", "16", "32", "64":
		odd := (over[len(over)-1]-'0')%2 == 1
		return odd && (len(over) < len(under) || len(over) == len(under) && over < under)
	case "3":
		return over == "1" || over == "2"
	}
	return false
}

// numbered are words whose number may be written with a stroke.
func numbered() []string {
	return []string{"page", "pages", "size", "sizes", "part", "parts", "row", "step", "age", "ages", "no."}
}

// opens reports whether a fraction, or a number with one, may stand behind a text.
func opens(before string) bool {
	r, _ := utf8.DecodeLastRuneInString(before)
	if before == "" || strings.ContainsRune("([{“‘\"'+−–—=×", r) {
		return true
	}
	last := ""
	for word := range strings.FieldsSeq(before) {
		last = word
	}
	return unicode.IsSpace(r) && !slices.Contains(numbered(), strings.ToLower(last))
}

// closes reports whether a text may stand behind a fraction.
func closes(after string) bool {
	r, n := utf8.DecodeRuneInString(after)
	switch {
	case after == "":
		return true
	case r == '.' || r == ',' || r == ':':
		return len(after) == n || !isDigit(after[n])
	}
	return r != '/' && !unicode.IsLetter(r) && !unicode.IsDigit(r)
}
