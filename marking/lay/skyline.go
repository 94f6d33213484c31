package lay

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file:
//
//   - A band of the plane stands on y = 0, between x = 0 and its width. Shapes are
//     put into it one on another, and never moved again.
//   - The band is divided into columns. Of each it is known only how far up it is
//     taken; what is left free below that is lost.
//   - A shape stands with its left side on the side of a column. It takes a column
//     as high as its highest place there, and rests there on its lowest, whatever
//     it does in between: shapes never overlap, but may lie a column farther apart
//     than they need.
//   - The clearance is kept in x or in y, so that shapes lie at least that far
//     apart every way. None is kept to the sides of the band, to y = 0, or to the
//     ceiling where there is one.

const (
	// flush bounds how far, in mm, a shape may reach over the side of a column or
	// of the band, or over its ceiling, and still end there, and by how little one
	// place lies no lower than another: far above rounding, far below what can be
	// cut. Shapes may come nearer than their clearance by so much at each side.
	flush = 1e-6

	// mostColumns bounds how many columns a band is divided into, however wide.
	mostColumns = 4096
)

// skyline is a band of the plane that is filled from below. Use newSkyline.
type skyline struct {
	width, step, clear float64
	beside             int       // columns that the clearance takes beside a shape
	floor, ceiling     float64   // the y between which anything lies
	taken              []float64 // up to which y, by column, the clearance and all
}

// newSkyline returns an empty band of a width in which shapes keep a clearance. Its
// columns are finest wide, or wider where those would be too many. All are in mm;
// width and finest are above 0, and clear is not below 0.
func newSkyline(width, finest, clear float64) *skyline {
	step := math.Max(finest, width/mostColumns)
	return &skyline{
		width:   width,
		step:    step,
		clear:   clear,
		beside:  int(math.Ceil((clear - flush) / step)),
		ceiling: math.Inf(1),
		taken:   make([]float64, int(math.Ceil(width/step))),
	}
}

// like returns an empty band of another width, in mm, above 0 and no greater than
// that of this one. It has columns and a clearance like these, so that a profile made
// for one is good for both, but no ceiling.
func (s *skyline) like(width float64) *skyline { return newSkyline(width, s.step, s.clear) }

// clone returns a copy of the band. What is put into one is not in the other.
func (s *skyline) clone() *skyline {
	c := *s
	c.taken = slices.Clone(s.taken)
	return &c
}

// fits reports whether something of a width, in mm, fits into the band at all.
func (s *skyline) fits(width float64) bool { return width <= s.width+flush }

// fillTo takes the whole band up to y, in mm.
func (s *skyline) fillTo(y float64) { s.floor = math.Max(s.floor, y) }

// closeAt gives the band a ceiling at y, in mm, over which nothing put in later
// reaches. What lies there already stays.
func (s *skyline) closeAt(y float64) { s.ceiling = math.Min(s.ceiling, y) }

// profile is a shape as a skyline sees it.
type profile struct {
	width, height float64
	columns       []rise // from its left side on
}

// rise is how far a shape reaches within a column, in y.
type rise struct{ low, high float64 }

// with returns the smallest rise that holds r and y.
func (r rise) with(y float64) rise { return rise{math.Min(r.low, y), math.Max(r.high, y)} }

// profileOf returns a closed path as a skyline with columns like these sees it, in
// time proportional to its points and to the columns its segments run through. An
// open path counts as closed by a straight line; a path without points is a single
// place.
func (s *skyline) profileOf(path plane.Path) *profile {
	box := path.Bounds()
	if box.Empty() {
		box = plane.Box{}
	}
	p := &profile{width: box.Width(), height: box.Height()}
	p.columns = make([]rise, max(1, int(math.Ceil((p.width-flush)/s.step))))
	for k := range p.columns {
		p.columns[k] = rise{math.Inf(1), math.Inf(-1)}
	}
	for i, q := range path {
		p.take(path[(i+len(path)-1)%len(path)].Sub(box.Min), q.Sub(box.Min), s.step)
	}
	for k, c := range p.columns {
		if c.low > c.high { // a shape of no width lies on the side of its column
			p.columns[k] = rise{0, p.height}
		}
	}
	return p
}

// take adds a segment to the columns it runs through. One that reaches over the
// side of a column by no more than flush does not take the column beyond.
func (p *profile) take(a, b plane.Point, step float64) {
	if a.X > b.X {
		a, b = b, a
	}
	first := int(math.Floor((a.X + flush) / step))
	last := min(len(p.columns), int(math.Ceil((b.X-flush)/step))) - 1
	for k := first; k <= last; k++ {
		c := p.columns[k]
		if left := float64(k) * step; left > a.X {
			c = c.with(heightAt(a, b, left))
		} else {
			c = c.with(a.Y)
		}
		if right := float64(k+1) * step; right < b.X {
			c = c.with(heightAt(a, b, right))
		} else {
			c = c.with(b.Y)
		}
		p.columns[k] = c
	}
}

// heightAt returns how high the segment ab lies at an x between its ends.
func heightAt(a, b plane.Point, x float64) float64 {
	return a.Toward(b, math.Min(1, math.Max(0, (x-a.X)/(b.X-a.X)))).Y
}

// lowest returns where a shape can be put so that it lies lowest, as the lower left
// corner of its box: of places equally low the leftmost. It is false where there is
// none lower than below, which may be infinite, or none under the ceiling, and where
// the shape is wider than the band.
func (s *skyline) lowest(p *profile, below float64) (at plane.Point, ok bool) {
	if !s.fits(p.width) {
		return plane.Point{}, false
	}
	last := int(math.Floor((s.width - p.width + flush) / s.step))
	return s.lowestUpTo(p, max(0, min(last, len(s.taken)-len(p.columns))), below)
}

// lowestAtLeft is lowest for a shape that must lie at the left side of the band.
func (s *skyline) lowestAtLeft(p *profile, below float64) (at plane.Point, ok bool) {
	if !s.fits(p.width) {
		return plane.Point{}, false
	}
	return s.lowestUpTo(p, 0, below)
}

// lowestUpTo looks at the columns up to the last one in which the shape may begin.
func (s *skyline) lowestUpTo(p *profile, last int, below float64) (at plane.Point, ok bool) {
	below = math.Min(below, s.ceiling-p.height+2*flush)
	high := -1 // the column of the band that held the shape up last
	for first := 0; first <= last; first++ {
		// Most likely it does so again, and the others need not be looked at.
		if high >= first && s.taken[high]-p.columns[high-first].low >= below-flush {
			continue
		}
		y := s.floor
		// From the right: what holds it up there does so longest.
		for k := len(p.columns) - 1; k >= 0; k-- {
			y = math.Max(y, s.taken[first+k]-p.columns[k].low)
			if y >= below-flush {
				high = first + k
				break
			}
		}
		if y < below-flush {
			at, ok, below = plane.Point{X: float64(first) * s.step, Y: y}, true, y
		}
	}
	return at, ok
}

// put puts a shape where lowest or lowestAtLeft said it can lie.
func (s *skyline) put(p *profile, at plane.Point) {
	first := int(math.Round(at.X / s.step))
	for k, c := range p.columns {
		up := at.Y + c.high + s.clear
		for i := max(0, first+k-s.beside); i <= min(len(s.taken)-1, first+k+s.beside); i++ {
			s.taken[i] = math.Max(s.taken[i], up)
		}
	}
}
