package sheet

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// bothWays are those of a template that comes with a sheet to cut by.
func bothWays() []source.Transfer { return []source.Transfer{source.Trace, source.Template} }

// sketchedTemplate returns the template of a sketched piece.
func sketchedTemplate(t testing.TB, allowance, text string) (*piece.Piece, mark.Marking) {
	p, _ := made.Front(t, allowance, text)
	return p, templateOf(p, bothWays(), length.Inch).Marking
}

// What a template says of itself, whole.
func TestTemplateNotes(t *testing.T) {
	const cut = "cut the template out in one piece, with a sharp blade on a cutting mat"
	const few = "pin it by its centre or its grain line as well, for fewer than two of its edges are left"
	const pins = "count your pins: none may stay in the cloth"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"a neck", "neck: 0,10 4,9 8,10 | smooth = true\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10",
			[]string{cut, "lay it on the cut piece, right side up, with left, foot and right on the edge and match marks on match marks", "draw along neck: that is the stitch line", "leave left, foot and right unmarked", pins}},
		{"all round", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true\nrest: 8,0 0,0 0,10 | marked = true",
			[]string{cut, "lay it on the cut piece, right side up", few,
				"draw along rest, right and top: that is the stitch line", pins}},
		{"one edge left", "top: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true\nfoot: 8,0 0,0\nleft: 0,0 0,10 | marked = true",
			[]string{cut, "lay it on the cut piece, right side up, with foot on the edge and match marks on match marks",
				few, "draw along right, top and left: that is the stitch line", "leave foot unmarked", pins}},
		{"windows and ticks", "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n[line.far]\nalong = \"left\"\ndistance = 4\n[line.near]\nalong = \"right\"\ndistance = \"1/4\"\n",
			[]string{cut, "cut the hatched windows out of it; the paper between them stays",
				"lay it on the cut piece, right side up, with left, foot, right and top on the edge and match marks on match marks",
				"draw along the side of each window that its arrow points to",
				"tick the cloth where a line without windows comes out at the edge, and rule it from tick to tick", "leave left, foot, right and top unmarked", pins}},
		{"a bent line without room", "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n[line.wave]\npoints = [[0.1, 1], [0.3, 5], [0.1, 9]]\nsmooth = true\n",
			[]string{cut, "lay it on the cut piece, right side up, with left, foot, right and top on the edge and match marks on match marks", "prick through the circles along \"wave\", dot the cloth there, and join the dots",
				"leave left, foot, right and top unmarked", pins}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, m := sketchedTemplate(t, "0.5", c.text)
			got := append([]string(nil), m.Told()...)
			assert.Equal(t, c.want, got)
		})
	}
}

// The lines of tucks are told apart on a template too: each fold has its number at both ends, and
// its distance from the base below the lower one (derived from the row: 1 in, and 1/2 in more
// for every tuck).
func TestTucksAreNumberedOnTemplates(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "fold = \"left\"\n"+strings.Replace(oblongPiece, "8,10\n", "8,10 | marked = true\n", 1)+
		"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 3\nfirst = 1\nspacing = \"1/2\"\nbelow = \"top\"\nlength = 3\n")
	var told []string
	for _, w := range m.Words {
		told = append(told, w.Text)
		assert.Equal(t, mark.TuckFold, w.Role)
		if w.Out.Y > 0.5 {
			assert.InDelta(t, (10-0.375)*25.4, w.At.Y, 3, "%s: at the edge of the template, not of the piece", w.Text)
		}
	}
	assert.Equal(t, []string{"1", "2", "3", "1", "2", "3", "1", "1 1/2", "2", "from left"}, told)
}

// Both the sheet the piece is cut by and its template have the match marks, in the
// same places.
func TestMatchMarksMatch(t *testing.T) {
	for _, name := range []string{"pinafore.toml", "underwaist.toml", "nightgown.toml", "shirt.toml"} {
		pattern := Transferred(made.Example(t, name), []source.Transfer{source.Trace, source.Template})
		all := Of(pattern)
		for _, piece := range pattern.Pieces {
			of := func(kinds ...mark.Kind) int {
				return slices.IndexFunc(all, func(m mark.Marking) bool { return m.IsOf(piece.Name) && slices.Contains(kinds, m.Kind) })
			}
			cut := of(mark.Piece, mark.CuttingSheet)
			require.GreaterOrEqual(t, cut, 0, piece.Key)
			matches := func(m mark.Marking) []string {
				var all []string
				for _, line := range m.Marks {
					if line.Role == mark.Match {
						all = append(all, sketch.Inches(line.Path))
					}
				}
				return all
			}
			if !templateOf(&piece, bothWays(), length.Inch).useful {
				continue // a strip with nothing to mark has none
			}
			want := matches(all[cut])
			assert.NotEmpty(t, want, "%s %s", name, piece.Key)
			assert.Equal(t, want, matches(all[of(mark.Template)]), "%s %s", name, piece.Key)
		}
	}
	for _, m := range Of(Transferred(made.Example(t, "pinafore.toml"), []source.Transfer{source.Trace})) {
		for _, line := range m.Marks {
			assert.NotEqual(t, mark.Match, line.Role, "there is no template to match")
		}
	}
}

