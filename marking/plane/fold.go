package plane

import (
	"math"
	"slices"
	"sort"
)

// Rules of this file (u is how far a place lies from a base line, v how far
// along it; g(u) is where the place lies once everything is folded):
//
//   - A fold takes up a strip, two widths wide, at right angles to u. Halfway
//     across the strip the plane turns back, so that the strip ends where it
//     began: at both its sides g is the same, s. In between it lies as a flap of
//     one width to one side of s, in two layers.
//   - Outside the strips the plane is only moved. g is continuous, and the
//     base line stays where it is.
//   - Beyond the v at which a fold ends its strip is open: it is drawn in to
//     the line u = s.
//   - What lies over a shape once it is folded is the shape's preimage: (u, v)
//     belongs to it when (g(u), v) belongs to the shape. unfold.go finds it.

// Fold is one fold of the plane.
type Fold struct {
	// At is the u at which the strip begins, in mm; it ends two widths on.
	At float64
	// Width is how far the flap reaches, in mm: half the strip.
	Width float64
	// Back tells to which side of s the flap lies: to that of less u where
	// it is true, else to that of greater u.
	Back bool
	// From and To are the v between which the strip is folded. At From it is,
	// at To it is not. Infinite values are allowed.
	From, To float64
}

// End returns the u at which the strip ends, in mm.
func (f Fold) End() float64 { return f.At + 2*f.Width }

// side is +1 where the flap lies toward greater u, -1 where toward less.
func (f Fold) side() float64 {
	if f.Back {
		return -1
	}
	return 1
}

// folds reports whether the strip is folded at v.
func (f Fold) folds(v float64) bool { return v >= f.From && v < f.To }

// Folding is parallel folds over one base line. Use NewFolding.
type Folding struct {
	origin Point
	out    Point // the direction of u, of length 1
	folds  []Fold
	// seam[k] is the s of fold k.
	seam []float64
	// shift[k] is how far the plane before strip k is moved when it is
	// unfolded, shift[len(folds)] what lies beyond the last.
	shift []float64
	// rim is the least u at which anything lies: see Over.
	rim float64
}

// NewFolding folds the plane along lines square to out, a direction of length
// 1; u is measured from origin. The folds come in the order of their strips,
// which may touch but not overlap, and have some width. A strip that holds the
// base line itself is folded about it: s is 0 there.
func NewFolding(origin, out Point, folds []Fold) *Folding {
	f := &Folding{origin: origin, out: out, folds: folds, rim: math.Inf(-1)}
	before := 0.0 // what strips and parts of strips take on the near side of the base line
	for _, one := range folds {
		before += max(0, min(0, one.End())-one.At)
	}
	taken := -before
	for k, one := range folds {
		f.shift = append(f.shift, taken)
		f.seam = append(f.seam, one.At-taken)
		// The seams of strips that touch are one line, to the bit: a path
		// must cross them all or none.
		if k > 0 && f.seam[k] < f.seam[k-1]+touch {
			f.seam[k] = f.seam[k-1]
		}
		taken += 2 * one.Width
	}
	f.shift = append(f.shift, taken)
	return f
}

// Over tells the folding which shape lies on the folded plane. A strip that ends
// on the rim of it, at its least u, is unfolded as part of it: what lies on the
// rim lies before the strip. Without that the strip would be loose beside it.
func (f *Folding) Over(shape Path) {
	f.rim = math.Inf(1)
	for _, q := range shape {
		f.rim = min(f.rim, f.U(q))
	}
}

// beyond reports whether u, on the folded plane, lies beyond strip k rather than
// before it. On the line between the two, or off it by no more than rounding, it
// lies beyond, unless that is the rim.
func (f *Folding) beyond(u float64, k int) bool {
	s := f.seam[k]
	if math.Abs(s-f.rim) < give {
		return u > max(s, f.rim)+give
	}
	return u >= s-touch
}

// first is the first fold from which on something holds, which does of all behind it: strips
// come in their order.
func (f *Folding) first(holds func(*Fold) bool) int {
	return sort.Search(len(f.folds), func(k int) bool { return holds(&f.folds[k]) })
}

// Folds returns the folds, in order.
func (f *Folding) Folds() []Fold { return f.folds }

// Seam returns the g(u) of both sides of strip k, in mm.
func (f *Folding) Seam(k int) float64 { return f.seam[k] }

// U returns how far a place lies from the base line, V how far along it, in mm.
func (f *Folding) U(p Point) float64 { return p.Sub(f.origin).Dot(f.out) }

// V returns how far along the base line a place lies, in mm; it grows to the
// left of out.
func (f *Folding) V(p Point) float64 { return p.Sub(f.origin).Dot(f.out.Left()) }

// moved returns a place moved by a step along u; by 0 it is the place to the
// bit.
func (f *Folding) moved(p Point, step float64) Point {
	if step == 0 {
		return p
	}
	return p.Add(f.out.Mul(step))
}

// DrawnIn returns where a place of the flat plane comes to lie when every
// strip is drawn in to its line, as though it were open all along.
func (f *Folding) DrawnIn(p Point) Point {
	u := f.U(p)
	k := f.first(func(one *Fold) bool { return u < one.End() })
	if k < len(f.folds) && u >= f.folds[k].At {
		return f.moved(p, f.seam[k]-u)
	}
	return f.moved(p, -f.shift[k])
}

