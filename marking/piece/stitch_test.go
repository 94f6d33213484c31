package piece_test

import (
	"fmt"
	"math"
	"math/rand"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// the front of the 1910 underwaist (McGlauflin, p. 53) with its curves taken
// straight from corner to corner, so that everything can be worked out by hand.
const straightUnderwaist = `fold = "centre front"
centre front: 0,7 0,0
neck: 0,7 2.5,9.5
shoulder: 2.5,9.5 5,8.5
armhole: 5,8.5 4,6.1 6,5
side: 6,5 5.5,0
hem: 5.5,0 0,0`

func TestStitchLines(t *testing.T) {
	square := "bottom: 0,0 4,0 | %s\nright: 4,0 4,3 | %s\ntop: 4,3 0,3 | %s\nleft: 0,3 0,0 | %s"
	each := func(allowance string) string {
		a := "allowance = " + allowance
		return fmt.Sprintf(square, a, a, a, a)
	}
	for _, c := range []struct {
		name, text, edge string
		line, sewn       string // in inches
	}{
		{"runs out to the cutting line at both ends", each("0.5"), "bottom", "0,0.5 4,0.5", "0.5,0.5 3.5,0.5"},
		{"each edge its own allowance", fmt.Sprintf(square, "allowance = 0.5", "allowance = 1", "allowance = 0.25", "allowance = 0"),
			"bottom", "0,0.5 4,0.5", "0,0.5 3,0.5"},
		{"an edge without allowance is its own line", fmt.Sprintf(square, "allowance = 0.5", "allowance = 1", "allowance = 0.25", "allowance = 0"),
			"left", "0,3 0,0", "0,2.75 0,0.5"},
		{"a hem has its finished line at hem and turn", fmt.Sprintf(square, "hem = 1; turn = 0.25", "allowance = 0.5", "allowance = 0.5", "allowance = 0.5"),
			"bottom", "0,1.25 4,1.25", "0.5,1.25 3.5,1.25"},
		{"a square neck has a square stitch line", "neck: 1,5 1,3 3,3 3,5 | allowance = 0.5\nright: 3,5 4,5 4,0 | allowance = 0\nrest: 4,0 0,0 0,5 1,5 | allowance = 0",
			"neck", "3.5,5 3.5,2.5 0.5,2.5 0.5,5", "3.5,5 3.5,2.5 0.5,2.5 0.5,5"},
		{"a square neck of three edges meets in its corners",
			"near: 1,5 1,3 | allowance = 0.5\nbottom: 1,3 3,3 | allowance = 0.5\nfar: 3,3 3,5 | allowance = 0.5\nrest: 3,5 4,5 4,0 0,0 0,5 1,5 | allowance = 0",
			"bottom", "3.5,2.5 0.5,2.5", "3.5,2.5 0.5,2.5"},
		{"its corners keep two different allowances",
			"near: 1,5 1,3 | allowance = 0.25\nbottom: 1,3 3,3 | allowance = 0.5\nfar: 3,3 3,5 | allowance = 0.5\nrest: 3,5 4,5 4,0 0,0 0,5 1,5 | allowance = 0",
			"bottom", "3.5,2.5 0.75,2.5", "3.5,2.5 0.75,2.5"},
		{"edges in one straight line join end to end",
			"one: 0,0 2,0 | allowance = 0.5\ntwo: 2,0 4,0 | allowance = 0.5\nrest: 4,0 4,3 0,3 0,0 | allowance = 0",
			"one", "0,0.5 2,0.5", "0,0.5 2,0.5"},
		{"an acute corner trims it", "a: 0,0 8,0 | allowance = 0.5\nb: 8,0 0,6 | allowance = 0\nc: 0,6 0,0 | allowance = 0",
			"a", "0,0.5 7.333,0.5", "0,0.5 7.333,0.5"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0", c.text)
			e := piece.Edges[piece.EdgeNumber(c.edge)]
			assert.Equal(t, c.line, sketch.Inches(e.Line), "the stitch line")
			assert.Equal(t, c.sewn, sketch.Inches(e.Sewn), "the sewn part")
		})
	}
}

