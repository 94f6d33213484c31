package piece_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch/made"
)

// sketched returns the piece of a sketch, with an allowance for every edge.
func sketched(t testing.TB, allowance, text string) *piece.Piece {
	t.Helper()
	p, _ := made.Front(t, allowance, text)
	return p
}

// blockOf returns the piece of a sketch that has a block, and its pattern.
func blockOf(t *testing.T, text string) (*piece.Piece, *garment.Pattern) {
	t.Helper()
	p, pattern := made.Front(t, "0.375", text)
	require.NotNil(t, p.Block, "the piece has a block")
	return p, pattern
}
