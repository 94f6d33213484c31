package plane

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var always = [2]float64{math.Inf(-1), math.Inf(1)}

// over makes folds of text such as "2+1 6-1": a strip that begins at u = 2 and
// is two widths of 1 wide, with its flap toward greater u, and one at 6 with its
// flap toward less. What follows a colon is the v above which it is folded.
func over(t testing.TB, text string) *Folding {
	t.Helper()
	var folds []Fold
	for _, word := range strings.Fields(text) {
		fold := Fold{From: always[0], To: always[1]}
		word, level, ends := strings.Cut(word, ":")
		if ends {
			_, err := fmt.Sscan(level, &fold.From)
			require.NoError(t, err)
		}
		i := strings.LastIndexAny(word, "+-")
		fold.Back = word[i] == '-'
		_, err := fmt.Sscan(word[:i], &fold.At)
		require.NoError(t, err)
		_, err = fmt.Sscan(word[i+1:], &fold.Width)
		require.NoError(t, err)
		folds = append(folds, fold)
	}
	return NewFolding(Point{}, Point{1, 0}, folds)
}

// byDefinition returns where a place of the flat plane comes to lie: the map that folds
// it, straight from its definition. The tests hold Unfolded against it.
func (f *Folding) byDefinition(p Point) Point {
	u, v := f.U(p), f.V(p)
	for k, one := range f.folds {
		if u >= one.At && u < one.End() && v >= one.From && v < one.To {
			return f.moved(p, f.seam[k]+one.side()*(one.Width-math.Abs(u-one.At-one.Width))-u)
		}
	}
	return f.DrawnIn(p)
}

// foldedPath returns where a path of the flat plane comes to lie, creases and all; it
// is cut off straight where it comes out of an open strip.
func (f *Folding) foldedPath(p Path) Path {
	q := Path{f.byDefinition(p[0])}
	for i := 1; i < len(p); i++ {
		for _, t := range f.breaks(p[i-1], p[i]) {
			q = append(q, f.byDefinition(p[i-1].Toward(p[i], t-1e-12)), f.byDefinition(p[i-1].Toward(p[i], t+1e-12)))
		}
		q = append(q, f.byDefinition(p[i]))
	}
	return q
}

// What the other tests go by is itself right: places worked out by hand.
func TestByDefinition(t *testing.T) {
	for _, c := range []struct{ name, folds, flat, folded string }{
		{"before every strip", "2+1", "1,5", "1,5"},
		{"where the strip begins", "2+1", "2,5", "2,5"},
		{"halfway up the flap", "2+1", "2.5,5", "2.5,5"},
		{"the crease", "2+1", "3,5", "3,5"},
		{"halfway back", "2+1", "3.5,5", "2.5,5"},
		{"where the strip ends", "2+1", "4,5", "2,5"},
		{"beyond", "2+1", "6,5", "4,5"},
		{"the crease of a flap that lies back", "2-1", "3,5", "1,5"},
		{"beyond two strips that touch", "2+1 4-1", "7,5", "3,5"},
		{"folded above the level", "2+1:4", "3,5", "3,5"},
		{"drawn in below it", "2+1:4", "3,3", "2,3"},
		{"at the level it is folded", "2+1:4", "3,4", "3,4"},
		{"beyond, below the level", "2+1:4", "6,3", "4,3"},
		{"a strip before the base line", "-5+1", "-6,0", "-4,0"},
		{"beyond it", "-5+1", "1,0", "1,0"},
		{"a strip about the base line", "-1+1", "0,0", "1,0"},
		{"beyond that", "-1+1", "1,0", "0,0"},
		{"before that", "-1+1", "-1,0", "0,0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.folded, text(Path{over(t, c.folds).byDefinition(path(t, c.flat)[0])}))
		})
	}
}

// strands writes what a path unfolds to.
func strands(all []Strand) string {
	var lines []string
	for _, s := range all {
		lines = append(lines, text(s.Path))
	}
	return strings.Join(lines, " | ")
}