// A template that is printed alone has no match marks: there is no sheet with the others. That
// of a piece from a tucked block is never alone.
func TestATemplateAloneHasNoMatchMarks(t *testing.T) {
	for _, c := range []struct {
		name  string
		ways  []source.Transfer
		match bool
	}{
		{"alone", []source.Transfer{source.Template}, false},
		{"with a sheet to trace", []source.Transfer{source.Trace, source.Template}, true},
		{"with one to prick", []source.Transfer{source.Template, source.Prick}, true},
	} {
		for _, example := range []string{"pinafore.toml", "shirt.toml"} {
			all := Of(Transferred(made.Example(t, example), c.ways))
			for _, m := range all {
				said := strings.Contains(strings.Join(m.Told(), "; "), "match mark")
				assert.Equal(t, len(linesOf(m, mark.Match)) > 0, said, "%s, %s: the words and the marks", c.name, m.Key)
				if m.Kind == mark.Template {
					tucked := slices.ContainsFunc(all, func(o mark.Marking) bool { return o.Kind == mark.CuttingSheet && o.Piece == m.Piece })
					assert.Equal(t, c.match || tucked, said, "%s, %s", c.name, m.Key)
				}
			}
		}
	}
}

// The name of every marked edge says that it is the stitch line, and how much cloth lies beyond; in
// one half of a piece that is printed whole, as all names of its edges stand.
func TestMarkedEdgesSayWhereTheyAreCut(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       []string // where it is said
	}{
		{"a neck", "neck: 0,10 8,10 | marked = true\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10", []string{"4,9.5"}},
		{"none", "neck: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10", nil},
		{"both halves", "fold = \"left\"\nprint = \"whole\"\nneck: 0,10 8,10 | marked = true\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10", []string{"4,9.5"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, m := sketchedTemplate(t, "0.5", c.text)
			var at []string
			for _, one := range m.Marks {
				if one.Role == mark.Cut && strings.Contains(one.Name, "stitch line") {
					assert.Equal(t, "neck stitch line, 1/2 in of cloth beyond", one.Name)
					middle, _ := one.Path.At(one.Path.Length() / 2)
					at = append(at, sketch.Inches(plane.Path{middle}))
				}
			}
			assert.Equal(t, c.want, at)
		})
	}
}

const oblongPiece = "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n"

// A piece that is printed whole has no edge in its middle: there are no match marks,
// it is not laid by it, and the centre line has windows.
func TestTemplateOfAWholePiece(t *testing.T) {
	const text = "fold = \"left\"\nprint = \"whole\"\ntop: 0,10 4,9 8,10 | smooth = true\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10"
	piece, m := sketchedTemplate(t, "0.375", text)
	for _, line := range linesOf(m, mark.Match) {
		x := strings.Split(strings.Fields(line)[0], ",")[0]
		assert.NotEqual(t, "0", x, "a match mark in the middle: %s", line)
	}
	assert.Contains(t, strings.Join(m.Told(), "; "), "with foot and right on the edge")
	assert.NotEmpty(t, linesOf(m, mark.Window), "of the centre line")
	assert.Len(t, linesOf(m, mark.Match), 2*4, "on both halves")
	sheet := markingSheet(piece, &garment.Pattern{}, templateOf(piece, bothWays(), length.Inch))
	assert.Equal(t, linesOf(sheet, mark.Match), linesOf(m, mark.Match))
}

// Match marks stand 8 mm long at a third and at two thirds of every edge by which the
// template is laid.
func TestMatchMarksAtThirds(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "top: 0,9 9,9 | marked = true\nright: 9,9 9,0\nfoot: 9,0 0,0\nleft: 0,0 0,9")
	assert.ElementsMatch(t, []string{
		"0,3 0.315,3", "0,6 0.315,6",
		"3,0 3,0.315", "6,0 6,0.315",
		"9,3 8.685,3", "9,6 8.685,6",
	}, linesOf(m, mark.Match))
}

// In a narrow place match marks are short enough to stay on the template.
func TestMatchMarksInANarrowPiece(t *testing.T) {
	for _, text := range []string{
		"top: 0,0.5 8,0.5 | marked = true; allowance = 0.25\nright: 8,0.5 8,0 | allowance = 0.125\nfoot: 8,0 0,0 | allowance = 0.125\nleft: 0,0 0,0.5 | allowance = 0.125",
		"a: 0,0 3,0\nb: 3,0 0,0.9\nc: 0,0.9 0,0",
	} {
		_, m := sketchedTemplate(t, "0.1", text)
		tree := plane.NewTree(m.Outline)
		marks := 0
		for _, line := range m.Marks {
			if line.Role == mark.Match {
				marks++
				assert.True(t, tree.Holds(line.Path[1]), "a match mark ends outside, at %s", sketch.Inches(line.Path[1:]))
			}
		}
		require.Positive(t, marks)
	}
}