// At a corner of the outline with the inner angle a, two equal allowances of d
// take d/tan(a/2) off the sewn length; next to a fold, which has none, it is
// d/tan(a); an angle beyond a straight one adds instead (derived).
func TestSewnLengthsByHand(t *testing.T) {
	const d = 0.25
	piece := sketched(t, "0.25", straightUnderwaist)
	angle := func(before, corner, after plane.Point) float64 {
		in, out := corner.Sub(before), after.Sub(corner)
		return math.Pi - math.Atan2(in.Cross(out), in.Dot(out))
	}
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	// Counter-clockwise, from the hem.
	cf, hem, under, inmost, point, neck, top := p(0, 0), p(5.5, 0), p(6, 5), p(4, 6.1), p(5, 8.5), p(2.5, 9.5), p(0, 7)
	two := func(before, corner, after plane.Point) float64 { return d / math.Tan(angle(before, corner, after)/2) }
	fold := func(before, corner, after plane.Point) float64 { return d / math.Tan(angle(before, corner, after)) }
	for _, c := range []struct {
		edge string
		want float64 // inches
	}{
		{"hem", cf.Distance(hem) - fold(top, cf, hem) - two(cf, hem, under)},
		{"side", hem.Distance(under) - two(cf, hem, under) - two(hem, under, inmost)},
		{"armhole", under.Distance(inmost) + inmost.Distance(point) -
			two(hem, under, inmost) - 2*two(under, inmost, point) - two(inmost, point, neck)},
		{"shoulder", point.Distance(neck) - two(inmost, point, neck) - two(point, neck, top)},
		{"neck", neck.Distance(top) - two(point, neck, top) - fold(neck, top, cf)},
	} {
		t.Run(c.edge, func(t *testing.T) {
			assert.InDelta(t, c.want, piece.Edges[piece.EdgeNumber(c.edge)].Sewn.Length()/25.4, 1e-6)
		})
	}
	// The hem once in plain numbers: 5 1/2 less what the side's slope of 1 in
	// 10 and its allowance leave: 5.5 + 0.025 - 0.25 * 5.0249 / 5.
	assert.InDelta(t, 5.2738, piece.Edges[piece.EdgeNumber("hem")].Sewn.Length()/25.4, 0.00005)
	assert.Zero(t, piece.Edges[piece.EdgeNumber("centre front")].Allowance, "nothing is sewn on the fold")
}

// With the curves of the draft itself, the lengths by hand, from the directions
// in which the curves arrive at their corners, hold to the little that the
// curves bend within the allowance: less than 1/25 in.
func TestSewnLengthsOfTheUnderwaist(t *testing.T) {
	pattern := made.Example(t, "underwaist.toml")
	for _, piece := range pattern.Pieces {
		for _, key := range []string{"side", "shoulder"} {
			i := piece.EdgeNumber(key)
			e := piece.Edges[i]
			before, after := piece.Neighbours(i)
			in := e.Path.StartDirection()
			from := piece.Edges[before].Path.EndDirection()
			to := piece.Edges[after].Path.StartDirection()
			turn := func(a, b plane.Point) float64 { return math.Atan2(a.Cross(b), a.Dot(b)) }
			lost := func(t float64) float64 { return 0.25 * math.Tan(t/2) }
			want := e.Path.Length()/25.4 - lost(turn(from, in)) - lost(turn(in, to))
			assert.InDelta(t, want, e.Sewn.Length()/25.4, 0.04, "%s of the %s", key, piece.Key)
		}
	}
}

