package source

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestNamesOfAFile(t *testing.T) {
	spec := &Spec{Pieces: []PieceSpec{
		{Key: "front", Edges: []EdgeSpec{{Key: "neck"}}, Lines: []LineSpec{{Key: "waist"}}},
		{Key: "back", Edges: []EdgeSpec{{Key: "waist"}}},
	}}
	for _, c := range []struct {
		piece, name  string
		edge, course bool
	}{
		{"front", "neck", true, true},
		{"front", "waist", false, true},
		{"back", "waist", true, true},
		{"back", "neck", false, false},
		{"sleeve", "neck", false, false},
	} {
		assert.Equal(t, c.edge, spec.Names().HasEdge(c.piece, c.name), "edge %s.%s", c.piece, c.name)
		assert.Equal(t, c.course, spec.Names().HasCourse(c.piece, c.name), "edge or line %s.%s", c.piece, c.name)
	}
	spec.Pieces = append(spec.Pieces, PieceSpec{Key: "sleeve", Edges: []EdgeSpec{{Key: "neck"}}})
	assert.True(t, spec.Names().HasEdge("sleeve", "neck"), "a piece that came later is found")
	assert.Same(t, &spec.Pieces[2], spec.Names().Piece("sleeve"))
	assert.Nil(t, spec.Names().Piece("collar"))
}
