package pdfout

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// inFront is how many pages come before those that are true to scale.
func inFront(s Summary) int { return s.Front + s.Figures }

// drawn draws a set and reads it back.
func drawn(t require.TestingT, set arrange.Set, paper string) (seen.Document, Summary) {
	return drawnOn(t, set, seen.Paper(t, paper))
}

// drawnOn draws a set, with its cautions, and reads it back as it comes out of the
// printer.
func drawnOn(t require.TestingT, set arrange.Set, p paper.Paper) (seen.Document, Summary) {
	set.Cautions = sample.Cautions()
	var out bytes.Buffer
	summary, err := Draw(&out, set, p)
	require.NoError(t, err)
	return seen.Read(t, out.Bytes(), p.Printed), summary
}

// checks is all that is true of any set that was drawn.
func checks() map[string]func(require.TestingT, arrange.Set, seen.Document, Summary) {
	return map[string]func(require.TestingT, arrange.Set, seen.Document, Summary){
		"check squares":                checkSquares,
		"pages say what they are":      checkHeaders,
		"title blocks":                 checkBlocks,
		"margins":                      checkMargins,
		"nothing overlaps in front":    checkFront,
		"no blank page":                checkNoBlankPage,
		"pages join to the marking":    checkJoined,
		"numbers of joins":             checkJoinNumbers,
		"names of joined pages":        checkJoinNames,
		"trim lines":                   checkTrimLines,
		"widths of lines":              checkWidths,
		"sizes of type":                checkType,
		"labels lie free of all lines": checkLabels,
		"names and notes":              checkNotes,
		"tips of arrow heads":          checkHeads,
		"pictures of the pages":        checkPictures,
		"places of the pages":          checkPlaces,
		"forms":                        checkForms,
		"figures":                      checkFigures,
		"order of work":                checkSteps,
		"words in drawings":            checkTold,
	}
}

// checkAll makes all checks of a set that was drawn but those that are left out.
func checkAll(t *testing.T, set arrange.Set, d seen.Document, s Summary, but ...string) {
	all := checks()
	for _, what := range but {
		require.Contains(t, all, what)
		delete(all, what)
	}
	for what, check := range all {
		t.Run(what, func(t *testing.T) { check(t, set, d, s) })
	}
}

// TestScenes draws every scene.
func TestScenes(t *testing.T) {
	for name, set := range sets.All() {
		papers := []string{"letter", "a4"}
		if slices.Contains(onAnyPaper(), name) {
			papers = append(papers, "tabloid", "either")
		}
		for _, p := range papers {
			t.Run(name+" on "+p, func(t *testing.T) {
				t.Parallel()
				d, s := drawn(t, set, p)
				checkAll(t, set, d, s)
			})
		}
	}
}

// TestAnySet draws pieces no maker would: lines in any direction and of any
// role, names where there is no room for them. Every seed is another set.
func TestAnySet(t *testing.T) {
	names := []string{"", "neck", "a line with a very long name that fits nowhere", "½"}
	for seed := range uint64(30) {
		t.Run(fmt.Sprint("seed ", seed), func(t *testing.T) {
			t.Parallel()
			r := rand.New(rand.NewPCG(seed, 1))
			set := arrange.Set{Title: names[r.IntN(4)], Size: names[r.IntN(4)], Unit: length.Unit(r.IntN(3))}
			for i := range 1 + r.IntN(4) {
				size := []float64{20, 150, 300, 900}[r.IntN(4)]
				at := func() plane.Point { return plane.Point{X: size * r.Float64(), Y: size * r.Float64()} }
				m := mark.Marking{Key: fmt.Sprint("piece ", i), Name: fmt.Sprint("Piece ", i), Notes: names[1:3]}
				for range 1 + r.IntN(8) {
					path := plane.Path{at(), at()}
					for range r.IntN(5) {
						path = append(path, at(), path[r.IntN(len(path))])
					}
					m.Marks = append(m.Marks, sample.Edge(openRoles()[r.IntN(len(openRoles()))], names[r.IntN(4)], path...))
				}
				m.Outline = sample.OutlineOf(m.Marks)
				set.Pieces = append(set.Pieces, m)
			}
			d, s := drawn(t, set, paper.Names()[r.IntN(5)])
			checkAll(t, set, d, s)
		})
	}
}

