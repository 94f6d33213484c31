package marking

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. A tucked front is torn as a rectangle, tucked, and only then
// cut out. Across its tucks the block is as wide as the finished piece at its
// widest and all take-ups together, and as long as the finished piece; to which
// come spare cloth at the sides and at both ends. After stitching, its top edge
// must measure what is left of the width, and the bottom, where tucks are open, is
// drawn in to the same. Half an inch at either end is common practice.

// Block is the rectangle a piece is tucked in and then cut from.
type Block struct {
	Width   float64 // across the tucks, as torn
	Length  float64 // along the tucks
	TakeUp  float64 // of all tucks of the whole block
	Top     float64 // what the top edge must measure after stitching
	Widest  float64 // of the finished piece, the whole of it
	Ends    float64 // spare cloth at top and at bottom
	Sides   float64 // spare cloth at each side
	Folds   int     // tucks and pleats of the whole block
	Measure *Measure

	folding *folding
	us, vs  stretch // of the finished piece as it is drawn
	up      float64 // +1 where the top edge lies at greater v
}

// Measure is what the top edge of a block measured once it was stitched.
type Measure struct {
	Top  float64
	Took float64 // by one fold on average
	// Alike tells that all folds are asked for equally wide, so that the average
	// says what each of them took.
	Alike bool
	// Spare is what is left beside the widest part of the piece, at each
	// side; below 0 that much is missing.
	Spare float64

	place Place
}

// defaultEnds is the spare cloth at top and bottom of a block whose file gives
// none, in mm: half an inch (common practice).
const defaultEnds = 25.4 / 2

// leastLeft is the narrowest allowance that can still be sewn, in mm: where less is
// left of one, the piece does not fit its block (common practice).
const leastLeft = 25.4 / 8

// checkBlock works out the block of a piece, which has been unfolded.
func checkBlock(piece *Piece, ps PieceSpec, spec *Spec, all []*folding, flat []*plane.Folding, found *findings) {
	bs := ps.Block
	switch {
	case !piece.Finished:
		found.add(bs.Place, `draw the outline as the finished piece lies, and write drawn = "finished"`,
			"a block is tucked before the piece is cut, so the piece is drawn finished")
		return
	case len(all) == 0:
		found.add(bs.Place, "leave it out, or give the piece its tucks", "a block is for a piece with tucks or pleats across it")
		return
	case len(all) > 1:
		found.add(bs.Place, "tuck the block one way, and draw the growth tucks after it is cut", "the folds run two ways, and a block is torn for folds that run one way")
		return
	}
	f := all[0]
	b := &Block{Ends: defaultEnds, Sides: bs.Sides.MM, folding: f, up: 1}
	if bs.Ends.Given() {
		b.Ends = bs.Ends.MM
	}
	b.us, b.vs = stretch{math.Inf(1), math.Inf(-1)}, stretch{math.Inf(1), math.Inf(-1)}
	for _, q := range piece.Outline {
		u, v := q.Sub(f.origin).Dot(f.out), q.Sub(f.origin).Dot(f.out.Left())
		b.us.from, b.us.to = min(b.us.from, u), max(b.us.to, u)
		b.vs.from, b.vs.to = min(b.vs.from, v), max(b.vs.to, v)
	}
	if piece.OnFold && !f.onAxis && !b.openOut(piece, found) {
		return
	}
	b.Widest, b.Length = b.us.to-b.us.from, b.vs.to-b.vs.from
	if f.onAxis {
		b.Widest = 2 * b.us.to
	}
	folds := flat[0].Folds()
	b.Folds = len(folds)
	alike := true
	for _, one := range folds {
		b.TakeUp += 2 * one.Width
		alike = alike && math.Abs(one.Width-folds[0].Width) < samePoint
	}
	b.Width = b.Widest + b.TakeUp + 2*b.Sides
	b.Top = b.Width - b.TakeUp
	b.Length += 2 * b.Ends
	b.up = f.up()
	if bs.Measured.Given() {
		b.Measure = &Measure{
			Top:   bs.Measured.MM,
			Took:  (b.Width - bs.Measured.MM) / float64(b.Folds),
			Alike: alike,
			Spare: (bs.Measured.MM - b.Widest) / 2,
			place: bs.Measured.Place,
		}
		if bs.Measured.MM > b.Width+samePoint {
			found.add(bs.Measured.Place, "measure the top edge after the tucks are sewn and pressed",
				"the tucked block measures %s, and was torn only %s wide", found.given(bs.Measured.MM), found.mm(b.Width))
			return
		}
	}
	piece.Block = b
	b.checkCloth(piece, bs, spec.ClothWidth, found)
}

