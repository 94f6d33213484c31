package marking

import (
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
// allowances of two edges leave nothing between them.
func checkSewn(piece *Piece, found *findings) bool {
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
		// its end: next to an edge that is not sewn, or at a step.
		if c, meet := piece.cornerCrossing(before, after, lines); meet {
			sewn[before].to, sewn[after].from = c.A, c.B
		}
	}
	ok := true
	for i := range piece.Edges {
		e := &piece.Edges[i]
		left := sewn[i].to - sewn[i].from
		if left < leastSeam && left < e.Path.Length()-leastLine {
			before, after := piece.neighbours(i)
			found.add(e.place, "make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it",
				"the allowances of %q and %q leave %s of this edge, which is %s long, to be sewn",
				piece.Edges[before].Key, piece.Edges[after].Key, found.nothingOr(left), found.mm(e.Path.Length()))
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

// cornerCrossing returns where the lines of two consecutive edges cross at the
// corner between them: A along the first, B along the second. Elsewhere they
// may cross again.
func (p *Piece) cornerCrossing(before, after int, lines []*plane.Tree) (plane.Crossing, bool) {
	a, b := p.Edges[before], p.Edges[after]
	// Where each line lies beside the end of its edge.
	footA := a.Path[len(a.Path)-1].Add(a.Path.EndDirection().Left().Mul(a.Allowance))
	footB := b.Path[0].Add(b.Path.StartDirection().Left().Mul(b.Allowance))
	reach := p.cornerReach(before, after, 0) + leastLine
	var best plane.Crossing
	nearest := 2 * reach
	for _, c := range plane.Crossings(lines[before], lines[after]) {
		if away := c.At.Distance(footA) + c.At.Distance(footB); away < nearest {
			best, nearest = c, away
		}
	}
	return best, nearest < 2*reach
}

// checkBetween looks whether each seam keeps clear of the allowances of all
// other edges. A seam may lie beside its neighbour's allowance only at the
// corner they share, where unequal allowances leave a step.
func checkBetween(piece *Piece, found *findings) bool {
	n := len(piece.Edges)
	edges, seams := make([]*plane.Tree, n), make([]*plane.Tree, n)
	for i, e := range piece.Edges {
		edges[i], seams[i] = plane.NewTree(e.Path), plane.NewTree(e.Sewn)
	}
	ok := true
	for i := range piece.Edges {
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
// of edge j. Two paths that do not cross are nearest at a point of one of them.
func (p *Piece) intrudes(i, j int, seams, edges []*plane.Tree) (plane.Point, bool) {
	reach := p.Edges[j].Allowance - leastLine
	if p.Edges[i].Allowance == 0 || reach <= 0 || !seams[i].Bounds().Grown(reach).Meets(edges[j].Bounds()) {
		return plane.Point{}, false
	}
	var corners []plane.Point
	if _, after := p.neighbours(i); after == j {
		corners = append(corners, p.Edges[j].Path[0])
	}
	if before, _ := p.neighbours(i); before == j {
		corners = append(corners, p.Edges[i].Path[0])
	}
	step := 1.5 * max(p.Edges[i].Allowance, p.Edges[j].Allowance)
	beside := func(q plane.Point) bool {
		return slices.ContainsFunc(corners, func(c plane.Point) bool { return c.Distance(q) < step })
	}
	for _, pair := range [][2]*plane.Tree{{seams[i], edges[j]}, {edges[j], seams[i]}} {
		for _, q := range pair[0].Path() {
			if pair[1].Nearer(q, reach) && !beside(q) {
				return q, true
			}
		}
	}
	return plane.Point{}, false
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
