package garment_test

import (
	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// Pieces in tests are written as short text: one edge a line, its key, then
// its points in inches, then what else the edge holds, such as
//
//	hem: 6,0 0,0 | hem = 2
//
// What follows a line of dashes is TOML, with [ under a piece short for
// [piece.front.

// check reads and checks a text.
func check(text string) (*garment.Pattern, error) {
	spec, err := source.Read("linden.toml", []byte(text), sketch.HasLetter)
	if err != nil {
		return nil, err
	}
	return garment.Check(spec)
}
