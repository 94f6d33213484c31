package pdfout

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// checkJoined: put together, the pages of every sheet have the lines of its pieces, and no
// others.
func checkJoined(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	found := 0
	for _, sheet := range append(formsAsSheets(s), s.Sheets...) {
		laid, apart := d.JoinUp(t, sheet.First, sheet.Last)
		require.Empty(t, apart, "pages without a join")
		pieces := seen.PiecesOn(t, laid, set.Pieces, sheet.Pieces, sheet.Turned)
		for _, p := range pieces {
			assert.Empty(t, seen.Lacks(laid, p), p.Piece.Name)
			found++
		}
		assert.Empty(t, seen.Strays(laid, pieces))
	}
	assert.Equal(t, len(set.Pieces), found, "pieces on sheets")
}

// Dashes go on from page to page: the phase of each run is how far along its
// line it starts.
func TestDashesGoOn(t *testing.T) {
	m := sample.Skirt()
	d, s := drawn(t, arrange.Set{Title: "Skirt", Pieces: []mark.Marking{m}}, "letter")
	sheet := s.Sheets[0]
	laid, _ := d.JoinUp(t, sheet.First, sheet.Last)
	piece := seen.PiecesOn(t, laid, []mark.Marking{m}, sheet.Pieces, sheet.Turned)[0]
	looked := 0
	for _, mark := range m.Marks {
		path := piece.On(mark.Path)
		for _, l := range seen.Lines(laid, mark.Role.String()) {
			if len(l.Path.Dashes) == 0 {
				continue
			}
			start, along, away := path.Nearest(l.Tree.Path()[0])
			end, _, awayToo := path.Nearest(l.Tree.Path()[len(l.Tree.Path())-1])
			if away > seen.OffLine || awayToo > seen.OffLine || start == end {
				continue // a run of another mark
			}
			period := 0.0
			for _, length := range l.Path.Dashes {
				period += length
			}
			off := math.Mod(along-l.Path.Phase, period)
			off = math.Min(math.Abs(off), period-math.Abs(off))
			assert.Less(t, off, seen.OffLine, "%v %q on page %d: dashes are %.3f mm off", mark.Role, mark.Name, l.Page.Number, off)
			looked++
		}
	}
	assert.Greater(t, looked, 20)
}

// Arrow heads have their tips at the ends of their lines.
func TestArrowHeads(t *testing.T) {
	d, s := drawn(t, sets.Few(), "letter")
	sheet := s.Sheets[0]
	laid, _ := d.JoinUp(t, sheet.First, sheet.Last)
	m := sample.Bodice()
	piece := seen.PiecesOn(t, laid, []mark.Marking{m}, sheet.Pieces, sheet.Turned)[0]
	tips := func(role mark.Role) []plane.Point {
		var all []plane.Point
		for _, p := range laid {
			for _, q := range p.Paths {
				if q.Layer == role.String() && q.Painted == seen.Filled && len(q.Parts) == 1 && p.Core.Holds(q.Parts[0][0].Add(p.Step)) {
					require.Len(t, q.Parts[0], 3)
					all = append(all, q.Parts[0][0].Add(p.Step))
				}
			}
		}
		return all
	}
	for _, line := range m.Marks {
		path := piece.On(line.Path)
		var want []plane.Point
		switch line.Role {
		case mark.Grain:
			want = []plane.Point{path[0], path[len(path)-1]}
		case mark.Arrow:
			want = []plane.Point{path[len(path)-1]}
		default:
			continue
		}
		got := tips(line.Role)
		require.Len(t, got, len(want), line.Role)
		for _, w := range want {
			nearest := math.Inf(1)
			for _, g := range got {
				nearest = math.Min(nearest, g.Distance(w))
			}
			assert.Less(t, nearest, seen.OffLine, "%v", line.Role)
		}
	}
}
