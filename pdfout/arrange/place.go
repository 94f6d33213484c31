package arrange

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a piece larger than a page is laid under a grid where it
// takes the fewest pages; of such places where the fewest short marks are cut
// at a join line; of those where the least line runs along join lines; of those
// where it lies at the lower left of its grid, which leaves the room beside it
// in one part. The grid may lie anywhere within one pitch, so that it may have a
// column or a row more than the smallest one and still print fewer pages. Every
// row and every column of it has a page that is printed. Ruled paper begins in the lower
// left corner of its grid.

// shortMark is the length, in mm, up to which a line is a short mark: a notch, a
// cross, a small arrow. In two halves on two pages it is easily sewn over.
const shortMark = 20.0

// placing is a grid laid over a piece, and what it costs.
type placing struct {
	grid  Grid
	cells []Cell // those that are printed, the bridges among them
	cut   int    // short marks not whole within the join lines of one page
	along float64
}

// compare is below 0 where a placing is better than another, above 0 where it
// is worse. Less than a millimetre along joins counts as nothing.
func (a placing) compare(b placing) int {
	return cmp.Or(cmp.Compare(len(a.cells), len(b.cells)), cmp.Compare(a.cut, b.cut),
		cmp.Compare(math.Round(a.along), math.Round(b.along)))
}

// worthTurning reports whether a placing is so much better than another that the
// piece is turned for it: what runs along a join line is no reason.
func (a placing) worthTurning(b placing) bool {
	return cmp.Or(cmp.Compare(len(a.cells), len(b.cells)), cmp.Compare(a.cut, b.cut)) < 0
}

// over returns the grid of as few windows as cover the piece when it begins by
// a step to the left of the piece's room and below it. The piece reaches into its
// outer rows and columns, since no overlap is narrower than twice what is spared.
func (g Grid) over(p Piece, step plane.Point) Grid {
	room := p.Room().Add(step)
	g.Columns = windowsFor(room.X, g.Window.X, g.Overlap)
	g.Rows = windowsFor(room.Y, g.Window.Y, g.Overlap)
	g.origin = p.Corner().Sub(step)
	return g
}

// evenly is the smallest grid over the piece, with what it has more than the piece
// needs shared out evenly between its sides.
func (g Grid) evenly(p Piece) Grid {
	g = g.over(p, plane.Point{})
	slack := g.Box().Max.Sub(g.origin).Sub(p.Room())
	g.origin = g.origin.Sub(slack.Mul(0.5))
	return g
}

// mostOfPlacing is how many pages of a placing are counted: where there are more, no other placing
// of the grid can print MaxPages or fewer, since a page of one lies on at most four of another.
const mostOfPlacing = 4 * paper.MaxPages

// hopeless reports whether no other placing of the grid can print MaxPages or fewer: there are
// no fewer pages that hang together than there are rows and columns, less one.
func (a placing) hopeless() bool {
	return max(len(a.cells), a.grid.Rows+a.grid.Columns) > mostOfPlacing
}

// place returns where a grid of such pages is best laid over the piece, as far as so much work
// finds it.
func place(p Piece, page Grid, work int) placing {
	tender := tenderOf(p.Lines)
	if p.Kind.Ruled() {
		return tender.under(page.over(p, plane.Point{}), p.Lines)
	}
	best := tender.under(page.evenly(p), p.Lines)
	if best.hopeless() {
		return best
	}
	found := newRaster(p, page, tender, work).best(p, page, tender)
	if other := tender.under(found, p.Lines); other.compare(best) <= 0 {
		return other
	}
	return best
}

// tender is what of a piece is better not met by a join line: short marks, which
// it would cut, and what runs along those of columns (up) and of rows (across).
type tender struct {
	short      []Line
	up, across []stretch
}

// stretch is a part of a line that runs along the joins of columns or of rows:
// how far across or up it lies, and how long it is.
type stretch struct{ at, length float64 }

// steep is the rise over run, or the run over rise, up to which a line counts as
// running along a join line.
const steep = 0.02

// tenderOf returns what of the lines is tender.
func tenderOf(lines []Line) tender {
	var t tender
	for _, l := range lines {
		if l.Length() <= shortMark {
			t.short = append(t.short, l)
		}
		p := l.Path()
		for i := 1; i < len(p); i++ {
			step := p[i].Sub(p[i-1])
			switch dx, dy := math.Abs(step.X), math.Abs(step.Y); {
			case dx < steep*dy:
				t.up = append(t.up, stretch{p[i].X, step.Length()})
			case dy < steep*dx:
				t.across = append(t.across, stretch{p[i].Y, step.Length()})
			}
		}
	}
	return t
}

// under says what a grid laid over lines, and what is tender of them, costs. Where
// its pages are more than MaxPages, nothing else is reckoned.
func (t tender) under(g Grid, lines []Line) placing {
	cells := g.crossed(lines, mostOfPlacing)
	if len(cells) > paper.MaxPages {
		return placing{grid: g, cells: cells, along: math.Inf(1)}
	}
	return placing{g, joinable(cells), t.cuts(g), t.alongJoins(g)}
}

// joinable returns the cells with those that bridge them; more than MaxPages as they
// are.
func joinable(cells []Cell) []Cell {
	if len(cells) > paper.MaxPages || connected(cells) {
		return cells
	}
	return bridged(cells)
}

