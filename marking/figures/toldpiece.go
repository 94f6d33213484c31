package figures

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sheet"
)

// Rules of this file: what is told of a piece as a whole, and of its edges, with all that is sewn
// to them, of what stands in them, and of its lines.

// thing is what the file describes of a piece, by its kind and its name there: "edge", "neck".
// The zero thing is the piece.
type thing struct{ kind, name string }

// The kinds of those that a piece has one of, without a name.
const (
	blockThing = "block"
	grainThing = "grain"
)

// pieces tells every piece.
func (t teller) pieces() []toldPiece {
	torn, cut := lay.Cuttings(t.Pattern)
	tables := []mark.Table{cutTable("tear", torn, t.writer), cutTable("cut", cut, t.writer)}
	var all []toldPiece
	for i := range t.Pieces {
		p := &t.Pieces[i]
		one := toldPiece{piece: p, whole: t.piece(p, slices.Concat(torn, cut), tables)}
		one.lines = slices.Concat(t.edges(p), t.hems(p), t.fileLines(p), t.notches(p), t.edgePleats(p), t.folds(p), t.block(p, torn, tables[0]))
		one.lines = append(one.lines, t.grain(p))
		all = append(all, one)
	}
	return all
}

// piece tells a piece as a whole, which is one of some cuttings, the rows of two tables.
func (t teller) piece(p *piece.Piece, cuttings []lay.Cutting, tables []mark.Table) mark.Told {
	told := mark.Told{Title: p.Name, Places: []fault.Place{p.Place}}
	for i, c := range cuttings {
		if c.Name != p.Name || c.What != lay.CutPiece && c.What != lay.TornRectangle && c.What != lay.TornBlock {
			continue
		}
		table := tables[0]
		if n := len(table.Rows); i >= n {
			table, i = tables[1], i-n
		}
		facts := rowFacts(table, i)
		facts[0].What = table.Heads[0]
		told.Facts = append(told.Facts, facts...)
		break
	}
	if p.Block != nil {
		told.Facts = append(told.Facts, mark.Fact{Value: tuckedMeasure(p.Block, t.writer)}, mark.Fact{Value: sheet.CutHow(p)})
	}
	told.Facts = append(told.Facts, sentences(sheet.DescribeSizes(p, t.Unit))...)
	return told
}

// inFiles is the file that the pattern was read from, as the place of what has none of its own.
func (t teller) inFiles() []fault.Place {
	if len(t.Files) == 0 {
		return nil
	}
	return []fault.Place{{File: t.Files[0]}}
}

// ofPiece is which piece a line is of.
func ofPiece(p *piece.Piece) mark.Fact {
	if p.OnFold {
		return mark.Fact{What: "piece", Value: p.Name + ", half of it"}
	}
	return mark.Fact{What: "piece", Value: p.Name}
}

// edges tells the edges of a piece, and their stitch lines.
func (t teller) edges(p *piece.Piece) []toldLine {
	var all []toldLine
	table := edgeTable(p, t.writer)
	for i, e := range p.Edges {
		facts := append([]mark.Fact{ofPiece(p)}, rowFacts(table, i)...)
		for k := range facts {
			if facts[k].What == allowanceHead && !hasAllowance(e) {
				facts[k].What = "" // what stands there says itself what it is
			}
		}
		facts = append(facts, said("", table.Lines)...)
		facts = append(facts, t.standIn(p, i)...)
		facts = append(facts, t.sewnTo(p, e.Key)...)
		l := toldLine{mark.Told{Facts: facts, Places: []fault.Place{e.Place}}, e.Key, thing{"edge", e.Key}, mark.Cut, e.Key}
		all = append(all, l)
		if e.Allowance > 0 && e.Hem == 0 {
			l.key, l.role = mark.KeyWith(e.Key, mark.Stitch), mark.Stitch
			all = append(all, l)
		}
	}
	return all
}

// hems tells the folds of the hems of a piece.
func (t teller) hems(p *piece.Piece) []toldLine {
	var all []toldLine
	for i, e := range p.Edges {
		if e.Hem == 0 {
			continue
		}
		turn, fold := e.FoldNames()
		facts := func(key string, from float64) []mark.Fact {
			return []mark.Fact{ofPiece(p), {What: "edge", Value: e.Key}, {What: "hem", Value: t.chosen(e.Hem)}, {What: "turn", Value: t.chosen(e.Turn)},
				{What: "from the cut edge", Value: t.away(p, key, i, from, "")}}
		}
		add := func(key string, from float64) {
			all = append(all, toldLine{mark.Told{Facts: facts(key, from), Places: []fault.Place{e.Place}}, key, thing{"edge", e.Key}, mark.Fold, key})
		}
		if e.Turn > 0 {
			add(turn, e.Turn)
		}
		add(fold, e.Hem+e.Turn)
	}
	return all
}

