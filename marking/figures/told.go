package figures

import (
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/gauge"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sheet"
)

// Rules of this file. A line is told wherever it is drawn, and by what it is called there: on the
// sheets of its piece, on a sheet that several pieces have together, on a gauge, and in the piece
// as it is sewn. What is told of it are cells of the tables, each with its unit.

// Told says what is to be known of every line of what is drawn of a pattern, that has a name or a
// key; of every piece; and of every marking as a whole. Others are the other views of its file that
// have lines on its sheets (sheet.WithViews).
func Told(p *garment.Pattern, drawn []mark.Marking, units Units, others ...*garment.Pattern) []mark.Told {
	w := writer{unit: p.Unit, units: units, cells: lengthsAlone}
	t := teller{p, w}
	var all tellings
	pieces := t.pieces()
	for _, m := range drawn {
		t.marking(&all, m, pieces)
	}
	for _, other := range others {
		theirs := teller{other, w}.pieces()
		for _, m := range drawn {
			all.ofView(m, theirs, other.ViewName())
		}
	}
	for _, one := range pieces {
		all.addUnlessThere(toldAt(mark.At{Piece: one.piece.Key}, one.whole))
		for _, l := range one.lines {
			all.addUnlessThere(l.at(mark.At{Piece: one.piece.Key, Line: l.key}, l.role))
		}
	}
	return all.list
}

// teller tells the lines of a pattern.
type teller struct {
	*garment.Pattern
	writer
}

// toldPiece is what is told of a piece and of its lines, wherever they are drawn.
type toldPiece struct {
	piece *piece.Piece
	whole mark.Told
	lines []toldLine
}

// toldAt is what is told of something, where it is drawn.
func toldAt(at mark.At, told mark.Told) mark.Told {
	told.At = at
	return told
}

// toldLine is what is told of a line.
type toldLine struct {
	mark.Told
	key  string    // by which it is known among the lines of its piece
	of   thing     // that it is a line of
	role mark.Role // as which it is drawn, where nothing else is known
	// what it is: "neck", "tuck 3 of yoke"; "" where the title is complete.
	what string
}

// at is what is told of it where it is drawn in a role.
func (l toldLine) at(at mark.At, as mark.Role) mark.Told {
	told := toldAt(at, l.Told)
	if l.what != "" {
		told.Title = l.what + ", " + roleWords(as)
	}
	return told
}

// roleWords say what a line is of the thing that is named before them.
func roleWords(role mark.Role) string {
	switch role {
	case mark.TuckFold, mark.PleatFold:
		return "fold line"
	case mark.TuckStitch:
		return "stitching"
	}
	return role.String()
}

// tellings are what is told so far, in its order.
type tellings struct {
	list []mark.Told
	of   map[mark.At]int
}

// add adds what is told of a line; to what is told already of one that is called alike there.
func (all *tellings) add(told mark.Told) {
	i, is := all.of[told.At]
	if !is {
		all.addUnlessThere(told)
		return
	}
	have := &all.list[i]
	have.Facts, have.Places = slices.Clone(have.Facts), slices.Clone(have.Places)
	for _, f := range told.Facts {
		if !slices.Contains(have.Facts, f) {
			have.Facts = append(have.Facts, f)
		}
	}
	for _, place := range told.Places {
		if !slices.Contains(have.Places, place) {
			have.Places = append(have.Places, place)
		}
	}
}

// addUnlessThere adds what is told of a line of which nothing is told yet.
func (all *tellings) addUnlessThere(told mark.Told) {
	if all.of == nil {
		all.of = map[mark.At]int{}
	}
	if _, is := all.of[told.At]; !is {
		all.of[told.At] = len(all.list)
		all.list = append(all.list, told)
	}
}

