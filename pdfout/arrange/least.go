package arrange

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: before large pieces are laid, which takes time, it is reckoned how many
// pages they need at least. The pages of a sheet hang together by their sides. So there is one of
// them in each column and in each row that its piece reaches into, and they are no fewer than
// these columns and rows are, less the one page that is the first of both.

// leastPagesOf is how many pages a piece needs at least, upright or turned, wherever the grid lies
// on it, by the bounds of its lines; 0 where it may lie on a page of others.
func leastPagesOf(p Piece, on paper.Paper) int {
	pages := []Grid{PageOf(on)}
	if other, ok := on.OtherWay(); ok {
		pages = append(pages, PageOf(other))
	}
	across, up := p.Bounds.Width()-2*sliver, p.Bounds.Height()-2*sliver
	least := math.MaxInt
	for _, page := range pages {
		for _, size := range []plane.Point{{X: across, Y: up}, {X: up, Y: across}} {
			columns := windowsFor(size.X, page.Window.X, page.Overlap)
			least = min(least, columns+windowsFor(size.Y, page.Window.Y, page.Overlap)-1)
		}
	}
	if least == 1 {
		return 0
	}
	return least
}
