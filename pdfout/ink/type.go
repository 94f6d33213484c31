package ink

import "tuckmark/marking/mark"

// Rules of this file: one table has every size of type, each with what it is for. What is
// more important is larger, whatever room there is; where a text finds no room, it is
// broken, moved or led to, never set smaller. Nothing is smaller than LeastType but the
// numbers at the ticks of a ruler and the small figures of a built fraction.

// The sizes, in points. Each is at least a fifth larger than the one below it, so that
// an eye tells them apart.
const (
	titleType   = 22.0
	partType    = 14.0
	headingType = 11.0
	// LeastType is the size of text, and the smallest that is read as text: lower case
	// letters are 1.7 mm high, which is read at arm's length.
	LeastType = 9.0
	tickType  = 6.5
)

// Title is what is made, once, on the first page.
func Title() Style { return Strong(titleType) }

// Part is the name of what a page, a form or a chapter of figures shows.
func Part() Style { return Strong(partType) }

// Heading is the heading of a section, and of a panel of notes.
func Heading() Style { return Strong(headingType) }

// Lead is prose that must not be overlooked: how to print, which size it is.
func Lead() Style { return Plain(headingType) }

// Text is prose, steps, tables.
func Text() Style { return Plain(LeastType) }

// StrongText is what stands out of Text: numbers of steps, totals, warnings.
func StrongText() Style { return Strong(LeastType) }

// Caption is what is said beside a drawing, or over a column: it is read second.
func Caption() Style { return Text().In(Grey()) }

// LineName is the name or the letter of a line of a role.
func LineName(role mark.Role) Style { return Text().In(PenOf(role).Colour) }

// LineNumber is a number that a line of a role is called by: bold, so that it is no measure.
func LineNumber(role mark.Role) Style { return StrongText().In(PenOf(role).Colour) }

// Tick is a number at a tick of a ruler; nothing else is so small.
func Tick() Style { return Plain(tickType) }

// Names are the styles that the name of a piece may have in its outline, the largest
// first. A piece too small for the last has its name beside it.
func Names() []Style { return []Style{Strong(titleType), Strong(partType), Heading(), StrongText()} }

// PaleWords are the styles of words that are printed large and pale across a piece, under
// its lines, the largest first.
func PaleWords() []Style {
	var all []Style
	for _, size := range []float64{72, 54, 40, 30, titleType} {
		all = append(all, Strong(size).In(faint()))
	}
	return all
}
