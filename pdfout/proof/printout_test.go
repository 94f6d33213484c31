package proof

import (
	"image"
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// Rules of this file: a set as it was printed: its pages true to scale, each with its
// place on its joined sheet, what its dots may belong to, and what a renderer made of
// it. How the pages join is read from their join marks, as a maker does it.

// tile is a page true to scale, as one renderer drew it.
type tile struct {
	seen.LaidPage
	ground *ground
	pieces []seen.Placed // on its sheet
	heads  []seen.Path
	image  *image.Gray
}

// at is the place on the sheet of a place in the picture, given in dots.
func (p *tile) at(x, y float64) plane.Point {
	return plane.Point{X: x * dot, Y: p.ground.top - y*dot}.Add(p.Step)
}

// dotsOf is a place of the sheet in dots.
func (p *tile) dotsOf(at plane.Point) (x, y float64) {
	at = at.Sub(p.Step)
	return at.X / dot, (p.ground.top - at.Y) / dot
}

// rows is the part of the picture that shows a box of the sheet.
func (p *tile) rows(b plane.Box) image.Rectangle {
	left, upper := p.dotsOf(plane.Point{X: b.Min.X, Y: b.Max.Y})
	right, lower := p.dotsOf(plane.Point{X: b.Max.X, Y: b.Min.Y})
	r := image.Rect(int(math.Floor(left)), int(math.Floor(upper)), int(math.Ceil(right)), int(math.Ceil(lower)))
	return r.Intersect(p.image.Rect)
}

// find returns how a piece lies on the page's sheet.
func (p *tile) find(number int) (seen.Placed, bool) {
	for _, q := range p.pieces {
		if q.Number == number {
			return q, true
		}
	}
	return seen.Placed{}, false
}

// printout is a set as it was printed, without the pages that are not true to scale.
type printout struct {
	file    string
	doc     seen.Document
	summary pdfout.Summary
	sheets  [][]*tile
}

// printedOn draws a set, and finds where every piece lies on every page. Nobody looks
// at that where the renderers are missing.
func printedOn(t *testing.T, set arrange.Set, on string) *printout {
	t.Helper()
	for _, r := range renderers() {
		Tool(t, r.name)
	}
	file, summary := onDisk(t, set, on)
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	out := &printout{file: file, doc: seen.Read(t, data, paper.Scale{}), summary: summary}
	for _, sheet := range append(formsAsSheets(summary), summary.Sheets...) {
		laid, apart := out.doc.JoinUp(t, sheet.First, sheet.Last)
		require.Empty(t, apart, "pages without a join")
		pieces := seen.PiecesOn(t, laid, set.Pieces, sheet.Pieces, sheet.Turned)
		if len(pieces) == 0 {
			continue // a large page with nothing but panels
		}
		var tiles []*tile
		for _, page := range laid {
			p := &tile{LaidPage: page, pieces: pieces}
			for _, q := range page.Paths {
				if q.Layer != "" && q.Painted == seen.Filled {
					p.heads = append(p.heads, q)
				}
			}
			tiles = append(tiles, p)
		}
		out.sheets = append(out.sheets, tiles)
	}
	if summary.Paper.WhollyOnOne() {
		out.sheets = [][]*tile{asOneSheet(out.sheets)}
	}
	for _, sheet := range out.sheets {
		for _, p := range sheet {
			p.ground = groundOf(p.Page, p.Step, p.pieces)
		}
	}
	return out
}

// asOneSheet makes one of the forms and the sheet that lie on a single page.
func asOneSheet(sheets [][]*tile) []*tile {
	page := sheets[0][0]
	for _, more := range sheets[1:] {
		page.pieces = append(page.pieces, more[0].pieces...)
	}
	page.Window = page.Whole()
	page.Core = page.Window
	return []*tile{page}
}

// seenBy takes the pictures of a renderer.
func (out *printout) seenBy(t *testing.T, pictures []*image.Gray) {
	t.Helper()
	for _, sheet := range out.sheets {
		for _, p := range sheet {
			p.image = pictures[p.Number-1]
			require.Equal(t, image.Rect(0, 0, p.ground.width, p.ground.height), p.image.Rect, "page %d", p.Number)
		}
	}
}