func TestUnfolded(t *testing.T) {
	for _, c := range []struct{ name, folds, folded, flat string }{
		{"no fold", "", "0,0 9,3", "0,0 9,3"},
		{"straight across a fold it goes straight on", "2+1", "0,5 9,5", "0,5 11,5"},
		{"a slope zigzags, so that the layers end level", "2+1", "0,0 9,9", "0,0 3,3 4,2 11,9"},
		{"the other way", "2+1", "9,9 0,0", "11,9 4,2 3,3 0,0"},
		{"under a flap that lies back", "2-1", "0,0 9,9", "0,0 2,2 3,1 11,9"},
		{"two strips that touch", "2+1 4+1", "0,0 9,9", "0,0 3,3 4,2 5,3 6,2 13,9"},
		{"over an open strip, straight across", "2+1:10", "0,0 9,9", "0,0 2,2 4,2 11,9"},
		{"beside every fold", "2+1", "0,0 1,9", "0,0 1,9"},
		{"beyond a fold", "2+1", "5,0 6,9", "7,0 8,9"},
		{"beginning under the flap", "2+1", "2.5,0 9,0", "4.5,0 11,0 | 2.5,0 3.5,0"},
		{"along the seam", "2+1", "2,0 2,9", "4,0 4,9 | 2,0 2,9"},
		{"along the crease", "2+1", "3,0 3,9", "5,0 5,9"},
		{"about the base line", "-1+1", "-3,0 3,0", "-4,0 4,0"},
		{"a slope over the base line", "-1+1", "-3,-3 3,3", "-4,-3 0,1 1,0 4,3"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := strands(over(t, c.folds).Unfolded(path(t, c.folded)))
			assert.Equal(t, c.flat, got)
		})
	}
}

func TestUnfoldedOutlines(t *testing.T) {
	for _, c := range []struct{ name, folds, folded, flat string }{
		{"a rectangle grows by the strip", "2+1", "0,0 9,0 9,5 0,5 0,0", "0,0 11,0 11,5 0,5 0,0"},
		{"its sloping top is trued", "2+1", "0,0 9,0 9,9 0,0", "0,0 11,0 11,9 4,2 3,3 0,0"},
		{"a fold that ends below the top spreads the bottom", "2+1:3", "0,0 9,0 9,9 0,9 0,0", "0,0 11,0 11,9 0,9 0,0"},
		{"a top that slopes over a fold that ends", "2+1:1", "0,0 9,0 9,9 0,0", "0,0 11,0 11,9 4,2 3,3 0,0"},
		{"a corner under the flap", "2+1", "0,0 9,0 9,5 2.5,9 0,5 0,0", "0,0 11,0 11,5 4.5,9 4,8.2 3.5,9 3,8.692 2.5,9 0,5 0,0"},
		{"a flap that reaches to the very edge", "2-2", "0,0 9,0 9,5 0,5 0,0", "0,0 13,0 13,5 0,5 0,0"},
		{"an edge that leaves under the flap below its end", "2+1:4", "0,0 9,0 9,9 1.5,9 2.5,4 2.5,0 0,0", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := over(t, c.folds)
			got := f.Unfolded(path(t, c.folded))
			if c.flat != "" {
				assert.Equal(t, c.flat, strands(got))
			}
			for _, s := range got {
				assert.True(t, s.Path.Closed(), "a closed path gives closed strands")
			}
		})
	}
}

// shapeAbout draws a shape about a middle that nowhere crosses itself.
func shapeAbout(t *rapid.T, middle Point, reach float64) Path {
	n := rapid.IntRange(3, 24).Draw(t, "corners")
	var p Path
	for i := range n {
		r := reach * rapid.Float64Range(0.2, 1).Draw(t, "reach")
		a := 2 * math.Pi * float64(i) / float64(n)
		p = append(p, middle.Add(Point{r * math.Cos(a), r * math.Sin(a)}))
	}
	return append(p, p[0])
}

// extent is how far random folds go along their lines.
type extent int

const (
	endless   extent = iota
	anyExtent        // some of them begin or end somewhere
)