// The exact inset of a regular polygon: n sides about a radius r, each edge
// with an allowance d, leave sides of 2 (r cos(pi/n) - d) tan(pi/n) (derived).
func TestRegularPolygons(t *testing.T) {
	for _, n := range []int{3, 4, 5, 6, 8, 12, 40} {
		t.Run(fmt.Sprint(n), func(t *testing.T) {
			const radius, d = 5.0, 0.5
			var b strings.Builder
			at := func(k int) string {
				sin, cos := math.Sincos(2 * math.Pi * float64(k%n) / float64(n))
				return fmt.Sprintf("%.12f,%.12f", radius*cos, radius*sin)
			}
			for k := range n {
				fmt.Fprintf(&b, "side %d: %s %s\n", k, at(k), at(k+1))
			}
			piece := sketched(t, "0.5", b.String())
			want := 2 * (radius*math.Cos(math.Pi/float64(n)) - d) * math.Tan(math.Pi/float64(n))
			for _, e := range piece.Edges {
				assert.InDelta(t, want, e.Sewn.Length()/25.4, 1e-6, e.Key)
			}
		})
	}
}

// Corners from nearly closed to nearly straight: the stitch line of the first
// edge must reach a cutting line, or, beyond the run-out, its neighbour's line.
func TestCornersOfEveryAngle(t *testing.T) {
	for _, degrees := range []float64{20, 45, 90, 135, 160, 170, 178, 182, 200, 270, 330} {
		t.Run(fmt.Sprint(degrees), func(t *testing.T) {
			// The corner under test lies at (5, 0); the rest of the piece is
			// a wide box above or round it.
			sin, cos := math.Sincos((180 - degrees) * math.Pi / 180)
			x, y := 5+4*cos, 4*sin
			rest := fmt.Sprintf("rest: %.6f,%.6f 20,%.6f 20,20 -10,20 -10,0 0,0 | allowance = 0", x, y, max(y, 6))
			if degrees > 180 {
				rest = fmt.Sprintf("rest: %.6f,%.6f 20,-12 20,20 -10,20 -10,0 0,0 | allowance = 0", x, y)
			}
			if degrees < 90 {
				rest = fmt.Sprintf("rest: %.6f,%.6f -10,20 -10,0 0,0 | allowance = 0", x, y)
			}
			piece := sketched(t, "0.25", fmt.Sprintf("one: 0,0 5,0\ntwo: 5,0 %.6f,%.6f\n%s", x, y, rest))
			one := piece.Edges[piece.EdgeNumber("one")]
			half := degrees * math.Pi / 360
			end := one.Sewn[len(one.Sewn)-1]
			assert.InDelta(t, 5-0.25/math.Tan(half), end.X/25.4, 1e-4, "the sewn part ends where both allowances meet")
			last := one.Line[len(one.Line)-1]
			if degrees < 172 {
				assert.Less(t, piece.Tree.Distance(last, 100), 1e-6, "the line runs out to the cutting line")
			} else {
				assert.InDelta(t, 0, last.Distance(end), 1e-6, "the line ends where it meets its neighbour's")
			}
		})
	}
}

// Every place of a stitch line keeps the allowance from its edge, on curves
// that bend both ways and tighter than the allowance.
func TestStitchLinesKeepTheirAllowance(t *testing.T) {
	pieces := map[string]*piece.Piece{
		"an S-shaped edge": sketched(t, "0.375", "s: 0,0 1,-1 2,0.5 3,-0.8 4,0 | smooth = true\nrest: 4,0 4,6 0,6 0,0 | allowance = 0"),
		"a tight hollow":   sketched(t, "0.5", "hollow: 0,0 1.8,0 2,0.3 2.2,0 4,0 | smooth = true\nrest: 4,0 4,6 0,6 0,0 | allowance = 0"),
		"a tight bulge":    sketched(t, "0.5", "bulge: 0,0 1.6,0 2,-0.6 2.4,0 4,0 | smooth = true\nrest: 4,0 4,6 0,6 0,0 | allowance = 0"),
	}
	for _, name := range []string{"pinafore.toml", "underwaist.toml"} {
		for i, p := range made.Example(t, name).Pieces {
			pieces[fmt.Sprint(name, " ", i)] = &p
		}
	}
	for name, pc := range pieces {
		for _, e := range pc.Edges {
			if e.Allowance == 0 {
				continue
			}
			edge := plane.NewTree(e.Path)
			for i := 1; i < len(e.Line); i++ {
				q := e.Line[i-1].Toward(e.Line[i], 0.5)
				away := edge.Distance(q, math.Inf(1))
				require.Greater(t, away, e.Allowance-2*1e-6, "%s, %s at %v", name, e.Key, q)
			}
			for _, q := range e.Sewn {
				require.True(t, pc.Tree.Holds(q) || pc.Tree.Nearer(q, 0.05), "%s, %s stays on the piece", name, e.Key)
			}
		}
	}
}

