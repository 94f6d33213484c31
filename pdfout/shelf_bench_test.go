package pdfout

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// manyPoints are n small pieces whose outlines have 2,000 points each. The
// twelfth on a page would leave no room for its check square, so that every
// piece is tried on every page.
func manyPoints(n int) []piece {
	var small []piece
	for i := range n {
		m := wave(fmt.Sprint(i), 34-float64(i%7)/10, 29-float64(i%5)/10, 2000)
		small = append(small, newPiece(m))
	}
	return small
}

func benchmarkPack(b *testing.B, n int) {
	small := manyPoints(n)
	window := plane.Point{X: 194.7, Y: 248.2}
	for b.Loop() {
		sheets, _ := packedSheets(small, grid{rows: 1, columns: 1, window: window}, 30)
		require.NotEmpty(b, sheets)
	}
}

func BenchmarkPack50(b *testing.B)  { benchmarkPack(b, 50) }
func BenchmarkPack200(b *testing.B) { benchmarkPack(b, 200) }
