package sketch

import (
	"fmt"
	"strings"

	"tuckmark/marking/plane"
)

// Inches writes a path in inches, to a thousandth, as the sketches are
// written.
func Inches(p plane.Path) string {
	var words []string
	for _, q := range p {
		words = append(words, Number(q.X/25.4)+","+Number(q.Y/25.4))
	}
	return strings.Join(words, " ")
}

func Number(v float64) string {
	s := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.3f", v), "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}
