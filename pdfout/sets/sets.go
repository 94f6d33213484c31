// Package sets has whole sets of pieces for the tests of package pdfout and of what it
// prints; tests alone use it. Its pieces are those of package sample, as a garment has
// them together, and the files of the examples.
package sets

import (
	"fmt"
	"os"
	"path/filepath"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/garment"
	"tuckmark/marking/grid"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/sample"
)

// Few is a set of one piece.
func Few() arrange.Set {
	return arrange.Set{Title: "Sunday pinafore", Size: "18 months", Pieces: []mark.Marking{sample.Bodice()}}
}

// Ruled is a set of ruled sheets of the usual size.
func Ruled(unit length.Unit) arrange.Set {
	return arrange.Set{Title: "Grid", Unit: unit, Pieces: grid.Of(grid.Usual(unit), unit), Work: grid.Work(), What: "the grid"}
}

// Many is a set of n small pieces, in centimetres.
func Many(n int) arrange.Set {
	s := arrange.Set{Title: "Doll's wardrobe", Size: "12 in doll", Unit: length.Centimetre}
	names := []string{"Collar", "Cuff", "Pocket", "Facing", "Bonnet brim", "Sleeve band", "Tie"}
	for i := range n {
		w, h := 30+float64(i*37%110), 14+float64(i*53%70)
		s.Pieces = append(s.Pieces, sample.Rectangle(fmt.Sprintf("p%d", i), fmt.Sprintf("%s %d", names[i%len(names)], i+1), w, h, "cut 2"))
	}
	return s
}

// ManySkirts is a set of n skirts, each over several pages of letter paper.
func ManySkirts(n int) arrange.Set {
	s := arrange.Set{Title: "Skirts for a school", Unit: length.Inch}
	for i := range n {
		s.Pieces = append(s.Pieces, sample.Rectangle(fmt.Sprintf("s%d", i), fmt.Sprintf("Skirt %d", i+1), 900, 500, "cut 2"))
	}
	return s
}

// Random draws a set of one piece, and the way in which its lines come onto the cloth. The set may
// be empty: nothing of some pieces needs some ways. A piece that cannot be sewn is passed over.
func Random(t *rapid.T) (arrange.Set, source.Transfer) {
	drafts := []func(*rapid.T) string{sketch.Bodice, sketch.Sleeve, sketch.Gore, sketch.Collar, sketch.Pocket, sketch.Raglan, sketch.Gusset}
	draft := drafts[rapid.IntRange(0, len(drafts)-1).Draw(t, "draft")]
	pattern, err := made.Pattern(sketch.Front(draft(t)))
	if err != nil {
		t.Skip("it cannot be sewn: ", err)
	}
	way := rapid.SampledFrom([]source.Transfer{source.Trace, source.Template, source.Mirror, source.Prick}).Draw(t, "transfer")
	return arrange.Set{Title: "front", Pieces: sheet.Of(sheet.Transferred(pattern, []source.Transfer{way}))}, way
}

// Large is a set of two pieces; the skirt goes over several pages of letter paper.
func Large() arrange.Set {
	return arrange.Set{Title: "Sunday pinafore", Size: "18 months", Unit: length.Inch, Pieces: []mark.Marking{sample.Skirt(), sample.Bodice()}}
}

// LongTitle is a set whose title, size, names and notes are long.
func LongTitle() arrange.Set {
	s := Large()
	s.Title = "A pinafore with six pin tucks on either side of the front, for the long summer afternoons of children who climb into apple trees and for their teachers"
	s.Size = "eighteen months to two years, to be let down by one growth tuck for the second summer, and again for the third"
	s.Pieces = append(s.Pieces, sample.Rectangle("tie", "Tie that goes twice round the waist and is made into a bow at the back", 40, 900, "cut 2 along the selvage", "turn the ends to a point"))
	s.Pieces = append(s.Pieces, Many(9).Pieces...)
	return s
}

// Ring is a large piece whose inner pages have no line on them: a quarter of a
// round skirt.
func Ring() arrange.Set {
	m := mark.Marking{Key: "skirt", Name: "Round skirt", Notes: []string{"cut 2 on the fold"}}
	hem := sample.Quarter(plane.Point{}, 820, 820, 0, 90, 400)
	waist := sample.Quarter(plane.Point{}, 90, 90, 90, -90, 60)
	m.Marks = []mark.Mark{
		sample.Edge(mark.Cut, "seam", waist[len(waist)-1], hem[0]),
		sample.Edge(mark.Cut, "hem", hem...),
		sample.Edge(mark.FoldEdge, "fold", hem[len(hem)-1], waist[0]),
		sample.Edge(mark.Cut, "waist", waist...),
	}
	m.Outline = sample.OutlineOf(m.Marks)
	m.Marks = append(m.Marks, sample.Edge(mark.Fold, "hem fold", sample.Quarter(plane.Point{}, 790, 790, 0, 90, 400)...),
		sample.Edge(mark.Grain, "grain", plane.Point{X: 200, Y: 150}, plane.Point{X: 320, Y: 270}))
	return arrange.Set{Title: "Round skirt", Size: "3 years", Unit: length.Millimetre, Pieces: []mark.Marking{m}}
}

