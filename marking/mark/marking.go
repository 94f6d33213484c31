package mark

import (
	"slices"

	"tuckmark/marking/plane"
)

// Marking is a piece with every line that must be on the cloth: one sheet, gauge or form.
type Marking struct {
	Key   string   // no other marking of a pattern has it: "front template"
	Name  string   // as it is printed: "Front: template"
	Notes []string // printed inside the piece under its name: size, how many to cut
	// Outline is the closed cut outline, in mm, counter-clockwise: where the paper
	// ends and the piece begins.
	Outline plane.Path
	// Marks are its lines, those of the outline among them. They may lie anywhere, and
	// cross it.
	Marks []Mark
	// Card tells that the marking is cut out of card: it shares its page with nothing
	// but others of that kind.
	Card bool
	// Form makes the marking a page of its own, to be written on; nil for a
	// piece.
	Form *Form
}

// Add adds a line to the marking. The name may be "".
func (m *Marking) Add(role Role, name string, path plane.Path) {
	m.Marks = append(m.Marks, Mark{role, name, path})
}

// Noted returns the marking with more notes; it has its own list of them.
func (m Marking) Noted(notes ...string) Marking {
	m.Notes = slices.Concat(m.Notes, notes)
	return m
}

// Form is what is printed, and left blank, on a page that is filled in by hand
// beside the lines of a marking.
type Form struct {
	Steps  []string // what to do, in order; printed with numbers
	Blanks []string // what is to be written down, each before a line to write on
	Sum    []string // a sum to be done, line by line; "____" is a space for a number
}
