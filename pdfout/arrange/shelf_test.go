package arrange

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
)

// packedSheets packs pieces on sheets of one page each.
func packedSheets(small []Piece, page Grid) ([]Sheet, bool) {
	shelves, all := fill(parcelsOf(small, page.Window), page.Window)
	var sheets []Sheet
	for _, s := range evened(shelves) {
		sheets = append(sheets, s.sheet(page))
	}
	return sheets, all
}

// No two pieces of a page lie closer than 6 mm, counted from 2 mm outside their lines,
// none leaves its window, and none is lost.
func TestPack(t *testing.T) {
	t.Parallel()
	window := plane.Point{X: 194.7, Y: 248.2}
	rapid.Check(t, func(t *rapid.T) {
		var small []Piece
		for i := range rapid.IntRange(0, 15).Draw(t, "pieces") {
			p := NewPiece(sample.Rectangle("p", fmt.Sprint("piece ", i),
				rapid.Float64Range(5, window.X-4).Draw(t, "w"), rapid.Float64Range(5, window.Y-4).Draw(t, "h")))
			small = append(small, p)
		}
		names := map[string]int{}
		sheets, all := packedSheets(small, Grid{Rows: 1, Columns: 1, Window: window})
		require.True(t, all)
		for _, s := range sheets {
			require.NotEmpty(t, s.Pieces, "an empty page")
			for i, p := range s.Pieces {
				names[p.Name]++
				b := p.Bounds.Grown(2 - 1e-9)
				in := plane.Box{Max: window}
				require.True(t, in.Holds(b.Min) && in.Holds(b.Max), "%s leaves the page: %v", p.Name, b)
				for _, o := range s.Pieces[i+1:] {
					require.False(t, b.Grown(6-1e-6).Meets(o.Bounds.Grown(2)), "%s and %s", p.Name, o.Name)
				}
			}
		}
		require.Len(t, names, len(small))
		for name, n := range names {
			require.Equal(t, 1, n, name)
		}
	})
}

func TestPackUsesRoom(t *testing.T) {
	window := plane.Point{X: 194.7, Y: 248.2}
	pages := func(n int, w, h float64) (int, int) {
		var small []Piece
		for range n {
			small = append(small, NewPiece(sample.Rectangle("p", "P", w, h)))
		}
		turned := 0
		sheets, _ := packedSheets(small, Grid{Rows: 1, Columns: 1, Window: window})
		for _, s := range sheets {
			for _, p := range s.Pieces {
				if p.Turned {
					turned++
				}
			}
		}
		return len(sheets), turned
	}
	for _, c := range []struct {
		name          string
		n             int
		w, h          float64
		pages, turned int
	}{
		{"four quarters", 4, 85, 110, 1, 0},
		{"nine small", 9, 50, 45, 1, 0},
		{"a dozen small", 12, 50, 45, 1, 0},
		{"two halves up", 2, 85, 240, 1, 0},
		{"a third, turned to fit", 3, 80, 120, 1, 1},
		{"two that do not fit together", 2, 180, 120, 2, 0},
	} {
		n, turned := pages(c.n, c.w, c.h)
		assert.Equal(t, c.pages, n, c.name)
		assert.Equal(t, c.turned, turned, c.name)
	}
	// Beside a piece 100 mm wide and 240 high, one of 120 by 60 fits only
	// when it is turned.
	sheets, _ := packedSheets([]Piece{NewPiece(sample.Rectangle("a", "A", 100, 240)), NewPiece(sample.Rectangle("b", "B", 120, 60))}, Grid{Rows: 1, Columns: 1, Window: window})
	require.Len(t, sheets, 1)
	assert.False(t, sheets[0].Pieces[0].Turned)
	assert.True(t, sheets[0].Pieces[1].Turned)
}

// manyPoints are n small pieces whose outlines have 2,000 points each, too many for one
// page.
func manyPoints(n int) []Piece {
	var small []Piece
	for i := range n {
		m := sample.Wave(fmt.Sprint(i), 34-float64(i%7)/10, 29-float64(i%5)/10, 2000)
		small = append(small, NewPiece(m))
	}
	return small
}

func benchmarkPack(b *testing.B, n int) {
	small := manyPoints(n)
	window := plane.Point{X: 194.7, Y: 248.2}
	for b.Loop() {
		sheets, _ := packedSheets(small, Grid{Rows: 1, Columns: 1, Window: window})
		require.NotEmpty(b, sheets)
	}
}

func BenchmarkPack50(b *testing.B) { benchmarkPack(b, 50) }

func BenchmarkPack200(b *testing.B) { benchmarkPack(b, 200) }

// Small pieces that leave much of their page empty lie further apart than those that fill it,
// and are as many on the page (derived: 3 of 50 mm with 4 mm round each and 24 mm between them
// are 210 mm wide, with 18 mm between them 198 mm).
func TestShelvesAreSpreadOut(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct {
		width, gap float64 // of the window; between two pieces, in mm
	}{
		"room for the most":  {211, 28},
		"room for less":      {199, 22},
		"room for the least": {175, 10},
	} {
		t.Run(name, func(t *testing.T) {
			window := plane.Point{X: c.width, Y: 58}
			k := EmptyPage(window)
			for i := range 3 {
				p := NewPiece(sample.Rectangle("p", fmt.Sprint("piece ", i), 50, 50))
				require.True(t, k.Put(ParcelOf(p)))
			}
			s := k.sheet(Grid{Rows: 1, Columns: 1, Window: window})
			require.Len(t, s.Pieces, 3)
			for i, p := range s.Pieces[1:] {
				assert.InDelta(t, c.gap, p.Bounds.Min.X-s.Pieces[i].Bounds.Max.X, 1e-6)
			}
		})
	}
}

// Where one piece alone would lie on the last page the fullest one gives it some of its own; a
// page of two keeps both.
func TestNoneAloneOnTheLastPage(t *testing.T) {
	for _, c := range []struct {
		name  string
		count int
		high  float64
		want  []int // how many pieces the pages have
	}{
		{"four on a page, and one", 5, 110, []int{3, 2}},
		{"four on each of two, and one", 9, 110, []int{3, 4, 2}},
		{"two on a page, and one", 3, 180, []int{2, 1}},
		{"two on the last", 6, 110, []int{4, 2}},
		{"all on one", 4, 110, []int{4}},
		{"one", 1, 110, []int{1}},
		{"none", 0, 110, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			var small []Piece
			for i := range c.count {
				small = append(small, NewPiece(sample.Rectangle("p", fmt.Sprint("piece ", i), 80, c.high)))
			}
			sheets, _ := packedSheets(small, Grid{Rows: 1, Columns: 1, Window: plane.Point{X: 194.7, Y: 248.2}})
			var got []int
			for _, s := range sheets {
				got = append(got, len(s.Pieces))
			}
			assert.Equal(t, c.want, got)
		})
	}
}