// islands is a large piece with lines in its middle that touch nothing.
func islands() arrange.Set {
	m := sample.Sail(1500)
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	m.Marks = append(m.Marks,
		sample.Edge(mark.Grain, "grain", p(750, 700), p(750, 800)),
		sample.Edge(mark.Placement, "button", p(400, 430), p(412, 442)),
		sample.Edge(mark.Notch, "", p(1100, 1090), p(1101, 1090)))
	return arrange.Set{Title: "Sunshade", Unit: length.Centimetre, Pieces: []mark.Marking{m}}
}

// Strips are 2 cm wide with allowances of 0.5 cm.
func Strips() arrange.Set {
	s := arrange.Set{Title: "Bands", Unit: length.Centimetre}
	for i := range 5 {
		long := 60 + 10*float64(i)
		s.Pieces = append(s.Pieces, sample.Strip(fmt.Sprint("up", i), fmt.Sprint("Band up ", i+1), 20, long, 5, "stitch line, 0.5 cm", "Bands", "cut 2"),
			sample.Strip(fmt.Sprint("across", i), fmt.Sprint("Band across ", i+1), long, 20, 5, "stitch line, 0.5 cm", "Bands", "cut 2"))
	}
	return s
}

// FormOf is a rectangle with a form that has many steps, blanks and lines of a
// sum, all short.
func FormOf(w, h float64, steps, blanks, sums int) mark.Marking {
	m := sample.Ruled("form", "Form", w, h)
	m.Form = &mark.Form{}
	for i := range steps {
		m.Steps = append(m.Steps, fmt.Sprintf("Take step no. %d of all.", i+1))
	}
	for i := range blanks {
		m.Form.Blanks = append(m.Form.Blanks, fmt.Sprintf("blank no. %d", i+1))
	}
	for i := range sums {
		m.Form.Sum = append(m.Form.Sum, fmt.Sprintf("sum no. %d: ____", i+1))
	}
	return m
}

// ManyForms are forms whose lines leave room under them, to their right, and
// only when they are turned; one is written on alone, and one has long words.
func ManyForms() arrange.Set {
	s := arrange.Set{Title: "Forms", Unit: length.Centimetre}
	for i, m := range []mark.Marking{FormOf(100, 40, 3, 3, 2), FormOf(80, 200, 8, 8, 4), FormOf(230, 60, 8, 5, 2), FormOf(186, 20, 0, 14, 0), FormOf(40, 40, 1, 0, 1)} {
		m.Key = fmt.Sprint("form", i)
		m.Name = fmt.Sprint("Form ", i+1)
		for k := range m.Steps {
			m.Steps[k] += fmt.Sprintf(" It is of form no. %d.", i+1)
		}
		for k := range m.Form.Blanks {
			m.Form.Blanks[k] += fmt.Sprintf(" of form no. %d", i+1)
		}
		for k := range m.Form.Sum {
			m.Form.Sum[k] = fmt.Sprintf("form no. %d, ", i+1) + m.Form.Sum[k]
		}
		s.Pieces = append(s.Pieces, m)
	}
	s.Pieces[4].Form.Blanks = []string{
		"who sews it, and on which machine, with which foot, and how fast, if that can be set, and by daylight or lamplight, and in which week of which year",
		"",
	}
	s.Pieces[4].Form.Sum = append(s.Pieces[4].Form.Sum, "(____)____/____", "a sum that is longer than a line of any paper is, from one margin to the other: ____ and ____ and ____ and ____ and ____ and ____ and ____ and ____, all of it over 10")
	return s
}

// SampleFirst is a set whose sample is sewn before its pieces are marked.
func SampleFirst() arrange.Set {
	s := Large()
	s.Pieces = append(s.Pieces, sample.TuckSample())
	return s
}

// closeLines are a tuck sheet and a tuck ruler.
func closeLines() arrange.Set {
	return arrange.Set{Title: "Tucks", Pieces: []mark.Marking{sample.TuckSheet(6, sample.LongNotes()...), sample.TuckRuler(sample.LongNotes()...)}}
}

// WithFigures is a set with a report.
func WithFigures(s arrange.Set, r *mark.Report) arrange.Set {
	s.Report = r
	return s
}

