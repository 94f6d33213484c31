package pdfout

import (
	"math"
	"slices"
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

func checkJoined(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	byName := map[string]mark.Marking{}
	for _, m := range set.Pieces {
		name := m.Name
		if name == "" {
			name = m.Key
		}
		byName[name] = m
	}
	found := 0
	for _, sheet := range append(formsAsSheets(s), s.Sheets...) {
		laid, apart := d.JoinUp(t, sheet.First, sheet.Last)
		require.Empty(t, apart, "pages without a join")
		lines := map[mark.Role][]*plane.Tree{}
		// The first may be a large piece: it is found by what the others leave.
		for k, name := range slices.Backward(sheet.Pieces) {
			m, known := byName[name]
			require.True(t, known, name)
			turned := slices.Contains(sheet.Turned, name)
			step, ok := seen.Find(laid, m, turned, k == 0, lines)
			require.True(t, ok, "%s is not on its sheet", name)
			assert.Empty(t, seen.Lacks(laid, m, turned, step), name)
			for _, mark := range m.Marks {
				lines[mark.Role] = append(lines[mark.Role], plane.NewTree(seen.Moved(mark.Path, turned, step)))
			}
			found++
		}
		assert.Empty(t, seen.Strays(laid, lines))
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
	turned := len(sheet.Turned) > 0
	step, ok := seen.Find(laid, m, turned, true, nil)
	require.True(t, ok)
	looked := 0
	for _, mark := range m.Marks {
		path := seen.Moved(mark.Path, turned, step)
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
	step, ok := seen.Find(laid, m, len(sheet.Turned) > 0, true, nil)
	require.True(t, ok)
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
		path := seen.Moved(line.Path, len(sheet.Turned) > 0, step)
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