// marking tells a marking as a whole, and its lines.
func (t teller) marking(all *tellings, m mark.Marking, pieces []toldPiece) {
	if m.Kind == mark.Gauge {
		t.gauge(all, m, pieces)
		return
	}
	for _, one := range pieces {
		if !m.IsOf(one.piece.Name) {
			continue
		}
		whole := one.whole
		if m.Kind == mark.Sample {
			whole = t.sample(one.piece, m)
		}
		whole.Title = m.Name
		all.add(toldAt(mark.At{Piece: m.Key}, whole))
		for _, l := range linesIn(m) {
			for _, known := range one.lines {
				if known.key == l.key {
					all.add(known.at(mark.At{Piece: m.Key, Line: l.called}, l.role))
				}
			}
		}
	}
}

// ofView tells the lines that a marking has of another view, whose pieces are given.
func (all *tellings) ofView(m mark.Marking, pieces []toldPiece, view string) {
	for _, one := range pieces {
		if !m.IsOf(one.piece.Name) {
			continue
		}
		for _, l := range linesIn(m) {
			for _, known := range one.lines {
				if sheet.OfView(l.key, known.key, view) {
					told := known.at(mark.At{Piece: m.Key, Line: l.called}, l.role)
					told.Title += ", " + view
					all.add(told)
				}
			}
		}
	}
}

// drawnLine is a line of a marking.
type drawnLine struct {
	called string    // there
	key    string    // among the lines of its piece
	role   mark.Role // of dots, that of the line they stand on
}

// linesIn lists what the lines of a marking are called, each once.
func linesIn(m mark.Marking) []drawnLine {
	var all []drawnLine
	roles := map[string]mark.Role{}
	for _, one := range m.Marks {
		called := one.Called()
		if called == "" {
			continue
		}
		if _, is := roles[called]; is {
			continue
		}
		l := drawnLine{called, called, one.Role}
		if one.Role == mark.Prick {
			l.key = strings.TrimSuffix(called, mark.KeyWith("", mark.Prick))
			if role, is := roles[l.key]; is {
				l.role = role
			}
		}
		roles[called] = l.role
		all = append(all, l)
	}
	return all
}

// sample is what is told of the sheet that tucks of a piece are tried on.
func (t teller) sample(p *piece.Piece, m mark.Marking) mark.Told {
	var told mark.Told
	for _, row := range p.TuckRows {
		if sheet.SampleKey(p, row) == m.Key {
			told.Facts = append(told.Facts, sentences(sheet.DescribeTucks(row, t.named))...)
			told.Places = append(told.Places, row.Place)
		}
	}
	return told
}

// gauge tells a gauge: one of an edge by what is known of that.
func (t teller) gauge(all *tellings, m mark.Marking, pieces []toldPiece) {
	whole := mark.Told{Title: m.Name, Facts: sentences(m.Notes)}
	for _, one := range pieces {
		for i := range one.piece.Edges {
			edge := &one.piece.Edges[i]
			if !gauge.IsOfEdge(m, one.piece, edge) {
				continue
			}
			whole.Places = append(whole.Places, edge.Place)
			for _, known := range one.lines {
				if known.key != edge.Key {
					continue
				}
				for _, l := range linesIn(m) {
					told := toldAt(mark.At{Piece: m.Key, Line: l.called}, known.Told)
					told.Title = edge.Key + ", " + l.called
					all.add(told)
				}
			}
		}
	}
	if len(whole.Places) == 0 { // of many edges, or of tucks
		whole.Places = t.inFiles()
	}
	all.add(toldAt(mark.At{Piece: m.Key}, whole))
}

// sentences are facts that say all in one.
func sentences(texts []string) []mark.Fact {
	var all []mark.Fact
	for _, text := range texts {
		all = append(all, mark.Fact{Value: text})
	}
	return all
}

// said are facts of what is said under a table.
func said(what string, lines mark.Lines) []mark.Fact {
	var all []mark.Fact
	for _, line := range lines {
		if line.Text != "" {
			all = append(all, mark.Fact{What: what, Value: line.Text, Warning: line.Warning})
		}
	}
	return all
}

// rowFacts are the cells of a row of a table, each with the head of its column.
func rowFacts(t mark.Table, row int) []mark.Fact {
	var all []mark.Fact
	for i, cell := range t.Rows[row].Cells {
		if i > 0 {
			all = append(all, mark.Fact{What: t.Heads[i], Value: cell})
		}
	}
	return all
}
