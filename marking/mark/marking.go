package mark

import (
	"cmp"
	"slices"

	"tuckmark/marking/plane"
)

// Marking is a piece with every line that must be on the cloth: one sheet, gauge or form.
type Marking struct {
	Key   string // no other marking of a pattern has it: "front template"
	Name  string // as it is printed: "Front: template"
	Kind  Kind
	Piece string // the name of the piece it is of: "Front"; "" where it is of several
	// Alike are the names of the pieces that it is of where they are alike, line for line,
	// and Piece is all of these: "Cuff and Band"; nil where it is of one.
	Alike []string
	// Part is its number among all that is printed with it, from 1, in the order of use;
	// 0 before it is known (Numbered).
	Part  int
	Cut   string   // how often it is cut: "cut 2 on the fold"; "" where it is not
	Side  Side     // that lies up
	Notes []string // what is to be known of it, each a sentence
	Steps []string // what is done with it, in order; printed with numbers
	// Pale are words that are printed large and pale across it: "LEFT", "WRONG SIDE UP".
	Pale []string
	// Outline is the closed cut outline, in mm, counter-clockwise: where the paper
	// ends and the piece begins.
	Outline plane.Path
	// Marks are its lines, those of the outline among them. They may lie anywhere, and
	// cross it.
	Marks      []Mark
	Words      []Word
	Dimensions []Dimension
	Sketch     *Sketch // that stands with what is told; nil for most
	// Form makes the marking a page of its own, to be written on; nil for a
	// piece.
	Form *Form
}

// Numbered returns markings in the order of their use, with the numbers of their parts.
func Numbered(all []Marking) []Marking {
	all = slices.Clone(all)
	slices.SortStableFunc(all, func(a, b Marking) int { return cmp.Compare(a.Kind, b.Kind) })
	for i := range all {
		all[i].Part = i + 1
	}
	return all
}

// IsOf reports whether the marking is of the piece of a name, or of others that are like it.
func (m Marking) IsOf(piece string) bool { return m.Piece == piece || slices.Contains(m.Alike, piece) }

// Add adds a line to the marking. The name may be "".
func (m *Marking) Add(role Role, name string, path plane.Path) {
	m.Marks = append(m.Marks, Mark{Role: role, Name: name, Path: path})
}

// With returns the marking with more steps; it has its own list of them.
func (m Marking) With(steps ...string) Marking {
	m.Steps = slices.Concat(m.Steps, steps)
	return m
}

// Told is all that is written under the name of the marking, in its order.
func (m Marking) Told() []string {
	var all []string
	if m.Cut != "" {
		all = append(all, m.Cut)
	}
	return slices.Concat(all, m.Notes, m.Steps)
}

// Form is what is printed, and left blank, on a page that is filled in by hand
// beside the lines of a marking.
type Form struct {
	Blanks []string // what is to be written down, each before a line to write on
	Sum    []string // a sum to be done, line by line; "____" is a space for a number
	// Listing is what is typed into the file, line by line as it is typed there.
	Listing []string
	// Columns head a table to be filled in, with as many rows as the page has room for.
	Columns []string
}
