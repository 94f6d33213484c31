package main

import (
	"bytes"
	"math"
	"path/filepath"
	"regexp"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// Rules of this file: it looks at the pages that are read and written on, of every example
// on every paper that is printed page by page, as they stand in the PDF.

// papersByPage are the papers that are printed page by page, each upright and lying where it
// can lie.
func papersByPage(t *testing.T) []paper.Paper {
	t.Helper()
	var all []paper.Paper
	for _, name := range paper.Names() {
		p, err := paper.Find(name)
		require.NoError(t, err)
		if p.WhollyOnOne() {
			continue
		}
		all = append(all, p)
		if lying, err := p.Lying(); err == nil {
			all = append(all, lying)
		}
	}
	return all
}

func TestFiguresPages(t *testing.T) {
	t.Parallel()
	for _, file := range examples(t) {
		_, set := load(t, file)
		// The pages of the other pieces are no matter here.
		first := set.Pieces[0].Key
		set.Pieces = slices.DeleteFunc(set.Pieces, func(m mark.Marking) bool { return m.Form == nil && m.Key != first })
		for _, p := range papersByPage(t) {
			t.Run(filepath.Base(file)+" on "+p.Title, func(t *testing.T) {
				var pdf bytes.Buffer
				s, err := pdfout.Draw(&pdf, set, p)
				require.NoError(t, err)
				pages := seen.Read(t, pdf.Bytes(), paper.Scale{}).Pages
				figures := pages[s.Front : s.Front+s.Figures]
				require.NotEmpty(t, figures)
				checkGrid(t, figures, set, p)
				for i, page := range figures {
					checkToRead(t, page)
					checkFilled(t, page, p, i, len(figures))
				}
				for _, form := range s.Forms {
					checkToRead(t, pages[form.Page-1])
				}
			})
		}
	}
}

// inFile finds what only whoever writes the file can read: its lines, tables and keys.
var inFile = regexp.MustCompile(`\.toml|\bline \d+\b|\[[a-z]+[.\]]|[a-z] = (?:[\[{"0-9]|true)`)

// checkToRead: nothing on a page is smaller than 9 points or of the file, and no two texts
// overlap.
func checkToRead(t *testing.T, page seen.Page) {
	for k, one := range page.Texts {
		assert.NotRegexp(t, inFile, one.Text)
		assert.GreaterOrEqual(t, one.Size, 9.0, "%q", one.Text)
		for _, other := range page.Texts[k+1:] {
			assert.False(t, one.Box().Grown(-0.05).Meets(other.Box()), "%q and %q", one.Text, other.Text)
		}
	}
}

// columnsOf is where the columns of a page of figures begin, and how wide each is, in mm: as
// many of 80 mm and more as there is room for, 8 mm apart.
func columnsOf(p paper.Paper) (begin []float64, width float64) {
	room := p.UnderHeader()
	n := math.Floor((room.Width() + 8) / 88)
	width = (room.Width()+8)/n - 8
	for k := range int(n) {
		begin = append(begin, room.Min.X+float64(k)*(width+8))
	}
	return begin, width
}

// checkGrid: all numbers of all tables end at stops that are equally far apart, and no table
// is broken.
func checkGrid(t *testing.T, figures []seen.Page, set arrange.Set, p paper.Paper) {
	numbers := map[string]bool{}
	for _, section := range set.Report.Sections {
		for _, table := range section.Tables {
			for _, row := range table.Rows {
				for _, cell := range row.Cells[1:] {
					numbers[cell] = cell != ""
				}
			}
		}
	}
	begin, width := columnsOf(p)
	step := width / math.Round(width/14.5) / 2
	ends := 0
	for _, page := range figures {
		for _, text := range page.Texts {
			assert.NotContains(t, text.Text, "(continued)", "a table is broken")
			if !numbers[text.Text] || text.Bold {
				continue
			}
			end := text.Box().Max.X
			column := begin[0]
			for _, x := range begin {
				if x < end {
					column = x
				}
			}
			at := (end - column) / step
			assert.InDelta(t, math.Round(at), at, 0.02, "%q ends between two stops", text.Text)
			ends++
		}
	}
	assert.Greater(t, ends, 20, "numbers that were looked at")
}

// checkFilled: a quarter of a page has something on it, unless it is the only one.
func checkFilled(t *testing.T, page seen.Page, p paper.Paper, i, pages int) {
	if pages == 1 {
		return
	}
	room := p.UnderHeader()
	begin, width := columnsOf(p)
	filled := 0.0
	for _, x := range begin {
		low := room.Max.Y
		for _, text := range page.Texts {
			if box := text.Box(); box.Max.X > x && box.Min.X < x+width && box.Max.Y <= room.Max.Y {
				low = min(low, box.Min.Y)
			}
		}
		filled += room.Max.Y - low
	}
	assert.Greater(t, filled/float64(len(begin))/room.Height(), 0.25, "page %d of the figures", i+1)
}
