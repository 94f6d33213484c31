package pdfout

import (
	"cmp"
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file: a piece larger than a page is laid under a grid where it
// takes the fewest pages; of such places where the fewest short marks are cut
// at a join line; of those where the least line runs along join lines; of those
// where it lies at the lower left of its grid, which leaves the room beside it
// in one part. The grid may lie anywhere within one pitch, so that it may have a
// column or a row more than the smallest one and still print fewer pages. Every
// row and every column of it has a page that is printed.

// shortMark is the length, in mm, up to which a line is a short mark: a notch, a
// cross, a small arrow. In two halves on two pages it is easily sewn over.
const shortMark = 20.0

// placing is a grid laid over a piece, and what it costs.
type placing struct {
	grid  grid
	cells []cell // those that are printed, the bridges among them
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
func (g grid) over(p piece, step plane.Point) grid {
	room := p.room().Add(step)
	g.columns = windowsFor(room.X, g.window.X, g.overlap)
	g.rows = windowsFor(room.Y, g.window.Y, g.overlap)
	g.origin = p.bounds.Min.Sub(step).Sub(plane.Point{X: spare, Y: spare})
	return g
}

// evenly is the smallest grid over the piece, with what it has more than the piece
// needs shared out evenly between its sides.
func (g grid) evenly(p piece) grid {
	g = g.over(p, plane.Point{})
	slack := g.box().Max.Sub(g.origin).Sub(p.room())
	g.origin = g.origin.Sub(slack.Mul(0.5))
	return g
}

// hopeless reports whether no other placing of the grid can print MaxPages or fewer:
// a page of one lies on at most four of another, and there are no fewer pages that
// hang together than there are rows and columns, less one.
func (a placing) hopeless() bool {
	return len(a.cells) > 4*MaxPages || a.grid.rows+a.grid.columns > MaxPages+2
}

// place returns where a grid of such pages is best laid over the piece, and
// whether its pages were all counted.
func place(p piece, page grid) (placing, bool) {
	tender := tenderOf(p.lines)
	best, counted := tender.under(page.evenly(p), p.lines)
	if !counted || best.hopeless() {
		return best, counted
	}
	found := newRaster(p, page, tender).best(p, page, tender)
	if other, counted := tender.under(found, p.lines); counted && other.compare(best) <= 0 {
		return other, true
	}
	return best, true
}

// tender is what of a piece is better not met by a join line: short marks, which
// it would cut, and what runs along those of columns (up) and of rows (across).
type tender struct {
	short      []line
	up, across []stretch
}

// stretch is a part of a line that runs along the joins of columns or of rows:
// how far across or up it lies, and how long it is.
type stretch struct{ at, length float64 }

// steep is the rise over run, or the run over rise, up to which a line counts as
// running along a join line.
const steep = 0.02

// tenderOf returns what of the lines is tender.
func tenderOf(lines []line) tender {
	var t tender
	for _, l := range lines {
		if l.clip.Length() <= shortMark {
			t.short = append(t.short, l)
		}
		p := l.clip.Path()
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

// under says what a grid laid over lines, and what is tender of them, costs, and
// whether its pages were all counted. Where they are more than MaxPages, nothing
// else is reckoned.
func (t tender) under(g grid, lines []line) (placing, bool) {
	cells, counted := g.crossed(lines)
	if !counted || len(cells) > MaxPages {
		return placing{grid: g, cells: cells, along: math.Inf(1)}, counted
	}
	return placing{g, joinable(cells), t.cuts(g), t.alongJoins(g)}, true
}

// joinable returns the cells with those that bridge them; more than MaxPages as they
// are.
func joinable(cells []cell) []cell {
	if len(cells) > MaxPages || connected(cells) {
		return cells
	}
	return bridged(cells)
}

// cuts counts the short marks that are not whole within the join lines of one
// page.
func (t tender) cuts(g grid) int {
	n := 0
	for _, l := range t.short {
		left, right := g.columnsOf(l.bounds.Min.X, l.bounds.Max.X)
		top, bottom := g.rowsOf(l.bounds.Min.Y, l.bounds.Max.Y)
		if left != right || top != bottom {
			n++
		}
	}
	return n
}

// alongJoins is the length of line, in mm, that runs along a join line and
// within the overlap: a line that would be cut along, or end up under paste.
func (t tender) alongJoins(g grid) float64 {
	near := func(v, pitch float64, count int) bool {
		k := math.Round((v - g.overlap/2) / pitch)
		return k > 0 && k < float64(count) && math.Abs(v-g.overlap/2-k*pitch) < g.overlap/2
	}
	sum := 0.0
	for _, s := range t.up {
		if near(s.at-g.origin.X, g.pitch().X, g.columns) {
			sum += s.length
		}
	}
	for _, s := range t.across {
		if near(s.at-g.origin.Y, g.pitch().Y, g.rows) {
			sum += s.length
		}
	}
	return sum
}

const (
	// rasterMost is how many places are tried across a pitch and up it where
	// the work allows it: some 6 mm from one to the next.
	rasterMost = 32
	// rasterWork bounds that work: looking at a bin, at a short mark or at a
	// stretch for one place is a step each.
	rasterWork = 4_000_000
)

// raster tells for a piece which pages a grid prints that begins at any of n by n
// places within a pitch: each pitch is cut into n bins across and n up, so that
// every page of these grids is a block of whole bins.
type raster struct {
	n     int
	bins  []cell // with a line, row by row; row 0 is the lowest
	pitch plane.Point
}

// newRaster returns the finest raster of a piece that is not too much work.
func newRaster(p piece, page grid, t tender) raster {
	smallest, pitch := page.over(p, plane.Point{}), page.pitch()
	for n := rasterMost; ; n /= 2 {
		fine := grid{columns: n * (smallest.columns + 1), rows: n * (smallest.rows + 1), window: pitch.Mul(1 / float64(n))}
		// The first join line of a grid lies half an overlap and a pitch
		// from where it begins.
		fine.origin = smallest.origin.Add(plane.Point{X: page.overlap / 2, Y: page.overlap / 2})
		bins, counted := fine.crossed(p.lines)
		if n > 1 && (!counted || n*n*(len(bins)+len(t.short)+len(t.up)+len(t.across)) > rasterWork) {
			continue
		}
		for i, b := range bins {
			bins[i].row = fine.rows - 1 - b.row
		}
		return raster{n, bins, pitch}
	}
}

// best returns the grid that costs least, at the first place of those where it does.
func (r raster) best(p piece, page grid, t tender) grid {
	best := placing{grid: page.over(p, plane.Point{})}
	fewest := math.MaxInt // pages of best
	for x := range r.n {
		strips := r.strips(page.over(p, r.step(x, 0)), x)
		for y := range r.n {
			tried := placing{grid: page.over(p, r.step(x, y))}
			tried.cells = r.pages(tried.grid, strips, y)
			if len(tried.cells) > fewest {
				continue
			}
			tried.cut, tried.along = t.cuts(tried.grid), t.alongJoins(tried.grid)
			if fewest < math.MaxInt && tried.compare(best) >= 0 {
				continue // bridges do not make it better
			}
			tried.cells = joinable(readingOrder(tried.cells))
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

// strips returns what of the columns of a grid, in rows of bins, has a line; the
// grid begins so many bins to the left of the piece's room. pages returns the pages
// these lie on where it begins so many below.
func (r raster) strips(g grid, left int) []cell {
	return merged(r.bins, g.columns, func(b cell) cell { return cell{b.row, min(g.columns-1, (b.column+left)/r.n)} })
}

func (r raster) pages(g grid, strips []cell, below int) []cell {
	return merged(strips, g.columns, func(s cell) cell { return cell{g.rows - 1 - min(g.rows-1, (s.row+below)/r.n), s.column} })
}

// merged returns into which cells some others come, each once. These lie row by row,
// and come into rows one after the other.
func merged(cells []cell, columns int, to func(cell) cell) []cell {
	var into []cell
	seen := make([]int, columns) // in which row, counted from 1, a column was last seen
	for _, c := range cells {
		if c = to(c); seen[c.column] != c.row+1 {
			seen[c.column] = c.row + 1
			into = append(into, c)
		}
	}
	return into
}
