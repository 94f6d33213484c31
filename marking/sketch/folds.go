package sketch

import (
	"fmt"
	"strings"
)

// Tucked writes a set of touching tucks, "t", beside a line.
func Tucked(beside, width string, count int, first, rest string) string {
	return fmt.Sprintf("[tuck.t]\nbeside = %q\nwidth = %q\ncount = %d\nfirst = %q\ngap = 0\n%s\n", beside, width, count, first, rest)
}

// Rows writes tucks and pleats: "tuck yoke left 1/8 6 3/8" is six of 1/8 in beside
// "left", the first 3/8 in from it; what follows | is written as it stands.
func Rows(lines ...string) string {
	text := ""
	for _, line := range lines {
		line, more, _ := strings.Cut(line, "|")
		w := strings.Fields(line)
		size := "width"
		if w[0] == "pleat" {
			size = "depth"
		}
		text += fmt.Sprintf("\n[%s.%s]\nbeside = %q\n%s = %q\ncount = %s\nfirst = %q\n%s\n", w[0], w[1], w[2], size, w[3], w[4], w[5],
			asLines(more))
	}
	return text
}

// Tuck writes a set of tucks of that key beside an edge called "raw".
func Tuck(key, width string, count int, first, rest string) string {
	return fmt.Sprintf("\n[tuck.%s]\nbeside = \"raw\"\nwidth = %q\ncount = %d\nfirst = %q\n%s\n", key, width, count, first, rest)
}
