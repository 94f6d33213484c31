package source

import (
	"fmt"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: one number may be small and the sum of many large. What is worked out
// of all pieces together is counted here, before any of it is worked out, and what is too much
// is refused with the number and the most there may be. A garment has a few hundred of a
// kind; each bound is many times that, and keeps the time and the memory of all commands.

const (
	// mostFoldsInAll is the most tucks and pleats of all pieces, those in edges among them.
	mostFoldsInAll = 5000
	// mostLinesInAll is the most lines and notches of all pieces.
	mostLinesInAll = 2000
	// mostEdgesInAll is the most edges of all pieces.
	mostEdgesInAll = 8000
	// mostPointsInAll is the most points that the edges and lines of all pieces are given by.
	mostPointsInAll = 60_000
	// mostJoinedInAll is how many edges all seams name, each as often as it is named, and
	// mostSewnOnInAll how many trims, ruffles and bindings do, which have more to be told of each.
	mostJoinedInAll = 5000
	mostSewnOnInAll = 2000
	// mostCutInAll is the most pieces that are cut for one garment.
	mostCutInAll = 2000
	// moreInViews is how many times as much as a file may have it may have together with all its
	// views, each with what it has of the file: values, and what is counted here.
	moreInViews = 3
)

// ThinnedPoints is what may be done about too many points.
const ThinnedPoints = "a traced edge needs a point every 2 mm, or 1/16 in, where it bends, and no more"

// amount is how much there is of something, as it is counted.
type amount struct {
	what  string // "tucks and pleats"
	most  int
	hint  string
	n     int
	place fault.Place // of what was one too many
}

// amounts are what is counted of a Spec, or of several.
type amounts struct{ folds, lines, edges, points, joined, sewnOn, cut amount }

func noAmounts(times int) *amounts {
	const divide = "divide the file"
	return &amounts{
		folds:  amount{what: "tucks and pleats", most: times * mostFoldsInAll, hint: divide},
		lines:  amount{what: "lines and notches", most: times * mostLinesInAll, hint: divide},
		edges:  amount{what: "edges", most: times * mostEdgesInAll, hint: divide},
		points: amount{what: "points", most: times * mostPointsInAll, hint: ThinnedPoints + "; or divide the file"},
		joined: amount{what: "edges named by seams", most: times * mostJoinedInAll, hint: divide},
		sewnOn: amount{what: "edges named by trims, ruffles and bindings", most: times * mostSewnOnInAll, hint: divide},
		cut:    amount{what: "pieces to be cut for one garment", most: times * mostCutInAll, hint: "figures for several garments are made with --times; or divide the file"},
	}
}

// add counts so many more of what stands at a place.
func (a *amount) add(n int, at fault.Place) {
	if a.n <= a.most && a.n+n > a.most {
		a.place = at
	}
	a.n += n
}

// tooMuch are the faults of what there is too much of; it is in all views of a file, or in
// one.
func (a *amounts) tooMuch(whose string) fault.List {
	var faults fault.List
	for _, one := range []amount{a.folds, a.lines, a.edges, a.points, a.joined, a.sewnOn, a.cut} {
		if one.n > one.most {
			faults = append(faults, &fault.Fault{Place: one.place, Hint: one.hint,
				Cause: fmt.Sprintf("%s %s %s in all; at most %s are worked out", whose, wording.Thousands(one.n), one.what, wording.Thousands(one.most))})
		}
	}
	return faults
}

// tooMuchInViews is the fault of views that have too many values, where the file has so many; nil of
// none. It is found before the views are read.
func tooMuchInViews(each, views int) error {
	const most = moreInViews * maxValues
	if n := each * (1 + views); views > 0 && n > most {
		return &fault.Fault{Cause: fmt.Sprintf("the file and its views have %s values in all; at most %s are read", wording.Thousands(n), wording.Thousands(most)),
			Hint: ThinnedPoints + "; or divide the views among two files"}
	}
	return nil
}

// count counts what a Spec has.
func (a *amounts) count(s *Spec) {
	for i := range s.Pieces {
		a.countPiece(&s.Pieces[i])
	}
	for _, one := range s.Seams {
		a.joined.add(len(one.Sides[0])+len(one.Sides[1]), one.Place)
	}
	for _, one := range s.Trims {
		a.sewnOn.add(len(one.Along), one.Place)
	}
	for _, one := range s.Ruffles {
		a.sewnOn.add(len(one.Along), one.Place)
	}
	for _, one := range s.Bindings {
		a.sewnOn.add(len(one.Along), one.Place)
	}
}

func (a *amounts) countPiece(p *PieceSpec) {
	a.cut.add(p.Cut.Or(1), p.Place)
	a.edges.add(len(p.Edges), p.Place)
	for _, one := range p.Edges {
		a.points.add(len(one.Points.V), one.Place)
	}
	for _, one := range p.Lines {
		a.points.add(len(one.Points.V), one.Place)
		a.lines.add(1, one.Place)
	}
	for _, one := range p.Notches {
		a.lines.add(1, one.Place)
	}
	p.EachFolds(func(at fault.Place, n int) { a.folds.add(n, at) })
}

// EachFolds calls visit for each set of tucks or pleats of a piece, pleats in an edge among them,
// with where it stands and how many it has.
func (s *PieceSpec) EachFolds(visit func(at fault.Place, n int)) {
	for _, one := range s.Tucks {
		visit(one.Place, one.InAll())
	}
	for _, one := range s.PleatRows {
		visit(one.Place, one.Count.Or(1))
	}
	for _, one := range s.EdgePleats {
		visit(one.Place, one.Count.Or(1))
	}
}
