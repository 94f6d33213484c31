package source

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
)

func TestOutlinesAreDrawnToOneOfTwoLines(t *testing.T) {
	for _, c := range []struct {
		name, line string
		want       DrawnTo
	}{
		{"to the cutting line, without a word", "", DrawnToCutting},
		{"to the cutting line", "drawn-to = \"cutting\"\n", DrawnToCutting},
		{"to the stitch line", "drawn-to = \"stitching\"\n", DrawnToStitching},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec, err := Read("f.toml", []byte("unit = \"in\"\n[piece.front]\n"+c.line+"[piece.front.edge.all]\npoints = [[0, 0], [1, 0]]\n"), sketch.HasLetter)
			require.NoError(t, err)
			assert.Equal(t, c.want, spec.Pieces[0].DrawnTo.V)
			spec.Pieces[0].DrawnTo = Given(DrawnTo(2))
			assert.Equal(t, "f.toml:2: piece.front.drawn-to: 2 is none of the choices\nhint: known here are \"cutting\" or \"stitching\"", spec.Faults().Error())
		})
	}
}
