package sheet

import (
	"fmt"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
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
	outline piece.Ring
	sewn    map[int]bool // the edges at whose stitch lines it ends
	// parted are the marked edges that stay as they are cut because folds part their
	// lines, crossed those whose lines cross that of another marked edge.
	parted, crossed []string
}

// templateShapeOf returns the outline of a piece's template, from the piece as it lies
// when it is marked.
func templateShapeOf(p *piece.Piece) templateShape {
	s := templateShape{outline: p.Flat.Outline, sewn: map[int]bool{}}
	for _, group := range markedGroups(p) {
		if outline, ok := cutAlong(p, s.outline, group); ok {
			s.outline = outline
			for _, i := range group {
				s.sewn[i] = true
			}
			continue
		}
		for _, i := range group {
			if len(p.Flat.Lines[i]) == 1 {
				s.crossed = append(s.crossed, p.Edges[i].Key)
			} else {
				s.parted = append(s.parted, p.Edges[i].Key)
			}
		}
	}
	return s
}

// markedGroups returns the marked edges that follow each other, going round.
func markedGroups(p *piece.Piece) [][]int {
	n := len(p.Edges)
	first := slices.IndexFunc(p.Edges, func(e piece.Edge) bool { return !e.Marked })
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
func cutAlong(p *piece.Piece, outline piece.Ring, group []int) (cut piece.Ring, ok bool) {
	round := len(group) == len(p.Edges)
	line, ok := joinedLines(p, group)
	if !ok {
		return piece.Ring{}, false
	}
	if round {
		line.Close(group[len(group)-1])
		cut = line
	} else if cut, ok = replaced(outline, group, line); !ok {
		return piece.Ring{}, false
	}
	area := cut.Path.Area()
	_, _, _, crosses := plane.SelfCrossing(plane.NewTree(cut.Path))
	return cut, !crosses && area >= piece.LeastArea && area < outline.Path.Area()
}

// replaced returns an outline with a line in the place of a group of its edges.
func replaced(outline piece.Ring, group []int, line piece.Ring) (cut piece.Ring, ok bool) {
	rest, whole := outline.Without(group)
	if !whole {
		return piece.Ring{}, false
	}
	_, to, _ := rest.Path.Nearest(line.Path[0])
	_, from, _ := rest.Path.Nearest(line.Path[len(line.Path)-1])
	if to-from < piece.LeastLine {
		return piece.Ring{}, false
	}
	cut = rest.Between(from, to)
	// Where the line ends beside the cutting line a step joins the two, which is no
	// stitch line: it counts with the edge beside it.
	before, after := cut.Edges[len(cut.Edges)-1], cut.Edges[0]
	for i, q := range line.Path {
		of := before
		if i > 0 {
			of = line.Edges[i-1]
		}
		cut.Add(q, of)
	}
	cut.Close(after)
	return cut, true
}

// joinedLines returns the stitch lines of edges that follow each other as one line;
// of all edges, from a corner round to it. ok is false where one is in parts.
func joinedLines(p *piece.Piece, group []int) (line piece.Ring, ok bool) {
	n := len(group)
	round := n == len(p.Edges)
	type seam struct {
		line *plane.Tree
		part piece.Stretch // of it, between its neighbours
	}
	seams := make([]seam, n)
	for k, i := range group {
		if len(p.Flat.Lines[i]) != 1 {
			return piece.Ring{}, false
		}
		line := plane.NewTree(p.Flat.Lines[i][0])
		seams[k] = seam{line, piece.Stretch{From: 0, To: line.Length()}}
	}
	for k := range n {
		next := (k + 1) % n
		if next == 0 && !round {
			break
		}
		// The last crossing of the one that is the first of the other: at the corner.
		if c := plane.Crossings(seams[k].line, seams[next].line); len(c) > 0 && n > 1 {
			seams[k].part.To, seams[next].part.From = c[len(c)-1].A, c[len(c)-1].B
		}
	}
	for k, i := range group {
		part := seams[k].line.Path().Between(seams[k].part.From, seams[k].part.To)
		if len(part) == 0 {
			return piece.Ring{}, false
		}
		for _, q := range part {
			line.Add(q, i)
		}
	}
	return line, len(line.Path) > 1
}

// edges returns the edges of the template, as those of a sheet are, but that of a marked one it is
// told that this is its stitch line, and what allowance the cloth has beyond it.
func (s templateShape) edges(p *piece.Piece, unit length.Unit) []mark.Mark {
	marks := edgeMarks(p, s.outline)
	for i, run := range s.outline.Runs() {
		if s.sewn[run.Edge] {
			marks[i].Name += fmt.Sprintf(" stitch line, %s of cloth beyond", unit.AsWritten(p.Edges[run.Edge].Allowance))
		}
	}
	return marks
}

// inMiddle reports whether an edge is no edge of the cut piece when the template is laid on it:
// both halves of the piece lie open.
func inMiddle(p *piece.Piece, e piece.Edge) bool { return e.OnFold && !p.LiesFolded() }

// alignedBy returns the keys of the edges by which the template is laid on the cut
// piece, in their order.
func (s templateShape) alignedBy(p *piece.Piece) []string {
	return s.keys(p, func(run piece.EdgeRun) bool {
		return !s.sewn[run.Edge] && !inMiddle(p, p.Edges[run.Edge]) && run.Path.Length() >= leastAligned
	})
}

// drawnAlong returns the keys of the edges at whose stitch lines it ends, in their order.
func (s templateShape) drawnAlong(p *piece.Piece) []string {
	return s.keys(p, func(run piece.EdgeRun) bool { return s.sewn[run.Edge] })
}

// keys returns the keys of the edges of some runs of the outline, each once.
func (s templateShape) keys(p *piece.Piece, counts func(run piece.EdgeRun) bool) []string {
	var keys []string
	for _, run := range s.outline.Runs() {
		if key := p.Edges[run.Edge].Key; counts(run) && !slices.Contains(keys, key) {
			keys = append(keys, key)
		}
	}
	return keys
}
