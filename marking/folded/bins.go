package folded

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// bins are boxes sorted by where they lie, so that those near a place are found without looking at
// all: every bin is a part of the box round all of them, and holds the numbers of those that
// reach into it.
type bins struct {
	all  plane.Box
	side int // bins along each side
	of   [][]int
}

// mostBins bounds how many bins there are along each side.
const mostBins = 128

func newBins(boxes []plane.Box) bins {
	b := bins{all: plane.EmptyBox(), side: min(mostBins, 1+int(math.Sqrt(float64(len(boxes)))))}
	for _, box := range boxes {
		b.all = b.all.Union(box)
	}
	b.of = make([][]int, b.side*b.side)
	for i, box := range boxes {
		b.each(box, func(bin int) { b.of[bin] = append(b.of[bin], i) })
	}
	return b
}

// each calls with every bin that a box reaches into; outside of all boxes with those that lie
// nearest.
func (b bins) each(box plane.Box, with func(bin int)) {
	at := func(v, from, size float64) int {
		if !(size > 0) {
			return 0
		}
		return min(b.side-1, max(0, int(float64(b.side)*(v-from)/size)))
	}
	for x := at(box.Min.X, b.all.Min.X, b.all.Width()); x <= at(box.Max.X, b.all.Min.X, b.all.Width()); x++ {
		for y := at(box.Min.Y, b.all.Min.Y, b.all.Height()); y <= at(box.Max.Y, b.all.Min.Y, b.all.Height()); y++ {
			with(x*b.side + y)
		}
	}
}

// near returns the numbers of all boxes that may meet a box, in order.
func (b bins) near(box plane.Box) []int {
	var found []int
	b.each(box, func(bin int) { found = append(found, b.of[bin]...) })
	slices.Sort(found)
	return slices.Compact(found)
}
