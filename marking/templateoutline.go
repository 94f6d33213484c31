package marking

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A template ends at the stitch line of every marked edge, and
// at the cutting line of every other, so that it can be laid on the cut piece by
// those that are left. Stitch lines run out to the cutting lines beside them, as
// they are ruled; where two marked edges follow each other their lines meet. A
// marked edge whose line the folds have parted stays as it is cut, and so does one
// whose line crosses that of another before it comes to the edge between them.

// leastAligned is the least of an edge, in mm, by which a template can be laid.
const leastAligned = 20.0

// templateShape is the outline of a template.
type templateShape struct {
	outline plane.Path // closed, counter-clockwise; it begins where an edge does
	edges   []int      // of each segment of the outline, the number of its edge
	sewn    []bool     // of each edge: the template ends at its stitch line
	// parted are the marked edges that stay as they are cut because folds part their
	// lines, crossed those whose lines cross that of another marked edge.
	parted, crossed []string
}

// templateShape returns the outline of a piece's template, from the piece as it lies
// when it is marked.
func (p *Piece) templateShape() templateShape {
	s := templateShape{outline: p.flat.outline, edges: p.flat.edges, sewn: make([]bool, len(p.Edges))}
	for _, group := range p.markedGroups() {
		if next, ok := s.cutAlong(p, group); ok {
			s = next
			continue
		}
		for _, i := range group {
			if len(p.flat.lines[i]) == 1 {
				s.crossed = append(s.crossed, p.Edges[i].Key)
			} else {
				s.parted = append(s.parted, p.Edges[i].Key)
			}
		}
	}
	return s
}

// markedGroups returns the marked edges that follow each other, going round.
func (p *Piece) markedGroups() [][]int {
	n := len(p.Edges)
	first := slices.IndexFunc(p.Edges, func(e Edge) bool { return !e.Marked })
	if first < 0 { // all the way round
		first = 0
	}
	var groups [][]int
	open := false
	for k := range n {
		i := (first + k) % n
		if !p.Edges[i].Marked {
			open = false
			continue
		}
		if !open {
			groups = append(groups, nil)
			open = true
		}
		groups[len(groups)-1] = append(groups[len(groups)-1], i)
	}
	return groups
}

// cutAlong returns the shape with a group of marked edges cut away along their
// stitch lines, and whether that leaves a smaller piece, whole and without crossings.
func (s templateShape) cutAlong(p *Piece, group []int) (templateShape, bool) {
	round := len(group) == len(p.Edges)
	line, edges, ok := p.joinedLines(group, round)
	if !ok {
		return s, false
	}
	cut := templateShape{sewn: slices.Clone(s.sewn), parted: s.parted, crossed: s.crossed}
	if round {
		cut.outline, cut.edges = line, edges
	} else {
		rest, restEdges, whole := s.without(group)
		if !whole {
			return s, false
		}
		start, end := line[0], line[len(line)-1]
		_, to, _ := rest.Nearest(start)
		_, from, _ := rest.Nearest(end)
		if to-from < leastLine {
			return s, false
		}
		cut.outline = rest.Between(from, to)
		cut.edges = edgesBetween(rest, restEdges, from, cut.outline)
		before, after := cut.edges[len(cut.edges)-1], cut.edges[0]
		// Where a line ends beside the cutting line a step joins the two, which is no
		// stitch line: it counts with the edge beside it.
		for i, q := range line {
			if last := cut.outline[len(cut.outline)-1]; q.Distance(last) > samePoint {
				of := before
				if i > 0 {
					of = edges[i-1]
				}
				cut.outline = append(cut.outline, q)
				cut.edges = append(cut.edges, of)
			}
		}
		if cut.outline[0].Distance(cut.outline[len(cut.outline)-1]) > samePoint {
			cut.outline = append(cut.outline, cut.outline[0])
			cut.edges = append(cut.edges, after)
		} else {
			cut.outline[len(cut.outline)-1] = cut.outline[0]
		}
	}
	for _, i := range group {
		cut.sewn[i] = true
	}
	area := cut.outline.Area()
	if _, _, _, crosses := plane.SelfCrossing(plane.NewTree(cut.outline)); crosses || area < leastArea || area >= s.outline.Area() {
		return s, false
	}
	return cut, true
}

