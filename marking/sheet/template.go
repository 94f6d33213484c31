package sheet

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. A template is cut out in paper, laid on the cut piece by the
// edges that are left, and drawn along and through. So that it lies true, both it and
// the sheet the piece is cut by have the same match marks at those edges. A template that
// is printed alone has none: it is laid on the uncut cloth by its grain, and the piece is cut
// round it, with the allowance beyond its stitch lines. Of a piece cut from a tucked block, its
// tucks are in when the template is laid on it: it has no lines for them.

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

// templateOf returns the template of a piece whose lines come onto the cloth in these ways.
func templateOf(p *piece.Piece, ways []source.Transfer, unit length.Unit) *template {
	shape := templateShapeOf(p)
	alone := areTemplateAlone(ways)
	var matches []mark.Mark
	if !alone {
		matches = matchMarks(p, shape)
	}
	m := mark.Marking{Key: p.Key + " template", Name: p.Name + ": template", Kind: mark.Template, Piece: p.Name, Side: mark.RightSideUp, Outline: shape.outline.Path}
	m.Marks = shape.edges(p, unit)
	half := plane.NewTree(shape.outline.Path)
	lines := p.Flat.Marks
	if p.Block == nil {
		lines = append(lines[:len(lines):len(lines)], p.FoldMarks()...)
	}
	for _, line := range lines {
		if line.Role == mark.Notch {
			line = notchOf(half, line)
		}
		m.Marks = append(m.Marks, insideOf(half, line)...)
	}
	for _, w := range p.Flat.Words {
		if half.Holds(w.At) {
			m.Words = append(m.Words, w)
		}
	}
	if p.Block == nil {
		tellInside(&m, p, half, unit)
	}
	m.Marks = append(m.Marks, matches...)
	m = openedOut(p, m, shape.outline)
	var through []mark.Mark
	for _, line := range m.Marks {
		if hasWindows(line.Role) || isLine(p, line) {
			through = append(through, line)
		}
	}
	outline := plane.NewTree(m.Outline)
	through = slices.DeleteFunc(through, func(line mark.Mark) bool { // the centre it ends at
		middle, _ := line.Path.At(line.Path.Length() / 2)
		return line.Role == mark.Centre && outline.Nearer(middle, piece.Rounding)
	})
	open := openingsFor(outline, through)
	m.Marks = append(m.Marks, open.marks()...)
	along := shape.drawnAlong(p)
	laid, cut := layTemplate(p, shape, matches), []string(nil)
	if alone {
		laid, cut = layOnCloth(p), cutRound(p, along, unit)
	}
	m.Steps = slices.Concat(cutTemplate(open), laid, drawTemplate(along, open), notched(m), left(p, shape, open), cut, otherHalf(p))
	m.Steps = append(m.Steps, countPins)
	addGrain(&m, p)
	return &template{m, matches, len(along)+len(open.windows)+len(open.ticks)+len(open.holes)+len(open.dots) > 0}
}

// isLine reports whether a mark is a stitch line that the file asks for by itself, and
// no edge's.
func isLine(p *piece.Piece, m mark.Mark) bool {
	return m.Role == mark.Stitch && slices.ContainsFunc(p.Lines, func(l piece.Line) bool { return l.Role == mark.Stitch && l.Name() == m.Name })
}

