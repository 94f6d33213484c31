package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
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
	TopMeasures float64      // what the top edge must measure after stitching
	Wide        Stretch      // of the finished piece as it is drawn, across the folds
	Up          float64      // +1 where the top edge lies at greater v, else -1
	Cut         int          // how many blocks
	Measured    *MeasuredTop // once it is stitched; nil before that

	ends      float64 // spare cloth at top and at bottom
	foldCount int     // tucks and pleats of the whole block
	widest    float64 // of the finished piece, the whole of it
	long      Stretch // of the finished piece as it is drawn, along the folds
}

// MeasuredTop is what the top edge of a block measured once it was stitched.
type MeasuredTop struct {
	top float64
	// alike tells that all folds are asked for equally wide, so that the average
	// says what each of them took.
	alike bool
	// spare is what is left beside the widest part of the piece, at both sides
	// together; below 0 that much is missing.
	spare float64
	place fault.Place
}

// defaultEnds is the spare cloth at top and bottom of a block whose file gives
// none, in mm: half an inch (common practice).
const defaultEnds = 25.4 / 2

// leastLeft is the narrowest allowance that can still be sewn, in mm: where less is
// left of one, the piece does not fit its block (common practice).
const leastLeft = 25.4 / 8

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
	b := &Block{Frame: all[0].Frame, ends: defaultEnds, Sides: bs.Sides.V, Cut: piece.Cut, Group: all[0], Up: all[0].up()}
	if bs.Ends.Given() {
		b.ends = bs.Ends.V
	}
	b.Wide, b.long = b.Extent(piece.Outline)
	if piece.OnFold && !b.Group.OnAxis && !b.openOut(piece, found) {
		return
	}
	b.takeSizes(spec.Unit.V)
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
	b.TopMeasures = b.Width - b.takenAt(b.UpperEdge())
}

// takeMeasure works out what follows from what the top edge measured.
func (b *Block) takeMeasure(measured source.Length, found *Findings) bool {
	took := b.Width - measured.V
	if took < b.takenAt(b.UpperEdge())/2-SamePoint {
		found.Add(measured.Place, "measure the top edge after the tucks are sewn and pressed",
			"a block torn %s wide measures %s with all its %s in, which should take up %s",
			found.length(b.Width), found.Written(measured.V), b.whatAtTop(), found.length(b.takenAt(b.UpperEdge())))
		return false
	}
	folds := b.Group.Folding.Folds()
	b.Measured = &MeasuredTop{
		top:   measured.V,
		alike: !slices.ContainsFunc(folds, func(f plane.Fold) bool { return math.Abs(f.Width-folds[0].Width) >= SamePoint }),
		place: measured.Place,
	}
	b.Measured.spare = b.DrawnIn() - b.widest
	return true
}

// openOut has the block of a piece whose folds run square to the fold of the cloth
// reach over both halves of it, along the folds.
func (b *Block) openOut(piece *Piece, found *Findings) bool {
	for _, r := range b.Group.Rows {
		if r.Folds[0].End.Given {
			found.Add(r.ends.Length.Place, "draw the whole piece, or have them run from edge to edge",
				"the %ss run across the fold of the cloth and end on the piece, so a block cannot say where their other ends are", r.Makes)
			return false
		}
	}
	axis := b.V(piece.Edges[piece.EdgeOnFold()].Path[0])
	b.long = Stretch{min(b.long.From, 2*axis-b.long.To), max(b.long.To, 2*axis-b.long.From)}
	return true
}

