package sheet

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
)

// A new role is not forgotten by templates and pricked sheets: whoever adds one says here
// what becomes of its lines.
func TestWhatBecomesOfALineOfEachRole(t *testing.T) {
	const window, prick, neither = "window and prick", "prick", "neither"
	want := map[mark.Role]string{
		mark.Cut: prick, mark.FoldEdge: prick, mark.Stitch: prick, mark.BlockEdge: prick,
		mark.Fold: window, mark.Centre: window, mark.Placement: window,
		mark.TuckFold: window, mark.TuckStitch: window, mark.TuckEnd: window, mark.PleatFold: window,
		mark.Notch: prick, mark.Cross: prick, mark.Match: prick,
		mark.Arrow: neither, mark.Grain: neither, mark.Window: neither, mark.Prick: neither, mark.Waste: neither, mark.DrawHere: neither, mark.Laid: neither,
		mark.RuledFine: neither, mark.RuledHalf: neither, mark.RuledWhole: neither,
	}
	for _, role := range mark.Roles() {
		got := neither
		switch {
		case hasWindows(role) && isPricked(role):
			got = window
		case isPricked(role):
			got = prick
		case hasWindows(role):
			got = "a window alone"
		}
		expected, said := want[role]
		assert.True(t, said, "nobody says what becomes of a %s", role)
		assert.Equal(t, expected, got, "%s", role)
	}
}
