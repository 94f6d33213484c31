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
	// mostDrawn is the most points that the outlines have once their curves are drawn.
	mostDrawn = 300_000
	// mostPassed bounds how often a point of an outline is passed by what is laid over it: its
	// points times its lines, notches, tucks and pleats.
	mostPassed = 10_000_000
	// mostBeside bounds how many points of edges have a line drawn beside them: for each line
	// along an edge those of that.
	mostBeside = 100_000
	// mostCrossed bounds how often tucks or pleats cross others: those of a piece that run one way
	// times those that run another.
	mostCrossed = 10_000
)

// work is what has been worked out so far, of all pieces.
type work struct{ drawn, passed, beside, crossed int }

// within reports whether a piece whose outline is known can be worked out beside those before
// it, or notes why not.
func (f *Findings) within(piece *Piece, ps source.PieceSpec) bool {
	points := len(piece.Outline)
	over := len(ps.Lines) + len(ps.Notches)
	ps.EachFolds(func(_ fault.Place, n int) { over += n })
	was := f.work
	f.work.drawn += points
	f.work.passed += points * over
	for _, one := range ps.Lines {
		if i := piece.EdgeNumber(one.Along.V); one.Along.Given() && i >= 0 {
			f.work.beside += len(piece.Edges[i].Path)
		}
	}
	ok := true
	for _, one := range []struct {
		was, now, most int
		hint, cause    string
	}{
		{was.drawn, f.work.drawn, mostDrawn, "give curves fewer points, or divide the file",
			"the outlines, as far as this piece, have %s points once their curves are drawn; at most %s are worked out"},
		{was.passed, f.work.passed, mostPassed, fewerPoints,
			"the pieces, as far as this one, have %s places to look at, the points of each times its lines, notches, tucks and pleats; at most %s are looked at"},
		{was.beside, f.work.beside, mostBeside, fewerPoints,
			"the lines along edges, as far as those of this piece, run along %s points; at most %s are worked out"},
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
