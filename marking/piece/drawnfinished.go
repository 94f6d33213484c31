package piece

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A piece drawn finished is unfolded: what is folded last first. Its
// lines are laid on the flat cloth, and taken back through every group that is folded
// before theirs. One that is cut from a tucked block is never flat: there only its folds
// find their places.

// drawnFinished returns the groups of a piece that is drawn finished, with their
// stitching and their ends.
func drawnFinished(piece *Piece, all []FoldGroup, found *Findings) ([]FoldGroup, bool) {
	if !checkSquare(all, found) {
		return nil, false
	}
	ok := true
	var drawn []FoldGroup
	for _, f := range all {
		f, fine := f.settled(found)
		if !fine {
			return nil, false
		}
		var rows []FoldRow
		for _, r := range f.Rows {
			r, fine := r.ended(piece, func(one Fold) float64 { return one.Stitching }, found)
			ok = fine && f.checkStitching(piece, r, found) && ok
			rows = append(rows, r)
		}
		drawn = append(drawn, f.with(rows))
	}
	return drawn, ok
}

// unfoldDrawnFinished takes a piece that is drawn finished to the flat cloth, and lays its
// rows there.
func unfoldDrawnFinished(piece *Piece, all []FoldGroup, found *Findings) (madeFolds, bool) {
	made := madeFolds{flat: piece.AsDrawn}
	finished, ok := drawnFinished(piece, all, found)
	if !ok || len(all) == 0 {
		return made, ok
	}
	now := piece.AsDrawn
	flat := make([]FlatGroup, len(all))
	laid := make([][]FoldRow, len(all))
	for i, f := range slices.Backward(finished) {
		if flat[i], ok = f.flattenedBefore(flat[i+1:], found); !ok {
			return made, false
		}
		if now, ok = now.unfolded(piece, flat[i], found); !ok {
			return made, false
		}
		outline := plane.NewTree(now.Outline.Path)
		for k, r := range flat[i].Rows {
			one, fine := r.laid(piece, outline, found)
			if !fine {
				return made, false
			}
			laid[i] = append(laid[i], f.Rows[k].laidAs(one))
		}
		for j := i + 1; j < len(all); j++ {
			laid[j] = unfoldRows(laid[j], flat[i])
		}
	}
	if now.patches, ok = clearPatches(piece, flat, found); !ok {
		return made, false
	}
	return madeFolds{flat: now, finished: piece.Outline, lengths: finishedLengths{open: flat}, rows: slices.Concat(laid...), groups: flat}, true
}

// unfoldBlock finds the places of the folds of a piece that is cut from a tucked block.
// Such a piece never lies flat.
func unfoldBlock(piece *Piece, all []FoldGroup, found *Findings) (madeFolds, bool) {
	made := madeFolds{flat: piece.AsDrawn}
	finished, ok := drawnFinished(piece, all, found)
	if !ok || len(all) == 0 {
		return made, ok
	}
	flat := make([]FlatGroup, len(all))
	for i, f := range slices.Backward(finished) {
		if flat[i], ok = f.flattenedBefore(flat[i+1:], found); !ok {
			return made, false
		}
		flat[i].Folding.Over(piece.AsDrawn.Outline.Path)
		for k, r := range flat[i].Rows {
			drawn := f.Rows[k]
			drawn.FlatEnds = r.EndLines()
			made.rows = append(made.rows, drawn)
		}
	}
	now := *piece.AsDrawn
	if now.patches, ok = clearPatches(piece, flat, found); !ok {
		return made, false
	}
	return madeFolds{flat: &now, finished: piece.Outline, lengths: finishedLengths{open: flat}, rows: made.rows, groups: flat}, true
}

// checkSquare looks whether the rows of a piece that is drawn finished run one way,
// or two ways square to each other.
func checkSquare(all []FoldGroup, found *Findings) bool {
	for i, f := range all {
		for _, g := range all[:i] {
			if math.Abs(f.Out.Dot(g.Out)) > SquareWithin {
				a, b := g.Rows[0], f.Rows[0]
				found.Add(b.Place, `draw the piece flat, with the room its folds take, and write drawn = "flat"`,
					"the %ss of %q run neither along those of %q nor square to them, so nothing says how the flat piece lies",
					b.Makes, b.Key, a.Key)
				return false
			}
		}
	}
	return true
}

// SquareWithin bounds the cosine of the angle between two rows, or a row and the fold of the cloth, that run square to
// each other: half a degree off.
const SquareWithin = 0.0087