func checkSquares(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	// Inch = 25.4 mm exactly; a unit is 1/72 in: 4 in are 288 units.
	frames := d.Pages[0].Frames()
	require.Len(t, frames, 2, "frames on the first page")
	for i, side := range []float64{288 * 25.4 / 72, 100} {
		assert.InDelta(t, side, frames[i].Width(), 2*seen.Written, "across")
		assert.InDelta(t, side, frames[i].Height(), 2*seen.Written, "up")
	}
	assert.InDelta(t, 0, frames[0].Min.Distance(frames[1].Min), 2*seen.Written, "one lower left corner")
	for i, p := range d.Pages {
		for _, f := range p.Frames() {
			// 6 units are 25 dots at 300 to the inch: no side is rounded away.
			for _, v := range []float64{f.Min.X, f.Min.Y} {
				assert.InDelta(t, 0, math.Remainder(v, 6*25.4/72), 2*seen.Written, "page %d: a square off the dots", i+1)
			}
		}
	}
	small := map[length.Unit]float64{length.Inch: 25.4, length.Centimetre: 25, length.Millimetre: 25}[set.Unit]
	label := map[length.Unit]string{length.Inch: "1 in", length.Centimetre: "25 mm", length.Millimetre: "25 mm"}[set.Unit]
	for i, p := range d.Pages[inFront(s):] {
		frames := p.Frames()
		require.Len(t, frames, 1, "page %d", inFront(s)+i+1)
		assert.InDelta(t, small, frames[0].Width(), 2*seen.Written, "page %d, across", inFront(s)+i+1)
		assert.InDelta(t, small, frames[0].Height(), 2*seen.Written, "page %d, up", inFront(s)+i+1)
		assert.Contains(t, p.Words(), label)
	}
	for _, p := range d.Pages[1:inFront(s)] {
		assert.Empty(t, p.Frames(), "a page of pictures or figures")
	}
}

func TestLayersAndPreferences(t *testing.T) {
	d, _ := drawn(t, sets.Few(), "letter")
	var want []string
	for _, role := range lineRoles() {
		want = append(want, role.String())
	}
	assert.Equal(t, want, d.Layers, "one layer for every role, in the order of the line key")
	d, _ = drawn(t, sets.Many(3), "letter")
	assert.Equal(t, []string{"cutting line", "stitch line"}, d.Layers, "only roles that occur")

	// ISO 32000-1, 12.2, table 150 (from memory).
	catalogue := d.Root()
	assert.Equal(t, "None", catalogue.Key("ViewerPreferences").Key("PrintScaling").Name())
	assert.Equal(t, "en-GB", catalogue.Key("Lang").RawString())
}

func TestSameInputSameBytes(t *testing.T) {
	p, err := paper.Find("a4")
	require.NoError(t, err)
	for _, name := range []string{"a bodice front", "fifty small pieces", "round skirt", "long titles", "figures"} {
		set := sets.All()[name]
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			var one, two bytes.Buffer
			_, err := Draw(&one, set, p)
			require.NoError(t, err)
			_, err = Draw(&two, set, p)
			require.NoError(t, err)
			assert.True(t, bytes.Equal(one.Bytes(), two.Bytes()))
			assert.True(t, strings.HasPrefix(one.String(), "%PDF-1.7\n"))
		})
	}
}

func checkHeaders(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages[inFront(s):] {
		number := inFront(s) + i + 1
		texts := strings.Join(p.Words(), " ")
		assert.Contains(t, texts, fmt.Sprintf("page %d of %d", number, s.Pages))
		if s.Paper.Printed.IsTrue() {
			assert.Contains(t, texts, "print at 100 %")
		} else {
			assert.Contains(t, texts, "drawn for a printer that prints at "+s.Paper.Printed.String())
		}
	}
	for i := 1; i < inFront(s); i++ {
		assert.Contains(t, d.Pages[i].Words(), fmt.Sprintf("page %d of %d", i+1, s.Pages))
	}
}

func TestTexts(t *testing.T) {
	d, s := drawn(t, sets.Large(), "letter")
	for _, sheet := range s.Sheets {
		for n := sheet.First; n <= sheet.Last; n++ {
			texts := d.Pages[n-1].Words()
			assert.Contains(t, texts, sheet.Pieces[0], "page %d", n)
			assert.Subset(t, texts, []string{"Sunday pinafore", "size 18 months"}, "page %d", n)
		}
	}
	first := strings.Join(d.Pages[0].Words(), "\n")
	for _, want := range []string{"Sunday pinafore", "size 18 months", "Print at 100 %", "4 in", "100 mm", "Measure before you mark any cloth"} {
		assert.Contains(t, first, want)
	}
	// Blank pages are spoken of where there are some, and only there.
	const hatched = "Pages hatched in the pictures have no line on them and are not printed."
	assert.NotContains(t, saidInFront(d, s), seen.Squeezed(hatched))
	d, s = drawn(t, sets.Ring(), "letter")
	assert.Positive(t, s.Blank)
	assert.Contains(t, saidInFront(d, s), seen.Squeezed(hatched))
}