// Patterns are what the files in a folder of examples describe, by the names of the files.
func Patterns(t require.TestingT, folder string) map[string]*garment.Pattern {
	files, err := filepath.Glob(filepath.Join(folder, "*.toml"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	all := map[string]*garment.Pattern{}
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		spec, err := source.Read(file, data, ink.CanPrint)
		require.NoError(t, err)
		all[filepath.Base(file)], err = marking.Check(spec)
		require.NoError(t, err)
	}
	return all
}

// Examples are the sheets of the files in a folder of examples, by the names of the
// files, without figures and cautions: for ways in which lines come onto the cloth, or,
// where none is given, for those that the file asks for.
func Examples(t require.TestingT, folder string, ways ...source.Transfer) map[string]arrange.Set {
	sets := map[string]arrange.Set{}
	for name, p := range Patterns(t, folder) {
		if len(ways) > 0 {
			p = sheet.Transferred(p, ways)
		}
		sets[name] = arrange.Set{Title: p.Title, Size: p.Size, Unit: p.Unit, Pieces: sheet.Of(p)}
	}
	return sets
}

// longNoted are pieces with long notes: one low and full of lines, one with room.
func longNoted() []mark.Marking {
	low := sample.Ruled("low", "Low tuck sheet", 7*sample.Inch, 2*sample.Inch, sample.LongNotes()...)
	for x := 3.0; x < 7*sample.Inch; x += 3 {
		low.Marks = append(low.Marks, sample.Edge(mark.TuckFold, "", plane.Point{X: x}, plane.Point{X: x, Y: 2 * sample.Inch}))
	}
	return []mark.Marking{low, sample.Ruled("panel", "Panel", 150, 150, sample.LongNotes()...)}
}

// All are the sets most tests look at.
func All() map[string]arrange.Set {
	return map[string]arrange.Set{
		"a bodice front":        Few(),
		"one small piece":       {Title: "Bonnet", Pieces: Many(1).Pieces},
		"fifty small pieces":    Many(50),
		"skirt and bodice":      Large(),
		"round skirt":           Ring(),
		"long titles":           LongTitle(),
		"no title at all":       {Pieces: []mark.Marking{sample.Rectangle("tie", "", 700, 30)}},
		"wavy, many points":     {Title: "Scallops", Unit: length.Centimetre, Pieces: []mark.Marking{sample.Wave("a", 400, 500, 8000)}},
		"lines far from others": islands(),
		"narrow pieces":         {Title: "Sunday pinafore", Size: "18 months", Pieces: sample.NarrowPieces()},
		"strips 2 cm wide":      Strips(),
		"pieces of 3 mm":        {Title: "Inlay", Pieces: []mark.Marking{sample.Tiny("a", 3), sample.Tiny("b", 4)}},
		"a sample sewn first":   SampleFirst(),
		"nothing but a sample":  {Title: "Tucks", Unit: length.Centimetre, Pieces: []mark.Marking{sample.TuckSample()}},
		"forms of many sizes":   ManyForms(),
		"tucks close together":  closeLines(),
		"long notes":            {Pieces: longNoted()},
		"words in drawings":     Told(),
		"a page full of tucks":  {Pieces: []mark.Marking{sample.TuckSheet(9, sample.LongNotes()...)}},
		"as large as a house":   {Title: "Curtain", Pieces: []mark.Marking{sample.Wave("b", 5000, 1500, 1500)}},
		"figures":               WithFigures(SampleFirst(), sample.LongFigures()),
		"figures in columns":    WithFigures(Few(), sample.ColumnFigures()),
		"a picture across":      WithFigures(Few(), sample.ScrapFigures()),
		"figures of a house":    WithFigures(arrange.Set{Pieces: []mark.Marking{sample.Wave("b", 5000, 1500, 1500)}}, sample.DressFigures()),
	}
}

// Told is a bodice and a sheet of tucks with words at their lines, distances told in words
// and pale words across; the sheet lies turned, on more than one page.
func Told() arrange.Set {
	in := sample.Inch
	p := func(x, y float64) plane.Point { return plane.Point{X: x * in, Y: y * in} }
	up, down := plane.Point{Y: 1}, plane.Point{Y: -1}
	front := sample.Bodice()
	front.Pale = []string{"LEFT", "WRONG SIDE UP"}
	front.Dimensions = []mark.Dimension{
		{From: p(3, 0), To: p(3, 2.25), Text: "hem fold: 2 1/4 in from the cut edge, hem 2 in and turn 1/4 in"},
		{From: p(1, 0), To: p(1, 0.25), Text: "turn 1/4 in"},
	}
	for i := range 6 {
		x := 0.375 * float64(i+1)
		front.Words = append(front.Words,
			mark.Word{Role: mark.TuckFold, Text: fmt.Sprint("no. ", i+1), At: p(x, 9), Out: up},
			mark.Word{Role: mark.TuckFold, Text: fmt.Sprint("tuck no. ", i+1), At: p(x, 6.5), Out: down})
	}
	tucks := sample.TuckSheet(14)
	tucks.Pale = []string{"RIGHT SIDE UP"}
	for i := range 20 {
		x := 0.625 + 0.3*float64(i)
		tucks.Words = append(tucks.Words,
			mark.Word{Role: mark.TuckFold, Text: fmt.Sprint("t", i+1), At: p(x, 13.5), Out: up},
			mark.Word{Role: mark.TuckFold, Text: fmt.Sprint("end of t", i+1), At: p(x, 0.5), Out: down})
	}
	tucks.Dimensions = []mark.Dimension{
		{From: p(0, 13), To: p(0.625, 13), Text: "5/8 in to the first fold"},
		{From: p(0.625, 0.15), To: p(6.325, 0.15), Text: "from the first fold to the last 5 11/16 in"},
	}
	return arrange.Set{Title: "Words in drawings", Unit: length.Inch, Pieces: []mark.Marking{front, tucks}}
}
