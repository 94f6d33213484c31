package lay

import (
	"math"
	"strings"
	"testing"

	"tuckmark/marking/sketch/made"
)

// leastLength is a length in mm that no lay of things can be shorter than: all their area
// over the width of the cloth, or the longest of them (derived).
func leastLength(items []item, width float64) float64 {
	area, longest := 0.0, 0.0
	for _, i := range items {
		if !i.isLaid() {
			continue
		}
		whole := i.opened()
		area += float64(i.count*i.garments) * math.Abs(whole.path.Area())
		longest = max(longest, whole.length)
	}
	return max(area/width, longest)
}

// How long the lay of every example is, beside what none can be shorter than.
func BenchmarkLayOfExamples(b *testing.B) {
	for _, name := range made.Examples(b) {
		b.Run(strings.TrimSuffix(name, ".toml"), func(b *testing.B) {
			p := made.Example(b, name)
			items := itemsOf(p)
			var lay Lay
			for b.Loop() {
				lay = layOut(items, p.ClothWidth)
			}
			least := leastLength(items, p.ClothWidth)
			b.ReportMetric(lay.Length/25.4, "in")
			b.ReportMetric(lay.Length/least, "of-the-least")
		})
	}
}
