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
	piece.flat = piece.laidOut(marks)
	piece.foldedLength = plane.Path.Length
	defer piece.measureEdges()
	rows, ok := readRows(piece, ps, found)
	if !ok {
		return
	}
	all := foldings(piece, rows)
	var flat []*plane.Folding
	if piece.Finished {
		flat, ok = unfoldPiece(piece, all, ps.Block != nil, found)
	} else {
		ok = foldPiece(piece, all, found)
	}
	if !ok {
		return
	}
	if ps.Block != nil {
		checkBlock(piece, ps, spec, all, flat, found)
	}
	for i := range piece.Tucks {
		piece.Tucks[i].keepLines()
	}
	for i := range piece.Pleatings {
		piece.Pleatings[i].keepLines()
	}
}

// measureEdges works out how long every edge is sewn when tucks and pleats are in.
func (p *Piece) measureEdges() {
	for i := range p.Edges {
		e := &p.Edges[i]
		e.Folded = p.foldedAlong(i, e.Sewn)
		if e.OnFold && e.Folded < leastFolded {
			e.Folded = e.Sewn.Length() // along a tuck about the centre, which takes it in whole
		}
	}
}

// foldedAlong returns how long a line beside an edge, no farther inside than its
// allowance, is when tucks and pleats are in, those in the edge among them.
func (p *Piece) foldedAlong(edge int, line plane.Path) float64 {
	if len(line) < 2 {
		return 0
	}
	length := p.foldedLength(line)
	for _, pleat := range p.Pleats {
		if pleat.edge == edge {
			length -= pleat.takenFrom(line, p.Edges[edge].Allowance)
		}
	}
	return length
}

