package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// The head of a row begins as far from the ends of the lines as the last word of the row, and
// stands behind that: beside it in one line where the row lies level, over it in lines of 10 mm
// where it stands in a column, on whichever side, however its sheet is turned or mirrored.
func TestHeadsOfRowsOfWords(t *testing.T) {
	up, down, left, right := plane.Point{Y: 1}, plane.Point{Y: -1}, plane.Point{X: -1}, plane.Point{X: 1}
	const text = "below the cut edge"
	for name, c := range map[string]struct {
		along, out plane.Point
		lines      int
	}{
		"a row under the ends":             {down, right, 1},
		"a row over the ends":              {up, right, 1},
		"a mirrored row":                   {down, left, 1},
		"a column right of the ends":       {right, up, 3},
		"a column left of them":            {left, up, 3},
		"a column with its head at a foot": {left, down, 3},
	} {
		t.Run(name, func(t *testing.T) {
			at := plane.Point{X: 100, Y: 100}
			number := mark.Word{Role: mark.TuckFold, Text: "2 13/16", At: at, Out: c.along}
			head := mark.Word{Role: mark.TuckFold, Text: text, At: at, Out: c.out, Head: &mark.Head{Last: number.Text, Along: c.along, Wide: 10}}
			set, last := wordOf(head), wordOf(number)
			assert.Len(t, set.Labels, c.lines)
			over := turned(nearAway, 0).by(anchorOf(head, set), set).Bounds()
			under := turned(nearAway, 0).by(anchorOf(number, last), last).Bounds()
			begins := func(b plane.Box, u plane.Point) float64 { return min(b.Min.Sub(at).Dot(u), b.Max.Sub(at).Dot(u)) }
			assert.InDelta(t, begins(under, c.along), begins(over, c.along), 1e-9, "they begin at one line")
			assert.InDelta(t, 0.9, begins(over, c.out)+begins(under, c.out.Mul(-1)), 1e-9, "right behind it")
			if c.lines > 1 {
				assert.Less(t, over.Width(), 11.0, "two heads side by side keep apart")
			}
		})
	}
}

// A head is carried with its sheet: by a quarter turn, what was below comes to the right.
func TestAHeadIsCarriedWithItsSheet(t *testing.T) {
	w := mark.Word{At: plane.Point{X: 3, Y: 4}, Out: plane.Point{X: 1}, Head: &mark.Head{Last: "2", Along: plane.Point{Y: -1}, Wide: 10}}
	quarter := func(p plane.Point) plane.Point { return plane.Point{X: 50 - p.Y, Y: p.X} }
	got := w.Placed(quarter)
	assert.InDelta(t, 0, got.Out.Distance(plane.Point{Y: 1}), 1e-9)
	assert.InDelta(t, 0, got.Head.Along.Distance(plane.Point{X: 1}), 1e-9)
	assert.Equal(t, plane.Point{Y: -1}, w.Head.Along, "the other keeps its own")
}
