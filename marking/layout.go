package marking

import (
	"math"
	"slices"
	"sort"

	"tuckmark/marking/plane"
)

// Rules of this file. A layout is a piece at one stage of its making: finished,
// or flat, or with some of its folds in. Unfolding takes it one stage back. Every
// line is taken through every layer of cloth that it lies on: an edge is cut, and
// a seam sewn, through all of them.

// layout is a piece as it lies at one stage of its making.
type layout struct {
	outline plane.Path // closed, counter-clockwise; it begins where an edge does
	edges   []int      // of each segment of the outline, the number of its edge
	// lines are the stitch lines, or hem folds, of each edge; one that the folds
	// part comes in several.
	lines [][]plane.Path
	marks []Mark // all lines but the edges
}

// laidOut returns the piece as it is drawn, with the marks it has.
func (p *Piece) laidOut(marks []Mark) *layout {
	l := &layout{outline: p.Outline, marks: marks}
	for i, e := range p.Edges {
		for range len(e.Path) - 1 {
			l.edges = append(l.edges, i)
		}
		l.lines = append(l.lines, []plane.Path{e.Line})
	}
	return l
}

// edgeRun is a part of the outline that belongs to one edge.
type edgeRun struct {
	edge int
	path plane.Path
}

// runs returns the edges in their order round the outline. An edge that the folds
// part comes in several runs.
func (l *layout) runs() []edgeRun {
	var runs []edgeRun
	for i, edge := range l.edges {
		if n := len(runs); n > 0 && runs[n-1].edge == edge {
			runs[n-1].path = append(runs[n-1].path, l.outline[i+1])
			continue
		}
		runs = append(runs, edgeRun{edge, plane.Path{l.outline[i], l.outline[i+1]}})
	}
	return runs
}

// unfolded returns the layout before its folds were folded.
func (l *layout) unfolded(piece *Piece, f *folding, folding *plane.Folding, found *findings) (*layout, bool) {
	axis := piece.foldEdge()
	strands, edges := l.parts(piece, f, folding)
	if len(strands) != 1 {
		l.reportParts(piece, f, len(strands), found)
		return nil, false
	}
	flat := &layout{outline: strands[0].Path}
	for _, s := range strands[0].Source {
		flat.edges = append(flat.edges, edges[s])
	}
	if f.onAxis {
		flat.outline = append(slices.Clip(flat.outline), flat.outline[0])
		flat.edges = append(flat.edges, axis)
	}
	flat.turnToCorner()
	if axis >= 0 && !f.onAxis && !flat.keepsAxis(axis) {
		found.add(f.rows[0].place, "run the tucks along the fold or square to it, or draw the whole piece",
			"the folds cross %q, which lies on the fold of the cloth, at a slant: it would not be straight", piece.Edges[axis].Key)
		return nil, false
	}
	for _, m := range l.marks {
		flat.marks = append(flat.marks, f.carried(folding, m)...)
	}
	for _, lines := range l.lines {
		var carried []plane.Path
		for _, line := range lines {
			carried = append(carried, f.carry(folding, line)...)
		}
		flat.lines = append(flat.lines, carried)
	}
	return flat, true
}

// parts returns the outlines that unfold from that of the piece, with the edges their
// sources stand for: one, or the folds part the piece.
func (l *layout) parts(piece *Piece, f *folding, folding *plane.Folding) ([]plane.Strand, []int) {
	axis := piece.foldEdge()
	outline, edges := l.outline, l.edges
	if f.onAxis {
		outline, edges = l.wholeOutline(axis, f.origin, f.out)
	}
	folding.Over(outline)
	// A sliver beside a corner that a seam just touches is no part of a piece.
	strands := slices.DeleteFunc(folding.Unfolded(outline), func(s plane.Strand) bool {
		return math.Abs(s.Path.Area()) < leastArea
	})
	if f.onAxis && len(strands) == 1 {
		strands = plane.HalfPlane(strands[0].Path, strands[0].Source, f.origin, f.out)
	}
	return strands, edges
}

