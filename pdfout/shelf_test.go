package pdfout

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/sample"
)

// What is cut from card shares its page with nothing but its kind, however much room
// there is elsewhere.
func TestCardsHaveTheirOwnPages(t *testing.T) {
	set := arrange.Set{Pieces: []mark.Marking{sample.Rectangle("l", "Large", 150, 400), sample.Rectangle("p", "Pocket", 40, 40)}}
	for i := range 3 {
		card := sample.Rectangle(fmt.Sprint(i), fmt.Sprint("Card ", i), 30, 60)
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
