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

// A profile is written as low to high of each column.
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
		{"what lies between is covered", "0,0 1,0 1,5 0,5 0,4 0.5,4 0.5,1 0,1 0,0", "0-5"},
		{"left open, closed by a straight line", "0,4 0,0 4,0", "0-4 0-3 0-2 0-1"},
		{"a line straight up", "3,1 3,6", "0-5"},
		{"one place", "3,1", "0-0"},
		{"nothing", "", "0-0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := newSkyline(100, 1, 0).profileOf(pathOf(t, c.path))
			var columns []string
			for _, c := range p.columns {
				columns = append(columns, thousandths(c.low)+"-"+thousandths(c.high))
			}
			assert.Equal(t, c.want, strings.Join(columns, " "))
		})
	}
}

// fillInTurn puts shapes in turn and tells where the corner of each comes to lie.
func fillInTurn(s *skyline, shapes ...plane.Path) string {
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

func TestSkyline(t *testing.T) {
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
		{"not into a gap behind", 6, 0, "0,0 2,0 2,5 6,5 6,7 0,7 0,0; 0,0 2,0 2,1 0,1 0,0", "0,0 0,7"},
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
			assert.Equal(t, c.want, fillInTurn(newSkyline(c.width, 1, c.clear), shapes...))
		})
	}
}

func TestSkylineAtLeft(t *testing.T) {
	s := newSkyline(10, 1, 1)
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

func TestSkylineBelow(t *testing.T) {
	s := newSkyline(10, 1, 1)
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

func TestSkylineUnderACeiling(t *testing.T) {
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
			s := newSkyline(10, 1, 1)
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
func TestSkylineCeilingStays(t *testing.T) {
	s := newSkyline(10, 1, 1)
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

func TestSkylineCloneIsAnother(t *testing.T) {
	square := pathOf(t, "0,0 4,0 4,4 0,4 0,0")
	s := newSkyline(10, 1, 1)
	assert.Equal(t, "0,0", fillInTurn(s, square))
	c := s.clone()
	assert.Equal(t, "5,0 0,5", fillInTurn(c, square, square), "beside what was there")
	assert.Equal(t, "5,0", fillInTurn(s, square), "what was put into the copy is not here")
	assert.Equal(t, "5,5", fillInTurn(c, square), "nor the other way round")
}

// A profile of one band is good for a narrower one like it, even where the columns of
// the first had to be wider than was asked for.
func TestSkylineLikeAnother(t *testing.T) {
	for _, width := range []float64{10, 100_000} {
		s := newSkyline(width, 1, 1)
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
func TestSkylineIsBounded(t *testing.T) {
	s := newSkyline(100_000, 1, 1)
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

// columnsOf returns how far a path that begins at x = 0 reaches in each column, from
// the path clipped to the column made wider by so much at each side.
func columnsOf(p plane.Path, step, wider float64) []plane.Box {
	var columns []plane.Box
	tree, box := plane.NewTree(p), p.Bounds()
	for left := 0.0; left < box.Max.X-flush; left += step {
		reach := plane.EmptyBox()
		for _, run := range tree.Clip(plane.Box{Min: plane.Point{X: left - wider, Y: box.Min.Y}, Max: plane.Point{X: left + step + wider, Y: box.Max.Y}}) {
			reach = reach.Union(run.Path.Bounds())
		}
		columns = append(columns, reach)
	}
	return columns
}

// Each column of a profile is held against the path clipped to that column, made a
// little narrower and a little wider.
func TestProfileIsThePathByColumns(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		step := rapid.Float64Range(0.5, 30).Draw(t, "step")
		shape := blob(t)
		p := newSkyline(500, step, 0).profileOf(shape)
		shape = standing(shape, plane.Point{})
		narrow, wide := columnsOf(shape, step, -2*flush), columnsOf(shape, step, 2*flush)
		require.Len(t, p.columns, len(wide), "columns")
		for k, c := range p.columns {
			require.GreaterOrEqual(t, c.low, wide[k].Min.Y-flush, "the low of column %d", k)
			require.LessOrEqual(t, c.low, narrow[k].Min.Y+flush, "the low of column %d", k)
			require.LessOrEqual(t, c.high, wide[k].Max.Y+flush, "the high of column %d", k)
			require.GreaterOrEqual(t, c.high, narrow[k].Max.Y-flush, "the high of column %d", k)
		}
	})
}

// Shapes are looked at as the polygons they are: none may come nearer to another than
// the clearance, and none leaves the band. And wherever else a shape might lie, the
// columns of those before it hold it up at least as high.
func TestSkylineKeepsShapesApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.Float64Range(80, 300).Draw(t, "width")
		clear := rapid.SampledFrom([]float64{0.1, 2, 5}).Draw(t, "clearance")
		step := rapid.Float64Range(0.5, 9).Draw(t, "step")
		s := newSkyline(width, step, clear)
		var laid []*plane.Tree
		taken := make([]float64, int(width/step)+2)
		for range rapid.IntRange(2, 12).Draw(t, "shapes") {
			shape := blob(t)
			p := s.profileOf(shape)
			at, ok := s.lowest(p, math.Inf(1))
			require.True(t, ok, "a shape of %g in a band of %g", p.width, width)
			own := columnsOf(standing(shape, plane.Point{}), step, 2*flush)
			for first := 0; float64(first)*step+p.width <= width; first++ {
				y := 0.0
				for k, reach := range own {
					y = math.Max(y, taken[first+k]-reach.Min.Y)
				}
				require.GreaterOrEqual(t, y, at.Y-2*flush, "it could lie at %g as well as at %v", float64(first)*step, at)
			}
			s.put(p, at)
			path := standing(shape, at)
			box := path.Bounds()
			require.True(t, box.Min.X >= 0 && box.Min.Y >= 0 && box.Max.X <= width+flush, "it lies at %v in a band of %g", box, width)
			tree := plane.NewTree(path)
			for i, other := range laid {
				require.Empty(t, tooClose(tree, other, clear-2*flush), "shapes %d and %d", i, len(laid))
			}
			laid = append(laid, tree)
			beside := int(math.Ceil(clear / step))
			for k, reach := range own {
				k += int(math.Round(at.X / step))
				for i := max(0, k-beside); i <= min(k+beside, len(taken)-1); i++ {
					taken[i] = math.Max(taken[i], at.Y+reach.Max.Y+clear)
				}
			}
		}
	})
}

func BenchmarkSkyline(b *testing.B) {
	shape := wavyPiece(5_000, 150)
	for b.Loop() {
		s := newSkyline(1_500, 1.5, 3)
		p := s.profileOf(shape)
		for range 1_000 {
			at, _ := s.lowest(p, math.Inf(1))
			s.put(p, at)
		}
	}
}
