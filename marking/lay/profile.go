package lay

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: a shape is seen by columns, beginning at its own left side. It
// takes a column from where to where anything of it lies in it: a bay of the shape is
// free as far as it is open across the whole column.

// profile is a shape as a band sees it.
type profile struct {
	width, height float64
	columns       [][]rise // from its left side on; in each from below, and apart
	tallFirst     []int    // the columns, those first of which it takes the longest rise
}

// rise is from where to where something lies within a column, in y.
type rise struct{ low, high float64 }

// profileOf returns a closed path as a band with columns like these sees it, in
// time that grows with its points and with the columns its segments run through. An
// open path counts as closed by a straight line; a path without points is a single
// place.
func (b *band) profileOf(path plane.Path) *profile {
	box := path.Bounds()
	if box.Empty() {
		box = plane.Box{}
	}
	p := &profile{width: box.Width(), height: box.Height()}
	columns := make([]column, max(1, int(math.Ceil((p.width-flush)/b.step))))
	room := make([]crossing, usualCrossings*len(columns))
	for k := range columns {
		columns[k] = room[usualCrossings*k:][:0:usualCrossings]
	}
	for i, q := range path {
		take(columns, path[(i+len(path)-1)%len(path)].Sub(box.Min), q.Sub(box.Min), b.step)
	}
	tallest := make([]float64, len(columns))
	for k, c := range columns {
		rises := c.filled()
		if rises == nil { // a shape of no width lies on the side of its column
			rises = []rise{{0, p.height}}
		}
		for _, r := range rises {
			tallest[k] = max(tallest[k], r.high-r.low)
		}
		p.columns, p.tallFirst = append(p.columns, rises), append(p.tallFirst, k)
	}
	slices.SortStableFunc(p.tallFirst, func(i, j int) int { return cmp.Compare(tallest[j], tallest[i]) })
	return p
}

// column is what of an outline runs through a column.
type column []crossing

// usualCrossings is how many pieces of an outline most columns have: its lower side and its upper
// one. Others find more room.
const usualCrossings = 2

// crossing is a piece of an outline in a column. It turns by 1 each time it runs over the
// middle of the column to the right, by -1 each time it does so to the left.
type crossing struct {
	rise
	turn int
}

// take adds a segment to the columns it runs through. One that reaches over the
// side of a column by no more than flush does not take the column beyond.
func take(columns []column, a, b plane.Point, step float64) {
	turn := 1
	if a.X > b.X {
		a, b, turn = b, a, -1
	}
	first := int(math.Floor((a.X + flush) / step))
	last := min(len(columns), int(math.Ceil((b.X-flush)/step))) - 1
	for k := first; k <= last; k++ {
		from, to := a.Y, b.Y
		left, middle, right := float64(k)*step, (float64(k)+0.5)*step, float64(k+1)*step
		if left > a.X {
			from = heightAt(a, b, left)
		}
		if right < b.X {
			to = heightAt(a, b, right)
		}
		c := crossing{rise: rise{min(from, to), max(from, to)}}
		if a.X <= middle && middle < b.X {
			c.turn = turn
		}
		columns[k] = columns[k].with(c)
	}
}

// with adds a piece of an outline, which mostly goes on where the last one ends.
func (c column) with(next crossing) column {
	if n := len(c); n > 0 && next.low <= c[n-1].high && next.high >= c[n-1].low {
		last := &c[n-1]
		last.low, last.high = min(last.low, next.low), max(last.high, next.high)
		last.turn += next.turn
		return c
	}
	return append(c, next)
}

// heightAt returns how high the segment ab lies at an x between its ends.
func heightAt(a, b plane.Point, x float64) float64 {
	return a.Toward(b, min(1, max(0, (x-a.X)/(b.X-a.X)))).Y
}

// filled returns what a shape takes of a column. Between two pieces of its outline, at a
// height at which none runs, all of the column is within the shape or none; so the
// middle of it tells which.
func (c column) filled() []rise {
	slices.SortFunc(c, func(a, b crossing) int { return cmp.Compare(a.low, b.low) })
	var rises []rise
	within := 0
	for _, one := range c {
		if last := len(rises) - 1; last >= 0 && (within != 0 || one.low <= rises[last].high) {
			rises[last].high = max(rises[last].high, one.high)
		} else {
			rises = append(rises, one.rise)
		}
		within += one.turn
	}
	return rises
}
