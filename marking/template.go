package marking

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. A template is cut out in paper, laid on the cut piece by the
// edges that are left, and drawn along and through. So that it lies true, both it and
// the sheet the piece is cut by have the same match marks at those edges. Of a piece
// cut from a tucked block, its tucks are in when the template is laid on it: it has
// no lines for them.

const (
	matchLength = 8.0 // of a match mark, from the edge inward, in mm
	// onEdge bounds how far a match mark of the cut piece may lie off the
	// template's edge, in mm, through rounding.
	onEdge = 1e-6
)

// matchMarks returns the match marks of a piece: at a third and at two thirds of
// every edge at which its template ends where the piece does.
func (p *Piece) matchMarks(shape templateShape) []Mark {
	longest := map[int]plane.Path{}
	for _, run := range p.flat.runs() {
		if run.path.Length() > longest[run.edge].Length() {
			longest[run.edge] = run.path
		}
	}
	of := plane.NewTree(shape.outline)
	var marks []Mark
	for i := range p.Edges {
		path := longest[i]
		if shape.sewn[i] || path.Length() < leastAligned {
			continue
		}
		for _, share := range []float64{1.0 / 3, 2.0 / 3} {
			at, along := path.At(path.Length() * share)
			if of.Nearer(at, onEdge) {
				marks = append(marks, Mark{Role: Match, Path: plane.Path{at, at.Add(along.Left().Mul(matchLength))}})
			}
		}
	}
	return marks
}

// template returns the template of a piece.
func (p *Piece) template(pattern *Pattern) Marking {
	shape := p.templateShape()
	m := Marking{Key: p.Key + " template", Name: p.Name + ": template", Outline: shape.outline}
	var along []string
	for _, run := range shape.runs() {
		e := p.Edges[run.edge]
		switch {
		case e.OnFold:
			m.Marks = append(m.Marks, Mark{FoldEdge, e.Key + ": place on the fold", run.path})
		case shape.sewn[run.edge]:
			m.Marks = append(m.Marks, Mark{Cut, e.Key + ": cut on the stitch line", run.path})
			if !slices.Contains(along, e.Key) {
				along = append(along, e.Key)
			}
		default:
			m.Marks = append(m.Marks, Mark{Cut, e.Key, run.path})
		}
	}
	outline := plane.NewTree(shape.outline)
	lines := p.flat.marks
	if p.Block == nil {
		lines = append(lines[:len(lines):len(lines)], p.foldMarks()...)
	}
	var inside, through []Mark
	for _, line := range lines {
		for _, part := range insideOf(outline, line) {
			inside = append(inside, part)
			if hasWindows(line.Role) {
				through = append(through, part)
			}
		}
	}
	open := openingsFor(outline, through)
	m.Marks = append(m.Marks, inside...)
	m.Marks = append(m.Marks, p.matchMarks(shape)...)
	m.Marks = append(m.Marks, open.windows...)
	m.Marks = append(m.Marks, open.ticks...)
	if p.Grain == nil {
		if g := placeGrain(outline, p.grain, m.Marks); g != nil {
			m.Marks = append(m.Marks, Mark{Grain, "", g})
		}
	}
	m.Notes = append(p.heading(pattern), p.templateNotes(shape, along, open)...)
	for _, run := range shape.runs() {
		if p.Edges[run.edge].OnFold {
			return p.printed(m, run.path[0], inward(run.path))
		}
	}
	return m
}

// insideOf returns the parts of a line that lie in an outline. The longest keeps the
// name.
func insideOf(outline *plane.Tree, m Mark) []Mark {
	line := plane.NewTree(m.Path)
	var parts []Mark
	longest := 0
	for _, s := range insideStretches(outline, line) {
		part := m.Path.Between(s.from, s.to)
		if part.Length() < leastLine {
			continue
		}
		parts = append(parts, Mark{Role: m.Role, Path: part})
		if part.Length() > parts[longest].Path.Length() {
			longest = len(parts) - 1
		}
	}
	if len(parts) > 0 {
		parts[longest].Name = m.Name
	}
	return parts
}

// templateNotes says how a template is cut, laid and used.
func (p *Piece) templateNotes(shape templateShape, along []string, open openings) []string {
	notes := []string{"a template: cut it out of paper, with a sharp blade on a cutting mat and the fingers well behind the blade"}
	by := shape.alignedBy(p)
	lay := "lay it on the cut piece, right side up"
	if len(by) > 0 {
		lay += ", with " + listed(by, "and") + " on the edge and match marks on match marks"
	}
	notes = append(notes, lay)
	if len(by) < 2 {
		notes = append(notes, "fewer than two of its edges are left to lay it by: hold it by its centre or its grain line as well, and pin it")
	}
	if len(along) > 0 {
		notes = append(notes, "draw along "+listed(along, "and")+": that is the stitch line")
	}
	if len(shape.kept) > 0 {
		notes = append(notes, fmt.Sprintf("folds part the stitch line of %s: mark it with a gauge", listed(shape.kept, "and")))
	}
	if len(open.windows) > 0 {
		notes = append(notes, "cut the windows out, and draw along the side of each on which its line goes on over the paper between them")
	}
	if len(open.ticks) > 0 {
		notes = append(notes, "tick the cloth where a line ends at the edge, and join two ticks with a ruler")
	}
	if len(open.unmarked) > 0 {
		notes = append(notes, "no room for a window: prick through "+strings.Join(open.unmarked, ", "))
	}
	return append(notes, "count your pins: none may stay in the cloth")
}