// reportParts says which fold is the first to part the piece, or to leave a hole in it
// where the outline cuts into its flap. Each row is looked at by itself; where none of
// them does it alone, the piece is named.
func (l *layout) reportParts(piece *Piece, f *folding, parts int, found *findings) {
	for _, r := range f.rows {
		parting := func(n int) bool {
			some := *r
			some.folds = slices.Clone(r.folds[:n])
			alone := *f
			alone.rows = []*row{&some}
			folding, ok := alone.finished(&findings{unit: found.unit})
			if !ok {
				return false
			}
			strands, _ := l.parts(piece, &alone, folding)
			return len(strands) != 1
		}
		if n := sort.Search(len(r.folds), func(n int) bool { return parting(n + 1) }); n < len(r.folds) {
			one := r.folds[n]
			found.add(r.place, howManyFit(one.number)+"; a piece that is cut from a tucked block may have more of them: give it a table for its block",
				"the outline cuts into %s from the side: laid flat, the piece would have a hole or come apart beside its %s, %s from %q finished",
				r.name(one), r.seamName(), found.mm(one.seam), r.base.name)
			return
		}
	}
	found.add(f.rows[0].place, "the stitching of every fold must lie on the piece, and so must the centre line beside it",
		"the outline cuts into the folds from the side: laid flat, the piece would have a hole or come in %d parts", parts)
}

// wholeOutline returns the outline of both halves of a piece, which meet at the
// edge on the fold of the cloth.
func (l *layout) wholeOutline(axis int, origin, out plane.Point) (plane.Path, []int) {
	// The outline begins where an edge does, so the fold is one run of it.
	fold := slices.Index(l.edges, axis)
	beyond := fold
	for beyond < len(l.edges) && l.edges[beyond] == axis {
		beyond++
	}
	half := slices.Concat(l.outline[beyond:len(l.outline)-1], l.outline[:fold+1])
	edges := slices.Concat(l.edges[beyond:], l.edges[:fold])
	for _, edge := range slices.Backward(slices.Clone(edges)) {
		edges = append(edges, edge)
	}
	return bothHalves(half, origin, out), edges
}

// turnToCorner has the outline begin where an edge begins.
func (l *layout) turnToCorner() {
	n := len(l.edges)
	for i := range l.edges {
		if l.edges[i] != l.edges[(i+n-1)%n] {
			l.edges = slices.Concat(l.edges[i:], l.edges[:i])
			l.outline = slices.Concat(l.outline[i:n], l.outline[:i+1])
			return
		}
	}
}

// keepsAxis reports whether the edge on the fold of the cloth is still one
// straight edge.
func (l *layout) keepsAxis(axis int) bool {
	parts := 0
	straight := true
	for _, r := range l.runs() {
		if r.edge == axis {
			parts++
			straight = straight && r.path.Straightness() <= straightness
		}
	}
	return parts == 1 && straight
}

// carried returns a mark as it lies before the folds were folded: in one part, or
// in several.
func (f *folding) carried(folding *plane.Folding, m Mark) []Mark {
	return m.inParts(f.carry(folding, m.Path))
}

// carry returns a line as it lies before the folds were folded. On a piece on the
// fold, layers of the other half may reach over the centre.
func (f *folding) carry(folding *plane.Folding, p plane.Path) []plane.Path {
	strands := folding.Unfolded(p)
	if f.onAxis {
		strands = nil
		for _, line := range f.withImage(p) {
			for _, s := range folding.Unfolded(line) {
				strands = append(strands, plane.HalfPlane(s.Path, s.Source, f.origin, f.out)...)
			}
		}
	}
	var paths []plane.Path
	for _, s := range strands {
		if s.Path.Length() > samePoint {
			paths = append(paths, s.Path)
		}
	}
	return paths
}

// withImage returns a line and its image on the other half of the piece, as one
// line where they meet on the fold of the cloth: there the folds go on.
func (f *folding) withImage(p plane.Path) []plane.Path {
	image := p.Mirrored(f.origin, f.out)
	on := func(q plane.Point) bool { return math.Abs(q.Sub(f.origin).Dot(f.out)) < samePoint }
	last := len(p) - 1
	switch {
	case lies(p, image):
		return []plane.Path{p}
	case on(p[0]) && on(p[last]):
		whole := slices.Concat(p, image[1:last], p[:1])
		return []plane.Path{whole}
	case on(p[0]):
		return []plane.Path{slices.Concat(image[:last], p)}
	case on(p[last]):
		return []plane.Path{slices.Concat(p, image[1:])}
	}
	return []plane.Path{p, image}
}

// lies reports whether a line lies on its mirror image, which is walked the other
// way, point for point: so does a line on the axis.
func lies(p, image plane.Path) bool {
	for i, q := range p {
		if q.Distance(image[len(image)-1-i]) > samePoint {
			return false
		}
	}
	return true
}
