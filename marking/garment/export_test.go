package garment

import (
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// SplitName is seen by the tests.
var SplitName = splitName

// ReachAlong returns how something so wide goes round the bends of a line, to its right.
func ReachAlong(line plane.Path, width float64) Reach {
	j := joiner{Pattern: &Pattern{Unit: length.Inch}}
	return j.reach([]Course{{Piece: &piece.Piece{}, Times: 1, edge: -1, line: line}}, width, 1, 1)
}
