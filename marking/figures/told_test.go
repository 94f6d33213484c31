package figures

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	pressed "tuckmark/marking/folded"
	"tuckmark/marking/garment"
	"tuckmark/marking/gauge"
	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// drawnOf are all sheets and gauges of a pattern, its lines brought onto the cloth in every way.
func drawnOf(p *garment.Pattern) []mark.Marking {
	every := *p
	every.Transfers = []source.Transfer{source.Trace, source.Template, source.Mirror, source.Prick}
	every.Pieces = slices.Clone(p.Pieces)
	for i := range every.Pieces {
		every.Pieces[i].Transfers = nil
	}
	return append(sheet.Of(&every), gauge.Of(&every)...)
}

// toldAll is what is told of a pattern, by what it is told of, which comes once.
func toldAll(t *testing.T, p *garment.Pattern, drawn []mark.Marking) map[mark.At]mark.Told {
	t.Helper()
	all := map[mark.At]mark.Told{}
	for _, told := range Told(p, drawn, OwnUnit) {
		_, twice := all[told.At]
		assert.False(t, twice, "%v is told twice", told.At)
		all[told.At] = told
	}
	return all
}

// A line that is pointed at is told, wherever it is drawn, and so is what it lies on.
func TestEveryLineIsTold(t *testing.T) {
	all := patterns(t)
	all["strange names"] = made.Of(t, strangeNames)
	for name, p := range all {
		drawn := drawnOf(p)
		told := toldAll(t, p, drawn)
		for _, m := range drawn {
			assert.Contains(t, told, mark.At{Piece: m.Key}, "%s: the sheet as a whole", name)
			for _, one := range m.Marks {
				if called := one.Called(); called != "" {
					assert.Contains(t, told, mark.At{Piece: m.Key, Line: called}, "%s: a %s", name, one.Role)
				}
			}
		}
		for _, one := range p.Pieces {
			assert.Contains(t, told, mark.At{Piece: one.Key}, name)
			for _, l := range slices.Concat(one.AsDrawn.Marks, one.FoldMarks()) {
				if l.Called() != "" {
					assert.Contains(t, told, mark.At{Piece: one.Key, Line: l.Called()}, name)
				}
			}
		}
		for _, sewn := range pressed.All(p, mark.BothHalves) {
			for _, one := range slices.Concat(sewn.Marks, sewn.Flat.Marks) {
				if called := one.Called(); called != "" {
					assert.Contains(t, told, mark.At{Piece: sewn.Key, Line: called}, "%s: a %s of it as sewn", name, one.Role)
				}
			}
		}
		for at, one := range told {
			assert.NotEmpty(t, one.Title, "%s: %v", name, at)
			assert.NotEmpty(t, one.Facts, "%s: %v", name, at)
			for _, f := range one.Facts {
				assert.NotEmpty(t, f.Value, "%s: %v: %s", name, at, f.What)
			}
			assert.NotEmpty(t, one.Places, "%s: %v", name, at)
			ofMany := at == mark.At{Piece: "straight gauge"} || strings.HasPrefix(at.Piece, "tuck gauge ")
			for _, place := range one.Places {
				assert.Contains(t, p.Files, place.File, "%s: %v", name, at)
				assert.Equal(t, !ofMany, place.Line > 0, "%s: the line in the file of %v", name, at)
			}
		}
	}
}

// strangeNames is a front that is cut from a block, with names in which signs stand that end the
// name of a line elsewhere, and one that is what another line is known by.
const strangeNames = `allowance = "1/2"
[piece."front (left)"]
name = "Front: left, (a)"
fold = "centre, front"
drawn = "finished"
[piece."front (left)".edge."centre, front"]
points = [[0, 0], [0, 10]]
[piece."front (left)".edge."top: neck"]
points = [[0, 10], [8, 10]]
[piece."front (left)".edge."side (right)"]
points = [[8, 10], [8, 0]]
[piece."front (left)".edge.hem]
points = [[8, 0], [0, 0]]
hem = 1
[piece."front (left)".tuck."row, 1"]
beside = "centre, front"
width = "1/8"
count = 3
first = 0
spacing = "1/2"
below = "top: neck"
length = 3
[piece."front (left)".block]
[piece."front (left)".notch."a: b"]
edge = "side (right)"
from = "hem"
at = 4
[piece."front (left)".line."side (right) stitch line"]
along = "side (right)"
distance = 2
[piece.back]
like = "front (left)"
without = ["block", "edge.hem.hem"]
`