// saidInFront is all that is written on the pages in front, without spaces.
func saidInFront(d seen.Document, s Summary) string {
	said := ""
	for _, p := range d.Pages[:s.Front] {
		said += seen.Squeezed(strings.Join(p.Words(), ""))
	}
	return said
}

// Everything stays on what a printer can print, 10 mm and more from the edge
// of the paper.
func checkMargins(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	// 10 mm where no margin was asked for, and over the window what no printer prints:
	// 1/4 in (common practice).
	for i, p := range d.Pages {
		on := p.On(s.Paper)
		may := plane.Box{Max: on.Size()}.Grown(2*seen.Written - min(on.Margin, 10))
		mayOver := plane.Box{Max: on.Size()}.Grown(2*seen.Written - min(on.Margin, 6.35))
		for _, q := range p.Paths {
			shown := plane.EmptyBox()
			for _, part := range q.Parts {
				shown = shown.Union(part.Bounds())
			}
			for _, b := range q.Boxes {
				shown = shown.Union(b)
			}
			whole := p.Whole()
			if q.Clip != whole {
				shown = q.Clip
			}
			may := may
			if i >= inFront(s) && shown.Min.Y > on.Window().Max.Y-seen.Written {
				may = mayOver
			}
			if !shown.Empty() {
				assert.True(t, may.Holds(shown.Min) && may.Holds(shown.Max), "page %d: %v", i+1, shown)
			}
		}
		for _, r := range p.Texts {
			b := r.Box()
			if i < inFront(s) {
				assert.True(t, may.Holds(b.Min) && may.Holds(b.Max), "page %d: %q at %v", i+1, r.Text, b)
			}
		}
	}
}

// Texts on the pages in front do not overlap each other or the check squares'
// frames.
func checkFront(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages[:inFront(s)] {
		for k, a := range p.Texts {
			for _, b := range p.Texts[k+1:] {
				// A box that only touches does no harm.
				assert.False(t, a.Box().Grown(-0.05).Meets(b.Box()), "page %d: %q and %q", i+1, a.Text, b.Text)
			}
			for _, f := range p.Frames() {
				inner := f.Grown(-0.3) // as wide as the frame is, in mm
				box := a.Box()
				in := inner.Holds(box.Min) && inner.Holds(box.Max)
				assert.True(t, in || !f.Meets(box), "page %d: %q lies on a check square's frame", i+1, a.Text)
			}
		}
	}
}

func checkNoBlankPage(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	ofPanels := map[int]bool{}
	for _, sheet := range s.Sheets {
		ofPanels[sheet.First] = len(sheet.Pieces) == 0
	}
	for i, p := range d.Pages[inFront(s):] {
		if ofPanels[inFront(s)+i+1] {
			continue
		}
		length := 0.0
		for _, layer := range d.Layers {
			for _, q := range p.Drawn(layer) {
				for _, part := range q.Parts {
					for _, run := range plane.NewTree(part).Clip(q.Clip) {
						length += run.Path.Length()
					}
				}
			}
		}
		if length == 0 {
			// The one reason to print a page without a line.
			assert.Contains(t, p.Words(), "No line falls on this page: it is here to join its neighbours.", "page %d", inFront(s)+i+1)
			assert.GreaterOrEqual(t, len(p.JoinMarks(t)), 4, "page %d joins two neighbours", inFront(s)+i+1)
		}
	}
}

// A window of letter paper shows 194.733 x 237.067 mm and shares 10 mm with
// its neighbour: a square of 20 m needs 109 columns and 89 rows, of which its
// outline touches the outer ones, 2 x 109 + 2 x 89 - 4.
func TestManyPages(t *testing.T) {
	t.Parallel()
	p, err := paper.Find("letter")
	require.NoError(t, err)
	s, err := Draw(io.Discard, arrange.Set{Pieces: []mark.Marking{sample.Sail(20_000)}}, p)
	require.NoError(t, err)
	assert.Equal(t, 392, s.Pages-s.Front)
	assert.Equal(t, 109*89-392, s.Blank)
}

