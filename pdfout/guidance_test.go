package pdfout

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// Rules of this file: what guides a maker through the pages is held against
// the pages themselves, laid together by their join marks.

// placesOf returns the row and column of every page, counted from 0, from where
// it lies: from one page to the next it is a window less the overlap.
func placesOf(laid []seen.LaidPage, overlap float64) map[int]arrange.Cell {
	all := plane.EmptyBox()
	for i := range laid {
		all = all.Union(laid[i].Window)
	}
	places := map[int]arrange.Cell{}
	for _, p := range laid {
		places[p.Number] = arrange.Cell{
			Row:    int(math.Round((all.Max.Y - p.Window.Max.Y) / (p.Window.Height() - overlap))),
			Column: int(math.Round((p.Window.Min.X - all.Min.X) / (p.Window.Width() - overlap))),
		}
	}
	return places
}

// share is what of the sheet a page stands for: its window, less half the
// overlap at each side where another page of the grid lies, printed or not.
func share(p seen.LaidPage, at arrange.Cell, sheet SheetSummary, overlap float64) plane.Box {
	b := p.Window
	if at.Column > 0 {
		b.Min.X += overlap / 2
	}
	if at.Column < sheet.Columns-1 {
		b.Max.X -= overlap / 2
	}
	if at.Row > 0 {
		b.Max.Y -= overlap / 2
	}
	if at.Row < sheet.Rows-1 {
		b.Min.Y += overlap / 2
	}
	return b
}

// checkPlaces compares the row and column in each header with where the page
// lies.
func checkPlaces(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for _, sheet := range s.Sheets {
		laid, _ := d.JoinUp(t, sheet.First, sheet.Last)
		places := placesOf(laid, s.Paper.Overlap)
		for _, p := range laid {
			if len(laid) == 1 {
				assert.NotRegexp(t, `row \d|column \d`, strings.Join(p.Words(), "\n"), "page %d is the whole sheet", p.Number)
				continue
			}
			at := places[p.Number]
			var place []string
			if sheet.Rows > 1 {
				place = append(place, fmt.Sprintf("row %d of %d", at.Row+1, sheet.Rows))
			}
			if sheet.Columns > 1 {
				place = append(place, fmt.Sprintf("column %d of %d", at.Column+1, sheet.Columns))
			}
			assert.Contains(t, p.Words(), strings.Join(place, ", "), "page %d", p.Number)
		}
	}
}

// readPicture is a picture of pages as it stands on a page in front.
type readPicture struct {
	frame   plane.Box         // what it is clipped to
	pages   map[int]plane.Box // the boxes with a number in them
	blank   []plane.Box       // the boxes without
	hatched plane.Path        // the middles of the hatching's lines
	outline []plane.Path      // what is drawn as strongly as an outline
	caption string            // all that is written under it
	inner   int               // how many finer lines it has
}

// readPictures finds the pictures of a page: each has a clip of its own.
func readPictures(t require.TestingT, p seen.Page) []readPicture {
	whole := p.Whole()
	var all []readPicture
	index := map[plane.Box]int{}
	boxes := map[plane.Box][]plane.Box{}
	for _, q := range p.Paths {
		if q.Clip == whole {
			continue
		}
		if _, known := index[q.Clip]; !known {
			index[q.Clip] = len(all)
			all = append(all, readPicture{frame: q.Clip, pages: map[int]plane.Box{}})
		}
		r := &all[index[q.Clip]]
		switch {
		case q.Painted != seen.Stroked:
		case len(q.Boxes) > 0:
			boxes[q.Clip] = append(boxes[q.Clip], q.Boxes...)
		case math.Abs(q.Width-ink.OutlinePen().Width) < 2*seen.Written:
			r.outline = append(r.outline, q.Parts...)
		case math.Abs(q.Width-0.18) < 2*seen.Written && q.Stroke[0] > 0.5:
			for _, part := range q.Parts {
				require.Len(t, part, 2, "a line of a hatching")
				r.hatched = append(r.hatched, part[0].Toward(part[1], 0.5))
			}
		default:
			r.inner++
		}
	}
	for i := range all {
		r := &all[i]
		for _, b := range boxes[r.frame] {
			n := 0
			for _, text := range p.Texts {
				if v, err := parseNumber(text.Text); err == nil && b.Holds(text.Box().Centre()) {
					require.Zero(t, n, "two numbers in a page of a picture")
					n = v
				}
			}
			if n == 0 {
				r.blank = append(r.blank, b)
			} else {
				require.NotContains(t, r.pages, n)
				r.pages[n] = b
			}
		}
		for _, text := range p.Texts {
			left := math.Abs(text.At.X-(r.frame.Min.X+0.2)) < 0.01
			if under := r.frame.Min.Y - text.At.Y; left && under > 0 && under < (picture{}).height() {
				r.caption += text.Text + "\n"
			}
		}
	}
	return all
}

