package figures

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/wording"
)

// Rules of this file: every table adds up from its first row to its last as it is
// printed.

// trimSection lists trims, ruffles and bindings.
func trimSection(p *garment.Pattern, w Wording) mark.Section {
	s := mark.Section{Title: "Trims, ruffles and bindings"}
	for _, t := range p.Trims {
		s.Tables = append(s.Tables, trimTable(t, p.Unit, w))
	}
	for _, r := range p.Ruffles {
		s.Tables = append(s.Tables, ruffleTable(r, w))
	}
	for _, b := range p.Bindings {
		s.Tables = append(s.Tables, bindingTable(b, w))
	}
	return s
}

// courseRows lists what something runs along.
func courseRows(courses []garment.Course, total length.Amount, w Wording) []mark.Row {
	var rows []mark.Row
	for _, c := range courses {
		rows = append(rows, mark.Row{Cells: []string{c.Piece.Name + ", " + c.Key, w.cell(c.Length), strconv.Itoa(c.Times), w.cell(c.Whole())}})
	}
	return append(rows, mark.Row{Cells: []string{"the line", "", "", w.cell(total)}, Total: true})
}

func trimHeads() []string { return []string{"", "each", "times", "together"} }

func trimTable(t garment.Trim, unit length.Unit, w Wording) mark.Table {
	title := t.Key
	if !slices.Contains(strings.Fields(strings.ToLower(title)), t.Kind.String()) {
		title += ", " + t.Kind.String()
	}
	if t.Width > 0 {
		title += ", " + w.length(unit.Chosen(t.Width)) + " wide"
	}
	table := mark.Table{Title: title, Heads: trimHeads(), Rows: courseRows(t.Courses, t.Line, w)}
	if t.Fullness != 1 {
		table.Rows = append(table.Rows, mark.Row{Cells: []string{length.Factor(t.Fullness) + " times that, gathered", "", "", w.cell(t.Gathered)}})
	}
	for _, c := range t.Corners {
		name := "square corner of " + c.Piece
		if !c.Square() {
			name = fmt.Sprintf("corner of %s, turning %.0f degrees", c.Piece, c.Turn)
		}
		table.Rows = append(table.Rows, mark.Row{Cells: []string{name, w.cell(c.Takes), strconv.Itoa(c.Times), w.cell(c.Takes.Times(c.Times))}})
	}
	table.Rows = append(table.Rows,
		mark.Row{Cells: []string{"joining or turning in", w.cell(t.JoinTakes), strconv.Itoa(t.Joins), w.cell(t.JoinTakes.Times(t.Joins))}},
		mark.Row{Cells: []string{"to cut", "", "", w.cell(t.Total)}, Total: true})
	if t.CornersLeftOut() {
		table.Lines = append(table.Lines, mark.Sentence{Text: "corners are not reckoned in: give the width", Warning: true})
	}
	table.Lines = append(table.Lines, mark.Sentence{Text: "buy " + w.buy(t.Total.Buy())})
	return table
}

func ruffleTable(r garment.Ruffle, w Wording) mark.Table {
	table := mark.Table{Title: r.Key + ", ruffle " + w.length(r.Depth) + " deep", Heads: trimHeads(), Rows: courseRows(r.Courses, r.Edge, w)}
	full := length.Factor(r.Fullness) + " times that, ungathered"
	if r.Fullness == 1 {
		full = "as long as that, ungathered"
	}
	table.Rows = append(table.Rows, mark.Row{Cells: []string{full, "", "", w.cell(r.Length)}})
	say := func(text string, args ...any) {
		table.Lines = append(table.Lines, mark.Sentence{Text: fmt.Sprintf(text, args...)})
	}
	if text := r.FullnessWarning(); text != "" {
		table.Lines = append(table.Lines, mark.Sentence{Text: text, Warning: true})
	}
	say("tear strips %s", ruffleDepths(r, w))
	ends := ""
	if r.Joining.MM > 0 {
		ends = fmt.Sprintf(", %s for a seam or a hem at each end included", w.length(r.Joining))
	}
	switch {
	case r.Strips == 1:
		say("1 strip across the cloth is enough; cut it %s long%s", w.length(ruffleStrip(r)), ends)
	case r.Strips > 1:
		say("%d strips across the cloth; cut each %s long%s, and join them", r.Strips, w.length(ruffleStrip(r)), ends)
	default:
		table.Lines = append(table.Lines, mark.Sentence{Text: "the width of the cloth is not given, so its strips cannot be counted", Warning: true})
	}
	if len(r.Joins) > 0 {
		say("%s", joinsFall(r, w))
	}
	if r.CutsOneInTwo() {
		say("cut one strip %s longer, and in two, for the two ends", w.length(r.Joining.Times(2)))
	}
	say("quarter both and match the marks: the edge every %s, the ruffle every %s", w.length(r.Edge.Quarter()), w.length(r.Length.Quarter()))
	return table
}

