package sketch

import (
	"fmt"
	"strings"
)

func Swap(text string, change ...string) string { return strings.NewReplacer(change...).Replace(text) }

// Front turns such a text into a file with one piece, "front".
func Front(text string) string {
	outline, rest, _ := strings.Cut(text, "---\n")
	var b strings.Builder
	head, edges := "", ""
	for _, line := range strings.Split(strings.TrimSpace(outline), "\n") {
		key, points, isEdge := strings.Cut(strings.TrimSpace(line), ":")
		if !isEdge {
			head += line + "\n"
			continue
		}
		points, extra, _ := strings.Cut(points, "|")
		var list []string
		for _, p := range strings.Fields(points) {
			list = append(list, "["+p+"]")
		}
		edges += fmt.Sprintf("[piece.front.edge.%q]\npoints = [%s]\n%s\n", key, strings.Join(list, ", "), strings.ReplaceAll(strings.TrimSpace(extra), "; ", "\n"))
	}
	fmt.Fprintf(&b, "[piece.front]\n%s%s%s", head, edges, strings.ReplaceAll(rest, "\n[", "\n[piece.front."))
	return b.String()
}

// HasLetter stands in for the sheets' font: it lacks thirds and the scissors.
func HasLetter(r rune) bool { return !strings.ContainsRune("⅓⅔✂", r) }

// PieceOf writes a piece of that key from a sketch.
func PieceOf(key, text string) string {
	return strings.ReplaceAll(Front(text), "piece.front", "piece."+key) + "\n"
}

// SewnOf writes a file with an allowance for every edge, pieces, and one seam, whose keys
// stand in a text.
func SewnOf(allowance, seam string, pieces ...string) string {
	return "unit = \"in\"\nallowance = " + allowance + "\n" + strings.Join(pieces, "") + "[seam.s]\n" + seam + "\n"
}

// Joined writes a file with two sketches, "front" and "back", and one seam.
func Joined(allowance, front, back, seam string) string {
	return SewnOf(allowance, seam, PieceOf("front", front), PieceOf("back", back))
}
