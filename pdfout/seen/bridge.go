package seen

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// bridgeReach is how far from a join, in mm, a window may be left out: 6 mm of paper on either
// side, and the 2 mm that a window is wide, with what a printed length is rounded to.
const bridgeReach = 8.0 + 2*OffLine

// byJoin reports whether a place lies so near to a join of pages that a window may be left out
// there for a bridge of paper.
func byJoin(laid []LaidPage, at plane.Point) bool {
	return slices.ContainsFunc(laid, func(p LaidPage) bool {
		near := p.Core.Grown(bridgeReach)
		return near.Holds(at) && (p.Core.Min.X > p.Window.Min.X && at.X < p.Core.Min.X+bridgeReach ||
			p.Core.Max.X < p.Window.Max.X && at.X > p.Core.Max.X-bridgeReach ||
			p.Core.Min.Y > p.Window.Min.Y && at.Y < p.Core.Min.Y+bridgeReach ||
			p.Core.Max.Y < p.Window.Max.Y && at.Y > p.Core.Max.Y-bridgeReach)
	})
}

// mayLack reports whether a line of a role may be missing at a place: a window and its
// hatching in the bridge at a join. The arrow of a window stands in the middle of each of its
// parts, wherever that is; the tests of the parts look at it.
func mayLack(laid []LaidPage, role mark.Role, at plane.Point) bool {
	switch role {
	case mark.Window, mark.Waste:
		return byJoin(laid, at)
	case mark.DrawHere:
		return len(laid) > 1
	}
	return false
}

// mayStray reports whether a line of a role may lie at a place where the pieces have none: the
// end of a part of a window, in the window and at a join, and an arrow of it.
func mayStray(laid []LaidPage, role mark.Role, at plane.Point, windows []*plane.Tree) bool {
	if role == mark.Window && !slices.ContainsFunc(windows, func(w *plane.Tree) bool { return w.Holds(at) }) {
		return false
	}
	return role != mark.Waste && mayLack(laid, role, at)
}
