package piece

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: where the work is a number times another, the product is bounded, for all
// pieces together, and reckoned before any of it is done. Each bound is many times what a
// garment comes to: a gown with 300 tucks, traced at every mm, has 600,000 of the 10,000,000.

const (
	// mostDrawnPoints is the most points that the outlines have once their curves are drawn.
	mostDrawnPoints = 150_000
	// mostPassed bounds how often a point of an outline is passed by what is laid over it: its
	// points times its lines, notches, tucks and pleats.
	mostPassed = 10_000_000
	// mostFollowed bounds how many points of edges and lines are followed by something else: for
	// each line along an edge those of that, for each set of tucks or pleats those of the edges
	// whose stitch lines its ends follow, and for each line or set those of the lines it runs to.
	mostFollowed = 100_000
	// mostCrossed bounds how often tucks or pleats cross others: those of a piece that run one way
	// times those that run another.
	mostCrossed = 10_000
)

// work is what has been worked out so far, of all pieces.
type work struct{ drawn, passed, followed, crossed int }

// within reports whether a piece whose outline is known can be worked out beside those before
// it, or notes why not.
func (f *Findings) within(piece *Piece, ps source.PieceSpec) bool {
	points := len(piece.Outline)
	over := len(ps.Lines) + len(ps.Notches)
	ps.EachFolds(func(_ fault.Place, n int) { over += n })
	was := f.work
	f.work.drawn += points
	f.work.passed += points * over
	f.work.followed += pointsFollowed(piece, ps)
	ok := true
	for _, one := range []struct {
		was, now, most int
		hint, cause    string
	}{
		{was.drawn, f.work.drawn, mostDrawnPoints, "give curves fewer points, or divide the file",
			"the outlines, as far as this piece, have %s points once their curves are drawn; at most %s are worked out"},
		{was.passed, f.work.passed, mostPassed, fewerPoints,
			"the pieces, as far as this one, have %s places to look at, the points of each times its lines, notches, tucks and pleats; at most %s are looked at"},
		{was.followed, f.work.followed, mostFollowed, fewerPoints,
			"the lines, tucks and pleats that follow an edge or run to a line, as far as those of this piece, have %s points there; at most %s are worked out"},
	} {
		if one.now > one.most {
			ok = false
			if one.was <= one.most { // it is told once
				f.Add(piece.Place, one.hint, one.cause, wording.Thousands(one.now), wording.Thousands(one.most))
			}
		}
	}
	return ok
}

// pointsFollowed counts the points of edges and lines that other lines, tucks and pleats of a piece follow
// or run to. Those of lines count as they are given.
func pointsFollowed(piece *Piece, ps source.PieceSpec) int {
	lines := map[string]int{}
	for _, one := range ps.Lines {
		lines[one.Key] = len(one.Points.V)
	}
	n := 0
	along := func(edges ...source.Text) {
		for _, name := range edges {
			if i := piece.EdgeNumber(name.V); name.Given() && i >= 0 {
				n += len(piece.Edges[i].Path)
			}
		}
	}
	for _, one := range ps.Lines {
		along(one.Along)
		n += lines[one.Beside.V] + lines[one.From.V] + lines[one.To.V]
	}
	ends := func(e source.EndSpec) {
		if e.Shape.V == source.EndFollow {
			along(append([]source.Text{e.Below}, e.Also...)...)
		}
		n += lines[e.From.V] + lines[e.To.V]
	}
	for _, one := range ps.Tucks {
		ends(one.End)
		n += lines[one.Beside.V]
	}
	for _, one := range ps.PleatRows {
		ends(one.End)
		n += lines[one.Beside.V]
	}
	return n
}

const fewerPoints = source.ThinnedPoints + "; or make it two pieces, or two files"

// checkCrossed refuses folds that cross each other too many times.
func checkCrossed(all []FoldGroup, found *Findings) bool {
	before := 0
	for _, f := range all {
		n := 0
		for _, r := range f.Rows {
			n += len(r.Folds)
		}
		if f.OnAxis {
			n *= 2
		}
		was := found.work.crossed
		found.work.crossed += before * n
		before += n
		if found.work.crossed > mostCrossed {
			if was <= mostCrossed { // it is told once
				found.Add(f.Rows[0].Place, "make fewer of those that run one way, or make it two pieces, or two files",
					"the tucks and pleats, as far as these, cross others %s times; at most %s are worked out", wording.Thousands(found.work.crossed), wording.Thousands(mostCrossed))
			}
			return false
		}
	}
	return true
}
