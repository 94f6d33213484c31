package ink

import (
	"fmt"
	"sync"
	"unicode"
	"unicode/utf8"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"tuckmark/marking/fault"
	"tuckmark/pdfout/paper"
)

// Rules of this file: all text is set in one family, the Go fonts, which have
// the eighths, primes and arrows a maker's texts need. Sizes are in points
// (1/72 in), lengths in mm.

// Weight is one of the two cuts of the family.
type Weight int

// The weights that text is set in.
const (
	Regular Weight = iota
	Bold
)

// face is a cut of the family, read.
type face struct {
	name string // as the PDF's writer knows it: "" or "B"
	full string // as the font calls itself
	data []byte
	font *sfnt.Font
	// usual are the letters of most texts, looked up once: setting text asks for them over
	// and over.
	usual [usualLetters]letter
}

// letter is what is asked of a letter of a face.
type letter struct {
	ems float64 // its width
	has bool    // the face has it
}

// usualLetters is how many letters, the first of Unicode, are at hand: those of western
// Europe.
const usualLetters = 0x180

// faces are those of the weights, read when first asked for.
var faces = sync.OnceValue(func() [2]*face {
	return [...]*face{Regular: readFace("", "GoRegular", goregular.TTF), Bold: readFace("B", "Go-Bold", gobold.TTF)}
})

// readFace reads an embedded font.
func readFace(name, full string, ttf []byte) *face {
	read, err := sfnt.Parse(ttf)
	if err != nil {
		// The font is part of the program, and so not at a maker's mercy.
		panic("the embedded font " + full + " cannot be read: " + err.Error())
	}
	f := &face{name: name, full: full, data: ttf, font: read}
	var buf sfnt.Buffer
	for r := range f.usual {
		f.usual[r] = f.lookUp(rune(r), &buf)
	}
	return f
}

// lookUp looks a letter up in the face; one that it has not is as wide as what it has instead.
// The buffer may have been used before.
func (f *face) lookUp(r rune, buf *sfnt.Buffer) letter {
	em := fixed.I(int(f.font.UnitsPerEm()))
	glyph, err := f.font.GlyphIndex(buf, r)
	step, _ := f.font.GlyphAdvance(buf, glyph, em, font.HintingNone)
	return letter{float64(step) / float64(em), err == nil && glyph != 0}
}

// letterOf returns a letter of the face.
func (f *face) letterOf(r rune) letter {
	if r >= 0 && r < usualLetters {
		return f.usual[r]
	}
	return f.lookUp(r, new(sfnt.Buffer))
}

// CanPrint reports whether the embedded fonts, the regular and the bold one,
// have the letter or sign r. Signs that end a line or move along it, such as
// a tab, cannot be printed; a plain space can.
func CanPrint(r rune) bool {
	if !unicode.IsPrint(r) && r != '\u00a0' || r == utf8.RuneError || r > highest {
		return false
	}
	for _, f := range faces() {
		if !f.letterOf(r).has {
			return false
		}
	}
	return true
}

// highest is the last sign that the writer of the PDF can take.
const highest = 0xffff

// width returns how long the text is at a size in points, in mm.
func (f *face) width(text string, size float64) float64 {
	return f.longer(line{plain: true}, text).ems * size * paper.Pt
}

// line is a text with how long it is, in sizes of its letters.
type line struct {
	text  string
	ems   float64
	plain bool // without fractions, which are set closer than their letters
}

// longer measures a text that begins with that of a line. Of what is plain the letters before are
// not gone through again; the sum is the same to the last bit as if they were.
func (f *face) longer(l line, text string) line {
	more := text[len(l.text):]
	l.text = text
	if l.plain = l.plain && !mayHaveFraction(more); !l.plain {
		l.ems = f.eachPart(l.text, func(part) {})
		return l
	}
	for _, r := range more {
		l.ems += f.letterOf(r).ems
	}
	return l
}

// ems returns how long letters are, one after the other, in sizes of them.
func (f *face) ems(text string) float64 {
	sum := 0.0
	for _, r := range text {
		sum += f.letterOf(r).ems
	}
	return sum
}

// CheckTexts refuses the first letter or sign of some texts that cannot be printed; whose
// says whose texts they are. The error is a *fault.Fault without a place.
func CheckTexts(whose string, texts ...string) error {
	for _, text := range texts {
		for _, r := range text {
			if !CanPrint(r) {
				return &fault.Fault{
					Cause: fmt.Sprintf("%s has the sign %q, which the printed sheets have no letter for", whose, r),
					Hint:  "write it with letters, digits and common signs; eighths such as ⅛ can be printed",
				}
			}
		}
	}
	return nil
}