// ruffleStrip is how long each strip is cut, so that the joins fall where they are told: all of
// them alike, with a joining seam at either end.
func ruffleStrip(r garment.Ruffle) length.Amount {
	return r.Length.Unit.AtLeast(r.Length.Enough() / float64(r.Strips)).Plus(r.Joining.Times(2))
}

// mostJoins is how many joins are listed one by one.
const mostJoins = 8

// ruffleDepths says how deep the strips are torn, and what that is made of.
func ruffleDepths(r garment.Ruffle, w Wording) string {
	parts := w.length(r.Depth) + " finished"
	for _, part := range []struct {
		length.Amount
		name string
	}{{r.Hem, "hem"}, {r.Turn, "turned in"}, {r.Seam, "seam"}} {
		if part.MM > 0 {
			parts += ", " + w.length(part.Amount) + " " + part.name
		}
	}
	text := w.length(r.CutDepth) + " deep: " + parts
	if r.CutDepth.MM == r.Depth.MM {
		text += ", nothing for a hem or a seam"
	}
	return text
}

// joinsFall says where the joins of a ruffle, of which there are some, come to lie.
func joinsFall(r garment.Ruffle, w Wording) string {
	inner, last := r.Joins, ""
	if r.Closes() {
		inner, last = r.Joins[:len(r.Joins)-1], "where it begins"
		if r.Centre != "" {
			last = "halfway round"
		}
	}
	if len(inner) == 0 {
		if r.Centre == "" {
			return "the join falls where the edge begins"
		}
		return fmt.Sprintf("the join falls halfway round from the fold of %s, where the middle of the strip comes", r.Centre)
	}
	var places []string
	for _, at := range inner[:min(len(inner), mostJoins)] {
		places = append(places, w.length(at))
	}
	list := "joins fall " + strings.Join(places, ", ")
	switch {
	case len(inner) > mostJoins:
		list += " and so on"
	case len(inner) == 1 && r.Centre == "" && last == "":
		list = "a join falls " + places[0]
	}
	text := list + " " + ruffleFrom(r)
	if last != "" {
		text += "; the last falls " + last
	}
	return text
}

// ruffleFrom says where the places of joins are measured from.
func ruffleFrom(r garment.Ruffle) string {
	if r.Centre == "" {
		return "along the edge from where it begins"
	}
	return fmt.Sprintf("along the edge, to either side of the fold of %s, where the middle of a strip comes", r.Centre)
}

func bindingTable(b garment.Binding, w Wording) mark.Table {
	table := mark.Table{Title: fmt.Sprintf("%s, %s bias binding, %s wide", b.Key, b.Fold, w.length(b.Width)), Heads: trimHeads(), Rows: courseRows(b.Courses, b.Edge, w)}
	table.Rows = append(table.Rows,
		mark.Row{Cells: []string{"joining or turning in", w.cell(b.Ends), strconv.Itoa(b.Joins), w.cell(b.Ends.Times(b.Joins))}},
		mark.Row{Cells: []string{"bias strip", "", "", w.cell(b.Length)}, Total: true})
	strips, joined := wording.Counted(b.Strips, "strip"), ""
	if b.Strips > b.Joins && b.Joining.MM > 0 {
		joined = fmt.Sprintf("; join them along a thread, with seams of %s", w.length(b.Joining))
	}
	if e, wide := b.WidestAllowance(); wide {
		table.Lines = append(table.Lines, mark.Sentence{Text: fmt.Sprintf("trim the allowance of %s to the %s of the binding, or it does not go round it", w.length(e), w.length(b.Width))})
	}
	table.Lines = append(table.Lines, mark.Sentence{Text: fmt.Sprintf("cut it %s wide, %d times the finished width", w.length(b.Cut), b.Folds())})
	if b.Square.MM > 0 {
		table.Lines = append(table.Lines, mark.Sentence{Text: fmt.Sprintf("%s from a square of %s, the first cut from corner to corner%s", strips, w.length(b.Square), joined)})
	} else {
		table.Lines = append(table.Lines, mark.Sentence{Text: fmt.Sprintf("%s from selvage to selvage, out of %s of cloth%s", strips, w.length(b.Cloth), joined)})
	}
	return table
}
