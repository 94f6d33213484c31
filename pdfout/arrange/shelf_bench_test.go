package arrange

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
)

// manyPoints are n small pieces whose outlines have 2,000 points each. The
// twelfth on a page would leave no room for its check square, so that every
// piece is tried on every page.
func manyPoints(n int) []Piece {
	var small []Piece
	for i := range n {
		m := sample.Wave(fmt.Sprint(i), 34-float64(i%7)/10, 29-float64(i%5)/10, 2000)
		small = append(small, NewPiece(m))
	}
	return small
}

func benchmarkPack(b *testing.B, n int) {
	small := manyPoints(n)
	window := plane.Point{X: 194.7, Y: 248.2}
	for b.Loop() {
		sheets, _ := packedSheets(small, Grid{Rows: 1, Columns: 1, Window: window}, 30)
		require.NotEmpty(b, sheets)
	}
}

func BenchmarkPack50(b *testing.B) { benchmarkPack(b, 50) }

func BenchmarkPack200(b *testing.B) { benchmarkPack(b, 200) }
