package lay

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// pathOf reads a path written as short text: "0,0 10,0 10,5" is one of three points,
// in mm.
func pathOf(t testing.TB, text string) plane.Path {
	t.Helper()
	var p plane.Path
	for _, word := range strings.Fields(text) {
		var q plane.Point
		_, err := fmt.Sscanf(word, "%g,%g", &q.X, &q.Y)
		require.NoError(t, err, "point %q", word)
		p = append(p, q)
	}
	return p
}

// thousandths writes a number to a thousandth.
func thousandths(v float64) string { return strconv.FormatFloat(math.Round(v*1000)/1000, 'f', -1, 64) }

// A profile is written as low to high of each column, "+" between two rises of one.
func TestProfile(t *testing.T) {
	for _, c := range []struct{ name, path, want string }{
		{"a square on the sides of columns", "0,0 2,0 2,2 0,2 0,0", "0-2 0-2"},
		{"it begins at its own left side", "7.5,3 9.5,3 9.5,5 7.5,5 7.5,3", "0-2 0-2"},
		{"a sloping side counts with its higher end", "0,0 4,0 0,4 0,0", "0-4 0-3 0-2 0-1"},
		{"a slope overhead", "0,0 4,4 0,4 0,0", "0-4 1-4 2-4 3-4"},
		{"a part of a column counts as all of it", "0,0 1.25,0 1.25,3 0,3 0,0", "0-3 0-3"},
		{"a hair over a column's side does not count", "0,0 2.0000005,0 2.0000005,2 0,2 0,0", "0-2 0-2"},
		{"what can be told does", "0,0 2.00001,0 2.00001,2 0,2 0,0", "0-2 0-2 0-2"},
		{"a step on the side of a column belongs to the tall one alone", "0,0 2,0 2,1 1,1 1,5 0,5 0,0", "0-5 0-1"},
		{"a point within a column", "0,0 1,0 0.5,7 0,0", "0-7"},
		{"a bay within a column is covered", "0,0 1,0 1,5 0,5 0,4 0.5,4 0.5,1 0,1 0,0", "0-5"},
		{"a bay across a column is free", "0,0 2,0 2,5 0,5 0,4 1,4 1,1 0,1 0,0", "0-1+4-5 0-5"},
		{"and as far as it is open across all of it", "0,0 2,0 2,6 0,6 0,5 1,3 0,1 0,0", "0-6 0-6"},
		{"with a slope at each side: from 2 to 4 it is open at 1", "0,0 3,0 3,6 0,6 0,5 2,3 0,1 0,0", "0-2+4-6 0-6 0-6"},
		{"two bays", "0,0 2,0 2,5 0,5 0,4 1,4 1,3 0,3 0,2 1,2 1,1 0,1 0,0", "0-1+2-3+4-5 0-5"},
		{"the same, run round the other way", "0,0 0,1 1,1 1,2 0,2 0,3 1,3 1,4 0,4 0,5 2,5 2,0 0,0", "0-1+2-3+4-5 0-5"},
		{"left open, closed by a straight line", "0,4 0,0 4,0", "0-4 0-3 0-2 0-1"},
		{"a line straight up", "3,1 3,6", "0-5"},
		{"one place", "3,1", "0-0"},
		{"nothing", "", "0-0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := newBand(100, 1, 0).profileOf(pathOf(t, c.path))
			var columns []string
			for _, rises := range p.columns {
				var all []string
				for _, r := range rises {
					all = append(all, thousandths(r.low)+"-"+thousandths(r.high))
				}
				columns = append(columns, strings.Join(all, "+"))
			}
			assert.Equal(t, c.want, strings.Join(columns, " "))
		})
	}
}

// fillInTurn puts shapes in turn and tells where the corner of each comes to lie.
func fillInTurn(s *band, shapes ...plane.Path) string {
	var places []string
	for _, shape := range shapes {
		p := s.profileOf(shape)
		at, ok := s.lowest(p, math.Inf(1))
		if !ok {
			places = append(places, "nowhere")
			continue
		}
		s.put(p, at)
		places = append(places, thousandths(at.X)+","+thousandths(at.Y))
	}
	return strings.Join(places, " ")
}

