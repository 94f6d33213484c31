package gauge

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// stepsOf reads the steps off the outline of the straight gauge: how far each level
// stretch opposite the long side lies from it, and how long it is, from left to right.
func stepsOf(m mark.Marking) (high, long []float64) {
	box := m.Outline.Bounds()
	for i := len(m.Outline) - 1; i > 0; i-- {
		a, b := m.Outline[i], m.Outline[i-1]
		if a.Y == b.Y && a.Y > box.Min.Y {
			high, long = append(high, a.Y-box.Min.Y), append(long, b.X-a.X)
		}
	}
	return high, long
}

func TestStepsOfTheStraightGauge(t *testing.T) {
	for _, c := range []struct {
		name, unit, allowance string
		extra                 []string // of the bottom, right and left edge
		want                  []float64
		names                 string
		last                  string // of the notes; "" where it does not matter
	}{
		{"one allowance", "in", "3/8", []string{"", "", ""}, []float64{9.525}, "3/8 in", ""},
		{"a hem with its turn", "in", "3/8", []string{"hem = 2; turn = \"1/4\"", "", ""}, []float64{6.35, 9.525, 57.15}, "1/4 in; 3/8 in; 2 1/4 in", "draw along the step that has the width of the allowance"},
		{"a hem without a turn", "in", "3/8", []string{"hem = 2", "", ""}, []float64{9.525, 50.8}, "3/8 in; 2 in", ""},
		{"rising, each once", "in", "1/4", []string{"allowance = 1", "allowance = \"5/8\"", "allowance = 0"}, []float64{6.35, 15.875, 25.4}, "1/4 in; 5/8 in; 1 in", ""},
		{"none to be told apart", "in", "3/8", []string{"allowance = \"9.5 mm\"", "", ""}, []float64{9.5}, "9.5 mm and 3/8 in", ""},
		{"6 in is held", "in", "3/8", []string{"hem = 6", "", ""}, []float64{9.525, 152.4}, "3/8 in; 6 in", ""},
		{"more is not", "in", "3/8", []string{"hem = \"6 1/8\"", "", ""}, []float64{9.525}, "3/8 in", "measure 6 1/8 in with a ruler: no card is so wide"},
		{"nor are two", "in", "1/8", []string{"hem = \"6 1/8\"", "allowance = 7", ""}, []float64{3.175}, "1/8 in", "measure 6 1/8 in and 7 in with a ruler: no card is so wide"},
		{"metric", "mm", "10", []string{"hem = 30; turn = 5", "allowance = \"3/8 in\"", "allowance = 7.5"}, []float64{5, 7.5, 9.525, 10, 35}, "5 mm; 7.5 mm; 3/8 in; 10 mm; 35 mm", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			scale := 1.0
			if c.unit == "mm" {
				scale = 25
			}
			at := func(x, y float64) string { return fmt.Sprintf("%v,%v", x*scale, y*scale) }
			text := "bottom: " + at(0, 0) + " " + at(20, 0) + " | " + c.extra[0] + "\nright: " + at(20, 0) + " " + at(20, 20) + " | " + c.extra[1] +
				"\ntop: " + at(20, 20) + " " + at(0, 20) + "\nleft: " + at(0, 20) + " " + at(0, 0) + " | " + c.extra[2] + "\n---\n"
			pattern := made.Of(t, fmt.Sprintf("unit = %q\nallowance = %q\n", c.unit, c.allowance)+sketch.Front(text))
			m, ok := stepGauge(pattern)
			require.True(t, ok)
			requireCard(t, m)
			high, long := stepsOf(m)
			require.Len(t, high, len(c.want))
			step := 31.75
			if c.unit == "mm" {
				step = 30
			}
			for i := range high {
				assert.InDelta(t, c.want[i], high[i], 1e-9, "step %d", i+1)
				assert.InDelta(t, step, long[i], 1e-9, "length of step %d", i+1)
			}
			assert.Equal(t, plane.Path{{}, {X: step * float64(len(high))}}, m.Marks[0].Path)
			last := m.Words[len(m.Words)-1]
			assert.Equal(t, "cut edge here", last.Text)
			assert.InDelta(t, min(2, 0.3*c.want[0]), last.At.Y, 1e-9, "it stands on the hatching")
			var names []string
			for i, w := range m.Words[:len(m.Words)-1] { // each within its step, the highest first
				names = append([]string{w.Text}, names...)
				assert.InDelta(t, high[len(high)-1-i], w.At.Y, 1e-9, w.Text)
				assert.Equal(t, plane.Point{Y: -1}, w.Out, w.Text)
			}
			assert.Equal(t, c.names, strings.Join(names, "; "))
			if c.last != "" {
				assert.Equal(t, c.last, m.Told()[len(m.Told())-1])
			}
		})
	}
}

func TestNoStraightGauge(t *testing.T) {
	for _, allowance := range []string{"0", "0.001", "7"} { // none, none that can be seen, none within a card
		pattern := made.Of(t, "allowance = "+allowance+"\n"+sketch.Front("a: 0,0 20,0\nb: 20,0 20,20\nc: 20,20 0,20\nd: 0,20 0,0\n---\n"))
		_, ok := stepGauge(pattern)
		assert.False(t, ok, "an allowance of %s in", allowance)
	}
}

func TestNotesOfTheStraightGauge(t *testing.T) {
	m, ok := stepGauge(made.Example(t, "pinafore.toml"))
	require.True(t, ok)
	assert.Equal(t, []string{
		"a hem has the step of its turn, and that of turn and hem together",
		"lay the hatched side on the cut edge",
		"draw along the step that has the width of the allowance",
	}, m.Told())
}
