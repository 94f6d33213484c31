package piece_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A row is called by its key and by what it makes, which the key may say itself.
func TestCalled(t *testing.T) {
	for _, c := range []struct {
		key          string
		count        int
		called, ends string
	}{
		{"yoke", 3, "yoke tucks", "yoke tucks end"},
		{"growth", 1, "growth tuck", "growth tuck ends"},
		{"pin tucks", 3, "pin tucks", "pin tucks end"},
		{"pintuck", 2, "pin tucks", "pin tucks end"},
		{"deep pintucks", 2, "deep pin tucks", "deep pin tucks end"},
		{"deep tucks", 1, "deep tuck", "deep tuck ends"},
		{"deep-tucks", 2, "deep tucks", "deep tucks end"},
		{"deep_tuck", 2, "deep tucks", "deep tucks end"},
		{"tucks", 4, "tucks", "tucks end"},
		{"stuck", 2, "stuck tucks", "stuck tucks end"},
		{"spin tucks", 2, "spin tucks", "spin tucks end"},
		{"spintucks", 2, "spintucks tucks", "spintucks tucks end"},
	} {
		row := piece.FoldRow{Makes: piece.TuckFolds, Key: c.key, Count: c.count}
		assert.Equal(t, c.called, row.Called(), c.key)
		assert.Equal(t, c.ends, row.Does("end"), c.key)
	}
}

// calledIn lists what the rows of a strip with these sets of two tucks, 2 in apart, are called.
func calledIn(t require.TestingT, keys []string) []string {
	var sets strings.Builder
	for i, key := range keys {
		fmt.Fprintf(&sets, "[tuck.%q]\nbeside = \"raw\"\nwidth = \"1/4\"\ncount = 2\nfirst = %d\nspacing = 1\n", key, 1+3*i)
	}
	pattern, err := made.Pattern("unit = \"in\"\nallowance = 0\n" + sketch.Front(strip+"\n"+sets.String()))
	require.NoError(t, err)
	var called []string
	for _, r := range pattern.Pieces[0].FoldRows() {
		called = append(called, r.Called())
	}
	return called
}

// Rows of a piece that would be called alike are told apart by their keys.
func TestNoTwoRowsAreCalledAlike(t *testing.T) {
	for _, c := range []struct{ keys, want []string }{
		{[]string{"pin", "pintuck"}, []string{"pin tucks", "pintuck tucks"}},
		{[]string{"pin tucks", "pin-tucks"}, []string{"pin tucks tucks", "pin-tucks tucks"}},
		{[]string{"deep tucks", "pintuck"}, []string{"deep tucks", "pin tucks"}},
		{[]string{"tuck", "tucks"}, []string{"tuck tucks", "tucks tucks"}},
	} {
		assert.Equal(t, c.want, calledIn(t, c.keys), "%q", c.keys)
	}
	keys := []string{"pin", "pintuck", "pintucks", "pin tuck", "pin-tucks", "pin tuck tuck", "pintuck tuck", "tuck", "tucks", "tuck tucks", "stuck"}
	rapid.Check(t, func(t *rapid.T) {
		some := rapid.Permutation(keys).Draw(t, "keys")[:rapid.IntRange(1, 8).Draw(t, "how many")]
		seen := map[string]bool{}
		for _, called := range calledIn(t, some) {
			assert.False(t, seen[called], "of %q two are called %q", some, called)
			seen[called] = true
		}
	})
}
