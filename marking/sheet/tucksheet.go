package sheet

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. The tuck sheet is the part of a block that carries lines:
// from its torn top edge to below the end line, from the centre line to beyond the
// last stitching. Its lines run up to the torn edge, for the tucks are sewn before
// anything is cut. Of a block that is stitched already it says what still holds.

const (
	sheetFoot   = 25.4 * 7 / 4 // below the end line, in mm: room for what is to be read there
	sheetHead   = 25.4 * 5 / 8 // beyond a torn edge, in mm: room for two rows of words
	sheetBeside = 25.4 * 5 / 4 // to the sides of its lines, in mm: room for what the rows are, and the depth
	sheetReach  = 25.4 * 8     // from a line to the torn side that is drawn with it, at most, in mm
)

// tuckPaper is how far a tuck sheet reaches over its block.
type tuckPaper struct {
	below piece.Stretch // of v, from the torn edge to below the end line
	high  piece.Stretch // of v, of the paper
	wide  piece.Stretch // of u, of the paper
	// side tells that a torn side of the block is drawn with the lines, at torn.
	side bool
	torn float64
}

// tuckPaperOf returns how far the tuck sheet of a block reaches.
func tuckPaperOf(b *piece.Block) tuckPaper {
	us, vs := linesReach(b)
	t := besides(b, us)
	t.below = vs
	if b.Up > 0 {
		t.below.From = max(vs.From-sheetFoot, b.LowerEdge())
	} else {
		t.below.To = min(vs.To+sheetFoot, b.LowerEdge())
	}
	// What stands at the ends of the folds is clear of the torn edges.
	t.high = t.below
	for _, edge := range []float64{b.UpperEdge(), b.LowerEdge()} {
		if edge == t.below.From {
			t.high.From -= sheetHead
		}
		if edge == t.below.To {
			t.high.To += sheetHead
		}
	}
	return t
}

// linesReach returns the stretches of u and v over which a block carries lines.
func linesReach(b *piece.Block) (us, vs piece.Stretch) {
	vs = piece.Stretch{From: b.UpperEdge(), To: b.UpperEdge()}
	for _, r := range b.Group.Rows {
		for _, f := range r.Folds {
			for _, u := range []float64{0, f.Near, f.Far()} {
				if u < 0 && b.Group.OnAxis {
					continue
				}
				us.From, us.To = min(us.From, b.FlatU(r, u)), max(us.To, b.FlatU(r, u))
			}
			vs.From, vs.To = min(vs.From, b.First(r, f), b.Level(r, f)), max(vs.To, b.First(r, f), b.Level(r, f))
		}
	}
	return us, vs
}

// besides returns how far a tuck sheet reaches to the sides of its lines. On the
// fold it begins at the centre. Elsewhere it goes on to the nearer torn side of the
// block, where that is near enough.
func besides(b *piece.Block, us piece.Stretch) tuckPaper {
	t := tuckPaper{wide: piece.Stretch{From: us.From - sheetBeside, To: us.To + sheetBeside}}
	if b.Group.OnAxis {
		t.wide.From = 0
		return t
	}
	flat := func(u float64) float64 { return b.Group.Folding.U(b.Group.Folding.Flat(b.At(u, 0))) }
	left, right := flat(b.Wide.From)-b.Sides, flat(b.Wide.To)+b.Sides
	if us.From-left <= right-us.To {
		t.torn, t.side = left, us.From-left <= sheetReach
	} else {
		t.torn, t.side = right, right-us.To <= sheetReach
	}
	if t.side {
		t.wide = piece.Stretch{From: min(t.wide.From, t.torn), To: max(t.wide.To, t.torn)}
	}
	return t
}

