package figures

import (
	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file. The cut length of an edge is that of its cutting line on the flat
// cloth, or on the tucked block that it is cut from; sewn, it is measured on its stitch line
// between those of its neighbours, with folds in.

// edgeSection lists the edges of every piece.
func edgeSection(p *garment.Pattern, w writer) mark.Section {
	s := mark.Section{Title: "Edges"}
	for i := range p.Pieces {
		s.Tables = append(s.Tables, edgeTable(&p.Pieces[i], w))
	}
	return s
}

// allowanceHead stands over what lies beyond the stitch lines of edges.
const allowanceHead = "allowance"

// hasAllowance reports whether what lies beyond the stitch line of an edge is an allowance, or
// would be one: beyond a hem and a fold lies something else.
func hasAllowance(e piece.Edge) bool { return !e.OnFold && e.Hem == 0 }

// edgeTable lists the edges of a piece, in their order.
func edgeTable(p *piece.Piece, w writer) mark.Table {
	t := mark.Table{Title: p.Name, Heads: []string{"", "cut", "sewn", allowanceHead}}
	if p.OnFold {
		t.Title += ", half of it"
	}
	for _, e := range edgeFigures(p, w.unit) {
		t.Add(e.Key, w.cell(e.cut), w.cell(e.sewn), beyond(p, e.Edge, w))
	}
	if p.Block != nil {
		t.Lines.Say("cut: from the tucked block, with the %s in as far as they are stitched", p.Block.What())
	}
	if len(p.FoldRows())+len(p.EdgePleats) > 0 {
		t.Lines.Say("sewn: with the tucks and pleats in")
	}
	return t
}

// beyond says what lies beyond the stitch line of an edge.
func beyond(p *piece.Piece, e piece.Edge, w writer) string {
	cell := func(mm float64) string { return w.cell(w.unit.Chosen(mm)) }
	switch {
	case e.OnFold && p.LiesFolded():
		return "on the fold"
	case e.OnFold:
		return "at the centre"
	case e.Hem > 0 && e.Turn > 0:
		return "hem " + cell(e.Hem) + ", turn " + cell(e.Turn)
	case e.Hem > 0:
		return "hem " + cell(e.Hem)
	case e.Allowance > 0:
		return cell(e.Allowance)
	}
	return "none"
}

// edgeFigure is an edge with its lengths as they are printed.
type edgeFigure struct {
	piece.Edge
	cut  length.Amount // on the flat cloth, or the tucked block
	sewn length.Amount // with tucks and pleats in
}

// edgeFigures lists the lengths of the edges of a piece.
func edgeFigures(p *piece.Piece, unit length.Unit) []edgeFigure {
	var all []edgeFigure
	for i, cut := range p.CutLengths() {
		e := p.Edges[i]
		all = append(all, edgeFigure{e, unit.Amount(cut), unit.Amount(e.FinishedLength)})
	}
	return all
}
