package figures

import (
	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file. The cut length of an edge is that of its cutting line on the flat
// cloth; sewn, it is measured on its stitch line between those of its neighbours, with folds in.

// edgeSection lists the edges of every piece.
func edgeSection(p *garment.Pattern, w Wording) mark.Section {
	s := mark.Section{Title: "Edges"}
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		t := mark.Table{Title: piece.Name, Heads: []string{"", "cut", "sewn", "allowance"}}
		if piece.OnFold {
			t.Title += ", half of it"
		}
		for _, e := range edgeFigures(piece, p.Unit) {
			t.Rows = append(t.Rows, mark.Row{Cells: []string{e.Key, w.cell(e.Cut), w.cell(e.Sewn), allowanceIn(e.edge, w, p.Unit)}})
		}
		if len(piece.FoldRows())+len(piece.EdgePleats) > 0 {
			t.Lines = []mark.Sentence{{Text: "sewn: with the tucks and pleats in"}}
		}
		s.Tables = append(s.Tables, t)
	}
	return s
}

// allowanceIn says what lies beyond the stitch line of an edge.
func allowanceIn(e piece.Edge, w Wording, unit length.Unit) string {
	switch {
	case e.OnFold:
		return "on the fold"
	case e.Hem > 0 && e.Turn > 0:
		return "hem " + w.cell(unit.Chosen(e.Hem)) + ", turn " + w.cell(unit.Chosen(e.Turn))
	case e.Hem > 0:
		return "hem " + w.cell(unit.Chosen(e.Hem))
	case e.Allowance > 0:
		return w.cell(unit.Chosen(e.Allowance))
	}
	return "none"
}

// EdgeFigure is how long one edge is.
type EdgeFigure struct {
	Key  string
	Cut  length.Amount // on the flat cloth
	Sewn length.Amount // with tucks and pleats in

	edge piece.Edge
}

// edgeFigures lists the lengths of the edges of a piece.
func edgeFigures(p *piece.Piece, unit length.Unit) []EdgeFigure {
	cut := p.CutLengths()
	var all []EdgeFigure
	for i, e := range p.Edges {
		all = append(all, EdgeFigure{Key: e.Key, Cut: unit.Amount(cut[i]), Sewn: unit.Amount(e.FinishedLength), edge: e})
	}
	return all
}
