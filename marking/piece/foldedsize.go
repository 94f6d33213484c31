package piece

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. What a piece measures with its folds in depends on where it is
// measured, for below its end a fold is open. So it is told at a level that has a name: at
// the end of folds, with all of them in, and at the edge they would run on to, where they
// are open. One whose folds all run from edge to edge has one size. It is that of the piece
// as cut; of one on the fold, that of half of it.

// SizeAt is how far it is across the folds of a piece at some level.
type SizeAt struct {
	MM   float64
	Rows []FoldRow // at whose end it is measured, or which are open there
	Open []string  // the edges at which it is measured, where they are open; none at their end
}

// FoldedSizes returns what a piece measures with its folds in, across and up as it is drawn,
// in one size or at every level where it matters; none in a direction in which it has no folds,
// or for a piece that has no one finished shape.
func (p *Piece) FoldedSizes() (across, up []SizeAt) {
	if p.FinishedOutline == nil {
		return nil, nil
	}
	var sideways, upright []FoldRow // by the way their folds lie beside each other
	for _, r := range p.FoldRows() {
		if out := r.Base.Out; math.Abs(out.X) >= math.Abs(out.Y) {
			sideways = append(sideways, r)
		} else {
			upright = append(upright, r)
		}
	}
	box := p.FinishedOutline.Bounds()
	return p.sizes(sideways, box.Width()), p.sizes(upright, box.Height())
}

// sizes returns what a piece measures across some rows, whole where none of them ends on it.
func (p *Piece) sizes(rows []FoldRow, whole float64) []SizeAt {
	if len(rows) == 0 {
		return nil
	}
	var all []SizeAt
	rows = slices.DeleteFunc(rows, func(r FoldRow) bool { return !r.Folds[0].End.Given })
	for _, r := range rows {
		if at, ok := p.sizeAtEnd(r); ok {
			all = withSize(all, at)
		}
	}
	for _, r := range rows {
		for end := range r.Folds[0].End.Levels() {
			if at, ok := p.sizeBeyond(r, end); ok {
				all = withSize(all, at)
			}
		}
	}
	if len(all) == 0 {
		return []SizeAt{{MM: whole}}
	}
	return all
}

// withSize adds a size to others, or its row to that of the same size at the same place.
func withSize(all []SizeAt, at SizeAt) []SizeAt {
	for i, have := range all {
		if math.Abs(have.MM-at.MM) < LeastLine && slices.Equal(have.Open, at.Open) {
			all[i].Rows = append(all[i].Rows, at.Rows...)
			return all
		}
	}
	return append(all, at)
}

// sizeAtEnd returns what a piece measures where the first fold of a row ends, from one edge to
// the other; false where there the folds do not all lie on one stretch of cloth, as where legs part.
func (p *Piece) sizeAtEnd(r FoldRow) (SizeAt, bool) {
	shortest := slices.MinFunc(r.Folds, func(a, b Fold) int { return cmp.Compare(a.End.down*a.End.V, b.End.down*b.End.V) })
	level := shortest.End.V - 2*shortest.End.down*SamePoint // they are still in
	if slices.ContainsFunc(r.Folds, func(f Fold) bool { return !f.End.stitched(level) }) {
		return SizeAt{}, false // between slanting lines nowhere are all of them in
	}
	chords := Frame{r.Base.Origin, r.Base.Along, r.Base.Out}.Chords(p.Tree, level)
	on := slices.IndexFunc(chords, func(us Stretch) bool {
		return !slices.ContainsFunc(r.Folds, func(f Fold) bool { return !us.within(p.stitchingDrawn(f)) })
	})
	if on < 0 {
		return SizeAt{}, false
	}
	return SizeAt{MM: p.FinishedLength(r.Base.Crosswise(chords[on], level)), Rows: []FoldRow{r}}, true
}

// sizeBeyond returns what a piece measures at the edges that the folds of a row would run on
// to, below their ends or, at 1, above where they begin; false where those run along the folds
// rather than across.
func (p *Piece) sizeBeyond(r FoldRow, end int) (SizeAt, bool) {
	at := SizeAt{Rows: []FoldRow{r}}
	var line plane.Path
	for _, f := range r.Folds {
		cloth, ok := p.clothOver(r, f)
		if !ok {
			return at, false
		}
		e := p.nearestEdge(cloth[end])
		if !slices.Contains(at.Open, e.Key) {
			at.Open = append(at.Open, e.Key)
			line = append(line, e.Path...)
		}
	}
	us, vs := r.Base.Extent(line)
	at.MM = p.FinishedLength(r.Base.Crosswise(us, (vs.From+vs.To)/2))
	return at, us.To-us.From > vs.To-vs.From
}

// nearestEdge is the edge whose cutting line lies nearest to a place.
func (p *Piece) nearestEdge(q plane.Point) Edge {
	return slices.MinFunc(p.Edges, func(a, b Edge) int {
		_, _, toA := a.Path.Nearest(q)
		_, _, toB := b.Path.Nearest(q)
		return cmp.Compare(toA, toB)
	})
}
