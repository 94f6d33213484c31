package figures

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// Pieces in tests are written as short text: one edge a line, its key, then
// its points in inches, then what else the edge holds, such as
//
//	hem: 6,0 0,0 | hem = 2
//
// What follows a line of dashes is TOML, with [ under a piece short for
// [piece.front.

// check reads and checks a text.
func check(text string) (*garment.Pattern, error) {
	spec, err := source.Read("linden.toml", []byte(text), sketch.HasLetter)
	if err != nil {
		return nil, err
	}
	return garment.Check(spec)
}

// example reads and checks one of the examples.
func example(t testing.TB, name string) *garment.Pattern {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "examples", name))
	require.NoError(t, err)
	spec, err := source.Read(name, data, sketch.HasLetter)
	require.NoError(t, err)
	pattern, err := garment.Check(spec)
	require.NoError(t, err)
	return pattern
}

// inches writes lengths in inches alone.
var inches = writer{length.Inch, OwnUnit}
