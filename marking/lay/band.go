package lay

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file:
//
//   - A band of the plane stands on y = 0, between x = 0 and its width. Shapes are
//     put into it one after another, and never moved again.
//   - The band is divided into columns. Of each it is known from where to where it is
//     taken; all the rest is free, also what lies between shapes or in a bay of one.
//   - A shape stands with its left side on the side of a column. It takes of a column
//     what it reaches anywhere in it: shapes never overlap, but may lie a column farther
//     apart than they need.
//   - The clearance is kept in x or in y, so that shapes lie at least that far
//     apart every way. None is kept to the sides of the band, to y = 0, or to the
//     ceiling where there is one.

const (
	// flush bounds how far, in mm, a shape may reach over the side of a column or
	// of the band, over its ceiling or into what is taken, and still lie beside it, and
	// by how little one place lies no lower than another: far above rounding, far below
	// what can be cut. Shapes may come nearer than their clearance by twice so much.
	flush = 1e-6

	// mostColumns bounds how many columns a band is divided into, however wide.
	mostColumns = 4096

	// mostLooks bounds how often columns are looked at before the gaps between shapes are
	// closed: some hundred shapes of all sizes, or thousands that are alike. So the time
	// that a thousand take is that of a few hundred, over and over.
	mostLooks = 2_000_000

	// mostLookedInAll bounds how often columns are looked at before shapes begin in every
	// coarsely-th of them alone, where there are more than fewShapes: thousands that are all unlike
	// take no more time than hundreds.
	mostLookedInAll = 6_000_000
	coarsely        = 32
	fewShapes       = 100
)

// band is a band of the plane that is filled from below. Use newBand.
type band struct {
	width, step, clear float64
	beside             int      // columns that the clearance takes beside a shape
	floor, ceiling     float64  // the y between which anything lies
	taken              [][]rise // of each column, from below, the clearance and all
	// known is how low a shape lies at least, by the column in which it begins. Nothing is
	// ever taken out, so that it is true for good: of many that are alike each is looked
	// for only where the one before it left room.
	known map[*profile][]float64
	// looks is how often a column was looked at since the gaps were closed last, and looked
	// how often before that.
	looks, looked int
}

// newBand returns an empty band of a width in which shapes keep a clearance. Its
// columns are finest wide, or wider where those would be too many. All are in mm;
// width and finest are above 0, and clear is not below 0.
func newBand(width, finest, clear float64) *band {
	step := max(finest, width/mostColumns)
	return &band{
		width:   width,
		step:    step,
		clear:   clear,
		beside:  int(math.Ceil((clear - flush) / step)),
		ceiling: math.Inf(1),
		taken:   make([][]rise, int(math.Ceil(width/step))),
		known:   map[*profile][]float64{},
	}
}

// like returns an empty band of another width, in mm, above 0 and no greater than
// that of this one. It has columns and a clearance like these, so that a profile made
// for one is good for both, but no ceiling.
func (b *band) like(width float64) *band { return newBand(width, b.step, b.clear) }

// clone returns a copy of the band. What is put into one is not in the other.
func (b *band) clone() *band {
	c := *b
	c.known = map[*profile][]float64{}
	c.taken = make([][]rise, len(b.taken))
	for k, column := range b.taken {
		c.taken[k] = slices.Clone(column)
	}
	return &c
}

// fits reports whether something of a width, in mm, fits into the band at all.
func (b *band) fits(width float64) bool { return width <= b.width+flush }

// fillTo takes the whole band up to y, in mm.
func (b *band) fillTo(y float64) { b.floor = max(b.floor, y) }

// closeAt gives the band a ceiling at y, in mm, over which nothing put in later
// reaches. What lies there already stays.
func (b *band) closeAt(y float64) { b.ceiling = min(b.ceiling, y) }

// lowest returns where a shape can be put so that it lies lowest, as the lower left
// corner of its box: of places equally low the leftmost. It is false where there is
// none lower than below, which may be infinite, or none under the ceiling, and where
// the shape is wider than the band.
func (b *band) lowest(p *profile, below float64) (at plane.Point, ok bool) {
	if !b.fits(p.width) {
		return plane.Point{}, false
	}
	last := int(math.Floor((b.width - p.width + flush) / b.step))
	return b.lowestUpTo(p, max(0, min(last, len(b.taken)-len(p.columns))), below)
}

