package start

import (
	"strings"
	"unicode"

	"tuckmark/marking/length"
	"tuckmark/marking/source"
)

// Rules of this file: what cannot stand in a file is refused here, in the words in which it
// would be refused there.

// Answers are what a maker wants to begin with.
type Answers struct {
	Title  string
	Size   string
	Unit   length.Unit
	Pieces []string // as they will be called, in the order in which they come
}

// Usual are the answers of a maker who gives none, but for a title.
func Usual() Answers {
	return Answers{Size: "2 years", Unit: length.Inch, Pieces: []string{"front", "back", "sleeve"}}
}

// ReadPieces takes names apart that were given with commas between them. The error is a
// fault.List of all that a file could not have, each under the name; printable is
// as for source.Read. The first letter of each is printed as a capital.
func ReadPieces(said string, printable func(rune) bool) ([]string, error) {
	var names []string
	for name := range strings.SplitSeq(said, ",") {
		names = append(names, strings.TrimSpace(name))
	}
	inCapitalsToo := func(c rune) bool { return printable(c) && printable(unicode.ToUpper(c)) }
	if faults := source.CheckPieceNames(names, inCapitalsToo); len(faults) > 0 {
		return nil, faults.Sorted()
	}
	return names, nil
}
