// Package reference holds offsets, folding, templates and drawings against
// github.com/tdewolff/canvas, a general library of plane geometry that finds them by
// other means: it offsets a closed path, with round joins only, and settles what
// overlaps, or what is clipped and united, by a sweep. Stitch lines at corners, for which
// no library has rules, are held against region arithmetic of its own, with half-planes
// and discs alone, over thousands of random garments. It is a module of its own, so that
// nobody who builds tuckmark has to fetch what that library needs.
package reference

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/tdewolff/canvas"

	"tuckmark/marking/plane"
)

const (
	// agreement is how far the two may lie apart, in mm, but at corners that
	// turn away from the inset, which ours keeps sharp and canvas makes round.
	agreement = 1e-4

	// arcs is how true the round corners of canvas are, in mm.
	arcs = 1e-5
)

// outline is a closed shape, counter-clockwise, its first point in the middle
// of a straight side so that its inset can begin and end there.
type outline plane.Path

func circle(radius float64, points int) outline {
	return shape(points, func(a float64) float64 { return radius })
}

// armhole bends both ways, as an armhole and a side seam in one line do.
func armhole(points int) outline {
	return shape(points, func(a float64) float64 { return 120 + 30*math.Sin(2*a) + 12*math.Sin(5*a+1) })
}

// star has a corner at every point.
func star(r *rand.Rand) outline {
	points := 5 + r.Intn(30)
	return shape(points, func(float64) float64 { return 40 + 60*r.Float64() })
}

func shape(points int, radius func(a float64) float64) outline {
	var p plane.Path
	for i := range points {
		a := 2 * math.Pi * float64(i) / float64(points)
		sin, cos := math.Sincos(a)
		d := radius(a)
		p = append(p, plane.Point{X: d * cos, Y: d * sin})
	}
	start := p[points-1].Toward(p[0], 0.5)
	return append(append(outline{start}, p...), start)
}

// theirs returns the inset that canvas finds, in as many closed paths as it
// falls into.
func (o outline) theirs(d float64) []plane.Path {
	c := &canvas.Path{}
	c.MoveTo(o[1].X, o[1].Y)
	for _, q := range o[2 : len(o)-1] {
		c.LineTo(q.X, q.Y)
	}
	c.Close()
	var all []plane.Path
	for _, part := range c.Offset(-d, arcs).Flatten(arcs).Split() {
		var p plane.Path
		for _, q := range part.Coords() {
			p = append(p, plane.Point{X: q.X, Y: q.Y})
		}
		if math.Abs(p.Area()) > 1e-3 {
			all = append(all, p)
		}
	}
	return all
}

// compare holds our inset against theirs. ok is false where the inset falls
// into several parts, or begins in none, so that there is nothing to compare.
func compare(t *testing.T, name string, o outline, d float64) (apart float64, ok bool) {
	source := plane.NewTree(plane.Path(o))
	side := o[1].Sub(o[0]).Unit()
	if source.Nearer(o[0].Add(side.Left().Mul(d)), d-1e-9) {
		return 0, false // too near a corner to begin at
	}
	line, found := plane.Offset(plane.Path(o), d, 0)
	theirs := o.theirs(d)
	if len(theirs) != 1 {
		assert.True(t, !found || line.Pinched, "%s: canvas finds %d parts", name, len(theirs))
		return 0, false
	}
	require.True(t, found, "%s: canvas finds an inset, ours is nothing", name)
	if line.Pinched {
		// Sharp corners that face each other can meet where round ones do not.
		return 0, false
	}

	ours := plane.NewTree(line.Path)
	them := plane.NewTree(append(theirs[0], theirs[0][0]))
	for i := 1; i < len(line.Path); i++ {
		q := line.Path[i-1].Toward(line.Path[i], 0.5)
		if !atCorner(o, q, d) && source.Distance(q, math.Inf(1)) < d+agreement {
			apart = math.Max(apart, them.Distance(q, math.Inf(1)))
		}
	}
	for _, q := range theirs[0] {
		if !atCorner(o, q, d) {
			apart = math.Max(apart, ours.Distance(q, math.Inf(1)))
		}
	}
	return apart, true
}

// atCorner reports whether q lies about as far as d from a corner of the
// outline that turns away from the inset: on the arc round it, or beside that.
func atCorner(o outline, q plane.Point, d float64) bool {
	for i := 1; i+1 < len(o); i++ {
		away := o[i].Sub(o[i-1]).Cross(o[i+1].Sub(o[i])) < 0
		if away && math.Abs(o[i].Distance(q)-d) < 1e-3 {
			return true
		}
	}
	return false
}

func TestOffsetAgreesWithCanvas(t *testing.T) {
	defer func(was float64) { canvas.Tolerance = was }(canvas.Tolerance)
	canvas.Tolerance = 1e-6
	worst, compared, all := 0.0, 0, 0
	hold := func(name string, o outline, d float64) {
		all++
		apart, ok := compare(t, name, o, d)
		if !ok {
			return
		}
		compared++
		worst = math.Max(worst, apart)
		assert.LessOrEqual(t, apart, agreement, "%s: the insets lie apart, in mm", name)
	}
	for _, d := range []float64{1, 6.35, 9.525, 20} {
		hold(fmt.Sprintf("circle, %g in", d), circle(100, 720), d)
		hold(fmt.Sprintf("armhole, %g in", d), armhole(1000), d)
	}
	r := rand.New(rand.NewSource(1))
	for i := range 2000 {
		d := 0.5 + 14*r.Float64()
		hold(fmt.Sprintf("star %d, %.3f in", i, d), star(r), d)
	}
	t.Logf("%d of %d outlines could be compared; the insets lie at most %.1e mm apart", compared, all, worst)
	assert.Greater(t, compared, all/2, "most outlines must be compared")
}

// The exact inset of a circle drawn as a regular polygon is a regular polygon:
// of n sides about a radius r, at a distance d inside, each side is
// 2 (r cos(pi/n) - d) tan(pi/n) long (derived).
func TestOffsetOfACircle(t *testing.T) {
	const n, radius, d = 720, 100.0, 9.525
	line, ok := plane.Offset(plane.Path(circle(radius, n)), d, 0)
	require.True(t, ok)
	want := 2 * n * (radius*math.Cos(math.Pi/n) - d) * math.Tan(math.Pi/n)
	assert.InDelta(t, want, line.Path.Length(), 1e-6)
}
