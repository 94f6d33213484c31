package figures

import (
	"fmt"
	"slices"
	"strconv"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sheet"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. A ruler is laid to the base and every line ticked off from there
// on the flat cloth, so each line has its own distance from the base. What a ruler does
// not show exactly is given as its nearest step and how far off that is.

// foldPlace is where one fold of a row lies.
type foldPlace struct {
	number int
	fold   length.Amount   // from the base, flat
	others []length.Amount // stitching lines of a tuck, or what a pleat is laid to; flat; never nil
	sewn   length.Amount   // from the base when the whole piece is finished
}

// foldPlaces lists where the folds of a row lie; a box or inverted pleat has two.
func foldPlaces(in *piece.Piece, r piece.FoldRow, unit length.Unit) []foldPlace {
	var all []foldPlace
	for _, f := range r.Folds {
		p := foldPlace{number: f.Number + 1, fold: unit.Amount(f.At).AsRead(), others: []length.Amount{}, sewn: unit.Amount(in.StitchedAt(r, f))}
		add := func(flat float64) { p.others = append(p.others, unit.Amount(flat).AsRead()) }
		for _, l := range f.Lines {
			if l.Role == mark.TuckStitch {
				add(l.U)
			}
		}
		// Both folds of an inverted pleat are laid to one line, which is drawn for the
		// first.
		if r.Makes == piece.PleatFolds {
			add(f.Placement())
		}
		all = append(all, p)
	}
	return all
}

// foldSection lists the folds of every piece: its tucks, the pleats across it, and those
// in its edges.
func foldSection(p *garment.Pattern, w writer) mark.Section {
	s := mark.Section{Title: "Tucks and pleats, on the flat cloth"}
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		for _, t := range piece.TuckRows {
			table := tuckTable(t, piece, w)
			sayField(&table.Lines, t, piece, w)
			s.Tables = append(s.Tables, rowTables(table, piece, t.FoldRow, w)...)
		}
		for _, pl := range piece.PleatRows {
			s.Tables = append(s.Tables, rowTables(pleatTable(pl, piece, w), piece, pl.FoldRow, w)...)
		}
		s.Tables = append(s.Tables, edgePleatTables(piece, w)...)
	}
	return s
}

// rowTables are the table of where the folds of a row lie, and that of how deep they end.
func rowTables(places mark.Table, p *piece.Piece, r piece.FoldRow, w writer) []mark.Table {
	if p.IsTucked() {
		told := "the top edge of the block measured"
		if p.Block.Across() {
			told = "the block measured " + p.Block.WhereMeasured()
		}
		places.Lines.Say("%s: by what %s; what they take up and what shows is as planned", places.Heads[len(places.Heads)-1], told)
	}
	depths := depthTables(p, r, &places.Lines, w)
	return append([]mark.Table{places}, depths...)
}

// tuckTable is the table of a set of tucks, with what is to be known of all of them.
func tuckTable(t piece.TuckRow, p *piece.Piece, w writer) mark.Table {
	described := sheet.DescribeTucks(t, w.named)
	table := mark.Table{
		Title: p.Name + ", " + described[0],
		Heads: []string{"from " + t.Base.Name, "stitch", "fold", "stitch", "when sewn"},
	}
	if t.Twin {
		table.Heads = []string{"from " + t.Base.Name, "fold", "when sewn"}
	}
	places := foldPlaces(p, t.FoldRow, w.unit)
	for _, place := range places {
		cells := []string{w.reading(place.fold)}
		if len(place.others) == 2 {
			near := w.reading(place.others[0])
			if place.others[0].MM < -length.Hair {
				near = w.reading(place.others[0].Magnitude()) + " beyond"
			}
			cells = []string{near, w.reading(place.fold), w.reading(place.others[1])}
		}
		name := "tuck " + strconv.Itoa(place.number)
		if each := t.PerGroup; each > 1 && place.number%each == 1 {
			name = fmt.Sprintf("group %d: %s", place.number/each+1, name)
		}
		table.Add(slices.Concat([]string{name}, cells, []string{w.cell(place.sewn)})...)
	}
	sayOffRuler(&table.Lines, places)
	if t.Twin {
		table.Lines.Say("stitch %s along its fold line with a twin needle", oneOf(t.InAll()))
	} else {
		table.Lines.Say("stitch %s %s from its fold", oneOf(t.InAll()), w.named(t.Width))
	}
	if t.Sampled { // one takes less than a ruler shows
		sayTakenByRow(&table.Lines, t.FoldRow, w)
	} else {
		sayTakenByFolds(&table.Lines, t.FoldRow, t.Takes, w)
	}
	sayAll(&table.Lines, described[1:])
	return table
}

