package figures

import (
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
)

// Rules of this file: the views of a file are told side by side, and of their figures only
// what differs. What is told of each is taken from its own figures, number by number, so
// that both always agree.

// Views gives what differs between the patterns of one file, each in another view, for
// whoever chooses between them. Of fewer than two nothing differs.
func Views(patterns []*garment.Pattern, units Units) mark.Report {
	var names []string
	var reports []mark.Report
	w := writer{patterns[0].Unit, units, depthsEach}
	for _, p := range patterns {
		names = append(names, p.ViewName())
		reports = append(reports, tables(p, w))
	}
	r := mark.Report{Title: patterns[0].Title, Notes: []string{scaleNote(w), "Views are beside each other, with what differs between them, and nothing else."}}
	for _, title := range inAny(reports, sectionTitles) {
		var same []mark.Section
		for _, one := range reports {
			same = append(same, sectionOf(one, title))
		}
		if s := (comparison{names}).section(title, same); !s.Empty() {
			r.Sections = append(r.Sections, s)
		}
	}
	if len(r.Sections) == 0 {
		r.Notes = append(r.Notes, "No number differs.")
	}
	return r
}

// inAny lists what any of several has, each once, in their order.
func inAny[T any](all []T, has func(T) []string) []string {
	var names []string
	for _, one := range all {
		for _, name := range has(one) {
			if !slices.Contains(names, name) {
				names = append(names, name)
			}
		}
	}
	return names
}

func sectionTitles(r mark.Report) []string {
	var titles []string
	for _, s := range r.Sections {
		titles = append(titles, s.Title)
	}
	return titles
}

func sectionOf(r mark.Report, title string) mark.Section {
	for _, s := range r.Sections {
		if s.Title == title {
			return s
		}
	}
	return mark.Section{Title: title}
}

// comparison puts the same part of the figures of several views side by side.
type comparison struct{ names []string }

// section compares a section of each.
func (c comparison) section(title string, each []mark.Section) mark.Section {
	s := mark.Section{Title: title}
	var said []mark.Lines
	for _, one := range each {
		said = append(said, one.Lines)
	}
	titles := inAny(each, func(s mark.Section) []string {
		var all []string
		for _, t := range s.Tables {
			all = append(all, t.Title)
		}
		return all
	})
	for _, name := range titles {
		var same []mark.Table
		for _, one := range each {
			i := slices.IndexFunc(one.Tables, func(t mark.Table) bool { return t.Title == name })
			if i < 0 {
				same = append(same, mark.Table{})
			} else {
				same = append(same, one.Tables[i])
			}
		}
		var under []mark.Lines
		for _, t := range same {
			under = append(under, t.Lines)
		}
		tables, lines := c.tables(name, same), c.lines(under)
		if n := len(tables); n > 0 {
			tables[n-1].Lines = lines
		} else if len(lines) > 0 {
			tables = []mark.Table{{Title: name, Lines: lines}}
		}
		s.Tables = append(s.Tables, tables...)
	}
	s.Lines = c.lines(said)
	return s
}

// tables compares a table of each: for each column in which something differs a table, with
// a column for each view.
func (c comparison) tables(title string, each []mark.Table) []mark.Table {
	var all []mark.Table
	labels := inAny(each, rowLabels)
	for _, head := range inAny(each, func(t mark.Table) []string { return t.Heads[min(1, len(t.Heads)):] }) {
		t := mark.Table{Title: headed(title, head), Heads: append([]string{""}, c.names...)}
		for _, label := range labels {
			cells := []string{label}
			for _, one := range each {
				cells = append(cells, cellOf(one, head, label))
			}
			if differ(cells[1:]) {
				t.Add(cells...)
			}
		}
		if len(t.Rows) > 0 {
			all = append(all, t)
		}
	}
	return all
}

// headed is the title of a table with the head of one of its columns.
func headed(title, head string) string {
	switch {
	case title == "" || head == "":
		return title + head
	case strings.Contains(title, ": "):
		return title + ", " + head
	}
	return title + ": " + head
}

// notThere stands where a view has no such number.
const notThere = "–"

// rowLabels are the first cells of a table; one that comes again is told apart by spaces
// behind it, which are not seen.
func rowLabels(t mark.Table) []string {
	var labels []string
	for _, row := range t.Rows {
		label := row.Cells[0]
		for slices.Contains(labels, label) {
			label += " "
		}
		labels = append(labels, label)
	}
	return labels
}

// cellOf is the cell of a table in a column, in the row of a label.
func cellOf(t mark.Table, head, label string) string {
	column := slices.Index(t.Heads, head)
	row := slices.Index(rowLabels(t), label)
	if column < 0 || row < 0 || column >= len(t.Rows[row].Cells) {
		return notThere
	}
	return t.Rows[row].Cells[column]
}

func differ(cells []string) bool {
	return slices.ContainsFunc(cells, func(cell string) bool { return cell != cells[0] })
}

// lines gives each sentence that is not said of all, with the views of which it is.
func (c comparison) lines(said []mark.Lines) mark.Lines {
	var all mark.Lines
	texts := inAny(said, func(l mark.Lines) []string {
		var texts []string
		for _, one := range l {
			if !one.Blank && one.Text != "" {
				texts = append(texts, one.Text)
			}
		}
		return texts
	})
	for _, text := range texts {
		var of []string
		for i, l := range said {
			if slices.ContainsFunc(l, func(s mark.Sentence) bool { return s.Text == text }) {
				of = append(of, c.names[i])
			}
		}
		if len(of) < len(said) {
			all.Say("%s: %s", strings.Join(of, ", "), text)
		}
	}
	return all
}
