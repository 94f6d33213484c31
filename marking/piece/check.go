package piece

import "tuckmark/marking/source"

// Check works out one piece, stage by stage: the outline; its stitch lines, without which
// nothing can be said of what is measured from them; then what refers to both. With that
// it is known as it is drawn. Its tucks, and the pleats across it, then say how it lies
// Flat, and what it measures finished. Mistakes are noted on the way; of a piece without
// an outline, or without stitch lines, nothing comes back.
func Check(ps source.PieceSpec, spec *source.Spec, found *Findings) *Piece {
	found.enlarged = ps.Enlarge.Or(1)
	ps = ps.FullSize()
	piece, ok := newPiece(ps, found)
	if !ok || !checkOutline(piece, ps, spec, found) || !found.within(piece, ps) || !takeAllowances(piece, ps, spec.Allowance, found) || !piece.keepsToFold(found) {
		return nil
	}
	before := len(found.List)
	if !checkStitches(piece, found) {
		found.blameUsual(piece, spec.Allowance, found.List[before:])
		return nil
	}
	checkLines(piece, ps, found)
	checkGrain(piece, ps, found)
	checkEdgePleats(piece, ps, found)
	checkNotches(piece, ps, found)
	piece.AsDrawn = piece.drawnShape(spec.Unit.V)

	made, ok := makeFolds(piece, ps, found)
	piece.take(made)
	piece.letDown(spec)
	if ok && ps.Block != nil {
		checkBlock(piece, ps, spec, made.groups, found)
	}
	checkTakeUps(piece, found)
	return piece
}

// newPiece reads what the file says of a piece as a whole.
func newPiece(ps source.PieceSpec, found *Findings) (*Piece, bool) {
	piece := &Piece{
		Key: ps.Key, Place: ps.Place, Name: ps.ShownName(), Cut: 1, Layers: 1, OnFold: ps.Fold.Given(),
		Whole: ps.Print.V == source.PrintWhole, Pair: ps.Print.V == source.PrintLeftAndRight,
		Transfers: ps.Transfer.V, DrawnFinished: ps.Drawn.V == source.DrawnFinished, DrawnTo: ps.DrawnTo.V,
		FromDrawing: ps.FromDrawing,
	}
	if ps.Cut.Given() {
		piece.Cut = ps.Cut.V
	}
	if ps.Layers.Given() {
		piece.Layers = ps.Layers.V
		if piece.Cut%piece.Layers != 0 {
			found.Add(ps.Layers.Place, "a piece with a lining of the same shape is cut = 2, or 4 for left and right, with layers = 2",
				"%d are cut, which do not come out even in layers of %d", piece.Cut, piece.Layers)
			return nil, false
		}
	}
	if piece.Pair && !piece.OnFold && piece.Cut/piece.Layers < 2 {
		found.Add(ps.Print.Place, "give it cut = 2 (or 4, of which 2 are layers of one), or leave the line out", "only one is cut, so there is no left and right of it")
	}
	return piece, true
}
