package mark

import (
	"fmt"

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
	Lines   Lines    // said after the tables
	Picture *Picture // drawn after the lines; nil for most
}

// Empty reports whether a section has nothing but its title.
func (s Section) Empty() bool { return len(s.Tables)+len(s.Lines) == 0 && s.Picture == nil }

// Table is rows of cells under one heading.
type Table struct {
	Title string   // may be ""
	Heads []string // over the columns; nil where they need none
	Rows  []Row
	Lines Lines // said under it
}

// Add adds a row to the table.
func (t *Table) Add(cells ...string) { t.Rows = append(t.Rows, Row{Cells: cells}) }

// AddTotal adds a row that is drawn as the sum of those above it.
func (t *Table) AddTotal(cells ...string) { t.Rows = append(t.Rows, Row{Cells: cells, Total: true}) }

// Columns is how many columns the table has.
func (t Table) Columns() int {
	n := len(t.Heads)
	for _, r := range t.Rows {
		n = max(n, len(r.Cells))
	}
	return n
}

// Row is one row of a table. The first cell is words and stands at the left, the
// others are numbers and end at the right of their columns. A row may have fewer
// cells than the table has columns.
type Row struct {
	Cells []string
	Total bool // a line is drawn over its numbers
}

// Lines are sentences that are said one after another.
type Lines []Sentence

// Say adds a sentence, put together as fmt.Sprintf does.
func (l *Lines) Say(format string, args ...any) {
	*l = append(*l, Sentence{Text: fmt.Sprintf(format, args...)})
}

// Warn adds a sentence that has to be looked at before cloth is cut.
func (l *Lines) Warn(format string, args ...any) {
	*l = append(*l, Sentence{Text: fmt.Sprintf(format, args...), Warning: true})
}

// Hint adds what may be written into the file.
func (l *Lines) Hint(format string, args ...any) {
	*l = append(*l, Sentence{Entry: fmt.Sprintf(format, args...)})
}

// Ask adds a sentence with a line to write on behind it.
func (l *Lines) Ask(text string) { *l = append(*l, Sentence{Text: text, Blank: true}) }

// Sentence is said in words.
type Sentence struct {
	Text string
	// Warning marks what has to be looked at before cloth is cut.
	Warning bool
	// Blank is a line to write on behind the text.
	Blank bool
	// Place is where in the file it stands, said before the text, and Entry what may be written
	// there, said alone: to whoever has the file at hand, at a screen; never on paper.
	Place, Entry string
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
	Piece   string     // the name of the piece that it is; "" for what is none, as a strip
	Part    int        // the number of that piece among what is printed; 0 before it is known, and of none
	Outline plane.Path // closed; x from the left, y from the lower end, in mm
}
