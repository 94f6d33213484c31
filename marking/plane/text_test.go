package plane

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Geometry in tests is written as short text: "0,0 10,0 10,5" is a path of
// three points, in mm.

// path reads such a text.
func path(t testing.TB, text string) Path {
	t.Helper()
	var p Path
	for _, word := range strings.Fields(text) {
		x, y, found := strings.Cut(word, ",")
		require.True(t, found, "point %q has no comma", word)
		px, err := strconv.ParseFloat(x, 64)
		require.NoError(t, err)
		py, err := strconv.ParseFloat(y, 64)
		require.NoError(t, err)
		p = append(p, Point{px, py})
	}
	return p
}

// text writes a path as such a text, to a thousandth.
func text(p Path) string {
	words := make([]string, len(p))
	for i, q := range p {
		words[i] = short(q.X) + "," + short(q.Y)
	}
	return strings.Join(words, " ")
}

func short(v float64) string {
	s := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.3f", v), "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}
