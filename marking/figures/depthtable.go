package figures

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file. A ruler is laid along the fold line, from where the fold begins down
// to its end. What is the same for all folds of a row is said once; the rest is a table. Of folds
// that begin on the piece as well it is told where, and how long they are.

// foldEnd is how deep a fold of a row ends.
type foldEnd struct {
	number int
	edge   string        // at which it begins
	sewn   length.Amount // below the stitch line of that edge
	cut    length.Amount // below the cut edge
	torn   length.Amount // below the torn edge of the block
	long   length.Amount // of one that begins on the piece as well; 0 for others
}

// foldEnds lists how deep the folds of a row end; none for a row from edge to edge.
func foldEnds(p *piece.Piece, r piece.FoldRow, unit length.Unit) []foldEnd {
	var all []foldEnd
	for i, d := range p.Depths(r) {
		all = append(all, foldEnd{
			number: r.Folds[i].Number + 1, edge: p.Edges[d.Edge].Key,
			sewn: unit.Amount(d.Sewn), cut: unit.Amount(d.Cut), torn: unit.Amount(d.Torn), long: unit.Amount(d.Long),
		})
	}
	return all
}

// depth is one of the lines that the depth of folds is measured from.
type depth struct {
	head string // over its column
	from func(foldEnd) string
	of   func(foldEnd) length.Amount
}

// depthsOf lists what the depth of the folds of a piece is measured from.
func depthsOf(p *piece.Piece) []depth {
	depths := []depth{
		{"stitch line", func(e foldEnd) string { return "the stitch line of " + e.edge }, func(e foldEnd) length.Amount { return e.sewn }},
		{"cut edge", func(foldEnd) string { return "the cut edge" }, func(e foldEnd) length.Amount { return e.cut }},
	}
	if p.Block != nil {
		depths = append(depths, depth{"torn edge", func(foldEnd) string { return "the torn edge of the block" }, func(e foldEnd) length.Amount { return e.torn }})
	}
	return depths
}

// depthTables are a table of how deep the folds of a row end, where that differs from one
// to the other. What does not is added to what is said of the row.
func depthTables(p *piece.Piece, r piece.FoldRow, said *mark.Lines, w writer) []mark.Table {
	ends := foldEnds(p, r, w.unit)
	if len(ends) == 0 {
		return nil
	}
	if r.Folds[0].End.Free {
		return betweenTables(p, r, ends, said, w)
	}
	var columns []depth
	var same []string
	for _, d := range depthsOf(p) {
		first := ends[0]
		if w.depths == depthsEach || slices.ContainsFunc(ends, func(e foldEnd) bool { return d.from(e) != d.from(first) || d.of(e).Steps != d.of(first).Steps }) {
			columns = append(columns, d)
		} else {
			same = append(same, side(d.of(first), w.length)+" "+d.from(first))
		}
	}
	if len(same) > 0 {
		said.Say("%s ends %s", oneOf(r.InAll()), wording.Listed(same, "and"))
	}
	if len(columns) == 0 {
		return nil
	}
	t := mark.Table{Title: fmt.Sprintf("%s, %s: how deep the %ss end", p.Name, r.Key, r.Makes), Heads: []string{"down each fold line, below"}}
	for _, d := range columns {
		t.Heads = append(t.Heads, d.head)
	}
	for _, e := range ends {
		cells := []string{fmt.Sprintf("%s %d, %s", r.Makes, e.number, e.edge)}
		for _, d := range columns {
			cells = append(cells, strings.TrimSuffix(side(d.of(e), w.cell), " below"))
		}
		t.Add(cells...)
	}
	if slices.ContainsFunc(ends, func(e foldEnd) bool { return e.edge != ends[0].edge }) {
		t.Lines.Say("each %s is told at the edge that its fold line runs into; near a corner its stitching may run into the other", r.Makes)
	}
	return []mark.Table{t}
}

// betweenTables are a table of where the folds of a row begin and end that run between two lines,
// down from the edge above, of a block the torn one; what is the same for all is said once.
func betweenTables(p *piece.Piece, r piece.FoldRow, ends []foldEnd, said *mark.Lines, w writer) []mark.Table {
	edge, below := edgeAbove(p)
	t := mark.Table{
		Title: fmt.Sprintf("%s, %s: where the %ss begin and end", p.Name, r.Key, r.Makes),
		Heads: []string{"below " + edge, "begins", "ends", "long"},
	}
	for _, e := range ends {
		t.Add(fmt.Sprintf("%s %d", r.Makes, e.number), w.cell(below(e).Less(e.long)), w.cell(below(e)), w.cell(e.long))
	}
	first := ends[0]
	if slices.ContainsFunc(ends, func(e foldEnd) bool { return below(e).Steps != below(first).Steps || e.long.Steps != first.long.Steps }) {
		return []mark.Table{t}
	}
	said.Say("%s begins %s and ends %s %s, and is %s long", oneOf(r.InAll()), w.length(below(first).Less(first.long)), side(below(first), w.length), edge, w.length(first.long))
	return nil
}

// edgeAbove is the edge above folds that run between two lines, and how far below it one ends.
func edgeAbove(p *piece.Piece) (edge string, below func(foldEnd) length.Amount) {
	if p.Block != nil {
		return "the torn edge of the block", func(e foldEnd) length.Amount { return e.torn }
	}
	return "the cut edge", func(e foldEnd) length.Amount { return e.cut }
}

// side says how far below a line something ends, or above it.
func side(a length.Amount, written func(length.Amount) string) string {
	if a.Steps < 0 {
		return written(a.Magnitude()) + " above"
	}
	return written(a) + " below"
}
