package plane

import (
	"math"
	"slices"
)

// HalfPlane returns the parts of a path at which u is not below 0 by more than
// rounding, u measured from origin in the direction out, with where their segments
// come from: source names it for each segment of p. A closed path that crosses the
// line comes in open parts, in the order of the path; what lies over the path's
// beginning is one part. A path without a point below is given whole, to the bit.
func HalfPlane(p Path, source []int, origin, out Point) []Strand {
	within := func(q Point) float64 {
		u := q.Sub(origin).Dot(out)
		if math.Abs(u) < joined {
			return 0 // on the line, as a crease there is, which falls short of it by give
		}
		return u
	}
	if !slices.ContainsFunc(p, func(q Point) bool { return within(q) < 0 }) {
		return []Strand{{p, source}}
	}
	var parts []Strand
	var now strandWalk
	for i, q := range p {
		u := within(q)
		if i > 0 {
			before := within(p[i-1])
			if crosses := (before >= 0) != (u >= 0); crosses {
				at := p[i-1].Toward(q, clampShare(before/(before-u)))
				if u >= 0 {
					now.join(at, meeting)
				} else {
					now.add(at, source[i-1])
				}
			}
		}
		switch {
		case u >= 0 && len(now.Path) == 0:
			now.join(q, meeting)
		case u >= 0:
			now.add(q, source[i-1])
		}
		if n := len(now.Path); n > 0 && (u < 0 || i == len(p)-1) {
			if n > 1 {
				parts = append(parts, now.Strand)
			}
			now = strandWalk{}
		}
	}
	if n := len(parts); p.Closed() && within(p[0]) >= 0 && n > 1 {
		first, last := parts[0], parts[n-1]
		whole := Strand{
			Path:   append(slices.Clone(last.Path), first.Path[1:]...),
			Source: append(slices.Clone(last.Source), first.Source...),
		}
		parts = append([]Strand{whole}, parts[1:n-1]...)
	}
	return parts
}

// Side returns what of a closed path lies on the side of the line through origin to which out
// points: a closed path, or nil for nothing (Sutherland and Hodgman's clipping, as commonly
// taught). Where the line parts the path, it runs there and back along the line; so the area it
// goes round is right, and so is what it holds off the line.
func (p Path) Side(origin, out Point) Path {
	var side Path
	for i, q := range p {
		u := q.Sub(origin).Dot(out)
		if i > 0 {
			if before := p[i-1].Sub(origin).Dot(out); (before >= 0) != (u >= 0) {
				side = append(side, p[i-1].Toward(q, clampShare(before/(before-u))))
			}
		}
		if u >= 0 && i+1 < len(p) {
			side = append(side, q)
		}
	}
	if len(side) < 3 {
		return nil
	}
	return append(side, side[0])
}

// Mirrored returns the point mirrored about the line through origin square to out, a
// direction of length 1.
func (p Point) Mirrored(origin, out Point) Point {
	return p.Sub(out.Mul(2 * p.Sub(origin).Dot(out)))
}

// Mirrored returns the path mirrored about the line through origin square to
// out, a direction of length 1, and walked the other way, so that what lay to its
// left does so still.
func (p Path) Mirrored(origin, out Point) Path {
	q := make(Path, len(p))
	for i, at := range p {
		q[len(p)-1-i] = at.Mirrored(origin, out)
	}
	return q
}
