package arrange

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// Rules of this file: it answers whether a place on a sheet is free, for
// whoever wants to print something there that is not a line of a piece.

// Field is what lies on a sheet: its lines, and what has found its place
// among them.
type Field struct {
	// tree is over all lines, one after the other; the segments numbered in
	// gaps, which rise, only lead from one line to the next.
	tree *plane.Tree
	gaps []int
	// taken are the placed slabs, by the squares of bucketSide they reach
	// into.
	taken map[bucket][]taken
}

// taken is a placed slab and the box round it, which is asked first: most are far off.
type taken struct {
	text.Slab
	box plane.Box
}

// bucket is a square of a sheet, counted from its origin.
type bucket struct{ x, y int }

// bucketSide is the side of a bucket, in mm: a few texts wide.
const bucketSide = 60.0

// roundingOff bounds what rounding adds to a few lengths, in mm.
const roundingOff = 1e-9

// bucketsOf calls visit for every bucket a box reaches into, until visit
// returns false.
func bucketsOf(b plane.Box, visit func(bucket) bool) {
	index := func(v float64) int { return int(math.Floor(v / bucketSide)) }
	for x := index(b.Min.X); x <= index(b.Max.X); x++ {
		for y := index(b.Min.Y); y <= index(b.Max.Y); y++ {
			if !visit(bucket{x, y}) {
				return
			}
		}
	}
}

// NewField looks at the lines of the pieces.
func NewField(pieces []Piece) *Field {
	var all plane.Path
	f := &Field{taken: map[bucket][]taken{}}
	for _, p := range pieces {
		for _, l := range p.Lines {
			all = append(all, l.Path()...)
			f.gaps = append(f.gaps, len(all)-1)
		}
	}
	f.tree = plane.NewTree(all)
	return f
}

// Take marks a slab as no longer free.
func (f *Field) Take(s text.Slab) {
	box := s.Bounds()
	bucketsOf(box, func(b bucket) bool {
		f.taken[b] = append(f.taken[b], taken{s, box.Grown(roundingOff)})
		return true
	})
}

// Free reports whether no line and nothing that was placed touches the slab.
func (f *Field) Free(s text.Slab) bool { return !f.meetsPlaced(s) && f.Crossings(s, 1) == 0 }

// meetsPlaced reports whether anything that was placed touches the slab.
func (f *Field) meetsPlaced(s text.Slab) bool {
	met, box := false, s.Bounds()
	bucketsOf(box, func(b bucket) bool {
		all := f.taken[b]
		for i := 0; i < len(all) && !met; i++ {
			met = all[i].box.Meets(box) && s.Meets(all[i].Slab)
		}
		return !met
	})
	return met
}

// segmentsIn counts the segments of a line that touch the slab.
func segmentsIn(line *plane.Tree, s text.Slab) int {
	path, n := line.Path(), 0
	line.Within(s.Bounds(), func(i int) bool {
		if s.MeetsSegment(path[i], path[i+1]) {
			n++
		}
		return true
	})
	return n
}

// Crossings counts the segments that touch the slab, up to a limit.
func (f *Field) Crossings(s text.Slab, limit int) int {
	path := f.tree.Path()
	n := 0
	f.tree.Within(s.Bounds(), func(i int) bool {
		if s.MeetsSegment(path[i], path[i+1]) {
			if _, gap := slices.BinarySearch(f.gaps, i); !gap {
				n++
			}
		}
		return n < limit
	})
	return n
}
