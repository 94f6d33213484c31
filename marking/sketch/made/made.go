// Package made is for tests only: patterns and pieces as they come out of a text, for the
// tests of rooms that work on checked ones. Nothing that is built into the program may
// import it. Tests of marking/garment and of the rooms below it can use it from outside
// their package only ("package piece_test").
//
//	made.go  patterns out of a text, and the examples
//	bib.go   one pattern twice: as the text of a file, and without a file
package made

import (
	"os"
	"path/filepath"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// Pattern reads and checks the text of a file, which mistakes call linden.toml.
func Pattern(text string) (*garment.Pattern, error) {
	spec, err := source.Read("linden.toml", []byte(text), sketch.HasLetter)
	if err != nil {
		return nil, err
	}
	return garment.Check(spec)
}

// Of returns the pattern of a text that has no mistake.
func Of(t require.TestingT, text string) *garment.Pattern {
	pattern, err := Pattern(text)
	require.NoError(t, err, "%s", text)
	return pattern
}

// Front returns the pattern of a sketch, with an allowance for every edge, and its piece.
func Front(t require.TestingT, allowance, text string) (*piece.Piece, *garment.Pattern) {
	pattern := Of(t, "allowance = "+allowance+"\n"+sketch.Front(text))
	return &pattern.Pieces[0], pattern
}

// Example returns the pattern of one of the examples, for a test in a room of marking.
func Example(t require.TestingT, name string) *garment.Pattern {
	data, err := os.ReadFile(filepath.Join("..", "..", "examples", name))
	require.NoError(t, err)
	spec, err := source.Read(name, data, sketch.HasLetter)
	require.NoError(t, err)
	pattern, err := garment.Check(spec)
	require.NoError(t, err)
	return pattern
}
