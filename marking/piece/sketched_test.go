package piece_test

import (
	"testing"

	"tuckmark/marking/piece"
	"tuckmark/marking/sketch/made"
)

// sketched returns the piece of a sketch, with an allowance for every edge.
func sketched(t testing.TB, allowance, text string) *piece.Piece {
	t.Helper()
	p, _ := made.Front(t, allowance, text)
	return p
}
