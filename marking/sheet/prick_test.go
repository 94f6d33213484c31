package sheet

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// arc is a part of a circle that turns by an angle, in straight steps.
func arc(centre plane.Point, radius, turn float64, steps int) plane.Path {
	var p plane.Path
	for i := range steps + 1 {
		sin, cos := math.Sincos(float64(i) / float64(steps) * turn)
		p = append(p, centre.Add(plane.Point{X: cos, Y: sin}.Mul(radius)))
	}
	return p
}

// dotsOf returns the dots of line i of a marking that was pricked.
func dotsOf(m mark.Marking, d dotting) map[int]plane.Path {
	all := map[int]plane.Path{}
	dotted := pricked(m, d)
	k := len(m.Marks)
	for i, mark := range m.Marks {
		if isPricked(mark.Role) && mark.Path.Length() >= 0.01 {
			all[i] = dotted.Marks[k].Path
			k++
		}
	}
	return all
}

// evenly are dots no farther apart than is said, on straight lines too.
func evenly(mm float64) dotting { return dotting{mm, mm, enough()} }

// ruled are dots on straight lines only where they must be, and on curves 1/4 in apart.
func ruled() dotting { return dotting{25.4 / 4, math.Inf(1), enough()} }

// enough is as many dots as are drawn at once.
func enough() *int { left := 100_000; return &left }

// Dots lie on their line, no farther apart than is said, at its ends, its corners and
// where others cross it; and joined with a ruler they give a curve back.
func TestDots(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		spacing := rapid.Float64Range(2, 20).Draw(t, "spacing")
		place := func() plane.Point {
			return plane.Point{X: rapid.Float64Range(0, 300).Draw(t, "x"), Y: rapid.Float64Range(0, 300).Draw(t, "y")}
		}
		var m mark.Marking
		for range rapid.IntRange(1, 4).Draw(t, "lines") {
			path := plane.Path{place(), place(), place()}
			if rapid.Bool().Draw(t, "round") {
				centre, radius := place(), rapid.Float64Range(4, 200).Draw(t, "radius")
				path = arc(centre, radius, 4, 200)
			}
			m.Marks = append(m.Marks, mark.Mark{Role: mark.Stitch, Path: path})
		}
		trees := make([]*plane.Tree, len(m.Marks))
		for i, mark := range m.Marks {
			trees[i] = plane.NewTree(mark.Path)
		}
		for i, dots := range dotsOf(m, evenly(spacing)) {
			line := trees[i]
			last := 0.0
			for k, q := range dots {
				require.Less(t, line.Distance(q, 1), 0.01, "a dot lies on its line")
				if k > 0 {
					require.LessOrEqual(t, q.Distance(dots[k-1]), spacing*(1+1e-6)+0.02)
				}
			}
			require.Less(t, dots[0].Distance(line.At(0)), 0.01)
			require.Less(t, dots[len(dots)-1].Distance(line.At(line.Length())), 0.01)
			near := func(q plane.Point, what string) {
				best := math.Inf(1)
				for _, d := range dots {
					best = math.Min(best, d.Distance(q))
				}
				require.Less(t, best, 0.02, what)
			}
			if path := line.Path(); len(path) == 3 {
				in, out := path[1].Sub(path[0]), path[2].Sub(path[1])
				if math.Abs(math.Atan2(in.Cross(out), in.Dot(out))) > 8*math.Pi/180 {
					near(path[1], "a dot at the corner")
				}
			}
			for k, other := range trees {
				if k != i {
					for _, c := range plane.Crossings(line, other) {
						near(c.At, "a dot at a crossing")
					}
				}
			}
			// The line strays from the polygon of its dots by the sagitta at most.
			joined := plane.NewTree(dots)
			for last = 0; last < line.Length(); last += 0.7 {
				require.LessOrEqual(t, joined.Distance(line.At(last), math.Inf(1)), 25.4/64+0.01)
			}
		}
	})
}

func TestDotsOfAStraightLine(t *testing.T) {
	for _, c := range []struct {
		name string
		long float64
		dots int
	}{
		{"an inch", 25.4, 5},
		{"a little more", 25.5, 6},
		{"a short mark", 4, 2},
	} {
		m := mark.Marking{Marks: []mark.Mark{{Role: mark.Notch, Path: plane.Path{{}, {X: c.long}}}, {Role: mark.Grain, Path: plane.Path{{}, {Y: 50}}}}}
		all := dotsOf(m, evenly(25.4/4))
		require.Len(t, all, 1, "the grain line is not drawn on cloth")
		assert.Len(t, all[0], c.dots, c.name)
	}
	// A chord c of a circle of radius r has the sagitta c²/8r: of a 1 in circle 1/64 in
	// comes to c = sqrt(8 * 25.4 * 25.4/64) = 8.98 mm, wider than the spacing; of a 1/4 in
	// circle it is 4.49 mm: each of seven parts is halved.
	for radius, want := range map[float64]int{25.4: 26, 6.35: 14} {
		ring := arc(plane.Point{}, radius, 2*math.Pi, 400)
		ring[400] = ring[0]
		dots := dotsOf(mark.Marking{Marks: []mark.Mark{{Role: mark.Stitch, Path: ring}}}, ruled())[0]
		assert.InDelta(t, want, len(dots)-1, 1, "round a circle of %v", radius)
	}
}

