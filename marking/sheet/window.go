package sheet

import (
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file. A line inside a template is drawn through windows: narrow
// openings with one long side on the line, with bridges of paper between them, so
// that the template stays in one piece. What is cut out is hatched, and an arrow points
// to the side on the line. A window keeps clear of the template's edge
// and of all other lines that have windows, so far that the paper between does not
// tear; and of the line itself where that comes back. A line too close to others of
// its role, or to the edge, for windows along half of its length has a tick at each end
// where it comes out at the template's edge, and a hole to be pricked at each that lies
// inside; between them it is ruled. Only a straight line can be: a bent one is pricked all
// along.
//
// Where there are holes there is no window. A line along which other lines end, each with
// a hole, is ruled from hole to hole and needs none of its own there.

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
	// comesOutWithin is how far inside a template, in mm, a line may end that has a tick
	// where it would come out.
	comesOutWithin = 6.0
	arrowLength    = 6.0 // of the arrow at a window, in mm
	windowHole     = 5.0 // between a window and a hole to be pricked, in mm
	// sameHole is how far before its end, in mm, a hole may lie on a line, so that it needs
	// none of its own: it is ruled as far as that one.
	sameHole = 5.0
	// comesBack is how far along a line from a place, in mm, it may come near that
	// place again for a reason other than its own course: half as far again as
	// windows keep apart.
	comesBack = 1.5 * (windowApart + 2*windowWidth)
)

// hasWindows reports whether lines of the role are drawn through windows. Stitch lines
// are only where they are no edge's.
func hasWindows(role mark.Role) bool {
	return slices.Contains([]mark.Role{mark.Fold, mark.Centre, mark.TuckFold, mark.TuckStitch, mark.TuckEnd, mark.PleatFold, mark.Placement}, role)
}

// windowed is a line in a template.
type windowed struct {
	mark mark.Mark
	tree *plane.Tree
	open []piece.Stretch // where its windows lie; nil where it has none
}

// openings are the windows of a template, each with its arrow, its ticks, and the holes at the
// ends of straight lines, and along bent ones, that have no windows.
type openings struct {
	windows, arrows, ticks, holes, dots []mark.Mark
	// dotted are the names of the bent ones.
	dotted []string
}

// pricked are all holes.
func (o openings) pricked() []mark.Mark { return slices.Concat(o.holes, o.dots) }

// marks are all that is drawn of the openings: windows are hatched.
func (o openings) marks() []mark.Mark {
	all := slices.Clone(o.windows)
	for _, w := range o.windows {
		all = append(all, mark.Mark{Role: mark.Waste, Path: w.Path})
	}
	return slices.Concat(all, o.arrows, o.ticks, o.pricked())
}

// openingsFor finds the windows and ticks of lines in a template with an outline.
func openingsFor(outline *plane.Tree, lines []mark.Mark) openings {
	var all []*windowed
	for _, m := range lines {
		if tree := plane.NewTree(m.Path); tree.Length() > piece.LeastLine {
			all = append(all, &windowed{mark: m, tree: tree})
		}
	}
	for _, w := range all {
		w.open = w.room(outline, all)
	}
	// A line that has no windows does not stand in the way of another: but for those
	// of its own role, so that of a row all lines are marked in one way.
	for _, w := range all {
		if w.open == nil {
			w.open = w.room(outline, slices.DeleteFunc(slices.Clone(all), func(other *windowed) bool {
				return other.open == nil && other.mark.Role != w.mark.Role
			}))
		}
	}
	return closedAtHoles(outline, all)
}

// closedAtHoles returns the openings of lines whose windows have been found, without those
// where holes are pricked. A line that has too few windows left has holes as well, so it
// is done until no line loses any. It comes to an end: a line that loses any loses a step of
// about windowLook of its windows at the least, and none gains.
func closedAtHoles(outline *plane.Tree, all []*windowed) openings {
	for {
		o := openingsOf(outline, all)
		holes, lost := o.pricked(), false
		for _, w := range all {
			before := lengthOf(w.open)
			w.open = w.besides(holes)
			lost = lost || lengthOf(w.open) < before
		}
		if !lost {
			return o
		}
	}
}

// lengthOf returns how long some stretches are together, in mm.
func lengthOf(stretches []piece.Stretch) float64 {
	long := 0.0
	for _, s := range stretches {
		long += s.To - s.From
	}
	return long
}

