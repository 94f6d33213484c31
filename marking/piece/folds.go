package piece

import (
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file: it takes a piece from the tucks and pleats that the file
// asks for to every line on the flat cloth, and to what the finished piece
// measures. A piece drawn flat has room for its folds, and its lines are laid as
// they are asked for. A piece drawn finished is unfolded first, what is folded
// last first.

// checkFolds works out the tucks of a piece and the pleats across it. The rest of
// the piece has been worked out as it is drawn; marks are its lines.
func checkFolds(piece *Piece, ps source.PieceSpec, spec *source.Spec, marks []mark.Mark, found *Findings) {
	made, ok := makeFolds(piece, ps, marks, found)
	piece.take(made)
	piece.measure()
	if ok && ps.Block != nil {
		checkBlock(piece, ps, spec, made.foldings, found)
	}
}

// makeFolds works out what the folds of a piece make of it. Where they cannot be made
// that is noted, and what comes back goes as far as they could.
func makeFolds(piece *Piece, ps source.PieceSpec, marks []mark.Mark, found *Findings) (foldedPiece, bool) {
	drawn := piece.laidOut(marks)
	rows, ok := readRows(piece, ps, found)
	if !ok {
		return foldedPiece{flat: drawn}, false
	}
	all := foldings(piece, rows)
	switch {
	case !piece.DrawnFinished:
		return foldPiece(piece, drawn, all, found)
	case ps.Block == nil:
		return unfoldPiece(piece, drawn, all, found)
	}
	return unfoldBlock(piece, drawn, all, found)
}

// foldedPiece is what the folds of a piece make of it.
type foldedPiece struct {
	flat     *Shape
	outline  plane.Path // with all folds in; nil without folds, or where it has no one shape
	inFolds  inFolds
	rows     []laidRow
	foldings []FlatGroup // of a piece that is drawn finished
}

// take gives the piece what its folds make of it.
func (p *Piece) take(made foldedPiece) {
	p.Flat, p.FinishedOutline, p.inFolds = made.flat, made.outline, made.inFolds
	for _, laid := range made.rows {
		if n := laid.row.nth; n < len(p.TuckRows) {
			p.TuckRows[n] = p.TuckRows[n].with(laid)
		} else {
			n -= len(p.TuckRows)
			p.PleatRows[n] = p.PleatRows[n].with(laid)
		}
	}
}

// measure works out how long every edge and every line is sewn when tucks and pleats
// are in.
func (p *Piece) measure() {
	for i := range p.Edges {
		e := &p.Edges[i]
		e.FinishedLength = p.FinishedAlong(i, e.Sewn)
		if e.OnFold && e.FinishedLength < LeastTakeUp {
			e.FinishedLength = e.Sewn.Length() // along a tuck about the centre, which takes it in whole
		}
	}
	for i := range p.Lines {
		l := &p.Lines[i]
		l.FinishedLength = 0
		for _, part := range seenOf(l.Path, p.Seams) {
			l.FinishedLength += p.FinishedLength(part)
		}
	}
}

// seenOf returns the parts of a line that lie within stitch lines. A line that lies in
// the allowances alone is returned whole.
func seenOf(line plane.Path, within *plane.Tree) []plane.Path {
	var parts []plane.Path
	for _, s := range InsideStretches(within, plane.NewTree(line)) {
		parts = append(parts, line.Between(s.From, s.To))
	}
	if len(parts) == 0 {
		return []plane.Path{line}
	}
	return parts
}

// readRows reads the rows of a piece, in the order of the file, whether tucks or
// pleats.
func readRows(piece *Piece, ps source.PieceSpec, found *Findings) ([]FoldRow, bool) {
	ok := true
	for _, ts := range ps.Tucks {
		t, fine := newTuckRow(piece, ts, found)
		ok = ok && fine
		piece.TuckRows = append(piece.TuckRows, t)
	}
	for _, s := range ps.Pleatings {
		p, fine := newPleatRow(piece, s, found)
		ok = ok && fine
		piece.PleatRows = append(piece.PleatRows, p)
	}
	if !ok {
		return nil, false
	}
	rows, folds := piece.FoldRows(), 0
	for n := range rows {
		rows[n].nth = n
		if folds += len(rows[n].Folds); folds > mostTakeUps {
			found.Add(rows[n].place, "make it two pieces", "the piece has more than %d tucks and pleats", mostTakeUps)
			return nil, false
		}
	}
	// In the order of the file: what stands first is folded first.
	slices.SortStableFunc(rows, func(a, b FoldRow) int { return a.place.Line - b.place.Line })
	return rows, true
}

// foldPiece lays the rows of a piece that is drawn flat, and folds it.
func foldPiece(piece *Piece, drawn *Shape, all []FoldGroup, found *Findings) (made foldedPiece, ok bool) {
	made.flat, ok = drawn, true
	var ended []FoldGroup
	for _, f := range all {
		var rows []FoldRow
		for _, r := range f.Rows {
			r, fine := r.byItself().ended(piece, func(one Fold) float64 { return one.At }, found)
			laid := laidRow{row: r, lines: make([][][]plane.Path, len(r.Folds))}
			if fine {
				laid, fine = r.laid(piece.Tree, found)
			}
			ok = ok && fine
			rows = append(rows, r)
			made.rows = append(made.rows, laid)
		}
		ended = append(ended, f.with(rows))
	}
	if !ok {
		return made, false
	}
	var folded []*plane.Folding
	for _, f := range ended {
		for _, earlier := range folded {
			f = f.carriedOn(earlier)
		}
		settled, one, whole := f.folded()
		if !whole { // it has no one finished shape
			made.inFolds = foldByFold(ended)
			return made, true
		}
		made.rows = stitchedAs(made.rows, settled.Rows)
		folded = append(folded, one)
	}
	if len(folded) > 0 {
		made.outline = drawIn(folded, piece.Outline)
		made.inFolds = inFolds{shown: folded}
	}
	return made, true
}

// stitchedAs returns laid rows with the stitching that rows among them have.
func stitchedAs(laid []laidRow, rows []FoldRow) []laidRow {
	laid = slices.Clone(laid)
	for i := range laid {
		for _, r := range rows {
			if r.nth == laid[i].row.nth {
				laid[i].row = laid[i].row.stitchedAs(r)
			}
		}
	}
	return laid
}

// drawIn returns a path of the flat piece with every fold in.
func drawIn(foldings []*plane.Folding, p plane.Path) plane.Path {
	for _, f := range foldings {
		p = f.DrawnInPath(p)
	}
	return p
}

// carriedOn returns the folding with its rows where they lie once an earlier one is
// folded.
func (f FoldGroup) carriedOn(earlier *plane.Folding) FoldGroup {
	f.Origin = earlier.DrawnIn(f.Origin)
	f.Rows = slices.Clone(f.Rows)
	for i := range f.Rows {
		f.Rows[i].Base.Origin = earlier.DrawnIn(f.Rows[i].Base.Origin)
	}
	return f
}

// drawnFinished returns the foldings of a piece that is drawn finished, with their
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

// unfoldPiece takes a piece that is drawn finished to the flat cloth, and lays its
// rows there.
func unfoldPiece(piece *Piece, drawn *Shape, all []FoldGroup, found *Findings) (foldedPiece, bool) {
	made := foldedPiece{flat: drawn}
	finished, ok := drawnFinished(piece, all, found)
	if !ok || len(all) == 0 {
		return made, ok
	}
	now := drawn
	flat := make([]FlatGroup, len(all))
	laid := make([][]laidRow, len(all))
	for i, f := range slices.Backward(finished) {
		if flat[i], ok = f.flattenedBefore(flat[i+1:], found); !ok {
			return made, false
		}
		if now, ok = now.unfolded(piece, flat[i], found); !ok {
			return made, false
		}
		outline := plane.NewTree(now.Outline.Path)
		for k, r := range flat[i].Rows {
			one, fine := r.laid(outline, found)
			if !fine {
				return made, false
			}
			one.row = f.Rows[k]
			laid[i] = append(laid[i], one)
		}
		for j := i + 1; j < len(all); j++ {
			laid[j] = unfoldRows(laid[j], flat[i])
		}
	}
	if now.patches, ok = clearPatches(piece, flat, found); !ok {
		return made, false
	}
	return foldedPiece{flat: now, outline: piece.Outline, inFolds: inFolds{open: flat}, rows: slices.Concat(laid...), foldings: flat}, true
}

// unfoldBlock finds the places of the folds of a piece that is cut from a tucked block.
// Such a piece never lies flat.
func unfoldBlock(piece *Piece, drawn *Shape, all []FoldGroup, found *Findings) (foldedPiece, bool) {
	made := foldedPiece{flat: drawn}
	finished, ok := drawnFinished(piece, all, found)
	if !ok || len(all) == 0 {
		return made, ok
	}
	flat := make([]FlatGroup, len(all))
	for i, f := range slices.Backward(finished) {
		if flat[i], ok = f.flattenedBefore(flat[i+1:], found); !ok {
			return made, false
		}
		flat[i].Folding.Over(drawn.Outline.Path)
		for k, r := range flat[i].Rows {
			made.rows = append(made.rows, laidRow{row: f.Rows[k], lines: make([][][]plane.Path, len(r.Folds)), end: r.EndLine()})
		}
	}
	now := *drawn
	if now.patches, ok = clearPatches(piece, flat, found); !ok {
		return made, false
	}
	return foldedPiece{flat: &now, outline: piece.Outline, inFolds: inFolds{open: flat}, rows: made.rows, foldings: flat}, true
}

// checkSquare looks whether the rows of a piece that is drawn finished run one way,
// or two ways square to each other.
func checkSquare(all []FoldGroup, found *Findings) bool {
	for i, f := range all {
		for _, g := range all[:i] {
			if math.Abs(f.Out.Dot(g.Out)) > squareWithin {
				a, b := g.Rows[0], f.Rows[0]
				found.Add(b.place, `draw the piece flat, with the room its folds take, and write drawn = "flat"`,
					"the %ss of %q run neither along those of %q nor square to them, so nothing says how the flat piece lies",
					b.Makes, b.Key, a.Key)
				return false
			}
		}
	}
	return true
}

// squareWithin bounds the cosine of the angle between two rows that run square to
// each other: half a degree off.
const squareWithin = 0.0087

// checkStitching looks whether the stitching of every fold of a row lies on the piece,
// which is drawn finished, and its flap as well.
func (f FoldGroup) checkStitching(piece *Piece, r FoldRow, found *Findings) bool {
	us, _ := r.Base.Extent(piece.Outline)
	lies := func(u float64) bool {
		return len(r.Base.Chords(piece.Tree, u)) > 0 || math.Abs(u-us.From) < SamePoint || math.Abs(u-us.To) < SamePoint
	}
	for _, one := range r.Folds {
		if !lies(one.Stitching) {
			found.Add(r.place, howManyFit(one.Number),
				"%s leaves the piece: finished, its %s lies %s from %q, and the piece ends at %s",
				r.name(one), r.stitchingName(), found.Length(one.Stitching), r.Base.Name, found.Length(us.To))
			return false
		}
		if chords := r.Base.Chords(piece.Tree, one.Stitching); one.End.Given && len(chords) > 0 {
			if _, ok := one.End.UpTo(chords); !ok {
				reportEndOutside(r, one, one.Stitching, chords, found)
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
			found.Add(r.place, "turn it the other way, or move it farther in",
				"%s hangs over the edge of the piece: finished, it is %s wide, and from its %s to the edge there is %s",
				r.name(one), found.Written(one.Width), r.stitchingName(), found.NothingOr(left))
			return false
		}
	}
	return true
}

// flattenedBefore returns the folding on the flat cloth, that of a piece which is
// folded by later ones as well.
func (f FoldGroup) flattenedBefore(later []FlatGroup, found *Findings) (FlatGroup, bool) {
	for _, one := range later {
		f = f.carriedBack(one.Folding)
	}
	return f.flattened(found)
}

// carriedBack returns the folding with its rows where they lie before a later one is
// folded, which runs square to it.
func (f FoldGroup) carriedBack(later *plane.Folding) FoldGroup {
	f.Origin = later.Flat(f.Origin)
	f.Rows = slices.Clone(f.Rows)
	for i := range f.Rows {
		r := &f.Rows[i]
		r.Folds = slices.Clone(r.Folds)
		origin := later.Flat(r.Base.Origin)
		for k := range r.Folds {
			if end := &r.Folds[k].End; end.Given {
				end.V = later.Flat(r.Base.At(0, end.V)).Sub(origin).Dot(r.Base.Along)
			}
		}
		r.Base.Origin = origin
	}
	return f
}

// unfoldRows takes rows, laid with the folds of an earlier folding in, to where their
// lines lie before that.
func unfoldRows(rows []laidRow, earlier FlatGroup) []laidRow {
	var unfolded []laidRow
	for _, r := range rows {
		one := laidRow{row: r.row, lines: make([][][]plane.Path, len(r.lines)), end: r.end}
		for k, lines := range r.lines {
			for _, parts := range lines {
				var all []plane.Path
				for _, p := range parts {
					all = append(all, earlier.unfold(p)...)
				}
				one.lines[k] = append(one.lines[k], all)
			}
		}
		if r.end != nil {
			if parts := earlier.unfold(r.end); len(parts) > 0 {
				one.end = parts[0]
			}
		}
		unfolded = append(unfolded, one)
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
				found.Add(p.place, "move one of the two", "the pleat lies under or across the %ss of %q", r.Makes, r.Key)
			}
			told[p.Key], ok = true, false
			break
		}
		patches = append(patches, patch)
	}
	return patches, ok
}
