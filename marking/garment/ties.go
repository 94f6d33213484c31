package garment

import (
	"slices"

	"tuckmark/marking/piece"
)

// Rules of this file: what a file says of the whole garment tells how the corners of its
// pieces come together. Two edges that a seam joins lie on each other, and two that are one
// side of a seam, or of one trim, ruffle or binding, follow each other.

// ties are all the edges that something joins.
type ties struct {
	seams [][2][]edgeOf // the two sides of each seam, in the order of the file
	along [][]edgeOf    // what each trim, ruffle and binding runs along
}

// allTies returns what the file joins.
func (j joiner) allTies() ties {
	edges := func(courses []Course) (all []edgeOf) {
		for _, c := range courses {
			if c.isEdge() {
				all = append(all, c.outlineEdge())
			}
		}
		return all
	}
	var t ties
	for _, s := range j.spec.Seams {
		t.seams = append(t.seams, [2][]edgeOf{edges(j.courses(s.Sides[0])), edges(j.courses(s.Sides[1]))})
	}
	for _, s := range j.spec.Trims {
		t.along = append(t.along, edges(j.courses(s.Along)))
	}
	for _, s := range j.spec.Ruffles {
		t.along = append(t.along, edges(j.courses(s.Along)))
	}
	for _, s := range j.spec.Bindings {
		t.along = append(t.along, edges(j.courses(s.Along)))
	}
	return t
}

// freeEdges returns the edges that no seam joins and that do not lie on the fold.
func (j joiner) freeEdges() (all []Course) {
	for i := range j.Pieces {
		for k, e := range j.Pieces[i].Edges {
			if !e.OnFold && !j.ties.sewn(edgeOf{&j.Pieces[i], k}) {
				all = append(all, j.edgeCourse(&j.Pieces[i], k))
			}
		}
	}
	return all
}

// joined reports whether a seam joins two edges with each other.
func (t ties) joined(a, b edgeOf) bool {
	return slices.ContainsFunc(t.seams, func(s [2][]edgeOf) bool {
		return slices.Contains(s[0], a) && slices.Contains(s[1], b) || slices.Contains(s[0], b) && slices.Contains(s[1], a)
	})
}

// sewn reports whether an edge is part of any seam.
func (t ties) sewn(a edgeOf) bool { return len(t.partners(a)) > 0 }

// partners returns the edges that seams join with one.
func (t ties) partners(a edgeOf) (all []edgeOf) {
	for _, s := range t.seams {
		for i, side := range s {
			if slices.Contains(side, a) {
				all = append(all, s[1-i]...)
			}
		}
	}
	return all
}

// together reports whether two edges are of one side of a seam, or something else is sewn
// along both.
func (t ties) together(a, b edgeOf) bool {
	both := func(all []edgeOf) bool { return a != b && slices.Contains(all, a) && slices.Contains(all, b) }
	return slices.ContainsFunc(t.along, both) ||
		slices.ContainsFunc(t.seams, func(s [2][]edgeOf) bool { return both(s[0]) || both(s[1]) })
}

// atCentre reports whether an edge is the middle of something: the fold of the cloth, or
// what is joined with its own mirror image.
func (t ties) atCentre(a edgeOf) bool { return a.drawn().OnFold || t.joined(a, a) }

// setBetween reports whether two edges that follow each other are sewn to two others that
// do not go on into each other, as the raglan lines of front and back are to a sleeve: then
// a corner is meant between them.
func (t ties) setBetween(a, b edgeOf) bool {
	if !t.sewn(a) || !t.sewn(b) || t.together(a, b) {
		return false
	}
	for _, x := range t.partners(a) {
		for _, y := range t.partners(b) {
			if x.goesOnInto(y) || y.goesOnInto(x) {
				return false
			}
		}
	}
	return true
}

// goesOnInto reports whether the next edge of the piece is the other one, and they make no
// corner.
func (e edgeOf) goesOnInto(next edgeOf) bool {
	_, after := e.piece.Neighbours(e.edge)
	turn := e.piece.Corners[e.edge].Turn
	return e.piece == next.piece && after == next.edge && -piece.LeastTurn < turn && turn < piece.LeastTurn
}