func TestBand(t *testing.T) {
	for _, c := range []struct {
		name         string
		width, clear float64
		shapes, want string
	}{
		{"side by side", 10, 0, "0,0 4,0 4,5 0,5 0,0; 0,0 4,0 4,5 0,5 0,0", "0,0 4,0"},
		{"the clearance between them, none at the sides", 10, 2, "0,0 4,0 4,5 0,5 0,0; 0,0 4,0 4,5 0,5 0,0", "0,0 6,0"},
		{"a column more where the clearance ends within one", 11, 1.5, "0,0 4,0 4,5 0,5 0,0; 0,0 4,0 4,5 0,5 0,0", "0,0 6,0"},
		{"above, where there is no room beside", 9, 2, "0,0 4,0 4,5 0,5 0,0; 0,0 4,0 4,5 0,5 0,0", "0,0 0,7"},
		{"the lowest place, not the first", 10, 0, "0,0 6,0 6,5 0,5 0,0; 0,0 4,0 4,3 0,3 0,0; 0,0 4,0 4,1 0,1 0,0", "0,0 6,0 6,3"},
		{"into a hollow", 6, 0, "0,0 6,0 6,5 4,5 4,2 2,2 2,5 0,5 0,0; 0,0 2,0 2,9 0,9 0,0", "0,0 2,2"},
		{"into a bay behind", 6, 0, "0,0 2,0 2,5 6,5 6,7 0,7 0,0; 0,0 2,0 2,1 0,1 0,0", "0,0 2,0"},
		{"just as high as the bay with its clearance, and the clearance beside it", 6, 1, "0,0 2,0 2,5 6,5 6,7 0,7 0,0; 0,0 3,0 3,4 0,4 0,0", "0,0 3,0"},
		{"a hair higher than the bay", 6, 1, "0,0 2,0 2,5 6,5 6,7 0,7 0,0; 0,0 3,0 3,4.0000005 0,4.0000005 0,0", "0,0 3,0"},
		{"higher than the bay", 6, 1, "0,0 2,0 2,5 6,5 6,7 0,7 0,0; 0,0 3,0 3,4.01 0,4.01 0,0", "0,0 0,8"},
		{"wider than the bay", 6, 1, "0,0 2,0 2,5 6,5 6,7 0,7 0,0; 0,0 3.1,0 3.1,4 0,4 0,0", "0,0 0,8"},
		{"between two, from above and from the side", 6, 1, "0,0 6,0 6,2 0,2 0,0; 0,0 3,0 3,3 0,3 0,0; 0,0 6,0 6,2 0,2 0,0; 0,0 2,0 2,3 0,3 0,0", "0,0 0,3 0,7 4,3"},
		{"an arm of it into a bay", 6, 0, "0,0 2,0 2,5 6,5 6,7 0,7 0,0; 0,0 2,0 2,6 -3,6 -3,5 0,5 0,0", "0,0 0,7"},
		{"just as wide as the band", 10, 2, "0,0 10,0 10,5 0,5 0,0", "0,0"},
		{"a hair wider than the band", 10, 0, "0,0 10.0000005,0 10.0000005,5 0,5 0,0", "0,0"},
		{"wider than the band", 10, 0, "0,0 10.1,0 10.1,5 0,5 0,0", "nowhere"},
		{"a band that ends within a column", 9.5, 0, "0,0 4,0 4,5 0,5 0,0; 0,0 5.5,0 5.5,5 0,5 0,0", "0,0 4,0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var shapes []plane.Path
			for _, one := range strings.Split(c.shapes, ";") {
				shapes = append(shapes, pathOf(t, one))
			}
			assert.Equal(t, c.want, fillInTurn(newBand(c.width, 1, c.clear), shapes...))
		})
	}
}

func TestBandAtLeft(t *testing.T) {
	s := newBand(10, 1, 1)
	square := s.profileOf(pathOf(t, "0,0 4,0 4,4 0,4 0,0"))
	at, ok := s.lowestAtLeft(square, math.Inf(1))
	require.True(t, ok)
	s.put(square, at)
	at, ok = s.lowestAtLeft(square, math.Inf(1))
	require.True(t, ok)
	assert.Equal(t, plane.Point{X: 0, Y: 5}, at, "above the first and its clearance, though there is room beside it")
	_, ok = s.lowestAtLeft(s.profileOf(pathOf(t, "0,0 11,0 11,4 0,4 0,0")), math.Inf(1))
	assert.False(t, ok, "wider than the band")
}

func TestBandBelow(t *testing.T) {
	s := newBand(10, 1, 1)
	s.fillTo(20)
	square := s.profileOf(pathOf(t, "0,0 4,0 4,4 0,4 0,0"))
	for below, want := range map[float64]bool{math.Inf(1): true, 20.1: true, 20: false, 20.0000005: false, 5: false} {
		at, ok := s.lowest(square, below)
		assert.Equal(t, want, ok, "lower than %g in a band filled to 20", below)
		if ok {
			assert.Equal(t, plane.Point{X: 0, Y: 20}, at)
		}
	}
}