// What is told of edges, tucks and pleats is what stands in their tables.
func TestToldAsInTheTables(t *testing.T) {
	edges, folds := 0, 0
	for name, p := range patterns(t) {
		all := toldAll(t, p, nil)
		check := func(at mark.At, table mark.Table, row mark.Row, unnamed string) {
			var facts []string // without units, as the table has them
			for _, f := range all[at].Facts {
				facts = append(facts, f.What+": "+strings.ReplaceAll(f.Value, " "+p.Unit.String(), ""))
			}
			for i, cell := range row.Cells[1:] {
				head := table.Heads[i+1]
				if head == unnamed {
					head = "" // the cell says what it is
				}
				assert.Contains(t, facts, head+": "+cell, "%s: %v", name, at)
			}
		}
		for _, section := range Tables(p, OwnUnit).Sections {
			switch section.Title {
			case "Edges":
				for i, table := range section.Tables {
					for k, row := range table.Rows {
						unnamed := ""
						if e := p.Pieces[i].Edges[k]; e.OnFold || e.Hem > 0 { // it is no allowance
							unnamed = "allowance"
						}
						check(mark.At{Piece: p.Pieces[i].Key, Line: row.Cells[0]}, table, row, unnamed)
						edges++
					}
				}
			case "Tucks and pleats, on the flat cloth":
				for _, table := range section.Tables {
					folds += checkFolds(p, table, check)
				}
			}
		}
	}
	assert.Greater(t, edges, 100)
	assert.Greater(t, folds, 40)
}

// checkFolds checks the rows of a table of tucks and returns how many there were.
func checkFolds(p *garment.Pattern, table mark.Table, check func(mark.At, mark.Table, mark.Row, string)) int {
	n := 0
	for _, one := range p.Pieces {
		for _, set := range one.TuckRows {
			if !strings.HasPrefix(table.Title, one.Name+", "+set.Key+": ") || !strings.HasPrefix(table.Heads[0], "from ") {
				continue
			}
			table.Heads = slices.Clone(table.Heads)
			table.Heads[len(table.Heads)-1] = "stitching, when sewn"
			for k, row := range table.Rows {
				for _, role := range []string{"tuck fold", "tuck stitching"} {
					check(mark.At{Piece: one.Key, Line: fmt.Sprintf("%s %d %s", set.Key, k+1, role)}, table, row, "")
				}
				n++
			}
		}
	}
	return n
}

// skirt is half a skirt of 10 in by 10 in, and its pocket, alike to that of the apron.
const skirt = `allowance = "1/2"
[piece.skirt]
name = "Skirt"
fold = "centre"
[piece.skirt.edge.centre]
points = [[0, 0], [0, 10]]
[piece.skirt.edge.waist]
points = [[0, 10], [10, 10]]
allowance = 0
[piece.skirt.edge.side]
points = [[10, 10], [10, 0]]
[piece.skirt.edge.hem]
points = [[10, 0], [0, 0]]
hem = 2
turn = "1/4"
[piece.skirt.tuck.row]
beside = "centre"
width = "1/4"
count = 2
first = 2
spacing = 3
[piece.skirt.notch.n]
edge = "side"
from = "waist"
at = 3
[piece.skirt.line.placket]
along = "side"
distance = "1 1/2"
[piece.pocket]
name = "Pocket"
rectangle = [4, 5]
[piece.patch]
name = "Patch"
rectangle = [4, 5]
[seam.pocket]
join = ["pocket.left", "patch.right"]
[trim.lace]
along = ["skirt.waist"]
width = "1/2"
`

