package mark

import "tuckmark/marking/plane"

// Pressed is a piece as it looks when its tucks and pleats are sewn and pressed: seen from its
// right side, as cloth that hides the lines it lies on, and shows by how dark it is how often it
// lies there. All places are in mm, y up, as the finished piece lies in its file.
type Pressed struct {
	Key, Name string // of the piece, as the file has it and as it is printed
	Halves    Halves // that are shown; OneHalf of a piece that is not on the fold
	// Outline is where the cloth ends, closed, counter-clockwise: the cut outline with the
	// folds in. Sewn is the ring of all that is sewn, with what is to be seen of the finished
	// piece inside it, closed as well.
	Outline, Sewn plane.Path
	// Layers are the parts into which the folds part the cloth, from the lowest to the
	// topmost. They lie beside each other and on each other; none crosses itself.
	Layers []Layer
	// Counts are the numbers of layers that lie on each other anywhere, from the least up.
	Counts []int
	// Shadows are narrow shapes, closed, beside the free edges of flaps, on what these lie on.
	Shadows []plane.Path
	// Fullness is a hint where folds end and what they took is let go: short lines from
	// the end of the stitching on, which nobody sews.
	Fullness []plane.Path
	// Marks are the lines that show, those that lie lower first: edges, seams, stitching,
	// creases, hems, the centre and the lines of the file. A crease that is the free edge of a
	// flap has the flap to its left.
	Marks []Mark
	// Flat is the piece before it is folded; of one that is cut from a tucked block, which
	// never lies flat, it is the torn block.
	Flat Opened
	// Notes say what the picture cannot show, each a sentence.
	Notes []string
}

// Layer is a part of the cloth that lies flat, with no fold in it.
type Layer struct {
	Path plane.Path // closed; two stretches of it may run along one line, there and back
	// Side is the side of the cloth that lies up.
	Side Side
	// Count is the greatest number of layers that lie anywhere where this one does, it
	// among them.
	Count int
}

// Opened is a piece on the flat cloth, with its lines.
type Opened struct {
	Outline, Sewn plane.Path // as those of Pressed
	Marks         []Mark
}

// Halves says how much of a piece is shown that is cut on the fold.
type Halves int

// What is shown of it.
const (
	OneHalf    Halves = iota // as it is drawn
	BothHalves               // opened out
)
