package sketch

import (
	"math"
	"strings"

	"tuckmark/marking/plane"
)

// Picture draws paths in text, each in a character of inks: y runs up, a character is 1 mm
// wide and 2 mm high. Where paths lie on each other the last one is seen.
func Picture(inks string, paths ...plane.Path) string {
	bounds := plane.EmptyBox()
	for _, p := range paths {
		bounds = bounds.Union(p.Bounds())
	}
	rows := make([][]byte, int(math.Round(bounds.Height()/2))+1)
	for i := range rows {
		rows[i] = []byte(strings.Repeat(" ", int(math.Round(bounds.Width()))+1))
	}
	for i, p := range paths {
		tree := plane.NewTree(p)
		for along := 0.0; along <= tree.Length(); along += 0.05 {
			off := tree.At(along).Sub(bounds.Min)
			rows[len(rows)-1-int(math.Round(off.Y/2))][int(math.Round(off.X))] = inks[i]
		}
	}
	lines := make([]string, len(rows))
	for i, row := range rows {
		lines[i] = strings.TrimRight(string(row), " ")
	}
	return strings.Join(lines, "\n")
}
