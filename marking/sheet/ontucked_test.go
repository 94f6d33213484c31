package sheet

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// Cloth that is not seen through is tucked before its neck and armholes are marked: what the
// cutting sheet shows of them reaches it through dots, or by a template, whichever way is asked for.
func TestLinesReachTheTuckedCloth(t *testing.T) {
	for _, c := range []struct {
		name   string
		ways   []source.Transfer
		dotted bool
	}{
		{"pricked", []source.Transfer{source.Prick}, true},
		{"mirrored", []source.Transfer{source.Mirror}, true},
		{"traced", []source.Transfer{source.Trace}, false},
		{"by a template", []source.Transfer{source.Template}, false},
		{"by a template, and pricked", []source.Transfer{source.Template, source.Prick}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			all := Of(Transferred(made.Example(t, "shirt.toml"), c.ways))
			at := slices.IndexFunc(all, func(m mark.Marking) bool { return m.Kind == mark.CuttingSheet })
			require.GreaterOrEqual(t, at, 0)
			dots, stitched := map[string]bool{}, 0
			for _, one := range all[at].Marks {
				if one.Role == mark.Prick {
					dots[one.Key] = true
				}
			}
			for _, line := range all[at].Marks {
				dotted := dots[mark.KeyWith(line.Called(), mark.Prick)]
				switch line.Role {
				case mark.Stitch:
					stitched++
					assert.Equal(t, c.dotted, dotted, line.Called())
				case mark.TuckStitch:
					assert.False(t, dotted, "%s is sewn already", line.Called())
				}
			}
			assert.NotZero(t, stitched)
			assert.Equal(t, c.dotted, slices.Contains(all[at].Steps, countPins))
			assert.Equal(t, c.dotted, all[at].Steps[0] == "prick a hole through the middle of every circle, with a pin or a punch")
		})
	}
}