func TestTooManyPages(t *testing.T) {
	t.Parallel()
	dense := sample.Sail(50_000)
	for i := range 1000 {
		y := 50 * float64(i)
		dense.Marks = append(dense.Marks, sample.Edge(mark.TuckFold, "", plane.Point{Y: y}, plane.Point{X: 50_000, Y: y}))
	}
	for _, c := range []struct {
		name  string
		set   arrange.Set
		cause string
	}{
		// Of a square of 100 m, 2 x 542 + 2 x 441 - 4 = 1,962 pages are printed;
		// the pictures make up the rest.
		{"with the pages in front", arrange.Set{Pieces: []mark.Marking{sample.Sail(100_000)}}, "the pieces need 2,106 pages of letter paper; 2,000 is the most"},
		{"two sails", arrange.Set{Pieces: []mark.Marking{sample.Sail(100_000), sample.Sail(100_000)}}, "the pieces need at least 2,944 pages of letter paper; 2,000 is the most"},
		// 271 x 221 = 59,891 of the sheet, more than four times as many as may be.
		{"every page of one", arrange.Set{Pieces: []mark.Marking{dense}}, "the pieces need at least 2,001 pages of letter paper; 2,000 is the most"},
		{"beyond counting", arrange.Set{Pieces: []mark.Marking{sample.Wave("w", 9e8, 9e8, 4000)}}, "the pieces need at least "},
	} {
		t.Run(c.name, func(t *testing.T) {
			var out bytes.Buffer
			_, err := Draw(&out, c.set, paper.All()[0])
			var refusal *fault.Fault
			require.ErrorAs(t, err, &refusal)
			assert.True(t, strings.HasPrefix(refusal.Cause, c.cause), refusal.Cause)
			assert.Equal(t, "see whether the file's unit is the one meant, print fewer pieces, or choose larger paper", refusal.Hint)
			assert.Zero(t, out.Len(), "nothing is written")
		})
	}
}

