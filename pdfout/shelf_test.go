package pdfout

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// packedSheets packs pieces on sheets of one page each.
func packedSheets(small []piece, page grid, square float64) ([]sheet, bool) {
	shelves, all := fewestShelves(parcelsOf(small, page.window, square), page.window, square)
	var sheets []sheet
	for _, s := range shelves {
		sheets = append(sheets, s.sheet(page))
	}
	return sheets, all
}

// No two pieces of a page lie closer than 6 mm, counted from 2 mm outside their
// lines, none leaves its window, and
// none is lost.
func TestPack(t *testing.T) {
	t.Parallel()
	window := plane.Point{X: 194.7, Y: 248.2}
	rapid.Check(t, func(t *rapid.T) {
		var small []piece
		for i := range rapid.IntRange(0, 15).Draw(t, "pieces") {
			p := newPiece(rectangle("p", fmt.Sprint("piece ", i),
				rapid.Float64Range(5, window.X-4).Draw(t, "w"), rapid.Float64Range(5, window.Y-4).Draw(t, "h")))
			small = append(small, p)
		}
		names := map[string]int{}
		sheets, all := packedSheets(small, grid{rows: 1, columns: 1, window: window}, 30)
		require.True(t, all)
		for _, s := range sheets {
			require.NotEmpty(t, s.pieces, "an empty page")
			for i, p := range s.pieces {
				names[p.name]++
				b := p.bounds.Grown(2 - 1e-9)
				in := plane.Box{Max: window}
				require.True(t, in.Holds(b.Min) && in.Holds(b.Max), "%s leaves the page: %v", p.name, b)
				for _, o := range s.pieces[i+1:] {
					require.False(t, b.Grown(6-1e-6).Meets(o.bounds.Grown(2)), "%s and %s", p.name, o.name)
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
		var small []piece
		for range n {
			small = append(small, newPiece(rectangle("p", "P", w, h)))
		}
		turned := 0
		sheets, _ := packedSheets(small, grid{rows: 1, columns: 1, window: window}, 30)
		for _, s := range sheets {
			for _, p := range s.pieces {
				if p.turned {
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
		{"a dozen small, too small for the check square", 12, 50, 45, 2, 0},
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
	sheets, _ := packedSheets([]piece{newPiece(rectangle("a", "A", 100, 240)), newPiece(rectangle("b", "B", 120, 60))}, grid{rows: 1, columns: 1, window: window}, 30)
	require.Len(t, sheets, 1)
	assert.False(t, sheets[0].pieces[0].turned)
	assert.True(t, sheets[0].pieces[1].turned)
}

// What is cut from card shares its page with nothing but its kind, however much room
// there is elsewhere.
func TestCardsHaveTheirOwnPages(t *testing.T) {
	set := Set{Pieces: []marking.Marking{rectangle("l", "Large", 150, 400), rectangle("p", "Pocket", 40, 40)}}
	for i := range 3 {
		card := rectangle(fmt.Sprint(i), fmt.Sprint("Card ", i), 30, 60)
		card.Card = true
		set.Pieces = append(set.Pieces, card)
	}
	_, s := drawn(t, set, "letter")
	cards := 0
	for _, sheet := range s.Sheets {
		of := 0
		for _, name := range sheet.Pieces {
			if strings.HasPrefix(name, "Card") {
				of++
			}
		}
		assert.True(t, of == 0 || of == len(sheet.Pieces), "%v", sheet.Pieces)
		cards += of
	}
	assert.Equal(t, 3, cards)
	assert.Len(t, s.Sheets, 2, "the pocket lies on a page of the large piece, the cards on one")
}

// A card too large for a page keeps its pages to itself as well.
func TestALargeCardSharesNoPage(t *testing.T) {
	card := rectangle("card", "Card", 60, 400)
	card.Card = true
	laid := arrange(Set{Pieces: []marking.Marking{card, rectangle("a", "A", 60, 80), rectangle("b", "B", 60, 80)}}, papers()[0])
	for _, s := range laid.sheets {
		for _, p := range s.pieces {
			assert.True(t, p.name != "Card" || len(s.pieces) == 1, "%v", s.names())
		}
	}
}
