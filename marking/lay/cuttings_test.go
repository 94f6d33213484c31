package lay

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Nothing is torn shorter than it is needed: a block 12.05 in wide with its tucks takes
// 12 9/16 in with its sides. A piece that is cut has the nearest size.
func TestBlocksAreTornWideEnough(t *testing.T) {
	p := made.Of(t, "allowance = 0\n"+sketch.Front(strings.ReplaceAll(sketch.Bosom, "6,0", "6.025,0")+sketch.Tucked("cf", "1/8", 1, "3/8", "")+"\n[block]\nends = \"0\"\n"))
	torn, _ := Cuttings(p)
	assert.Equal(t, "12 9/16 in", torn[0].Across.String(), "12.05 + 2 x 1/4 = 12.55")
	p = made.Of(t, "allowance = 0\n"+sketch.Front("a: 0,0 0,9\nb: 0,9 5.04,9\nc: 5.04,9 5.04,0\nd: 5.04,0 0,0\n"))
	torn, _ = Cuttings(p)
	assert.Equal(t, "5 1/16 in", torn[0].Across.String())
}

// What is torn and cut counts for every piece there is, in their order.
func TestEveryPieceIsTornOrCut(t *testing.T) {
	for _, name := range []string{"pinafore.toml", "shirt.toml", "underwaist.toml"} {
		p := made.Example(t, name)
		torn, cut := Cuttings(p)
		var names []string
		for _, c := range append(torn, cut...) {
			names = append(names, fmt.Sprint(c.Name, " ", c.Count))
		}
		var want []string
		for _, piece := range p.Pieces {
			want = append(want, fmt.Sprint(piece.Name, " ", piece.Cut))
		}
		assert.ElementsMatch(t, want, names, name)
	}
}
