package folded

import (
	"cmp"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. What lies on a line hides it, as opaque cloth would. How many layers lie at a
// place is how many parts hold it. It is looked up in the middle of every field between the
// lines at which that changes; edges that the folds leave uneven do not count.

// pile is the parts of a piece that is folded, from the lowest up.
type pile struct {
	parts []part
	trees []*plane.Tree
	boxes []plane.Box // in a frame along the folds, so that they lie close round the parts
	bins  bins        // of those
	frame piece.Frame
}

func newPile(parts []part, frame piece.Frame) *pile {
	p := &pile{parts: slices.Clone(parts), frame: frame}
	slices.SortStableFunc(p.parts, func(a, b part) int { return cmp.Compare(a.level, b.level) })
	for _, one := range p.parts {
		p.trees = append(p.trees, plane.NewTree(one.path))
		p.boxes = append(p.boxes, p.box(one.path))
	}
	p.bins = newBins(p.boxes)
	return p
}

func (p *pile) box(path plane.Path) plane.Box {
	box := plane.EmptyBox()
	for _, q := range path {
		box = box.With(plane.Point{X: p.frame.U(q), Y: p.frame.V(q)})
	}
	return box
}

// seen returns the parts of a line that no part of the cloth above its own hides. What runs
// along the edge of one is seen.
func (p *pile) seen(l line) []line {
	shown, box := []plane.Path{l.Path}, p.box(l.Path)
	for _, i := range p.bins.near(box) {
		if p.parts[i].level <= l.level || !p.boxes[i].Grown(-piece.SamePoint).Meets(box) {
			continue
		}
		var left []plane.Path
		for _, path := range shown {
			left = append(left, outside(p.trees[i], path)...)
		}
		shown = left
	}
	var lines []line
	for _, path := range shown {
		l.Path = path
		lines = append(lines, l)
	}
	return lines
}

// outside returns what of a line does not lie inside a closed path.
func outside(tree *plane.Tree, path plane.Path) []plane.Path {
	line := plane.NewTree(path)
	var left []plane.Path
	from := 0.0
	keep := func(to float64) {
		if to-from > piece.SamePoint {
			left = append(left, path.Between(from, to))
		}
	}
	for _, s := range piece.InsideStretches(tree, line) {
		keep(s.From)
		from = s.To
	}
	if from == 0 {
		return []plane.Path{path}
	}
	keep(line.Length())
	return left
}

// at returns the numbers of the parts that hold a place.
func (p *pile) at(q plane.Point) []int {
	var holding []int
	local := plane.Point{X: p.frame.U(q), Y: p.frame.V(q)}
	for _, i := range p.bins.near(plane.Box{Min: local, Max: local}) {
		if p.boxes[i].Holds(local) && p.trees[i].Holds(q) {
			holding = append(holding, i)
		}
	}
	return holding
}

// layers returns the parts as they are to be drawn, with how many layers lie where each of them
// does, and which numbers of layers there are: some cloth lies by itself on every piece.
func (p *pile) layers(places []plane.Point) (layers []mark.Layer, counts []int) {
	counts = []int{1}
	for _, one := range p.parts {
		side := mark.RightSideUp
		if one.turned {
			side = mark.WrongSideUp
		}
		layers = append(layers, mark.Layer{Path: one.path, Side: side, Count: 1})
	}
	for _, q := range places {
		holding := p.at(q)
		for _, i := range holding {
			layers[i].Count = max(layers[i].Count, len(holding))
		}
		if n := len(holding); n > 0 && !slices.Contains(counts, n) {
			counts = append(counts, n)
		}
	}
	slices.Sort(counts)
	return layers, counts
}

// places returns a place in every field into which the lines where the number of layers changes
// part an outline: the seams, creases and ends of all folds. Fields narrower than a line is
// wide do not count.
func places(outline plane.Path, groups []piece.FlatGroup) []plane.Point {
	if len(groups) == 0 {
		return nil
	}
	var all []plane.Point
	first := groups[0]
	us := []float64{}
	for _, q := range outline {
		us = append(us, first.Folding.U(q))
	}
	us = append([]float64{slices.Min(us), slices.Max(us)}, breaks(first)...)
	slices.Sort(us)
	for i := 1; i < len(us); i++ {
		if us[i]-us[i-1] < piece.LeastLine {
			continue
		}
		for _, chord := range first.Folding.Chords(outline, (us[i]+us[i-1])/2) {
			all = append(all, fieldsAlong(chord, groups)...)
		}
	}
	return all
}

// breaks returns the u at which the layers of a folded group change.
func breaks(g piece.FlatGroup) []float64 {
	var us []float64
	for k, one := range g.Folding.Folds() {
		s := g.Folding.Seam(k)
		us = append(us, s-one.Width, s, s+one.Width)
	}
	return us
}

// fieldsAlong returns the middles of the fields along a chord that runs along the first group.
func fieldsAlong(chord plane.Path, groups []piece.FlatGroup) []plane.Point {
	long := chord.Length()
	at := []float64{0, long}
	cross := func(from, to, level float64) {
		if (from < level) != (to < level) {
			at = append(at, long*(level-from)/(to-from))
		}
	}
	for n, g := range groups {
		f := g.Folding
		for _, one := range f.Folds() {
			cross(f.V(chord[0]), f.V(chord[1]), one.From)
			cross(f.V(chord[0]), f.V(chord[1]), one.To)
		}
		if n > 0 {
			for _, u := range breaks(g) {
				cross(f.U(chord[0]), f.U(chord[1]), u)
			}
		}
	}
	slices.Sort(at)
	var middles []plane.Point
	for i := 1; i < len(at); i++ {
		if at[i]-at[i-1] >= piece.LeastLine {
			q, _ := chord.At((at[i] + at[i-1]) / 2)
			middles = append(middles, q)
		}
	}
	return middles
}
