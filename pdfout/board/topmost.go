package board

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: where cloth is folded its cut edges lie on each other, there and back. One that
// lies wholly on another is drawn once, as the upper one, or it would look like a thicker line.

// topmost leaves out the cut edges that lie wholly on those that come after them.
func topmost(marks []mark.Mark) []mark.Mark {
	var upper []stretch
	var kept []mark.Mark
	for _, m := range slices.Backward(marks) {
		if m.Role != mark.Cut {
			kept = append(kept, m)
			continue
		}
		own := stretches(m.Path)
		bare := func(s stretch) bool { return !slices.ContainsFunc(upper, s.liesOn) }
		if len(own) > 0 && !slices.ContainsFunc(own, bare) {
			continue
		}
		upper = append(upper, own...)
		kept = append(kept, m)
	}
	slices.Reverse(kept)
	return kept
}

// stretch is a straight one of a line.
type stretch struct{ from, to plane.Point }

// stretches are those of a line.
func stretches(p plane.Path) []stretch {
	var all []stretch
	for i := 1; i < len(p); i++ {
		all = append(all, stretch{p[i-1], p[i]})
	}
	return all
}

// liesOn reports whether all of a stretch lies on another.
func (s stretch) liesOn(other stretch) bool { return other.has(s.from) && other.has(s.to) }

// has reports whether a point lies on a stretch.
func (s stretch) has(p plane.Point) bool {
	if outside(p.X, s.from.X, s.to.X) || outside(p.Y, s.from.Y, s.to.Y) {
		return false // most are, where there are thousands
	}
	along, long := s.to.Sub(s.from), s.from.Distance(s.to)
	if long == 0 {
		return p.Distance(s.from) <= apartAtMost
	}
	t := min(max(p.Sub(s.from).Dot(along)/(long*long), 0), 1)
	return p.Distance(s.from.Add(plane.Point{X: t * along.X, Y: t * along.Y})) <= apartAtMost
}

// outside reports whether a coordinate lies beyond both of two others, by more than lines lie apart
// that are one.
func outside(at, a, b float64) bool {
	return at < a-apartAtMost && at < b-apartAtMost || at > a+apartAtMost && at > b+apartAtMost
}
