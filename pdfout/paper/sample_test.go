package paper_test

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// The pieces of these tests are drawn here by hand, in mm: shapes as a child's
// clothes have them, with every role on some piece.

// edge is a mark of the outline or near it.
func edge(role mark.Role, name string, points ...plane.Point) mark.Mark {
	return mark.Mark{Role: role, Name: name, Path: points}
}

// outlineOf chains the outline edges of a piece.
func outlineOf(marks []mark.Mark) plane.Path {
	var p plane.Path
	for _, m := range marks {
		for _, q := range m.Path {
			if len(p) == 0 || p[len(p)-1] != q {
				p = append(p, q)
			}
		}
	}
	return p
}

// rectangle is a piece of a width and height, with a seam line round.
func rectangle(key, name string, w, h float64, notes ...string) mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	m := mark.Marking{Key: key, Name: name, Notes: notes, Outline: plane.Path{p(0, 0), p(w, 0), p(w, h), p(0, h), p(0, 0)}}
	m.Marks = []mark.Mark{
		edge(mark.Cut, "lower edge", p(0, 0), p(w, 0)),
		edge(mark.Cut, "", p(w, 0), p(w, h)),
		edge(mark.Cut, "upper edge", p(w, h), p(0, h)),
		edge(mark.Cut, "", p(0, h), p(0, 0)),
		edge(mark.Stitch, "seam", p(6, 6), p(w-6, 6), p(w-6, h-6), p(6, h-6), p(6, 6)),
	}
	return m
}
