package gauge

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// marked is a pattern of a piece with marked edges, each of these lengths in mm.
func marked(long ...float64) *garment.Pattern {
	one := piece.Piece{Key: "bib", Name: "Bib", Cut: 1, Layers: 1, Flat: &piece.Shape{Lines: make([][]plane.Path, len(long))}}
	for k, l := range long {
		path := plane.Path{{}, {X: l}}
		one.Edges = append(one.Edges, piece.Edge{Key: fmt.Sprint(k), Marked: true, Allowance: 10, Path: path, Line: path, Sewn: path})
	}
	return &garment.Pattern{Files: []string{"bib.toml"}, Unit: length.Millimetre, Pieces: []piece.Piece{one}}
}

// The number is that of the guide to the file, under "Limits". A part of a long gauge is 150 mm long,
// of which it shares 20 with the next; one gauge is for the straight lines.
func TestGaugesAreBounded(t *testing.T) {
	assert.NoError(t, Check(marked(148*130, 100)), "at the limit")
	want := "with those of this piece there are more than 150 gauges, a long one counted in its parts, and no more are made at once"
	assert.ErrorContains(t, Check(marked(148*130+1, 100)), want, "beyond it, by a part")
	assert.ErrorContains(t, Check(marked(148*130, 100, 90)), want, "beyond it, by an edge")
	assert.NoError(t, Check(marked(148*130, 100, 100)), "one like another needs none")
}