// checkStitching looks whether the stitching of every fold of a row lies on the piece,
// which is drawn finished, and its flap as well.
func (f FoldGroup) checkStitching(piece *Piece, r FoldRow, found *Findings) bool {
	us, _ := r.Base.Extent(piece.Outline)
	lies := func(u float64) bool {
		return len(r.Base.Chords(piece.Tree, u)) > 0 || math.Abs(u-us.From) < SamePoint || math.Abs(u-us.To) < SamePoint
	}
	for _, one := range r.Folds {
		if !lies(one.Stitching) {
			found.Add(r.Place, piece.howManyFit(r, one.Number),
				"%s leaves the piece: finished, its %s lies %s from %q, and the piece ends at %s",
				r.name(one), r.stitchingName(), found.length(one.Stitching), r.Base.Name, found.length(us.To))
			return false
		}
		if chords := r.Base.Chords(piece.Tree, one.Stitching); one.End.Given && len(chords) > 0 {
			if _, ok := one.End.UpTo(chords); !ok {
				reportEndOutside(piece, r, one, one.Stitching, chords, found)
				return false
			}
		}
		crease, left := one.reach().To, us.To-one.Stitching
		if one.Toward {
			crease, left = one.reach().From, one.Stitching-us.From
		}
		if f.OnAxis {
			// Over the centre lies the other half.
			axis, side := f.Offset(r), f.side(r)
			crease = side * (math.Abs(axis+side*crease) - axis)
		}
		if !lies(crease) {
			found.Add(r.Place, "turn it the other way, or move it farther in",
				"%s hangs over the edge of the piece: finished, it is %s wide, and from its %s to the edge there is %s",
				r.name(one), found.Written(one.Width), r.stitchingName(), found.NothingOr(left))
			return false
		}
	}
	return true
}

// flattenedBefore returns the group on the flat cloth, that of a piece which is
// folded by later ones as well.
func (f FoldGroup) flattenedBefore(later []FlatGroup, found *Findings) (FlatGroup, bool) {
	for _, one := range later {
		f = f.carriedBack(one.Folding)
	}
	return f.flattened(found)
}

// carriedBack returns the group with its rows where they lie before a later one is
// folded, which runs square to it.
func (f FoldGroup) carriedBack(later *plane.Folding) FoldGroup {
	f.Origin = later.Flat(f.Origin)
	f.Rows = slices.Clone(f.Rows)
	for i, r := range f.Rows {
		base := r.Base
		r.Base.Origin = later.Flat(base.Origin)
		f.Rows[i] = r.changed(func(_ int, one *Fold) {
			if one.End.Given {
				one.End.V = r.Base.V(later.Flat(base.At(0, one.End.V)))
			}
			if one.End.Free {
				one.End.Begin = r.Base.V(later.Flat(base.At(0, one.End.Begin)))
			}
		})
	}
	return f
}

// unfoldRows takes rows, laid with the folds of an earlier group in, to where their lines
// lie before that.
func unfoldRows(rows []FoldRow, earlier FlatGroup) []FoldRow {
	var unfolded []FoldRow
	for _, r := range rows {
		r.FlatEnds = slices.Clone(r.FlatEnds)
		for i, end := range r.FlatEnds {
			if parts := earlier.unfold(end); len(parts) > 0 {
				r.FlatEnds[i] = parts[0]
			}
		}
		unfolded = append(unfolded, r.changed(func(_ int, f *Fold) {
			f.Lines = slices.Clone(f.Lines)
			for l := range f.Lines {
				var all []plane.Path
				for _, part := range f.Lines[l].Flat {
					all = append(all, earlier.unfold(part)...)
				}
				f.Lines[l].Flat = all
			}
		}))
	}
	return unfolded
}

// sameArea bounds how far the area of a patch may be off, in mm², when it has only
// been moved.
const sameArea = 1

// clearPatches returns what the pleats in the edges of a piece that is drawn finished
// take up, on the flat cloth. It must lie clear of the folds: come through unfolding as
// it is, only moved.
func clearPatches(piece *Piece, all []FlatGroup, found *Findings) (patches []plane.Path, ok bool) {
	ok = true
	told := map[string]bool{}
	for _, p := range piece.EdgePleats {
		patch := p.patch
		for _, f := range slices.Backward(all) {
			parts := f.unfold(patch)
			if len(parts) == 1 && math.Abs(parts[0].Area()-patch.Area()) < sameArea {
				patch = parts[0]
				continue
			}
			if r := f.Rows[0]; !told[p.Key] {
				found.Add(p.Place, "move one of the two", "the pleat lies under or across the %ss of %q", r.Makes, r.Key)
			}
			told[p.Key], ok = true, false
			break
		}
		patches = append(patches, patch)
	}
	return patches, ok
}
