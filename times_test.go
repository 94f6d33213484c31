package main

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
)

// The number is that of the guide to the file, under "Limits".
func TestGarmentsAtOnceComeToAnEnd(t *testing.T) {
	of := func(cut int) *garment.Pattern {
		return &garment.Pattern{Pieces: []piece.Piece{{Cut: 40}, {Cut: cut}}}
	}
	whole, err := forGarments(of(10), 200)
	assert.NoError(t, err)
	assert.Equal(t, 200, whole.Garments())
	_, err = forGarments(of(11), 200)
	assert.ErrorContains(t, err, "200 garments have 10,200 pieces to be cut; at most 10,000 are laid on the cloth")
	_, err = forGarments(of(99), 1)
	assert.NoError(t, err, "one is reckoned whatever it has")
}
