package sketch

import (
	"fmt"
	"strings"
)

// Front turns a sketch into a file with one piece, "front".
func Front(text string) string { return piece("front", text) }

// Piece writes a piece of that key from a sketch, for a file of several.
func Piece(key, text string) string { return piece(key, text) + "\n" }

func piece(key, text string) string {
	outline, rest, _ := strings.Cut(text, "---\n")
	head, edges := "", ""
	for _, line := range strings.Split(strings.TrimSpace(outline), "\n") {
		edge, points, isEdge := strings.Cut(strings.TrimSpace(line), ":")
		if !isEdge {
			head += line + "\n"
			continue
		}
		points, extra, _ := strings.Cut(points, "|")
		var list []string
		for _, p := range strings.Fields(points) {
			list = append(list, "["+p+"]")
		}
		edges += fmt.Sprintf("[piece.%s.edge.%q]\npoints = [%s]\n%s\n", key, edge, strings.Join(list, ", "), asLines(extra))
	}
	return fmt.Sprintf("[piece.%s]\n%s%s%s", key, head, edges, strings.ReplaceAll(rest, "\n[", "\n[piece."+key+"."))
}

// asLines writes what is parted by semicolons in lines of its own.
func asLines(text string) string {
	return strings.ReplaceAll(strings.TrimSuffix(strings.TrimSpace(text), ";"), "; ", "\n")
}

// Sewn writes a file with an allowance for every edge, pieces, and one seam, whose keys
// stand in a text.
func Sewn(allowance, seam string, pieces ...string) string {
	return "unit = \"in\"\nallowance = " + allowance + "\n" + strings.Join(pieces, "") + "[seam.s]\n" + seam + "\n"
}

// Joined writes a file with two sketches, "front" and "back", and one seam.
func Joined(allowance, front, back, seam string) string {
	return Sewn(allowance, seam, Piece("front", front), Piece("back", back))
}

// Swap returns a text with changes: pairs of what stands there and what is to.
func Swap(text string, change ...string) string { return strings.NewReplacer(change...).Replace(text) }

// HasLetter stands in for the sheets' font: it lacks thirds and the scissors.
func HasLetter(r rune) bool { return !strings.ContainsRune("⅓⅔✂", r) }