// facts writes what is told of something, line by line.
func facts(told mark.Told) string {
	var b strings.Builder
	b.WriteString(told.Title)
	for _, place := range told.Places {
		b.WriteString(" " + place.InFile())
	}
	b.WriteByte('\n')
	for _, f := range told.Facts {
		if f.What != "" {
			b.WriteString(f.What + " = ")
		}
		b.WriteString(f.Value)
		if f.Warning {
			b.WriteString(" (!)")
		}
		b.WriteByte('\n')
	}
	return b.String()
}

// Derived by arithmetic: sewn across, half the skirt is 10 - 1/2 - 2 x 2 x 1/4, up and down
// 10 - 2 - 1/4; the lace goes over both halves, and its join takes twice 1/4. What is nothing but a
// rectangle is torn, both halves of it.
func TestWhatIsTold(t *testing.T) {
	p := made.Of(t, skirt)
	drawn := sheet.Of(p)
	all := toldAll(t, p, drawn)
	for _, c := range []struct{ piece, line, want string }{
		{"skirt", "hem", `hem, cutting line pinafore.toml:12
piece = Skirt, half of it
cut = 10 in
sewn = 8 1/2 in
hem 2 in, turn 1/4 in
sewn: with the tucks and pleats in
`},
		{"skirt", "waist", `waist, cutting line pinafore.toml:7
piece = Skirt, half of it
cut = 10 in
sewn = 8 1/2 in
allowance = none
sewn: with the tucks and pleats in
lace = lace, 17 1/2 in to cut
`},
		{"skirt", "centre", `centre, place on the fold pinafore.toml:5
piece = Skirt, half of it
cut = 10 in
sewn = 7 3/4 in
on the fold
sewn: with the tucks and pleats in
`},
		{"skirt", "side stitch line", `side, stitch line pinafore.toml:10
piece = Skirt, half of it
cut = 10 in
sewn = 7 3/4 in
allowance = 1/2 in
sewn: with the tucks and pleats in
notch n = 3 in from waist
`},
		{"skirt", "turn", `turn, fold line pinafore.toml:12
piece = Skirt, half of it
edge = hem
hem = 2 in
turn = 1/4 in
from the cut edge = 1/4 in
`},
		{"skirt", "hem fold", `hem fold, fold line pinafore.toml:12
piece = Skirt, half of it
edge = hem
hem = 2 in
turn = 1/4 in
from the cut edge = 2 1/4 in
`},
		{"skirt", "row 2 tuck fold", `tuck 2 of row, fold line pinafore.toml:16
piece = Skirt, half of it
measured = from centre
stitch = 4 3/4 in
fold = 5 in
stitch = 5 1/4 in
stitching, when sewn = 4 1/4 in
tucks = 4 tucks, 2 on each side, each 1/4 in wide
stitch each 1/4 in from its fold
each takes up 1/2 in, all 4 together 2 in
cloth that shows between tucks when sewn: 2 1/4 in
`},
		{"skirt", "n notch", `n, notch pinafore.toml:22
piece = Skirt, half of it
edge = side
at = 3 in from waist
`},
		{"skirt", "placket", `placket, fold line pinafore.toml:26
piece = Skirt, half of it
long, sewn = 7 3/4 in
from side = 1 1/2 in from the cut edge
`},
		{"skirt", "", `Skirt pinafore.toml:2
tear = 1
across the cloth = 20 in
along it = 10 in
with the tucks sewn, this half is 9 in wide
`},
		{"pocket", "", `Pocket and Patch pinafore.toml:29 pinafore.toml:32
tear = 1
across the cloth = 4 in
along it = 5 in
`},
		{"pocket", "left", `left, cutting line pinafore.toml:31 pinafore.toml:34
piece = Pocket
cut = 5 in
sewn = 4 in
allowance = 1/2 in
seam pocket = to the right of Patch, 4 in sewn
seam pocket = sewn, they match within 1/16 in
piece = Patch
`},
		{"patch", "right", `right, cutting line pinafore.toml:34
piece = Patch
cut = 5 in
sewn = 4 in
allowance = 1/2 in
seam pocket = to the left of Pocket, 4 in sewn
seam pocket = sewn, they match within 1/16 in
`},
		{"pocket", "grain", `grain line pinafore.toml:29 pinafore.toml:32
piece = Pocket
runs = taken along right
piece = Patch
`},
	} {
		told, is := all[mark.At{Piece: c.piece, Line: c.line}]
		require.True(t, is, "%s of %s", c.line, c.piece)
		assert.Equal(t, c.want, facts(told))
	}
}