// The seam of a whole outline with one allowance is its inset with sharp
// corners, however the outline is divided into edges: all of its sides, or two
// or three edges that turn corners of their own. The inset is worked out here
// side by side, and used where it is simple, turns none of its sides round and
// keeps the distance everywhere.
func TestSeamsAddUpToTheInset(t *testing.T) {
	r := rand.New(rand.NewSource(11))
	held := 0
	for range 6000 {
		allowance := []float64{0.25, 0.375, 0.5}[r.Intn(3)]
		outline := randomOutline(r)
		want, ok := sharpInset(outline, allowance)
		if !ok {
			continue
		}
		held++
		n := len(outline)
		each := make([]int, n)
		for i := range each {
			each[i] = i
		}
		some := r.Perm(n)[:2+r.Intn(2)]
		slices.Sort(some)
		for _, corners := range [][]int{each, some} {
			text := fmt.Sprintf("allowance = %g\n", allowance) + sketch.Front(divided(outline, corners))
			pattern, err := made.Pattern(text)
			require.NoError(t, err, text)
			sum := 0.0
			for _, e := range pattern.Pieces[0].Edges {
				sum += e.Sewn.Length() / 25.4
			}
			require.InDelta(t, want, sum, 0.005, "%d edges\n%s", len(corners), text)
		}
	}
	t.Logf("%d outlines were held", held)
	assert.Greater(t, held, 400)
}

// randomOutline returns the corners of a simple outline, counter-clockwise, in
// inches, as they are printed.
func randomOutline(r *rand.Rand) plane.Path {
	n := 4 + r.Intn(9)
	var angles []float64
	for range n {
		angles = append(angles, 2*math.Pi*r.Float64())
	}
	slices.Sort(angles)
	var p plane.Path
	for _, a := range angles {
		sin, cos := math.Sincos(a)
		radius := 3 + 7*r.Float64()
		q := plane.Point{X: math.Round(radius*cos*100) / 100, Y: math.Round(radius*sin*100) / 100}
		if len(p) == 0 || q.Distance(p[len(p)-1]) > 1 {
			p = append(p, q)
		}
	}
	return p
}

// sharpInset returns the length of the inset of a closed outline.
func sharpInset(p plane.Path, d float64) (float64, bool) {
	n := len(p)
	if n < 4 || p.Area() <= 0 || p[0].Distance(p[n-1]) < 1 {
		return 0, false
	}
	var q plane.Path
	for i := range n {
		in, out := p[i].Sub(p[(i+n-1)%n]).Unit(), p[(i+1)%n].Sub(p[i]).Unit()
		turn := math.Atan2(in.Cross(out), in.Dot(out))
		if math.Abs(turn) < 0.15 || math.Abs(turn) > 2 {
			return 0, false // nearly straight on, or nearly back
		}
		q = append(q, p[i].Add(in.Left().Mul(d)).Sub(in.Mul(d*math.Tan(turn/2))))
	}
	for i := range n {
		if q[(i+1)%n].Sub(q[i]).Dot(p[(i+1)%n].Sub(p[i]).Unit()) < 0.2 {
			return 0, false
		}
	}
	q = append(q, q[0])
	outline := plane.NewTree(append(slices.Clone(p), p[0]))
	for i := range n {
		for share := 0.0; share < 1; share += 0.02 {
			if outline.Nearer(q[i].Toward(q[i+1], share), d-1e-6) {
				return 0, false
			}
		}
	}
	_, _, _, crosses := plane.SelfCrossing(plane.NewTree(q))
	return q.Length(), !crosses
}

