package gauge

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// requireCard looks whether a gauge can be cut out: one outline that nowhere meets
// itself, counter-clockwise, every side of which is a cutting line.
func requireCard(t require.TestingT, m mark.Marking) {
	require.True(t, m.Outline.Closed(), "%s: the outline is open", m.Name)
	require.Positive(t, m.Outline.Area(), "%s: the outline runs clockwise", m.Name)
	at, _, _, crosses := plane.SelfCrossing(plane.NewTree(m.Outline))
	require.False(t, crosses, "%s: the outline meets itself at %v", m.Name, at)
	var round plane.Path
	for _, side := range m.Marks {
		if side.Role == mark.Cut {
			round = append(round, side.Path[:len(side.Path)-1]...)
		}
	}
	require.Equal(t, m.Outline, append(round, round[0]), "%s: its cut sides are not its outline", m.Name)
}

// gaugeNames lists what gauges there are.
func gaugeNames(all []mark.Marking) []string {
	names := []string{}
	for _, m := range all {
		names = append(names, m.Name)
	}
	return names
}

// pathNamed returns the side of that name.
func pathNamed(t require.TestingT, m mark.Marking, name string) plane.Path {
	for _, one := range m.Marks {
		if one.Name == name {
			return one.Path
		}
	}
	require.Fail(t, "no side of that name", "%s: %s", m.Name, name)
	return nil
}

// cutLength is how long the side of an edge gauge is that lies on the cut edge, in mm: what is
// left of it on both sides of the handle, and the line across that.
func cutLength(m mark.Marking) float64 {
	for _, one := range m.Marks {
		if one.Role == mark.Placement {
			long := one.Path.Length()
			for _, side := range m.Marks {
				n := len(side.Path) - 1
				if side.Role == mark.Cut && (side.Path[0] == one.Path[len(one.Path)-1] || side.Path[n] == one.Path[0]) {
					long += side.Path.Length()
				}
			}
			return long
		}
	}
	return m.Marks[0].Path.Length()
}

// stitchLength is how long the side is along which a line is drawn, whose ends may have names
// of their own.
func stitchLength(m mark.Marking) float64 {
	long := 0.0
	for _, one := range m.Marks {
		if one.Role == mark.Cut && (one.Name == "stitch line" || strings.HasSuffix(one.Name, " end")) {
			long += one.Path.Length()
		}
	}
	return long
}

func pathsOf(m mark.Marking, role mark.Role) []plane.Path {
	var all []plane.Path
	for _, one := range m.Marks {
		if one.Role == role {
			all = append(all, one.Path)
		}
	}
	return all
}

// The neck of this apron is the only edge that curves: 5 in of it are straight.
const dipped = `name = "Front"
bottom: 0,0 9,0
right: 9,0 9,12
neck: 9,12 6,10 3,10 0,12 | smooth = true
left: 0,12 0,0
---

`

func TestWhichGaugesThereAre(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"nothing to mark", "allowance = 0\n" + sketch.Front(dipped), []string{}},
		{"a curve in two parts, and straight edges", "allowance = \"3/8\"\n" + sketch.Front(dipped),
			[]string{"Front neck: gauge 1 of 2", "Front neck: gauge 2 of 2", "Straight gauge"}},
		{"the curve is not marked", "allowance = \"3/8\"\n" + sketch.Front(sketch.Swap(dipped, "smooth = true", "smooth = true; marked = false")),
			[]string{"Straight gauge"}},
		{"a straight edge is marked", "allowance = \"3/8\"\n" + sketch.Front(sketch.Swap(dipped, "smooth = true", "smooth = true; marked = false", "9,0 9,12", "9,0 9,12 | marked = true")),
			[]string{"Front right: gauge 1 of 3", "Front right: gauge 2 of 3", "Front right: gauge 3 of 3", "Straight gauge"}},
		{"an edge no longer than an overlap", "allowance = \"1/8\"\n" + sketch.Front("name = \"Front\"\nbottom: 0,0 9,0\nright: 9,0 9,3\ntop: 9,3 0,3\nleft: 0,3 0,0.5\ncorner: 0,0.5 0,0 | marked = true\n---\n"),
			nil}, // two edges in one line: told below
		{"a hem alone", "allowance = 0\n" + sketch.Front(sketch.Swap(dipped, "bottom: 0,0 9,0", "bottom: 0,0 9,0 | hem = 2; turn = \"1/4\"")),
			[]string{"Straight gauge"}},
		{"tucks", "allowance = 0\n" + sketch.Front(dipped+"[tuck.a]\nbeside = \"left\"\nwidth = \"1/4\"\ncount = 3\nfirst = 1\ngap = \"1/8\"\n"),
			[]string{"Tuck gauge: 1/4 in wide, 1/8 in between"}},
		{"one tuck", "allowance = 0\n" + sketch.Front(dipped+"[tuck.a]\nbeside = \"left\"\nwidth = \"1/4\"\ncount = 1\nfirst = 1\n"),
			[]string{"Tuck gauge: 1/4 in wide"}},
		{"one tuck, and a row of that width", "allowance = 0\n" + sketch.Front(dipped+"[tuck.a]\nbeside = \"left\"\nwidth = \"1/4\"\ncount = 1\nfirst = 1\n[tuck.b]\nbeside = \"right\"\nwidth = \"1/4\"\nfirst = 1\ncount = 2\ngap = 0.25\n"),
			[]string{"Tuck gauge: 1/4 in wide, 1/4 in between"}},
		{"two rows alike, and one of another gap", "allowance = 0\n" + sketch.Front(dipped+sketch.Tucked("left", "1/8", 2, "3/8", "")+sketch.Swap(sketch.Tucked("right", "1/8", 3, "3/8", ""), "tuck.t", "tuck.u")+"[tuck.v]\nbeside = \"bottom\"\nwidth = \"1/8\"\ncount = 2\nfirst = 1\ngap = \"1/4\"\n"),
			[]string{"Tuck gauge: 1/8 in wide", "Tuck gauge: 1/8 in wide, 1/4 in between"}},
		{"twin-needle tucks", "allowance = 0\n" + sketch.Front(dipped+sketch.Tucked("left", "1/8", 2, "3/8", "sewn = \"twin needle\"")), []string{}},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, c.text)
			all := Of(pattern)
			for _, m := range all {
				requireCard(t, m)
			}
			if c.want != nil {
				assert.Equal(t, c.want, gaugeNames(all))
				return
			}
			assert.Equal(t, []string{"Front corner: gauge", "Straight gauge"}, gaugeNames(all))
			assert.InDelta(t, 25.4/2, cutLength(all[0]), 1e-9)
			assert.InDelta(t, 25.4/2, pathNamed(t, all[0], "stitch line").Length(), 1e-9)
		})
	}
}

