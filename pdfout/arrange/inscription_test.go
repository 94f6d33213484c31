package arrange

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// However narrow the room, no line of the notes ends inside a number with its fraction: a 5 at
// the end of a line is read for a length of its own.
func TestInscriptionKeepsNumbersWhole(t *testing.T) {
	notes := []string{"field: 12 tucks, each 1/8 in wide", "the field tucks end, first to last: 5 3/8, 5 3/8, 5 5/16, 5 1/4 in"}
	torn := regexp.MustCompile(`(^|[^/\d])\d+$`)
	for limit := 30.0; limit < 150; limit++ {
		for name, set := range map[string]Inscription{
			"under its name": newInscription("Yoke", notes, 9, limit),
			"after its name": runIn("Yoke", notes, 9, limit),
		} {
			var lines []string
			for _, l := range set.Labels {
				lines = append(lines, l.Text)
			}
			for i, line := range lines[:len(lines)-1] {
				if next := lines[i+1]; torn.MatchString(line) && regexp.MustCompile(`^\d+/`).MatchString(next) {
					t.Errorf("%s, in %.0f mm: %q is torn from %q", name, limit, line, next)
				}
			}
			assert.Contains(t, strings.Join(lines, " "), "5 3/8, 5 3/8, 5 5/16, 5 1/4 in", "nothing is lost")
		}
	}
}
