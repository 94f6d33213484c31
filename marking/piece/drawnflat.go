package piece

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A piece drawn flat has room for its folds, and their lines are laid
// as they are asked for. It is folded only to know what it measures when it is finished:
// group by group, what is folded later lying where the earlier folds take it.

// foldDrawnFlat lays the rows of a piece that is drawn flat, and folds it.
func foldDrawnFlat(piece *Piece, all []FoldGroup, found *Findings) (made madeFolds, ok bool) {
	made.flat, ok = piece.AsDrawn, true
	var ended []FoldGroup
	for _, f := range all {
		var rows []FoldRow
		for _, r := range f.Rows {
			r, fine := r.byItself().ended(piece, func(one Fold) float64 { return one.At }, found)
			rows = append(rows, r)
			if fine {
				r, fine = r.laid(piece, piece.Tree, found)
			}
			ok = ok && fine
			made.rows = append(made.rows, r)
		}
		ended = append(ended, f.with(rows))
	}
	if !ok {
		return made, false
	}
	var folded []*plane.Folding
	stitched := 0 // rows
	for _, f := range ended {
		for _, earlier := range folded {
			f = f.carriedOn(earlier)
		}
		settled, whole := f.folded()
		if !whole { // it has no one finished shape
			made.lengths, made.groups = foldByFold(ended), nil
			return made, true
		}
		for _, r := range settled.Rows {
			made.rows[stitched] = made.rows[stitched].stitchedAs(r)
			stitched++
		}
		folded = append(folded, settled.Folding)
		made.groups = append(made.groups, settled)
	}
	if len(folded) > 0 {
		made.finished = drawIn(folded, piece.Outline)
		made.lengths = finishedLengths{shown: folded}
	}
	return made, true
}

// drawIn returns a path of the flat piece with every fold in.
func drawIn(foldings []*plane.Folding, p plane.Path) plane.Path {
	for _, f := range foldings {
		p = f.DrawnInPath(p)
	}
	return p
}

// carriedOn returns the group with its rows where they lie once an earlier one is
// folded.
func (f FoldGroup) carriedOn(earlier *plane.Folding) FoldGroup {
	f.Origin = earlier.DrawnIn(f.Origin)
	f.Rows = slices.Clone(f.Rows)
	for i := range f.Rows {
		f.Rows[i].Base.Origin = earlier.DrawnIn(f.Rows[i].Base.Origin)
	}
	return f
}
