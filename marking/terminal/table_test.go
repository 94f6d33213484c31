package terminal

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
)

// A table with more numbers than fit keeps them whole and takes the room, its first
// column being as narrow as its words. So does a word that is longer than a line.
func TestTablesThatNeedMoreRoom(t *testing.T) {
	r := mark.Report{Sections: []mark.Section{{Title: "S", Tables: []mark.Table{{
		Heads: []string{"", "one", "two", "three"},
		Rows:  []mark.Row{{Cells: []string{"a name of some length", "1 15/16 (49)", "12 15/16 (329)", "3 1/16 (78)"}}},
	}}, Lines: []mark.Sentence{{Text: "an incomprehensibly-hyphenated-word"}}}}}
	assert.Equal(t, `
S
-
                   one             two        three
  a name
  of
  some
  length  1 15/16 (49)  12 15/16 (329)  3 1/16 (78)

  an
  incomprehensibly-hyphenated-word
`, Text(r, 30))
}
