package marking

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestProblemsError(t *testing.T) {
	tests := []struct {
		name string
		list []Problem
		want string
	}{
		{"the file as a whole", []Problem{{Cause: "the file is empty"}}, "linden.toml: the file is empty"},
		{"only a line", []Problem{{Place: Place{Line: 3}, Cause: `a "]" is missing`}}, `linden.toml:3: a "]" is missing`},
		{"a place and a hint", []Problem{{Place{"piece.front.edge.neck", 31}, "points 2 and 3 are the same", "leave one out"}},
			"linden.toml:31: piece.front.edge.neck: points 2 and 3 are the same\nhint: leave one out"},
		{"a place without a line", []Problem{{Place{Path: "title"}, "is missing", ""}}, "linden.toml: title: is missing"},
		{"several", []Problem{{Place{"title", 1}, "is empty", "write it"}, {Place{"size", 2}, "is empty", ""}},
			"linden.toml:1: title: is empty\nhint: write it\nlinden.toml:2: size: is empty"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Equal(t, tt.want, (&Problems{File: "linden.toml", List: tt.list}).Error())
		})
	}
}
