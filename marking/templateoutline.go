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
	outline ring
	sewn    []bool // of each edge: the template ends at its stitch line
	// parted are the marked edges that stay as they are cut because folds part their
	// lines, crossed those whose lines cross that of another marked edge.
	parted, crossed []string
}

// templateShapeOf returns the outline of a piece's template, from the piece as it lies
// when it is marked.
func templateShapeOf(p *Piece) templateShape {
	s := templateShape{outline: p.flat.outline, sewn: make([]bool, len(p.Edges))}
	for _, group := range markedGroups(p) {
		if outline, ok := cutAlong(p, s.outline, group); ok {
			s.outline = outline
			for _, i := range group {
				s.sewn[i] = true
			}
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
func markedGroups(p *Piece) [][]int {
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

// cutAlong returns an outline with a group of marked edges cut away along their
// stitch lines, and whether that leaves a smaller piece, whole and without crossings.
func cutAlong(p *Piece, outline ring, group []int) (cut ring, ok bool) {
	round := len(group) == len(p.Edges)
	line, ok := joinedLines(p, group)
	if !ok {
		return ring{}, false
	}
	if round {
		line.close(group[len(group)-1])
		cut = line
	} else if cut, ok = replaced(outline, group, line); !ok {
		return ring{}, false
	}
	area := cut.path.Area()
	_, _, _, crosses := plane.SelfCrossing(plane.NewTree(cut.path))
	return cut, !crosses && area >= leastArea && area < outline.path.Area()
}

// replaced returns an outline with a line in the place of a group of its edges.
func replaced(outline ring, group []int, line ring) (cut ring, ok bool) {
	rest, whole := outline.without(group)
	if !whole {
		return ring{}, false
	}
	_, to, _ := rest.path.Nearest(line.path[0])
	_, from, _ := rest.path.Nearest(line.path[len(line.path)-1])
	if to-from < leastLine {
		return ring{}, false
	}
	cut = rest.between(from, to)
	// Where the line ends beside the cutting line a step joins the two, which is no
	// stitch line: it counts with the edge beside it.
	before, after := cut.edges[len(cut.edges)-1], cut.edges[0]
	for i, q := range line.path {
		of := before
		if i > 0 {
			of = line.edges[i-1]
		}
		cut.add(q, of)
	}
	cut.close(after)
	return cut, true
}

// joinedLines returns the stitch lines of edges that follow each other as one line;
// of all edges, from a corner round to it. ok is false where one is in parts.
func joinedLines(p *Piece, group []int) (line ring, ok bool) {
	n := len(group)
	round := n == len(p.Edges)
	trees := make([]*plane.Tree, n)
	parts := make([]stretch, n)
	for k, i := range group {
		if len(p.flat.lines[i]) != 1 {
			return ring{}, false
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
	for k, i := range group {
		part := trees[k].Path().Between(parts[k].from, parts[k].to)
		if len(part) == 0 {
			return ring{}, false
		}
		for _, q := range part {
			line.add(q, i)
		}
	}
	return line, len(line.path) > 1
}

// inMiddle reports whether an edge is no edge of the sheet: it lies on the fold of a
// piece that is printed whole.
func inMiddle(p *Piece, e Edge) bool { return e.OnFold && p.Whole }

// alignedBy returns the keys of the edges by which the template is laid on the cut
// piece, in their order.
func (s templateShape) alignedBy(p *Piece) []string {
	var keys []string
	for _, run := range s.outline.runs() {
		e := p.Edges[run.edge]
		if !s.sewn[run.edge] && !inMiddle(p, e) && run.path.Length() >= leastAligned && !slices.Contains(keys, e.Key) {
			keys = append(keys, e.Key)
		}
	}
	return keys
}
