package source

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
)

// Rules of this file: some words of the trade are no keys, for what they name is written
// by keys of other names. Whoever writes such a word is told which.

// inPiece are words for what is folded back at an edge, or lies or is cut within a piece.
var inPiece = []string{"placket", "slash", "slit", "vent", "opening", "facing", "cut", "cutting", "dart", "casing", "pocket", "button", "buttonhole"}

// isInPiece reports whether a word is one of those, alone, as several, or as a line.
func isInPiece(word string) bool {
	word = strings.TrimSuffix(strings.TrimSuffix(word, "s"), "line")
	return slices.Contains(append(inPiece, "fold", "stitch", "stitching"), word)
}

// writtenOtherwise is the hint for a key that is not known in a table, where it is such a
// word; else "". known are the keys of the table.
func writtenOtherwise(table fault.Place, key string, known []string) string {
	word := strings.NewReplacer("-", "", "_", "", " ", "").Replace(strings.ToLower(key))
	isPiece := slices.Contains(known, "edge") && slices.Contains(known, "line")
	isEdge := slices.Contains(known, "hem") && slices.Contains(known, "points")
	switch {
	case slices.Contains(known, strings.TrimSuffix(word, "s")):
		return "" // it is that key, and a slip
	case word == "seamallowance" && slices.Contains(known, "allowance"):
		return `it is called allowance here: allowance = "3/8"`
	case isPiece && slices.Contains([]string{"hem", "turn", "allowance", "seamallowance"}, word):
		return fmt.Sprintf("it belongs to an edge of the piece, under [%s.NAME]", table.Under("edge").Key)
	case isPiece && isInPiece(word):
		return fmt.Sprintf("what is folded back at an edge is the hem of that edge (hem, turn); what lies or is cut within the piece is a line: write [%s] and its points below it",
			table.Under("line").Under(key).Key)
	case isEdge && slices.Contains([]string{"fold", "folded", "onfold", "onthefold"}, word):
		return `the edge that lies on the fold of the cloth is named in its piece, above the edges: fold = "centre front"`
	case isEdge && isInPiece(word):
		return "what is folded back at this edge is its hem: hem = 1, and turn for what is turned in"
	}
	return ""
}
