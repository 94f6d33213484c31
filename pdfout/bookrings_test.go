package pdfout

import (
	"os"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sheet"
	"tuckmark/marking/source"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/seen"
)

// lineRoles are the roles that are drawn as lines, and not as rings.
func lineRoles() []mark.Role {
	var roles []mark.Role
	for _, role := range mark.Roles() {
		if ink.PenOf(role).Ring() == 0 {
			roles = append(roles, role)
		}
	}
	return roles
}

// openRoles are those of lines that are drawn along their path, which may be open.
func openRoles() []mark.Role {
	return slices.DeleteFunc(lineRoles(), func(role mark.Role) bool { return role == mark.Waste })
}

// Of a pricked sheet every dot is a circle, on every page whose window it lies in,
// and there are no others.
func TestRings(t *testing.T) {
	data, err := os.ReadFile("../examples/pinafore.toml")
	require.NoError(t, err)
	spec, err := source.Read("pinafore.toml", data, ink.CanPrint)
	require.NoError(t, err)
	pattern, err := marking.Check(spec)
	require.NoError(t, err)
	set := arrange.Set{Unit: pattern.Unit, Pieces: sheet.Of(sheet.Transferred(pattern, []source.Transfer{source.Prick}))}
	d, s := drawn(t, set, "letter")
	circles := 0
	for _, on := range s.Sheets {
		laid, _ := d.JoinUp(t, on.First, on.Last)
		if len(on.Pieces) != 1 {
			continue // where each of several lies is found in other tests
		}
		var m mark.Marking
		for _, piece := range set.Pieces {
			if piece.Name == on.Pieces[0] {
				m = piece
			}
		}
		turn := seen.TurnOf(m.Name, on.Turned)
		// It lies where its outline is printed.
		printed, meant := plane.EmptyBox(), seen.Moved(m.Outline, turn, plane.Point{}).Bounds()
		for _, l := range append(seen.Lines(laid, mark.Cut.String()), seen.Lines(laid, mark.FoldEdge.String())...) {
			printed = printed.Union(l.Bounds)
		}
		step := printed.Min.Sub(meant.Min)
		var dots plane.Path
		for _, line := range m.Marks {
			if line.Role == mark.Prick {
				dots = append(dots, seen.Moved(line.Path, turn, step)...)
			}
		}
		require.NotEmpty(t, dots)
		for _, p := range laid {
			var centres plane.Path
			for _, q := range p.Paths {
				if q.Layer == mark.Prick.String() {
					require.Equal(t, 4, q.Curves, "a circle")
					centre := q.Parts[0][0].Toward(q.Parts[0][2], 0.5)
					assert.InDelta(t, 0.7, centre.Distance(q.Parts[0][0]), 3*seen.Written)
					centres = append(centres, centre.Add(p.Step))
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
				if p.Window.Holds(q) {
					assert.Less(t, nearest(q, centres), seen.OffLine, "page %d lacks the dot at %v", p.Number, q)
				}
			}
			for _, q := range centres {
				assert.Less(t, nearest(q, dots), seen.OffLine, "page %d has a circle at %v that is no dot", p.Number, q)
			}
		}
	}
	assert.Greater(t, circles, 300)
}
