package pdfout

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// inPicture bounds how far a point of a line may lie from where it is in a picture, in mm:
// places are written to 0.01 mm.
const inPicture = 0.02

// planned is a set on paper.
func planned(t require.TestingT, set arrange.Set, on paper.Paper) *Book {
	b, err := Plan(set, on)
	require.NoError(t, err)
	return b
}

// pictured are the sheets of a book as pictures.
func pictured(t require.TestingT, b *Book) []seen.Picture {
	var all []seen.Picture
	for i, s := range b.Sheets() {
		p := ink.NewPicture(fmt.Sprint("s", i), s.Size)
		b.DrawSheet(p, i)
		require.Equal(t, s.Size, p.Size())
		all = append(all, seen.ReadPicture(t, p.Elements(), s.Size))
	}
	return all
}

// known is what a line in a picture is known by.
type known struct {
	role        string
	piece, line string
}

// checkWholeLines: every line of every piece is in the picture of its sheet once, whole, where it
// lies, under its role and with its names; and there is no other.
func checkWholeLines(t require.TestingT, b *Book) {
	for i, picture := range pictured(t, b) {
		s := b.printed()[i]
		low := s.whole().window.Min
		want, got := map[known][]plane.Path{}, map[known][]plane.Path{}
		for _, p := range s.Pieces {
			for _, l := range p.Lines {
				k := known{l.Role.String(), p.Key, l.Key}
				want[k] = append(want[k], l.Path().Moved(low.Mul(-1)))
			}
		}
		for _, l := range picture.Lines {
			assert.Equal(t, seen.Stroked, l.Path.Painted)
			k := known{l.Path.Layer, l.Piece, l.Line}
			got[k] = append(got[k], l.Path.Parts...)
		}
		for k, lines := range want {
			if k.role == mark.Prick.String() {
				checkRings(t, slices.Concat(lines...), got[k], k)
			} else {
				checkAlike(t, lines, got[k], k)
			}
			delete(got, k)
		}
		if b.paper.WhollyOnOne() {
			for k := range got { // those of forms that lie on it as panels
				delete(got, known{k.role, k.piece, k.line})
				assert.True(t, slices.ContainsFunc(b.forms, func(f *laidSheet) bool { return f.Pieces[0].Key == k.piece }), "%v", k)
			}
		}
		assert.Empty(t, got, "lines that no piece has")
	}
}

// checkAlike: lines and those of a picture are the same, one by one.
func checkAlike(t require.TestingT, want, got []plane.Path, k known) {
	if !assert.Len(t, got, len(want), "%v", k) {
		return
	}
	for i := range want {
		if !assert.Len(t, got[i], len(want[i]), "%v: points of line %d", k, i) {
			return
		}
		for n := range want[i] {
			if want[i][n].Distance(got[i][n]) > inPicture {
				assert.Fail(t, "a point lies elsewhere", "%v: %v, drawn at %v", k, want[i][n], got[i][n])
				return
			}
		}
	}
}

// checkRings: there is a ring about every point, and no other.
func checkRings(t require.TestingT, points plane.Path, rings []plane.Path, k known) {
	if !assert.Len(t, rings, len(points), "%v", k) {
		return
	}
	for i, q := range points {
		box := rings[i].Bounds()
		assert.LessOrEqual(t, q.Distance(box.Centre()), inPicture, "%v", k)
		assert.InDelta(t, 2*ink.PenOf(mark.Prick).Ring(), box.Width(), inPicture)
	}
}

func TestSheets(t *testing.T) {
	t.Parallel()
	for name, set := range sets.All() {
		t.Run(name, func(t *testing.T) {
			b := planned(t, set, seen.Paper(t, "letter"))
			checkWholeLines(t, b)
			checkSaid(t, b)
			checkCover(t, b)
		})
	}
}

func TestSheetsOfExamples(t *testing.T) {
	t.Parallel()
	for on, ways := range map[string][]source.Transfer{"single": nil, "a4": {source.Template}, "roll:36in": {source.Mirror}, "letter": {source.Prick}} {
		for name, set := range sets.Examples(t, "../examples", ways...) {
			t.Run(fmt.Sprint(name, " ", ways, " on ", on), func(t *testing.T) { checkWholeLines(t, planned(t, set, seen.Paper(t, on))) })
		}
	}
}

func TestRandomSheetsHaveEveryLine(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		set, _ := sets.Random(t)
		if len(set.Pieces) > 0 {
			checkWholeLines(t, planned(t, set, seen.Paper(t, "letter")))
		}
	})
}

// writtenAt is a text and where it stands on its sheet.
type writtenAt struct {
	text, layer string
	x, y        int // in hundredths of a mm
}

