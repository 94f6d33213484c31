package piece

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file. A row of folds may hang from any edge of its piece: from the neck down,
// from the hem up, from a side inward. The words for its ends follow the piece as it is drawn,
// for so it is printed.

// Hang is the way in which the folds of a row run to their ends, as the piece is drawn.
type Hang int

// The ways.
const (
	HangsDown Hang = iota
	HangsUp
	HangsSideways
)

// Hangs returns the way in which a row runs to its ends; one from edge to edge has none, and
// counts as hanging down.
func (r FoldRow) Hangs() Hang {
	switch v := r.Downward(); {
	case v == plane.Point{}:
		return HangsDown
	case math.Abs(v.Y) < math.Abs(v.X)-Straightness:
		return HangsSideways
	case v.Y > 0:
		return HangsUp
	}
	return HangsDown
}

// back is the way in which they would run from their ends to where they begin.
func (h Hang) back() Hang { return [...]Hang{HangsUp, HangsDown, HangsSideways}[h] }

// OpenBefore says on which side of its beginning a fold is open that begins on the piece:
// "open above".
func (h Hang) OpenBefore() string { return h.back().Open() }

// Open says on which side of its end a fold is open: "open below".
func (h Hang) Open() string { return "open " + [...]string{"below", "above", "beyond"}[h] }

// From says where an end lies, seen from the edge at which its fold begins: "below".
func (h Hang) From() string { return [...]string{"below", "above", "from"}[h] }
