package plane

import (
	"fmt"
	"math"
	"testing"
)

// The outline of a wavy piece, unfolded from under a field of tucks.
func BenchmarkUnfolded(b *testing.B) {
	for _, points := range []int{1_000, 10_000} {
		for _, folds := range []int{10, 100} {
			b.Run(fmt.Sprintf("%d points, %d folds", points, folds), func(b *testing.B) {
				outline := wavy(points)
				outline = append(outline, outline[0])
				width := outline.Bounds().Width() / float64(4*folds)
				var all []Fold
				for k := range folds {
					at := float64(k)*4*width + width
					all = append(all, Fold{At: at, Width: width, From: math.Inf(-1), To: math.Inf(1)})
				}
				folding := NewFolding(Point{outline.Bounds().Min.X, 0}, Point{1, 0}, all)
				for b.Loop() {
					folding.Unfolded(outline)
				}
			})
		}
	}
}
