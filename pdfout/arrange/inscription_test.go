package arrange

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
)

// In every width of a panel no line of the notes ends inside a number with its fraction: a 5
// at the end of a line is read for a length of its own.
func TestPanelsKeepNumbersWhole(t *testing.T) {
	p := NewPiece(mark.Marking{Name: "Yoke", Notes: []string{"field: 12 tucks, each 1/8 in wide", "the field tucks end, first to last: 5 3/8, 5 3/8, 5 5/16, 5 1/4 in"}})
	torn := regexp.MustCompile(`(^|[^/\d])\d+$`)
	for limit := 30.0; limit < 150; limit++ {
		var lines []string
		for _, l := range p.ownPanel(limit).Labels {
			lines = append(lines, l.Text)
			assert.LessOrEqual(t, l.At.X+l.Style.Width(l.Text), limit, l.Text)
		}
		for i, line := range lines[:len(lines)-1] {
			if next := lines[i+1]; torn.MatchString(line) && regexp.MustCompile(`^\d+/`).MatchString(next) {
				t.Errorf("in %.0f mm: %q is torn from %q", limit, line, next)
			}
		}
		assert.Contains(t, strings.Join(lines, " "), "5 3/8, 5 3/8, 5 5/16, 5 1/4 in", "nothing is lost")
	}
}
