// Package made is for tests only: patterns and pieces as they come out of a text, for the
// tests of rooms that work on checked ones. Nothing that is built into the program may
// import it. Tests of marking/garment and of the rooms below it can use it from outside
// their package only ("package piece_test").
//
//	made.go  patterns out of a text, and the examples
//	bib.go   one pattern twice: as the text of a file, and without a file
package made

import (
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"strconv"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// Pattern reads and checks the text of a file, which mistakes call pinafore.toml.
func Pattern(text string) (*garment.Pattern, error) {
	spec, err := source.Read("pinafore.toml", []byte(text), sketch.HasLetter)
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

// Beside returns the pattern of a text that names files of a folder, and has no mistake.
func Beside(t require.TestingT, text string, folder fs.FS) *garment.Pattern {
	spec, err := source.Reader{Printable: sketch.HasLetter, Folder: folder}.Read("pinafore.toml", []byte(text))
	require.NoError(t, err, "%s", text)
	pattern, err := garment.Check(spec)
	require.NoError(t, err, "%s", text)
	return pattern
}

// Front returns the pattern of a sketch, with an allowance for every edge, and its piece.
func Front(t require.TestingT, allowance, text string) (*piece.Piece, *garment.Pattern) {
	pattern := Of(t, "allowance = "+allowance+"\n"+sketch.Front(text))
	return &pattern.Pieces[0], pattern
}

// examples is the folder of the examples, from a room of marking.
var examples = filepath.Join("..", "..", "examples")

// Examples returns the names of the examples, for a test in a room of marking.
func Examples(t require.TestingT) []string {
	names, err := fs.Glob(os.DirFS(examples), "*.toml")
	require.NoError(t, err)
	require.NotEmpty(t, names)
	return names
}

// Example returns the pattern of one of them.
func Example(t require.TestingT, name string) *garment.Pattern {
	data, err := os.ReadFile(filepath.Join(examples, name))
	require.NoError(t, err)
	spec, err := source.Read(name, data, sketch.HasLetter)
	require.NoError(t, err)
	pattern, err := garment.Check(spec)
	require.NoError(t, err)
	return pattern
}

// Block returns the piece of a sketch that has a block, with allowances of 3/8 in, and its
// pattern.
func Block(t require.TestingT, text string) (*piece.Piece, *garment.Pattern) {
	p, pattern := Front(t, "0.375", text)
	require.NotNil(t, p.Block, "the piece has a block")
	return p, pattern
}

// Seam returns the only seam of the text of a file.
func Seam(t require.TestingT, text string) garment.Seam {
	seams := Of(t, text).Seams
	require.Len(t, seams, 1)
	return seams[0]
}

// SewnLengths writes how long the two sides of a seam are sewn, in inches, to four
// decimals.
func SewnLengths(s garment.Seam) string {
	length := func(side garment.SeamSide) string {
		return strconv.FormatFloat(math.Round(side.Sewn.MM/25.4*1e4)/1e4, 'f', -1, 64)
	}
	return length(s.Sides[0]) + " " + length(s.Sides[1])
}