func TestRefusals(t *testing.T) {
	bad := func(change func(*arrange.Set)) arrange.Set {
		s := arrange.Set{Title: "Pinafore", Pieces: []mark.Marking{sample.Rectangle("tie", "Tie", 200, 40)}}
		change(&s)
		return s
	}
	const hint = "\nhint: write it with letters, digits and common signs; eighths such as ⅛ can be printed"
	const nowhere = `piece "tie" has something at a place that is nowhere on paper`
	for _, c := range []struct {
		name string
		set  arrange.Set
		want string
	}{
		{"nothing", arrange.Set{}, "there is no line to draw\nhint: give the file at least one piece with an outline"},
		{"a piece without lines", arrange.Set{Pieces: []mark.Marking{{Key: "a", Name: "A", Marks: []mark.Mark{sample.Edge(mark.Cut, "", plane.Point{}, plane.Point{})}}}},
			"there is no line to draw\nhint: give the file at least one piece with an outline"},
		{"scissors in the title", bad(func(s *arrange.Set) { s.Title = "cut ✂ here" }), "the title has the sign '✂', which the printed sheets have no letter for" + hint},
		{"a third in the size", bad(func(s *arrange.Set) { s.Size = "⅓" }), "the size has the sign '⅓', which the printed sheets have no letter for" + hint},
		{"a smile in the name", bad(func(s *arrange.Set) { s.Pieces[0].Name = "Tie 😀" }), `piece "tie" has the sign '😀', which the printed sheets have no letter for` + hint},
		{"a tab in the notes", bad(func(s *arrange.Set) { s.Pieces[0].Notes = []string{"cut\t2"} }), `piece "tie" has the sign '\t', which the printed sheets have no letter for` + hint},
		{"broken letters on a line", bad(func(s *arrange.Set) { s.Pieces[0].Marks[0].Name = "a\xffb" }), `a line of piece "tie" has the sign '�', which the printed sheets have no letter for` + hint},
		{"a check mark in a step", bad(func(s *arrange.Set) { s.Pieces[0].Steps = []string{"sew", "done ✓"} }), `piece "tie" has the sign '✓', which the printed sheets have no letter for` + hint},
		{"a third in a blank", bad(func(s *arrange.Set) { s.Pieces[0].Form = &mark.Form{Blanks: []string{"⅓"}} }), `piece "tie" has the sign '⅓', which the printed sheets have no letter for` + hint},
		{"a new line in a sum", bad(func(s *arrange.Set) { s.Pieces[0].Form = &mark.Form{Sum: []string{"a\nb"}} }), `piece "tie" has the sign '\n', which the printed sheets have no letter for` + hint},
		{"a third in the figures", bad(func(s *arrange.Set) {
			s.Report = &mark.Report{Sections: []mark.Section{{Tables: []mark.Table{{Rows: sample.Cells([]string{"tuck", "⅓"})}}}}}
		}), `a text of the figures has the sign '⅓', which the printed sheets have no letter for` + hint},
		{"a smile in the order of work", bad(func(s *arrange.Set) { s.Work = []mark.Task{{Do: "sew 😀"}} }), "the order of work has the sign '😀', which the printed sheets have no letter for" + hint},
		{"and in its number", bad(func(s *arrange.Set) { s.Work = []mark.Task{{Do: "sew", Number: "2 😀"}} }), "the order of work has the sign '😀', which the printed sheets have no letter for" + hint},
		{"in what is included", bad(func(s *arrange.Set) { s.Included = "😀" }), "what is said of the allowances has the sign '😀', which the printed sheets have no letter for" + hint},
		{"in the kind", bad(func(s *arrange.Set) { s.Kind = "😀" }), "what the pieces are called has the sign '😀', which the printed sheets have no letter for" + hint},
		{"in what they are", bad(func(s *arrange.Set) { s.What = "the 😀" }), "what the pieces are called has the sign '😀', which the printed sheets have no letter for" + hint},
		{"in a sketch", bad(func(s *arrange.Set) { s.Pieces[0].Sketch = &mark.Sketch{Labels: []mark.SketchLabel{{Text: "😀"}}} }), `piece "tie" has the sign '😀', which the printed sheets have no letter for` + hint},
		{"a dimension to nowhere", bad(func(s *arrange.Set) {
			s.Pieces[0].Dimensions = []mark.Dimension{{To: plane.Point{X: 1e12}, Text: "far"}}
		}), nowhere},
		{"a dimension from nowhere", bad(func(s *arrange.Set) {
			s.Pieces[0].Dimensions = []mark.Dimension{{From: plane.Point{Y: math.Inf(1)}, Text: "far"}}
		}), nowhere},
		{"a word at no number", bad(func(s *arrange.Set) { s.Pieces[0].Words = []mark.Word{{Text: "1", At: plane.Point{X: math.NaN()}}} }), nowhere},
		{"an outline to nowhere", bad(func(s *arrange.Set) { s.Pieces[0].Outline = plane.Path{{}, {X: 1e12}, {Y: 5}, {}} }), nowhere},
		{"a sketch of nowhere", bad(func(s *arrange.Set) { s.Pieces[0].Sketch = &mark.Sketch{Width: math.NaN()} }), nowhere},
		{"a line of a sketch", bad(func(s *arrange.Set) { s.Pieces[0].Sketch = &mark.Sketch{Lines: []plane.Path{{{}, {Y: 1e12}}}} }), nowhere},
		{"no number", bad(func(s *arrange.Set) { s.Pieces[0].Marks[0].Path = plane.Path{{X: math.NaN()}, {}} }), `piece "tie" has a line that leads nowhere on paper`},
		{"without end", bad(func(s *arrange.Set) { s.Pieces[0].Marks[0].Path = plane.Path{{X: math.Inf(-1)}, {}} }), `piece "tie" has a line that leads nowhere on paper`},
	} {
		t.Run(c.name, func(t *testing.T) {
			var out bytes.Buffer
			_, err := Draw(&out, c.set, paper.All()[0])
			require.EqualError(t, err, c.want)
			assert.IsType(t, &fault.Fault{}, err)
			assert.Zero(t, out.Len(), "nothing is written")
		})
	}
}

// withCard is a set with one piece more, which is cut out of card.
func withCard(set arrange.Set) arrange.Set {
	card := sample.Rectangle("card", "Card", 60, 30)
	card.Kind = mark.Gauge
	set.Pieces = append(slices.Clone(set.Pieces), card)
	return set
}