// fileLines tells the lines that the file asks for by themselves.
func (t teller) fileLines(p *piece.Piece) []toldLine {
	var all []toldLine
	for _, l := range p.Lines {
		facts := []mark.Fact{ofPiece(p), {What: "long, sewn", Value: t.length(t.Unit.Amount(l.FinishedLength))}}
		if l.Along >= 0 {
			facts = append(facts, mark.Fact{What: "from " + p.Edges[l.Along].Key, Value: t.away(p, l.Name(), l.Along, l.Distance, " from "+p.MeasuredFrom(l.Along))})
		}
		facts = append(facts, t.sewnTo(p, l.Key)...)
		all = append(all, toldLine{mark.Told{Facts: facts, Places: []fault.Place{l.Place}}, l.Key, thing{"line", l.Key}, l.Role, l.Key})
	}
	return all
}

// away says how far a line lies from an edge, as it is drawn; and before that how far on the flat
// cloth, where folds lie between.
func (t teller) away(p *piece.Piece, line string, edge int, drawn float64, from string) string {
	for _, m := range p.Flat.Measures {
		if m.Line != line || m.Edge != edge {
			continue
		}
		if mm, changed := m.Flat(); changed {
			return t.length(t.Unit.Amount(mm)) + from + ", finished " + t.chosen(drawn)
		}
	}
	return t.chosen(drawn) + from
}

// notchAt says where a notch stands in its edge.
func (t teller) notchAt(n piece.Notch) string { return t.chosen(n.At) + " from " + n.From }

// notches tells the notches of a piece.
func (t teller) notches(p *piece.Piece) []toldLine {
	var all []toldLine
	for _, n := range p.Notches {
		facts := []mark.Fact{ofPiece(p), {What: "edge", Value: p.Edges[n.Edge].Key}, {What: "at", Value: t.notchAt(n)}}
		all = append(all, toldLine{mark.Told{Facts: facts, Places: []fault.Place{n.Place}}, mark.KeyWith(n.Key, mark.Notch), thing{"notch", n.Key}, mark.Notch, n.Key})
	}
	return all
}

// standIn says what stands in an edge: its notches and pleats.
func (t teller) standIn(p *piece.Piece, edge int) []mark.Fact {
	var facts []mark.Fact
	for _, n := range p.Notches {
		if n.Edge == edge {
			facts = append(facts, mark.Fact{What: "notch " + n.Key, Value: t.notchAt(n)})
		}
	}
	for _, set := range edgePleatSets(p) {
		if set[0].Edge == edge {
			for _, f := range t.pleatFacts(set, p) {
				facts = append(facts, mark.Fact{What: "pleat " + set[0].Key + ", " + f.What, Value: f.Value})
			}
		}
	}
	return facts
}

// sewnTo says what an edge of a piece, or a line on it, is sewn to, and what is sewn to it.
func (t teller) sewnTo(p *piece.Piece, key string) []mark.Fact {
	among := func(courses []garment.Course) bool {
		return slices.ContainsFunc(courses, func(c garment.Course) bool { return c.Piece.Key == p.Key && c.Key == key })
	}
	var facts []mark.Fact
	add := func(what, format string, args ...any) {
		facts = append(facts, mark.Fact{What: what, Value: fmt.Sprintf(format, args...)})
	}
	for _, s := range t.Seams {
		what, sewn := "seam "+s.Key, false
		for i, side := range s.Sides {
			if !sewn && among(side.Courses) { // of an edge that is sewn to itself both sides are one
				other := s.Sides[1-i]
				add(what, "to %s, %s sewn", other.Title(), t.length(other.Sewn))
				sewn = true
			}
		}
		if sewn {
			facts = append(facts, said(what, seamVerdict(s, t.writer))...)
		}
	}
	for _, trim := range t.Trims {
		if among(trim.Courses) {
			add(trim.Kind.String(), "%s, %s to cut", trim.Key, t.length(trim.Total))
		}
	}
	for _, r := range t.Ruffles {
		if among(r.Courses) {
			add("ruffle", "%s, %s deep, %s long ungathered", r.Key, t.length(r.Depth), t.length(r.Length))
		}
	}
	for _, b := range t.Bindings {
		if among(b.Courses) {
			add("binding", "%s, %s wide, %s of bias strip", b.Key, t.length(b.Width), t.length(b.Length))
		}
	}
	return facts
}

// grain tells how the grain of a piece runs.
func (t teller) grain(p *piece.Piece) toldLine {
	runs := "as the file draws it"
	switch grain := p.Flat.Grain; {
	case grain.Guess != "":
		runs = "taken " + grain.Guess
	case grain.Along != "":
		runs = "along " + grain.Along
	case grain.Drawn:
	case p.LiesFolded():
		runs = "along the fold"
	default:
		runs = "along the centre"
	}
	return toldLine{
		mark.Told{Title: mark.Grain.String(), Facts: []mark.Fact{ofPiece(p), {What: "runs", Value: runs}}, Places: []fault.Place{p.Place}},
		piece.GrainKey, thing{kind: grainThing}, mark.Grain, "",
	}
}
