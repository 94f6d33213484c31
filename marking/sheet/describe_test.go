package sheet

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// On the fold a set is told as it is on the whole block.
func TestHowManyTucksATuckSheetCounts(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"one on each side", sketch.Bosom + sketch.Tucked("cf", "1/8", 1, "3/8", ""), "t: 2 tucks, 1 on each side, each 1/8 in wide"},
		{"seven on each side", sketch.Bosom + sketch.Tucked("cf", "1/8", 7, "3/8", ""), "t: 14 tucks, 7 on each side, each 1/8 in wide"},
		{"one on the centre", sketch.Bosom + sketch.Tucked("cf", "1/8", 1, "0", ""), "t: 1 tuck, on the centre, 1/8 in wide"},
		{"on the centre and on each side", sketch.Bosom + sketch.Tucked("cf", "1/8", 7, "0", ""), "t: 13 tucks, 1 on the centre and 6 on each side, each 1/8 in wide"},
		{"not on the fold", sketch.Bib + sketch.Tucked("middle", "1/8", 7, "3/8", "side = \"right\""), "t: 7 tucks, each 1/8 in wide"},
		{"across the fold", sketch.Bosom + sketch.Tucked("hem", "1/2", 2, "3", ""), "t: 2 tucks, each 1/2 in wide"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text+"press = \"away\"\n\n[block]\n")
			notes := tuckSheet(piece, pattern).Told()
			assert.Contains(t, notes, c.want)
		})
	}
}
