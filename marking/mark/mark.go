package mark

import "tuckmark/marking/plane"

// Mark is one line on the cloth.
type Mark struct {
	Role Role
	// Name is printed along the line where there is room: "neck",
	// "placket fold". It may be "".
	Name string
	// Path is in mm, y up, as the piece lies in its file. Outline edges run
	// counter-clockwise, so that the piece lies to their left; an arrow points to its end.
	Path plane.Path
}

// InParts returns the mark in parts, along the paths given; none of no paths. The longest,
// and of equally long ones the first, keeps the name.
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