// openOut has the block of a piece whose folds run square to the fold of the cloth
// reach over both halves of it, along the folds.
func (b *Block) openOut(piece *Piece, found *findings) bool {
	for _, r := range b.folding.rows {
		if r.folds[0].end.given {
			found.add(r.ends.Length.Place, "draw the whole piece, or have them run from edge to edge",
				"the %ss run across the fold of the cloth and end on the piece, so a block cannot say where their other ends are", r.of)
			return false
		}
	}
	axis := piece.Edges[piece.foldEdge()].Path[0].Sub(b.folding.origin).Dot(b.folding.out.Left())
	b.vs = stretch{min(b.vs.from, 2*axis-b.vs.to), max(b.vs.to, 2*axis-b.vs.from)}
	return true
}

// up is +1 where the tops of the folds lie at greater v, -1 where at less. Folds
// without an end have their top where the drawing has it.
func (f *folding) up() float64 {
	for _, r := range f.rows {
		if end := r.folds[0].end; end.given {
			return -math.Copysign(1, r.base.along.Mul(end.down).Dot(f.out.Left()))
		}
	}
	if v := f.out.Left(); v.Y < -samePoint || math.Abs(v.Y) <= samePoint && v.X < 0 {
		return -1
	}
	return 1
}

// checkCloth holds the block against the width of the cloth.
func (b *Block) checkCloth(piece *Piece, bs *BlockSpec, width Length, found *findings) {
	if !width.Given() {
		return
	}
	along, across := math.Abs(piece.grain.Dot(b.folding.out.Left())), math.Abs(piece.grain.Dot(b.folding.out))
	if along < across {
		if b.Length > width.MM+samePoint {
			found.add(bs.Place, "take wider cloth, or less spare cloth at the ends; or turn the grain, so that the block lies along the cloth",
				"the tucks run across the grain, so the block of %s by %s lies with its length across the cloth, which is %s between the selvages: %s too narrow",
				found.mm(b.Width), found.mm(b.Length), found.given(width.MM), found.mm(b.Length-width.MM))
		}
		return
	}
	if b.Width > width.MM+samePoint {
		found.add(bs.Place, "take wider cloth, fewer or narrower tucks, or less spare cloth at the sides; or make the block of two, joined under a tuck",
			"the block is %s wide, and the cloth is %s between the selvages: %s too narrow",
			found.mm(b.Width), found.given(width.MM), found.mm(b.Width-width.MM))
	}
}

// Tear says how large a block is torn, in words: "tear a block 17 3/4 in wide and
// 15 in long".
func (b *Block) Tear(unit Unit) string {
	return fmt.Sprintf("tear a block %s wide and %s long", unit.Print(b.Width), unit.Print(b.Length))
}

// what names the folds of the block: "tucks", or "folds" where some are pleats.
func (b *Block) what() string {
	for _, r := range b.folding.rows {
		if r.of != "tuck" {
			return "folds"
		}
	}
	return "tucks"
}

// notes says how the block is torn and what it must measure.
func (b *Block) notes(unit Unit) []string {
	return []string{
		b.Tear(unit),
		fmt.Sprintf("all %s together take up %s", b.what(), unit.Print(b.TakeUp)),
		fmt.Sprintf("stitched, its top edge must measure %s", unit.Print(b.Top)),
		"draw its bottom edge in to the same",
	}
}