func TestBandUnderACeiling(t *testing.T) {
	const square = "0,0 4,0 4,4 0,4 0,0"
	for _, c := range []struct {
		name, ceiling, shapes, want string
	}{
		{"just under it", "4", square, "0,0"},
		{"no clearance to it", "9", "0,0 10,0 10,4 0,4 0,0; " + square, "0,0 0,5"},
		{"a hair over it", "3.9999995", square, "0,0"},
		{"over it", "3.99", square, "nowhere"},
		{"the second over it", "8.9", "0,0 10,0 10,4 0,4 0,0; " + square, "0,0 nowhere"},
		{"a lower one beside the other, though it does not go over it", "8.9", "0,0 5,0 5,8 0,8 0,0; " + square + "; " + square, "0,0 6,0 nowhere"},
		{"a hollow overhead counts with its highest place", "5", "0,0 10,0 10,2 5,6 0,2 0,0", "nowhere"},
		{"none", "+Inf", "0,0 10,0 10,4 0,4 0,0; " + square, "0,0 0,5"},
	} {
		t.Run(c.name, func(t *testing.T) {
			ceiling, err := strconv.ParseFloat(c.ceiling, 64)
			require.NoError(t, err)
			s := newBand(10, 1, 1)
			s.closeAt(ceiling)
			var shapes []plane.Path
			for _, one := range strings.Split(c.shapes, ";") {
				shapes = append(shapes, pathOf(t, one))
			}
			assert.Equal(t, c.want, fillInTurn(s, shapes...))
		})
	}
}

// The ceiling is never raised, nor the floor lowered, and they hold at the left side too.
func TestBandCeilingStays(t *testing.T) {
	s := newBand(10, 1, 1)
	s.closeAt(7)
	s.closeAt(9)
	square := s.profileOf(pathOf(t, "0,0 4,0 4,4 0,4 0,0"))
	for floor, want := range map[float64]bool{0: true, 3: true, 3.01: false, 8: false} {
		c := s.clone()
		c.fillTo(floor)
		c.fillTo(floor - 1)
		_, ok := c.lowest(square, math.Inf(1))
		assert.Equal(t, want, ok, "4 high from %g up under 7", floor)
		_, ok = c.lowestAtLeft(square, math.Inf(1))
		assert.Equal(t, want, ok, "4 high from %g up under 7, at the left", floor)
	}
}

func TestBandCloneIsAnother(t *testing.T) {
	square := pathOf(t, "0,0 4,0 4,4 0,4 0,0")
	s := newBand(10, 1, 1)
	assert.Equal(t, "0,0", fillInTurn(s, square))
	c := s.clone()
	assert.Equal(t, "5,0 0,5", fillInTurn(c, square, square), "beside what was there")
	assert.Equal(t, "5,0", fillInTurn(s, square), "what was put into the copy is not here")
	assert.Equal(t, "5,5", fillInTurn(c, square), "nor the other way round")
}

// A profile of one band is good for a narrower one like it, even where the columns of
// the first had to be wider than was asked for.
func TestBandLikeAnother(t *testing.T) {
	for _, width := range []float64{10, 100_000} {
		s := newBand(width, 1, 1)
		s.fillTo(7)
		s.closeAt(20)
		c := s.like(width / 2)
		assert.Equal(t, width/2, c.width)
		shape := pathOf(t, "0,0 4,0 4,4 0,4 0,0")
		assert.Equal(t, s.profileOf(shape), c.profileOf(shape), "of a band %g wide", width)
		assert.Equal(t, c.like(width/2), c, "it is empty, from 0 up")
		assert.Equal(t, "0,0", fillInTurn(c, pathOf(t, "0,0 4,0 4,40 0,40 0,0")), "without a ceiling")
		assert.False(t, c.fits(width/2+0.01))
	}
}

// However wide the band, its columns are few.
func TestBandIsBounded(t *testing.T) {
	s := newBand(100_000, 1, 1)
	assert.LessOrEqual(t, len(s.taken), 4096)
	square := pathOf(t, "0,0 40000,0 40000,90000 0,90000 0,0")
	assert.Equal(t, "0,0 40039.063,0 0,90001", fillInTurn(s, square, square, square), "the first, and after it one column of 100,000/4,096 mm")
}

// blob is a closed path round the origin.
func blob(t *rapid.T) plane.Path {
	n := rapid.IntRange(3, 12).Draw(t, "points")
	var p plane.Path
	for i := range n {
		r := rapid.Float64Range(1, 40).Draw(t, "radius")
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		p = append(p, plane.Point{X: r * cos, Y: r * sin})
	}
	return append(p, p[0])
}

// standing returns a path with the lower left corner of its box at a place.
func standing(p plane.Path, at plane.Point) plane.Path {
	step := at.Sub(p.Bounds().Min)
	var q plane.Path
	for _, r := range p {
		q = append(q, r.Add(step))
	}
	return q
}

// reaches reports whether anything of a closed path lies in a box.
func reaches(tree *plane.Tree, box plane.Box) bool {
	return len(tree.Clip(box)) > 0 || sketch.Within(box.Min.Toward(box.Max, 0.5), tree.Path())
}