func TestSummary(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name string
		set  arrange.Set
		want string
	}{
		{"one page", arrange.Set{Pieces: sets.Many(1).Pieces}, "2 pages: the first proves the scale, page 2 holds the pieces"},
		{"several", sets.Few(), "4 pages: the first proves the scale, page 2 says how to work, pages 3 to 4 hold the pieces"},
		{"blank ones", sets.Ring(), "17 pages: the first proves the scale, page 2 says how to work, pages 3 to 17 hold the pieces; 5 pages on which no line falls are left out"},
		{"a form", sets.SampleFirst(), "13 pages: the first proves the scale, page 2 says how to work, page 3 is to be sewn and filled in first, pages 4 to 13 hold the pieces"},
		{"only a form", arrange.Set{Pieces: []mark.Marking{sample.TuckSample()}}, "2 pages: the first proves the scale, page 2 is to be sewn and filled in"},
		{"only forms", sets.ManyForms(), "6 pages: the first proves the scale, pages 2 to 6 are to be sewn and filled in"},
		{"figures", sets.WithFigures(sets.SampleFirst(), sample.LongFigures()), "19 pages: the first proves the scale, page 2 says how to work, pages 3 to 8 have the figures, page 9 is to be sewn and filled in first, pages 10 to 19 hold the pieces"},
		{"figures in columns", sets.WithFigures(sets.Few(), sample.ColumnFigures()), "6 pages: the first proves the scale, page 2 says how to work, pages 3 to 4 have the figures, pages 5 to 6 hold the pieces"},
		{"some of card", withCard(sets.Few()), "5 pages: the first proves the scale, page 2 says how to work, pages 3 to 4 hold the pieces, page 5 what is to be cut from card"},
		{"all of card", arrange.Set{What: "the gauges", Pieces: withCard(arrange.Set{}).Pieces}, "2 pages: the first proves the scale, page 2 holds the gauges"},
		{"figures on one page", sets.WithFigures(sets.Few(), &mark.Report{Notes: []string{"Measure twice."}}), "5 pages: the first proves the scale, page 2 says how to work, page 3 has the figures, pages 4 to 5 hold the pieces"},
		{"pictures of their own", arrange.Set{Pieces: []mark.Marking{sample.Wave("b", 5000, 1500, 1500)}}, "60 pages: the first proves the scale, pages 2 to 4 say how to work, pages 5 to 60 hold the pieces; 133 pages on which no line falls are left out"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, s := drawn(t, c.set, "a4")
			assert.Equal(t, c.want, s.String())
			sum := s.Front + s.Figures + len(s.Forms)
			for _, sheet := range s.Sheets {
				sum += sheet.Last - sheet.First + 1
				assert.Equal(t, sheet.Rows*sheet.Columns, sheet.Last-sheet.First+1+sheet.Blank)
			}
			assert.Equal(t, s.Pages, sum)
		})
	}
	one := Summary{Pages: 12, Front: 3, Blank: 1}
	assert.Equal(t, "12 pages: the first proves the scale, pages 2 to 3 say how to work, pages 4 to 12 hold the pieces; 1 page on which no line falls is left out", one.String())
	_, s := drawn(t, arrange.Set{Pieces: []mark.Marking{{Key: "a", Name: "Ghost"}, sample.Rectangle("tie", "Tie", 200, 40)}}, "a4")
	assert.Equal(t, []string{"Ghost"}, s.Left)
	assert.Equal(t, "2 pages: the first proves the scale, page 2 holds the pieces; Ghost has no line and is left out", s.String())
	one = Summary{Pages: 2, Front: 1, Left: []string{"Ghost", "Spirit"}}
	assert.Equal(t, "2 pages: the first proves the scale, page 2 holds the pieces; Ghost and Spirit have no line and are left out", one.String())
}

// All that is true of any set is true of one whose large pieces have small ones
// beside them: a panel, and a tie with its title beside it.
func TestSharedPages(t *testing.T) {
	wardrobe := arrange.Set{Title: "Wardrobe", Unit: length.Centimetre, Pieces: sample.MixedPieces()}
	tie := arrange.Set{Title: "Ties", Unit: length.Inch, Pieces: []mark.Marking{
		sample.Strip("tie", "Tie", 30*sample.Inch, sample.Inch, 0.375*sample.Inch, "stitch line, 3/8 in", sample.LongNotes()...),
		sample.Flared("p", 220, 300, 420), sample.Wave("w", 70, 60, 400), sample.Tiny("t", 90), sample.TuckRuler("cut 2"), sample.Rectangle("c", "Collar", 120, 50, "cut 2"),
	}}
	for name, set := range map[string]arrange.Set{"wardrobe": wardrobe, "ties": tie} {
		for _, paper := range []string{"letter", "a4"} {
			t.Run(name+" on "+paper, func(t *testing.T) {
				t.Parallel()
				d, s := drawn(t, set, paper)
				assert.True(t, slices.ContainsFunc(s.Sheets, func(s SheetSummary) bool { return s.Last > s.First && len(s.Pieces) > 1 }), "no page is shared")
				checkAll(t, set, d, s)
			})
		}
	}
}