// measured says what the stitched block measured, and what follows, in parts. The
// whole is told as it is read on a ruler. One fold is off by less than that: what it
// took is told to a tenth of a millimetre, about as far as a reading over a dozen
// tucks carries, and how many of them make up one step of the ruler.
func (b *Block) measured(piece *Piece, unit Unit) []string {
	m := b.Measure
	top, should := unit.Print(m.Top), unit.Print(b.Top)
	edge := fmt.Sprintf("the top edge measures %s, as it should", top)
	took := fmt.Sprintf("the %d %s took up %s", b.Folds, b.what(), unit.Print(b.Width-m.Top))
	if top != should {
		edge = fmt.Sprintf("the top edge measures %s and should measure %s", top, should)
		took += " instead of " + unit.Print(b.TakeUp)
	}
	if m.Alike {
		each, asked := tenths(m.Took), tenths(b.TakeUp/float64(b.Folds))
		took += ", about " + each + " each"
		if top != should && each != asked {
			took += fmt.Sprintf(" instead of %s: %s", asked, b.offBy(unit))
		}
	}
	return []string{edge, took, b.fit(piece, unit)}
}

// tenths prints a length to a tenth of a millimetre. Half a tenth is rounded up
// whatever the last bit says: 6.35 mm, a quarter of an inch, is what most tucks take.
func tenths(mm float64) string {
	return strconv.FormatFloat(math.Round(mm*10+sameLength)/10, 'f', 1, 64) + " mm"
}

// offBy says by how much each fold is off, in what a ruler shows: "1/16 in too
// little on every 5 tucks".
func (b *Block) offBy(unit Unit) string {
	off := b.TakeUp/float64(b.Folds) - b.Measure.Took
	verdict := "too little"
	if off < 0 {
		off, verdict = -off, "too much"
	}
	one := strings.TrimSuffix(b.what(), "s")
	n := int(math.Round(unit.ruler() / off))
	if n <= 1 {
		return fmt.Sprintf("%s %s on every %s", unit.Print(off), verdict, one)
	}
	return fmt.Sprintf("%s %s on every %d %ss", unit.Print(unit.ruler()), verdict, n, one)
}

// ruler is the smallest step that Print tells, in mm.
func (u Unit) ruler() float64 {
	if u == Inch {
		return u.MM() / sixteenths
	}
	return 1
}

// fit says whether the piece can be cut from the block as it has become.
func (b *Block) fit(piece *Piece, unit Unit) string {
	spare := b.Measure.Spare
	if unit.Print(b.Measure.Top) == unit.Print(b.Widest) {
		return "the piece just fits"
	}
	if spare > 0 {
		return fmt.Sprintf("the piece fits, with %s to spare at each side", unit.Print(spare))
	}
	allowance := b.sideAllowance(piece)
	switch left := allowance + spare; {
	case left >= leastLeft:
		return fmt.Sprintf("the piece is %s too wide for it at each side: of the allowance of %s there, %s is left",
			unit.Print(-spare), unit.Names(allowance), unit.Print(left))
	case allowance > 0:
		return fmt.Sprintf("the piece does not fit: it is %s too wide for it at each side, and the allowance there is only %s",
			unit.Print(-spare), unit.Names(allowance))
	}
	return fmt.Sprintf("the piece does not fit: it is %s too wide for it at each side, and has no allowance there", unit.Print(-spare))
}

// sideAllowance is the allowance at the widest places of the piece, measured across
// the folds: of the edge there that runs most nearly along them, and of the two
// sides the narrower one.
func (b *Block) sideAllowance(piece *Piece) float64 {
	narrowest := math.Inf(1)
	for _, side := range []float64{-1, 1} {
		if side < 0 && b.folding.onAxis {
			continue // the centre
		}
		widest := b.us.to
		if side < 0 {
			widest = b.us.from
		}
		steepest, allowance := -1.0, 0.0
		for _, e := range piece.Edges {
			for i := 1; i < len(e.Path); i++ {
				from, to := e.Path[i-1].Sub(b.folding.origin).Dot(b.folding.out), e.Path[i].Sub(b.folding.origin).Dot(b.folding.out)
				if side*(widest-from) > samePoint && side*(widest-to) > samePoint {
					continue
				}
				along := e.Path[i].Sub(e.Path[i-1]).Unit().Dot(b.folding.out.Left())
				if math.Abs(along) > steepest {
					steepest, allowance = math.Abs(along), e.Allowance
				}
			}
		}
		narrowest = min(narrowest, allowance)
	}
	return narrowest
}
