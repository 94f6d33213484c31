package pdfout

import (
	"cmp"
	"math"
	"math/bits"
	"slices"

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
// a step to the left of the piece's room and below it.
func (g grid) over(p piece, step plane.Point) grid {
	room := p.room().Add(step)
	g.columns = windowsFor(room.X, g.window.X, g.overlap)
	g.rows = windowsFor(room.Y, g.window.Y, g.overlap)
	g.origin = p.bounds.Min.Sub(step).Sub(plane.Point{X: spare, Y: spare})
	return g
}

// tight reports whether a box reaches into the outer rows and columns. Where the
// overlap is narrower than twice what is spared, a grid over a piece may have
// one that the piece itself does not reach.
func (g grid) tight(b plane.Box) bool {
	left, right := g.columnsOf(b.Min.X, b.Max.X)
	top, bottom := g.rowsOf(b.Min.Y, b.Max.Y)
	return left == 0 && right == g.columns-1 && top == 0 && bottom == g.rows-1
}

// place returns where a grid of such pages is best laid over the piece, and
// whether its pages were all counted.
func place(p piece, page grid) (placing, bool) {
	smallest := page.over(p, plane.Point{})
	slack := smallest.box().Max.Sub(smallest.origin).Sub(p.room())
	r := newRaster(p, smallest)
	if r == nil {
		return placeFew(p, smallest, slack)
	}
	smallest.origin = smallest.origin.Sub(slack.Mul(0.5))
	best, counted := p.under(smallest)
	if !counted {
		return best, false
	}
	for _, s := range r.best(p, page) {
		if other, counted := p.under(page.over(p, r.step(s))); counted && other.compare(best) <= 0 {
			best = other
		}
	}
	return best, true
}

// under says what a grid laid over the piece costs, and whether its pages were
// all counted. Where they are more than MaxPages, nothing else is reckoned.
func (p piece) under(g grid) (placing, bool) {
	cells, counted := g.crossed(p.lines)
	if !counted || len(cells) > MaxPages {
		return placing{grid: g, cells: cells, along: math.Inf(1)}, counted
	}
	return placing{g, joinable(cells), g.cuts(p.lines), g.alongJoins(p.lines)}, true
}

// joinable returns the cells with those that bridge them.
func joinable(cells []cell) []cell {
	if connected(cells) {
		return cells
	}
	return bridged(cells)
}

// cuts counts the short marks that are not whole within the join lines of one
// page.
func (g grid) cuts(lines []line) int {
	n := 0
	for _, l := range lines {
		if l.short() && (g.cutsAcross(l) || g.cutsUp(l)) {
			n++
		}
	}
	return n
}

// short reports whether the line is a short mark.
func (l line) short() bool { return l.clip.Length() <= shortMark }

// cutsAcross reports whether the line lies in more than one column, and cutsUp
// whether it lies in more than one row.
func (g grid) cutsAcross(l line) bool {
	first, last := g.columnsOf(l.bounds.Min.X, l.bounds.Max.X)
	return first != last
}

func (g grid) cutsUp(l line) bool {
	first, last := g.rowsOf(l.bounds.Min.Y, l.bounds.Max.Y)
	return first != last
}

// steep is the rise over run, or the run over rise, up to which a line counts as
// running along a join line.
const steep = 0.02

// stretch is a part of a line that runs along the joins of columns or of rows:
// how far across or up it lies, and how long it is.
type stretch struct{ at, length float64 }

// stretches returns what of the lines runs along the joins of columns and of
// rows.
func stretches(lines []line) (up, across []stretch) {
	for _, l := range lines {
		p := l.clip.Path()
		for i := 1; i < len(p); i++ {
			step := p[i].Sub(p[i-1])
			switch dx, dy := math.Abs(step.X), math.Abs(step.Y); {
			case dx < steep*dy:
				up = append(up, stretch{p[i].X, step.Length()})
			case dy < steep*dx:
				across = append(across, stretch{p[i].Y, step.Length()})
			}
		}
	}
	return up, across
}

// alongJoins is the length of line, in mm, that runs along a join line and
// within the overlap: a line that would be cut along, or end up under paste.
func (g grid) alongJoins(lines []line) float64 {
	near := func(v, pitch float64, count int) bool {
		k := math.Round((v - g.overlap/2) / pitch)
		return k > 0 && k < float64(count) && math.Abs(v-g.overlap/2-k*pitch) < g.overlap/2
	}
	up, across := stretches(lines)
	sum := 0.0
	for _, s := range up {
		if near(s.at-g.origin.X, g.pitch().X, g.columns) {
			sum += s.length
		}
	}
	for _, s := range across {
		if near(s.at-g.origin.Y, g.pitch().Y, g.rows) {
			sum += s.length
		}
	}
	return sum
}

// gridTrials bounds the work of placing a grid over a piece too large for a
// raster: how many segments are looked at in all.
const gridTrials = 50_000

// shares returns how to share out between its two sides what a grid has more
// than the piece needs, evenly first.
func shares(segments int) []float64 {
	all := []float64{0.5, 0.3, 0.7, 0.4, 0.6, 0.2, 0.8, 0.1, 0.9}
	n := len(all)
	for n > 1 && n*n*segments > gridTrials {
		n -= 2
	}
	return all[:n]
}

// hopeless is how many times MaxPages a placing of the grid may print before no
// other is tried: a page of one placing lies on at most four of another, so that
// none can print less than a quarter as many.
const hopeless = 4

// placeFew is place for a piece too large for a raster, under the smallest grid,
// which has some slack: it tries a few ways to share that out.
func placeFew(p piece, smallest grid, slack plane.Point) (placing, bool) {
	var best placing
	counted := false
	low := smallest.origin
	some := shares(segments(p.lines))
	for _, x := range some {
		for _, y := range some {
			g := smallest
			g.origin = low.Sub(plane.Point{X: x * slack.X, Y: y * slack.Y})
			other, all := p.under(g)
			switch {
			case !counted && !all:
				return other, false
			case !all:
				return best, true
			case !counted || g.tight(p.bounds) && other.compare(best) < 0:
				best, counted = other, true
			}
			if len(other.cells) > hopeless*MaxPages {
				return best, true
			}
		}
	}
	return best, counted
}

// segments counts the points of lines, which are a few more than the segments.
func segments(lines []line) int {
	n := 0
	for _, l := range lines {
		n += len(l.clip.Path())
	}
	return n
}

const (
	// rasterMost is how many places are tried across a pitch and up it where
	// the work allows it: some 6 mm from one to the next. Where it allows
	// fewer than rasterLeast, there is no raster.
	rasterMost  = 32
	rasterLeast = 8
	// rasterWork bounds that work: entering a bin, adding it up and counting
	// a page of a placing are a step each.
	rasterWork = 1_000_000
	// mostBridged bounds how many placings are looked at whose pages do not
	// hang together.
	mostBridged = 32
)

// raster tells for a piece how many pages a grid prints that begins at any of n
// by n places within a pitch: each pitch is cut into n bins across and n up, so
// that every page of these grids is a block of whole bins.
type raster struct {
	n    int
	bins grid
	// sums holds at (column, row), counted from the lower left, how many bins
	// below and to the left of there have a line.
	sums  []int32
	pitch plane.Point
}

// shift is one of the places of a raster: how many bins the grid begins to the
// left of the piece's room and below it.
type shift struct{ x, y int }

// step is a shift in mm.
func (r *raster) step(s shift) plane.Point {
	return plane.Point{X: float64(s.x) * r.pitch.X / float64(r.n), Y: float64(s.y) * r.pitch.Y / float64(r.n)}
}

// newRaster returns the raster of a piece that the smallest grid covers; nil
// where that would be too much work.
func newRaster(p piece, smallest grid) *raster {
	pitch := smallest.pitch()
	entered, short := 0.0, 0 // entered is how many pitches lines run across and up
	for _, l := range p.lines {
		path := l.clip.Path()
		for i := 1; i < len(path); i++ {
			step := path[i].Sub(path[i-1])
			entered += math.Abs(step.X)/pitch.X + math.Abs(step.Y)/pitch.Y
		}
		if l.short() {
			short++
		}
	}
	pages := float64(smallest.columns+1) * float64(smallest.rows+1)
	n := rasterMost
	for ; n >= rasterLeast; n-- {
		k := float64(n)
		if float64(segments(p.lines))+k*entered+2*k*k*pages+2*k*float64(short) <= rasterWork {
			break
		}
	}
	if n < rasterLeast {
		return nil
	}
	r := &raster{n: n, pitch: pitch}
	fine := pitch.Mul(1 / float64(n))
	// The first join line of a grid lies half an overlap and a pitch from
	// where it begins.
	r.bins = grid{columns: n * (smallest.columns + 1), rows: n * (smallest.rows + 1), window: fine}
	r.bins.origin = smallest.origin.Add(plane.Point{X: smallest.overlap / 2, Y: smallest.overlap / 2})
	width := r.bins.columns + 1
	r.sums = make([]int32, width*(r.bins.rows+1))
	for _, l := range p.lines {
		r.bins.walk(l.clip.Path(), func(c cell) bool {
			r.sums[(r.bins.rows-c.row)*width+c.column+1] = 1
			return true
		})
	}
	for y := 1; y <= r.bins.rows; y++ {
		inRow := int32(0)
		for x := 1; x < width; x++ {
			inRow += r.sums[y*width+x]
			r.sums[y*width+x] = inRow + r.sums[(y-1)*width+x]
		}
	}
	return r
}

// sides returns between which bins the pages lie of a grid that begins at a
// shift; the outer ones have what lies beyond their join lines, too.
func (r *raster) sides(shift, pages, bins int) []int {
	sides := make([]int, pages+1)
	for k := 1; k < pages; k++ {
		sides[k] = min(bins, k*r.n-shift)
	}
	sides[pages] = bins
	return sides
}

// printed calls visit for every page with a line, from the lower left, of a grid
// whose pages lie between such bins.
func (r *raster) printed(columns, rows []int, visit func(column, row int)) {
	width := r.bins.columns + 1
	for row := 1; row < len(rows); row++ {
		low, high := rows[row-1]*width, rows[row]*width
		for column := 1; column < len(columns); column++ {
			left, right := columns[column-1], columns[column]
			if r.sums[high+right]-r.sums[high+left]-r.sums[low+right]+r.sums[low+left] > 0 {
				visit(column-1, row-1)
			}
		}
	}
}

// shifted is a shift of a raster with what it costs.
type shifted struct {
	shift
	pages, cut int
	along      float64
}

// best returns the shifts that may turn out to be the best for a piece, best
// first.
func (r *raster) best(p piece, page grid) []shift {
	columns, rows := r.axes(p, page)
	var all []shifted
	for x, c := range columns {
		for y, w := range rows {
			if !c.tight || !w.tight {
				continue
			}
			s := shifted{shift: shift{x, y}, along: math.Round(c.along + w.along)}
			r.printed(c.sides, w.sides, func(int, int) { s.pages++ })
			for i := range c.cut {
				s.cut += bits.OnesCount64(c.cut[i] | w.cut[i])
			}
			all = append(all, s)
		}
	}
	slices.SortStableFunc(all, func(a, b shifted) int {
		return cmp.Or(cmp.Compare(a.pages, b.pages), cmp.Compare(a.cut, b.cut), cmp.Compare(a.along, b.along))
	})
	// The first whose pages hang together is better than all that follow; one
	// before it may be better still, with its bridges.
	var found []shift
	fewest := math.MaxInt // pages, with bridges
	for i, s := range all {
		if i == mostBridged || s.pages >= fewest {
			break
		}
		var cells []cell
		height := len(rows[s.y].sides) - 1
		r.printed(columns[s.x].sides, rows[s.y].sides, func(column, row int) {
			cells = append(cells, cell{height - 1 - row, column})
		})
		if len(cells) > MaxPages || connected(readingOrder(cells)) {
			found = append(found, s.shift)
			break
		}
		if n := len(bridged(cells)); n <= fewest {
			fewest = n
			found = append(found, s.shift)
		}
	}
	return found
}

// axis is what a shift across, or up, costs for itself.
type axis struct {
	sides []int
	tight bool
	along float64
	cut   []uint64 // a bit for each short mark
}

// axes returns what all shifts across and up cost.
func (r *raster) axes(p piece, page grid) (columns, rows []axis) {
	var short []line
	for _, l := range p.lines {
		if l.short() {
			short = append(short, l)
		}
	}
	marks := func(cuts func(line) bool) []uint64 {
		set := make([]uint64, (len(short)+63)/64)
		for i, l := range short {
			if cuts(l) {
				set[i/64] |= 1 << (i % 64)
			}
		}
		return set
	}
	up, level := stretches(p.lines)
	upright, flat := summed(up), summed(level)
	for k := range r.n {
		g := page.over(p, r.step(shift{k, k}))
		left, right := g.columnsOf(p.bounds.Min.X, p.bounds.Max.X)
		columns = append(columns, axis{
			sides: r.sides(k, g.columns, r.bins.columns),
			tight: left == 0 && right == g.columns-1,
			along: upright.along(g.origin.X+g.overlap/2, g.pitch().X, g.columns, g.overlap/2),
			cut:   marks(g.cutsAcross),
		})
		top, bottom := g.rowsOf(p.bounds.Min.Y, p.bounds.Max.Y)
		rows = append(rows, axis{
			sides: r.sides(k, g.rows, r.bins.rows),
			tight: top == 0 && bottom == g.rows-1,
			along: flat.along(g.origin.Y+g.overlap/2, g.pitch().Y, g.rows, g.overlap/2),
			cut:   marks(g.cutsUp),
		})
	}
	return columns, rows
}

// lengths are stretches in the order of where they lie, with what all before
// each add up to.
type lengths struct {
	all  []stretch
	sums []float64
}

// summed sorts stretches and adds them up.
func summed(all []stretch) lengths {
	slices.SortStableFunc(all, func(a, b stretch) int { return cmp.Compare(a.at, b.at) })
	sums := make([]float64, len(all)+1)
	for i, s := range all {
		sums[i+1] = sums[i] + s.length
	}
	return lengths{all, sums}
}

// along is how much lies nearer than some mm to one of the joins of a count of
// pages; the first page begins at a place and its join is a pitch on.
func (l lengths) along(from, pitch float64, count int, near float64) float64 {
	before := func(v float64) float64 {
		i, _ := slices.BinarySearchFunc(l.all, v, func(s stretch, v float64) int { return cmp.Compare(s.at, v) })
		return l.sums[i]
	}
	sum := 0.0
	for k := 1; k < count; k++ {
		at := from + float64(k)*pitch
		sum += before(at+near) - before(at-near)
	}
	return sum
}
