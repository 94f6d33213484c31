package figures

import (
	"fmt"
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

// FoldPlace is where one fold of a row lies.
type FoldPlace struct {
	Number int
	Fold   length.Amount   // from the base, flat
	Others []length.Amount // stitching lines of a tuck, or what a pleat is laid to; flat
	Sewn   length.Amount   // from the base when the whole piece is finished
}

// tuckPlaces lists where the tucks of a set lie.
func tuckPlaces(t piece.TuckRow, unit length.Unit) []FoldPlace {
	var all []FoldPlace
	for k, f := range t.Folds {
		p := FoldPlace{Number: k + 1, Fold: unit.Amount(f.At), Sewn: unit.Amount(f.Stitching)}
		for _, l := range f.Lines {
			if l.Role == mark.TuckStitch {
				p.Others = append(p.Others, unit.Amount(l.U))
			}
		}
		all = append(all, p)
	}
	return all
}

// pleatingPlaces lists where the pleats of a row lie; a box or inverted one has two folds.
func pleatingPlaces(p piece.PleatRow, unit length.Unit) []FoldPlace {
	var all []FoldPlace
	for _, f := range p.Folds {
		all = append(all, FoldPlace{
			Number: f.Number + 1, Fold: unit.Amount(f.At), Others: []length.Amount{unit.Amount(f.Placement())}, Sewn: unit.Amount(f.Stitching),
		})
	}
	return all
}

// names gives lengths that stand in the file: as they were chosen where they are plain
// on some ruler, else as the file's ruler shows them.
func (w Wording) names(unit length.Unit) func(mm float64) string {
	return func(mm float64) string {
		if !length.IsPlain(mm) {
			return w.length(unit.Amount(mm))
		}
		return w.length(unit.Chosen(mm))
	}
}

// foldTables lists the tables of a piece: of its tucks, the pleats across it, and those
// in its edges.
func foldTables(p *piece.Piece, unit length.Unit, w Wording) []mark.Table {
	var tables []mark.Table
	for _, t := range p.TuckRows {
		tables = append(tables, tuckTable(t, p, unit, w))
	}
	for _, pl := range p.PleatRows {
		tables = append(tables, pleatingTable(pl, p, unit, w))
	}
	return append(tables, edgePleats(p, unit, w)...)
}

// offLine explains places that lie off a step of the ruler; nothing where none does.
func offLine(places []FoldPlace) []mark.Sentence {
	for _, p := range places {
		for _, a := range append([]length.Amount{p.Fold}, p.Others...) {
			if a.IsOff() {
				return []mark.Sentence{{Text: "+ or -: the line lies that much farther or nearer than the mark"}}
			}
		}
	}
	return nil
}

// tuckTable is the table of a set of tucks.
func tuckTable(t piece.TuckRow, p *piece.Piece, unit length.Unit, w Wording) mark.Table {
	table := mark.Table{
		Title: p.Name + ", " + sheet.DescribeTuck(t, w.names(unit))[0],
		Heads: []string{"from " + t.Base.Name, "stitch", "fold", "stitch", "when sewn"},
	}
	if t.Twin {
		table.Heads = []string{"from " + t.Base.Name, "fold", "when sewn"}
	}
	places := tuckPlaces(t, unit)
	for _, place := range places {
		cells := []string{"tuck " + strconv.Itoa(place.Number)}
		if len(place.Others) == 2 {
			near := w.reading(place.Others[0])
			if place.Others[0].MM < -length.Hair {
				near = w.reading(place.Others[0].Magnitude()) + " beyond"
			}
			cells = append(cells, near, w.reading(place.Fold), w.reading(place.Others[1]))
		} else {
			cells = append(cells, w.reading(place.Fold))
		}
		table.Rows = append(table.Rows, mark.Row{Cells: append(cells, w.cell(place.Sewn))})
	}
	each := "each"
	if t.InAll() == 1 {
		each = "it"
	}
	deep := fmt.Sprintf("stitch %s %s from its fold", each, w.names(unit)(t.Width))
	if t.Twin {
		deep = fmt.Sprintf("stitch %s along its fold line with a twin needle", each)
	}
	takes := takenByFolds(t.FoldRow, unit, t.Takes, w)
	if t.Sampled {
		takes = takenByRow(t.FoldRow, unit, w) // one takes less than a ruler shows
	}
	table.Lines = append(offLine(places), mark.Sentence{Text: deep}, mark.Sentence{Text: takes})
	for _, part := range sheet.DescribeTuck(t, w.names(unit))[1:] {
		table.Lines = append(table.Lines, mark.Sentence{Text: part})
	}
	return table
}

// takenByRow says what all folds of a row take up.
func takenByRow(r piece.FoldRow, unit length.Unit, w Wording) string {
	n, together := r.InAll(), unit.Amount(r.Taken())
	if n == 1 {
		return "it takes up " + w.length(together)
	}
	return fmt.Sprintf("%s together take up %s", wording.Counted(n, r.Makes.String()), w.length(together))
}

// takenByFolds says what the folds of a row take up, each and together.
func takenByFolds(r piece.FoldRow, unit length.Unit, each float64, w Wording) string {
	n, one := r.InAll(), unit.Amount(each)
	if n == 1 || one.IsOff() || one.Times(n).Steps != unit.Amount(r.Taken()).Steps {
		return takenByRow(r, unit, w)
	}
	all := fmt.Sprintf("all %d", n)
	if n == 2 {
		all = "both"
	}
	return fmt.Sprintf("each takes up %s, %s together %s", w.length(one), all, w.length(one.Times(n)))
}

// pleatingTable is the table of a row of pleats across a piece.
func pleatingTable(p piece.PleatRow, pc *piece.Piece, unit length.Unit, w Wording) mark.Table {
	table := mark.Table{
		Title: pc.Name + ", " + sheet.DescribePleating(p, w.names(unit))[0],
		Heads: []string{"from " + p.Base.Name, "fold", "laid to", "when laid"},
	}
	places := pleatingPlaces(p, unit)
	for _, place := range places {
		table.Rows = append(table.Rows, mark.Row{Cells: []string{
			"pleat " + strconv.Itoa(place.Number), w.reading(place.Fold), w.reading(place.Others[0]), w.cell(place.Sewn),
		}})
	}
	each := 2 * p.Depth
	if p.Kind != source.KnifePleat {
		each = 4 * p.Depth
	}
	table.Lines = append(offLine(places), mark.Sentence{Text: takenByFolds(p.FoldRow, unit, each, w)})
	for _, part := range sheet.DescribePleating(p, w.names(unit))[1:] {
		table.Lines = append(table.Lines, mark.Sentence{Text: part})
	}
	return table
}

// edgePleats are the tables of the pleats that lie in edges, one for each set.
func edgePleats(p *piece.Piece, unit length.Unit, w Wording) []mark.Table {
	var tables []mark.Table
	var lines []FoldPlace // of the set that is being listed
	for i, pleat := range p.EdgePleats {
		if i == 0 || p.EdgePleats[i-1].Key != pleat.Key {
			tables = append(tables, mark.Table{
				Title: fmt.Sprintf("%s, %s: in %s, from %s", p.Name, pleat.Key, p.Edges[pleat.Edge].Key, pleat.From),
				Heads: []string{"along the edge", "fold", "takes up"},
			})
		}
		table, at := &tables[len(tables)-1], unit.Amount(pleat.At)
		lines = append(lines, FoldPlace{Fold: at})
		table.Rows = append(table.Rows, mark.Row{Cells: []string{
			"pleat " + strconv.Itoa(len(table.Rows)+1), w.reading(at), w.cell(unit.Amount(pleat.TakeUp())),
		}})
		if i+1 == len(p.EdgePleats) || p.EdgePleats[i+1].Key != pleat.Key {
			each := "each"
			if len(table.Rows) == 1 {
				each = "it"
			}
			table.Lines = append(offLine(lines), mark.Sentence{Text: fmt.Sprintf("%s is laid %s along, twice its depth of %s",
				each, w.names(unit)(pleat.TakeUp()), w.names(unit)(pleat.Depth))})
			lines = nil
		}
	}
	return tables
}

func foldSection(p *garment.Pattern, w Wording) mark.Section {
	s := mark.Section{Title: "Tucks and pleats, on the flat cloth"}
	for i := range p.Pieces {
		s.Tables = append(s.Tables, foldTables(&p.Pieces[i], p.Unit, w)...)
	}
	return s
}
