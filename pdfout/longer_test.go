package pdfout

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// The lines to measure are straight, and run as the printer goes, on the page as it lies.
func TestLinesToMeasure(t *testing.T) {
	line := func(role mark.Role, name string, points ...plane.Point) mark.Mark {
		return sample.Edge(role, name, points...)
	}
	for _, c := range []struct {
		name         string
		marks        []mark.Mark
		across, down Measurable
	}{
		{
			"a panel of 9 in by 7 in, which lies turned: its long side runs down",
			[]mark.Mark{
				line(mark.Cut, "hem", plane.Point{}, plane.Point{X: 228.6}),
				line(mark.Cut, "side", plane.Point{X: 228.6}, plane.Point{X: 228.6, Y: 177.8}),
			},
			Measurable{Line{"Panel", "side", mark.Cut, 177.8}, 177.8, []int{2}},
			Measurable{Line{"Panel", "hem", mark.Cut, 228.6}, 228.6, []int{2}},
		},
		{
			"of a line round the corner its straight part; what slants by no more than a tenth",
			[]mark.Mark{
				line(mark.Cut, "rest", plane.Point{Y: 200}, plane.Point{}, plane.Point{X: 150, Y: 10}),
			},
			Measurable{Line{"Panel", "rest", mark.Cut, 200 + math.Hypot(150, 10)}, math.Hypot(150, 10), []int{2}},
			Measurable{Line{"Panel", "rest", mark.Cut, 200 + math.Hypot(150, 10)}, 200, []int{2}},
		},
		{
			"nothing that slants more, is no longer than the square, has no name, or is an arrow",
			[]mark.Mark{
				line(mark.Cut, "bias", plane.Point{}, plane.Point{X: 150, Y: 150}),
				line(mark.Cut, "hem", plane.Point{}, plane.Point{X: 126}),
				line(mark.Fold, "", plane.Point{X: 20}, plane.Point{X: 20, Y: 170}), // which one is meant?
				line(mark.Grain, "grain", plane.Point{X: 50}, plane.Point{X: 50, Y: 180}),
			},
			Measurable{}, Measurable{},
		},
		{
			"a line over three pages, since none on one is nearly as long",
			[]mark.Mark{
				line(mark.Cut, "hem", plane.Point{}, plane.Point{X: 170}),
				line(mark.Fold, "fold", plane.Point{}, plane.Point{Y: 600}),
			},
			Measurable{Line{"Panel", "hem", mark.Cut, 170}, 170, []int{4}},
			Measurable{Line{"Panel", "fold", mark.Fold, 600}, 600, []int{2, 3, 4}},
		},
		{
			"a line on one page, since none over several is much longer",
			[]mark.Mark{
				line(mark.Cut, "side", plane.Point{X: 170}, plane.Point{X: 170, Y: 230}),
				line(mark.Fold, "fold", plane.Point{}, plane.Point{Y: 300}),
			},
			Measurable{},
			Measurable{Line{"Panel", "side", mark.Cut, 230}, 230, []int{3}},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := mark.Marking{Name: "Panel", Marks: c.marks}
			piece.Outline = sample.OutlineOf(c.marks)
			b, err := plan(arrange.Set{Pieces: []mark.Marking{piece}}, seen.Paper(t, "letter"))
			require.NoError(t, err)
			found := b.longestLines()
			sameMeasurable(t, c.across, found.Across)
			sameMeasurable(t, c.down, found.Down)
		})
	}
	assert.Equal(t, "on page 5", Measurable{Pages: []int{5}}.Where())
	assert.Equal(t, "on pages 5 to 6 and 8, joined", Measurable{Pages: []int{5, 6, 8}}.Where())
}

func sameMeasurable(t *testing.T, want, got Measurable) {
	t.Helper()
	assert.InDelta(t, want.Straight, got.Straight, 1e-9)
	assert.InDelta(t, want.Length, got.Length, 1e-9)
	want.Straight, want.Length = got.Straight, got.Length
	assert.Equal(t, want, got)
}

// The rules of the first page are measured, 7 in at the foot and 10 in at the edge of letter
// paper, unless a line on one page is longer, or one over several at least half as long again.
func TestRulesToMeasure(t *testing.T) {
	foot := Measurable{Line{Name: "the rule at the foot", Length: 7 * 25.4}, 7 * 25.4, []int{1}}
	edge := Measurable{Line{Name: "the rule at the left edge", Length: 10 * 25.4}, 10 * 25.4, []int{1}}
	for _, c := range []struct {
		name         string
		wide, high   float64
		on           string
		across, down string
	}{
		{"small pieces", 150, 170, "letter", foot.Name, edge.Name},
		{"pieces that are joined", 250, 370, "letter", foot.Name, edge.Name},
		{"pieces that are much longer", 290, 500, "letter", "lower edge", "seam"},
		{"a large page", 400, 420, "single", "lower edge", "seam"},
	} {
		t.Run(c.name, func(t *testing.T) {
			v, err := Judge(arrange.Set{Pieces: []mark.Marking{sample.Rectangle("p", "Panel", c.wide, c.high)}}, seen.Paper(t, c.on), paper.Scale{}, paper.Scale{})
			require.NoError(t, err)
			assert.Equal(t, c.across, v.Longer.Across.Name)
			assert.Equal(t, c.down, v.Longer.Down.Name)
			if c.on == "letter" {
				assert.True(t, v.straights.across.haveNear(177.8, 0.01))
				assert.True(t, v.straights.down.haveNear(254, 0.01))
			}
			if c.down == edge.Name {
				sameMeasurable(t, foot, v.Longer.Across)
				sameMeasurable(t, edge, v.Longer.Down)
			}
		})
	}
}

// However a piece lies, what is offered is among its lines, long enough, and on pages that
// are there.
func TestLinesToMeasureAreThere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wide, high := rapid.Float64Range(20, 900).Draw(t, "wide"), rapid.Float64Range(20, 900).Draw(t, "high")
		panel := sample.Rectangle("p", "Panel", wide, high)
		for i := range panel.Marks {
			panel.Marks[i].Name = "edge"
		}
		set := arrange.Set{Pieces: []mark.Marking{panel}}
		on, err := paper.Find(rapid.SampledFrom([]string{"letter", "a4", "a3", "single"}).Draw(t, "paper"))
		require.NoError(t, err)
		b, err := plan(set, on)
		require.NoError(t, err)
		longer := b.longestLines()
		longest := max(wide, high)
		if math.Abs(longest-127) < 1e-6 {
			t.Skip("at the bound itself rounding decides")
		}
		// On a page that lies where the first page stands nothing is measured.
		lies := !on.WhollyOnOne() && b.sheets[0].Paper.Width > b.sheets[0].Paper.Height
		require.Equal(t, longest > 127 && !lies, max(longer.Across.Straight, longer.Down.Straight) > 0)
		for _, m := range []Measurable{longer.Across, longer.Down} {
			if m.Straight == 0 {
				continue
			}
			require.LessOrEqual(t, m.Straight, longest+1e-9)
			require.GreaterOrEqual(t, m.Straight, 127-1e-9)
			for i, page := range m.Pages {
				require.LessOrEqual(t, page, b.pages)
				require.True(t, i == 0 || page > m.Pages[i-1])
			}
		}
	})
}