// Shown returns the parts of a path of the flat plane that lie in no strip that is
// folded there, each moved to where it lies on the folded plane. What lies in an
// open strip is not drawn in: it goes on from what lies before the strip.
func (f *Folding) Shown(p Path) []Path {
	return f.parts(p, func(a, b Point) (Point, Point, bool) {
		step, shown := f.shown(a.Toward(b, 0.5))
		return f.moved(a, step), f.moved(b, step), shown
	})
}

// alongStrip bounds the sine of the angle (15 degrees) at which a line still runs along a
// strip, not across it.
const alongStrip = 0.26

// Lying returns what Shown does, and with it what runs along a strip within it, where the
// strip is folded: drawn in to the strip's line, beside which it lies in the flap.
func (f *Folding) Lying(p Path) []Path {
	return f.parts(p, func(a, b Point) (Point, Point, bool) {
		step, shown := f.shown(a.Toward(b, 0.5))
		if !shown && math.Abs(f.U(b)-f.U(a)) <= alongStrip*a.Distance(b) {
			return f.DrawnIn(a), f.DrawnIn(b), true
		}
		return f.moved(a, step), f.moved(b, step), shown
	})
}

// parts takes a path of the flat plane stretch by stretch, of which each lies in one strip
// or in none, to where it lies on the folded plane, and leaves out what does not.
func (f *Folding) parts(p Path, lies func(a, b Point) (Point, Point, bool)) []Path {
	if len(f.folds) == 0 {
		return []Path{p}
	}
	var parts []Path
	for i := 1; i < len(p); i++ {
		at := append([]float64{0}, f.breaks(p[i-1], p[i])...)
		for j, from := range at {
			to := 1.0
			if j+1 < len(at) {
				to = at[j+1]
			}
			a, b, ok := lies(p[i-1].Toward(p[i], from), p[i-1].Toward(p[i], to))
			if !ok {
				continue
			}
			if n := len(parts); n > 0 && parts[n-1][len(parts[n-1])-1].Distance(a) <= touch {
				parts[n-1] = append(parts[n-1], b)
			} else {
				parts = append(parts, Path{a, b})
			}
		}
	}
	return parts
}

// shown returns how far along u a place of the flat plane is moved when it is
// folded; false where it lies in a strip that is folded there, not on its side.
func (f *Folding) shown(p Point) (step float64, ok bool) {
	u, v := f.U(p), f.V(p)
	k := f.first(func(one *Fold) bool { return u <= one.End()-touch })
	inside := k < len(f.folds) && u > f.folds[k].At+touch
	return -f.shift[k], !inside || !f.folds[k].folds(v)
}

// Spread returns how much longer a path of the folded plane is than it is drawn with
// every strip drawn in: by two widths wherever it crosses an open one.
func (f *Folding) Spread(p Path) float64 {
	sum := 0.0
	for i := 1; i < len(p); i++ {
		a, b := f.U(p[i-1]), f.U(p[i])
		for k, one := range f.folds {
			if f.beyond(a, k) == f.beyond(b, k) {
				continue
			}
			at := p[i-1].Toward(p[i], clampShare((f.seam[k]-a)/(b-a)))
			if !one.folds(f.V(at)) {
				sum += 2 * one.Width
			}
		}
	}
	return sum
}

// DrawnInPath returns the path with every strip drawn in: across a strip it goes
// straight from where it comes in to where it goes out, along the strip's line.
// Places that fall together are given once.
func (f *Folding) DrawnInPath(p Path) Path {
	if len(f.folds) == 0 || len(p) == 0 {
		return p
	}
	var q Path
	add := func(at Point) {
		if len(q) > 0 && f.inStrip(at) {
			return
		}
		at = f.DrawnIn(at)
		if n := len(q); n == 0 || q[n-1].Distance(at) > touch {
			q = append(q, at)
		}
	}
	for i, at := range p {
		if i > 0 {
			for _, t := range f.breaks(p[i-1], at) {
				add(p[i-1].Toward(at, t))
			}
		}
		add(at)
	}
	if last := p[len(p)-1]; f.inStrip(last) {
		q = append(q, f.DrawnIn(last))
	}
	if p.Closed() && len(q) > 1 {
		q[len(q)-1] = q[0]
	}
	return q
}

// inStrip reports whether a place of the flat plane lies within a strip.
func (f *Folding) inStrip(p Point) bool {
	u := f.U(p)
	k := f.first(func(one *Fold) bool { return u < one.End()-touch })
	return k < len(f.folds) && u > f.folds[k].At+touch
}

// breaks returns, in order, the shares of the way from a to b at which the
// folding is not the same on both sides.
func (f *Folding) breaks(a, b Point) []float64 {
	ua, ub, va, vb := f.U(a), f.U(b), f.V(a), f.V(b)
	var all []float64
	at := func(from, to, level float64) {
		if (from < level) != (to < level) {
			all = append(all, (level-from)/(to-from))
		}
	}
	for _, one := range f.folds[f.first(func(one *Fold) bool { return min(ua, ub) <= one.End() }):] {
		if max(ua, ub) < one.At {
			break
		}
		at(ua, ub, one.At)
		at(ua, ub, one.At+one.Width)
		at(ua, ub, one.End())
		at(va, vb, one.From)
		at(va, vb, one.To)
	}
	slices.Sort(all)
	return all
}

// Flat returns the place of the flat plane that comes to lie at p and is in no
// strip: what is seen at p when every flap is lifted.
func (f *Folding) Flat(p Point) Point {
	u, k := f.U(p), 0
	for k < len(f.seam) && f.beyond(u, k) {
		k++
	}
	return f.moved(p, f.shift[k])
}
