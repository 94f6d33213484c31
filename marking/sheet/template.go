package sheet

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file. A template is cut out in paper, laid on the cut piece by the
// edges that are left, and drawn along and through. So that it lies true, both it and
// the sheet the piece is cut by have the same match marks at those edges. Of a piece
// cut from a tucked block, its tucks are in when the template is laid on it: it has
// no lines for them.

// matchLength is that of a match mark, from the edge inward, in mm.
const matchLength = 8.0

// matchNote stands on a sheet by which a piece is cut that has a template.
const matchNote = "copy the match marks onto the edges of the cloth: its template is laid by them"

// matchMarks returns the match marks of a piece: at a third and at two thirds of
// every edge at which its template ends where the piece does. In a narrow place they
// are shorter, so that they stay on the template.
func matchMarks(p *piece.Piece, shape templateShape) []mark.Mark {
	longest := map[int]plane.Path{}
	for _, run := range p.Flat.Outline.Runs() {
		if run.Path.Length() > longest[run.Edge].Length() {
			longest[run.Edge] = run.Path
		}
	}
	of := plane.NewTree(shape.outline.Path)
	var marks []mark.Mark
	for i, e := range p.Edges {
		path := longest[i]
		if shape.sewn[i] || inMiddle(p, e) || path.Length() < leastAligned {
			continue
		}
		for _, share := range []float64{1.0 / 3, 2.0 / 3} {
			at, along := path.At(path.Length() * share)
			if !of.Nearer(at, piece.Rounding) {
				continue
			}
			long := matchLength
			if end, ok := comesOut(of, at.Add(along.Left().Mul(2*piece.LeastLine)), along.Left()); ok {
				long = math.Min(long, at.Distance(end)/2)
			}
			marks = append(marks, mark.Mark{Role: mark.Match, Path: plane.Path{at, at.Add(along.Left().Mul(long))}})
		}
	}
	return marks
}

// template is the template of a piece.
type template struct {
	mark.Marking
	matches []mark.Mark // its match marks, which the sheet the piece is cut by has too
	useful  bool        // there is something to be drawn along it or through it
}

// templateOf returns the template of a piece.
func templateOf(p *piece.Piece, pattern *garment.Pattern) *template {
	shape := templateShapeOf(p)
	matches := matchMarks(p, shape)
	m := mark.Marking{Key: p.Key + " template", Name: p.Name + ": template", Kind: mark.Template, Piece: p.Name, Side: mark.RightSideUp, Outline: shape.outline.Path}
	m.Marks = edgeMarks(p, shape.outline, shape.sewn)
	half := plane.NewTree(shape.outline.Path)
	lines := p.Flat.Marks
	if p.Block == nil {
		lines = append(lines[:len(lines):len(lines)], p.FoldMarks()...)
	}
	for _, line := range lines {
		m.Marks = append(m.Marks, insideOf(half, line)...)
	}
	m.Marks = append(m.Marks, matches...)
	m = openedOut(p, m, shape.outline)
	var through []mark.Mark
	for _, line := range m.Marks {
		if hasWindows(line.Role) || isLine(p, line) {
			through = append(through, line)
		}
	}
	open := openingsFor(plane.NewTree(m.Outline), through)
	m.Marks = slices.Concat(m.Marks, open.windows, open.ticks, open.holes)
	along := shape.drawnAlong(p)
	m.Steps = templateSteps(p, shape, along, open)
	addGrain(&m, p)
	return &template{m, matches, len(along)+len(open.windows)+len(open.ticks) > 0}
}

// isLine reports whether a mark is a stitch line that the file asks for by itself, and
// no edge's.
func isLine(p *piece.Piece, m mark.Mark) bool {
	return m.Role == mark.Stitch && slices.ContainsFunc(p.Lines, func(l piece.Line) bool { return l.Role == mark.Stitch && l.Key == m.Name })
}

// insideOf returns the parts of a line that lie in an outline.
func insideOf(outline *plane.Tree, m mark.Mark) []mark.Mark {
	var parts []plane.Path
	for _, s := range piece.InsideStretches(outline, plane.NewTree(m.Path)) {
		if part := m.Path.Between(s.From, s.To); part.Length() >= piece.LeastLine {
			parts = append(parts, part)
		}
	}
	return m.InParts(parts)
}

// templateSteps says how a template is cut, laid and used.
func templateSteps(p *piece.Piece, shape templateShape, along []string, open openings) []string {
	steps := []string{"a template: join its pages, then cut it out with a sharp blade on a cutting mat, the fingers well behind the blade"}
	by := shape.alignedBy(p)
	lay := "lay it on the cut piece, right side up"
	if len(by) > 0 {
		lay += ", with " + wording.Listed(by, "and") + " on the edge and match marks on match marks"
	}
	steps = append(steps, lay)
	if len(by) < 2 {
		steps = append(steps, "fewer than two of its edges are left to lay it by: hold it by its centre or its grain line as well, and pin it")
	}
	if len(along) > 0 {
		steps = append(steps, "draw along "+wording.Listed(along, "and")+": that is the stitch line")
	}
	if len(shape.parted) > 0 {
		steps = append(steps, fmt.Sprintf("folds part the stitch line of %s: mark it with a gauge", wording.Listed(shape.parted, "and")))
	}
	if len(shape.crossed) > 0 {
		steps = append(steps, fmt.Sprintf("the stitch line of %s crosses another: mark it with a gauge", wording.Listed(shape.crossed, "and")))
	}
	if len(open.windows) > 0 {
		steps = append(steps, "cut the windows out, and draw along the side of each on which its line goes on over the paper between them")
	}
	if len(open.ticks) > 0 {
		steps = append(steps, "where a line comes out at the edge, tick the cloth, and lay a ruler from tick to tick")
	}
	if len(open.holes) > 0 {
		steps = append(steps, "prick through the circles at the ends of lines, and rule from circle to circle, or from the edge to a circle, and no farther")
	}
	if len(open.unmarked) > 0 {
		steps = append(steps, fmt.Sprintf("there is no room for a window along %s: prick through it", strings.Join(open.unmarked, ", ")))
	}
	steps = append(steps, otherHalf(p)...)
	return append(steps, "count your pins: none may stay in the cloth")
}
