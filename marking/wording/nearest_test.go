package wording

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/agnivade/levenshtein"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
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

// What is looked for is near by as many letters as another library counts, and no others are.
func TestNearestIsAsNearAsTheLetters(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		word := rapid.StringOfN(rapid.RuneFrom([]rune("abcä")), 1, 12, -1)
		key, known := word.Draw(t, "key"), word.Draw(t, "known")
		a, b := []rune(key), []rune(known)
		want := min(levenshtein.ComputeDistance(key, known), 3)
		require.Equal(t, want, min(slips(a, b, 2), 3), "Levenshtein's distance of %q and %q", key, known)
		slices.Sort(a)
		slices.Sort(b)
		near := want <= 1 || slices.Equal(a, b) || want == 2 && len(b) > 3
		require.Equal(t, near, Nearest(key, []string{known}) != "", "%q is looked for, %q is known", key, known)
	})
}

// A key of 64 letters is compared, one of 65 is not, neither the one that is looked for nor the
// one that is known.
func TestNearestOfLongKeys(t *testing.T) {
	for _, letter := range []string{"x", "ä", "𝄞"} {
		long := strings.Repeat(letter, 63)
		assert.Equal(t, long+"b", Nearest(long+"a", []string{long + "b"}), "64 letters")
		assert.Empty(t, Nearest(long+"aa", []string{long + "a"}), "65 are looked for")
		assert.Empty(t, Nearest(long+"a", []string{long + "aa"}), "65 are known")
	}
}

// Looking through a thousand keys takes no room for each.
func TestNearestTakesNoRoom(t *testing.T) {
	known := func(n int) []string {
		all := make([]string, n)
		for i := range all {
			all[i] = strings.Repeat("x", 60) + strconv.Itoa(i)
		}
		return all
	}
	few, many := known(1), known(1000)
	taken := func(of []string) float64 {
		return testing.AllocsPerRun(5, func() { Nearest(strings.Repeat("y", 62), of) })
	}
	assert.Equal(t, taken(few), taken(many))
}
