package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
)

// Derived: a front of 10 in with 3/8 in of shoulder seam, a hem of 1 in and 1/4 in turned in
// is 10 - 3/8 - 1 1/4 in long. Tucks that run up and down leave it so; those across it do
// not.
func TestFarthestFrom(t *testing.T) {
	const front = "centre: 0,0 0,10 | allowance = 0\nshoulder: 0,10 5,10\nside: 5,10 5,0 | allowance = 0\nhem: 5,0 0,0 | hem = 1; turn = 0.25\n"
	for _, c := range []struct {
		name, edge, folds string
		inches            float64
		ok                bool
	}{
		{"from the hem", "hem", "", 10 - 3./8 - 1.25, true},
		{"from the shoulder", "shoulder", "", 10 - 3./8 - 1.25, true},
		{"from the side", "side", "", 5, true},
		{"tucks along", "hem", sketch.Tucked("side", "1/8", 2, "1", ""), 10 - 3./8 - 1.25, true},
		{"tucks across", "hem", sketch.Tucked("hem", "1/8", 2, "3", ""), 0, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := sketched(t, "0.375", front+"---\n\n"+c.folds)
			mm, ok := p.FarthestFrom(p.EdgeNumber(c.edge))
			assert.Equal(t, c.ok, ok)
			assert.InDelta(t, c.inches*25.4, mm, 1e-6)
		})
	}
}
