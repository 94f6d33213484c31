package mark

import (
	"cmp"
	"strings"

	"tuckmark/marking/plane"
)

// Mark is one line on the cloth.
type Mark struct {
	Role Role
	// Name is printed along the line where there is room: "neck",
	// "placket fold". It may be "".
	Name string
	// Key is what it is known by among the lines of its piece: an edge, and a line of the
	// file, by what the file calls it, others by that and their role: "neck stitch line",
	// "yoke 3 tuck fold". Parts of a line, and its image, have it too. "" where that is the
	// name, or where there is none.
	Key string
	// Path is in mm, y up, as the piece lies in its file. Outline edges run
	// counter-clockwise, so that the piece lies to their left; an arrow points to its end.
	Path plane.Path
}

// KeyWith is the key of a line that belongs to something with a name, in a role.
func KeyWith(name string, role Role) string { return name + " " + role.String() }

// Called is what a line is known by in its piece: its key or, without one, its name without
// what is told behind that; "" for neither. Several may be called alike.
func (m Mark) Called() string {
	name := m.Name
	for _, sign := range []string{", ", ": ", " ("} {
		name, _, _ = strings.Cut(name, sign)
	}
	return cmp.Or(m.Key, name)
}

// InParts returns the mark in parts, along the paths given; none of no paths. The longest,
// and of equally long ones the first, keeps the name.
func (m Mark) InParts(paths []plane.Path) []Mark {
	var parts []Mark
	longest := 0
	for _, p := range paths {
		parts = append(parts, Mark{Role: m.Role, Key: m.Called(), Path: p})
		if p.Length() > parts[longest].Path.Length() {
			longest = len(parts) - 1
		}
	}
	if len(parts) > 0 {
		parts[longest].Name = m.Name
	}
	return parts
}
