package fault

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestPlaceUnder(t *testing.T) {
	assert.Equal(t, Place{File: "linden.toml", Key: "neck", Line: 3}, Place{File: "linden.toml", Line: 3}.Under("neck"))
	for _, c := range []struct{ path, key, want string }{
		{"piece.front.edge", "neck-2_b", "piece.front.edge.neck-2_b"},
		{"piece.front.edge", "centre front", `piece.front.edge."centre front"`},
		{"piece.front.edge", "größe", `piece.front.edge."größe"`},
		{"piece", "", `piece.""`},
		{"piece", "a\nb", `piece."a\nb"`},
		{"piece", "a\n", `piece."a\n"`},
	} {
		assert.Equal(t, c.want, Place{Key: c.path}.Under(c.key).Key)
	}
}

func TestPlaceInFile(t *testing.T) {
	for want, place := range map[string]Place{
		"linden.toml:31": {File: "linden.toml", Key: "piece.front.edge.neck", Line: 31},
		"linden.toml":    {File: "linden.toml", Key: "title"},
		"":               {Key: "piece.front", Line: 4},
	} {
		assert.Equal(t, want, place.InFile())
	}
}