// folding draws folds over the whole of a shape about the origin.
func folding(t *rapid.T, along extent) *Folding {
	n := rapid.IntRange(0, 8).Draw(t, "folds")
	at := rapid.Float64Range(-60, 10).Draw(t, "at")
	var folds []Fold
	for range n {
		f := Fold{At: at, Width: rapid.Float64Range(0.5, 12).Draw(t, "width"), Back: rapid.Bool().Draw(t, "back"), From: always[0], To: always[1]}
		if along == anyExtent {
			switch rapid.IntRange(0, 2).Draw(t, "extent") {
			case 1:
				f.From = rapid.Float64Range(-60, 60).Draw(t, "from")
			case 2:
				f.To = rapid.Float64Range(-60, 60).Draw(t, "to")
			}
		}
		folds = append(folds, f)
		at = f.End() + rapid.SampledFrom([]float64{0, 0, 1, 7}).Draw(t, "space")
	}
	a := rapid.Float64Range(0, 2*math.Pi).Draw(t, "angle")
	return NewFolding(Point{rapid.Float64Range(-9, 9).Draw(t, "x"), 3}, Point{math.Cos(a), math.Sin(a)}, folds)
}

// holds reports whether a place lies within any of the strands, by the even-odd
// rule, and whether it is too near to one of them to tell.
func holds(trees []*Tree, q Point) (in, near bool) {
	for _, tree := range trees {
		near = near || tree.Nearer(q, 1e-6)
		in = in != tree.Holds(q)
	}
	return in, near
}

// What lies over a shape once it is folded is exactly what unfolds from it: by
// the membership of places, and by area.
func TestUnfoldedIsThePreimage(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := folding(t, anyExtent)
		shape := shapeAbout(t, Point{}, 50)
		whole := NewTree(shape)
		var trees []*Tree
		for _, s := range f.Unfolded(shape) {
			if !s.Path.Closed() {
				t.Fatalf("not closed: %v", text(s.Path))
			}
			trees = append(trees, NewTree(s.Path))
		}
		for range 40 {
			q := Point{rapid.Float64Range(-150, 150).Draw(t, "x"), rapid.Float64Range(-150, 150).Draw(t, "y")}
			at := f.byDefinition(q)
			in, near := holds(trees, q)
			if near || whole.Nearer(at, 1e-6) {
				continue
			}
			if want := whole.Holds(at); in != want {
				t.Fatalf("%v folds to %v, which the shape holds: %v; the flat shape holds it: %v", q, at, want, in)
			}
		}
	})
}

// Its area is that of the shape and twice that of the parts that lie under
// flaps, found by clipping the shape to each flap.
func TestAreaOfTheUnfolded(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := folding(t, endless)
		shape := shapeAbout(t, Point{}, 50)
		want := shape.Area()
		for k, one := range f.folds {
			s, c := f.seam[k], f.seam[k]+one.side()*one.Width
			want += 2 * (areaBefore(f, shape, math.Max(s, c)) - areaBefore(f, shape, math.Min(s, c)))
		}
		got := 0.0
		for _, s := range f.Unfolded(shape) {
			got += math.Abs(s.Path.Area())
		}
		// A ring within a ring is a hole.
		if len(f.Unfolded(shape)) == 1 && math.Abs(got-want) > 1e-6*want {
			t.Fatalf("area %v, not %v", got, want)
		}
	})
}

// areaBefore is the area of the part of a shape at less u than a level: the sum
// over its segments of the area between each and the level line.
func areaBefore(f *Folding, p Path, level float64) float64 {
	sum := 0.0
	for i := 1; i < len(p); i++ {
		a, b := p[i-1], p[i]
		ua, ub := f.U(a)-level, f.U(b)-level
		va, vb := f.V(a), f.V(b)
		if ua > 0 && ub > 0 {
			continue
		}
		if (ua > 0) != (ub > 0) {
			v := va + (vb-va)*ua/(ua-ub)
			if ua > 0 {
				ua, va = 0, v
			} else {
				ub, vb = 0, v
			}
		}
		sum += (ua + ub) / 2 * (vb - va)
	}
	return math.Abs(sum)
}