// tuckSheet returns the tuck sheet of a piece.
func tuckSheet(p *piece.Piece, pattern *garment.Pattern) mark.Marking {
	b := p.Block
	paper := tuckPaperOf(b)
	m := mark.Marking{
		Key: p.Key + " tuck sheet", Name: p.Name + ": tuck sheet", Kind: mark.TuckSheet, Piece: p.Name,
		Side: mark.RightSideUp, Outline: b.Rectangle(paper.wide, paper.high),
	}
	if p.IsTucked() {
		m.Notes = []string{b.Torn(pattern.Unit)}
	} else {
		m.Notes = b.Notes(pattern.Unit)
	}
	markTornEdges(&m, b, paper)
	for _, line := range baseLines(p) {
		m.Marks = append(m.Marks, line.mark(b, paper.high))
		if paper.side {
			m.Notes = append(m.Notes, fmt.Sprintf("%s lies %s from the torn side", line.name, pattern.Unit.OnRuler(math.Abs(line.u-paper.torn))))
		}
	}
	for _, c := range crossesOf(p) {
		if c.onBlock {
			addCross(&m, c, b.Group.Out)
		}
	}
	for _, r := range b.Group.Rows {
		markBlockRow(&m, b, r)
	}
	for _, r := range b.Group.Rows {
		tellBlockRow(&m, b, r, pattern.Unit)
	}
	measureEnds(&m, b, pattern.Unit)
	m.Notes = append(m.Notes, slices.Concat(describeFolds(p, pattern.Unit)...)...)
	if p.IsTucked() {
		m.Notes = append(m.Notes, b.MeasuredNotes(p, pattern.Unit)...)
		m.Steps = tuckedSteps(p, pattern.Unit)
	} else {
		m.Steps = []string{b.Tear(pattern.Unit), "mark " + marked(p, pattern.Unit)}
	}
	if b.Group.OnAxis {
		return p.Printed(m, b.Group.Origin, b.Group.Out)
	}
	return m
}

// What the edges of a block are called.
const (
	tornTop    = "torn top edge"
	tornBottom = "torn bottom edge"
	tornSide   = "torn side"
)

// TornEdges are what the edges of a block are called on its sheet.
func TornEdges() []string { return []string{tornTop, tornBottom, tornSide} }

// markTornEdges draws the edges of the block that a tuck sheet reaches.
func markTornEdges(m *mark.Marking, b *piece.Block, paper tuckPaper) {
	top := b.Crosswise(paper.wide, b.UpperEdge())
	if b.Up < 0 {
		top = top.Reversed()
	}
	m.Add(mark.BlockEdge, tornTop, top)
	if bottom := b.LowerEdge(); bottom == paper.below.From || bottom == paper.below.To {
		m.Add(mark.BlockEdge, tornBottom, b.Crosswise(paper.wide, bottom))
	}
	if paper.side {
		m.Add(mark.BlockEdge, tornSide, b.Lengthwise(paper.torn, paper.below))
	}
}

// markBlockRow draws the lines of a row on its block, from the torn edge, or from where they
// begin, to where they end.
func markBlockRow(m *mark.Marking, b *piece.Block, r piece.FoldRow) {
	for _, f := range r.Folds {
		vs := piece.Stretch{From: b.First(r, f), To: b.Level(r, f)}
		for _, l := range f.Lines {
			u := b.FlatU(r, l.U)
			if b.Group.OnAxis && u < piece.SamePoint {
				continue // the centre line, or the other half
			}
			m.Marks = append(m.Marks, mark.Mark{Role: l.Role, Name: r.LineName(f, l), Key: r.FoldKey(f, l.Role), Path: b.Lengthwise(u, vs)})
		}
		if r.Makes == piece.PleatFolds {
			at := b.FlatU(r, f.At)
			m.Add(mark.Arrow, "", piece.Arrow(b.Lengthwise(at, vs), b.Group.Out.Mul(b.FlatU(r, f.Placement())-at)))
		}
	}
	for i, end := range r.EndLines() {
		m.Marks = append(m.Marks, mark.Mark{Role: mark.TuckEnd, Name: r.EndNames()[i], Key: r.EndKeys()[i], Path: end})
	}
}

// baseLine is a line that tucks are measured from.
type baseLine struct {
	key, name string
	u         float64
}

