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

// Rules of this file: what a stitched block measures, and what follows from it. It is measured
// along its top edge. Where no fold is stitched there, since all begin on the block, it is
// measured across them.

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

// leastLeft is the narrowest allowance that can still be sewn, in mm: where less is
// left of one, the piece does not fit its block (common practice).
const leastLeft = 25.4 / 8

// takeMeasure works out what follows from what the top edge measured.
func (b *Block) takeMeasure(measured source.Length, found *Findings) bool {
	took := b.Width - measured.V
	if took < b.takenWhereMeasured()/2-SamePoint {
		found.Add(measured.Place, "measure "+b.WhereMeasured()+" after the tucks are sewn and pressed",
			"a block torn %s wide measures %s with all its %s in, which should take up %s",
			found.length(b.Width), found.Written(measured.V), b.whatAtTop(), found.length(b.takenWhereMeasured()))
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

// Across reports whether the block is measured across its folds, since none is stitched at its
// top edge.
func (b *Block) Across() bool { return b.TakenAtTop() < SamePoint }

// WhereMeasured says where it is measured: "the top edge", or "across the tucks".
func (b *Block) WhereMeasured() string {
	if b.Across() {
		return "across the " + b.What()
	}
	return "the top edge"
}

// TakenAtTop is what the folds take up that are stitched at the top of the block, in mm.
func (b *Block) TakenAtTop() float64 { return b.takenAt(b.UpperEdge()) }

// takenWhereMeasured is what the folds take up that are stitched where it is measured.
func (b *Block) takenWhereMeasured() float64 {
	if b.Across() {
		return b.TakeUp
	}
	return b.TakenAtTop()
}

// haveOneLevel looks whether a ruler can be laid across all folds of a block, where they all
// are stitched.
func (b *Block) haveOneLevel(found *Findings) bool {
	common := Stretch{math.Inf(-1), math.Inf(1)}
	for _, f := range b.Group.Folding.Folds() {
		common = Stretch{max(common.From, f.From), min(common.To, f.To)}
	}
	if common.To-common.From < LeastLine {
		r := b.Group.Rows[len(b.Group.Rows)-1]
		found.Add(r.ends.Place(), "leave the block out, and mark the piece flat; or have some of them begin at the top",
			"nowhere on the block all %s are sewn, so nothing says what it must measure", b.What())
		return false
	}
	return true
}

// TopIs is what the top edge measures once the folds are stitched, in mm, or the block across
// them: what it was measured to be, or what it must be.
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
		if e := r.Folds[0].End; e.Free || e.Given && b.Begin(r) != end {
			taken -= r.Taken()
		}
	}
	return taken
}

// share is how much of what it should take up every fold took, as a share; 1 before the block
// is measured.
func (b *Block) share() float64 { return (b.Width - b.TopIs()) / b.takenWhereMeasured() }

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

// someAtTop reports whether some folds are stitched at the top of the block, and others are not.
func (b *Block) someAtTop() bool { return b.OpenAtTop() > 0 && !b.Across() }

// whatAtTop names the folds that are stitched where the block is measured.
func (b *Block) whatAtTop() string {
	if b.someAtTop() {
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
	measures := "the top edge measures"
	if b.Across() {
		measures = b.WhereMeasured() + " it measures"
	}
	edge := fmt.Sprintf("%s %s, as it should", measures, top)
	took := fmt.Sprintf("the %d %s took up %s", b.foldCount, b.What(), unit.OnRuler(b.Width-m.top))
	if b.someAtTop() {
		took = fmt.Sprintf("the %s took up %s", b.whatAtTop(), unit.OnRuler(b.Width-m.top))
	}
	if top == should {
		return []string{edge, took, b.Fit(piece, unit)}
	}
	edge = fmt.Sprintf("%s %s and should measure %s", measures, top, should)
	took += " instead of " + unit.OnRuler(b.takenWhereMeasured())
	return []string{edge, took, b.Fit(piece, unit)}
}

// SampleForNext says what the file is to have, so that the next block comes out as this one
// has; "" where it came out as it should, or its folds are not all alike, or not all stitched
// at the top.
func (b *Block) SampleForNext(unit length.Unit) string {
	m := b.Measured
	if !m.alike || !b.allTucks() || b.someAtTop() || unit.OnRuler(m.top) == unit.OnRuler(b.TopMeasures) {
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
	if unit.OnRuler(b.DrawnIn()) == unit.OnRuler(b.widest) {
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
