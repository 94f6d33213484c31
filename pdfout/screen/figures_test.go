package screen

import (
	"encoding/json"
	"fmt"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/figures"
	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/source"
	"tuckmark/marking/terminal"
	"tuckmark/pdfout/ink"
	samples "tuckmark/pdfout/sample"
	"tuckmark/pdfout/sets"
)

// plain is a report as it can be read back: every row as long as its table is wide, and no
// picture but a sign that there is one.
func plain(r mark.Report) mark.Report {
	r.Sections = slices.Clone(r.Sections)
	for i := range r.Sections {
		s := &r.Sections[i]
		if s.Picture != nil {
			s.Picture = &mark.Picture{}
		}
		s.Tables = slices.Clone(s.Tables)
		for k := range s.Tables {
			t := &s.Tables[k]
			n := t.Columns()
			filled := func(cells []string) []string { return append(slices.Clone(cells), make([]string, n-len(cells))...) }
			if t.Heads != nil {
				t.Heads = filled(t.Heads)
			}
			t.Rows = slices.Clone(t.Rows)
			for j, row := range t.Rows {
				t.Rows[j].Cells = filled(row.Cells)
			}
		}
	}
	return r
}

// checkOnPage holds a report against what stands on the page, and what a screen of letters
// shows of both.
func checkOnPage(t require.TestingT, r mark.Report) {
	page := htmlOf(t, r)
	read := reportOf(t, page)
	require.Equal(t, plain(r), read)
	require.Equal(t, terminal.Text(plain(r), 80), terminal.Text(read, 80))
	seen := map[string]bool{}
	for _, e := range nodesOf(t, page).all("div") {
		if id := e.attrs["id"]; id != "" {
			require.False(t, seen[id], "the id %s stands twice", id)
			seen[id] = true
			require.NotEmpty(t, e.attrs["aria-label"], "what can have the focus has a name")
		}
	}
	require.NotContains(t, page, "style=", "the page has no style of its own")
}

// The figures of every example, in one unit or in both, are on the page with every word and
// every number, and in the order that they have on a screen of letters.
func TestFiguresOfTheExamples(t *testing.T) {
	for name, p := range sets.Patterns(t, "../../examples") {
		for _, units := range []figures.Units{figures.OwnUnit, figures.AllUnits} {
			t.Run(fmt.Sprint(name, units), func(t *testing.T) {
				r := figures.Report(p, units)
				require.NotEmpty(t, r.Sections)
				checkOnPage(t, r)
			})
		}
	}
}

// Views of a file beside one another come onto the page as they are.
func TestFiguresOfViews(t *testing.T) {
	const file = "../../examples/smock.toml"
	text, err := os.ReadFile(file)
	require.NoError(t, err)
	var views []*garment.Pattern
	for _, name := range []string{"", "square"} {
		spec, err := (source.Reader{View: name, Printable: ink.CanPrint}).Read(file, text)
		require.NoError(t, err)
		p, err := marking.Check(spec)
		require.NoError(t, err)
		views = append(views, p)
	}
	r := figures.Views(views, figures.OwnUnit)
	require.NotEmpty(t, r.Sections)
	checkOnPage(t, r)
}

// printed is a length of the data.
type printed struct{ Printed string }

// figureData is what the test below needs of the data.
type figureData struct {
	Unit   string
	Pieces []struct {
		Name  string
		Edges []struct {
			Key       string
			Cut, Sewn printed
		}
		Tucks []struct {
			Key, Kind string
			Each      []struct {
				Number int
				Fold   printed
			}
		}
	}
}

// The edges and folds of the data and those of the page have the same numbers, for every example.
func TestNumbersOnThePageAreThoseOfTheData(t *testing.T) {
	edges, folds := 0, 0
	for name, p := range sets.Patterns(t, "../../examples") {
		var data figureData
		require.NoError(t, json.Unmarshal(figures.JSON(p), &data))
		read := reportOf(t, htmlOf(t, figures.Report(p, figures.OwnUnit)))
		for _, piece := range data.Pieces {
			for _, e := range piece.Edges {
				where := fmt.Sprintf("%s: %s, %s", name, piece.Name, e.Key)
				assert.Equal(t, e.Cut.Printed, cellOnPage(read, piece.Name+"(, .*)?", e.Key, "cut")+" "+data.Unit, where)
				assert.Equal(t, e.Sewn.Printed, cellOnPage(read, piece.Name+"(, .*)?", e.Key, "sewn")+" "+data.Unit, where)
				edges++
			}
			for _, set := range piece.Tucks {
				for _, one := range set.Each {
					title, row := piece.Name+", "+set.Key+": .*each.*", fmt.Sprintf("(.*: )?%s %d", set.Kind, one.Number)
					assert.Equal(t, one.Fold.Printed, cellOnPage(read, title, row, "fold")+" "+data.Unit, "%s: %s, %s", name, piece.Name, row)
					folds++
				}
			}
		}
	}
	assert.Greater(t, edges, 50)
	assert.Greater(t, folds, 10)
}

