package sheet

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch/made"
)

// A grain that was guessed is called so: along its line, or in the notes of a piece on which
// no line is long enough for the words.
func TestGuessedGrainIsToldOnce(t *testing.T) {
	for _, c := range []struct {
		name        string
		wide, long  string // of a square piece, in inches
		grain, note string
	}{
		{"a panel", "6", "9", "grain (taken along side)", ""},
		{"a gusset of 1 3/4 in", "1.5", "1.75", "", "grain taken along side"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, pattern := made.Front(t, "0", fmt.Sprintf("top: 0,%[2]s %[1]s,%[2]s\nopposite: %[1]s,%[2]s %[1]s,0\nbottom: %[1]s,0 0,0\nside: 0,0 0,%[2]s\n", c.wide, c.long))
			sheet := markingSheet(p, pattern, nil)
			said := "none"
			for _, m := range sheet.Marks {
				if m.Role == mark.Grain {
					said = m.Name
				}
			}
			assert.Equal(t, c.grain, said)
			if c.note != "" {
				assert.Contains(t, sheet.Told(), c.note)
			} else {
				assert.NotContains(t, sheet.Told(), "grain taken along side")
			}
		})
	}
}
