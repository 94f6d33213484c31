package pdfout

import (
	"fmt"
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/sets"
)

// meander is a piece of 20 by 20 pages of letter paper with a line of 20,000
// segments that comes through every one of them.
func meander(t testing.TB) (mark.Marking, paper.Paper) {
	p, err := paper.Find("letter")
	require.NoError(t, err)
	window := p.Window()
	w := 20*(window.Width()-p.Overlap) + p.Overlap - 2*arrange.Spare - 1
	h := 20*(window.Height()-p.Overlap) + p.Overlap - 2*arrange.Spare - 1
	const rows, perRow = 40, 500
	var path plane.Path
	for row := range rows {
		for i := range perRow {
			x := float64(i) / (perRow - 1)
			if row%2 == 1 {
				x = 1 - x
			}
			path = append(path, plane.Point{X: x * w, Y: (float64(row)+0.5)*h/rows + float64(i%2)*3})
		}
	}
	m := sample.Rectangle("large", "Large", w, h)
	m.Marks = append(m.Marks[:4], mark.Mark{Role: mark.Stitch, Path: path})
	return m, p
}

// 400 pages are drawn of one piece as large as all of them.
func BenchmarkPages400(b *testing.B) {
	m, paper := meander(b)
	set := arrange.Set{Title: "Large", Pieces: []mark.Marking{m}}
	for b.Loop() {
		summary, err := Draw(io.Discard, set, paper)
		require.NoError(b, err)
		require.Equal(b, 400, summary.Pages-summary.Front)
	}
}

// BenchmarkFigures draws the figures of many pieces, and all of these pieces in
// one picture; twice as many pieces must not take much more than twice as long.
func BenchmarkFigures(b *testing.B) {
	for _, n := range []int{250, 500, 1000, 2000} {
		b.Run(fmt.Sprint(n, " pieces"), func(b *testing.B) {
			cloth := &mark.Picture{Width: 1000, Height: 100 * float64(n)}
			r := &mark.Report{}
			for i := range n {
				name := fmt.Sprint("Piece no. ", i)
				r.Sections = append(r.Sections, mark.Section{Title: name, Tables: sample.DressFigures().Sections[1].Tables})
				cloth.Shapes = append(cloth.Shapes, sample.Oblong(name, float64(i%10)*100, float64(i/10)*1000, 90, 950))
			}
			r.Sections = append(r.Sections, mark.Section{Picture: cloth})
			set := sets.WithFigures(sets.Many(1), r)
			for b.Loop() {
				_, err := Draw(io.Discard, set, paper.All()[0])
				require.NoError(b, err)
			}
		})
	}
}

// A refusal must come soon, however much is asked for.
func BenchmarkTooManyPages(b *testing.B) {
	set := arrange.Set{Pieces: []mark.Marking{sample.Wave("w", 9e8, 9e8, 4000)}}
	for b.Loop() {
		_, err := Draw(io.Discard, set, paper.All()[0])
		require.Error(b, err)
	}
}
