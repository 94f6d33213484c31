package marking

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A line inside a template is drawn through windows: narrow
// openings with one long side on the line, with bridges of paper between them, so
// that the template stays in one piece. A window keeps clear of the template's edge
// and of all other lines that have windows, so far that the paper between does not
// tear. A line too close to others, or to the edge, for windows along half of its
// length has ticks at the template's edges instead, where the line, ruled on, comes
// out; they are joined with a ruler. Only a straight line can be.

const (
	windowWidth  = 2.0  // of a window, in mm: room for the point of a pencil
	windowLength = 50.0 // the most of one, in mm
	leastWindow  = 12.0 // the least of one, in mm
	windowBridge = 10.0 // between two windows of one line, in mm
	windowEdge   = 8.0  // between a window and the template's edge, in mm
	windowApart  = 10.0 // between windows of two lines, in mm
	// windowLook is how far apart, in mm, a line is looked at for room; a window
	// stays as much farther from where there is none.
	windowLook = 1.0
	// windowShare is the least part of a line that has windows.
	windowShare = 0.5
	tickLength  = 6.0 // of a tick, in mm
)

// hasWindows reports whether lines of the role are drawn through windows.
func hasWindows(role Role) bool {
	return slices.Contains([]Role{Fold, Centre, TuckFold, TuckStitch, TuckEnd, PleatFold, Placement}, role)
}

// windowed is a line in a template.
type windowed struct {
	mark Mark
	tree *plane.Tree
}

// openings are the windows and ticks of a template.
type openings struct {
	windows, ticks []Mark
	// unmarked are the names of bent lines that have room for neither.
	unmarked []string
}

// openingsFor finds the windows and ticks of lines in a template with an outline.
func openingsFor(outline *plane.Tree, lines []Mark) openings {
	var all []windowed
	for _, m := range lines {
		if tree := plane.NewTree(m.Path); tree.Length() > leastLine {
			all = append(all, windowed{m, tree})
		}
	}
	var o openings
	for i, w := range all {
		var near []*plane.Tree
		reach := w.tree.Bounds().Grown(windowApart + 2*windowWidth)
		for k, other := range all {
			if k != i && other.tree.Bounds().Meets(reach) {
				near = append(near, other.tree)
			}
		}
		stretches := w.room(outline, near)
		open := 0.0
		for _, s := range stretches {
			open += s.to - s.from
		}
		switch {
		case open >= windowShare*w.tree.Length():
			for _, s := range stretches {
				o.windows = append(o.windows, w.windowsIn(s)...)
			}
		case w.mark.Path.Straightness() <= straightness:
			o.ticks = append(o.ticks, w.ticks(outline)...)
		default:
			o.unmarked = append(o.unmarked, nameOf(w.mark))
		}
	}
	return o
}

// nameOf is what a line is called, or what it is.
func nameOf(m Mark) string {
	if m.Name != "" {
		return m.Name
	}
	return m.Role.String()
}

// room returns the stretches of the line that windows have room in. Windows of other
// lines may lie on either side of these.
func (w windowed) room(outline *plane.Tree, near []*plane.Tree) []stretch {
	free := func(at float64) bool {
		q := w.tree.At(at)
		return outline.Holds(q) && !outline.Nearer(q, windowEdge+windowWidth) &&
			!slices.ContainsFunc(near, func(other *plane.Tree) bool { return other.Nearer(q, windowApart+2*windowWidth) })
	}
	length := w.tree.Length()
	looks := math.Ceil(length / windowLook)
	var stretches []stretch
	from := math.Inf(1)
	for k := 0.0; k <= looks; k++ {
		at := length * k / looks
		switch {
		case free(at):
			from = math.Min(from, at)
			if k < looks {
				continue
			}
			at += windowLook // there is no place without room behind it
			fallthrough
		default:
			if s := (stretch{from + windowLook, at - 2*windowLook}); s.to-s.from >= leastWindow {
				stretches = append(stretches, s)
			}
			from = math.Inf(1)
		}
	}
	return stretches
}

// windowsIn returns the windows in a stretch of the line, all of one length.
func (w windowed) windowsIn(s stretch) []Mark {
	count := math.Max(1, math.Ceil((s.to-s.from+windowBridge)/(windowLength+windowBridge)))
	long := (s.to - s.from - (count-1)*windowBridge) / count
	var all []Mark
	for k := range int(count) {
		from := s.from + float64(k)*(long+windowBridge)
		side := w.mark.Path.Between(from, from+long)
		beside, ok := plane.Offset(side, windowWidth, 0)
		if !ok {
			continue
		}
		ring := slices.Concat(side.Reversed(), beside.Path)
		all = append(all, Mark{Role: Window, Path: append(ring, ring[0])})
	}
	return all
}

// ticks returns the ticks of a straight line: from where it comes out at the edge of
// the template, either way, inward.
func (w windowed) ticks(outline *plane.Tree) []Mark {
	path := w.mark.Path
	a, b := path[0], path[len(path)-1]
	var all []Mark
	for _, end := range []struct{ at, out plane.Point }{{a, a.Sub(b).Unit()}, {b, b.Sub(a).Unit()}} {
		if q, ok := comesOut(outline, end.at, end.out); ok {
			all = append(all, Mark{Role: w.mark.Role, Path: plane.Path{q, q.Sub(end.out.Mul(tickLength))}})
		}
	}
	return all
}

// comesOut returns where one leaves an outline who goes from a place in it, or on it,
// straight on.
func comesOut(outline *plane.Tree, from, direction plane.Point) (plane.Point, bool) {
	bounds := outline.Bounds()
	far := bounds.Width() + bounds.Height() + from.Distance(bounds.Centre())
	// From a little before the place, which may lie on the outline itself.
	way := plane.NewTree(plane.Path{from.Sub(direction.Mul(leastLine)), from.Add(direction.Mul(far))})
	crossings := plane.Crossings(way, outline)
	if len(crossings) == 0 {
		return plane.Point{}, false
	}
	return crossings[0].At, true
}
