package figures

import (
	"fmt"
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

// trimsTitle is the heading under which they are told.
const trimsTitle = "Trims, ruffles and bindings"

// trimSection lists trims, ruffles and bindings.
func trimSection(p *garment.Pattern, w writer) mark.Section {
	s := mark.Section{Title: trimsTitle}
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

// sayUnprinted says that the edges are longer than they are as printed, and what that means for what
// is cut.
func sayUnprinted(lines *mark.Lines, on garment.SewnOn, means string, w writer) {
	if more := on.Unprinted(); more.Steps > 0 {
		lines.Say("together the edges are %s longer than as printed: %s", w.length(more), means)
	}
}

// cutLonger is what it means for what is cut by the sum of them.
const cutLonger = "cut it that much longer"

// addTimes adds a row of a length that comes several times.
func addTimes(t *mark.Table, name string, each length.Amount, times int, w writer) {
	t.Add(name, w.cell(each), strconv.Itoa(times), w.cell(each.Times(times)))
}

// inAll is a row of what comes to so much in all: where it is several that are all alike, with what
// each is.
func inAll(name string, of []garment.Strand, each, all length.Amount, w writer) []string {
	if len(of) > 1 || of[0].Times == 1 {
		return []string{name, "", "", w.cell(all)}
	}
	return []string{name, w.cell(each), strconv.Itoa(of[0].Times), w.cell(all)}
}

// sayLengths says in how many lengths something is cut, and how long they are, one for each of some
// strands; nothing where it is one.
func sayLengths(lines *mark.Lines, count int, of []garment.Strand, long []length.Amount, w writer) {
	var told []string
	for i, l := range long {
		told = append(told, onStrand(of[i], w.length(l)))
	}
	switch {
	case count == 1:
	case len(of) == 1:
		lines.Say("cut %d lengths, each %s: %s", count, w.length(long[0]), unjoined)
	default:
		lines.Say("cut %d lengths: %s; %s", count, strings.Join(told, ", "), unjoined)
	}
}

// unjoined says why something is cut in several lengths.
const unjoined = "no seam joins their lines to each other"

// onStrand says how long something is that is cut for a strand, and of how many that are alike.
func onStrand(s garment.Strand, long string) string {
	if s.Times > 1 {
		return fmt.Sprintf("%d of %s, for %s", s.Times, long, s.Title())
	}
	return fmt.Sprintf("%s for %s", long, s.Title())
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
	first := t.Lengths[0]
	var strands []garment.Strand
	var totals []length.Amount
	for _, l := range t.Lengths {
		strands, totals = append(strands, l.Strand), append(totals, l.Total)
	}
	if t.Fullness != 1 {
		table.Add(inAll(length.Factor(t.Fullness)+" times that, gathered", strands, first.Gathered, t.Gathered, w)...)
	}
	addBends(&table, t.Reach, w)
	addTimes(&table, "joining or turning in", t.JoinTakes, t.Joins, w)
	table.AddTotal(inAll("to cut", strands, first.Total, t.Total, w)...)
	sayUnprinted(&table.Lines, t.SewnOn, cutLonger, w)
	sayLengths(&table.Lines, t.Count(), strands, totals, w)
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
	for _, l := range t.Lengths {
		if more := l.Slant(t.Width); more.Steps > 0 {
			table.Lines.Warn("its ends on %s slant: laid with its middle on the line, a border is %s longer there, which is not reckoned in: cut each so much longer, and buy it",
				l.Title(), w.length(more))
		}
	}
	all := t.Total.Times(garments)
	if garments > 1 {
		table.Lines.Say("for %d garments, cut it %d times, in all %s", garments, garments, w.length(all))
	}
	table.Lines.Say("buy %s", w.buy(all.Buy()))
	return table
}
