package arrange

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// every sheet of the sample pieces, lettered.
func letteredSheets() []*Sheet {
	var all []*Sheet
	for _, m := range []mark.Marking{sample.Skirt(), sample.Bodice()} {
		sheets := Arrange(Set{Title: "Sunday pinafore", Unit: length.Inch, Pieces: []mark.Marking{m}}, paper.All()[0]).Sheets
		for i := range sheets {
			sheets[i].FindJoins(1)
			sheets[i].Letter()
			all = append(all, &sheets[i])
		}
	}
	return all
}

// A name along a line lies by that line and at least twice as far from any other, so that it
// is the name of no other. It stands inside the piece, or right outside of an edge.
func TestNamesStandByTheirLines(t *testing.T) {
	looked := 0
	for _, s := range letteredSheets() {
		p := s.Pieces[0]
		for _, c := range s.Captions {
			looked++
			if !sketch.Within(c.Room.Centre, p.Outline.Path()) {
				assert.Contains(t, []mark.Role{mark.Cut, mark.FoldEdge, mark.BlockEdge}, c.Role, "%q stands outside", c.Text)
			}
			own := map[float64]float64{-1: math.Inf(1), 1: math.Inf(1)} // by the side of the name
			other := map[float64]float64{-1: math.Inf(1), 1: math.Inf(1)}
			for _, l := range p.Lines {
				for i := range 41 {
					for side := range own {
						at := c.Room.Centre.Add(c.U.Mul(c.Room.Half.X * float64(i-20) / 20)).Add(c.U.Left().Mul(side * c.Room.Half.Y))
						to := other
						if l.Name == c.Text && l.Role == c.Role {
							to = own
						}
						to[side] = math.Min(to[side], l.Distance(at, 50))
					}
				}
			}
			far := 1.0
			if own[1] < own[-1] {
				far = -1
			}
			assert.InDelta(t, 0.9, own[-far], 0.61, "%q lies by its line", c.Text)
			assert.GreaterOrEqual(t, other[far], 1.79, "%q may be taken for the name of another line", c.Text)
		}
	}
	assert.Greater(t, looked, 15)
}

// Lines have their names where there is room, with the role of each; the title is on one
// page, whole and upright.
func TestNamesOfLines(t *testing.T) {
	s := lettered(t, Set{Title: "Sunday pinafore", Size: "18 months", Pieces: []mark.Marking{sample.Bodice()}, Unit: length.Inch})
	found := map[string]bool{}
	for _, c := range s.Captions {
		found[c.Text+"/"+c.Role.String()] = true
	}
	for _, want := range []string{
		"neck/cutting line", "armhole/cutting line", "shoulder/cutting line", "hem/cutting line",
		"centre front, place on the fold/place on the fold", "neck/stitch line", "hem/fold line",
		"bust line/centre line", "grain/grain line", "tucks end/end of tucks", "placement/placement line",
	} {
		assert.Contains(t, found, want)
	}
	// Six tucks 3/8 in apart with stitching between leave no room for a name: it stands near.
	assert.NotContains(t, found, "tuck 3/tuck fold")
	near := labelOf(t, s, "tuck 3")
	assert.Equal(t, 9.0, near.Style.Size)
	assert.NotEmpty(t, s.Thin, "with a leader")
	titles := slices.DeleteFunc(slices.Clone(s.Labels), func(l text.Label) bool { return l.Text != "Front" })
	require.Len(t, titles, 1)
	assert.True(t, s.Whole(titles[0].Room.Bounds()))
	assert.Equal(t, 22.0, titles[0].Style.Size)
	assert.Equal(t, plane.Point{X: 1}, titles[0].U, "upright")
}

// What is written outside of a card is cut off: along a strip 7.5 mm wide a name of the least
// type stands inside, where that of a piece of cloth rather stands beside it.
func TestNamesOfACardStandInside(t *testing.T) {
	for _, kind := range []mark.Kind{mark.Piece, mark.Gauge} {
		m := sample.Ruled("strip", "Strip", 120, 7.5)
		m.Kind, m.Marks[2].Name = kind, "stitch line"
		m.Add(mark.Match, "", plane.Path{{Y: 40}, {Y: 44}}) // there is room on the page outside of it
		sheets := Arrange(Set{Title: "Sunday pinafore", Unit: length.Inch, Pieces: []mark.Marking{m}}, paper.All()[0]).Sheets
		require.Len(t, sheets, 1)
		s := &sheets[0]
		s.FindJoins(1)
		s.Letter()
		require.Len(t, s.Captions, 1)
		assert.Equal(t, kind == mark.Gauge, sketch.Within(s.Captions[0].Room.Centre, s.Pieces[0].Outline.Path()), "%v: inside", kind)
	}
}
