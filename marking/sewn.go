package marking

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. The sewn part of a stitch line lies between the stitch
// lines of the two neighbours. Allowances that leave nothing between them are a
// mistake to be told: a strap that is all seam cannot be sewn.

// leastSeam is the length, in mm, below which nobody could sew a seam.
const leastSeam = 2

// checkSewn finds the sewn part of every line, and the places where the
// allowances of two edges leave nothing between them. beside says which part of
// each line lies beside its edge.
func checkSewn(piece *Piece, beside []stretch, found *findings) bool {
	n := len(piece.Edges)
	lines := make([]*plane.Tree, n)
	sewn := make([]stretch, n)
	for i, e := range piece.Edges {
		lines[i] = plane.NewTree(e.Line)
		sewn[i] = stretch{0, lines[i].Length()}
	}
	for before := range piece.Edges {
		_, after := piece.neighbours(before)
		// Where the two lines do not meet at their corner, each is sewn to
		// its end.
		reach := cornerReach(piece.turn(before, after), piece.Edges[before].Allowance, piece.Edges[after].Allowance) + leastLine
		if c, meet := nearestCrossing(lines[before], lines[after], beside[before].to, beside[after].from, reach); meet {
			sewn[before].to, sewn[after].from = c.A, c.B
		}
	}
	ok := true
	for i := range piece.Edges {
		e := &piece.Edges[i]
		left := sewn[i].to - sewn[i].from
		if left < leastSeam && left < e.Path.Length()-leastLine {
			before, after := piece.neighbours(i)
			allowances := fmt.Sprintf("the allowances of %q and %q leave", piece.Edges[before].Key, piece.Edges[after].Key)
			if before == after {
				allowances = fmt.Sprintf("the allowance of %q leaves", piece.Edges[before].Key)
			}
			found.add(e.place, "make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it",
				"%s %s of this edge, which is %s long, to be sewn", allowances, found.nothingOr(left), found.mm(e.Path.Length()))
			ok = false
			continue
		}
		e.Sewn = e.Line.Between(sewn[i].from, sewn[i].to)
	}
	return ok && checkBetween(piece, found)
}

// nothingOr prints a length, or says that it is none.
func (f *findings) nothingOr(v float64) string {
	if v < leastLine {
		return "nothing"
	}
	return f.mm(v)
}

// checkBetween looks whether each seam keeps clear of the allowances of all
// edges, its own among them, into which a straight run-out may lead. A seam may
// lie within its neighbour's allowance only at the corner they share, and only
// where that does not point out of the piece: there unequal allowances leave a
// step, or one seam passes the corner nearer than the other.
func checkBetween(piece *Piece, found *findings) bool {
	n := len(piece.Edges)
	edges, seams := make([]*plane.Tree, n), make([]*plane.Tree, n)
	for i, e := range piece.Edges {
		edges[i], seams[i] = plane.NewTree(e.Path), plane.NewTree(e.Sewn)
	}
	ok := true
	for i, e := range piece.Edges {
		if at, meet := piece.intrudes(i, i, seams, edges); meet {
			found.meetsItself(e.inset(i), at)
			ok = false
		}
		for j := i + 1; j < n; j++ {
			at, meet := piece.intrudes(i, j, seams, edges)
			if !meet {
				at, meet = piece.intrudes(j, i, seams, edges)
			}
			if meet {
				reportMeeting(piece, i, j, at, edges, found)
				ok = false
			}
		}
	}
	return ok
}

// intrudes returns a place where the seam of edge i lies within the allowance
// of edge j, or crosses its seam and is not its neighbour.
func (p *Piece) intrudes(i, j int, seams, edges []*plane.Tree) (plane.Point, bool) {
	reach := p.Edges[j].Allowance - leastLine
	if p.Edges[i].Allowance == 0 || reach <= 0 || !seams[i].Bounds().Grown(reach).Meets(edges[j].Bounds()) {
		return plane.Point{}, false
	}
	var places []plane.Point
	for _, q := range seams[i].Path() {
		if n := len(places); n == 0 || q.Distance(places[n-1]) > leastLine {
			places = append(places, q)
		}
	}
	for at := look; at < seams[i].Length(); at += look {
		places = append(places, seams[i].At(at))
	}
	steps, points := p.sharedCorners(i, j)
	reachOfStep := 1.5 * max(p.Edges[i].Allowance, p.Edges[j].Allowance)
	var atCorner []plane.Point
	for _, q := range places {
		near := func(c plane.Point) bool { return c.Distance(q) < reachOfStep }
		switch {
		case !edges[j].Nearer(q, reach) || slices.ContainsFunc(steps, near) || i != j && !besideEdge(edges[j], q):
		case slices.ContainsFunc(points, near):
			atCorner = append(atCorner, q)
		default:
			return q, true // a place away from the corner tells a maker most
		}
	}
	if len(atCorner) > 0 {
		return atCorner[0], true
	}
	before, after := p.neighbours(i)
	if c := plane.Crossings(seams[i], seams[j]); len(c) > 0 && j != i && j != before && j != after {
		return c[0].At, true
	}
	return plane.Point{}, false
}

// look is how far apart, in mm, a seam is looked at between its points. Between
// two such places it may come nearer to an edge by a few hundredths at most.
const look = 1.0

// sharedCorners returns the corners that two edges share: those at which there
// may be a step, and those that point out of the piece.
func (p *Piece) sharedCorners(i, j int) (steps, points []plane.Point) {
	for _, pair := range [][2]int{{i, j}, {j, i}} {
		if _, after := p.neighbours(pair[0]); after != pair[1] {
			continue
		}
		corner := p.Edges[pair[1]].Path[0]
		if p.turn(pair[0], pair[1]) > leastTurn {
			points = append(points, corner)
		} else {
			steps = append(steps, corner)
		}
	}
	return steps, points
}

// besideEdge reports whether a place of the piece lies on the cloth beside an
// edge, so that the allowance there may hold it: not across a slit that the edge
// is one side of, nor past an end of the edge, where the cloth lies beside its
// neighbour.
func besideEdge(edge *plane.Tree, q plane.Point) bool {
	foot, along := edge.Nearest(q)
	if along < rounding || along > edge.Length()-rounding {
		return false
	}
	// On a corner the edge has two directions; their middle tells the sides.
	last := foot.Sub(edge.At(along - leastLine)).Unit()
	next := edge.At(along + leastLine).Sub(foot).Unit()
	return last.Add(next).Cross(q.Sub(foot)) > 0
}

func reportMeeting(piece *Piece, i, j int, at plane.Point, edges []*plane.Tree, found *findings) {
	a, b := piece.Edges[i], piece.Edges[j]
	before, after := piece.neighbours(i)
	if j == before || j == after {
		found.add(a.place, "make the allowances narrower, or the piece wider there",
			"the allowances of %q and %q, %s and %s, leave nothing between them at %s",
			a.Key, b.Key, found.given(a.Allowance), found.given(b.Allowance), found.point(at))
		return
	}
	width := math.Inf(1)
	for _, q := range a.Path {
		width = edges[j].Distance(q, width)
	}
	for _, q := range b.Path {
		width = edges[i].Distance(q, width)
	}
	found.add(a.place, "make the allowances narrower, or the piece wider there",
		"the allowances of %q and %q, %s and %s, leave nothing between them at %s: the edges come within %s of each other",
		a.Key, b.Key, found.given(a.Allowance), found.given(b.Allowance), found.point(at), found.mm(width))
}