// checkPictures compares every picture with the pages it shows.
func checkPictures(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	shown := map[int]bool{}
	var pictures []readPicture
	for _, p := range d.Pages[:s.Front] {
		pictures = append(pictures, readPictures(t, p)...)
	}
	for _, sheet := range s.Sheets {
		laid, _ := d.JoinUp(t, sheet.First, sheet.Last)
		places := placesOf(laid, s.Paper.Overlap)
		shares := map[int]plane.Box{}
		for _, p := range laid {
			shares[p.Number] = share(p, places[p.Number], sheet, s.Paper.Overlap)
		}
		var lines []*seen.Line
		for _, role := range []mark.Role{mark.Cut, mark.FoldEdge, mark.BlockEdge} {
			lines = append(lines, seen.Lines(laid, role.String())...)
		}
		for _, r := range pictures {
			var numbers []int
			for n := sheet.First; n <= sheet.Last; n++ {
				if _, here := r.pages[n]; here {
					numbers = append(numbers, n)
					assert.False(t, shown[n], "page %d is in two pictures", n)
					shown[n] = true
				}
			}
			if len(numbers) == 0 {
				continue
			}
			require.Len(t, r.pages, len(numbers), "a picture of pages of two sheets")
			first := numbers[0]
			to := laidTo(r.pages[first], shares[first])
			for _, n := range numbers {
				assert.InDelta(t, 0, to.at(shares[n].Min).Distance(r.pages[n].Min)+to.at(shares[n].Max).Distance(r.pages[n].Max), 0.02, "page %d in its picture", n)
			}
			checkHatching(t, r)
			checkOutline(t, r, to, lines)
			checkCaption(t, r, sheet, numbers)
		}
	}
	for _, sheet := range s.Sheets {
		for n := sheet.First; n <= sheet.Last; n++ {
			assert.Equal(t, sheet.First < sheet.Last, shown[n], "page %d, in a picture if it is joined", n)
		}
	}
	for _, form := range s.Forms {
		for _, r := range pictures {
			assert.NotContains(t, r.pages, form.Page, "a form in a picture")
		}
	}
}

// laying brings a place of a sheet to its place in a picture.
type laying struct {
	from, to plane.Point
	scale    float64
}

func laidTo(picture, core plane.Box) laying {
	return laying{core.Min, picture.Min, picture.Width() / core.Width()}
}

func (l laying) at(p plane.Point) plane.Point { return l.to.Add(p.Sub(l.from).Mul(l.scale)) }

// Hatching is on pages that are not printed, on all of them and on no other.
func checkHatching(t require.TestingT, r readPicture) {
	for _, b := range r.blank {
		n := 0
		for _, at := range r.hatched {
			if b.Holds(at) {
				n++
			}
		}
		assert.Greater(t, n, 1, "the page at %v is not hatched", b)
	}
	for n, b := range r.pages {
		for _, at := range r.hatched {
			assert.False(t, b.Grown(-0.05).Holds(at), "page %d is hatched", n)
		}
	}
}

