package sheet

import (
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file. The tuck ruler is a strip that has a tick at every line of a block,
// for cloth that cannot be traced: ticked along the top edge and along the end line, and
// ruled between. The tick of a fold is twice as long as that of a stitching.

const (
	rulerHeight = 25.4 * 5 / 4    // in mm
	stitchTick  = rulerHeight / 3 // of a stitching, in mm
	foldTick    = 2 * stitchTick  // of a fold, in mm
)

// tuckRuler returns the tuck ruler of a piece.
func tuckRuler(p *piece.Piece, pattern *garment.Pattern) mark.Marking {
	b := p.Block
	us, _ := linesReach(b)
	wide := piece.Stretch{From: us.From - sheetBeside, To: us.To + sheetBeside}
	if b.Group.OnAxis {
		wide.From = 0
	}
	m := mark.Marking{Key: p.Key + " tuck ruler", Name: p.Name + ": tuck ruler", Kind: mark.TuckRuler, Piece: p.Name, Outline: b.Rectangle(wide, piece.Stretch{From: 0, To: rulerHeight})}
	cutAllRound(&m)
	for _, line := range baseLines(p) {
		if !b.Group.OnAxis || line.u > piece.SamePoint { // else the strip ends there
			m.Marks = append(m.Marks, line.mark(b, piece.Stretch{From: 0, To: rulerHeight}))
		}
	}
	for _, r := range b.Group.Rows {
		tickRow(&m, b, r)
		tellTicks(&m, b, r, pattern.Unit)
	}
	m.Notes = endsBelow(b, pattern.Unit)
	m.Steps = rulerSteps(p)
	return m
}

// rulerSteps says how a block is ruled by the ticks of its ruler.
func rulerSteps(p *piece.Piece) []string {
	b := p.Block
	lay := "lay it along the torn edge"
	if slices.ContainsFunc(b.Group.Rows, func(r piece.FoldRow) bool { return r.Folds[0].End.Free }) {
		lay = "lay it along the line where the tucks begin"
		if !b.Across() {
			lay = "lay it along the torn edge, or along the line where the tucks begin"
		}
	}
	if b.Group.OnAxis {
		lay += ", with the end from which it counts on " + p.Edges[p.EdgeOnFold()].Key
	}
	again := "the end line"
	if !slices.ContainsFunc(b.Group.Rows, func(r piece.FoldRow) bool { return r.Folds[0].End.Given }) {
		again = "the other torn edge"
	}
	steps := []string{"cut it out", lay, "tick the cloth at every line, and again along " + again, "rule from tick to tick"}
	if b.Group.OnAxis {
		steps = append(steps, "turn it over for the other half")
	}
	return steps
}

// tickRow draws a tick of a ruler for every line of a row.
func tickRow(m *mark.Marking, b *piece.Block, r piece.FoldRow) {
	for _, f := range r.Folds {
		for _, l := range f.Lines {
			u := b.FlatU(r, l.U)
			if b.Group.OnAxis && u < piece.SamePoint {
				continue
			}
			long := stitchTick
			if l.Role == mark.TuckFold || l.Role == mark.PleatFold {
				long = foldTick
			}
			m.Marks = append(m.Marks, mark.Mark{Role: l.Role, Key: r.FoldKey(f, l.Role), Path: b.Lengthwise(u, piece.Stretch{From: 0, To: long})})
		}
	}
}

// tellTicks writes at the ticks of the folds of a row which they are, and how far from the
// base they lie.
func tellTicks(m *mark.Marking, b *piece.Block, r piece.FoldRow, unit length.Unit) {
	c := onBlock(b, r)
	for i, f := range c.folds {
		c.lines[i] = b.Lengthwise(b.FlatU(r, f.At), piece.Stretch{From: 0, To: foldTick})
	}
	w := wordsFor(m, r, c.out)
	w.row(c.told(1, fromBase(unit)), w.number(c.told(1, numbered)), c.baseOf(unit))
}

// endsBelow says how far from the torn edge the folds of a block end, for cloth that is
// ruled.
func endsBelow(b *piece.Block, unit length.Unit) []string {
	var notes []string
	for _, r := range b.Group.Rows {
		notes = append(notes, describeEnds(r, blockDepths(b, r), unit)...)
	}
	return notes
}
