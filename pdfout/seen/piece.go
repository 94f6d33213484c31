package seen

import (
	"fmt"
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: the lines on joined pages must be those of the pieces, unbroken,
// and there must be no others.

const (
	// sampleStep is from one place that is looked at along a line to the next, in mm.
	sampleStep = 0.5
	// OffLine bounds how far a printed line may be off, in mm: half of what the eye can
	// tell, and more than what the pages of a sheet are off together.
	OffLine = 0.02
)

// Line is one stroke of a layer on the sheet.
type Line struct {
	Page   *LaidPage
	Tree   *plane.Tree
	Bounds plane.Box
	Path   Path
}

// Lines gathers the strokes of a layer.
func Lines(laid []LaidPage, layer string) []*Line {
	var all []*Line
	for i := range laid {
		p := &laid[i]
		for _, q := range p.Drawn(layer) {
			for _, part := range q.Parts {
				moved := make(plane.Path, len(part))
				for i, at := range part {
					moved[i] = at.Add(p.Step)
				}
				all = append(all, &Line{p, plane.NewTree(moved), moved.Bounds(), q})
			}
		}
	}
	return all
}

// Samples calls look for places along a path, its points included.
func Samples(p plane.Path, look func(at plane.Point, along float64) bool) {
	walked := 0.0
	for i := 1; i < len(p); i++ {
		l := p[i].Distance(p[i-1])
		n := max(1, math.Ceil(l/sampleStep))
		for k := 0.0; k < n; k++ {
			if !look(p[i-1].Toward(p[i], k/n), walked+l*k/n) {
				return
			}
		}
		walked += l
	}
	look(p[len(p)-1], walked)
}

// Moved returns a mark's path turned as the sheet is and moved.
func Moved(p plane.Path, turned bool, step plane.Point) plane.Path {
	q := make(plane.Path, len(p))
	for i, at := range p {
		if turned {
			at = plane.Point{X: -at.Y, Y: at.X}
		}
		q[i] = at.Add(step)
	}
	return q
}

// Lacks compares a piece, brought to its place, with what is printed:
// every place of every line is on some page within its joins, and on
// every page in whose window it lies. It returns what is wrong first, "" if
// nothing is.
func Lacks(laid []LaidPage, m mark.Marking, turned bool, step plane.Point) string {
	byPage := make([]map[mark.Role][]*Line, len(laid))
	for i := range laid {
		byPage[i] = map[mark.Role][]*Line{}
		for _, role := range mark.Roles() {
			byPage[i][role] = Lines(laid[i:i+1], role.String())
		}
	}
	wrong := ""
	for k, one := range m.Marks {
		lines := make([][]*Line, len(laid)) // of the mark's role, by page
		for i := range laid {
			lines[i] = byPage[i][one.Role]
		}
		Samples(Moved(one.Path, turned, step), func(at plane.Point, along float64) bool {
			within := false
			for i := range laid {
				page := &laid[i]
				if !page.Window.Grown(-OffLine).Holds(at) {
					continue
				}
				found := false
				for _, l := range lines[i] {
					found = found || l.Bounds.Grown(OffLine).Holds(at) && l.Tree.Distance(at, 1) <= OffLine
				}
				if !found {
					wrong = fmt.Sprintf("page %d lacks mark %d (%v %q) %.1f mm along, at %v", page.Number, k, one.Role, one.Name, along, at)
					return false
				}
				within = within || page.Core.Grown(OffLine).Holds(at)
			}
			if !within {
				wrong = fmt.Sprintf("mark %d (%v %q) is within the joins of no page %.1f mm along, at %v", k, one.Role, one.Name, along, at)
			}
			return within
		})
		if wrong != "" {
			return wrong
		}
	}
	return ""
}

// Strays returns the first printed place of a sheet that is on no line of its
// pieces, "" if there is none.
func Strays(laid []LaidPage, lines map[mark.Role][]*plane.Tree) string {
	wrong := ""
	for _, role := range mark.Roles() {
		for _, l := range Lines(laid, role.String()) {
			Samples(l.Tree.Path(), func(at plane.Point, _ float64) bool {
				for _, tree := range lines[role] {
					if tree.Distance(at, 1) <= OffLine {
						return true
					}
				}
				wrong = fmt.Sprintf("page %d has a %v at %v that is no line of its piece", l.Page.Number, role, at)
				return false
			})
		}
	}
	return wrong
}

// Find finds where on the sheet the piece lies. The last of a sheet of
// several pages lies where its bounds are those of what is printed and is no line
// of the pieces found before. Any other, which is whole on one page, lies where a
// printed line is its first line moved, and all its other lines are there as well.
func Find(laid []LaidPage, m mark.Marking, turned, last bool, found map[mark.Role][]*plane.Tree) (plane.Point, bool) {
	first := Moved(m.Marks[0].Path, turned, plane.Point{})
	if len(laid) > 1 && last {
		printed, meant := plane.EmptyBox(), plane.EmptyBox()
		for _, role := range mark.Roles() {
			for _, l := range Lines(laid, role.String()) {
				if !isOneOf(l.Tree.Path(), found[role]) {
					printed = printed.Union(l.Bounds)
				}
			}
		}
		for _, one := range m.Marks {
			meant = meant.Union(Moved(one.Path, turned, plane.Point{}).Bounds())
		}
		return printed.Min.Sub(meant.Min), true
	}
	for _, l := range Lines(laid, m.Marks[0].Role.String()) {
		step := l.Bounds.Min.Sub(first.Bounds().Min)
		if l.Bounds.Max.Distance(first.Bounds().Max.Add(step)) < OffLine && Lacks(laid, m, turned, step) == "" {
			return step, true
		}
	}
	return plane.Point{}, false
}

// isOneOf reports whether a printed path lies along one of some lines.
func isOneOf(path plane.Path, lines []*plane.Tree) bool {
	for _, tree := range lines {
		along := true
		Samples(path, func(at plane.Point, _ float64) bool {
			along = tree.Distance(at, 1) <= OffLine
			return along
		})
		if along {
			return true
		}
	}
	return false
}
