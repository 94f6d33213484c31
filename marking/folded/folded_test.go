package folded_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/folded"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// layersAt counts the layers of a picture that hold a place.
func layersAt(m mark.Pressed, q plane.Point) int {
	n := 0
	for _, l := range m.Layers {
		if plane.NewTree(l.Path).Holds(q) {
			n++
		}
	}
	return n
}

// areaOf is the area of all layers together, in mm².
func areaOf(m mark.Pressed) float64 {
	sum := 0.0
	for _, l := range m.Layers {
		sum += math.Abs(l.Path.Area())
	}
	return sum
}

// front folds the piece of a sketch in inches.
func front(t *testing.T, halves mark.Halves, text string) mark.Pressed {
	t.Helper()
	p, pattern := made.Front(t, "0", text)
	return folded.Of(p, pattern.Unit, halves)
}

// square is a piece drawn finished, 10 in square.
const square = `drawn = "finished"
centre: 0,0 0,10
top: 0,10 10,10
right: 10,10 10,0
hem: 10,0 0,0
---
`

// By formula, in square inches of a field of 10 by 10: a tuck of width w lies in three layers over w,
// and two that come nearer than a width in five where one covers the next; where folds run both
// ways the layers multiply.
func TestAreaByLayers(t *testing.T) {
	for _, c := range []struct {
		name, rows string
		want       map[int]float64 // square inches, by the number of layers
	}{
		{"no fold", "", map[int]float64{1: 100}},
		{"six tucks of 1/8 in", sketch.Rows(`tuck a centre 1/8 6 1 | gap = "1/8"`), map[int]float64{1: 92.5, 3: 7.5}},
		{"four of 1/2 in, each over half of the next", sketch.Rows(`tuck a centre 1/2 4 2 | spacing = 1.25`), map[int]float64{1: 100 - 12.5, 3: 5, 5: 7.5}},
		{"three that take up touching cloth", sketch.Rows(`tuck a centre 1/2 3 2 | spacing = 1`), map[int]float64{1: 95, 7: 5}},
		{"three knife pleats of 1/2 in", sketch.Rows(`pleat a centre 1/2 3 2 | gap = 0`), map[int]float64{1: 85, 3: 15}},
		{"a box pleat of 1 in", sketch.Rows(`pleat a centre 1 1 5 | kind = "box"`), map[int]float64{1: 80, 3: 20}},
		{"an inverted pleat of 1 in", sketch.Rows(`pleat a centre 1 1 5 | kind = "inverted"`), map[int]float64{1: 80, 3: 20}},
		{"a tuck of 1 in stitched 4 in down", sketch.Rows(`tuck a centre 1 1 3`) + "below = \"top\"\nlength = 4\n", map[int]float64{1: 96, 3: 4}},
		{"a tuck of 1 in each way", sketch.Rows(`tuck a centre 1 1 3`, `tuck b hem 1 1 3`), map[int]float64{1: 81, 3: 18, 9: 1}},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := front(t, mark.OneHalf, square+c.rows)
			got, counts := map[int]float64{}, []int{}
			const n = 161 // odd, so that no place lies on a line
			for i := range n {
				for k := range n {
					q := plane.Point{X: (float64(i) + 0.5) / n, Y: (float64(k) + 0.5) / n}.Mul(254)
					got[layersAt(m, q)] += 100.0 / n / n
				}
			}
			for layers, area := range c.want {
				counts = append(counts, layers)
				assert.InDelta(t, area, got[layers], 1, "square inches of %d layers", layers)
			}
			assert.Len(t, got, len(c.want), "other numbers of layers: %v", got)
			slices.Sort(counts)
			assert.Equal(t, counts, m.Counts, "the numbers of layers there are")
		})
	}
}

