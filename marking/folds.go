package marking

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: it takes a piece from the tucks and pleats that the file
// asks for to every line on the flat cloth, and to what the finished piece
// measures. A piece drawn flat has room for its folds, and its lines are laid as
// they are asked for. A piece drawn finished is unfolded first, what is folded
// last first.

// checkFolds works out the tucks of a piece and the pleats across it. The rest of
// the piece has been worked out as it is drawn; marks are its lines.
func checkFolds(piece *Piece, ps PieceSpec, spec *Spec, marks []Mark, found *findings) {
	made, ok := makeFolds(piece, ps, marks, found)
	piece.take(made)
	piece.measure()
	if ok && ps.Block != nil {
		checkBlock(piece, ps, spec, made.foldings, found)
	}
}

// makeFolds works out what the folds of a piece make of it. Where they cannot be made
// that is noted, and what comes back goes as far as they could.
func makeFolds(piece *Piece, ps PieceSpec, marks []Mark, found *findings) (foldedPiece, bool) {
	drawn := piece.laidOut(marks)
	rows, ok := readRows(piece, ps, found)
	if !ok {
		return foldedPiece{flat: drawn}, false
	}
	all := foldings(piece, rows)
	switch {
	case !piece.Finished:
		return foldPiece(piece, drawn, all, found)
	case ps.Block == nil:
		return unfoldPiece(piece, drawn, all, found)
	}
	return unfoldBlock(piece, drawn, all, found)
}

// foldedPiece is what the folds of a piece make of it.
type foldedPiece struct {
	flat     *layout
	outline  plane.Path // with all folds in; nil without folds, or where it has no one shape
	inFolds  inFolds
	rows     []laidRow
	foldings []flatFolding // of a piece that is drawn finished
}

// take gives the piece what its folds make of it.
func (p *Piece) take(made foldedPiece) {
	p.flat, p.folded, p.inFolds = made.flat, made.outline, made.inFolds
	for _, laid := range made.rows {
		if n := laid.row.nth; n < len(p.Tucks) {
			p.Tucks[n] = p.Tucks[n].with(laid)
		} else {
			n -= len(p.Tucks)
			p.Pleatings[n] = p.Pleatings[n].with(laid)
		}
	}
}

// measure works out how long every edge and every line is sewn when tucks and pleats
// are in.
func (p *Piece) measure() {
	for i := range p.Edges {
		e := &p.Edges[i]
		e.Folded = p.foldedAlong(i, e.Sewn)
		if e.OnFold && e.Folded < leastFolded {
			e.Folded = e.Sewn.Length() // along a tuck about the centre, which takes it in whole
		}
	}
	for i := range p.Lines {
		l := &p.Lines[i]
		l.Folded = 0
		for _, part := range seenOf(l.Path, p.seams) {
			l.Folded += p.foldedLength(part)
		}
	}
}

// seenOf returns the parts of a line that lie within stitch lines. A line that lies in
// the allowances alone is returned whole.
func seenOf(line plane.Path, within *plane.Tree) []plane.Path {
	var parts []plane.Path
	for _, s := range insideStretches(within, plane.NewTree(line)) {
		parts = append(parts, line.Between(s.from, s.to))
	}
	if len(parts) == 0 {
		return []plane.Path{line}
	}
	return parts
}

// readRows reads the rows of a piece, in the order of the file, whether tucks or
// pleats.
func readRows(piece *Piece, ps PieceSpec, found *findings) ([]row, bool) {
	ok := true
	for _, ts := range ps.Tucks {
		t, fine := newTuck(piece, ts, found)
		ok = ok && fine
		piece.Tucks = append(piece.Tucks, t)
	}
	for _, s := range ps.Pleatings {
		p, fine := newPleating(piece, s, found)
		ok = ok && fine
		piece.Pleatings = append(piece.Pleatings, p)
	}
	if !ok {
		return nil, false
	}
	rows, folds := piece.rows(), 0
	for n := range rows {
		rows[n].nth = n
		if folds += len(rows[n].folds); folds > mostTakeUps {
			found.add(rows[n].place, "make it two pieces", "the piece has more than %d tucks and pleats", mostTakeUps)
			return nil, false
		}
	}
	// In the order of the file: what stands first is folded first.
	slices.SortStableFunc(rows, func(a, b row) int { return a.place.Line - b.place.Line })
	return rows, true
}

