package grid_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/grid"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// Lines run at every eighth of an inch, or at every millimetre, and whole ones have their
// numbers: so many of each, across and up, and the places of some of them.
func TestLinesOfAGrid(t *testing.T) {
	for _, c := range []struct {
		unit                  length.Unit
		size                  grid.Size
		whole, half, fine     int
		name                  string
		at                    float64 // where the whole line of that name lies, in mm
		nextHalf, nextFineToo float64 // behind it
	}{
		{length.Inch, grid.Size{Wide: 14 * 25.4, High: 24 * 25.4}, 15 + 25, 14 + 24, 6 * (14 + 24), "13", 330.2, 12.7, 3.175},
		{length.Centimetre, grid.Size{Wide: 360, High: 600}, 37 + 61, 36 + 60, 8 * (36 + 60), "35", 350, 5, 1},
		{length.Millimetre, grid.Size{Wide: 20, High: 10}, 3 + 2, 2 + 1, 8 * (2 + 1), "10", 10, 5, 1},
	} {
		t.Run(c.unit.String(), func(t *testing.T) {
			all := grid.Of(c.size, c.unit)
			m := all[len(all)-1]
			assert.Equal(t, mark.Grid, m.Kind)
			count := map[mark.Role]int{}
			var up, level []float64
			at := map[mark.Role][]float64{} // of those that run up
			for _, one := range m.Marks {
				count[one.Role]++
				require.Len(t, one.Path, 2)
				assert.Equal(t, one.Role == mark.RuledWhole, one.Name != "", "%v is named", one)
				if one.Path[0].X == one.Path[1].X {
					assert.InDelta(t, c.size.High, one.Path.Length(), 1e-9)
					at[one.Role] = append(at[one.Role], one.Path[0].X)
				} else {
					assert.InDelta(t, c.size.Wide, one.Path.Length(), 1e-9)
				}
				if one.Name == c.name {
					up, level = append(up, one.Path[0].X), append(level, one.Path[0].Y)
				}
			}
			assert.Equal(t, map[mark.Role]int{mark.RuledWhole: c.whole, mark.RuledHalf: c.half, mark.RuledFine: c.fine}, count)
			assert.InDelta(t, c.at, up[0], 1e-9, "the line %s that runs up", c.name)
			if len(level) > 1 {
				assert.InDelta(t, c.at, level[1], 1e-9, "the level line %s", c.name)
			}
			near := func(role mark.Role, x float64) bool {
				for _, q := range at[role] {
					if q-x < 1e-9 && x-q < 1e-9 {
						return true
					}
				}
				return false
			}
			assert.True(t, near(mark.RuledHalf, c.at+c.nextHalf), "half way behind it")
			assert.True(t, near(mark.RuledFine, c.at+c.nextFineToo), "the finest step behind it")
		})
	}
}

// A grid reaches to a whole line, and no farther than any piece.
func TestHowFarAGridReaches(t *testing.T) {
	for _, c := range []struct {
		name string
		mm   float64
		unit length.Unit
		want float64
		err  string
	}{
		{"whole inches", 14 * 25.4, length.Inch, 14 * 25.4, ""},
		{"up to the next inch", 13.25 * 25.4, length.Inch, 14 * 25.4, ""},
		{"up to the next centimetre", 355, length.Centimetre, 360, ""},
		{"up to the next ten millimetres", 351, length.Millimetre, 360, ""},
		{"the most", 120 * 25.4, length.Inch, 120 * 25.4, ""},
		{"the most in centimetres", 3000, length.Centimetre, 3000, ""},
		{"nothing", 0, length.Inch, 0, "a grid cannot reach 0 in\nhint: say how far it is to reach, such as 14 in"},
		{"less than nothing", -10, length.Centimetre, 0, "a grid cannot reach -1 cm\nhint: say how far it is to reach, such as 35 cm"},
		{"too far", 121 * 25.4, length.Inch, 0, "a grid that reaches 121 in is larger than any piece\nhint: 120 in is the most; see whether the unit is the one meant"},
		{"too far in centimetres", 3001, length.Centimetre, 0, "a grid that reaches 300.1 cm is larger than any piece\nhint: 300 cm is the most; see whether the unit is the one meant"},
	} {
		t.Run(c.name, func(t *testing.T) {
			reach, err := grid.Reach(c.mm, c.unit)
			if c.err != "" {
				assert.EqualError(t, err, c.err)
				return
			}
			require.NoError(t, err)
			assert.InDelta(t, c.want, reach, 1e-9)
		})
	}
}

// The lines that the example says are typed give the piece that is drawn beside them, point by
// point.
func TestTheExampleIsWhatItsLinesGive(t *testing.T) {
	for _, unit := range []length.Unit{length.Inch, length.Centimetre, length.Millimetre} {
		t.Run(unit.String(), func(t *testing.T) {
			guide := grid.Of(grid.Usual(unit), unit)[0]
			spec, err := source.Read("front.toml", []byte(strings.Join(guide.Form.Listing, "\n")), sketch.HasLetter)
			require.NoError(t, err)
			pattern, err := marking.Check(spec)
			require.NoError(t, err)
			assert.Empty(t, pattern.Remarks)
			assert.Equal(t, unit, pattern.Unit)
			edges := func(m mark.Marking) (all []plane.Path) {
				for _, one := range m.Marks {
					if one.Role == mark.Cut || one.Role == mark.FoldEdge {
						all = append(all, one.Path)
					}
				}
				return all
			}
			made, drawn := edges(sheet.Of(pattern)[0]), edges(guide)
			require.Len(t, drawn, 6)
			require.Len(t, made, 6)
			for _, d := range drawn {
				near := 1.0
				for _, m := range made {
					near = min(near, farthest(d, m), farthest(d, m.Reversed()))
				}
				assert.Less(t, near, 1e-6, "an edge of %v is not what its line gives", d)
			}
		})
	}
}

// farthest is how far two paths lie apart, point by point, in mm; 1 where they have not as many.
func farthest(a, b plane.Path) float64 {
	if len(a) != len(b) {
		return 1
	}
	far := 0.0
	for i := range a {
		far = max(far, a[i].Distance(b[i]))
	}
	return far
}

// Every point of the example has one number, which stands behind the edges that it belongs to:
// a corner behind two.
func TestNumbersOfTheExample(t *testing.T) {
	guide := grid.Of(grid.Usual(length.Inch), length.Inch)[0]
	behind := map[string]int{}
	for _, line := range guide.Form.Listing {
		if _, numbers, edge := strings.Cut(line, "# "); edge {
			for _, n := range strings.Split(numbers, ", ") {
				behind[n]++
			}
		}
	}
	// Corners of the piece: waist and fold, neck and fold, neck and shoulder, shoulder and
	// armhole, underarm, waist and side.
	assert.Equal(t, map[string]int{"1": 2, "2": 2, "3": 1, "4": 2, "5": 2, "6": 1, "7": 1, "8": 2, "9": 2}, behind)
	drawn := 0
	for _, w := range guide.Words {
		if w.Calls {
			drawn++
			assert.Contains(t, behind, w.Text)
		}
	}
	assert.Equal(t, 9, drawn)
}

// The order of work names the three markings, and no other.
func TestWorkWithAGrid(t *testing.T) {
	var keys, told []string
	for _, m := range grid.Of(grid.Usual(length.Inch), length.Inch) {
		keys = append(keys, m.Key)
	}
	for _, task := range grid.Work() {
		told = append(told, task.Keys...)
	}
	assert.ElementsMatch(t, keys, told)
}
