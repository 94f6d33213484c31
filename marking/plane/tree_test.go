package plane

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A 3-4-5 triangle, and on: points that lie in one place lie equally far along.
func TestHowFarAlongPointsLie(t *testing.T) {
	tree := NewTree(Path{{}, {X: 3}, {X: 3, Y: 4}, {X: 3, Y: 4}, {}})
	for i, want := range []float64{0, 3, 7, 7, 12} {
		assert.InDelta(t, want, tree.Along(i), 1e-12, "point %d", i)
	}
	assert.Zero(t, NewTree(Path{{X: 5}}).Along(0), "of one point")
}