// Every place of an unfolded mark folds back onto the mark, and every place of
// the mark has one on what it unfolds to.
func TestMarksComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := folding(t, endless)
		mark := shapeAbout(t, Point{}, 50)
		if rapid.Bool().Draw(t, "open") {
			mark = mark[:len(mark)-1]
		}
		tree := NewTree(mark)
		all := f.Unfolded(mark)
		for _, s := range all {
			if len(s.Source) != len(s.Path)-1 {
				t.Fatalf("%d sources for %d segments", len(s.Source), len(s.Path)-1)
			}
			for _, q := range f.foldedPath(s.Path) {
				if away := tree.Distance(q, 1); away > 1e-6 {
					t.Fatalf("%v folds back %v mm beside the mark", q, away)
				}
			}
			for i, from := range s.Source {
				middle := f.byDefinition(s.Path[i].Toward(s.Path[i+1], 0.5))
				if foot, _ := nearestOnSegment(mark[from], mark[from+1], middle); foot.Distance(middle) > 1e-6 {
					t.Fatalf("segment %d does not come from segment %d", i, from)
				}
			}
		}
		for k := range 20 {
			q := tree.At(tree.Length() * float64(k) / 19)
			if slices.ContainsFunc(f.seam, func(s float64) bool { return math.Abs(f.U(q)-s) < 1e-6 }) {
				continue // it lies on two layers at once
			}
			flat := f.Flat(q)
			if f.byDefinition(flat).Distance(q) > 1e-6 {
				t.Fatalf("the flat place of %v does not fold back", q)
			}
			nearest := math.Inf(1)
			for _, s := range all {
				nearest = NewTree(s.Path).Distance(flat, nearest)
			}
			if nearest > 1e-6 {
				t.Fatalf("the flat place %v of %v is missing by %v", flat, q, nearest)
			}
		}
	})
}

// Without a fold nothing changes, to the bit.
func TestNoFoldsNoChange(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		shape := shapeAbout(t, Point{1, 2}, 50)
		f := NewFolding(Point{3, 4}, Point{0.6, 0.8}, nil)
		got := f.Unfolded(shape)
		if len(got) != 1 || fmt.Sprint(got[0].Path) != fmt.Sprint(shape) {
			t.Fatalf("%v became %v", shape, got)
		}
		if back := f.foldedPath(shape); fmt.Sprint(back) != fmt.Sprint(shape) {
			t.Fatalf("%v became %v", shape, back)
		}
	})
}

func TestDrawnInPath(t *testing.T) {
	for _, c := range []struct{ name, folds, flat, drawnIn string }{
		{"a level line closes up", "2+1", "0,5 11,5", "0,5 2,5 9,5"},
		{"a slope keeps its jog", "2+1", "0,0 11,11", "0,0 2,2 2,4 9,11"},
		{"from within a strip", "2+1", "3,3 11,11", "2,3 2,4 9,11"},
		{"a trued slope closes up", "2+1", "0,0 3,3 4,2 11,9", "0,0 2,2 9,9"},
		{"to within a strip", "2+1", "0,0 3,3", "0,0 2,2 2,3"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.drawnIn, text(over(t, c.folds).DrawnInPath(path(t, c.flat))))
		})
	}
}

func TestHalfPlane(t *testing.T) {
	for _, c := range []struct{ name, path, want string }{
		{"all of it", "0,0 5,0 5,5", "0,0 5,0 5,5"},
		{"none of it", "-1,0 -5,0", ""},
		{"short of the line by rounding", "-0.0000003,0 5,0", "0,0 5,0"},
		{"begun short of it by what can be told", "-0.00001,0 -0.00001,5 -1,5", ""},
		{"out and in again", "2,0 -2,4 2,8", "2,0 0,2 | 0,6 2,8"},
		{"a closed path", "2,0 2,4 -2,4 -2,0 2,0", "0,0 2,0 2,4 0,4"},
		{"a closed path from outside", "-2,0 2,0 2,4 -2,4 -2,0", "0,0 2,0 2,4 0,4"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := path(t, c.path)
			assert.Equal(t, c.want, strands(HalfPlane(p, make([]int, len(p)-1), Point{}, Point{1, 0})))
		})
	}
}

