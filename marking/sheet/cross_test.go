package sheet

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// The centre has its crosses at the heights at which the cutting sheet has them, 1 in
// from its ends: at 9 in and at 1 in, where the sheet reaches so far.
func TestCrossesOfATuckSheet(t *testing.T) {
	const below = "below = \"neck\"\nlength = "
	high, low := []string{"-0.25,9 0.25,9", "0,8.75 0,9.25"}, []string{"-0.25,1 0.25,1", "0,0.75 0,1.25"}
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"the upper part of the block", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", below+"2"), high},
		{"the whole length", sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", ""), append(append([]string{}, high...), low...)},
		{"printed whole", sketch.Swap(sketch.Bosom, "fold =", "print = \"whole\"\nfold =") + sketch.Tucked("cf", "1/8", 2, "3/8", below+"2"), high},
		{"not on the fold", sketch.Bib + sketch.Tucked("middle", "1/4", 1, "1", "side = \"right\""), nil},
		{"tucks across the fold", sketch.Bosom + sketch.Tucked("hem", "1/2", 1, "3", ""), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text+"\n[block]\n")
			got := orderedLinesOf(tuckSheet(piece, pattern), mark.Cross)
			assert.ElementsMatch(t, c.want, got)
			if len(got) > 0 {
				assert.Subset(t, orderedLinesOf(cuttingSheet(piece, pattern, nil), mark.Cross), got, "they are laid on each other")
			}
		})
	}
}
