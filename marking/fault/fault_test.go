package fault

import (
	"errors"
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestFaultsError(t *testing.T) {
	file, key := Place{File: "linden.toml"}, Place{"linden.toml", "piece.front.edge.neck", 31}
	tests := []struct {
		name string
		all  List
		want string
	}{
		{"the file as a whole", List{{Place: file, Cause: "the file is empty"}}, "linden.toml: the file is empty"},
		{"only a line", List{{Place: file.On(3), Cause: `a "]" is missing`}}, `linden.toml:3: a "]" is missing`},
		{"a place and a hint", List{{Place: key, Cause: "points 2 and 3 are the same", Hint: "leave one out"}},
			"linden.toml:31: piece.front.edge.neck: points 2 and 3 are the same\nhint: leave one out"},
		{"a place without a line", List{{Place: file.Under("title"), Cause: "is missing"}}, "linden.toml: title: is missing"},
		{"a key of no file", List{{Place: Place{Path: "piece.front"}, Cause: "has no edge", Hint: "give it one"}},
			"piece.front: has no edge\nhint: give it one"},
		{"nowhere", List{{Cause: "the length is empty"}}, "the length is empty"},
		{"several", List{{Place: file.Under("title").On(1), Cause: "is empty", Hint: "write it"}, {Place: file.Under("size").On(2), Cause: "is empty"}},
			"linden.toml:1: title: is empty\nhint: write it\nlinden.toml:2: size: is empty"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Equal(t, tt.want, tt.all.Error())
		})
	}
}

func TestPlaceUnder(t *testing.T) {
	assert.Equal(t, Place{"linden.toml", "neck", 3}, Place{File: "linden.toml", Line: 3}.Under("neck"))
	for _, c := range []struct{ path, key, want string }{
		{"piece.front.edge", "neck-2_b", "piece.front.edge.neck-2_b"},
		{"piece.front.edge", "centre front", `piece.front.edge."centre front"`},
		{"piece.front.edge", "größe", `piece.front.edge."größe"`},
		{"piece", "", `piece.""`},
		{"piece", "a\nb", `piece."a\nb"`},
		{"piece", "a\n", `piece."a\n"`},
	} {
		assert.Equal(t, c.want, Place{Path: c.path}.Under(c.key).Path)
	}
}

// Whoever first knows the place says it.
func TestFaultAt(t *testing.T) {
	neck, hem := Place{"linden.toml", "piece.front.edge.neck", 31}, Place{"linden.toml", "piece.front.edge.hem", 40}
	bare := &Fault{Cause: "the length is empty", Hint: "write one"}
	placed := At(neck, bare)
	assert.Equal(t, &Fault{Place: neck, Cause: "the length is empty", Hint: "write one"}, placed)
	assert.Equal(t, Place{}, bare.Place, "the fault that was handed in is changed")
	assert.Equal(t, placed, At(hem, placed))
	assert.Equal(t, placed, At(neck, fmt.Errorf("reading: %w", bare)))
	assert.Equal(t, &Fault{Place: hem, Cause: "no more room"}, At(hem, errors.New("no more room")))
}