// cellOnPage is the cell of the table and the row whose names are all that some expressions say.
func cellOnPage(r mark.Report, table, row, head string) string {
	is := func(name, expression string) bool {
		return regexp.MustCompile("^(" + expression + ")$").MatchString(name)
	}
	for _, s := range r.Sections {
		for _, t := range s.Tables {
			column := slices.Index(t.Heads, head)
			for _, cells := range t.Rows {
				if column >= 0 && is(t.Title, table) && is(cells.Cells[0], row) {
					return cells.Cells[column]
				}
			}
		}
	}
	return "is not there"
}

// The figures that stand on the page are those of the view and the units that are chosen, or of
// all views.
func TestFiguresThatAreChosen(t *testing.T) {
	for _, c := range []struct {
		choice       Choice
		title, units string
	}{
		{Choice{Show: Figures}, "Figures of", "in inches"},
		{Choice{Show: Figures, View: "round"}, "Figures of round", "in inches"},
		{Choice{Show: Figures, View: "round", Units: AllUnits}, "Figures of round", "in inches and millimetres"},
		{Choice{Show: Figures, View: "round", Lay: Beside}, "Figures of all", "in inches"},
		{Choice{Show: Figures, Lay: Beside, Units: AllUnits}, "Figures of all", "in inches and millimetres"},
	} {
		told := newPage(sceneOf(t, "", "round"), c.choice).Figures
		assert.Equal(t, c.title, strings.TrimSpace(told.Title), "%+v", c.choice)
		assert.Equal(t, []string{c.units}, told.Notes, "%+v", c.choice)
	}
	assert.Nil(t, newPage(sceneOf(t, "", "round"), Choice{}).Figures, "figures beside the sheets")
	assert.Equal(t, "Figures of ", newPage(sceneOf(t, ""), Choice{Show: Figures, Lay: Beside}).Figures.Title, "of a file without views")
}

// someText draws a text that may have what HTML takes for its own, or a measure.
func someText(t *rapid.T, name string) string {
	parts := rapid.SliceOfN(rapid.OneOf(
		rapid.SampledFrom([]string{"17 11/16 in", "3/8", "5", "<b>", "&amp;", `"`, "'", "</td>", "{{.}}", "<!--", "]]>", "ä½", "`", "\\", "-1/8", "2.5", "(49)"}),
		rapid.StringMatching(`[a-zé]{1,9}`)), 1, 5).Draw(t, name)
	return strings.Join(parts, " ")
}

// someCell draws what stands in a column.
func someCell(t *rapid.T, name string) string {
	return rapid.OneOf(
		rapid.StringMatching(`([1-9]\d? )?(1/2|3/4|7/8|11/16)( \(\d{1,3}\))?`), rapid.StringMatching(`\d{1,2}(\.\d)?( cm)?`), rapid.Just(""), rapid.Just("–"),
		rapid.Custom(func(t *rapid.T) string { return someText(t, "cell") }),
	).Draw(t, name)
}

// someLines draws sentences.
func someLines(t *rapid.T, name string) mark.Lines {
	lines := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) mark.Sentence {
		if rapid.IntRange(0, 4).Draw(t, "entry") == 0 {
			return mark.Sentence{Entry: someText(t, "entry")}
		}
		s := mark.Sentence{Text: someText(t, "text"), Warning: rapid.Bool().Draw(t, "warning"), Blank: rapid.Bool().Draw(t, "blank")}
		if rapid.Bool().Draw(t, "placed") {
			s.Place = fmt.Sprintf("line %d", rapid.IntRange(1, 99).Draw(t, "line"))
		}
		return s
	}), 0, 3).Draw(t, name)
	if len(lines) == 0 {
		return nil
	}
	return lines
}

// Whatever a report says is on the page as it says it, with every sign that HTML takes for its
// own.
func TestRandomFigures(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := mark.Report{Title: someText(t, "title")}
		for range rapid.IntRange(0, 2).Draw(t, "notes") {
			r.Notes = append(r.Notes, someText(t, "note"))
		}
		for range rapid.IntRange(0, 3).Draw(t, "sections") {
			s := mark.Section{Title: someText(t, "section"), Lines: someLines(t, "lines")}
			for range rapid.IntRange(0, 3).Draw(t, "tables") {
				table := mark.Table{Lines: someLines(t, "under")}
				if rapid.Bool().Draw(t, "titled") {
					table.Title = someText(t, "table")
				}
				columns := rapid.IntRange(1, 5).Draw(t, "columns")
				if rapid.Bool().Draw(t, "headed") {
					for range columns {
						table.Heads = append(table.Heads, rapid.OneOf(rapid.Just(""), rapid.Just("cut")).Draw(t, "head"))
					}
				}
				for range rapid.IntRange(1, 4).Draw(t, "rows") {
					row := mark.Row{Cells: []string{someText(t, "row")}, Total: rapid.Bool().Draw(t, "total")}
					for range rapid.IntRange(0, columns-1).Draw(t, "cells") {
						row.Cells = append(row.Cells, someCell(t, "cell"))
					}
					table.Rows = append(table.Rows, row)
				}
				s.Tables = append(s.Tables, table)
			}
			r.Sections = append(r.Sections, s)
		}
		checkOnPage(t, r)
	})
}