// A strip that ends on the rim of a shape belongs to it: nothing lies before it, so
// what lies on the rim lies before the strip.
func TestStripOnTheRim(t *testing.T) {
	square := path(t, "0,0 9,0 9,5 0,5 0,0")
	for _, c := range []struct{ name, folds, outline, mark, flat, markFlat string }{
		{"at the least u", "0+1", "0,0 9,0 9,5 0,5 0,0", "0,2 9,2", "0,0 11,0 11,5 0,5 0,0", "0,2 11,2"},
		{"at the greatest", "9-1", "0,0 9,0 9,5 0,5 0,0", "0,2 9,2", "0,0 11,0 11,5 0,5 0,0", "0,2 11,2"},
		{"two that touch", "0+1 2+1", "0,0 9,0 9,5 0,5 0,0", "9,2 0,2", "0,0 13,0 13,5 0,5 0,0", "13,2 0,2"},
		{"off it by rounding", "1e-12+1", "0,0 9,0 9,5 0,5 0,0", "0,2 9,2", "0,0 11,0 11,5 0,5 0,0", "0,2 11,2"},
		{"open all along", "0+1:99", "0,0 9,0 9,5 0,5 0,0", "0,2 9,2", "0,0 11,0 11,5 0,5 0,0", "0,2 11,2"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := over(t, c.folds)
			f.Over(square)
			assert.Equal(t, c.flat, strands(f.Unfolded(path(t, c.outline))), "the shape")
			assert.Equal(t, c.markFlat, strands(f.Unfolded(path(t, c.mark))), "a line on it")
		})
	}
}

// A path beside a seam by no more than rounding lies on it all along.
func TestAlongASeamButForRounding(t *testing.T) {
	f := over(t, "2+1")
	along := strands(f.Unfolded(path(t, "2,0 2,9")))
	for _, off := range []float64{1e-12, 5e-8} {
		assert.Equal(t, along, strands(f.Unfolded(Path{{2 - off, 0}, {2 + off, 9}})), "%g mm off it", off)
	}
	assert.NotEqual(t, along, strands(f.Unfolded(Path{{2 - 2e-7, 0}, {2 + 2e-7, 9}})), "what is no rounding crosses it")
}

func TestShown(t *testing.T) {
	for _, c := range []struct{ name, folds, flat, shown string }{
		{"no fold", "", "0,0 9,3", "0,0 9,3"},
		{"across a strip", "2+1", "0,5 11,5", "0,5 9,5"},
		{"a slope comes in two parts", "2+1", "0,0 11,11", "0,0 2,2 | 2,4 9,11"},
		{"within a strip", "2+1", "2.5,0 3.5,0", ""},
		{"along the side of one", "2+1", "2,0 2,9", "2,0 2,9"},
		{"an open strip", "2+1:9", "0,5 11,5", "0,5 4,5 | 2,5 9,5"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var parts []Strand
			for _, p := range over(t, c.folds).Shown(path(t, c.flat)) {
				parts = append(parts, Strand{Path: p.WithoutStraightPoints()})
			}
			assert.Equal(t, c.shown, strands(parts))
		})
	}
}

// What runs along a strip within it lies on the strip's line; what goes across it is gone.
func TestLying(t *testing.T) {
	for _, c := range []struct{ name, folds, flat, lies string }{
		{"no fold", "", "0,0 9,3", "0,0 9,3"},
		{"across a strip", "2+1", "0,5 11,5", "0,5 9,5"},
		{"a slope across it", "2+1", "0,0 11,11", "0,0 2,2 | 2,4 9,11"},
		{"along it on the crease", "2+1", "3,0 3,9", "2,0 2,9"},
		{"along it, aslant", "2+1", "2.5,0 3.5,9", "2,0 2,9"},
		{"a corner within it", "2+1", "3,0 3,9 11,9", "2,0 2,9 9,9"},
		{"on out of an open strip", "2+1:9", "3,0 3,20", "3,0 3,9 | 2,9 2,20"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var parts []Strand
			for _, p := range over(t, c.folds).Lying(path(t, c.flat)) {
				parts = append(parts, Strand{Path: p.WithoutStraightPoints()})
			}
			assert.Equal(t, c.lies, strands(parts))
		})
	}
}

func TestSpread(t *testing.T) {
	for _, c := range []struct {
		name, folds, path string
		want              float64
	}{
		{"folded where it is crossed", "2+1", "0,5 9,5", 0},
		{"open", "2+1:9", "0,5 9,5", 2},
		{"open, there and back", "2+1:9", "0,5 9,5 0,6", 4},
		{"two open strips on one line", "2+1:9 4+2:9", "0,5 9,5", 6},
		{"up to the line only", "2+1:9", "0,5 1,5", 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.InDelta(t, c.want, over(t, c.folds).Spread(path(t, c.path)), 1e-9)
		})
	}
}

func TestMirrored(t *testing.T) {
	got := path(t, "1,0 3,4 5,0").Mirrored(Point{1, 0}, Point{1, 0})
	assert.Equal(t, "-3,0 -1,4 1,0", text(got))
}