// How far a line lies from an edge is told as a ruler shows it on the flat cloth, where folds lie
// between: two tucks that take 1/2 in each.
func TestToldOverFolds(t *testing.T) {
	p := made.Of(t, sketch.Front("drawn = \"finished\"\nfold = \"centre\"\ncentre: 0,0 0,7\nwaist: 0,7 5,7\nside: 5,7 5,0\nhem: 5,0 0,0\n---\n"+
		sketch.Rows("tuck growth hem 1/4 2 3")+"\n[line.high]\nbeside = \"hem\"\nat = 6\n\n[line.pocket]\nbeside = \"centre\"\nat = 3\n"))
	all := toldAll(t, p, nil)
	for line, want := range map[string]mark.Fact{
		"high":   {What: "from hem", Value: "7 in from the cut edge, finished 6 in"},
		"pocket": {What: "from centre", Value: "3 in from the fold"},
	} {
		assert.Contains(t, all[mark.At{Piece: "front", Line: line}].Facts, want)
	}
}

// In both systems what is told is what the figures say in both.
func TestToldInAllUnits(t *testing.T) {
	for _, told := range Told(made.Of(t, skirt), nil, AllUnits) {
		if told.At == (mark.At{Piece: "skirt", Line: "row 1 tuck fold"}) {
			assert.Contains(t, told.Facts, mark.Fact{What: "fold", Value: "2 in (51 mm)"})
			return
		}
	}
	assert.Fail(t, "nothing is told of the tuck")
}

// A line of another view on a sheet is told as it is in that view.
func TestToldOfOtherViews(t *testing.T) {
	const views = `unit = "in"
allowance = "1/2"
[piece.bib]
name = "Bib"
rectangle = [6, 8]
[view.long.piece.bib]
rectangle = [6, 10]
[view.wide.piece.bib]
rectangle = [7, 8]
`
	var all []*garment.Pattern
	for _, view := range []string{"", "long", "wide"} {
		spec, err := source.Reader{Printable: sketch.HasLetter, View: view}.Read("f.toml", []byte(views))
		require.NoError(t, err)
		p, err := garment.Check(spec)
		require.NoError(t, err)
		all = append(all, p)
	}
	drawn := sheet.WithViews(sheet.Of(all[0]), all[0], all[1:])
	told := map[mark.At]string{}
	for _, one := range Told(all[0], drawn, OwnUnit, all[1:]...) {
		told[one.At] = facts(one)
	}
	for _, one := range drawn[0].Marks {
		if called := one.Called(); called != "" {
			assert.Contains(t, told, mark.At{Piece: "bib", Line: called})
		}
	}
	assert.Equal(t, "left, cutting line f.toml:5\npiece = Bib\ncut = 8 in\nsewn = 7 in\nallowance = 1/2 in\n", told[mark.At{Piece: "bib", Line: "left"}])
	assert.Equal(t, "left, cutting line, long f.toml:7\npiece = Bib\ncut = 10 in\nsewn = 9 in\nallowance = 1/2 in\n", told[mark.At{Piece: "bib", Line: "left, long"}])
	assert.Equal(t, "right, cutting line, wide f.toml:9\npiece = Bib\ncut = 8 in\nsewn = 7 in\nallowance = 1/2 in\n", told[mark.At{Piece: "bib", Line: "right, wide"}])
}