// divided writes an outline as a sketch whose edges meet at the given corners.
func divided(p plane.Path, corners []int) string {
	var b strings.Builder
	for i, from := range corners {
		to := corners[(i+1)%len(corners)]
		if to <= from {
			to += len(p)
		}
		fmt.Fprintf(&b, "edge %d:", i)
		for k := from; k <= to; k++ {
			fmt.Fprintf(&b, " %g,%g", p[k%len(p)].X, p[k%len(p)].Y)
		}
		b.WriteString("\n")
	}
	return b.String()
}

// Pieces that once were refused, or sewn wrong, for no fault of theirs.
func TestSewnParts(t *testing.T) {
	for _, c := range []struct {
		name, text, edge string
		want             float64 // inches
	}{
		{"a slanted seam in two edges: the lower", "cf: 0,10 0,0\nhem: 0,0 6,0\nside: 6,0 5.5,5\nupper: 5.5,5 5.3,7\ntop: 5.3,7 0,10", "side", 4.6104},
		{"a slanted seam in two edges: the upper", "cf: 0,10 0,0\nhem: 0,0 6,0\nside: 6,0 5.5,5\nupper: 5.5,5 5.3,7\ntop: 5.3,7 0,10", "upper", 1.8157},
		{"a hem that hardly turns", "cf: 0,14 0,0\nhem1: 0,0 6,0 | allowance = 2.25\nhem2: 6,0 12,0.1 | allowance = 2.25\nside: 12,0.1 11,14\ntop: 11,14 0,14", "hem1", 5.6063},
		{"two edges, one corner straight on", "a: 0,0 10,0 10,8 5,8\nb: 5,8 0,8 0,0", "a", 9.25 + 7.25 + 4.625},
		{"two edges, the other not sewn", "a: 0,0 10,0 10,8 5,8\nb: 5,8 0,8 0,0 | allowance = 0", "a", 9.625 + 7.25 + 4.625},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0.375", c.text)
			assert.InDelta(t, c.want, piece.Edges[piece.EdgeNumber(c.edge)].Sewn.Length()/25.4, 0.0006)
		})
	}
}

// A bonnet crown: more than half a circle in one edge, with a straight neck
// that carries a casing.
func TestHorseshoe(t *testing.T) {
	for _, degrees := range []float64{200, 240, 270, 300} {
		var arc []string
		for k := range 41 {
			sin, cos := math.Sincos((90 - degrees/2 + degrees*float64(k)/40) * math.Pi / 180)
			arc = append(arc, fmt.Sprintf("%.5f,%.5f", 3*cos, 3*sin))
		}
		p := sketched(t, "0.375", "round: "+strings.Join(arc, " ")+"\nneck: "+arc[40]+" "+arc[0]+" | hem = 0.5; turn = 0.25")
		round := p.Edges[p.EdgeNumber("round")]
		crown := plane.NewTree(round.Path)
		for _, q := range round.Sewn {
			require.False(t, crown.Nearer(q, round.Allowance-1e-6), "%g degrees", degrees)
		}
		assert.Greater(t, round.Sewn.Length(), 0.7*round.Path.Length(), "%g degrees", degrees)
	}
}

func TestAnEdgeOfManyPoints(t *testing.T) {
	var b strings.Builder
	for i := range 20_001 {
		a := float64(i) / 20_000
		fmt.Fprintf(&b, "%.6f,%.6f ", 8*a, 0.8*math.Sin(20*a))
	}
	p := sketched(t, "0.375", "wave: "+b.String()+fmt.Sprintf("\nrest: 8,%.6f 8,9 0,9 0,0", 0.8*math.Sin(20)))
	e := p.Edges[p.EdgeNumber("wave")]
	edge := plane.NewTree(e.Path)
	for i, q := range e.Line {
		require.Greater(t, edge.Distance(q, math.Inf(1)), 0.375*25.4-1e-6, "point %d", i)
	}
}
