package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/source"
)

// Rules of this file. A tucked front is torn as a rectangle, tucked, and only then
// cut out (Watson, Textiles and Clothing, 1907, p. 185). Across its tucks the block is
// as wide as the finished piece at its widest and all take-ups together, and as long as
// the finished piece; to which come spare cloth at the sides and at both ends. After
// stitching, its top edge must measure what the folds that are stitched there leave of the
// width. At either end, where tucks are open, it is drawn in to what all of them leave. Half
// an inch at either end is common practice.

// Block is the rectangle a piece is tucked in and then cut from.
type Block struct {
	Frame                    // of its folds: u across them, v along them
	Group       FlatGroup    // the folds
	Width       float64      // across the folds, as torn
	Length      float64      // along the folds, as torn
	Sides       float64      // spare cloth at each side
	TakeUp      float64      // of all folds of the whole block
	TopMeasures float64      // what the top edge must measure after stitching, or the block across its folds
	Wide        Stretch      // of the finished piece as it is drawn, across the folds
	Up          float64      // +1 where the top edge lies at greater v, else -1
	Cut         int          // how many blocks
	Measured    *MeasuredTop // once it is stitched; nil before that
	Place       fault.Place

	ends      float64 // spare cloth at top and at bottom
	foldCount int     // tucks and pleats of the whole block
	widest    float64 // of the finished piece, the whole of it
	long      Stretch // of the finished piece as it is drawn, along the folds
}

// defaultEnds is the spare cloth at top and bottom of a block whose file gives
// none, in mm: half an inch (common practice).
const defaultEnds = 25.4 / 2

// checkBlock works out the block of a piece, which has been unfolded.
func checkBlock(piece *Piece, ps source.PieceSpec, spec *source.Spec, all []FlatGroup, found *Findings) {
	bs := ps.Block
	switch {
	case !piece.DrawnFinished:
		found.Add(bs.Place, `draw the outline as the finished piece lies, and write drawn = "finished"`,
			"a block is tucked before the piece is cut, so the piece is drawn finished")
		return
	case len(all) == 0:
		found.Add(bs.Place, "leave it out, or give the piece its tucks", "a block is for a piece with tucks or pleats across it")
		return
	case len(all) > 1:
		found.Add(bs.Place, "tuck the block one way, and draw the growth tucks after it is cut", "the folds run two ways, and a block is torn for folds that run one way")
		return
	}
	b := &Block{Place: bs.Place, Frame: all[0].Frame, ends: defaultEnds, Sides: bs.Sides.V, Cut: piece.Cut, Group: all[0], Up: all[0].up()}
	if bs.Ends.Given() {
		b.ends = bs.Ends.V
	}
	b.Wide, b.long = b.Extent(piece.Outline)
	if piece.OnFold && !b.Group.OnAxis && !b.openOut(piece, found) {
		return
	}
	b.takeSizes(spec.Unit.V)
	if b.Across() && !b.haveOneLevel(found) {
		return
	}
	if bs.Measured.Given() && !b.takeMeasure(bs.Measured, found) {
		return
	}
	piece.Block = b
	b.checkCloth(piece, bs, spec.ClothWidth, found)
}

// takeSizes works out how large the block is torn.
func (b *Block) takeSizes(unit length.Unit) {
	b.widest = b.Wide.To - b.Wide.From
	if b.Group.OnAxis {
		b.widest = 2 * b.Wide.To
	}
	folds := b.Group.Folding.Folds()
	b.foldCount = len(folds)
	for _, one := range folds {
		b.TakeUp += 2 * one.Width
	}
	// What is torn must be readable on a ruler: a hair more is no harm.
	b.Width = unit.Up(b.widest + b.TakeUp + 2*b.Sides)
	b.Length = unit.Up(b.long.To - b.long.From + 2*b.ends)
	b.TopMeasures = b.Width - b.takenWhereMeasured()
}

