package gauge

import (
	"math"
	"slices"

	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// checkArea holds the area of the flat front against the finished one's and what
// the flaps hold: twice each, on either side where the piece is half of one.
func (c frontCase) checkArea(t *rapid.T, p *piece.Piece) {
	if c.mixed() {
		return
	}
	var finished plane.Path
	for _, q := range p.Outline {
		finished = append(finished, c.local(q))
	}
	const far = 1e4
	type band struct {
		from, to, times float64
		level           float64
	}
	bands := func(s strips, least float64) []band {
		all := []band{{least, far, 1, -far}}
		for _, one := range s.all {
			from, to := one.seam, one.seam+one.width
			if one.toward {
				from, to = one.seam-one.width, one.seam
			}
			all = append(all, band{from, to, 2, math.Max(one.level, -far)})
			if s.mirrored && from < 0 {
				all[len(all)-1].from = 0
				all = append(all, band{0, -from, 2, math.Max(one.level, -far)})
			}
		}
		return all
	}
	want := 0.0
	for _, x := range bands(c.across, -far) {
		for _, y := range bands(c.up, -far) {
			want += x.times * y.times * areaIn(finished, x.from, x.to, math.Max(y.from, x.level), y.to)
		}
	}
	// Where a strip is open the piece is spread by it.
	const thin = 1e-3
	for _, one := range c.across.all {
		if one.level > -far {
			from := one.seam
			if from < thin {
				from = thin
			}
			want += 2 * one.width * areaIn(finished, from-thin, from+thin, -far, one.level) / (2 * thin)
		}
	}
	if got := p.Flat.Outline.Path.Area(); math.Abs(got-want) > 1e-5*want+0.05 {
		t.Fatalf("the flat piece has %v mm², not %v", got, want)
	}
}

// areaIn returns the area of what a shape has inside a rectangle.
func areaIn(p plane.Path, x0, x1, y0, y1 float64) float64 {
	if x1 <= x0 || y1 <= y0 {
		return 0
	}
	clip := func(p plane.Path, inside func(plane.Point) float64) plane.Path {
		var q plane.Path
		for i := 1; i < len(p); i++ {
			a, b := inside(p[i-1]), inside(p[i])
			if a >= 0 {
				q = append(q, p[i-1])
			}
			if (a >= 0) != (b >= 0) {
				q = append(q, p[i-1].Toward(p[i], a/(a-b)))
			}
		}
		if len(q) > 0 {
			q = append(q, q[0])
		}
		return q
	}
	p = clip(p, func(q plane.Point) float64 { return q.X - x0 })
	p = clip(p, func(q plane.Point) float64 { return x1 - q.X })
	p = clip(p, func(q plane.Point) float64 { return q.Y - y0 })
	p = clip(p, func(q plane.Point) float64 { return y1 - q.Y })
	return math.Abs(p.Area())
}

// checkEdges holds what each edge of the flat front measures outside the strips
// against the finished one; and what it is said to measure with the folds in, which
// is more by what is spread below an end line.
func (c frontCase) checkEdges(t *rapid.T, p *piece.Piece) {
	outside, open := map[int]float64{}, map[int]float64{}
	for _, run := range p.Flat.Outline.Runs() {
		for i := 1; i < len(run.Path); i++ {
			a, b := c.local(run.Path[i-1]), c.local(run.Path[i])
			for _, s := range c.between(a, b) {
				_, taken, spread := c.folded(a.Toward(b, (s.From+s.To)/2))
				l := (s.To - s.From) * a.Distance(b)
				switch {
				case spread:
					open[run.Edge] += l
				case !taken:
					outside[run.Edge] += l
				}
			}
		}
	}
	for i, e := range p.Edges {
		if e.Key == "centre" && len(c.across.all) > 0 && c.across.all[0].near == 0 {
			continue // it may lie along a seam, and so may any of its parts
		}
		if want := e.Path.Length(); math.Abs(outside[i]-want) > 1e-3 {
			t.Fatalf("outside the strips %q measures %v, and finished %v", e.Key, outside[i], want)
		}
		if want := outside[i] + open[i]; math.Abs(e.FinishedLength-want) > 1e-3 && !c.mixed() {
			t.Fatalf("with its folds in %q is said to measure %v, not %v", e.Key, e.FinishedLength, want)
		}
	}
}

// between cuts a straight line of the flat front wherever it may enter a strip.
func (c frontCase) between(a, b plane.Point) []piece.Stretch {
	at := []float64{0, 1}
	cut := func(from, to, level float64) {
		if (from < level) != (to < level) {
			at = append(at, (level-from)/(to-from))
		}
	}
	for _, one := range c.across.all {
		cut(a.X, b.X, one.near)
		cut(a.X, b.X, one.near+2*one.width)
		ya, _, _ := c.up.folded(a.Y, 0)
		yb, _, _ := c.up.folded(b.Y, 0)
		cut(ya, yb, one.level)
	}
	for _, one := range c.up.all {
		cut(a.Y, b.Y, one.near)
		cut(a.Y, b.Y, one.near+2*one.width)
	}
	slices.Sort(at)
	var all []piece.Stretch
	for i := 1; i < len(at); i++ {
		all = append(all, piece.Stretch{From: at[i-1], To: at[i]})
	}
	return all
}