// A square neck bends, though no part of it is curved: it has a gauge in one piece. Its
// stitch line goes round the outside of the corner: 2 1/4 and 2 1/4 in to 2 and 2 in.
func TestASquareNeckHasAGauge(t *testing.T) {
	all := Of(made.Of(t, "allowance = 0.25\n"+sketch.Front(sketch.SquareNeck)))
	require.Equal(t, []string{"front neck: gauge", "Straight gauge"}, gaugeNames(all))
	requireCard(t, all[0])
	assert.InDelta(t, 4*25.4, cutLength(all[0]), 1e-6)
	assert.InDelta(t, 4.5*25.4, stitchLength(all[0]), 1e-6)
}

func TestEveryExampleHasGaugesThatCanBeCut(t *testing.T) {
	for _, c := range []struct {
		name  string
		count int
	}{{"pinafore.toml", 8}, {"shirt.toml", 7}, {"nightgown.toml", 12}} {
		all := Of(made.Example(t, c.name))
		assert.Len(t, all, c.count, c.name)
		keys := map[string]bool{}
		for _, m := range all {
			requireCard(t, m)
			assert.False(t, keys[m.Key], "%s: two gauges are %q", c.name, m.Key)
			keys[m.Key] = true
		}
	}
}

func TestAPatternOfNothingHasNoGauges(t *testing.T) {
	assert.Empty(t, Of((&garment.Pattern{})))
	assert.Empty(t, Of((&garment.Pattern{Pieces: []piece.Piece{{}}})))
	assert.Empty(t, edgeGauges((&garment.Pattern{Pieces: []piece.Piece{{Edges: []piece.Edge{{Marked: true}, {Marked: true, Allowance: 5, Path: plane.Path{{}, {}}}}}}})))
}

// thousandEdges are curved edges, each hardly different from the next: what is compared
// most.
func thousandEdges(t testing.TB) *garment.Pattern {
	t.Helper()
	var b strings.Builder
	b.WriteString("unit = \"mm\"\nallowance = 8\n")
	for i := range 250 {
		fmt.Fprintf(&b, "[piece.p%d]\n", i)
		lift := func(k int) float64 { return 20 + 0.6*float64(i) + 0.15*float64(k) }
		for k, edge := range []string{
			fmt.Sprintf("[0, 0], [100, %f], [300, 0]", -lift(0)), fmt.Sprintf("[300, 0], [%f, 100], [300, 300]", 300+lift(1)),
			fmt.Sprintf("[300, 300], [200, %f], [0, 300]", 300+lift(2)), fmt.Sprintf("[0, 300], [%f, 200], [0, 0]", -lift(3)),
		} {
			fmt.Fprintf(&b, "[piece.p%d.edge.e%d]\npoints = [%s]\nsmooth = true\n", i, k, edge)
		}
	}
	pattern := made.Of(t, b.String())
	return pattern
}

// BenchmarkThousandEdges tells whether this is quick.
func TestThousandEdgesHaveGaugesOfTheirOwn(t *testing.T) {
	assert.Greater(t, len(Of(thousandEdges(t))), 3000, "the edges differ, and have three parts or more")
}

func BenchmarkThousandEdges(b *testing.B) {
	pattern := thousandEdges(b)
	for b.Loop() {
		Of(pattern)
	}
}