// lowestAtLeft is lowest for a shape that must lie at the left side of the band.
func (b *band) lowestAtLeft(p *profile, below float64) (at plane.Point, ok bool) {
	if !b.fits(p.width) {
		return plane.Point{}, false
	}
	return b.lowestUpTo(p, 0, below)
}

// lowestUpTo looks at the columns up to the last one in which the shape may begin.
func (b *band) lowestUpTo(p *profile, last int, below float64) (at plane.Point, ok bool) {
	below = min(below, b.ceiling-p.height+2*flush)
	known := b.known[p]
	if len(known) <= last {
		known = make([]float64, last+1)
		b.known[p] = known
	}
	// The likeliest is looked at first: what is no lower than that need not be looked at.
	step, likely := 1, 0
	if b.looked > mostLookedInAll && len(b.known) > fewShapes {
		step = coarsely
	}
	for first := 0; first <= last; first += step {
		if known[first] < known[likely] {
			likely = first
		}
	}
	known[likely] = b.free(p, likely, known[likely], below)
	below = min(below, known[likely]+2*flush)
	for first := 0; first <= last; first += step {
		if known[first] >= below-flush {
			continue
		}
		known[first] = b.free(p, first, known[first], below)
		if y := known[first]; y < below-flush {
			at, ok, below = plane.Point{X: float64(first) * b.step, Y: y}, true, y
		}
	}
	return at, ok
}

// free returns the lowest place, no lower than y, where a shape that begins in a column
// lies clear of all that is taken; or one where it does not, but that is not below a y.
func (b *band) free(p *profile, first int, y, below float64) float64 {
	y = max(y, b.floor)
	for k, clear := 0, 0; clear < len(p.tallFirst) && y < below-flush; k = (k + 1) % len(p.tallFirst) {
		column := p.tallFirst[k]
		clear++
		b.looks++
		if up := over(b.taken[first+column], p.columns[column], y); up > y {
			y, clear = up, 1
		}
	}
	return y
}

// over returns the lowest y, no lower than one, where what a shape takes of a column is
// clear of what is taken of it.
func over(taken, shape []rise, y float64) float64 {
	for again := true; again; {
		again = false
		for _, r := range shape {
			// What ends below it does not matter.
			for _, t := range taken[firstAbove(taken, y+r.low+flush):] {
				if t.low >= y+r.high-flush {
					break
				}
				y, again = max(y, t.high-r.low), len(shape) > 1
			}
		}
	}
	return y
}

// put puts a shape where lowest or lowestAtLeft said it can lie.
func (b *band) put(p *profile, at plane.Point) {
	if b.looks > mostLooks {
		b.closeGaps()
	}
	first := int(math.Round(at.X / b.step))
	for k, column := range p.columns {
		for i := max(0, first+k-b.beside); i <= min(len(b.taken)-1, first+k+b.beside); i++ {
			for _, r := range column {
				b.taken[i] = withRise(b.taken[i], rise{at.Y + r.low - b.clear, at.Y + r.high + b.clear})
			}
		}
	}
}

// closeGaps takes of every column all that lies below what is taken of it.
func (b *band) closeGaps() {
	for k, column := range b.taken {
		if n := len(column); n > 0 {
			b.taken[k] = []rise{{math.Inf(-1), column[n-1].high}}
		}
	}
	b.looked, b.looks = b.looked+b.looks, 0
}

// withRise adds a rise to others, which stand from below and apart, and so does the
// result; those that it meets become one with it. The others are changed.
func withRise(all []rise, r rise) []rise {
	from := firstAbove(all, r.low)
	to := from
	for to < len(all) && all[to].low <= r.high {
		r = rise{min(r.low, all[to].low), max(r.high, all[to].high)}
		to++
	}
	return slices.Replace(all, from, to, r)
}

// firstAbove returns the first of the rises, which stand from below and apart, that ends
// no lower than y; how many there are where none does.
func firstAbove(all []rise, y float64) int {
	from, to := 0, len(all) // by hand: most of the time of a lay goes into this
	for from < to {
		if middle := (from + to) / 2; all[middle].high >= y {
			to = middle
		} else {
			from = middle + 1
		}
	}
	return from
}