// Of a piece that lies open, cut from a tucked block or printed whole, no edge is placed on a
// fold: it has its centre there, by which the template is laid.
func TestNothingOfAnOpenPieceIsOnTheFold(t *testing.T) {
	const centre = "and cf on the centre line"
	for _, c := range []struct {
		name, head, block string
		folded            bool
	}{
		{"cut on the fold", "", "", true},
		{"printed whole", "print = \"whole\"\n", "", false},
		{"from a block", "", "\n[block]\n", false},
		{"from a block, printed whole", "print = \"whole\"\n", "\n[block]\n", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, pattern := made.Front(t, "0.375", c.head+sketch.Bosom+sketch.Tucked("cf", "1/8", 2, "3/8", "")+c.block)
			require.Equal(t, c.folded, p.LiesFolded())
			m := templateOf(p, bothWays(), pattern.Unit)
			assert.Equal(t, c.folded, len(linesOf(m.Marking, mark.FoldEdge)) == 1)
			assert.Equal(t, !c.folded, len(linesOf(m.Marking, mark.Centre)) == 1, "its centre, without ticks")
			told := strings.Join(m.Told(), "; ")
			assert.Equal(t, !c.folded, strings.Contains(told, centre), told)
			for _, one := range m.Marks {
				assert.Equal(t, c.folded && one.Role == mark.FoldEdge, strings.Contains(one.Name, "on the fold"), "%v %q", one.Role, one.Name)
			}
		})
	}
}

// Notches at the edge of a template are told, and only where there are some.
func TestNotchesOfATemplateAreTold(t *testing.T) {
	for _, role := range mark.Roles() {
		told := notched(mark.Marking{Marks: []mark.Mark{{Role: role}}})
		assert.Equal(t, role == mark.Notch, len(told) == 1, "%v: %v", role, told)
	}
}

// A notch stands at the edge of the template, with its name, where that lies within the notch of
// the piece (an allowance of 3/8 in, a notch of 5 mm).
func TestNotchesStandAtTheEdgeOfTheTemplate(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", strings.Replace(oblongPiece, "8,0\n", "8,0 | marked = true\n", 1)+
		"[notch.sleeve]\nedge = \"right\"\nfrom = \"top\"\nat = 3\n")
	var notches []mark.Mark
	for _, one := range m.Marks {
		if one.Role == mark.Notch {
			notches = append(notches, one)
		}
	}
	if assert.Len(t, notches, 1) {
		assert.Equal(t, "sleeve", notches[0].Name)
		assert.InDelta(t, (8-0.375)*25.4, notches[0].Path[0].X, 0.01, "at the stitch line")
		assert.InDelta(t, 7*25.4, notches[0].Path[0].Y, 0.01)
		assert.InDelta(t, 5, notches[0].Path.Length(), 0.05)
	}
	assert.Contains(t, strings.Join(m.Steps, "\n"), "tick the cloth at each notch")
}

// The name of a pleat at an edge and its depth stand on its template, as on the piece.
func TestPleatsAreNamedOnTemplates(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", strings.Replace(oblongPiece, "8,10\n", "8,10 | marked = true\n", 1)+
		"[pleat.underarm]\nedge = \"right\"\nfrom = \"top\"\nat = 3\ntoward = \"top\"\ndepth = \"3/8\"\nlength = 1\n")
	var told []string
	for _, w := range m.Words {
		told = append(told, w.Text)
	}
	assert.Equal(t, []string{"underarm pleat, 3/8 in deep"}, told)
}

// A template that is alone is laid on the uncut cloth, and says how far beyond its stitch lines that
// is cut. Edges with the same allowance are told at once.
func TestATemplateAloneSaysHowThePieceIsCut(t *testing.T) {
	const outline = "neck: 0,10 8,10 | marked = true\nright: 8,10 8,0 | marked = true%s\nfoot: 8,0 0,0\nleft: 0,0 0,10 | marked = true\n"
	for _, c := range []struct{ name, right, want string }{
		{"one allowance", "", "cut the cloth 1/2 in beyond right, neck and left, and elsewhere along its edge"},
		{"two", "; allowance = \"1/4\"", "cut the cloth 1/4 in beyond right and 1/2 in beyond neck and left, and elsewhere along its edge"},
	} {
		t.Run(c.name, func(t *testing.T) {
			all := Of(Transferred(made.Of(t, "allowance = 0.5\n"+sketch.Front(fmt.Sprintf(outline, c.right))), []source.Transfer{source.Template}))
			require.Len(t, all, 1)
			assert.Contains(t, all[0].Steps, c.want)
			assert.Contains(t, all[0].Steps, "lay it on the uncut cloth, right side up, its grain line along the grain")
		})
	}
}