// mark is the line over a stretch of a block.
func (l baseLine) mark(b *piece.Block, over piece.Stretch) mark.Mark {
	return mark.Mark{Role: mark.Centre, Name: l.name, Key: l.key, Path: b.Lengthwise(l.u, over)}
}

// baseLines returns the lines that the rows of a block are measured from, each
// once; first the centre of a piece that lies on the fold, which they may be
// measured from or not.
func baseLines(p *piece.Piece) []baseLine {
	b := p.Block
	var lines []baseLine
	if b.Group.OnAxis {
		key := p.Edges[p.EdgeOnFold()].Key
		name := key
		if b.OnCentre() {
			name += ", and the fold of tuck 1"
		}
		lines = append(lines, baseLine{key, name, 0})
	}
	for _, r := range b.Group.Rows {
		u := b.Group.Offset(r)
		if !slices.ContainsFunc(lines, func(l baseLine) bool { return math.Abs(l.u-u) < piece.SamePoint }) {
			lines = append(lines, baseLine{r.Base.Name, r.Base.Name, u})
		}
	}
	return lines
}

// marked says what of a tuck sheet is marked on the block: the lines of its folds until they are
// sewn, and what the cutting sheet is laid on; "" for nothing.
func marked(p *piece.Piece, unit length.Unit) string {
	b := p.Block
	var what []string
	if b.Group.OnAxis {
		what = append(what, "its centre")
	}
	if !p.IsTucked() {
		what = append(what, "the lines of the "+b.What())
	}
	for _, c := range crossesOf(p) {
		if c.onBlock {
			away := unit.OnRuler(math.Abs(b.V(c.at) - b.UpperEdge()))
			what = append(what, fmt.Sprintf("cross %s (%s from the torn top edge)", c.letter, away))
		}
	}
	return wording.Listed(what, "and")
}

// tuckedSteps says what is still done by the tuck sheet of a block that is stitched and measured,
// before it is cut.
func tuckedSteps(p *piece.Piece, unit length.Unit) []string {
	steps := []string{fmt.Sprintf("measure %s once more: it was %s", p.Block.WhereMeasured(), unit.OnRuler(p.Block.TopIs()))}
	if again := marked(p, unit); again != "" {
		steps = append(steps, "mark again what is washed out: "+again)
	}
	return steps
}

// blockSteps says what is done with a block once it is marked; nothing with one that is tucked.
func blockSteps(p *piece.Piece, unit length.Unit) []string {
	if p.IsTucked() {
		return nil
	}
	b := p.Block
	var steps []string
	for _, t := range p.TuckRows {
		steps = append(steps, tuckSteps(t, unit)...)
	}
	for _, pleats := range p.PleatRows {
		steps = append(steps, fmt.Sprintf("lay every fold of the %s to its placement line, as its arrow points, and tack it", pleats.Called()))
	}
	return append(steps, "measure "+b.WhereMeasured()+": it must be "+unit.OnRuler(b.TopMeasures))
}

// tuckSteps says how a set of tucks is sewn and pressed.
func tuckSteps(t piece.TuckRow, unit length.Unit) []string {
	lines, them, ends := "their fold lines", "them", "their ends"
	if t.InAll() == 1 {
		lines, them, ends = "its fold line", "it", "its end"
	}
	sew := fmt.Sprintf("fold the %s on %s and stitch %s %s from the fold", t.Called(), lines, them, unit.AsWritten(t.Width))
	if t.Twin {
		sew = fmt.Sprintf("sew the %s along %s with a twin needle", t.Called(), lines)
	}
	switch from, to := t.Between(); {
	case from != "":
		sew += fmt.Sprintf(", from %s to %s", from, to)
	case t.Folds[0].End.Given:
		sew += ", as far as " + ends
	}
	steps := []string{sew}
	if t.Press != source.Unpressed {
		steps = append(steps, "press "+them+" "+sideOf(t.Press, t.Base.Name))
	}
	return steps
}