// openOut has the block of a piece whose folds run square to the fold of the cloth
// reach over both halves of it, along the folds.
func (b *Block) openOut(piece *Piece, found *Findings) bool {
	for _, r := range b.Group.Rows {
		if r.Folds[0].End.Given {
			found.Add(r.ends.Place(), "draw the whole piece, or have them run from edge to edge",
				"the %ss run across the fold of the cloth and end on the piece, so a block cannot say where their other ends are", r.Makes)
			return false
		}
	}
	axis := b.V(piece.Edges[piece.EdgeOnFold()].Path[0])
	b.long = Stretch{min(b.long.From, 2*axis-b.long.To), max(b.long.To, 2*axis-b.long.From)}
	return true
}

// up is +1 where the tops of the folds lie at greater v, -1 where at less. Folds
// without an end, free ones, and those that hang from both ends, have their top where the drawing has it.
func (f FoldGroup) up() float64 {
	up, bothEnds := 0.0, false
	for _, r := range f.Rows {
		if end := r.Folds[0].End; end.Given && !end.Free {
			one := -math.Copysign(1, r.Downward().Dot(f.Along))
			bothEnds = bothEnds || one == -up
			up = one
		}
	}
	if up != 0 && !bothEnds {
		return up
	}
	if v := f.Along; v.Y < -SamePoint || math.Abs(v.Y) <= SamePoint && v.X < 0 {
		return -1
	}
	return 1
}

// checkCloth holds the block against the width of the cloth.
func (b *Block) checkCloth(piece *Piece, bs *source.BlockSpec, width source.Length, found *Findings) {
	if !width.Given() {
		return
	}
	if !b.alongGrain(piece) {
		if b.Length > width.V+SamePoint {
			found.Add(bs.Place, "take wider cloth, or less spare cloth at the ends; or turn the grain, so that the block lies along the cloth",
				"the tucks run across the grain, so the block of %s by %s lies with its length across the cloth, which is %s between the selvages: %s too narrow",
				found.length(b.Width), found.length(b.Length), found.Written(width.V), found.length(b.Length-width.V))
		}
		return
	}
	if b.Width > width.V+SamePoint {
		found.Add(bs.Place, "take wider cloth, fewer or narrower tucks, or less spare cloth at the sides; or make the block of two, joined under a tuck",
			"the block is %s wide, and the cloth is %s between the selvages: %s too narrow",
			found.length(b.Width), found.Written(width.V), found.length(b.Width-width.V))
	}
}

// Tear says how large a block is torn, in words: "tear a block 17 3/4 in wide and
// 15 in long".
func (b *Block) Tear(unit length.Unit) string {
	if b.Cut > 1 {
		return fmt.Sprintf("tear %d blocks, each %s", b.Cut, b.size(unit))
	}
	return "tear a block " + b.size(unit)
}

// Torn says what a block is that is stitched: "torn 17 3/4 in wide and 15 in long, its tucks are
// sewn".
func (b *Block) Torn(unit length.Unit) string {
	return fmt.Sprintf("torn %s, its %s are sewn", b.size(unit), b.What())
}

// size says how large a block is torn: "17 3/4 in wide and 15 in long".
func (b *Block) size(unit length.Unit) string {
	return fmt.Sprintf("%s wide and %s long", unit.OnRuler(b.Width), unit.OnRuler(b.Length))
}

// allTucks reports whether none of the folds of the block is a pleat.
func (b *Block) allTucks() bool {
	return !slices.ContainsFunc(b.Group.Rows, func(r FoldRow) bool { return r.Makes != TuckFolds })
}

// What names the folds of the block: "tucks", or "folds" where some are pleats.
func (b *Block) What() string {
	if b.allTucks() {
		return "tucks"
	}
	return "folds"
}

// Notes says what the folds of the block take up. What the top edge must measure then is told
// where it is measured.
func (b *Block) Notes(unit length.Unit) []string {
	return []string{fmt.Sprintf("all %s together take up %s", b.What(), unit.OnRuler(b.TakeUp))}
}
