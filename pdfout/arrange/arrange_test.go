package arrange

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// What is cut from card shares its page with nothing but its kind, however much room
// there is elsewhere.
func TestCardsHaveTheirOwnPages(t *testing.T) {
	pieces := []mark.Marking{sample.Rectangle("l", "Large", 150, 400), sample.Rectangle("p", "Pocket", 40, 40)}
	for i := range 3 {
		card := sample.Rectangle(fmt.Sprint(i), fmt.Sprint("Card ", i), 30, 60)
		card.Kind = mark.Gauge
		pieces = append(pieces, card)
	}
	laid := Arrange(Set{Pieces: pieces}, paper.All()[0])
	var names [][]string
	for i := range laid.Sheets {
		names = append(names, laid.Sheets[i].Names())
	}
	assert.Equal(t, [][]string{{"Large", "Pocket"}, {"Card 0", "Card 1", "Card 2"}}, names)
}

// A card too large for a page keeps its pages to itself as well.
func TestALargeCardSharesNoPage(t *testing.T) {
	card := sample.Rectangle("card", "Card", 60, 400)
	card.Kind = mark.Gauge
	laid := Arrange(Set{Pieces: []mark.Marking{card, sample.Rectangle("a", "A", 60, 80), sample.Rectangle("b", "B", 60, 80)}}, paper.All()[0])
	for _, s := range laid.Sheets {
		for _, p := range s.Pieces {
			assert.True(t, p.Name != "Card" || len(s.Pieces) == 1, "%v", s.Names())
		}
	}
}

// What has a form is set aside, what has no line is left out and named.
func TestWhatIsNotLaid(t *testing.T) {
	form, empty := sample.TuckSample(), mark.Marking{Key: "none", Name: "None"}
	laid := Arrange(Set{Pieces: []mark.Marking{form, empty, sample.Sail(60)}}, paper.All()[0])
	assert.Equal(t, []mark.Marking{form}, laid.Forms)
	assert.Equal(t, []string{"None"}, laid.Left)
	assert.Equal(t, 1, laid.Pages())
}

func TestPieceIsTurnedWhereThatSavesPages(t *testing.T) {
	window := plane.Point{X: 190, Y: 250}
	for _, c := range []struct {
		name   string
		w, h   float64
		pages  int
		turned bool
	}{
		{"a strip up", 100, 480, 2, false},
		{"a strip across", 480, 100, 2, true},
		{"as many either way", 300, 300, 4, false},
	} {
		p := NewPiece(sample.Rectangle("p", "P", c.w, c.h))
		laid, best := spreadOn(p, Grid{Window: window, Overlap: 10}, rasterOne)
		assert.Len(t, best.cells, c.pages, c.name)
		assert.Equal(t, c.turned, laid.Turned, c.name)
	}
}

// Pages that do not hang together need others to join them; of too many these
// are not counted.
func TestCountOfScatteredPages(t *testing.T) {
	m := mark.Marking{Key: "p", Name: "P"}
	for i := range 2500 {
		at := plane.Point{X: 800 * float64(i%50), Y: 800 * float64(i/50)}
		m.Marks = append(m.Marks, sample.Edge(mark.Placement, "", at, at.Add(plane.Point{X: 1})))
	}
	_, best := spreadOn(NewPiece(m), Grid{Window: plane.Point{X: 190, Y: 250}, Overlap: 10}, rasterOne)
	assert.GreaterOrEqual(t, len(best.cells), 2500)
	assert.False(t, connected(best.cells))
}
