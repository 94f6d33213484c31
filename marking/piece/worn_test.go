package piece

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Seen from in front, what lies to the right of the centre front is worn on the left (derived:
// the wearer looks at whoever sees it); seen from behind it is worn on the right.
func TestWhereAPieceIsWorn(t *testing.T) {
	// right lies to the right of its first edge, which runs down from the neck; left is its
	// mirror image, whose first edge runs up to it.
	right := func(centre, neck string) []Edge {
		return []Edge{{Key: centre}, {Key: "hem"}, {Key: "side"}, {Key: neck}}
	}
	left := func(centre, neck string) []Edge {
		return []Edge{{Key: centre}, {Key: neck}, {Key: "side"}, {Key: "hem"}}
	}
	for _, c := range []struct {
		name  string
		edges []Edge
		want  Worn
	}{
		{"a front, to the right", right("centre front", "neck"), WornLeft},
		{"a front, to the left", left("centre front", "neck"), WornRight},
		{"a back, to the right", right("centre back", "neck"), WornRight},
		{"a back, to the left", left("centre back", "neck"), WornLeft},
		{"in short", right("CB", "back neck"), WornRight},
		{"in the American way", right("center front", "neckline"), WornLeft},
		{"no neck", right("centre front", "top"), WornUnknown},
		{"a neck at either end", []Edge{{Key: "centre front"}, {Key: "neck"}, {Key: "neck 2"}}, WornUnknown},
		{"of front or back nothing is said", right("centre", "neck"), WornUnknown},
		{"no centre", right("front", "neck"), WornUnknown},
		{"nothing", nil, WornUnknown},
	} {
		p := &Piece{Edges: c.edges}
		assert.Equal(t, c.want, p.Worn(), c.name)
		assert.Equal(t, c.want, p.Worn().Other().Other(), c.name)
	}
	assert.Equal(t, WornLeft, WornRight.Other())
}
