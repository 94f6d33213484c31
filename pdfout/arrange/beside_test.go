package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// ofKind is a rectangle of a kind, of a piece of cloth.
func ofKind(kind mark.Kind, of, name string, w, h float64) mark.Marking {
	m := sample.Rectangle(name, name, w, h)
	m.Kind, m.Piece = kind, of
	return m
}

// namesOn are the names of the pieces on each sheet of a set, and how many pages they have.
func namesOn(pieces ...mark.Marking) ([][]string, int) {
	laid := Arrange(Set{Pieces: mark.Numbered(pieces)}, paper.All()[0])
	var names [][]string
	for i := range laid.Sheets {
		names = append(names, laid.Sheets[i].Names())
	}
	return names, laid.Pages()
}

// A band that is too long for a page goes where there is room beside another large piece.
// Of letter paper, two pages joined show 377 mm across.
func TestBandsBesideLargePieces(t *testing.T) {
	skirt := func(w, h float64) mark.Marking { return ofKind(mark.Piece, "Skirt", "Skirt", w, h) }
	band := func(name string, w, h float64) mark.Marking { return ofKind(mark.Piece, name, name, w, h) }
	for _, c := range []struct {
		name   string
		pieces []mark.Marking
		want   [][]string
		pages  int
	}{
		{"beside a skirt", []mark.Marking{skirt(250, 400), band("Band", 60, 400)}, [][]string{{"Skirt", "Band"}}, 4},
		{"before it in the file", []mark.Marking{band("Band", 60, 400), skirt(250, 400)}, [][]string{{"Band", "Skirt"}}, 4},
		{"turned", []mark.Marking{skirt(250, 400), band("Band", 400, 60)}, [][]string{{"Skirt", "Band"}}, 4},
		{"no room", []mark.Marking{skirt(330, 400), band("Band", 60, 400)}, [][]string{{"Skirt"}, {"Band"}}, 6},
		{"two bands", []mark.Marking{band("Band", 60, 400), band("Other band", 60, 300)}, [][]string{{"Band", "Other band"}}, 2},
		{"room for one of two", []mark.Marking{skirt(250, 440), band("Band", 60, 400), band("Other band", 60, 430)}, [][]string{{"Skirt", "Band"}, {"Other band"}}, 6},
		{"a card stays by itself", []mark.Marking{skirt(250, 400), ofKind(mark.Gauge, "", "Card", 60, 400)}, [][]string{{"Skirt"}, {"Card"}}, 6},
	} {
		names, pages := namesOn(c.pieces...)
		assert.Equal(t, c.want, names, c.name)
		assert.Equal(t, c.pages, pages, c.name)
	}
}

// A piece that is turned back lies as it was drawn.
func TestUpright(t *testing.T) {
	p := NewPiece(sample.Sail(100))
	assert.Equal(t, p.Outline.Path(), p.QuarterTurned().upright().Outline.Path())
	assert.False(t, p.QuarterTurned().upright().Turned)
	assert.Equal(t, plane.Point{X: 100, Y: 100}, p.upright().Bounds.Max)
}
