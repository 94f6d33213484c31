package mark

import (
	"slices"

	"tuckmark/marking/plane"
)

// Role says what a line is for. Drawing knows nothing else of it.
type Role int

// The roles, in the order in which the line key lists them.
const (
	Cut        Role = iota // the cut outline, edge by edge
	FoldEdge               // an edge of the outline that lies on the fold of the cloth
	Stitch                 // where a seam is sewn or lace is laid
	Fold                   // a hem or placket is folded here
	Centre                 // a centre line inside the piece
	TuckFold               // the crease of a tuck
	TuckStitch             // the stitching of a tuck
	TuckEnd                // tucks are stitched as far as this
	PleatFold              // the crease of a pleat
	Placement              // something is laid to this: the crease of a pleat
	Arrow                  // which way a pleat is folded, from crease to placement
	Notch                  // a short mark across an edge, matched with another
	Grain                  // the direction of the cloth's threads
	BlockEdge              // an edge of the cloth as it is torn, before anything is cut
	Cross                  // a cross on the centre line, to be laid on one on the cloth
	Match                  // a short mark at an edge, laid on the same one of another sheet
	Window                 // an opening that is cut in a template
	Prick                  // where a line is pricked through: the points of its path are the places
	roleCount
)

var roleNames = [roleCount]string{
	"cutting line", "place on the fold", "stitch line", "fold line", "centre line",
	"tuck fold", "tuck stitching", "end of tucks", "pleat fold", "placement line",
	"fold this way", "notch", "grain line", "edge of the block", "cross mark",
	"match mark", "window to be cut", "prick here",
}

// String gives the name of the role as the line key prints it.
func (r Role) String() string { return roleNames[r] }

// Roles returns every role, in the order of the line key.
func Roles() []Role {
	all := make([]Role, roleCount)
	for i := range all {
		all[i] = Role(i)
	}
	return all
}

// Mark is one line on the cloth.
type Mark struct {
	Role Role
	// Name is printed along the line where there is room: "neck",
	// "placket fold". It may be "".
	Name string
	// Path is in mm, y up, as the piece lies in its file. Outline edges run
	// counter-clockwise, so that the piece lies to their left.
	Path plane.Path
}

// InParts returns the mark in parts. The longest keeps the name.
func (m Mark) InParts(paths []plane.Path) []Mark {
	var parts []Mark
	longest := 0
	for _, p := range paths {
		parts = append(parts, Mark{Role: m.Role, Path: p})
		if p.Length() > parts[longest].Path.Length() {
			longest = len(parts) - 1
		}
	}
	if len(parts) > 0 {
		parts[longest].Name = m.Name
	}
	return parts
}

// Marking is a piece with every line that must be on the cloth.
type Marking struct {
	Key   string
	Name  string
	Notes []string // printed inside the piece under its name: size, how many to cut
	// Outline is the closed cut outline, counter-clockwise: where the paper
	// ends and the piece begins.
	Outline plane.Path
	Marks   []Mark
	// Card tells that the marking is cut out of card: it shares its page with nothing
	// but others of that kind.
	Card bool
	// Form makes the marking a page of its own, to be written on; nil for a
	// piece.
	Form *Form
}

// Add adds a line to the marking.
func (m *Marking) Add(role Role, name string, path plane.Path) {
	m.Marks = append(m.Marks, Mark{role, name, path})
}

// Noted returns the marking with more notes.
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
