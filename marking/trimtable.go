package marking

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Rules of this file: every table adds up from its first row to its last as it is
// printed.

// trimSection lists trims, ruffles and bindings.
func (p *Pattern) trimSection(w wording) Section {
	s := Section{Title: "Trims, ruffles and bindings"}
	for _, t := range p.Trims {
		s.Tables = append(s.Tables, t.table(p.Unit, w))
	}
	for _, r := range p.Ruffles {
		s.Tables = append(s.Tables, r.table(w))
	}
	for _, b := range p.Bindings {
		s.Tables = append(s.Tables, b.table(w))
	}
	return s
}

// courseRows lists what something runs along.
func courseRows(courses []Course, total Amount, w wording) []Row {
	var rows []Row
	for _, c := range courses {
		rows = append(rows, Row{Cells: []string{c.piece.Name + ", " + c.Edge, w.cell(c.Length), strconv.Itoa(c.Times), w.cell(c.Whole())}})
	}
	return append(rows, Row{Cells: []string{"the line", "", "", w.cell(total)}, Total: true})
}

func trimHeads() []string { return []string{"", "each", "times", "together"} }

func (t Trim) table(unit Unit, w wording) Table {
	title := t.Key
	if !strings.Contains(title, t.Kind) {
		title += ", " + t.Kind
	}
	if t.Width > 0 {
		title += ", " + w.length(unit.chosen(t.Width)) + " wide"
	}
	table := Table{Title: title, Heads: trimHeads(), Rows: courseRows(t.Courses, t.Line, w)}
	if t.Fullness != 1 {
		table.Rows = append(table.Rows, Row{Cells: []string{factor(t.Fullness) + " times that, gathered", "", "", w.cell(t.Gathered)}})
	}
	for _, c := range t.Corners {
		kind := "square corner"
		if math.Abs(c.Turn-90) >= 0.5 {
			kind = fmt.Sprintf("corner of %.0f degrees", c.Turn)
		}
		table.Rows = append(table.Rows, Row{Cells: []string{kind + " of " + c.Piece, w.cell(c.Takes), strconv.Itoa(c.Times), w.cell(c.Takes.Times(c.Times))}})
	}
	table.Rows = append(table.Rows,
		Row{Cells: []string{"joining or turning in", w.cell(t.JoinTakes), strconv.Itoa(t.Joins), w.cell(t.JoinTakes.Times(t.Joins))}},
		Row{Cells: []string{"to cut", "", "", w.cell(t.Total)}, Total: true})
	if len(t.Corners) > 0 && t.Width == 0 {
		table.Lines = append(table.Lines, Sentence{Text: "corners are not reckoned in: give the width", Warning: true})
	}
	table.Lines = append(table.Lines, Sentence{Text: "buy " + w.buy(t.Total.buy())})
	return table
}

func (r Ruffle) table(w wording) Table {
	table := Table{Title: r.Key + ", ruffle " + w.length(r.Depth) + " deep", Heads: trimHeads(), Rows: courseRows(r.Courses, r.Edge, w)}
	table.Rows = append(table.Rows, Row{Cells: []string{factor(r.Fullness) + " times that, ungathered", "", "", w.cell(r.Length)}})
	say := func(text string, args ...any) {
		table.Lines = append(table.Lines, Sentence{Text: fmt.Sprintf(text, args...)})
	}
	if !r.Full() {
		table.Lines = append(table.Lines, Sentence{Text: r.fullnessWarning(), Warning: true})
	}
	say("tear strips %s deep: %s deep, %s hem, %s turned in, %s seam", w.length(r.CutDepth), w.length(r.Depth), w.length(r.Hem), w.length(r.Turn), w.length(r.Seam))
	switch {
	case r.Strips == 1:
		say("1 strip across the cloth is enough; cut it to the length above")
	case r.Strips > 1:
		say("%d strips across the cloth, joined with seams of %s at each end, cut to the length above", r.Strips, w.length(r.Joining))
	default:
		table.Lines = append(table.Lines, Sentence{Text: "the width of the cloth is not given, so its strips cannot be counted", Warning: true})
	}
	if len(r.Joins) > 0 {
		say("joins fall %s %s", r.places(w), r.from())
	}
	if r.Strips > 1 && r.Strips%2 == 0 && r.Centre != "" && !r.Round {
		say("one strip is cut in two, for the two ends")
	}
	say("quarter both and match the marks: the edge every %s, the ruffle every %s", w.length(r.Edge.quarter()), w.length(r.Length.quarter()))
	return table
}

// mostJoins is how many joins are listed one by one.
const mostJoins = 8

// places lists where joins fall.
func (r Ruffle) places(w wording) string {
	var places []string
	for _, at := range r.Joins[:min(len(r.Joins), mostJoins)] {
		places = append(places, w.length(at))
	}
	list := strings.Join(places, ", ")
	if len(r.Joins) > mostJoins {
		list += " and so on"
	}
	return list
}

// from says where the places of joins are measured from.
func (r Ruffle) from() string {
	if r.Centre == "" {
		return "along the edge from where it begins"
	}
	return fmt.Sprintf("along the edge to either side of the fold of %s, where the middle of a strip comes", r.Centre)
}

func (b Binding) table(w wording) Table {
	kind, folds := "single", foldsSingle
	if b.Double {
		kind, folds = "double", foldsDouble
	}
	table := Table{Title: fmt.Sprintf("%s, %s bias binding, %s wide", b.Key, kind, w.length(b.Width)), Heads: trimHeads(), Rows: courseRows(b.Courses, b.Edge, w)}
	table.Rows = append(table.Rows,
		Row{Cells: []string{"joining its ends", w.cell(b.Ends), strconv.Itoa(b.Joins), w.cell(b.Ends.Times(b.Joins))}},
		Row{Cells: []string{"bias strip", "", "", w.cell(b.Length)}, Total: true})
	strips := counted(b.Strips, "strip")
	table.Lines = append(table.Lines, Sentence{Text: fmt.Sprintf("cut it %s wide, %d times the finished width", w.length(b.Cut), folds)})
	if b.Square.MM > 0 {
		table.Lines = append(table.Lines, Sentence{Text: fmt.Sprintf("%s from a square of %s, the first cut from corner to corner", strips, w.length(b.Square))})
	} else {
		table.Lines = append(table.Lines, Sentence{Text: fmt.Sprintf("%s from selvage to selvage, from %s of cloth", strips, w.length(b.Along))})
	}
	return table
}
