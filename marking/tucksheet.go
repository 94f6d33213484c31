package marking

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. The tuck sheet is the part of a block that carries lines:
// from its torn top edge to below the end line, from the centre line to beyond the
// last stitching. Its lines run up to the torn edge, for the tucks are sewn before
// anything is cut. The tuck ruler has a tick at every line, for cloth that cannot
// be traced: ticked along the top edge and along the end line, and ruled between.

const (
	sheetFoot   = 25.4 * 7 / 4    // below the end line, in mm: room for what is to be read there
	sheetMargin = 25.4 / 2        // around the lines of a tuck sheet, in mm
	sheetReach  = 25.4 * 8        // from a line to the torn side that is drawn with it, at most, in mm
	rulerHeight = 25.4 * 5 / 4    // of a tuck ruler, in mm
	stitchTick  = rulerHeight / 3 // of a stitching, on a ruler, in mm
)

// tuckPaper is how far a tuck sheet reaches over its block.
type tuckPaper struct {
	below stretch // of v, from the torn edge to below the end line
	high  stretch // of v, of the paper
	wide  stretch // of u, of the paper
	// side tells that a torn side of the block is drawn with the lines, at torn.
	side bool
	torn float64
}

// tuckPaperOf returns how far the tuck sheet of a block reaches.
func tuckPaperOf(b *Block) tuckPaper {
	us, vs := linesOf(b)
	t := besides(b, us)
	t.below = vs
	if b.up > 0 {
		t.below.from = max(vs.from-sheetFoot, b.bottom())
	} else {
		t.below.to = min(vs.to+sheetFoot, b.bottom())
	}
	// The name of the torn edge stands over it, clear of the lines.
	t.high = t.below
	if b.up > 0 {
		t.high.to += sheetMargin
	} else {
		t.high.from -= sheetMargin
	}
	return t
}

// linesOf returns the stretches of u and v over which a block carries lines.
func linesOf(b *Block) (us, vs stretch) {
	vs = stretch{b.top(), b.top()}
	for _, r := range b.folding.rows {
		for _, f := range r.folds {
			for _, u := range []float64{0, f.near, f.far()} {
				if u < 0 && b.folding.onAxis {
					continue
				}
				us.from, us.to = min(us.from, b.flatU(r, u)), max(us.to, b.flatU(r, u))
			}
			vs.from, vs.to = min(vs.from, b.begin(r), b.level(r, f)), max(vs.to, b.begin(r), b.level(r, f))
		}
	}
	return us, vs
}

// besides returns how far a tuck sheet reaches to the sides of its lines. On the
// fold it begins at the centre. Elsewhere it goes on to the nearer torn side of the
// block, where that is near enough.
func besides(b *Block, us stretch) tuckPaper {
	t := tuckPaper{wide: stretch{us.from - sheetMargin, us.to + sheetMargin}}
	if b.folding.onAxis {
		t.wide.from = 0
		return t
	}
	flat := func(u float64) float64 { return b.folding.flat.U(b.folding.flat.Flat(b.at(u, 0))) }
	left, right := flat(b.us.from)-b.Sides, flat(b.us.to)+b.Sides
	if us.from-left <= right-us.to {
		t.torn, t.side = left, us.from-left <= sheetReach
	} else {
		t.torn, t.side = right, right-us.to <= sheetReach
	}
	if t.side {
		t.wide = stretch{min(t.wide.from, t.torn), max(t.wide.to, t.torn)}
	}
	return t
}

// tuckSheet returns the tuck sheet of a piece.
func tuckSheet(p *Piece, pattern *Pattern) Marking {
	b := p.Block
	paper := tuckPaperOf(b)
	m := Marking{Key: p.Key + " tuck sheet", Name: p.Name + ": tuck sheet", Outline: b.rectangle(paper.wide, paper.high)}
	m.Notes = b.notes(pattern.Unit)
	markTornEdges(&m, b, paper)
	for _, line := range baseLines(p) {
		m.add(Centre, line.name, b.along(line.u, paper.high))
		if paper.side {
			m.Notes = append(m.Notes, fmt.Sprintf("%s lies %s from the torn side", line.name, pattern.Unit.Print(math.Abs(line.u-paper.torn))))
		}
	}
	for _, cross := range crosses(p) {
		if v := b.v(cross); b.folding.onAxis && v > paper.below.from && v < paper.below.to {
			m.Marks = append(m.Marks, crossAt(cross, b.folding.out)...)
		}
	}
	for _, r := range b.folding.rows {
		markBlockRow(&m, b, r)
	}
	m.Notes = append(m.Notes, foldNotes(p, pattern.Unit)...)
	if b.Measure != nil {
		m.Notes = append(m.Notes, b.measured(p, pattern.Unit)...)
	}
	if b.folding.onAxis {
		return p.printed(m, b.folding.origin, b.folding.out)
	}
	return m
}

// markTornEdges draws the edges of the block that a tuck sheet reaches.
func markTornEdges(m *Marking, b *Block, paper tuckPaper) {
	top := b.across(paper.wide, b.top())
	if b.up < 0 {
		top = top.Reversed()
	}
	m.add(BlockEdge, "top edge of the block", top)
	if bottom := b.bottom(); bottom == paper.below.from || bottom == paper.below.to {
		m.add(BlockEdge, "bottom edge of the block", b.across(paper.wide, bottom))
	}
	if paper.side {
		m.add(BlockEdge, "side edge of the block", b.along(paper.torn, paper.high))
	}
}

