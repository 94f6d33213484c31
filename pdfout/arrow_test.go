package pdfout

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// A head is 3 mm long and 2 mm wide, less on a line shorter than 9 mm: never
// more than a third of it, and always of the same shape.
func TestHeadSize(t *testing.T) {
	for _, c := range []struct {
		name          string
		role          mark.Role
		line          float64
		length, width float64
	}{
		{"a long line", mark.Grain, 60, 3, 2},
		{"a line of 9 mm", mark.Grain, 9, 3, 2},
		{"a line of 6 mm", mark.Grain, 6, 2, 4.0 / 3},
		{"a line of 1.5 mm", mark.Arrow, 1.5, 0.5, 1.0 / 3},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := sample.Sail(100)
			from := plane.Point{X: 40, Y: 40}
			m.Marks = append(m.Marks, sample.Edge(c.role, "", from, from.Add(plane.Point{X: c.line})))
			d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{m}}, "letter")
			p := d.Pages[s.Front]
			line := p.Drawn(c.role.String())[0].Parts[0].Bounds()
			heads := p.Heads(c.role)
			require.NotEmpty(t, heads)
			for _, h := range heads {
				assert.InDelta(t, c.length, h.Bounds().Width(), 4*seen.Written)
				assert.InDelta(t, c.width, h.Bounds().Height(), 4*seen.Written)
				assert.GreaterOrEqual(t, h.Bounds().Min.X, line.Min.X-4*seen.Written, "past its line")
				assert.LessOrEqual(t, h.Bounds().Max.X, line.Max.X+4*seen.Written, "past its line")
			}
		})
	}
}

// checkHeads holds for every head of any set: its tip is on the page, so that
// no page shows a base alone.
func checkHeads(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages[inFront(s):] {
		window := s.Paper.Window().Grown(2 * seen.Written)
		for _, role := range mark.Roles() {
			for _, h := range p.Heads(role) {
				assert.True(t, window.Holds(h[0]), "page %d: the tip of a head of a %v is at %v", inFront(s)+i+1, role, h[0])
			}
		}
	}
}

// A grain line that ends just beyond the window of the first page has its head
// on the second alone.
func TestHeadOnOnePage(t *testing.T) {
	m := sample.Sail(300)
	m.Marks = append(m.Marks, sample.Edge(mark.Grain, "", plane.Point{X: 30, Y: 150}, plane.Point{X: 100, Y: 150}))
	laid := arrange.Arrange(arrange.Set{Pieces: []mark.Marking{m}}, paper.All()[0])
	g := laid.Sheets[0].Grid
	first := g.WindowOf(arrange.Cell{})
	// The piece lies as it was given; the window of the first column ends here.
	end := first.Max.X
	m.Marks[len(m.Marks)-1].Path[1].X = end + 1
	d, s := drawn(t, arrange.Set{Pieces: []mark.Marking{m}}, "letter")
	total := 0
	for _, p := range d.Pages[inFront(s):] {
		total += len(p.Heads(mark.Grain))
	}
	require.Len(t, laid.Sheets[0].Cells, 4)
	// One at the left on the first column; one at the right on the second;
	// each as often as windows of two rows hold it.
	rows := 0
	for row := range 2 {
		if w := g.WindowOf(arrange.Cell{Row: row, Column: 0}); w.Min.Y <= 150 && w.Max.Y >= 150 {
			rows++
		}
	}
	assert.Equal(t, 2*rows, total)
	checkHeads(t, arrange.Set{}, d, s)
}