// writtenOn are the texts of a page, by where they stand on the sheet.
func writtenOn(p seen.Page, step plane.Point) map[writtenAt]bool {
	all := map[writtenAt]bool{}
	for _, r := range p.Texts {
		at := r.At.Add(step).Mul(100)
		all[writtenAt{r.Text, r.Layer, int(at.X + 0.5), int(at.Y + 0.5)}] = true
	}
	return all
}

// checkSaid: a sheet says all that its pages say of its pieces, and at the same places, and nothing
// else.
func checkSaid(t *testing.T, b *Book) {
	var sheets, pages seen.Canvas
	for n := range b.Pages() {
		b.DrawPage(&pages, n+1)
	}
	for i, s := range b.Sheets() {
		b.DrawSheet(&sheets, i)
		whole, said := writtenOn(sheets.Pages()[i], plane.Point{}), map[writtenAt]bool{}
		window := b.printed()[i].Paper.Window()
		for _, p := range s.Pages {
			for one := range writtenOn(pages.Pages()[p.Number-1], p.Window.Min.Sub(window.Min)) {
				said[one] = true
				if one.layer != "" {
					assert.True(t, whole[one], "page %d says %v, and its sheet does not", p.Number, one)
				}
			}
		}
		for one := range whole {
			assert.True(t, said[one], "sheet %d says %v, and no page of it does", i, one)
		}
	}
}

// checkCover: the cores of the printed pages and of the blank ones cover a sheet once; each page
// shows its core and no more than the sheet has.
func checkCover(t *testing.T, b *Book) {
	next := 1 + len(b.front) + len(b.figures)
	for _, s := range b.Sheets() {
		all, area := plane.Box{Max: s.Size}.Grown(1e-9), 0.0
		assert.Equal(t, next, s.First)
		for _, p := range s.Pages {
			assert.Equal(t, next, p.Number)
			next++
			area += p.Core.Width() * p.Core.Height()
			assert.True(t, p.Window.Holds(p.Core.Min) && p.Window.Holds(p.Core.Max), "page %d", p.Number)
			assert.True(t, all.Holds(p.Window.Min) && all.Holds(p.Window.Max), "page %d", p.Number)
		}
		for _, c := range s.Blank {
			area += c.Width() * c.Height()
		}
		assert.InEpsilon(t, s.Size.X*s.Size.Y, area, 1e-9)
		for _, p := range s.Parts {
			assert.True(t, all.Holds(p.Box.Min) && all.Holds(p.Box.Max), p.Key)
		}
	}
	assert.Equal(t, len(b.Pages())+1, next)
}

// Every page is told with its number, its size and what is on it.
func TestPagesAreTold(t *testing.T) {
	set := sets.SampleFirst()
	set.Report = sets.All()["figures"].Report
	pages := planned(t, set, seen.Paper(t, "letter")).Pages()
	var titles []string
	for i, p := range pages {
		assert.Equal(t, i+1, p.Number)
		assert.Equal(t, plane.Point{X: 215.9, Y: 279.4}, p.Size, "letter paper is 8 1/2 by 11 in")
		titles = append(titles, p.Title)
	}
	titles = slices.Compact(titles)
	assert.Equal(t, "First page", titles[0])
	assert.Contains(t, titles, "Figures for the cutting table")
	assert.Contains(t, titles, "Tuck sample")
	assert.Contains(t, titles, "Skirt panel, row 1 of 2, column 1 of 4")
	single := planned(t, sets.Few(), seen.Paper(t, "single"))
	assert.Len(t, single.Pages(), 1)
	assert.Equal(t, single.Pages()[0].Size, single.sheets[0].Paper.Size())
}

// A reader turns to what goes in front, to the figures, and to each piece where it begins.
func TestChapters(t *testing.T) {
	for _, name := range []string{"a bodice front", "fifty small pieces", "round skirt", "figures"} {
		set := sets.All()[name]
		t.Run(name, func(t *testing.T) {
			d, summary := drawn(t, set, "letter")
			var titles []string
			last := 0
			for _, c := range d.Contents {
				assert.GreaterOrEqual(t, c.Page, last, "%s stands in the order of pages", c.Title)
				if c.Page > summary.Front {
					assert.Contains(t, strings.Join(d.Pages[c.Page-1].Words(), " "), c.Title)
				}
				last = c.Page
				titles = append(titles, c.Title)
			}
			assert.Equal(t, "First page", titles[0])
			for _, piece := range set.Pieces {
				assert.Contains(t, titles, piece.Name)
			}
		})
	}
	d, _ := drawn(t, sets.Few(), "single")
	assert.Empty(t, d.Contents, "a single page needs none")
}