// The outlines of pieces lie in the picture where they lie on the sheet.
func checkOutline(t require.TestingT, r readPicture, to laying, lines []*seen.Line) {
	const off = 0.24
	var trees []*plane.Tree
	for _, part := range r.outline {
		trees = append(trees, plane.NewTree(part))
	}
	near := func(trees []*plane.Tree, at plane.Point) bool {
		for _, tree := range trees {
			if tree.Distance(at, 1) <= off {
				return true
			}
		}
		return false
	}
	var printed []*plane.Tree
	for _, l := range lines {
		moved := make(plane.Path, len(l.Tree.Path()))
		for i, at := range l.Tree.Path() {
			moved[i] = to.at(at)
		}
		if !moved.Bounds().Meets(r.frame) {
			continue
		}
		printed = append(printed, plane.NewTree(moved))
		for i := 0; i < len(moved); i += 1 + len(moved)/200 {
			if r.frame.Holds(moved[i]) && l.Page.Core.Holds(l.Tree.Path()[i]) && !near(trees, moved[i]) {
				assert.Fail(t, "a piece is not in its picture", "%v of page %d", moved[i], l.Page.Number)
				return
			}
		}
	}
	for _, part := range r.outline {
		for i := 0; i < len(part); i += 1 + len(part)/200 {
			inPage := false
			for _, b := range r.pages {
				inPage = inPage || b.Holds(part[i])
			}
			if inPage && !near(printed, part[i]) {
				assert.Fail(t, "a picture shows what no page does", "%v", part[i])
				return
			}
		}
	}
}

// The caption says which pages the picture shows: all of a sheet, or its own.
func checkCaption(t require.TestingT, r readPicture, sheet SheetSummary, numbers []int) {
	want := fmt.Sprintf("pages %d to %d\n", sheet.First, sheet.Last)
	if sheet.First == sheet.Last {
		want = fmt.Sprintf("page %d\n", sheet.First)
	}
	if len(numbers)+len(r.blank) < sheet.Rows*sheet.Columns {
		want = fmt.Sprintf("page %d", numbers[0])
		if len(numbers) > 1 {
			want = fmt.Sprintf("pages %d", numbers[0])
		}
	} else {
		assert.Len(t, r.blank, sheet.Blank, "pages left out")
	}
	assert.Contains(t, r.caption, want)
	assert.Contains(t, seen.Squeezed(r.caption), seen.Squeezed(sheet.Pieces[0])[:min(6, len(seen.Squeezed(sheet.Pieces[0])))], "the name of the first piece")
}

// Lines that lie close, as those of tucks do, stay apart in a small drawing.
func TestDrawingThinsOutTucks(t *testing.T) {
	m := sample.Sail(150)
	for i := range 140 {
		y := 5 + float64(i)
		m.Marks = append(m.Marks, sample.Edge(mark.TuckFold, "", plane.Point{Y: y}, plane.Point{X: 150, Y: y}))
	}
	d, _ := drawn(t, arrange.Set{Pieces: []mark.Marking{m}}, "letter")
	require.Empty(t, readPictures(t, d.Pages[0]))
	scale := 0.0
	for _, words := range d.Pages[0].Words() {
		if after, ok := strings.CutPrefix(words, "The pieces, all at 1 : "); ok {
			scale, _ = strconv.ParseFloat(after, 64)
		}
	}
	require.Positive(t, scale)
	drawn := 0
	for _, q := range d.Pages[0].Paths {
		if q.Painted == seen.Stroked && q.Layer == "" && math.Abs(q.Width-ink.InnerPen().Width) < seen.Written {
			for _, part := range q.Parts {
				if math.Abs(part.Length()-150/scale) < 0.1 {
					drawn++
				}
			}
		}
	}
	// Lines 1 mm apart come to lie 1/scale apart: the next that is 0.8 mm from the last.
	assert.InDelta(t, 140/math.Ceil(0.8*scale), drawn, 5)
}
