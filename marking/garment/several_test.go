package garment

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/piece"
)

// The number is that of the guide to the file, under "Limits".
func TestGarmentsAtOnceComeToAnEnd(t *testing.T) {
	of := func(cut int) *Pattern {
		return &Pattern{Pieces: []piece.Piece{{Cut: 40}, {Cut: cut}}}
	}
	assert.NoError(t, of(10).CheckGarments(200))
	assert.Equal(t, 200, of(10).ForGarments(200).Garments())
	assert.EqualError(t, of(11).CheckGarments(200), "200 garments have 10,200 pieces to be cut; at most 10,000 are laid on the cloth\nhint: reckon fewer garments at once")
	assert.NoError(t, of(10_001).CheckGarments(1), "one is reckoned whatever it has")
}
