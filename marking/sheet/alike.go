package sheet

import (
	"math"
	"reflect"
	"slices"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file. Sheets of several pieces that are alike, line for line and word for
// word, are one sheet, which bears the names of all: paper is not spent twice on the same
// lines, and the pieces cannot come out different. They may lie anywhere, but are not
// turned or turned over to be alike: every piece stands as its file draws it, and what is
// above stays above. A grain line tells a direction, wherever it lies. A sheet that is
// filled in belongs to its piece alone.

// alikeWithin bounds how far lines that are alike may differ, in mm: far less than a line
// is wide.
const alikeWithin = 0.05

// alikeDirection bounds how far the directions of grain lines that are alike may differ,
// as a slope: by less than alikeWithin in 100 mm.
const alikeDirection = 0.0005

// onceEach returns markings, those that are alike as one, in the place of the first.
func onceEach(all []mark.Marking) []mark.Marking {
	var groups [][]mark.Marking
	for _, m := range all {
		i := slices.IndexFunc(groups, func(g []mark.Marking) bool {
			return sameSheet(g[0], m) && !slices.ContainsFunc(g, func(other mark.Marking) bool { return other.Piece == m.Piece })
		})
		if i < 0 {
			groups = append(groups, []mark.Marking{m})
			continue
		}
		groups[i] = append(groups[i], m)
	}
	var each []mark.Marking
	for _, g := range groups {
		each = append(each, joined(g))
	}
	return each
}

// joined is one marking for all that are alike.
func joined(g []mark.Marking) mark.Marking {
	m := g[0]
	if len(g) == 1 {
		return m
	}
	var cuts []string
	for _, one := range g {
		m.Alike = append(m.Alike, one.Piece)
		cuts = append(cuts, one.Piece+": "+one.Cut)
	}
	different := slices.ContainsFunc(g, func(one mark.Marking) bool { return one.Cut != m.Cut })
	switch {
	case different:
		m.Cut = strings.Join(cuts, "; ")
	case m.Cut != "":
		m.Cut += " for each"
	}
	sheet := strings.TrimPrefix(m.Name, m.Piece)
	m.Piece = wording.Listed(m.Alike, "and")
	m.Name = m.Piece + sheet
	return m
}

// sameSheet reports whether two markings are the same but for the names of their pieces, how
// often these are cut, and where the lines lie.
func sameSheet(a, b mark.Marking) bool {
	sheet, named := strings.CutPrefix(a.Name, a.Piece)
	if !named || b.Name != b.Piece+sheet || a.Kind != b.Kind || a.Side != b.Side || a.Form != nil || b.Form != nil {
		return false
	}
	if !slices.Equal(a.Notes, b.Notes) || !slices.Equal(a.Steps, b.Steps) || !slices.Equal(a.Pale, b.Pale) || !reflect.DeepEqual(a.Sketch, b.Sketch) || (a.Cut == "") != (b.Cut == "") {
		return false
	}
	step := a.Outline.Bounds().Min.Sub(b.Outline.Bounds().Min)
	near := func(p, q plane.Point) bool { return p.Distance(q.Add(step)) <= alikeWithin }
	return samePath(a.Outline, b.Outline.Moved(step)) &&
		sameInAnyOrder(a.Marks, b.Marks, func(m, n mark.Mark) bool {
			return m.Role == n.Role && m.Name == n.Name &&
				(samePath(m.Path, n.Path.Moved(step)) || m.Role == mark.Grain && parallel(m.Path, n.Path))
		}) &&
		sameInAnyOrder(a.Words, b.Words, func(v, w mark.Word) bool {
			return v.Role == w.Role && v.Text == w.Text && near(v.At, w.At) && v.Out.Distance(w.Out) <= alikeWithin
		}) &&
		sameInAnyOrder(a.Dimensions, b.Dimensions, func(d, e mark.Dimension) bool {
			return d.Text == e.Text && near(d.From, e.From) && near(d.To, e.To)
		})
}

// sameInAnyOrder reports whether each of some things is the same as one of others, and
// none of these is left.
func sameInAnyOrder[T any](some, others []T, same func(a, b T) bool) bool {
	if len(some) != len(others) {
		return false
	}
	left := slices.Clone(others)
	for _, one := range some {
		i := slices.IndexFunc(left, func(other T) bool { return same(one, other) })
		if i < 0 {
			return false
		}
		left = slices.Delete(left, i, i+1)
	}
	return true
}

// samePath reports whether two paths lead the same way. Their points need not be the same,
// and one that is closed may begin anywhere.
func samePath(a, b plane.Path) bool {
	if len(a) == 0 || len(b) == 0 {
		return len(a) == len(b)
	}
	near := func(p, q plane.Point) bool { return p.Distance(q) <= alikeWithin }
	low, high := a.Bounds(), b.Bounds()
	if !near(low.Min, high.Min) || !near(low.Max, high.Max) || a.Closed() != b.Closed() {
		return false
	}
	if !a.Closed() && (!near(a[0], b[0]) || !near(a[len(a)-1], b[len(b)-1])) {
		return false
	}
	return follows(a, b) && follows(b, a)
}

// parallel reports whether two lines have one direction, or the opposite one.
func parallel(a, b plane.Path) bool {
	across := a.StartDirection().Dot(b.StartDirection().Left())
	return math.Abs(across) <= alikeDirection
}

// follows reports whether every point of a path lies on another.
func follows(a, b plane.Path) bool {
	of := plane.NewTree(b)
	return !slices.ContainsFunc(a, func(p plane.Point) bool { return !of.Nearer(p, alikeWithin) })
}