// joinedLines returns the stitch lines of edges that follow each other as one line,
// with the edge of each of its segments; of all edges, as a closed one. It reports
// whether each is in one part.
func (p *Piece) joinedLines(group []int, round bool) (plane.Path, []int, bool) {
	n := len(group)
	trees := make([]*plane.Tree, n)
	parts := make([]stretch, n)
	for k, i := range group {
		if len(p.flat.lines[i]) != 1 {
			return nil, nil, false
		}
		trees[k] = plane.NewTree(p.flat.lines[i][0])
		parts[k] = stretch{0, trees[k].Length()}
	}
	for k := range n {
		next := (k + 1) % n
		if next == 0 && !round {
			break
		}
		// The last crossing of the one that is the first of the other: at the corner.
		if c := plane.Crossings(trees[k], trees[next]); len(c) > 0 && n > 1 {
			parts[k].to, parts[next].from = c[len(c)-1].A, c[len(c)-1].B
		}
	}
	var line plane.Path
	var edges []int
	for k, i := range group {
		part := trees[k].Path().Between(parts[k].from, parts[k].to)
		if len(part) == 0 {
			return nil, nil, false
		}
		for _, q := range part {
			if len(line) == 0 || q.Distance(line[len(line)-1]) > samePoint {
				if len(line) > 0 {
					edges = append(edges, i)
				}
				line = append(line, q)
			}
		}
	}
	if round {
		if line[0].Distance(line[len(line)-1]) > samePoint {
			line = append(line, line[0])
			edges = append(edges, group[n-1])
		} else {
			line[len(line)-1] = line[0]
		}
	}
	return line, edges, len(line) > 1
}

// without returns the outline but for the segments of some edges, which must be one
// stretch of it.
func (s templateShape) without(group []int) (plane.Path, []int, bool) {
	n := len(s.edges)
	in := func(k int) bool { return slices.Contains(group, s.edges[(k+n)%n]) }
	start := -1 // the first segment behind the stretch
	for k := range n {
		if !in(k) && in(k-1) {
			if start >= 0 {
				return nil, nil, false
			}
			start = k
		}
	}
	if start < 0 {
		return nil, nil, false
	}
	rest := plane.Path{s.outline[start]}
	var edges []int
	for k := start; k < start+n && !in(k); k++ {
		rest = append(rest, s.outline[k%n+1])
		edges = append(edges, s.edges[k%n])
	}
	return rest, edges, true
}

// edgesBetween returns the edges of the segments of part, which begins from mm along
// a path.
func edgesBetween(path plane.Path, edges []int, from float64, part plane.Path) []int {
	var of []int
	k, end := 0, path[1].Distance(path[0]) // the segment of the path, and how far along it ends
	along := from
	for i := 1; i < len(part); i++ {
		long := part[i].Distance(part[i-1])
		for middle := along + long/2; k+1 < len(edges) && end < middle; {
			k++
			end += path[k+1].Distance(path[k])
		}
		of = append(of, edges[k])
		along += long
	}
	return of
}

// runs returns the edges in their order round the template, each with what is left
// of it; of one that the template ends along, its stitch line.
func (s templateShape) runs() []edgeRun {
	l := layout{outline: s.outline, edges: s.edges}
	return l.runs()
}

// inMiddle reports whether an edge is no edge of the sheet: it lies on the fold of a
// piece that is printed whole.
func (p *Piece) inMiddle(e Edge) bool { return e.OnFold && p.Whole }

// alignedBy returns the keys of the edges by which the template is laid on the cut
// piece, in their order.
func (s templateShape) alignedBy(p *Piece) []string {
	var keys []string
	for _, run := range s.runs() {
		e := p.Edges[run.edge]
		if !s.sewn[run.edge] && !p.inMiddle(e) && run.path.Length() >= leastAligned && !slices.Contains(keys, e.Key) {
			keys = append(keys, e.Key)
		}
	}
	return keys
}
