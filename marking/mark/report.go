package mark

import (
	"tuckmark/marking/plane"
)

// Rules of this file: it says what a page of figures consists of, for whoever
// prints it, on a screen or on paper. All lengths in it are printed already.

// Report is what is read at the cutting table.
type Report struct {
	Title    string   // of the pattern and its size; may be ""
	Notes    []string // what holds for all of it
	Sections []Section
}

// Section is a part of a report under a heading of its own.
type Section struct {
	Title   string // "Tucks and pleats"
	Tables  []Table
	Lines   []Sentence // said after the tables
	Picture *Picture   // drawn after the lines; nil for most
}

// Table is rows of cells under one heading.
type Table struct {
	Title string   // may be ""
	Heads []string // over the columns; nil where they need none
	Rows  []Row
	Lines []Sentence // said under it
}

// Row is one row of a table. The first cell is words and stands at the left, the
// others are numbers and end at the right of their columns. A row may have fewer
// cells than the table has columns.
type Row struct {
	Cells []string
	Total bool // a line is drawn over its numbers
}

// Sentence is said in words.
type Sentence struct {
	Text string
	// Warning marks what has to be looked at before cloth is cut.
	Warning bool
	// Blank is a line to write on behind the text.
	Blank bool
}

// Picture is a drawing to scale of how things lie on something long.
type Picture struct {
	Caption       string
	Width, Height float64 // of what they lie on, in mm
	// Bands are the stretches of it, one after another from the lower end up, each
	// drawn as wide as it lies there, from the left side on.
	Bands  []Band
	Shapes []Shape
}

// Band is a stretch of what is drawn in a picture.
type Band struct {
	From, To float64 // y, in mm
	Width    float64 // in mm
	Text     string  // how it lies
}

// Shape is one thing in a picture.
type Shape struct {
	Name    string
	Outline plane.Path // closed; x from the left, y from the lower end, in mm
}
