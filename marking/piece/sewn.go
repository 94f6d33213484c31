package piece

import (
	"fmt"
	"math"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. What is sewn, and the steps between, go round the piece as
// one ring, which crosses itself nowhere. Allowances that leave nothing between them
// are a mistake to be told: a strap that is all seam cannot be sewn.

// LeastSeam is the length, in mm, below which nobody could sew a seam.
const LeastSeam = 2

// checkSewn takes the sewn part of every line, as the corners have it, and finds
// the places where the allowances of two edges leave nothing between them.
func checkSewn(piece *Piece, found *Findings) bool {
	ok := true
	for i := range piece.Edges {
		e, sewn := &piece.Edges[i], piece.Sewn(i)
		left := sewn.To - sewn.From
		if left < LeastSeam && left < e.Given.Length()-LeastLine {
			before, after := piece.Neighbours(i)
			allowances := fmt.Sprintf("the allowances of %q and %q leave", piece.Edges[before].Key, piece.Edges[after].Key)
			if before == after {
				allowances = fmt.Sprintf("the allowance of %q leaves", piece.Edges[before].Key)
			}
			found.Add(e.Place, "make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it"+usualIn(piece.Edges[before], piece.Edges[after])+piece.tiny(found),
				"%s %s of this edge, which is %s long, to be sewn", allowances, found.NothingOr(left), found.length(e.Given.Length()))
			ok = false
			continue
		}
		e.Sewn = e.Given
		if piece.DrawnTo == source.DrawnToCutting {
			e.Sewn = piece.rulings[i].line.Path().Between(sewn.From, sewn.To)
		}
	}
	return ok && checkRing(piece, found) && checkSteps(piece, found)
}

// NothingOr prints a length, or says that it is none.
func (f *Findings) NothingOr(v float64) string {
	if v < LeastLine {
		return "nothing"
	}
	return f.length(v)
}

// checkRing chains the seams to one ring and looks whether it crosses itself. It
// keeps the ring.
func checkRing(piece *Piece, found *Findings) bool {
	ring, edges := piece.ring()
	piece.seams = plane.NewTree(ring)
	at, i, j, crosses := plane.SelfCrossing(piece.seams)
	if !crosses {
		return true
	}
	if edges[i] == edges[j] {
		found.meetsItself(piece.rulings[edges[i]].inset, insideEdge, at)
	} else {
		reportMeeting(piece, min(edges[i], edges[j]), max(edges[i], edges[j]), at, found)
	}
	return false
}

// checkSteps looks whether the seam with the lesser allowance at a step comes out of
// the wider allowance before it ends. Where it does not, the next seam begins in there.
// Only where the outline turns out of the piece does it lead in.
func checkSteps(piece *Piece, found *Findings) bool {
	ok := true
	for i, c := range piece.Corners {
		before, after := piece.Neighbours(i)
		wide, narrow := i, after
		_, next := piece.Neighbours(narrow)
		q := piece.Edges[narrow].Sewn[len(piece.Edges[narrow].Sewn)-1]
		if piece.Edges[i].Allowance < piece.Edges[after].Allowance {
			wide, narrow, next = after, i, before
			q = piece.Edges[narrow].Sewn[0]
		}
		if c.Kind != CornerStep || c.Turn <= 0 {
			continue
		}
		e := piece.Edges[wide]
		if _, along, away := e.Path.Nearest(q); away < e.Allowance-LeastLine &&
			LeastLine < along && along < e.Path.Length()-LeastLine {
			reportMeeting(piece, min(wide, next), max(wide, next), q, found)
			ok = false
		}
	}
	return ok
}

// ring returns the seams of all edges as one closed path, with the edge of each of
// its segments. A step counts with the wider allowance beside it.
func (p *Piece) ring() (ring plane.Path, edges []int) {
	for i, e := range p.Edges {
		before, _ := p.Neighbours(i)
		for k, q := range e.Sewn {
			of := i
			if k == 0 && p.Edges[before].Allowance > e.Allowance {
				of = before
			}
			if n := len(ring); n > 0 && k == 0 {
				if q.Distance(ring[n-1]) < Rounding {
					continue
				}
			}
			if len(ring) > 0 {
				edges = append(edges, of)
			}
			ring = append(ring, q)
		}
	}
	last := len(p.Edges) - 1
	if ring[len(ring)-1].Distance(ring[0]) < Rounding {
		ring[len(ring)-1] = ring[0]
		return ring, edges
	}
	of := 0
	if p.Edges[last].Allowance > p.Edges[0].Allowance {
		of = last
	}
	return append(ring, ring[0]), append(edges, of)
}

// reportMeeting notes that the allowances of two edges leave nothing between them, where the
// wider of the two is given: it is more likely the one that is wrong.
func reportMeeting(piece *Piece, i, j int, at plane.Point, found *Findings) {
	if piece.Edges[j].Allowance > piece.Edges[i].Allowance {
		i, j = j, i
	}
	a, b := piece.Edges[i], piece.Edges[j]
	before, after := piece.Neighbours(i)
	if j == before || j == after {
		found.Add(a.Place, "make the allowances narrower, or the piece wider there"+usualIn(a, b),
			"the allowances of %q and %q, %s and %s, leave nothing between them at %s",
			a.Key, b.Key, found.Written(a.Allowance), found.Written(b.Allowance), found.point(at))
		return
	}
	width := math.Inf(1)
	first, second := plane.NewTree(a.Path), plane.NewTree(b.Path)
	for _, q := range a.Path {
		width = second.Distance(q, width)
	}
	for _, q := range b.Path {
		width = first.Distance(q, width)
	}
	found.Add(a.Place, "make the allowances narrower, or the piece wider there"+usualIn(a, b),
		"the allowances of %q and %q, %s and %s, leave nothing between them at %s: the edges come within %s of each other",
		a.Key, b.Key, found.Written(a.Allowance), found.Written(b.Allowance), found.point(at), found.length(width))
}
