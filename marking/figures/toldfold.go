package figures

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/lay"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sheet"
)

// Rules of this file: what is told of tucks and pleats, each by its row in the table of its set,
// and of the block they are sewn in.

// toldRow is a row of tucks or pleats, with its table.
type toldRow struct {
	piece.FoldRow
	of    thing
	about []string   // what it is, in parts
	table mark.Table // of where its folds lie, in their order
}

// folds tells the lines of all tucks of a piece, and of the pleats across it.
func (t teller) folds(p *piece.Piece) []toldLine {
	var all []toldLine
	for _, row := range p.TuckRows {
		all = append(all, t.row(p, toldRow{row.FoldRow, thing{"tuck", row.Key}, sheet.DescribeTucks(row, t.named), tuckTable(row, p, t.writer)})...)
	}
	for _, row := range p.PleatRows {
		all = append(all, t.row(p, toldRow{row.FoldRow, thing{"pleat", row.Key}, sheet.DescribePleats(row, t.named), pleatTable(row, p, t.writer)})...)
	}
	return all
}

// row tells the lines of a row: of its folds, each by itself, and where they end.
func (t teller) row(p *piece.Piece, r toldRow) []toldLine {
	set := mark.Fact{What: r.Makes.String() + "s", Value: strings.TrimPrefix(r.about[0], r.Key+": ")}
	told := func(facts ...[]mark.Fact) mark.Told {
		return mark.Told{Facts: slices.Concat([]mark.Fact{ofPiece(p)}, slices.Concat(facts...)), Places: []fault.Place{r.Place}}
	}
	var all []toldLine
	ends := foldEnds(p, r.FoldRow, t.Unit)
	for i, f := range r.Folds {
		facts := append([]mark.Fact{{What: "measured", Value: r.table.Heads[0]}}, rowFacts(r.table, i)...)
		if r.Makes == piece.TuckFolds { // by itself, "when sewn" would be taken for the fold
			facts[len(facts)-1].What = "stitching, " + facts[len(facts)-1].What
		}
		if i < len(ends) {
			facts = append(facts, t.endFacts(p, r.FoldRow, ends[i])...)
		}
		one := told(facts, []mark.Fact{set}, said("", r.table.Lines))
		what := fmt.Sprintf("%s %d of %s", r.Makes, f.Number+1, r.Key)
		if r.Count == 1 {
			what = fmt.Sprintf("%s %s", r.Key, r.Makes)
		}
		for _, role := range foldRoles(r.Makes) {
			all = append(all, toldLine{one, r.FoldKey(f, role), r.of, role, what})
		}
	}
	for i, key := range r.EndKeys() {
		if end := r.Folds[0].End; !end.Given || i > 0 && !end.Free {
			break
		}
		end := told([]mark.Fact{set}, sentences(r.about[1:]))
		end.Title = "where the " + r.Does([...]string{"end", "begin"}[i])
		all = append(all, toldLine{end, key, r.of, mark.TuckEnd, ""})
	}
	return all
}

// foldRoles are those of the lines that a fold may have.
func foldRoles(makes piece.FoldKind) []mark.Role {
	if makes == piece.TuckFolds {
		return []mark.Role{mark.TuckFold, mark.TuckStitch}
	}
	return []mark.Role{mark.PleatFold, mark.Placement, mark.Arrow}
}

// endFacts say where a fold of a row ends, and begins if it does so on the piece.
func (t teller) endFacts(p *piece.Piece, r piece.FoldRow, e foldEnd) []mark.Fact {
	if r.Folds[0].End.Free {
		edge, below := edgeAbove(p)
		where := func(a length.Amount) string { return side(a, t.length) + " " + edge }
		return []mark.Fact{{What: "begins", Value: where(below(e).Less(e.long))}, {What: "ends", Value: where(below(e))}, {What: "long", Value: t.length(e.long)}}
	}
	var facts []mark.Fact
	for _, d := range depthsOf(p) {
		facts = append(facts, mark.Fact{What: "ends", Value: side(d.of(e), t.length) + " " + d.from(e)})
	}
	return facts
}

// edgePleats tells the lines of the pleats that lie in edges.
func (t teller) edgePleats(p *piece.Piece) []toldLine {
	var all []toldLine
	for _, set := range edgePleatSets(p) {
		first := set[0]
		facts := slices.Concat([]mark.Fact{ofPiece(p), {What: "edge", Value: p.Edges[first.Edge].Key}}, t.pleatFacts(set, p), said("", edgePleatTable(set, p, t.writer).Lines))
		what := first.Key + " pleat"
		if len(set) > 1 {
			what = first.Key + " pleats"
		}
		for _, role := range foldRoles(piece.PleatFolds) {
			all = append(all, toldLine{mark.Told{Facts: facts, Places: []fault.Place{first.Place}}, mark.KeyWith(first.Key, role), thing{"pleat", first.Key}, role, what})
		}
	}
	return all
}

// pleatFacts say where the pleats of a set lie in their edge; their lines are called alike.
func (t teller) pleatFacts(set []piece.EdgePleat, p *piece.Piece) []mark.Fact {
	table := edgePleatTable(set, p, t.writer)
	var facts []mark.Fact
	for i := range set {
		for _, f := range rowFacts(table, i) {
			if f.What == table.Heads[1] {
				f.Value += " from " + set[i].From
			}
			if len(set) > 1 {
				f.What = strconv.Itoa(i+1) + ", " + f.What
			}
			facts = append(facts, f)
		}
	}
	return facts
}

// block tells the torn edges of the block that a piece is cut from, which is one of those that
// are torn, the rows of a table.
func (t teller) block(p *piece.Piece, torn []lay.Cutting, table mark.Table) []toldLine {
	if p.Block == nil {
		return nil
	}
	facts := []mark.Fact{ofPiece(p)}
	for i, c := range torn {
		if c.Name == p.Name && c.What == lay.TornBlock {
			row := rowFacts(table, i)
			row[0].What = "tear"
			facts = append(facts, row...)
		}
	}
	facts = append(facts, mark.Fact{Value: tuckedMeasure(p.Block, t.writer)})
	var all []toldLine
	for _, name := range sheet.TornEdges() {
		all = append(all, toldLine{mark.Told{Title: name + " of the block", Facts: facts, Places: []fault.Place{p.Block.Place}}, name, thing{kind: blockThing}, mark.BlockEdge, ""})
	}
	return all
}