// openingsOf returns the windows of the lines that have some, and the ticks and holes of
// the others.
func openingsOf(outline *plane.Tree, all []*windowed) openings {
	var o openings
	for _, w := range all {
		if w.open != nil {
			for _, s := range w.open {
				windows, arrows := w.windowsIn(s)
				o.windows, o.arrows = append(o.windows, windows...), append(o.arrows, arrows...)
			}
		}
	}
	for _, w := range all {
		switch {
		case w.open != nil:
		case w.mark.Path.Straightness() <= piece.Straightness:
			ticks, holes := w.ticks(outline, o.holes)
			o.ticks = append(o.ticks, ticks...)
			o.holes = append(o.holes, holes...)
		default:
			o.dots = append(o.dots, w.dots()...)
			if name := nameOf(w.mark); !slices.Contains(o.dotted, name) {
				o.dotted = append(o.dotted, name)
			}
		}
	}
	return o
}

// besides returns the stretches of the line that have windows and keep clear of holes; nil
// where that is less than windowShare of it. A stretch that is clear stays as it is.
func (w *windowed) besides(holes []mark.Mark) []piece.Stretch {
	if w.open == nil {
		return nil
	}
	reach := w.tree.Bounds().Grown(windowHole + windowLook)
	var near plane.Path
	for _, hole := range holes {
		if at := hole.Path[0]; reach.Holds(at) {
			near = append(near, at)
		}
	}
	var left []piece.Stretch
	for _, s := range w.open {
		left = append(left, w.clearOf(near, s)...)
	}
	if lengthOf(left) < windowShare*w.tree.Length() {
		return nil
	}
	return left
}

// clearOf returns what is left of a stretch without each place nearer to a hole than
// windowHole. It is looked at in steps, as far off as no place between two can be nearer.
func (w *windowed) clearOf(holes plane.Path, s piece.Stretch) []piece.Stretch {
	looks := int(math.Ceil((s.To - s.From) / windowLook))
	at := func(k int) float64 { return s.From + (s.To-s.From)*float64(k)/float64(looks) }
	free := make([]bool, looks+1)
	for k := range free {
		q := w.tree.At(at(k))
		free[k] = !slices.ContainsFunc(holes, func(hole plane.Point) bool { return hole.Distance(q) < windowHole+windowLook })
	}
	if !slices.Contains(free, false) {
		return []piece.Stretch{s}
	}
	var left []piece.Stretch
	for k := 0; k <= looks; k++ {
		first := k
		for k <= looks && free[k] {
			k++
		}
		if part := (piece.Stretch{From: at(first), To: at(k - 1)}); part.To-part.From >= leastWindow {
			left = append(left, part)
		}
	}
	return left
}

// near returns those of some other lines that may be too near to this one.
func (w *windowed) near(others []*windowed) []*plane.Tree {
	reach := w.tree.Bounds().Grown(windowApart + 2*windowWidth)
	var trees []*plane.Tree
	for _, other := range others {
		if other != w && other.tree.Bounds().Meets(reach) {
			trees = append(trees, other.tree)
		}
	}
	return trees
}

// nameOf is what a line is called, or what it is.
func nameOf(m mark.Mark) string {
	if m.Name != "" {
		return wording.Quoted(m.Name)
	}
	return m.Role.String()
}

// room returns the stretches of the line that windows have room in beside some others;
// nil where that is less than windowShare of it. Windows of other lines may lie on either
// side of these.
func (w *windowed) room(outline *plane.Tree, others []*windowed) []piece.Stretch {
	near := w.near(others)
	length := w.tree.Length()
	path := w.mark.Path
	if length < 2*comesBack && path[0].Distance(path[len(path)-1]) < length/2 {
		return nil // what lies in so small a ring would fall out
	}
	looks := int(math.Ceil(length / windowLook))
	places := make(plane.Path, looks+1)
	for k := range places {
		places[k] = w.tree.At(length * float64(k) / float64(looks))
	}
	returns := make([]bool, len(places))
	if len(path) > 2 { // nothing straight comes back
		returns = comingBack(places, length/float64(looks))
	}
	last := 0 // of those near, what was in the way last: most likely it still is
	free := func(k int) bool {
		q := places[k]
		tooNear := func(other *plane.Tree) bool { return other.Nearer(q, windowApart+2*windowWidth) }
		if returns[k] || last < len(near) && tooNear(near[last]) || !outline.Holds(q) || outline.Nearer(q, windowEdge+windowWidth) {
			return false
		}
		if i := slices.IndexFunc(near, tooNear); i >= 0 {
			last = i
			return false
		}
		return true
	}
	var stretches []piece.Stretch
	open := 0.0
	for k := 0; k <= looks; k++ {
		first := k
		for k <= looks && free(k) {
			k++
		}
		s := piece.Stretch{From: length*float64(first)/float64(looks) + windowLook, To: length*float64(k-1)/float64(looks) - windowLook}
		if n := len(stretches); n > 0 {
			s.From = math.Max(s.From, stretches[n-1].To+windowBridge)
		}
		if s.To-s.From >= leastWindow {
			stretches = append(stretches, s)
			open += s.To - s.From
		}
	}
	if open < windowShare*length {
		return nil
	}
	return stretches
}