// foldPiece lays the rows of a piece that is drawn flat, and folds it.
func foldPiece(piece *Piece, drawn *layout, all []folding, found *findings) (made foldedPiece, ok bool) {
	made.flat, ok = drawn, true
	var ended []folding
	for _, f := range all {
		var rows []row
		for _, r := range f.rows {
			r, fine := r.byItself().ended(piece, func(one fold) float64 { return one.at }, found)
			laid := laidRow{row: r, lines: make([][][]plane.Path, len(r.folds))}
			if fine {
				laid, fine = r.laid(piece.tree, found)
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
		made.rows = stitchedAs(made.rows, settled.rows)
		folded = append(folded, one)
	}
	if len(folded) > 0 {
		made.outline = drawIn(folded, piece.Outline)
		made.inFolds = inFolds{shown: folded}
	}
	return made, true
}

// stitchedAs returns laid rows with the stitching that rows among them have.
func stitchedAs(laid []laidRow, rows []row) []laidRow {
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
func (f folding) carriedOn(earlier *plane.Folding) folding {
	f.origin = earlier.DrawnIn(f.origin)
	f.rows = slices.Clone(f.rows)
	for i := range f.rows {
		f.rows[i].base.origin = earlier.DrawnIn(f.rows[i].base.origin)
	}
	return f
}

// drawnFinished returns the foldings of a piece that is drawn finished, with their
// stitching and their ends.
func drawnFinished(piece *Piece, all []folding, found *findings) ([]folding, bool) {
	if !checkSquare(all, found) {
		return nil, false
	}
	ok := true
	var drawn []folding
	for _, f := range all {
		f, fine := f.settled(found)
		if !fine {
			return nil, false
		}
		var rows []row
		for _, r := range f.rows {
			r, fine := r.ended(piece, func(one fold) float64 { return one.stitching }, found)
			ok = fine && f.checkStitching(piece, r, found) && ok
			rows = append(rows, r)
		}
		drawn = append(drawn, f.with(rows))
	}
	return drawn, ok
}

// unfoldPiece takes a piece that is drawn finished to the flat cloth, and lays its
// rows there.
func unfoldPiece(piece *Piece, drawn *layout, all []folding, found *findings) (foldedPiece, bool) {
	made := foldedPiece{flat: drawn}
	finished, ok := drawnFinished(piece, all, found)
	if !ok || len(all) == 0 {
		return made, ok
	}
	now := drawn
	flat := make([]flatFolding, len(all))
	laid := make([][]laidRow, len(all))
	for i, f := range slices.Backward(finished) {
		if flat[i], ok = f.flattenedBefore(flat[i+1:], found); !ok {
			return made, false
		}
		if now, ok = now.unfolded(piece, flat[i], found); !ok {
			return made, false
		}
		outline := plane.NewTree(now.outline.path)
		for k, r := range flat[i].rows {
			one, fine := r.laid(outline, found)
			if !fine {
				return made, false
			}
			one.row = f.rows[k]
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
func unfoldBlock(piece *Piece, drawn *layout, all []folding, found *findings) (foldedPiece, bool) {
	made := foldedPiece{flat: drawn}
	finished, ok := drawnFinished(piece, all, found)
	if !ok || len(all) == 0 {
		return made, ok
	}
	flat := make([]flatFolding, len(all))
	for i, f := range slices.Backward(finished) {
		if flat[i], ok = f.flattenedBefore(flat[i+1:], found); !ok {
			return made, false
		}
		flat[i].flat.Over(drawn.outline.path)
		for k, r := range flat[i].rows {
			made.rows = append(made.rows, laidRow{row: f.rows[k], lines: make([][][]plane.Path, len(r.folds)), end: r.endLine()})
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
func checkSquare(all []folding, found *findings) bool {
	for i, f := range all {
		for _, g := range all[:i] {
			if math.Abs(f.out.Dot(g.out)) > squareWithin {
				a, b := g.rows[0], f.rows[0]
				found.add(b.place, `draw the piece flat, with the room its folds take, and write drawn = "flat"`,
					"the %ss of %q run neither along those of %q nor square to them, so nothing says how the flat piece lies",
					b.kind, b.key, a.key)
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
func (f folding) checkStitching(piece *Piece, r row, found *findings) bool {
	us, _ := r.base.extent(piece.Outline)
	lies := func(u float64) bool {
		return len(r.base.chords(piece.tree, u)) > 0 || math.Abs(u-us.from) < samePoint || math.Abs(u-us.to) < samePoint
	}
	for _, one := range r.folds {
		if !lies(one.stitching) {
			found.add(r.place, howManyFit(one.number),
				"%s leaves the piece: finished, its %s lies %s from %q, and the piece ends at %s",
				r.name(one), r.stitchingName(), found.mm(one.stitching), r.base.name, found.mm(us.to))
			return false
		}
		if chords := r.base.chords(piece.tree, one.stitching); one.end.given && len(chords) > 0 {
			if _, ok := one.end.upTo(chords); !ok {
				reportEndOutside(r, one, one.stitching, chords, found)
				return false
			}
		}
		crease, left := one.reach().to, us.to-one.stitching
		if one.toward {
			crease, left = one.reach().from, one.stitching-us.from
		}
		if f.onAxis {
			// Over the centre lies the other half.
			axis, side := f.offset(r), f.side(r)
			crease = side * (math.Abs(axis+side*crease) - axis)
		}
		if !lies(crease) {
			found.add(r.place, "turn it the other way, or move it farther in",
				"%s hangs over the edge of the piece: finished, it is %s wide, and from its %s to the edge there is %s",
				r.name(one), found.given(one.width), r.stitchingName(), found.nothingOr(left))
			return false
		}
	}
	return true
}

// flattenedBefore returns the folding on the flat cloth, that of a piece which is
// folded by later ones as well.
func (f folding) flattenedBefore(later []flatFolding, found *findings) (flatFolding, bool) {
	for _, one := range later {
		f = f.carriedBack(one.flat)
	}
	return f.flattened(found)
}

// carriedBack returns the folding with its rows where they lie before a later one is
// folded, which runs square to it.
func (f folding) carriedBack(later *plane.Folding) folding {
	f.origin = later.Flat(f.origin)
	f.rows = slices.Clone(f.rows)
	for i := range f.rows {
		r := &f.rows[i]
		r.folds = slices.Clone(r.folds)
		origin := later.Flat(r.base.origin)
		for k := range r.folds {
			if end := &r.folds[k].end; end.given {
				end.v = later.Flat(r.base.at(0, end.v)).Sub(origin).Dot(r.base.along)
			}
		}
		r.base.origin = origin
	}
	return f
}

// unfoldRows takes rows, laid with the folds of an earlier folding in, to where their
// lines lie before that.
func unfoldRows(rows []laidRow, earlier flatFolding) []laidRow {
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
func clearPatches(piece *Piece, all []flatFolding, found *findings) (patches []plane.Path, ok bool) {
	ok = true
	told := map[string]bool{}
	for _, p := range piece.Pleats {
		patch := p.patch
		for _, f := range slices.Backward(all) {
			parts := f.unfold(patch)
			if len(parts) == 1 && math.Abs(parts[0].Area()-patch.Area()) < sameArea {
				patch = parts[0]
				continue
			}
			if r := f.rows[0]; !told[p.Key] {
				found.add(p.place, "move one of the two", "the pleat lies under or across the %ss of %q", r.kind, r.key)
			}
			told[p.Key], ok = true, false
			break
		}
		patches = append(patches, patch)
	}
	return patches, ok
}
