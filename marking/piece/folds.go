package piece

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file: it takes a piece from the tucks and pleats that the file asks for
// to every line on the flat cloth, and to what the finished piece measures. Which of its
// two shapes is known from the drawing decides the way: drawnflat.go or drawnfinished.go.

// madeFolds is what the folds of a piece make of it.
type madeFolds struct {
	tucks    []TuckRow
	pleats   []PleatRow
	rows     []FoldRow // of both, as far as they could be laid
	flat     *Shape
	finished plane.Path // the outline with all folds in; nil without folds, or where it has no one shape
	lengths  finishedLengths
	groups   []FlatGroup // what is folded first first; none where the piece has no one finished shape
}

// makeFolds works out what the tucks of a piece, and the pleats across it, make of it.
// Where they cannot be made that is noted, and what comes back goes as far as they could.
func makeFolds(piece *Piece, ps source.PieceSpec, found *Findings) (madeFolds, bool) {
	tucks, pleats, ok := readRows(piece, ps, found)
	var rows []FoldRow
	if ok {
		rows, ok = inOrderOfFile(foldRows(tucks, pleats), found)
	}
	made := madeFolds{flat: piece.AsDrawn}
	if ok {
		all := foldGroups(piece, rows)
		switch {
		case !checkCrossed(all, found):
			ok = false
		case !piece.DrawnFinished:
			made, ok = foldDrawnFlat(piece, all, found)
		case ps.Block == nil:
			made, ok = unfoldDrawnFinished(piece, all, found)
		default:
			made, ok = unfoldBlock(piece, all, found)
		}
	}
	for _, r := range made.rows {
		if n := r.nth; n < len(tucks) {
			tucks[n].FoldRow = r
		} else {
			pleats[n-len(tucks)].FoldRow = r
		}
	}
	made.tucks, made.pleats = tucks, pleats
	return made, ok
}

// take gives the piece what its folds make of it.
func (p *Piece) take(made madeFolds) {
	p.TuckRows, p.PleatRows = made.tucks, made.pleats
	p.Flat, p.FinishedOutline, p.Folded, p.lengths = made.flat, made.finished, made.groups, made.lengths
	for i := range p.Edges {
		e := &p.Edges[i]
		e.FinishedLength = p.FinishedAlong(i, e.Sewn)
	}
	for i := range p.Lines {
		p.Lines[i].FinishedLength = p.seenLength(p.Lines[i].Path)
	}
}

// readRows reads the tucks of a piece, and the pleats across it.
func readRows(piece *Piece, ps source.PieceSpec, found *Findings) (tucks []TuckRow, pleats []PleatRow, ok bool) {
	ok = true
	for _, ts := range ps.Tucks {
		t, fine := newTuckRow(piece, ts, found)
		ok = ok && fine
		tucks = append(tucks, t)
	}
	for _, s := range ps.PleatRows {
		p, fine := newPleatRow(piece, s, found)
		ok = ok && fine
		pleats = append(pleats, p)
	}
	var tuckRows, pleatRows []*FoldRow
	for i := range tucks {
		tuckRows = append(tuckRows, &tucks[i].FoldRow)
	}
	for i := range pleats {
		pleatRows = append(pleatRows, &pleats[i].FoldRow)
	}
	nameRows(tuckRows)
	nameRows(pleatRows)
	return tucks, pleats, ok
}

// inOrderOfFile numbers the rows of a piece and puts them in the order of the file: what
// stands first is folded first.
func inOrderOfFile(rows []FoldRow, found *Findings) ([]FoldRow, bool) {
	folds := 0
	for n := range rows {
		rows[n].nth = n
		if folds += len(rows[n].Folds); folds > mostTakeUps {
			found.Add(rows[n].Place, "make it two pieces", "the piece has more than %d tucks and pleats", mostTakeUps)
			return nil, false
		}
	}
	slices.SortStableFunc(rows, func(a, b FoldRow) int { return a.Place.Line - b.Place.Line })
	return rows, true
}