// readRows reads the rows of a piece, in the order of the file, whether tucks or
// pleats.
func readRows(piece *Piece, ps PieceSpec, found *findings) ([]*row, bool) {
	ok := true
	for _, ts := range ps.Tucks {
		t, fine := newTuck(piece, ts, found)
		ok = ok && fine
		if fine && piece.Finished && t.Press == NeitherWay {
			t.Press = Away // the layers must lie one way or the other
		}
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
	for _, r := range rows {
		if folds += len(r.folds); folds > mostTakeUps {
			found.add(r.place, "make it two pieces", "the piece has more than %d tucks and pleats", mostTakeUps)
			return nil, false
		}
	}
	// In the order of the file: what stands first is folded first.
	slices.SortStableFunc(rows, func(a, b *row) int { return a.place.Line - b.place.Line })
	return rows, true
}

// foldPiece lays the rows of a piece that is drawn flat, and folds it.
func foldPiece(piece *Piece, all []*folding, found *findings) bool {
	outline := piece.tree
	ok := true
	for _, f := range all {
		for _, r := range f.rows {
			r.findSeams()
			at := func(one fold) float64 { return one.at }
			ok = findEnds(piece, r, at, found) && layRow(r, outline, found) && ok
			r.endPath = r.endLine()
		}
	}
	if !ok {
		return false
	}
	folded := true
	var foldings []*plane.Folding
	for _, f := range all {
		for _, earlier := range foldings {
			f = f.carriedOn(earlier)
		}
		one, whole := f.flat()
		if folded = folded && whole; !folded {
			break // it has no one finished shape
		}
		foldings = append(foldings, one)
	}
	switch {
	case !folded:
		piece.foldedLength = func(p plane.Path) float64 { return p.Length() - takenUp(all, p) }
	case len(foldings) > 0:
		piece.folded = drawIn(foldings, piece.Outline)
		piece.foldedLength = func(p plane.Path) float64 { return shownLength(foldings, []plane.Path{p}) }
	}
	return true
}

// takenUp returns how much of a line of the flat piece its folds take up, each by
// itself: of a piece that has no one finished shape, its edges still have a length.
func takenUp(all []*folding, line plane.Path) float64 {
	sum := 0.0
	for _, f := range all {
		for _, r := range f.rows {
			for k := range r.folds {
				one := placed{row: r, fold: &r.folds[k], side: f.side(r)}
				strip := f.mirrored([]plane.Fold{f.plane(one, f.begins(one))})
				sum += line.Length() - shownLength([]*plane.Folding{plane.NewFolding(f.origin, f.out, strip)}, []plane.Path{line})
			}
		}
	}
	return sum
}

// drawIn returns a path of the flat piece with every fold in.
func drawIn(foldings []*plane.Folding, p plane.Path) plane.Path {
	for _, f := range foldings {
		p = f.DrawnInPath(p)
	}
	return p
}

// shownLength returns the length of lines of the flat piece when its folds are in:
// of all but what they take up. Below its end line a fold takes up nothing.
func shownLength(foldings []*plane.Folding, lines []plane.Path) float64 {
	for _, f := range foldings {
		var shown []plane.Path
		for _, p := range lines {
			shown = append(shown, f.Shown(p)...)
		}
		lines = shown
	}
	sum := 0.0
	for _, p := range lines {
		sum += p.Length()
	}
	return sum
}

// carriedOn returns the folding with its rows where they lie once an earlier one is
// folded.
func (f *folding) carriedOn(earlier *plane.Folding) *folding {
	on := *f
	on.origin = earlier.DrawnIn(f.origin)
	on.rows = nil
	for _, r := range f.rows {
		moved := *r
		moved.base.origin = earlier.DrawnIn(r.base.origin)
		on.rows = append(on.rows, &moved)
	}
	return &on
}

// unfoldPiece takes a piece that is drawn finished to the flat cloth, and lays its
// rows there. One that is cut from a tucked block never lies flat as a piece: of it
// only the places of the folds are found.
func unfoldPiece(piece *Piece, all []*folding, block bool, found *findings) ([]*plane.Folding, bool) {
	if !checkSquare(all, found) {
		return nil, false
	}
	flat := make([]*plane.Folding, len(all))
	ok := true
	for _, f := range all {
		if _, fine := f.lines(found); !fine { // which finds the seams, for the ends
			return nil, false
		}
		for _, r := range f.rows {
			seam := func(one fold) float64 { return one.seam }
			ok = findEnds(piece, r, seam, found) && f.checkSeams(piece, r, found) && ok
		}
	}
	if !ok {
		return nil, false
	}
	now := piece.flat
	for i := len(all) - 1; i >= 0; i-- {
		f := all[i]
		for _, later := range flat[i+1:] {
			f.carryBack(later)
		}
		if flat[i], ok = f.finished(found); !ok {
			return nil, false
		}
		if block {
			flat[i].Over(now.outline)
		} else {
			before := now
			if now, ok = before.unfolded(piece, f, flat[i], found); !ok {
				return nil, false
			}
		}
		outline := plane.NewTree(now.outline)
		for _, r := range f.rows {
			r.base.origin = r.base.origin.Add(r.moved)
			r.endPath = r.endLine()
			if !block && !layRow(r, outline, found) {
				return nil, false
			}
		}
		for _, later := range all[i+1:] {
			later.unfoldLines(f, flat[i])
		}
	}
	if len(all) > 0 {
		piece.folded = piece.Outline
	}
	piece.flat = now
	piece.foldedLength = func(p plane.Path) float64 { return p.Length() + spread(all, flat, p) }
	return flat, checkPleatsClear(piece, all, flat, found)
}

// spread returns how much longer a line of the finished piece is than drawn, because
// folds that end above it leave it open.
func spread(all []*folding, flat []*plane.Folding, line plane.Path) float64 {
	sum := 0.0
	for i := len(all) - 1; i >= 0; i-- {
		if !all[i].onAxis {
			sum += flat[i].Spread(line)
		} else {
			for _, half := range all[i].withImage(line) {
				sum += flat[i].Spread(half) / 2
			}
		}
		earlier := make(plane.Path, len(line))
		for k, q := range line {
			earlier[k] = flat[i].Flat(q)
		}
		line = earlier
	}
	return sum
}

// checkSquare looks whether the rows of a piece that is drawn finished run one way,
// or two ways square to each other.
func checkSquare(all []*folding, found *findings) bool {
	for i, f := range all {
		for _, g := range all[:i] {
			if math.Abs(f.out.Dot(g.out)) > squareWithin {
				a, b := g.rows[0], f.rows[0]
				found.add(b.place, `draw the piece flat, with the room its folds take, and write drawn = "flat"`,
					"the %ss of %q run neither along those of %q nor square to them, so nothing says how the flat piece lies",
					b.of, b.key, a.key)
				return false
			}
		}
	}
	return true
}

// squareWithin bounds the cosine of the angle between two rows that run square to
// each other: half a degree off.
const squareWithin = 0.0087

// checkSeams looks whether the stitching of every fold of a row lies on the piece,
// which is drawn finished, and its flap as well.
func (f *folding) checkSeams(piece *Piece, r *row, found *findings) bool {
	us, _ := r.base.extent(piece.Outline)
	lies := func(u float64) bool {
		return len(r.base.chords(piece.tree, u)) > 0 || math.Abs(u-us.from) < samePoint || math.Abs(u-us.to) < samePoint
	}
	for _, one := range r.folds {
		if !lies(one.seam) {
			found.add(r.place, howManyFit(one.number),
				"%s leaves the piece: finished, its %s lies %s from %q, and the piece ends at %s",
				r.name(one), r.seamName(), found.mm(one.seam), r.base.name, found.mm(us.to))
			return false
		}
		if chords := r.base.chords(piece.tree, one.seam); one.end.given && len(chords) > 0 {
			if _, ok := one.end.upTo(chords); !ok {
				reportEndOutside(r, one, one.seam, chords, found)
				return false
			}
		}
		crease, left := one.reach().to, us.to-one.seam
		if one.toward {
			crease, left = one.reach().from, one.seam-us.from
		}
		if f.onAxis {
			// Over the centre lies the other half.
			axis, side := f.offset(r), f.side(r)
			crease = side * (math.Abs(axis+side*crease) - axis)
		}
		if !lies(crease) {
			found.add(r.place, "turn it the other way, or move it farther in",
				"%s hangs over the edge of the piece: finished, it is %s wide, and from its %s to the edge there is %s",
				r.name(one), found.given(one.width), r.seamName(), found.nothingOr(left))
			return false
		}
	}
	return true
}

// carryBack moves the rows of a folding to where they lie before a later one is
// folded, which runs square to it.
func (f *folding) carryBack(later *plane.Folding) {
	f.origin = later.Flat(f.origin)
	for _, r := range f.rows {
		for k := range r.folds {
			if end := &r.folds[k].end; end.given {
				end.v = later.Flat(r.base.at(0, end.v)).Sub(later.Flat(r.base.origin)).Dot(r.base.along)
			}
		}
		r.base.origin = later.Flat(r.base.origin)
	}
}

// unfoldLines takes the lines of rows, laid with the folds of an earlier folding
// in, to where they lie before that.
func (f *folding) unfoldLines(earlier *folding, folding *plane.Folding) {
	for _, r := range f.rows {
		for k := range r.folds {
			for l := range r.folds[k].lines {
				line := &r.folds[k].lines[l]
				var paths []plane.Path
				for _, p := range line.paths {
					paths = append(paths, earlier.carry(folding, p)...)
				}
				line.paths = paths
			}
		}
		if r.endPath == nil {
			continue
		}
		if parts := earlier.carry(folding, r.endPath); len(parts) > 0 {
			r.endPath = parts[0]
		}
	}
}

// sameArea bounds how far the area of a patch may be off, in mm², when it has only
// been moved.
const sameArea = 1

// checkPleatsClear looks whether the pleats in the edges of a piece that is drawn
// finished lie clear of its folds: what they take up must come through unfolding as
// it is, only moved.
func checkPleatsClear(piece *Piece, all []*folding, flat []*plane.Folding, found *findings) bool {
	ok := true
	told := map[string]bool{}
	for k := range piece.Pleats {
		p := &piece.Pleats[k]
		for i := len(all) - 1; i >= 0; i-- {
			parts := all[i].carry(flat[i], p.patch)
			if len(parts) == 1 && math.Abs(parts[0].Area()-p.patch.Area()) < sameArea {
				p.patch = parts[0]
				continue
			}
			if r := all[i].rows[0]; !told[p.Key] {
				found.add(p.place, "move one of the two", "the pleat lies under or across the %ss of %q", r.of, r.key)
			}
			told[p.Key], ok = true, false
			break
		}
	}
	return ok
}
