package garment

import (
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file: what a file says of the whole garment tells how the corners of its
// pieces come together. Two edges that a seam joins lie on each other, and two that are one
// side of a seam, or of one trim, ruffle or binding, follow each other.

// ties are all the edges that something joins.
type ties struct {
	seams [][2][]edgeOf              // the two sides of each seam, in the order of the file
	sides map[edgeOf]map[sideOf]bool // that an edge is part of
	along map[edgeOf]map[sideOf]bool // the trims, ruffles and bindings along it, numbered as seams of one side
	free  map[string][]Course        // edges that no seam joins and that do not lie on the fold, by their keys
}

// sideOf is a side of a seam, by their numbers.
type sideOf struct{ seam, side int }

// allTies returns what the file joins, and counts the points of that.
func (j *joiner) allTies() ties {
	t := ties{sides: map[edgeOf]map[sideOf]bool{}, along: map[edgeOf]map[sideOf]bool{}, free: map[string][]Course{}}
	for n, s := range j.spec.Seams {
		var both [2][]edgeOf
		for i, side := range s.Sides {
			both[i] = edgesOf(j.counted(s.Place, side))
			for _, e := range both[i] {
				put(t.sides, e, sideOf{n, i})
			}
		}
		t.seams = append(t.seams, both)
	}
	n := 0
	along := func(at fault.Place, names []source.Text) {
		for _, e := range edgesOf(j.counted(at, names)) {
			put(t.along, e, sideOf{seam: n})
		}
		n++
	}
	for _, s := range j.spec.Trims {
		along(s.Place, s.Along)
	}
	for _, s := range j.spec.Ruffles {
		along(s.Place, s.Along)
	}
	for _, s := range j.spec.Bindings {
		along(s.Place, s.Along)
	}
	for i := range j.Pieces {
		for k, e := range j.Pieces[i].Edges {
			if !e.OnFold && !t.sewn(edgeOf{&j.Pieces[i], k}) {
				t.free[e.Key] = append(t.free[e.Key], j.edgeCourse(&j.Pieces[i], k))
			}
		}
	}
	return t
}

// edgesOf returns the edges among courses.
func edgesOf(courses []Course) (all []edgeOf) {
	for _, c := range courses {
		if c.isEdge() {
			all = append(all, c.outlineEdge())
		}
	}
	return all
}

// put notes one more thing that an edge is part of.
func put(all map[edgeOf]map[sideOf]bool, e edgeOf, one sideOf) {
	if all[e] == nil {
		all[e] = map[sideOf]bool{}
	}
	all[e][one] = true
}

// joined reports whether a seam joins two edges with each other.
func (t ties) joined(a, b edgeOf) bool {
	for s := range t.sides[a] {
		if t.sides[b][sideOf{s.seam, 1 - s.side}] {
			return true
		}
	}
	return false
}

// sewn reports whether an edge is part of any seam.
func (t ties) sewn(a edgeOf) bool { return len(t.sides[a]) > 0 }

// together reports whether two edges are of one side of a seam, or something else is sewn
// along both.
func (t ties) together(a, b edgeOf) bool {
	return a != b && (share(t.sides[a], t.sides[b]) || share(t.along[a], t.along[b]))
}

// share reports whether two sets have something in common.
func share(a, b map[sideOf]bool) bool {
	for one := range a {
		if b[one] {
			return true
		}
	}
	return false
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
	for s := range t.sides[a] {
		for _, x := range t.seams[s.seam][1-s.side] {
			before, after := x.piece.Neighbours(x.edge)
			if t.joined(b, edgeOf{x.piece, after}) && smooth(x.piece, x.edge) || t.joined(b, edgeOf{x.piece, before}) && smooth(x.piece, before) {
				return false
			}
		}
	}
	return true
}

// smooth reports whether an edge goes on into the next without a corner.
func smooth(p *piece.Piece, edge int) bool { return math.Abs(p.Corners[edge].Turn) < piece.LeastTurn }
