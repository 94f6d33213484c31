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
			`pinafore.toml:5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (10 in, 0 in) and (10 in, 1/2 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them
pinafore.toml:18: piece.back.fold: there is no edge "lfet" in this piece
hint: did you mean "left"?
pinafore.toml:33: seam.s.join: there is no edge "tpo" in the piece "back"
hint: did you mean "top"?`},
		{"of a piece, and not of its seam", sketch.Joined("0.5", gap, sketch.Rect("10"), sketch.Tops),
			`pinafore.toml:5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (10 in, 0 in) and (10 in, 1/2 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(c.text)
			assert.EqualError(t, err, c.want)
		})
	}
}
