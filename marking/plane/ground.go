package plane

import (
	"cmp"
	"slices"
)

// Rules of this file. A path that passes over the same ground again and again has boxes, in
// path order, that lie on each other: every turn of a spiral is in the box of each other, and
// a look at one place would go down into all of them. There the leaves are put in the order in
// which they lie on the plane, along a line that goes through it in squares of squares (Morton
// 1966), and paired anew. What is found is the same.

// ground is a hierarchy of boxes over the leaves of a tree as they lie on the plane.
type ground struct {
	leaf   []int   // of each box of the lowest level, which leaf it is of
	levels [][]Box // as those of the tree
}

// mostOver is how many times over the boxes of one level may cover that of the whole path, all
// together, in path order. It bounds nothing but time: beside lines that are drawn once they
// cover it about once.
const mostOver = 4

// overlaps reports whether the boxes of some level cover each other many times.
func (t *Tree) overlaps() bool {
	whole := t.Bounds()
	for _, boxes := range t.levels {
		area := 0.0
		for _, b := range boxes {
			if !b.Empty() {
				area += b.Width() * b.Height()
			}
		}
		if area > mostOver*whole.Width()*whole.Height() {
			return true
		}
	}
	return false
}

// newGround builds it over the boxes of leaves, in time proportional to n log n.
func newGround(leaves []Box) *ground {
	whole := EmptyBox()
	for _, b := range leaves {
		whole = whole.Union(b)
	}
	places := make([]placedLeaf, len(leaves))
	for k, b := range leaves {
		places[k] = placedLeaf{k, squareOf(whole, b)}
	}
	slices.SortFunc(places, func(a, b placedLeaf) int {
		return cmp.Or(cmp.Compare(a.square, b.square), cmp.Compare(a.leaf, b.leaf))
	})
	g := &ground{leaf: make([]int, len(leaves))}
	boxes := make([]Box, len(leaves))
	for i, p := range places {
		g.leaf[i], boxes[i] = p.leaf, leaves[p.leaf]
	}
	g.levels = paired(boxes)
	return g
}

// placedLeaf is a leaf, and the number of the square that its middle lies in.
type placedLeaf struct {
	leaf   int
	square uint64
}

// squareOf numbers the square of the plane that the middle of a box lies in. An empty one lies
// nowhere, and has the first.
func squareOf(whole, b Box) uint64 {
	if b.Empty() {
		return 0
	}
	const fine = 1 << 16 // squares across, and up
	share := func(v, from, size float64) uint64 {
		if size <= 0 {
			return 0
		}
		return uint64(min(fine-1, max(0, (v-from)/size*fine)))
	}
	at := b.Centre()
	x, y := share(at.X, whole.Min.X, whole.Width()), share(at.Y, whole.Min.Y, whole.Height())
	square := uint64(0)
	for bit := range 16 {
		square |= (x>>bit&1)<<(2*bit) | (y>>bit&1)<<(2*bit+1)
	}
	return square
}

// within returns the leaves whose boxes meet a box, in path order, in a list if that has room.
func (g *ground) within(list []int, b *Box) []int {
	found := list[:0]
	g.visit(len(g.levels)-1, 0, b, func(leaf int) bool {
		found = append(found, leaf)
		return true
	})
	slices.Sort(found)
	return found
}

// visit calls a function for the leaves below a box of a level that meet a box, until that returns
// false. It reports whether it came to the end.
func (g *ground) visit(level, k int, b *Box, leaf func(int) bool) bool {
	switch {
	case !g.levels[level][k].Meets(*b):
		return true
	case level == 0:
		return leaf(g.leaf[k])
	}
	return g.visit(level-1, 2*k, b, leaf) && (2*k+1 == len(g.levels[level-1]) || g.visit(level-1, 2*k+1, b, leaf))
}
