package reference

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/tdewolff/canvas"

	"tuckmark/marking/plane"
)

// The flat outline of a shape, put together with canvas: the shape is clipped to
// what lies between the seams and to every flap, the parts are moved or mirrored to
// where they lie on the flat plane, and united.

const (
	// seamed is how far, in mm, canvas may put a corner from where it is, for it
	// works on a grid.
	seamed = 3e-4

	// overlapped is by how much the parts are let overlap, in mm, so that canvas
	// unites them without a slit.
	overlapped = 1e-5

	leastPart = 0.01 // mm²; what is smaller is a slit left by uniting, not a part

	far = 1e4 // mm; beyond every shape
)

// toCanvas returns a closed path as canvas has it.
func toCanvas(p plane.Path) *canvas.Path {
	c := &canvas.Path{}
	c.MoveTo(p[0].X, p[0].Y)
	for _, q := range p[1 : len(p)-1] {
		c.LineTo(q.X, q.Y)
	}
	c.Close()
	return c
}

// band returns the part of a shape between two x.
func band(shape *canvas.Path, from, to float64) *canvas.Path {
	return shape.And(canvas.Rectangle(to-from+2*overlapped, 2*far).Translate(from-overlapped, -far))
}

// unfolded puts the flat shape together.
func unfolded(shape plane.Path, f *plane.Folding) []plane.Path {
	whole := toCanvas(shape)
	from, shift := -far, 0.0
	all := &canvas.Path{}
	lay := func(p *canvas.Path) { all = all.Or(p) }
	for k, one := range f.Folds() {
		s := f.Seam(k)
		shift = one.At - s
		if s > from {
			lay(band(whole, from, s).Translate(shift, 0))
		}
		from = s
		flap := band(whole, s, s+one.Width)
		near, mirror := shift, one.End()+s
		if one.Back {
			flap = band(whole, s-one.Width, s)
			near, mirror = one.End()-s, one.At+s
		}
		lay(flap.Copy().Translate(near, 0)) // which moves the path itself
		lay(flap.Copy().Transform(canvas.Identity.Translate(mirror, 0).Scale(-1, 1)))
		shift = one.End() - s
	}
	lay(band(whole, from, far).Translate(shift, 0))
	var parts []plane.Path
	for _, part := range all.Split() {
		var p plane.Path
		for _, q := range part.Coords() {
			p = append(p, plane.Point{X: q.X, Y: q.Y})
		}
		if len(p) > 2 {
			if p[0] != p[len(p)-1] {
				p = append(p, p[0])
			}
			if math.Abs(p.Area()) > leastPart {
				parts = append(parts, p)
			}
		}
	}
	return parts
}

// folds makes folds over a shape about the origin, all along it.
func folds(r *rand.Rand) *plane.Folding {
	var all []plane.Fold
	at := -60 * r.Float64()
	for range r.Intn(6) {
		one := plane.Fold{At: at, Width: 1 + 14*r.Float64(), Back: r.Intn(2) == 0, From: math.Inf(-1), To: math.Inf(1)}
		all = append(all, one)
		at = one.End() + []float64{0, 3, 12 * r.Float64()}[r.Intn(3)]
	}
	return plane.NewFolding(plane.Point{}, plane.Point{X: 1}, all)
}

// strays returns how far, at most, a point of one of the paths lies from the others.
func strays(paths, others []plane.Path) float64 {
	var trees []*plane.Tree
	for _, p := range others {
		trees = append(trees, plane.NewTree(p))
	}
	most := 0.0
	for _, p := range paths {
		for _, q := range p {
			nearest := math.Inf(1)
			for _, tree := range trees {
				nearest = tree.Distance(q, nearest)
			}
			most = math.Max(most, nearest)
		}
	}
	return most
}

func TestUnfoldedAgreesWithCanvas(t *testing.T) {
	defer func(was float64) { canvas.Tolerance = was }(canvas.Tolerance)
	canvas.Tolerance = 1e-6
	r := rand.New(rand.NewSource(2))
	worst, worstArea, compared, all := 0.0, 0.0, 0, 0
	for i := range 600 {
		o := plane.Path(star(r))
		if i%3 == 0 {
			o = plane.Path(armhole(60))
		}
		f := folds(r)
		var ours []plane.Path
		for _, strand := range f.Unfolded(o) {
			if math.Abs(strand.Path.Area()) > leastPart {
				ours = append(ours, strand.Path)
			}
		}
		theirs := unfolded(o, f)
		all++
		if len(ours) != len(theirs) {
			continue // parts that hang together by a corner are one or two
		}
		compared++
		name := fmt.Sprintf("shape %d with %d folds", i, len(f.Folds()))
		off, long := 0.0, 0.0
		for k := range ours {
			// Parts, less the holes in them.
			off += math.Abs(ours[k].Area()) - math.Abs(theirs[k].Area())
			long += ours[k].Length()
		}
		worstArea = math.Max(worstArea, math.Abs(off))
		assert.LessOrEqual(t, math.Abs(off), seamed*long, "%s: the areas differ, in mm²", name)
		apart := math.Max(strays(ours, theirs), strays(theirs, ours))
		worst = math.Max(worst, apart)
		assert.LessOrEqual(t, apart, seamed, "%s: the outlines lie apart, in mm", name)
	}
	t.Logf("%d of %d shapes could be compared; the outlines lie at most %.1e mm apart, their areas differ by at most %.1e mm²", compared, all, worst, worstArea)
	assert.Greater(t, compared, all*9/10, "most shapes must be compared")
}