// Each column of a profile is held against the path clipped to that column: at the height
// of a rise something of the path lies in the column made a little wider, and between
// rises nothing in the column made a little narrower.
func TestProfileIsThePathByColumns(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		step := rapid.Float64Range(0.5, 30).Draw(t, "step")
		shape := blob(t)
		p := newBand(500, step, 0).profileOf(shape)
		shape = standing(shape, plane.Point{})
		tree := plane.NewTree(shape)
		require.Len(t, p.columns, int(math.Ceil((p.width-flush)/step)), "columns")
		for k, rises := range p.columns {
			strip := func(from, to, wider float64) plane.Box {
				return plane.Box{Min: plane.Point{X: float64(k)*step - wider, Y: from}, Max: plane.Point{X: float64(k+1)*step + wider, Y: to}}
			}
			end := -1.0
			for _, r := range rises {
				require.Greater(t, r.low, end, "rises of column %d: %v", k, rises)
				if r.low-end > 8*flush {
					require.False(t, reaches(tree, strip(end+3*flush, r.low-3*flush, -2*flush)), "something lies in column %d below %v", k, r)
				}
				for _, part := range []float64{0, 0.2, 0.5, 0.9, 1} {
					y := r.low + part*(r.high-r.low)
					require.True(t, reaches(tree, strip(y-2*flush, y+2*flush, 2*flush)), "nothing lies in column %d at %g, in %v", k, y, r)
				}
				end = r.high
			}
			require.False(t, reaches(tree, strip(end+3*flush, p.height+1, -2*flush)), "something lies in column %d over %v", k, rises)
		}
	})
}

// overlap reports whether a shape that begins in a column at a y takes what others take.
func overlap(p *profile, first int, y float64, taken [][]rise) bool {
	for k, rises := range p.columns {
		for _, r := range rises {
			for _, t := range taken[first+k] {
				if t.low < y+r.high-3*flush && t.high > y+r.low+3*flush {
					return true
				}
			}
		}
	}
	return false
}

// Shapes are looked at as the polygons they are: none may come nearer to another than
// the clearance, and none leaves the band. And there is no lower place: wherever a shape
// might rest on those before it, lower than where it lies, it would take what they take.
func TestBandKeepsShapesApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.Float64Range(80, 200).Draw(t, "width")
		clear := rapid.SampledFrom([]float64{0.1, 2, 5}).Draw(t, "clearance")
		step := rapid.Float64Range(3, 12).Draw(t, "step")
		b := newBand(width, step, clear)
		var laid []*plane.Tree
		taken := make([][]rise, int(width/step)+2)
		var kinds []*profile // some shapes are alike
		var paths []plane.Path
		for range rapid.IntRange(2, 12).Draw(t, "shapes") {
			kind := rapid.IntRange(0, len(kinds)).Draw(t, "kind")
			if kind == len(kinds) {
				paths = append(paths, standing(blob(t), plane.Point{}))
				kinds = append(kinds, b.profileOf(paths[kind]))
			}
			p := kinds[kind]
			at, ok := b.lowest(p, math.Inf(1))
			require.True(t, ok, "a shape of %g in a band of %g", p.width, width)
			for first := 0; float64(first)*step+p.width <= width; first++ {
				ys := []float64{0}
				for k, rises := range p.columns {
					for _, r := range rises {
						for _, t := range taken[first+k] {
							ys = append(ys, t.high-r.low)
						}
					}
				}
				for _, y := range ys {
					if y >= 0 && y < at.Y-9*flush {
						require.True(t, overlap(p, first, y, taken), "it could lie at %g,%g as well as at %v", float64(first)*step, y, at)
					}
				}
			}
			b.put(p, at)
			path := standing(paths[kind], at)
			box := path.Bounds()
			require.True(t, box.Min.X >= 0 && box.Min.Y >= 0 && box.Max.X <= width+flush, "it lies at %v in a band of %g", box, width)
			tree := plane.NewTree(path)
			for i, other := range laid {
				require.Empty(t, tooClose(tree, other, clear-4*flush), "shapes %d and %d", i, len(laid))
			}
			laid = append(laid, tree)
			beside := int(math.Ceil(clear / step))
			for k, rises := range p.columns {
				k += int(math.Round(at.X / step))
				for i := max(0, k-beside); i <= min(k+beside, len(taken)-1); i++ {
					for _, r := range rises {
						taken[i] = append(taken[i], rise{at.Y + r.low - clear, at.Y + r.high + clear})
					}
				}
			}
		}
	})
}

func BenchmarkBand(b *testing.B) {
	shape := wavyPiece(5_000, 150)
	for b.Loop() {
		s := newBand(1_500, 1.5, 3)
		p := s.profileOf(shape)
		for range 1_000 {
			at, _ := s.lowest(p, math.Inf(1))
			s.put(p, at)
		}
	}
}