// up is +1 where the tops of the folds lie at greater v, -1 where at less. Folds
// without an end, or that hang from both ends, have their top where the drawing has it.
func (f FoldGroup) up() float64 {
	up, bothEnds := 0.0, false
	for _, r := range f.Rows {
		if r.Folds[0].End.Given {
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
	size := fmt.Sprintf("%s wide and %s long", unit.OnRuler(b.Width), unit.OnRuler(b.Length))
	if b.Cut > 1 {
		return fmt.Sprintf("tear %d blocks, each %s", b.Cut, size)
	}
	return "tear a block " + size
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

// TopIs is what the top edge measures once the folds are stitched, in mm: what it was
// measured to be, or what it must be.
func (b *Block) TopIs() float64 {
	if b.Measured != nil {
		return b.Measured.top
	}
	return b.TopMeasures
}

// takenAt is what the folds take up that are stitched at one of the torn ends, at that v:
// those that begin there, and those that run through.
func (b *Block) takenAt(end float64) float64 {
	taken := b.TakeUp
	for _, r := range b.Group.Rows {
		if r.Folds[0].End.Given && b.Begin(r) != end {
			taken -= r.Taken()
		}
	}
	return taken
}

// share is how much of what it should take up every fold took, as a share; 1 before the block
// is measured.
func (b *Block) share() float64 { return (b.Width - b.TopIs()) / b.takenAt(b.UpperEdge()) }

// DrawnIn is what the block measures across where all its folds are stitched, in mm, and to
// what it is drawn in where some are open.
func (b *Block) DrawnIn() float64 { return b.Width - b.share()*b.TakeUp }

// OpenBelow is how much wider than that the stitched block is at its bottom, in mm; 0 where
// all folds run on to it.
func (b *Block) OpenBelow() float64 { return b.openAt(b.LowerEdge()) }

// OpenAtTop is how much wider than that it is at its top: by the folds that hang from the
// bottom.
func (b *Block) OpenAtTop() float64 { return b.openAt(b.UpperEdge()) }

func (b *Block) openAt(end float64) float64 {
	if open := b.share() * (b.TakeUp - b.takenAt(end)); open >= SamePoint {
		return open
	}
	return 0
}

// whatAtTop names the folds that are stitched at the top of the block.
func (b *Block) whatAtTop() string {
	if b.OpenAtTop() > 0 {
		return b.What() + " at the top"
	}
	return b.What()
}

// MeasuredNotes says what the stitched block measured, and what follows, in parts, as it
// is read on a ruler. What one fold took is told by SampleForNext: a fraction of it would
// be finer than any ruler.
func (b *Block) MeasuredNotes(piece *Piece, unit length.Unit) []string {
	m := b.Measured
	top, should := unit.OnRuler(m.top), unit.OnRuler(b.TopMeasures)
	edge := fmt.Sprintf("the top edge measures %s, as it should", top)
	took := fmt.Sprintf("the %d %s took up %s", b.foldCount, b.What(), unit.OnRuler(b.Width-m.top))
	if b.OpenAtTop() > 0 {
		took = fmt.Sprintf("the %s took up %s", b.whatAtTop(), unit.OnRuler(b.Width-m.top))
	}
	if top == should {
		return []string{edge, took, b.Fit(piece, unit)}
	}
	edge = fmt.Sprintf("the top edge measures %s and should measure %s", top, should)
	took += " instead of " + unit.OnRuler(b.takenAt(b.UpperEdge()))
	return []string{edge, took, b.Fit(piece, unit)}
}

// SampleForNext says what the file is to have, so that the next block comes out as this one
// has; "" where it came out as it should, or its folds are not all alike, or not all stitched
// at the top.
func (b *Block) SampleForNext(unit length.Unit) string {
	m := b.Measured
	if !m.alike || !b.allTucks() || b.OpenAtTop() > 0 || unit.OnRuler(m.top) == unit.OnRuler(b.TopMeasures) {
		return ""
	}
	return fmt.Sprintf("for the next one: sample = {tucks = %d, flat = %q, sewn = %q}",
		b.foldCount, unit.AsWritten(b.Width), unit.AsWritten(m.top))
}

// Fit says whether the piece can be cut from the block as it has become.
func (b *Block) Fit(piece *Piece, unit length.Unit) string {
	spare, where := b.Measured.spare, "in all"
	if b.Group.OnAxis { // the centre lies in the middle
		spare, where = spare/2, "at each side"
	}
	if unit.OnRuler(b.Measured.top) == unit.OnRuler(b.widest) {
		return "the piece just fits"
	}
	if spare > 0 {
		return fmt.Sprintf("the piece fits, with %s to spare %s", unit.OnRuler(spare), where)
	}
	allowance := b.sideAllowance(piece)
	switch left := allowance + spare; {
	case left >= leastLeft:
		return fmt.Sprintf("the piece is %s too wide for it %s: of the allowance of %s there, %s is left",
			unit.OnRuler(-spare), where, unit.AsWritten(allowance), unit.OnRuler(left))
	case allowance > 0:
		return fmt.Sprintf("the piece does not fit: it is %s too wide for it %s, and the allowance there is only %s; let out a tuck or two",
			unit.OnRuler(-spare), where, unit.AsWritten(allowance))
	}
	return fmt.Sprintf("the piece does not fit: it is %s too wide for it %s, and has no allowance there; let out a tuck or two", unit.OnRuler(-spare), where)
}

// sideAllowance is the allowance at the widest places of the piece, measured across
// the folds: of the edge there that runs most nearly along them, and of the two
// sides the narrower one.
func (b *Block) sideAllowance(piece *Piece) float64 {
	narrowest := math.Inf(1)
	for _, side := range []float64{-1, 1} {
		if side < 0 && b.Group.OnAxis {
			continue // the centre
		}
		widest := b.Wide.To
		if side < 0 {
			widest = b.Wide.From
		}
		steepest, allowance := -1.0, 0.0
		for _, e := range piece.Edges {
			for i := 1; i < len(e.Path); i++ {
				from, to := b.U(e.Path[i-1]), b.U(e.Path[i])
				if side*(widest-from) > SamePoint && side*(widest-to) > SamePoint {
					continue
				}
				along := e.Path[i].Sub(e.Path[i-1]).Unit().Dot(b.Along)
				if math.Abs(along) > steepest {
					steepest, allowance = math.Abs(along), e.Allowance
				}
			}
		}
		narrowest = min(narrowest, allowance)
	}
	return narrowest
}
