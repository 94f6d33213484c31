package figures

import (
	"fmt"
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
	w := writer{unit: patterns[0].Unit, units: units, depths: depthsEach}
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

// section compares a section of each. A table that some views do not have is compared among
// those that have it.
func (c comparison) section(title string, each []mark.Section) mark.Section {
	s := mark.Section{Title: title}
	var said []mark.Lines
	for _, one := range each {
		said = append(said, one.Lines)
	}
	for _, key := range inAny(each, tableKeys) {
		var with comparison
		var same []mark.Table
		for i, one := range each {
			if k := slices.Index(tableKeys(one), key); k >= 0 {
				with.names, same = append(with.names, c.names[i]), append(same, one.Tables[k])
			}
		}
		s.Tables = append(s.Tables, with.whole(same)...)
		if len(same) < len(each) {
			s.Lines.Say("%s: only %s", nameOf(same), strings.Join(with.names, ", "))
		}
	}
	s.Lines = append(slices.Compact(s.Lines), c.lines(said)...)
	return s
}

// beforeDetails parts the title of a table, "Front, pin" from "12 tucks": by what stands
// before it a table is known again in another view.
const beforeDetails = ": "

// tableKeys tell the tables of a section apart, as they are known again in another view. One
// row of tucks has two tables, whose first heads differ.
func tableKeys(s mark.Section) []string {
	var keys []string
	for _, t := range s.Tables {
		name, _, _ := strings.Cut(t.Title, beforeDetails)
		keys = append(keys, name+beforeDetails+t.Heads[0])
	}
	return apart(keys)
}

// nameOf names a table that some have without its details; one without a title by what it
// lists: "cut Front; Back".
func nameOf(same []mark.Table) string {
	if name, _, _ := strings.Cut(same[0].Title, beforeDetails); name != "" {
		return name
	}
	return same[0].Heads[0] + " " + strings.Join(inAny(same, rowLabels), "; ")
}

// whole compares a table of each with all that is said of it: where their titles differ, what
// differs there is said under it.
func (c comparison) whole(each []mark.Table) []mark.Table {
	title := each[0].Title
	different := slices.ContainsFunc(each, func(t mark.Table) bool { return t.Title != title })
	var said []mark.Lines
	for _, t := range each {
		lines := t.Lines
		if name, details, ok := strings.Cut(t.Title, beforeDetails); different && ok {
			title, lines = name, append(mark.Lines{{Text: details}}, lines...)
		}
		said = append(said, lines)
	}
	tables, lines := c.tables(title, each), c.lines(said)
	if n := len(tables); n > 0 {
		tables[n-1].Lines = lines
	} else if len(lines) > 0 {
		tables = []mark.Table{{Title: title, Lines: lines}}
	}
	return tables
}

// tables compares a table of each: for each column in which something differs a table, with
// a column for each view.
func (c comparison) tables(title string, each []mark.Table) []mark.Table {
	var all []mark.Table
	labels := inAny(each, rowLabels)
	for _, head := range inAny(each, columnNames) {
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
	case strings.Contains(title, beforeDetails):
		return title + ", " + head
	}
	return title + beforeDetails + head
}

// notThere stands where a view has no such number.
const notThere = "–"

// rowLabels are the first cells of a table, each told apart.
func rowLabels(t mark.Table) []string {
	var labels []string
	for _, row := range t.Rows {
		labels = append(labels, row.Cells[0])
	}
	return apart(labels)
}

// apart tells texts apart that are the same, by spaces behind them, which are not seen.
func apart(texts []string) []string {
	var all []string
	for _, text := range texts {
		for slices.Contains(all, text) {
			text += " "
		}
		all = append(all, text)
	}
	return all
}

// columnNames are the heads of the columns of numbers of a table. Those that are alike, as of the
// two lines along which a tuck is stitched, are counted.
func columnNames(t mark.Table) []string {
	heads := t.Heads[1:]
	among := func(heads []string, head string) int {
		return len(slices.DeleteFunc(slices.Clone(heads), func(other string) bool { return other != head }))
	}
	var names []string
	for i, head := range heads {
		if alike := among(heads, head); alike > 1 {
			head = fmt.Sprintf("%s, %d of %d", head, among(heads[:i+1], head), alike)
		}
		names = append(names, head)
	}
	return names
}

// cellOf is the cell of a table in a column, in the row of a label.
func cellOf(t mark.Table, head, label string) string {
	column := 1 + slices.Index(columnNames(t), head)
	row := slices.Index(rowLabels(t), label)
	if column < 1 || row < 0 || column >= len(t.Rows[row].Cells) || t.Rows[row].Cells[column] == "" {
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