// sayField says how far along the neck a set of tucks reaches that ends before it does, and
// how many have room.
func sayField(lines *mark.Lines, t piece.TuckRow, p *piece.Piece, w writer) {
	f, short := p.Field(t, w.unit)
	if !short {
		return
	}
	fill := strconv.Itoa(f.Fill)
	if t.PerGroup > 1 {
		fill = wording.Counted(f.Fill/t.PerGroup, "group")
	}
	switch about := t.Mirrored && t.Folds[0].About(); {
	case about && t.PerGroup > 1:
		fill = fmt.Sprintf("%d about the centre and %d groups on each side", 2*t.PerGroup-1, f.Fill/t.PerGroup-1)
	case about:
		fill = fmt.Sprintf("1 on the centre and %d on each side", f.Fill-1)
	case t.Mirrored:
		fill += " on each side"
	}
	fill += " have room"
	if !p.DrawnFinished {
		fill += fmt.Sprintf(", on a piece drawn %s wider", w.length(w.unit.Amount(f.Wider)))
	}
	lines.Say("sewn, the tucks reach %s from %s, and the %s %s: %s",
		w.length(w.unit.Amount(f.Tucks)), t.Base.Name, p.Edges[f.Edge].Key, w.length(w.unit.Amount(f.Neck)), fill)
}

// pleatTable is the table of a row of pleats across a piece.
func pleatTable(row piece.PleatRow, p *piece.Piece, w writer) mark.Table {
	described := sheet.DescribePleats(row, w.named)
	table := mark.Table{
		Title: p.Name + ", " + described[0],
		Heads: []string{"from " + row.Base.Name, "fold", "laid to", "when laid"},
	}
	places := foldPlaces(p, row.FoldRow, w.unit)
	for _, place := range places {
		table.Add("pleat "+strconv.Itoa(place.number), w.reading(place.fold), w.reading(place.others[0]), w.cell(place.sewn))
	}
	takes := 2 * row.Depth
	if row.Kind != source.KnifePleat {
		takes = 4 * row.Depth
	}
	sayOffRuler(&table.Lines, places)
	sayTakenByFolds(&table.Lines, row.FoldRow, takes, w)
	sayAll(&table.Lines, described[1:])
	return table
}

// edgePleatTables are the tables of the pleats that lie in edges, one for each set.
func edgePleatTables(p *piece.Piece, w writer) []mark.Table {
	var tables []mark.Table
	for _, set := range edgePleatSets(p) {
		tables = append(tables, edgePleatTable(set, p, w))
	}
	return tables
}

// edgePleatSets are the pleats in the edges of a piece, set by set.
func edgePleatSets(p *piece.Piece) [][]piece.EdgePleat {
	var sets [][]piece.EdgePleat
	for rest := p.EdgePleats; len(rest) > 0; {
		n := 1
		for n < len(rest) && rest[n].Key == rest[0].Key {
			n++
		}
		sets, rest = append(sets, rest[:n]), rest[n:]
	}
	return sets
}

// edgePleatTable is the table of a set of pleats in an edge.
func edgePleatTable(set []piece.EdgePleat, p *piece.Piece, w writer) mark.Table {
	first := set[0]
	table := mark.Table{
		Title: fmt.Sprintf("%s, %s: in %s, from %s", p.Name, first.Key, p.Edges[first.Edge].Key, first.From),
		Heads: []string{"along the " + p.Edges[first.Edge].AlongName(), "fold", "takes up"},
	}
	var places []foldPlace
	for i, pleat := range set {
		at := w.unit.Amount(pleat.At)
		places = append(places, foldPlace{fold: at})
		table.Add("pleat "+strconv.Itoa(i+1), w.reading(at), w.cell(w.unit.Amount(pleat.TakeUp())))
	}
	sayOffRuler(&table.Lines, places)
	fold, pleat := "its fold", "the pleat"
	if len(set) > 1 {
		fold, pleat = "each fold", "each pleat"
	}
	table.Lines.Say("bring %s %s along the edge: %s is then %s deep", fold, w.named(first.TakeUp()), pleat, w.named(first.Depth))
	return table
}

// sayOffRuler explains places that lie off a step of the ruler, where one does.
func sayOffRuler(lines *mark.Lines, places []foldPlace) {
	for _, p := range places {
		if p.fold.IsOff() || slices.ContainsFunc(p.others, length.Amount.IsOff) {
			lines.Say("+ or -: the line lies that much farther or nearer than the mark")
			return
		}
	}
}

// sayTakenByRow says what all folds of a row take up.
func sayTakenByRow(lines *mark.Lines, r piece.FoldRow, w writer) {
	together := w.length(w.unit.Amount(r.Taken()))
	if n := r.InAll(); n > 1 {
		lines.Say("%s together take up %s", wording.Counted(n, r.Makes.String()), together)
	} else {
		lines.Say("it takes up %s", together)
	}
}

// sayTakenByFolds says what the folds of a row take up, each so many mm and all together.
func sayTakenByFolds(lines *mark.Lines, r piece.FoldRow, each float64, w writer) {
	n, one := r.InAll(), w.unit.Amount(each)
	all := fmt.Sprintf("all %d", n)
	switch {
	case n == 1 || one.IsOff() || one.Times(n).Steps != w.unit.Amount(r.Taken()).Steps:
		sayTakenByRow(lines, r, w)
		return
	case n == 2:
		all = "both"
	}
	lines.Say("each takes up %s, %s together %s", w.length(one), all, w.length(one.Times(n)))
}

// oneOf names one fold of so many in a sentence.
func oneOf(n int) string {
	if n == 1 {
		return "it"
	}
	return "each"
}

// sayAll says sentences as they are.
func sayAll(lines *mark.Lines, sentences []string) {
	for _, text := range sentences {
		lines.Say("%s", text)
	}
}
