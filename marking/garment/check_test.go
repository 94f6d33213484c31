package garment_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Mistakes of pieces and of what joins them are told together, in the order of the file;
// what cannot be worked out because of one is no mistake besides.
func TestMistakesAreToldTogether(t *testing.T) {
	gap := sketch.Swap(sketch.Rect("10"), "right: 10,0", "right: 10,0.5")
	for _, c := range []struct{ name, text, want string }{
		{"of both pieces and of their seam", sketch.Joined("0.5", gap, "fold = \"lfet\"\n"+sketch.Rect("10"), `join = ["front.top", "back.tpo"]`),
			`pinafore.toml:5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (10 in, 0 in) and, in line 8, (10 in, 1/2 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them
pinafore.toml:18: piece.back.fold: there is no edge "lfet" in this piece
hint: did you mean "left"?
pinafore.toml:33: seam.s.join: there is no edge "tpo" in the piece "back"
hint: did you mean "top"?`},
		{"of a piece, and not of its seam", sketch.Joined("0.5", gap, sketch.Rect("10"), sketch.Tops),
			`pinafore.toml:5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (10 in, 0 in) and, in line 8, (10 in, 1/2 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(c.text)
			assert.EqualError(t, err, c.want)
		})
	}
}

// The allowance of every edge that gives none is one mistake where it is too wide for several
// pieces; for one piece, or where an edge has a wider one of its own, every edge is told.
// Of a, 6 in high, two allowances leave nothing of what is sewn up its sides; in b, 2 in high, one
// has no room at all.
func TestAllowanceTooWideForSeveralPieces(t *testing.T) {
	const (
		square = "foot: 0,0 8,0\nside: 8,0 8,6\ntop: 8,6 0,6\nend: 0,6 0,0"
		strip  = "foot: 0,0 9,0\nside: 9,0 9,2\ntop: 9,2 0,2\nend: 0,2 0,0"
		large  = "foot: 0,0 20,0\nside: 20,0 20,20\ntop: 20,20 0,20\nend: 0,20 0,0"
	)
	const usual = "allowance = \"3 1/2\"\n"
	_, err := made.Pattern(usual + sketch.Piece("a", square) + sketch.Piece("b", strip) + sketch.Piece("c", large))
	assert.EqualError(t, err, `pinafore.toml:1: allowance: 3 1/2 in is too wide an allowance for a (at side and end) and b (at foot and top)
hint: make it narrower, or give those edges allowances of their own`)

	for _, text := range []string{
		usual + sketch.Piece("b", strip) + sketch.Piece("c", large),
		usual + sketch.Piece("a", sketch.Swap(square, "8,0\n", "8,0 | allowance = 4\n")) + sketch.Piece("b", strip),
	} {
		_, err := made.Pattern(text)
		assert.ErrorContains(t, err, "piece.b.edge.foot: an allowance of 3 1/2 in leaves nothing of the piece along this edge")
		assert.NotContains(t, err.Error(), "too wide an allowance for")
	}
}
