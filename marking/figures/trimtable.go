package figures

import (
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/source"
)

// Rules of this file: every table adds up from its first row to its last as it is
// printed.

// trimSection lists trims, ruffles and bindings.
func trimSection(p *garment.Pattern, w writer) mark.Section {
	s := mark.Section{Title: "Trims, ruffles and bindings"}
	for _, t := range p.Trims {
		s.Tables = append(s.Tables, trimTable(t, p.Garments(), w))
	}
	for _, r := range p.Ruffles {
		s.Tables = append(s.Tables, ruffleTable(r, p.Garments(), w))
	}
	for _, b := range p.Bindings {
		s.Tables = append(s.Tables, bindingTable(b, p.Garments(), w))
	}
	return s
}

// courseTable begins the table of something with the edges that it runs along, and the
// line that they make together.
func courseTable(title string, on garment.SewnOn, w writer) mark.Table {
	t := mark.Table{Title: title, Heads: []string{"", "each", "times", "together"}}
	for _, c := range on.Courses {
		addTimes(&t, c.Piece.Name+", "+c.Key, c.Length, c.Times, w)
	}
	t.AddTotal("the line", "", "", w.cell(on.LineLength))
	return t
}

// addTimes adds a row of a length that comes several times.
func addTimes(t *mark.Table, name string, each length.Amount, times int, w writer) {
	t.Add(name, w.cell(each), strconv.Itoa(times), w.cell(each.Times(times)))
}

// unseen is how much too much an outer edge may have, in steps of the ruler, and not be seen
// to be full.
const unseen = 1

// trimTable is the table of what is sewn on and bought by length, for so many garments: each
// has its own length.
func trimTable(t garment.Trim, garments int, w writer) mark.Table {
	title := t.Key
	if !slices.Contains(strings.Fields(strings.ToLower(title)), t.Kind.String()) {
		title += ", " + t.Kind.String()
	}
	if t.Width > 0 {
		title += ", " + w.chosen(t.Width) + " wide"
	}
	table := courseTable(title, t.SewnOn, w)
	if t.Fullness != 1 {
		table.Add(length.Factor(t.Fullness)+" times that, gathered", "", "", w.cell(t.Gathered))
	}
	addBends(&table, t.Reach, w)
	addTimes(&table, "joining or turning in", t.JoinTakes, t.Joins, w)
	table.AddTotal("to cut", "", "", w.cell(t.Total))
	if turns := t.LeftOut(); turns != "" {
		table.Lines.Warn("%s are not reckoned in: give the width", turns)
	}
	if text := t.NoRoom(w.length); text != "" {
		table.Lines.Warn("%s", text)
	}
	corner, curve := "folded into a mitre", "drawn up on a thread along its inner edge"
	if t.Fullness > 1 {
		corner = "gathered close there, within a width on either side"
	}
	switch t.Kind {
	case source.Lace:
		curve = "drawn up on its heading thread"
	case source.Cord:
		corner = "for going round it"
	}
	sayReach(&table.Lines, t.Reach, corner, curve, w)
	if t.Spare.Steps > unseen {
		table.Lines.Say("nothing is added where the line is hollow: there the outer edge has %s more than it needs, and will be full", w.length(t.Spare))
	}
	if t.SpareAtCorners.Steps > unseen {
		table.Lines.Say("nothing is added at inside corners: there the outer edge has %s more than it needs; fold it away in a mitre", w.length(t.SpareAtCorners))
	}
	all := t.Total.Times(garments)
	if garments > 1 {
		table.Lines.Say("for %d garments, cut it %d times: %s in all", garments, garments, w.length(all))
	}
	table.Lines.Say("buy %s", w.buy(all.Buy()))
	return table
}
