package pdfout

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// lineRoles are the roles that are drawn as lines, and not as rings.
func lineRoles() []marking.Role {
	var roles []marking.Role
	for _, role := range marking.Roles() {
		if penOf(role).kind.ring == 0 {
			roles = append(roles, role)
		}
	}
	return roles
}

// Of a pricked sheet every dot is a circle, on every page whose window it lies in,
// and there are no others.
func TestRings(t *testing.T) {
	data, err := os.ReadFile("../examples/linden.toml")
	require.NoError(t, err)
	spec, err := marking.Read("linden.toml", data, CanPrint)
	require.NoError(t, err)
	pattern, err := marking.Check(spec)
	require.NoError(t, err)
	set := Set{Unit: pattern.Unit, Pieces: marking.MarkingsOf(marking.Transferred(pattern, []marking.Transfer{marking.Pricked}))}
	d, s := drawn(t, set, "letter")
	circles := 0
	for _, sheet := range s.Sheets {
		laid, _ := joinUp(t, d, sheet)
		if len(sheet.Pieces) != 1 {
			continue // where each of several lies is found in other tests
		}
		var m marking.Marking
		for _, piece := range set.Pieces {
			if piece.Name == sheet.Pieces[0] {
				m = piece
			}
		}
		turned := len(sheet.Turned) > 0
		// It lies where its outline is printed.
		printed, meant := plane.EmptyBox(), onPaper(m.Outline, turned, plane.Point{}).Bounds()
		for _, l := range append(printedLines(laid, marking.Cut.String()), printedLines(laid, marking.FoldEdge.String())...) {
			printed = printed.Union(l.bounds)
		}
		step := printed.Min.Sub(meant.Min)
		var dots plane.Path
		for _, mark := range m.Marks {
			if mark.Role == marking.Prick {
				dots = append(dots, onPaper(mark.Path, turned, step)...)
			}
		}
		require.NotEmpty(t, dots)
		for _, p := range laid {
			var centres plane.Path
			for _, q := range p.paths {
				if q.layer == marking.Prick.String() {
					require.Equal(t, 4, q.curves, "a circle")
					centre := q.parts[0][0].Toward(q.parts[0][2], 0.5)
					assert.InDelta(t, rings().ring, centre.Distance(q.parts[0][0]), 3*written)
					centres = append(centres, centre.Add(p.step))
				}
			}
			circles += len(centres)
			nearest := func(q plane.Point, of plane.Path) float64 {
				best := 1e9
				for _, o := range of {
					best = min(best, q.Distance(o))
				}
				return best
			}
			for _, q := range dots {
				if p.window.Holds(q) {
					assert.Less(t, nearest(q, centres), offLine, "page %d lacks the dot at %v", p.number, q)
				}
			}
			for _, q := range centres {
				assert.Less(t, nearest(q, dots), offLine, "page %d has a circle at %v that is no dot", p.number, q)
			}
		}
	}
	assert.Greater(t, circles, 300)
}