// At every place lie as many layers as places of the flat cloth come to lie there: of a piece
// that is drawn finished all that the walk finds, of one drawn flat those that it has.
func TestLayersAreWhatTheFoldMapLaysThere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := randomField(t)
		drawn := rapid.SampledFrom([]string{"flat", "finished"}).Draw(t, "drawn")
		p := f.piece(t, drawn)
		m := folded.Of(p, length.Millimetre, mark.BothHalves)
		var within func(plane.Point) bool
		if drawn == "flat" {
			within = func(flat plane.Point) bool { return f.holds(p, flat) }
		}
		box := m.Outline.Bounds().Grown(3)
		for range 60 {
			at := plane.Point{
				X: rapid.Float64Range(box.Min.X, box.Max.X).Draw(t, "x"),
				Y: rapid.Float64Range(box.Min.Y, box.Max.Y).Draw(t, "y"),
			}
			q := f.local(at)
			want := f.layers(q, within)
			if drawn == "finished" && !f.holds(p, q) {
				want = 0
			}
			if math.Abs(q.X) < 1e-3 || f.nearBreak(q, within) || plane.NewTree(m.Outline).Nearer(at, 1e-3) {
				continue
			}
			require.Equal(t, want, layersAt(m, at), "at %v, drawn %s", q, drawn)
		}
	})
}

// No cloth is lost: the layers together are as large as the flat piece, where every fold is
// folded all along.
func TestAllClothIsThere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := randomField(t)
		p := f.piece(t, rapid.SampledFrom([]string{"flat", "finished"}).Draw(t, "drawn"))
		if f.ends {
			t.Skip("below its end a fold is open")
		}
		flat := p.Flat.Outline.Path.Area()
		if f.onFold {
			flat *= 2
		}
		m := folded.Of(p, length.Millimetre, mark.BothHalves)
		assert.InDelta(t, flat, areaOf(m), flat*1e-6, "the area of all layers")
	})
}

// Half a piece is what lies on its side of the whole, and what lies on the other is its
// image.
func TestHalves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := randomField(t)
		f.onFold, f.angle = true, 0
		p := f.piece(t, rapid.SampledFrom([]string{"flat", "finished"}).Draw(t, "drawn"))
		half, whole := folded.Of(p, length.Millimetre, mark.OneHalf), folded.Of(p, length.Millimetre, mark.BothHalves)
		assert.Equal(t, mark.BothHalves, whole.Halves)
		assert.InDelta(t, areaOf(whole), 2*areaOf(half), areaOf(whole)*1e-6, "the area of all layers")
		assert.InDelta(t, whole.Outline.Area(), 2*half.Outline.Area(), 1e-3, "the outline")
		assert.Equal(t, half.Counts, whole.Counts)
		box := half.Outline.Bounds()
		for range 20 {
			q := plane.Point{
				X: rapid.Float64Range(0.01, box.Max.X).Draw(t, "x"),
				Y: rapid.Float64Range(box.Min.Y, box.Max.Y).Draw(t, "y"),
			}
			if f.nearBreak(q, nil) || plane.NewTree(half.Outline).Nearer(q, 0.1) {
				continue
			}
			n := layersAt(whole, q)
			require.Equal(t, n, layersAt(half, q), "of the half at %v", q)
			require.Equal(t, n, layersAt(whole, plane.Point{X: -q.X, Y: q.Y}), "at the image of %v", q)
		}
	})
}

// Folds that part the cloth into more parts than anybody could tell apart are left out, of
// pieces drawn flat or finished; all of the cloth is shown, once.
func TestMoreFoldsThanCanBeShown(t *testing.T) {
	for _, drawn := range []string{"flat", "finished"} {
		text := "fold = \"centre\"\n" + strings.Replace(square, "finished", drawn, 1)
		p, pattern := made.Front(t, "0", text+sketch.Rows(`tuck a centre 0.01 70 1/2 | spacing = 0.04`, `tuck b hem 0.01 70 1/2 | spacing = 0.04`))
		for halves, whole := range map[mark.Halves]float64{mark.OneHalf: 1, mark.BothHalves: 2} {
			m := folded.Of(p, pattern.Unit, halves)
			require.Len(t, m.Layers, 1, drawn)
			assert.InDelta(t, whole*math.Abs(p.Outline.Area()), areaOf(m), 1e-6, drawn)
			assert.Equal(t, []int{1}, m.Counts, drawn)
			assert.Equal(t, []string{"it has more folds, one across the other, than can be shown: it is drawn without them"}, m.Notes, drawn)
		}
		few, pattern := made.Front(t, "0", text+sketch.Rows(`tuck a centre 0.01 30 1/2 | spacing = 0.04`, `tuck b hem 0.01 30 1/2 | spacing = 0.04`))
		assert.Empty(t, folded.Of(few, pattern.Unit, mark.BothHalves).Notes, drawn)
	}
}
