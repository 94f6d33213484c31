package piece

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file. A field of tucks may end before the neck does that it hangs from:
// often a few tucks in the middle are what is meant, so it is only said how far they reach,
// and how many would fill the neck. With all folds in, each tuck more reaches a width and a
// gap farther; tucks in groups go on by whole groups. It is reckoned by the two lengths as they are printed, so that a maker who does
// the sum comes to the same. The neck goes as far as its own stitch line, to the seam it ends at. On a
// piece that is drawn flat, the cloth for more tucks is not there yet. A straight edge is a
// neck only where the file calls it so: along others a few tucks in the middle are meant.

// sameWay bounds the sine of the angle between two rows that run the same way.
const sameWay = 0.001

var neckWords = wordsOf(`neck|neckline`)

// Field is how far a set of tucks reaches along the edge that it hangs from: finished, from
// its base, in mm.
type Field struct {
	Edge  int     // the number of the edge
	Tucks float64 // to where the last tuck reaches
	Neck  float64 // to the end of the edge's stitch line on that side
	Fill  int     // how many tucks of the set have room as far as the neck goes
	Wider float64 // the cloth that the others take, which an outline drawn flat lacks
}

// Field returns how far a set of tucks reaches along the neck; false where it hangs from
// none, is a single tuck, is gone on with by another set, or leaves no room for one more; and
// once its block is stitched and measured, for then there are as many as there are.
func (p *Piece) Field(t TuckRow, unit length.Unit) (Field, bool) {
	if p.IsTucked() {
		return Field{}, false
	}
	hung := p.hung(t.ends)
	more, pitch := t.goesOn()
	if len(hung) != 1 || t.Count < 2 || pitch < SamePoint {
		return Field{}, false
	}
	edge := hung[0]
	if e := p.Edges[edge]; e.Given.Straightness() <= Straightness && !neckWords.MatchString(wording.InWords(e.Key)) {
		return Field{}, false
	}
	end := p.Edges[edge].Sewn[0]
	for _, q := range p.Edges[edge].Sewn {
		if t.Base.U(q) > t.Base.U(end) {
			end = q
		}
	}
	last := t.Folds[len(t.Folds)-1]
	if p.goneOnWith(t, p.stitchingDrawn(last), t.Base.U(end)) {
		return Field{}, false
	}
	f := Field{Edge: edge, Tucks: last.reach().To}
	f.Neck = p.FinishedLength(plane.Path{t.Base.At(0, t.Base.V(end)), end})
	left := (unit.Amount(f.Neck).Steps - unit.Amount(f.Tucks).Steps) * unit.Ruler()
	more *= int(math.Floor((left + SamePoint) / pitch))
	f.Fill, f.Wider = t.Count+more, float64(more)*t.Takes
	return f, more > 0
}

// goesOn is with how many tucks more a set would go on, and how much farther they reach,
// finished: with one, or a group; by 0 where uneven groups do not say what would show.
func (t TuckRow) goesOn() (tucks int, pitch float64) {
	pitch = t.Space - t.Takes
	switch {
	case len(t.Betweens) == 0:
		return 1, pitch
	case !t.Even():
		return 0, 0
	}
	return t.Together(), float64(t.Together()-1)*pitch + t.Width + t.Betweens[0]
}

// goneOnWith reports whether a fold of another row lies beyond the last one of a set and
// before the end of the neck, both as the piece is drawn.
func (p *Piece) goneOnWith(t TuckRow, last, end float64) bool {
	for _, r := range p.FoldRows() {
		if math.Abs(r.Base.Out.Cross(t.Base.Out)) > sameWay {
			continue
		}
		for _, f := range r.Folds {
			if u := t.Base.U(r.Base.At(p.stitchingDrawn(f), 0)); u > last+SamePoint && u < end {
				return true
			}
		}
	}
	return false
}
