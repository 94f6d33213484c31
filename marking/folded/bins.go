package folded

import (
	"math/bits"

	"tuckmark/marking/plane"
)

// bins are boxes sorted by where they lie, so that those near a place are found without looking at
// all: every bin is a part of the box round all of them, about as large as they are, and holds the
// numbers of those that reach into it.
type bins struct {
	all        plane.Box
	count      int // of the boxes
	across, up int // how many bins
	of         [][]int
}

// mostAcross and mostUp bound how many bins there are. The boxes are those of strips that run up.
const (
	mostAcross = 1024
	mostUp     = 128
)

func newBins(boxes []plane.Box) bins {
	b := bins{all: plane.EmptyBox(), count: len(boxes)}
	wide, high := 0.0, 0.0 // of all boxes together
	for _, box := range boxes {
		b.all = b.all.Union(box)
		wide, high = wide+box.Width(), high+box.Height()
	}
	b.across, b.up = binsAlong(b.all.Width(), wide, len(boxes), mostAcross), binsAlong(b.all.Height(), high, len(boxes), mostUp)
	b.of = make([][]int, b.across*b.up)
	for i, box := range boxes {
		b.each(box, func(bin int) { b.of[bin] = append(b.of[bin], i) })
	}
	return b
}

// binsAlong is how many bins there are along a length for so many boxes, which are so long together.
func binsAlong(length, together float64, boxes, most int) int {
	if !(together > 0) {
		return 1
	}
	return max(1, int(min(length/together*float64(boxes), float64(most))))
}

// each calls with every bin that a box reaches into; outside of all boxes with those that lie
// nearest.
func (b bins) each(box plane.Box, with func(bin int)) {
	at := func(v, from, size float64, bins int) int {
		if !(size > 0) {
			return 0
		}
		return min(bins-1, max(0, int(float64(bins)*(v-from)/size)))
	}
	column := func(x float64) int { return at(x, b.all.Min.X, b.all.Width(), b.across) }
	row := func(y float64) int { return at(y, b.all.Min.Y, b.all.Height(), b.up) }
	for x := column(box.Min.X); x <= column(box.Max.X); x++ {
		for y := row(box.Min.Y); y <= row(box.Max.Y); y++ {
			with(x*b.up + y)
		}
	}
}

// near returns the numbers of all boxes that may meet a box, in order. Long ones stand in many bins,
// so each is noted by a bit, and none looked for among the others.
func (b bins) near(box plane.Box) []int {
	noted := make([]uint64, (b.count+63)/64)
	b.each(box, func(bin int) {
		for _, i := range b.of[bin] {
			noted[i/64] |= 1 << (i % 64)
		}
	})
	var found []int
	for at, word := range noted {
		for ; word != 0; word &= word - 1 {
			found = append(found, 64*at+bits.TrailingZeros64(word))
		}
	}
	return found
}
