package piece

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. A line of a piece, as it is drawn, is as long as what can be seen
// of it when tucks, and pleats across the piece, are in. Drawn flat, it loses what they
// take up; below its end line a fold takes up nothing. Drawn finished, it gains what
// folds that end above it leave open. An edge that runs along a fold, within it, as the
// centre does along a tuck about it, is not taken up by it: it is as long as it lies there.

// LeastTakeUp bounds how much of an edge a fold takes, in mm, to count: more than
// rounding.
const LeastTakeUp = 0.05

// finishedLengths measures lines of a piece with its folds in. The zero value has none: a line
// is as long as it is drawn.
type finishedLengths struct {
	shown []*plane.Folding // of a piece drawn flat, what is folded first first
	// each has every fold by itself of a piece drawn flat that has no one finished
	// shape: its edges still have a length.
	each []*plane.Folding
	open []FlatGroup // of a piece drawn finished
}

// foldByFold measures with every fold by itself.
func foldByFold(all []FoldGroup) finishedLengths {
	var m finishedLengths
	for _, f := range all {
		for _, one := range f.all() {
			strip := f.mirrored([]plane.Fold{f.plane(one, f.begins(one))})
			m.each = append(m.each, plane.NewFolding(f.Origin, f.Out, strip))
		}
	}
	return m
}

// leaving is what a folding leaves of a line of the flat piece.
type leaving func(*plane.Folding, plane.Path) []plane.Path

// length returns how long a line is, in mm, of which folds leave so much.
func (m finishedLengths) length(line plane.Path, left leaving) float64 {
	taken := 0.0
	for _, one := range m.each {
		taken += line.Length() - left.length([]*plane.Folding{one}, line)
	}
	return left.length(m.shown, line) - taken + m.spread(line)
}

// length returns the length of a line of the flat piece when folds are in: of all
// but what they take up.
func (l leaving) length(foldings []*plane.Folding, line plane.Path) float64 {
	lines := []plane.Path{line}
	for _, f := range foldings {
		var parts []plane.Path
		for _, p := range lines {
			parts = append(parts, l(f, p)...)
		}
		lines = parts
	}
	sum := 0.0
	for _, p := range lines {
		sum += p.Length()
	}
	return sum
}

// spread returns how much longer a line of the finished piece is than drawn, because
// folds that end above it leave it open.
func (m finishedLengths) spread(line plane.Path) float64 {
	sum := 0.0
	for _, f := range slices.Backward(m.open) {
		if !f.OnAxis {
			sum += f.Folding.Spread(line)
		} else {
			for _, half := range f.withImage(line) {
				sum += f.Folding.Spread(half) / 2
			}
		}
		earlier := make(plane.Path, len(line))
		for k, q := range line {
			earlier[k] = f.Folding.Flat(q)
		}
		line = earlier
	}
	return sum
}

// flat returns where a place of the piece as it is drawn lies on the flat cloth, beside
// every fold.
func (m finishedLengths) flat(q plane.Point) plane.Point {
	for _, f := range slices.Backward(m.open) {
		q = f.Folding.Flat(q)
	}
	return q
}

// FinishedLength returns how long a line of the piece, as it is drawn, is when tucks, and
// pleats across the piece, are in.
func (p *Piece) FinishedLength(line plane.Path) float64 {
	return p.lengths.length(line, (*plane.Folding).Shown)
}

// FinishedAlong returns how long a line beside an edge, no farther inside than its
// allowance, is when tucks and pleats are in, those in the edge among them. What
// runs along a fold, within it, counts as it lies.
func (p *Piece) FinishedAlong(edge int, line plane.Path) float64 {
	if len(line) < 2 {
		return 0
	}
	length := p.lengths.length(line, (*plane.Folding).Lying)
	for _, pleat := range p.EdgePleats {
		if pleat.Edge == edge {
			length -= pleat.takenFrom(line, p.Edges[edge].Allowance)
		}
	}
	return length
}

// seenLength returns how much of a line can be seen when the piece is sewn, with tucks and
// pleats in: what lies between the stitch lines. A line that lies in the allowances alone
// is measured whole.
func (p *Piece) seenLength(line plane.Path) float64 {
	seen := InsideStretches(p.seams, plane.NewTree(line))
	if len(seen) == 0 {
		return p.FinishedLength(line)
	}
	sum := 0.0
	for _, s := range seen {
		sum += p.FinishedLength(line.Between(s.From, s.To))
	}
	return sum
}

// CutLengths returns the length of every edge on the flat cloth.
func (p *Piece) CutLengths() []float64 {
	cut := make([]float64, len(p.Edges))
	for _, run := range p.Flat.Outline.Runs() {
		cut[run.Edge] += run.Path.Length()
	}
	if p.Block != nil { // it is cut where its tucks are open below their end
		for i, e := range p.Edges {
			cut[i] = p.FinishedLength(e.Path)
		}
	}
	return cut
}