// The samples have all that a report may have.
func TestSampleFigures(t *testing.T) {
	for _, r := range []*mark.Report{samples.DressFigures(), samples.ColumnFigures(), samples.LongFigures()} {
		checkOnPage(t, *r)
	}
}

// A table without rows, or without anything, is one all the same; and a report without anything.
func TestEmptyFigures(t *testing.T) {
	checkOnPage(t, mark.Report{})
	checkOnPage(t, mark.Report{Sections: []mark.Section{{Title: "S", Tables: []mark.Table{
		{}, {Title: "only a title"}, {Heads: []string{"", "only heads"}}, {Lines: mark.Lines{{Text: "only a line"}}},
	}}}})
}

// Every table has heads over its columns or in its rows, and a name; a total is told by its row.
func TestEveryTableSaysWhatItsNumbersAre(t *testing.T) {
	tables := 0
	for name, p := range sets.Patterns(t, "../../examples") {
		for _, e := range nodesOf(t, htmlOf(t, figures.Report(p, figures.OwnUnit))).all("table") {
			tables++
			require.Len(t, e.all("caption"), 1, name)
			assert.NotEmpty(t, e.all("caption")[0].said(), name)
			for _, row := range e.all("tbody")[0].all("tr") {
				require.NotEmpty(t, row.children, name)
				assert.Equal(t, "row", row.children[0].attrs["scope"], name)
				assert.NotEmpty(t, row.children[0].said(), "%s: a row without a name in %q", name, e.all("caption")[0].said())
			}
		}
	}
	assert.Greater(t, tables, 50)
}

// Fractions of a column begin under one another, and so does what stands behind them; a column
// with words in it is left as it is.
func TestFractionsLineUp(t *testing.T) {
	tests := []struct {
		name  string
		cells []string
		want  []string // before | part of its room | behind of its room
	}{
		{"fractions", []string{"11 3/16", "9", "1/2", ""}, []string{"11 |3/16 w4|", "9 | w4|", "|1/2 w4|", "||"}},
		{"in both units", []string{"2 1/8 (54)", "1 (25)", "11/16 (17)"}, []string{"2 |1/8 w5|(54) w4", "1 | w5|(25) w4", "|11/16 w5|(17) w4"}},
		{"decimals", []string{"12.5", "9"}, []string{"12|.5 w2|", "9| w2|"}},
		{"numbers alone", []string{"12", "9"}, []string{"12||", "9||"}},
		{"with units", []string{"17 11/16 in", "9 in"}, []string{"17 |11/16 w5|in w2", "9 | w5|in w2"}},
		{"one that a view has not", []string{"–", "9/16"}, []string{"– | w4|", "|9/16 w4|"}},
		{"less than none", []string{"-1/8", "2 1/4"}, []string{"|-1/8 w4|", "2 |1/4 w4|"}},
		{"one in another unit", []string{"1.5 cm", "2 1/4"}, []string{"1.5 | w3|cm w2", "2 |1/4 w3| w2"}},
		{"words among them", []string{"on the fold", "3/8"}, []string{"on the fold||", "3/8||"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var table mark.Table
			for _, cell := range tt.cells {
				table.Add("row", cell)
			}
			for i, row := range newFigureTable("t", "S", table).Rows {
				c := row.Cells[0]
				assert.Equal(t, tt.want[i], fmt.Sprintf("%s|%s|%s", c.Before, strings.TrimRight(c.Part+" "+c.PartRoom, " "), strings.TrimRight(c.Behind+" "+c.BehindRoom, " ")))
			}
		})
	}
}

// The style has a class for every room that is asked for, up to the widest.
func TestStyleKeepsTheRooms(t *testing.T) {
	style, err := os.ReadFile("figures.css")
	require.NoError(t, err)
	for n := 1; n <= mostRoom; n++ {
		assert.Regexp(t, regexp.MustCompile(`\.`+roomFor(n)+` \{ min-width: [0-9.]+ch; \}`), string(style))
	}
	assert.Equal(t, roomFor(mostRoom), roomFor(mostRoom+20))
	assert.Empty(t, roomFor(0))
}

// A table too wide for a telephone can have the focus, to be moved by the arrow keys; one that
// fits cannot, for each is one more step from the top of the page to its end.
func TestWideTablesCanHaveTheFocus(t *testing.T) {
	wide := newFigureTable("t", "S", samples.WideTable())
	assert.True(t, wide.Scrolls)
	narrow := mark.Table{Title: "side", Heads: []string{"", "cut", "sewn"}}
	narrow.Add("Front, with a name that wraps into several lines", "11 3/16", "8 1/2")
	assert.False(t, newFigureTable("t", "S", narrow).Scrolls)
}
