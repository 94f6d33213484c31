package piece

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file. Across a finished piece, from one of its sides to the other, a
// tape goes over what can be seen: tucks and pleats count as they lie at that level. Folds that
// end at the level itself still hold it in.

const (
	// NearFoldEnd is how near to a line folds may end, in mm, and still hold it in: half the
	// width of a tape, 1/4 in.
	NearFoldEnd = 25.4 / 4
	// offSewn bounds how much of a line across a piece, in mm, may lie outside what is
	// sewn, for its ends to lie on the stitch lines.
	offSewn = 0.5
	// leastParallel bounds the sine of the angle (3 degrees) between the edge at which a
	// garment opens and a line beside it that is its centre.
	leastParallel = 0.052
	// widestLap bounds how far inside the edge at which a garment opens its centre line
	// lies, in mm: 4 in.
	widestLap = 4 * 25.4
)

// Across returns how far it is along a straight line across the finished piece, as it is
// drawn, in mm, with what tucks and pleats take in at that level; ok is false where the line
// leaves what is sewn of the piece.
func (p *Piece) Across(line plane.Path) (mm float64, ok bool) {
	aside := line.StartDirection().Left()
	beside := func(by float64) plane.Path { return line.Moved(aside.Mul(by)) }
	// A line along a straight edge is in the piece to one side of it.
	if !p.holds(line) && !p.holds(beside(offSewn)) && !p.holds(beside(-offSewn)) {
		return 0, false
	}
	mm = p.narrowest(line)
	for _, patch := range p.AsDrawn.patches {
		mm -= inside(plane.NewTree(patch), line)
	}
	return mm, true
}

// narrowest returns the least length of a line and those so near beside it that folds which end there
// hold it in.
func (p *Piece) narrowest(line plane.Path) float64 {
	aside := line.StartDirection().Left().Mul(NearFoldEnd)
	return min(p.FinishedLength(line), p.FinishedLength(line.Moved(aside)), p.FinishedLength(line.Moved(aside.Mul(-1))))
}

// HeldIn reports whether folds that are open on a straight line across the piece end so near it, within
// NearFoldEnd, that Across counts them as they lie.
func (p *Piece) HeldIn(line plane.Path) bool {
	return p.FinishedLength(line)-p.narrowest(line) > Rounding
}

// holds reports whether a line lies within what is sewn, but for its ends.
func (p *Piece) holds(line plane.Path) bool {
	return line.Length()-inside(p.seams, line) < 2*offSewn
}

// inside returns how much of a line lies inside an outline, in mm.
func inside(outline *plane.Tree, line plane.Path) float64 {
	sum := 0.0
	for _, s := range InsideStretches(outline, plane.NewTree(line)) {
		sum += s.To - s.From
	}
	return sum
}

// CentreBeside returns the centre line beside an edge at which the garment opens, on which
// that of the other side comes when it is closed; nil where the piece has none.
func (p *Piece) CentreBeside(edge int) *Line {
	e := p.Edges[edge].Given
	along := e[len(e)-1].Sub(e[0]).Unit()
	for i := range p.Lines {
		l := &p.Lines[i]
		if l.Role != mark.Centre || l.Path.Straightness() > Straightness {
			continue
		}
		if l.Along == edge {
			return l
		}
		_, _, away := e.Nearest(l.Path[0])
		if l.Along < 0 && math.Abs(l.Path.StartDirection().Cross(along)) < leastParallel && away < widestLap {
			return l
		}
	}
	return nil
}
