package plane

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestClip(t *testing.T) {
	box := Box{Point{0, 0}, Point{10, 10}}
	for _, c := range []struct {
		name string
		path Path
		want []Run
	}{
		{"no points", nil, nil},
		{"one point inside", Path{{5, 5}}, nil},
		{"points all the same", Path{{5, 5}, {5, 5}}, nil},
		{"wholly inside", Path{{1, 1}, {9, 1}}, []Run{{0, Path{{1, 1}, {9, 1}}}}},
		{"wholly outside", Path{{11, 1}, {20, 1}}, nil},
		{"round the corner, outside", Path{{-5, 7}, {3, 15}}, nil},
		{"straight through", Path{{-10, 5}, {20, 5}}, []Run{{10, Path{{0, 5}, {10, 5}}}}},
		{"along a side", Path{{-5, 10}, {15, 10}}, []Run{{5, Path{{0, 10}, {10, 10}}}}},
		{"touches a corner only", Path{{-1, 9}, {0, 10}, {1, 11}}, nil},
		{"touches a side only, in a point", Path{{4, 14}, {5, 10}, {6, 14}}, nil},
		{"in, out and in again", Path{{5, 5}, {15, 5}, {15, 7}, {5, 7}},
			[]Run{{0, Path{{5, 5}, {10, 5}}}, {17, Path{{10, 7}, {5, 7}}}}},
		{"a corner on the side does not break the run", Path{{5, 5}, {10, 6}, {5, 7}},
			[]Run{{0, Path{{5, 5}, {10, 6}, {5, 7}}}}},
		{"a repeated point does not break the run", Path{{1, 5}, {4, 5}, {4, 5}, {9, 5}},
			[]Run{{0, Path{{1, 5}, {4, 5}, {9, 5}}}}},
		{"closed, begun inside: two runs that meet at the start", Path{{5, 5}, {15, 5}, {15, 6}, {5, 6}, {5, 5}},
			[]Run{{0, Path{{5, 5}, {10, 5}}}, {16, Path{{10, 6}, {5, 6}, {5, 5}}}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, NewTree(c.path).Clip(box))
		})
	}
}

func TestTreeAt(t *testing.T) {
	c := NewTree(Path{{0, 0}, {10, 0}, {10, 0}, {10, 5}})
	assert.Equal(t, 15.0, c.Length())
	for d, want := range map[float64]Point{-1: {0, 0}, 0: {0, 0}, 4: {4, 0}, 10: {10, 0}, 12: {10, 2}, 15: {10, 5}, 99: {10, 5}} {
		assert.Equal(t, want, c.At(d), "%g mm along", d)
	}
	assert.Equal(t, Point{}, NewTree(nil).At(3))
	assert.Equal(t, 0.0, NewTree(nil).Length())
}

// clipSlack bounds the rounding of a clipped end, in mm, for coordinates of a
// few hundred millimetres.
const clipSlack = 1e-9

func somePath(t *rapid.T) Path {
	// Whole numbers among the coordinates, so that points on the sides and
	// lines along them come up often.
	coordinate := rapid.OneOf(rapid.Float64Range(-20, 30), rapid.Map(rapid.IntRange(-2, 3), func(i int) float64 { return float64(10 * i) }))
	n := rapid.IntRange(0, 40).Draw(t, "points")
	p := make(Path, n)
	for i := range p {
		p[i] = Point{coordinate.Draw(t, "x"), coordinate.Draw(t, "y")}
		if i > 0 && rapid.IntRange(0, 9).Draw(t, "repeat") == 0 {
			p[i] = p[i-1]
		}
	}
	return p
}

// What lies inside is found here in another way: every segment is cut where
// it meets the four lines the sides lie on, and a part belongs to the box when
// its middle does.
func bruteLength(p Path, b Box) float64 {
	sum := 0.0
	for i := 1; i < len(p); i++ {
		cuts := []float64{0, 1}
		d := p[i].Sub(p[i-1])
		for _, t := range []float64{(b.Min.X - p[i-1].X) / d.X, (b.Max.X - p[i-1].X) / d.X, (b.Min.Y - p[i-1].Y) / d.Y, (b.Max.Y - p[i-1].Y) / d.Y} {
			if t > 0 && t < 1 && !slices.Contains(cuts, t) {
				cuts = append(cuts, t)
			}
		}
		for a := range cuts {
			next := math.Inf(1)
			for _, c := range cuts {
				if c > cuts[a] {
					next = math.Min(next, c)
				}
			}
			if next <= 1 && b.Holds(p[i-1].Toward(p[i], (cuts[a]+next)/2)) {
				sum += (next - cuts[a]) * d.Length()
			}
		}
	}
	return sum
}

func TestClipKeepsEveryBitInside(t *testing.T) {
	box := Box{Point{0, 0}, Point{10, 10}}
	rapid.Check(t, func(t *rapid.T) {
		p := somePath(t)
		c := NewTree(p)
		total := 0.0
		end := -1.0
		for _, run := range c.Clip(box) {
			require.GreaterOrEqual(t, len(run.Path), 2)
			length := run.Path.Length()
			require.Greater(t, length, 0.0)
			require.GreaterOrEqual(t, run.Start, end-clipSlack, "the runs go forward")
			end = run.Start + length
			total += length
			walked := run.Start
			for i, q := range run.Path {
				require.True(t, box.Grown(clipSlack).Holds(q), "%v lies outside", q)
				if i > 0 {
					walked += q.Distance(run.Path[i-1])
				}
				require.InDelta(t, 0, q.Distance(c.At(walked)), 1e-7, "%v is not %g mm along", q, walked)
			}
		}
		// A line nearer to a side than the slack may count or not: the table
		// above pins the one exactly on it.
		require.GreaterOrEqual(t, total, bruteLength(p, box.Grown(-clipSlack))-1e-7, "length inside")
		require.LessOrEqual(t, total, bruteLength(p, box.Grown(clipSlack))+1e-7, "length inside")
	})
}

// A grid of boxes takes a path apart; put together by where they start, the
// runs are the path again.
func TestClippedRunsJoinToThePath(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := somePath(t)
		c := NewTree(p)
		type end struct{ from, to float64 }
		var parts []end
		for x := -20.0; x < 30; x += 10 {
			for y := -20.0; y < 30; y += 10 {
				for _, run := range c.Clip(Box{Point{x, y}, Point{x + 10, y + 10}}) {
					parts = append(parts, end{run.Start, run.Start + run.Path.Length()})
				}
			}
		}
		// Every half step along the path lies in some part.
		for d := 0.0; d < c.Length(); d += 0.5 {
			in := false
			for _, q := range parts {
				in = in || d >= q.from-1e-7 && d <= q.to+1e-7
			}
			require.True(t, in, "the place %g mm along is in no run", d)
		}
	})
}

func TestClipLooksOnlyWhereItMust(t *testing.T) {
	// A long zigzag; a small box at its end. Counted rather than timed.
	p := make(Path, 20001)
	for i := range p {
		p[i] = Point{float64(i), float64(i % 2)}
	}
	c := NewTree(p)
	seen := 0
	c.Within(Box{Point{19990, 0}, Point{19995, 1}}, func(int) bool { seen++; return true })
	assert.LessOrEqual(t, seen, 8)
	runs := c.Clip(Box{Point{19990, -1}, Point{19995, 2}})
	require.Len(t, runs, 1)
	assert.InDelta(t, 19990*math.Sqrt2, runs[0].Start, 1e-6)
}