// markBlockRow draws the lines of a row on its block, from the torn edge to where they
// end.
func markBlockRow(m *Marking, b *Block, r row) {
	for _, f := range r.folds {
		vs := stretch{b.begin(r), b.level(r, f)}
		for _, l := range f.lines {
			u := b.flatU(r, l.u)
			if b.folding.onAxis && u < samePoint {
				continue // the centre line, or the other half
			}
			m.add(l.role, "", b.along(u, vs))
		}
		if r.kind == pleatFolds {
			v := vs.from + arrowDown*(vs.to-vs.from)
			m.add(Arrow, "", b.across(stretch{b.flatU(r, f.at), b.flatU(r, f.placement())}, v))
		}
	}
	if end := r.endLine(); end != nil {
		m.add(TuckEnd, fmt.Sprintf("the %s %ss end here", r.key, r.kind), end)
	}
}

// foldNotes says, in parts, what the tucks of a piece and the pleats across it are.
func foldNotes(p *Piece, unit Unit) []string {
	var notes []string
	for _, t := range p.Tucks {
		notes = append(notes, describeTuck(t, unit.Names)...)
	}
	for _, pleats := range p.Pleatings {
		notes = append(notes, describePleating(pleats, unit.Names)...)
	}
	return notes
}

// endsBelow says how far below the torn edge the folds end, for cloth that is ruled:
// in one number for each row, or in one for each of its folds.
func endsBelow(b *Block, unit Unit) []string {
	var notes []string
	for _, r := range b.folding.rows {
		if !r.folds[0].end.given {
			continue
		}
		var ends []string
		for _, f := range r.folds {
			if end := unit.Print(math.Abs(b.level(r, f) - b.begin(r))); len(ends) <= f.number {
				ends = append(ends, end)
			}
		}
		if all := slices.Compact(slices.Clone(ends)); len(all) == 1 {
			notes = append(notes, fmt.Sprintf("the %s %ss end %s from the torn edge", r.key, r.kind, all[0]))
		} else {
			notes = append(notes, fmt.Sprintf("the %s %ss end, measured from the torn edge, first to last: %s", r.key, r.kind, strings.Join(ends, ", ")))
		}
	}
	return notes
}

// baseLine is a line that tucks are measured from.
type baseLine struct {
	name string
	u    float64
}

// baseLines returns the lines that the rows of a block are measured from, each
// once; first the centre of a piece that lies on the fold, which they may be
// measured from or not.
func baseLines(p *Piece) []baseLine {
	b := p.Block
	var lines []baseLine
	if b.folding.onAxis {
		name := p.Edges[p.foldEdge()].Key
		if b.onCentre() {
			name += ", and the fold of tuck 1"
		}
		lines = append(lines, baseLine{name, 0})
	}
	for _, r := range b.folding.rows {
		u := b.folding.offset(r)
		if !slices.ContainsFunc(lines, func(l baseLine) bool { return math.Abs(l.u-u) < samePoint }) {
			lines = append(lines, baseLine{r.base.name, u})
		}
	}
	return lines
}

// tuckRuler returns the tuck ruler of a piece.
func tuckRuler(p *Piece, pattern *Pattern) Marking {
	b := p.Block
	us, _ := linesOf(b)
	wide := stretch{us.from - sheetMargin, us.to + sheetMargin}
	if b.folding.onAxis {
		wide.from = 0
	}
	m := Marking{Key: p.Key + " tuck ruler", Name: p.Name + ": tuck ruler", Outline: b.rectangle(wide, stretch{0, rulerHeight})}
	for i := 1; i < len(m.Outline); i++ {
		m.add(Cut, "", plane.Path{m.Outline[i-1], m.Outline[i]})
	}
	for _, line := range baseLines(p) {
		if !b.folding.onAxis || line.u > samePoint { // else the strip ends there
			m.add(Centre, line.name, b.along(line.u, stretch{0, rulerHeight}))
		}
	}
	for _, r := range b.folding.rows {
		tickRow(&m, b, r)
	}
	m.Notes = append([]string{"a tick at every line: tick along the torn edge and along the end line, and rule between"}, endsBelow(b, pattern.Unit)...)
	if b.folding.onAxis {
		m.Notes = append(m.Notes, "its end lies on "+p.Edges[p.foldEdge()].Key+"; turn it over for the other half")
	}
	return m
}

// tickRow draws a tick of a ruler for every line of a row; the first of each tuck has its
// number.
func tickRow(m *Marking, b *Block, r row) {
	told := -1
	for _, f := range r.folds {
		for _, l := range f.lines {
			u := b.flatU(r, l.u)
			if b.folding.onAxis && u < samePoint {
				continue
			}
			if l.role == TuckStitch || l.role == Placement {
				m.add(l.role, "", b.along(u, stretch{0, stitchTick}))
				continue
			}
			number := ""
			if told != f.number {
				number, told = strconv.Itoa(f.number+1), f.number
			}
			m.add(l.role, number, b.along(u, stretch{0, 2 * stitchTick}))
		}
	}
}