// comingBack tells of places along a line, each a step of mm from the last, whether
// the line comes near them once more, farther along or before.
func comingBack(places plane.Path, step float64) []bool {
	const reach = windowApart + 2*windowWidth
	tree := plane.NewTree(places)
	back := make([]bool, len(places))
	for k, q := range places {
		again := func(o int) bool {
			return math.Abs(float64(o-k))*step > comesBack && places[o].Distance(q) < reach
		}
		tree.Within(plane.EmptyBox().With(q).Grown(reach), func(i int) bool {
			back[k] = again(i) || again(i+1)
			return !back[k]
		})
	}
	return back
}

// windowsIn returns the windows in a stretch of the line, all of one length, and for each an
// arrow to its side on the line.
func (w *windowed) windowsIn(s piece.Stretch) (windows, arrows []mark.Mark) {
	count := math.Max(1, math.Ceil((s.To-s.From+windowBridge)/(windowLength+windowBridge)))
	each := (s.To - s.From - (count-1)*windowBridge) / count
	for k := range int(count) {
		from := s.From + float64(k)*(each+windowBridge)
		side := w.mark.Path.Between(from, from+each)
		beside, ok := plane.Offset(side, windowWidth, 0)
		if !ok {
			continue
		}
		ring := slices.Concat(side.Reversed(), beside.Path)
		windows = append(windows, mark.Mark{Role: mark.Window, Path: append(ring, ring[0])})
		at, along := side.At(each / 2)
		arrows = append(arrows, mark.Mark{Role: mark.DrawHere, Path: plane.Path{at.Sub(along.Left().Mul(arrowLength)), at}})
	}
	return windows, arrows
}

// ticks returns what a straight line has at its ends: a tick, inward, where it comes out at
// the edge of the template, and a hole where it ends inside, and no other is.
func (w *windowed) ticks(outline *plane.Tree, others []mark.Mark) (ticks, holes []mark.Mark) {
	path := w.mark.Path
	a, b := path[0], path[len(path)-1]
	for _, end := range []struct{ at, out plane.Point }{{a, a.Sub(b).Unit()}, {b, b.Sub(a).Unit()}} {
		q, ok := comesOut(outline, end.at, end.out)
		if ok && q.Distance(end.at) <= comesOutWithin {
			ticks = append(ticks, mark.Mark{Role: w.mark.Role, Path: plane.Path{q, q.Sub(end.out.Mul(tickLength))}})
			continue
		}
		there := func(hole mark.Mark) bool {
			return hole.Path[0].Distance(end.at) <= sameHole && w.tree.Nearer(hole.Path[0], piece.Rounding)
		}
		if !slices.ContainsFunc(others, there) {
			holes = append(holes, holeAt(end.at, end.out))
		}
	}
	return ticks, holes
}

// holeAt returns a hole to be pricked at a place of a line that runs on in a direction. It is
// two dots in one: a path of one point would have no length.
func holeAt(at, along plane.Point) mark.Mark {
	return mark.Mark{Role: mark.Prick, Path: plane.Path{at, at.Sub(along.Mul(piece.LeastLine))}}
}

// dots returns the holes along a bent line, as closely as such a line is pricked.
func (w *windowed) dots() []mark.Mark {
	d := dotting{bent: usualDots, straight: usualDots}
	var all []mark.Mark
	for _, far := range d.along(w.tree, fixedDots(w.tree, nil)) {
		at, along := w.mark.Path.At(far)
		all = append(all, holeAt(at, along))
	}
	return all
}

// comesOut returns where one leaves an outline who goes from a place in it, or on it,
// straight on.
func comesOut(outline *plane.Tree, from, direction plane.Point) (plane.Point, bool) {
	bounds := outline.Bounds()
	far := bounds.Width() + bounds.Height() + from.Distance(bounds.Centre())
	// From a little before the place, which may lie on the outline itself.
	way := plane.NewTree(plane.Path{from.Sub(direction.Mul(piece.LeastLine)), from.Add(direction.Mul(far))})
	crossings := plane.Crossings(way, outline)
	if len(crossings) == 0 {
		return plane.Point{}, false
	}
	return crossings[0].At, true
}