// A small ring is not one dot, however far apart dots may be.
func TestDotsOfASmallRing(t *testing.T) {
	for radius, spacing := range map[float64]float64{7.9: 50, 6: 40, 2.5: 6.35} {
		p := arc(plane.Point{}, radius, 2*math.Pi, 100)
		p[100] = p[0]
		dots := dotsOf(mark.Marking{Marks: []mark.Mark{{Role: mark.Stitch, Path: p}}}, evenly(spacing))[0]
		assert.GreaterOrEqual(t, len(dots)-1, 4, "round a circle of %v", radius)
	}
	// A bend makes dots closer only where it is.
	p := plane.Path{{}, {X: 500}}
	for i := range 21 {
		sin, cos := math.Sincos(float64(i) / 20 * math.Pi / 2)
		p = append(p, plane.Point{X: 500 + 3*sin, Y: 3 - 3*cos})
	}
	p = append(p, plane.Point{X: 503, Y: 100})
	dots := dotsOf(mark.Marking{Marks: []mark.Mark{{Role: mark.Stitch, Path: p}}}, evenly(25.4/4))[0]
	assert.Less(t, len(dots), 102)
	// Where straight lines are ruled they have dots at their ends alone.
	dots = dotsOf(mark.Marking{Marks: []mark.Mark{{Role: mark.Stitch, Path: p}}}, ruled())[0]
	assert.Less(t, len(dots), 8)
	for _, want := range []plane.Point{{}, {X: 500}, {X: 503, Y: 3}, {X: 503, Y: 100}} {
		assert.True(t, slices.ContainsFunc(dots, func(q plane.Point) bool { return q.Distance(want) < 0.01 }), "a dot at %v", want)
	}
}

// A straight line is pricked at its ends, its corners and its crossings and nowhere else; a
// fold has a second dot 2.5 mm along it from each of those.
func TestDotsOfRuledLines(t *testing.T) {
	level := plane.Path{{}, {X: 300}}
	for _, c := range []struct {
		name  string
		lines []mark.Mark
		want  plane.Path // the dots of the first
	}{
		{"stitching has one at each end", []mark.Mark{{Role: mark.Stitch, Path: level}}, plane.Path{{}, {X: 300}}},
		{"a fold has two", []mark.Mark{{Role: mark.Fold, Path: level}}, plane.Path{{}, {X: 2.5}, {X: 297.5}, {X: 300}}},
		{"and at a crossing", []mark.Mark{{Role: mark.TuckFold, Path: level}, {Role: mark.TuckEnd, Path: plane.Path{{X: 100, Y: -9}, {X: 100, Y: 9}}}},
			plane.Path{{}, {X: 2.5}, {X: 100}, {X: 102.5}, {X: 297.5}, {X: 300}}},
		{"before it where there is no room behind", []mark.Mark{{Role: mark.PleatFold, Path: level},
			{Role: mark.Stitch, Path: plane.Path{{X: 100, Y: -9}, {X: 100, Y: 9}}}, {Role: mark.Stitch, Path: plane.Path{{X: 103, Y: -9}, {X: 103, Y: 9}}}},
			plane.Path{{}, {X: 2.5}, {X: 97.5}, {X: 100}, {X: 103}, {X: 105.5}, {X: 297.5}, {X: 300}}},
		{"a grain line crosses nothing", []mark.Mark{{Role: mark.TuckStitch, Path: level}, {Role: mark.Grain, Path: plane.Path{{X: 100, Y: -9}, {X: 100, Y: 9}}}},
			plane.Path{{}, {X: 300}}},
		{"a corner", []mark.Mark{{Role: mark.Cut, Path: plane.Path{{}, {X: 300}, {X: 300, Y: 200}}}}, plane.Path{{}, {X: 300}, {X: 300, Y: 200}}},
		{"a short fold is one place", []mark.Mark{{Role: mark.Fold, Path: plane.Path{{}, {X: 3}}}}, plane.Path{{}, {X: 3}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := dotsOf(mark.Marking{Marks: c.lines}, ruled())[0]
			require.Len(t, got, len(c.want), "%v", got)
			for i, q := range c.want {
				assert.InDelta(t, 0, q.Distance(got[i]), 0.01, "dot %d, in mm", i)
			}
		})
	}
}

// A sheet says how its dots are read: only where there are folds, and straight lines to be
// ruled.
func TestStepsOfAPrickedSheet(t *testing.T) {
	const prick, dot, pins = "prick a hole through the middle of every circle, with a pin or a punch", "dot the cloth through the holes, with a sharp pencil or pounce powder", "count your pins: none may stay in the cloth"
	const rule, fold = "rule the straight lines from dot to dot; the close dots are those of a curve", "fold where two dots stand close together; the fold runs through both"
	level := plane.Path{{}, {X: 300}}
	seam, hem := mark.Mark{Role: mark.Stitch, Path: level}, mark.Mark{Role: mark.Fold, Path: level}
	for _, c := range []struct {
		name  string
		lines []mark.Mark
		d     dotting
		want  []string
	}{
		{"a seam and a hem", []mark.Mark{seam, hem}, ruled(), []string{prick, dot, rule, fold, pins}},
		{"a seam", []mark.Mark{seam}, ruled(), []string{prick, dot, rule, pins}},
		{"evenly", []mark.Mark{seam, hem}, evenly(5), []string{prick, dot, fold, pins}},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, pricked(mark.Marking{Marks: c.lines}, c.d).Steps)
			turned := pricked(mark.Marking{Marks: c.lines}, c.d, "turn it over").Steps
			assert.Equal(t, []string{"turn it over", pins}, turned[len(turned)-2:], "the pins come last")
		})
	}
}
