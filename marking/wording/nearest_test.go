package wording

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestNearest(t *testing.T) {
	known := []string{"name", "cut", "fold", "drawn", "grain", "edge", "tuck", "pleat", "line", "notch", "see-through", "hem", "at", "FRONT", "a–b–c"}
	tests := []struct{ name, key, want string }{
		{"a letter too few", "tuk", "tuck"},
		{"a letter too many", "tucks", "tuck"},
		{"another letter", "plest", "pleat"},
		{"letters changed places", "egde", "edge"},
		{"two letters changed", "nodsh", "notch"},
		{"capital letters", "FOLD", "fold"},
		{"another sign", "see_through", "see-through"},
		{"a short key, a letter changed", "cup", "cut"},
		{"a short key, letters changed places", "hme", "hem"},
		{"a short key, two letters changed", "cog", ""},
		{"an accent", "édge", "edge"},
		{"another word", "colour", ""},
		{"a known key in capitals", "fronz", "FRONT"},
		{"signs of several bytes", "a-b-c", "a–b–c"},
		{"nothing", "", ""},
		{"very long", "tucktucktucktucktucktuck", ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Equal(t, tt.want, Nearest(tt.key, known))
		})
	}
}
