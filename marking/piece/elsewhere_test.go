package piece

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/fault"
)

// Where the second end of a gap stands is told where a maker would look for it elsewhere.
func TestElsewhere(t *testing.T) {
	first := fault.Place{File: "a.toml", Line: 4}
	for name, c := range map[string]struct {
		second fault.Place
		want   string
	}{
		"on another line": {fault.Place{File: "a.toml", Line: 7}, ", in line 7,"},
		"on the same":     {first, ""},
		"on none":         {fault.Place{File: "a.toml"}, ""},
		"in another file": {fault.Place{File: "b.toml", Line: 4}, ", in b.toml:4,"},
	} {
		assert.Equal(t, c.want, elsewhere(first, c.second), name)
	}
}