// notchOf returns a notch of the piece, which begins at its cut edge, where it begins at the edge
// of the template: that lies further in where it is cut on the stitch line.
func notchOf(outline *plane.Tree, notch mark.Mark) mark.Mark {
	at, _ := outline.Nearest(notch.Path[0])
	notch.Path = notch.Path.Moved(at.Sub(notch.Path[0]))
	return notch
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

// cutTemplate says how a template is cut out.
func cutTemplate(open openings) []string {
	steps := []string{"cut the template out in one piece, with a sharp blade on a cutting mat"}
	if len(open.windows) > 0 {
		steps = append(steps, "cut the hatched windows out of it; the paper between them stays")
	}
	return steps
}

// layTemplate says how a template is laid on the piece.
func layTemplate(p *piece.Piece, shape templateShape, matches []mark.Mark) []string {
	by := shape.alignedBy(p)
	lay := "lay it on the cut piece, right side up"
	if len(by) > 0 {
		lay += ", with " + wording.Listed(by, "and") + " on the edge"
	}
	if p.OnFold && !p.LiesFolded() {
		lay += ", and " + p.Edges[p.EdgeOnFold()].Key + " on the centre line"
	}
	if len(matches) > 0 {
		lay += " and match marks on match marks"
	}
	steps := []string{lay}
	if b := p.Block; b != nil && b.OpenBelow()+b.OpenAtTop() > 0 {
		steps = append(steps, fmt.Sprintf("keep the cloth beyond the %s drawn in while it lies there, as it was when it was cut", b.What()))
	}
	if len(by) < 2 {
		steps = append(steps, "pin it by its centre or its grain line as well, for fewer than two of its edges are left")
	}
	return steps
}

// layOnCloth says how a template is laid that the piece is cut by.
func layOnCloth(p *piece.Piece) []string {
	lay := "lay it on the uncut cloth, right side up, its grain line along the grain"
	if p.LiesFolded() {
		lay += ", and " + p.Edges[p.EdgeOnFold()].Key + " on the fold of the cloth"
	}
	return []string{lay}
}

// cutRound says how a piece is cut by its template, which ends at the stitch lines of some edges.
func cutRound(p *piece.Piece, along []string, unit length.Unit) []string {
	if len(along) == 0 {
		return []string{"cut the cloth along its edge"}
	}
	alike := map[float64][]string{} // by their allowances
	var allowances []float64
	for _, key := range along {
		allowance := p.Edges[p.EdgeNumber(key)].Allowance
		if alike[allowance] == nil {
			allowances = append(allowances, allowance)
		}
		alike[allowance] = append(alike[allowance], key)
	}
	var beyond []string
	for _, allowance := range allowances {
		beyond = append(beyond, fmt.Sprintf("%s beyond %s", unit.AsWritten(allowance), wording.Listed(alike[allowance], "and")))
	}
	return []string{"cut the cloth " + wording.Listed(beyond, "and") + ", and elsewhere along its edge"}
}

// drawTemplate says what is drawn along and through a template.
func drawTemplate(along []string, open openings) []string {
	var steps []string
	if len(along) > 0 {
		steps = append(steps, "draw along "+wording.Listed(along, "and")+": that is the stitch line")
	}
	if len(open.windows) > 0 {
		steps = append(steps, "draw along the side of each window that its arrow points to")
	}
	const tick, prick = "tick the cloth where a line without windows comes out at the edge", "prick through the circles, and dot the cloth there"
	switch ticks, holes := len(open.ticks) > 0, len(open.holes) > 0; {
	case ticks && holes:
		steps = append(steps, tick, prick, "rule the line between two ticks, two dots, or a tick and a dot, and no farther")
	case ticks:
		steps = append(steps, tick+", and rule it from tick to tick")
	case holes:
		steps = append(steps, prick, "rule the line from dot to dot, and no farther")
	}
	return steps
}

// notched says what is done with the notches at the edges of a template.
func notched(m mark.Marking) []string {
	if slices.ContainsFunc(m.Marks, func(one mark.Mark) bool { return one.Role == mark.Notch }) {
		return []string{"tick the cloth at each notch"}
	}
	return nil
}

// left says how lines are marked that a template has no room for, and which are not.
func left(p *piece.Piece, shape templateShape, open openings) []string {
	var steps, plain []string
	for _, e := range p.Edges {
		if !e.Marked && e.Hem == 0 && e.Allowance > 0 {
			plain = append(plain, e.Key)
		}
	}
	if len(open.dotted) > 0 {
		steps = append(steps, fmt.Sprintf("prick through the circles along %s, dot the cloth there, and join the dots", wording.Listed(open.dotted, "and")))
	}
	if len(plain) > 0 {
		steps = append(steps, fmt.Sprintf("leave %s unmarked", wording.Listed(plain, "and")))
	}
	if len(shape.parted) > 0 {
		steps = append(steps, fmt.Sprintf("mark the stitch line of %s with a gauge: folds part it", wording.Listed(shape.parted, "and")))
	}
	if len(shape.crossed) > 0 {
		steps = append(steps, fmt.Sprintf("mark the stitch line of %s with a gauge: it crosses another", wording.Listed(shape.crossed, "and")))
	}
	return steps
}
