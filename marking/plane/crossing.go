package plane

import (
	"cmp"
	"math"
	"slices"
)

// Crossing is a place where two paths cross or touch.
type Crossing struct {
	At   Point
	A, B float64 // how far along each of the two paths, in mm
}

// touch bounds how far two places, or two segments, may miss each other, in mm, and
// still count as one, or as touching: far below what paper shows, far above what
// arithmetic loses on a piece of any size.
const touch = 1e-9

// Crossings returns where the two paths cross or touch, in the order of the
// first. Where they run along each other it gives the ends of the common
// stretch. A crossing at a shared corner of consecutive segments is given once.
func Crossings(a, b *Tree) []Crossing {
	var all []Crossing
	if !a.Bounds().Grown(touch).Meets(b.Bounds()) {
		return nil
	}
	for i := 0; i+1 < len(a.path); i++ {
		p, q := a.path[i], a.path[i+1]
		b.Within(EmptyBox().With(p).With(q).Grown(touch), func(j int) bool {
			r, s := b.path[j], b.path[j+1]
			for _, c := range crossSegments(p, q, r, s) {
				all = append(all, Crossing{
					At: p.Toward(q, c.a),
					A:  a.along[i] + c.a*(a.along[i+1]-a.along[i]),
					B:  b.along[j] + c.b*(b.along[j+1]-b.along[j]),
				})
			}
			return true
		})
	}
	slices.SortFunc(all, func(c, d Crossing) int { return cmp.Or(cmp.Compare(c.A, d.A), cmp.Compare(c.B, d.B)) })
	kept := all[:0]
	for _, c := range all {
		if n := len(kept); n == 0 || c.A-kept[n-1].A > 4*touch || math.Abs(c.B-kept[n-1].B) > 4*touch {
			kept = append(kept, c)
		}
	}
	return kept
}

// SelfCrossing returns a place where the path crosses or touches itself, and
// the two segments that meet there; ok is false where there is none. That
// consecutive segments share a corner, and that a closed path ends where it
// began, does not count; a path that turns back along itself does.
func SelfCrossing(t *Tree) (at Point, i, j int, ok bool) {
	p := t.path
	last := len(p) - 2
	for i := 0; i <= last; i++ {
		a, b := p[i], p[i+1]
		hit := -1
		t.Within(EmptyBox().With(a).With(b).Grown(touch), func(k int) bool {
			if k <= i {
				return true
			}
			neighbours := k == i+1 || i == 0 && k == last && p.Closed()
			if neighbours {
				if foldsBack(p, i, k) {
					hit = k
				}
			} else if len(crossSegments(a, b, p[k], p[k+1])) > 0 {
				hit = k
			}
			return hit < 0
		})
		if hit >= 0 {
			at = p[i+1]
			if c := crossSegments(a, b, p[hit], p[hit+1]); len(c) > 0 {
				at = a.Toward(b, c[0].a)
			}
			return at, i, hit, true
		}
	}
	return Point{}, 0, 0, false
}

// foldsBack reports whether two segments that share a corner lie on each
// other.
func foldsBack(p Path, i, k int) bool {
	a, b := p[i+1].Sub(p[i]), p[k+1].Sub(p[k])
	return a.Dot(b) < 0 && math.Abs(a.Cross(b)) <= touch*max(a.Length(), b.Length())
}

// share is a place on two segments, as a share of the way along each.
type share struct{ a, b float64 }

// crossSegments returns where the segments pq and rs meet: nothing, one place,
// or the two ends of the stretch they share when they lie on one line.
func crossSegments(p, q, r, s Point) []share {
	u, v, w := q.Sub(p), s.Sub(r), r.Sub(p)
	lu, lv := u.Length(), v.Length()
	if lu == 0 || lv == 0 {
		return nil
	}
	area := u.Cross(v)
	// Below this the directions differ by less than a touch over the whole
	// of the shorter one, and the place where they cross means nothing.
	if math.Abs(area) <= touch*max(lu, lv) {
		return shareLine(p, q, r, s)
	}
	a, b := w.Cross(v)/area, w.Cross(u)/area
	if a < -touch/lu || a > 1+touch/lu || b < -touch/lv || b > 1+touch/lv {
		return nil
	}
	return []share{{clampShare(a), clampShare(b)}}
}

// shareLine returns the ends of the stretch that two segments on one line have
// in common.
func shareLine(p, q, r, s Point) []share {
	var found []share
	add := func(one share) {
		for _, f := range found {
			if math.Abs(f.a-one.a)*p.Distance(q) <= touch {
				return
			}
		}
		found = append(found, one)
	}
	for k, end := range []Point{r, s} {
		if foot, t := nearestOnSegment(p, q, end); foot.Distance(end) <= touch {
			add(share{t, float64(k)})
		}
	}
	for k, end := range []Point{p, q} {
		if foot, t := nearestOnSegment(r, s, end); foot.Distance(end) <= touch {
			add(share{float64(k), t})
		}
	}
	return found
}

func clampShare(t float64) float64 { return min(1, max(0, t)) }