// cuts counts the short marks that are not whole within the join lines of one
// page.
func (t tender) cuts(g Grid) int {
	n := 0
	for _, l := range t.short {
		left, right := g.columnsOf(l.Bounds().Min.X, l.Bounds().Max.X)
		top, bottom := g.rowsOf(l.Bounds().Min.Y, l.Bounds().Max.Y)
		if left != right || top != bottom {
			n++
		}
	}
	return n
}

// alongJoins is the length of line, in mm, that runs along a join line and
// within the overlap: a line that would be cut along, or end up under paste.
func (t tender) alongJoins(g Grid) float64 {
	near := func(v, pitch float64, count int) bool {
		k := math.Round((v - g.Overlap/2) / pitch)
		return k > 0 && k < float64(count) && math.Abs(v-g.Overlap/2-k*pitch) < g.Overlap/2
	}
	sum := 0.0
	for _, s := range t.up {
		if near(s.at-g.origin.X, g.Pitch().X, g.Columns) {
			sum += s.length
		}
	}
	for _, s := range t.across {
		if near(s.at-g.origin.Y, g.Pitch().Y, g.Rows) {
			sum += s.length
		}
	}
	return sum
}

const (
	// rasterMost is how many places are tried across a pitch and up it where
	// the work allows it: some 6 mm from one to the next.
	rasterMost = 32
	// rasterOne bounds that work for one piece, and rasterAll for all of a set together: looking at
	// a bin, at a short mark or at a stretch for one place is a step each.
	rasterOne = 4_000_000
	rasterAll = 40_000_000
)

// rasterWork is how much work goes into the place of each of some pieces.
func rasterWork(pieces int) int { return min(rasterOne, rasterAll/max(1, pieces)) }

// raster tells for a piece which pages a grid prints that begins at any of n by n
// places within a pitch: each pitch is cut into n bins across and n up, so that
// every page of these grids is a block of whole bins.
type raster struct {
	n     int
	rows  int
	bins  []Cell // with a line; row 0 is the lowest
	pitch plane.Point
}

// newRaster returns the finest raster of a piece that is no more than so much work.
func newRaster(p Piece, page Grid, t tender, work int) raster {
	smallest, pitch := page.over(p, plane.Point{}), page.Pitch()
	for n := rasterMost; ; n = n * 3 / 4 {
		fine := Grid{Columns: n * (smallest.Columns + 1), Rows: n * (smallest.Rows + 1), Window: pitch.Mul(1 / float64(n))}
		// The first join line of a grid lies half an overlap and a pitch
		// from where it begins.
		fine.origin = smallest.origin.Add(plane.Point{X: page.Overlap / 2, Y: page.Overlap / 2})
		most := work/(n*n) - len(t.short) - len(t.up) - len(t.across) // of its bins
		if n == 1 {
			most = math.MaxInt
		} else if most < 0 {
			continue
		}
		bins := fine.crossed(p.Lines, most)
		if len(bins) > most {
			continue
		}
		for i, b := range bins {
			bins[i].Row = fine.Rows - 1 - b.Row
		}
		return raster{n, fine.Rows, bins, pitch}
	}
}

// best returns the grid that costs least, at the first place of those where it does.
func (r raster) best(p Piece, page Grid, t tender) Grid {
	best := placing{grid: page.over(p, plane.Point{})}
	fewest := math.MaxInt // pages of best
	var strips []int      // these and the pages are made anew for every place, where those of before were
	var pages []Cell
	for x := range r.n {
		strips = r.strips(strips, page.over(p, r.step(x, 0)), x)
		for y := range r.n {
			tried := placing{grid: page.over(p, r.step(x, y))}
			pages = r.pages(pages[:0], tried.grid, strips, y)
			if len(pages) > fewest {
				continue
			}
			tried.cells = pages
			tried.cut, tried.along = t.cuts(tried.grid), t.alongJoins(tried.grid)
			if fewest < math.MaxInt && tried.compare(best) >= 0 {
				continue // bridges do not make it better
			}
			tried.cells = joinable(readingOrder(slices.Clone(pages)))
			if fewest == math.MaxInt || tried.compare(best) < 0 {
				best, fewest = tried, len(tried.cells)
			}
		}
	}
	return best.grid
}

// step is how far so many bins are, in mm.
func (r raster) step(across, up int) plane.Point {
	return plane.Point{X: float64(across) * r.pitch.X / float64(r.n), Y: float64(up) * r.pitch.Y / float64(r.n)}
}

// strips returns for each column of a grid, one after the other, how many rows of bins below
// each row have a line in it; the grid begins so many bins to the left of the piece's room. They
// take the place of others.
func (r raster) strips(strips []int, g Grid, left int) []int {
	n := g.Columns * (r.rows + 1)
	strips = slices.Grow(strips[:0], n)[:n]
	clear(strips)
	for _, b := range r.bins {
		strips[min(g.Columns-1, (b.Column+left)/r.n)*(r.rows+1)+b.Row+1] = 1
	}
	for strip := range slices.Chunk(strips, r.rows+1) {
		for row := range r.rows {
			strip[row+1] += strip[row]
		}
	}
	return strips
}

// pages puts behind some cells those of a grid that have a line, where that begins so many bins
// below the piece's room.
func (r raster) pages(into []Cell, g Grid, strips []int, below int) []Cell {
	for row := range g.Rows {
		low, high := min(r.rows, max(0, row*r.n-below)), min(r.rows, (row+1)*r.n-below)
		if row == g.Rows-1 {
			high = r.rows
		}
		for column := range g.Columns {
			if strip := strips[column*(r.rows+1):]; strip[high] > strip[low] {
				into = append(into, Cell{g.Rows - 1 - row, column})
			}
		}
	}
	return into
}
