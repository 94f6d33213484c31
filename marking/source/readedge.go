package source

import (
	"fmt"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: the outline of a piece is made of edges with points of their own, or
// it is a rectangle, whose four sides are edges by themselves, or it is drawn. What else an
// edge has, an allowance or a hem, is written in the same way of all.

// edges reads the edges of a piece, which it may have from a drawing.
func (t *fileTable) edges(drawn *drawnPiece) []EdgeSpec {
	if t.has("rectangle") {
		return t.rectangle()
	}
	if drawn != nil && len(drawn.edges) == 0 {
		return nil // its names are missing, which is told
	}
	if drawn != nil {
		return t.withoutPoints(drawn.edges, "the outline has no such edge",
			"cannot stand in a piece with \"outline\", whose edges run as they are drawn",
			"leave it out, or leave the outline out and give every edge its points")
	}
	hint := fmt.Sprintf("write [%s.edge.neck], or another name, and its points below it", t.place.Key)
	if other := wording.Nearest(t.name, t.outlined); other != "" {
		hint = wording.DidYouMean(other) + " Otherwise " + hint
	}
	otherwise := slices.ContainsFunc(t.meant, func(key string) bool { return key == "rectangle" || key == "outline" || key == "like" })
	if !otherwise && !slices.Contains(t.partial, t.name) {
		t.needSome("edge", hint)
	}
	return each(t, "edge", (*fileTable).edge)
}

func (t *fileTable) edge() EdgeSpec {
	t.know(edgeKeys...)
	t.need("points", pointsHint)
	e := t.edgeAsSewn()
	e.Points = t.points("points")
	e.Redrawn = t.spot.child("points").isOver()
	e.Smooth = t.yes("smooth")
	e.Centre = t.centre()
	t.arc(e.Points, e.Centre)
	return e
}

// edgeAsSewn reads what an edge has besides its course.
func (t *fileTable) edgeAsSewn() EdgeSpec {
	if t.has("hem") {
		t.refuseBeside("allowance", "hem", "a hem stands in place of a seam allowance: leave one of them out")
	} else {
		t.refuseWithout("turn", "hem", "turn is what is folded under at the edge of a hem: give the depth of the hem too")
	}
	return EdgeSpec{
		Key:       t.name,
		Place:     t.place,
		Allowance: t.length("allowance", fromZero),
		Hem:       t.length("hem", aboveZero),
		Turn:      t.length("turn", fromZero),
		Marked:    t.flag("marked"),
	}
}

const rectangleForm = `write how far it goes across, then up: rectangle = ["2 1/4", 8]`

// sides are the edges of a rectangle, in order round it from the corner that is measured
// from, and the corners they run from and to: how many times the rectangle across and up.
var sides = [...]struct {
	name     string
	from, to plane.Point
}{
	{"bottom", plane.Point{X: 0, Y: 0}, plane.Point{X: 1, Y: 0}},
	{"right", plane.Point{X: 1, Y: 0}, plane.Point{X: 1, Y: 1}},
	{"top", plane.Point{X: 1, Y: 1}, plane.Point{X: 0, Y: 1}},
	{"left", plane.Point{X: 0, Y: 1}, plane.Point{X: 0, Y: 0}},
}

// rectangle reads a piece that is one: its size, and what its edges have besides.
func (t *fileTable) rectangle() []EdgeSpec {
	t.refuseBeside("rectangle", "outline", "an outline that is drawn has edges of its own: leave one of them out")
	size := t.pair("rectangle", "length", rectangleForm, aboveZero) // across, then up
	edges := make([]EdgeSpec, len(sides))
	for i, side := range sides {
		at := size.Place // which may be in the file that this one is like
		at.Key = t.place.Under("edge").Under(side.name).Key
		points := plane.Path{{X: side.from.X * size.V.X, Y: side.from.Y * size.V.Y}, {X: side.to.X * size.V.X, Y: side.to.Y * size.V.Y}}
		edges[i] = EdgeSpec{Key: side.name, Place: at, Points: pointsOn(points, size.Place)}
	}
	return t.withoutPoints(edges, "a rectangle has no such edge",
		"cannot stand in a piece with \"rectangle\", whose edges are straight and run from corner to corner",
		"leave it out, or leave rectangle out and give every edge its points")
}

// withoutPoints reads what edges have besides their course, which is known. The words are for
// one that is none of them, and for one that is given a course.
func (t *fileTable) withoutPoints(edges []EdgeSpec, noSuch, noCourse, hint string) []EdgeSpec {
	var known []string
	for _, e := range edges {
		known = append(known, e.Key)
	}
	for _, one := range t.named("edge") {
		i := slices.Index(known, one.name)
		if i < 0 {
			hint := "its edges are " + wording.Listed(known, "and")
			if near := wording.Nearest(one.name, known); near != "" {
				hint = wording.DidYouMean(near)
			}
			t.report(one.place, noSuch, hint)
			continue
		}
		one.know("allowance", "hem", "turn", "marked", "points", "smooth", "centre")
		for _, key := range []string{"points", "smooth", "centre"} {
			if one.has(key) {
				one.report(one.at(key), noCourse, hint)
			}
		}
		sewn := one.edgeAsSewn()
		sewn.Points = edges[i].Points
		edges[i] = sewn
	}
	return edges
}
