package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// What is less than a hundredth of a millimetre is called too little to be drawn, once where the
// whole file has it; it is never called 0.
func TestAllowanceLessThanCanBeDrawn(t *testing.T) {
	const hint = "\nhint: check the number and its unit, or write 0 where there is none"
	for _, c := range []struct{ name, top, edge, want string }{
		{"an allowance", "", "allowance = 0.0099", "f.toml:6: piece.a.edge.top.allowance: an allowance of less than 0.01 mm is less than can be drawn" + hint},
		{"one that is marked", "", "allowance = 0.0099\nmarked = true", "f.toml:6: piece.a.edge.top.allowance: an allowance of less than 0.01 mm is less than can be drawn" + hint},
		{"a hundredth", "", "allowance = 0.01", ""},
		{"none", "", "allowance = 0", ""},
		{"a hem", "", "hem = 0.0099", "f.toml:6: piece.a.edge.top.hem: a hem of less than 0.01 mm is less than can be drawn" + hint},
		{"a turn", "", "hem = 10\nturn = 0.0099", "f.toml:7: piece.a.edge.top.turn: a turn of less than 0.01 mm is less than can be drawn" + hint},
		{"a turn of none", "", "hem = 10\nturn = 0", ""},
		{"of the whole file", "allowance = 1e-9", "allowance = 1", "f.toml:2: allowance: an allowance of less than 0.01 mm is less than can be drawn" + hint},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec, err := source.Read("f.toml", []byte("unit = \"mm\"\n"+c.top+"\n[piece.a]\nrectangle = [100, 200]\n[piece.a.edge.top]\n"+c.edge+"\n"), sketch.HasLetter)
			require.NoError(t, err)
			_, err = marking.Check(spec)
			if c.want == "" {
				assert.NoError(t, err)
				return
			}
			assert.EqualError(t, err, c.want)
		})
	}
}
