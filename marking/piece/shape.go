package piece

import (
	"math"
	"slices"
	"sort"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file. A shape is a piece at one stage of its making: finished,
// or flat, or with some of its folds in. Unfolding takes it one stage back. Every
// line is taken through every layer of cloth that it lies on: an edge is cut, and
// a line stitched, through all of them.

// Shape is a piece as it lies at one stage of its making.
type Shape struct {
	Outline Ring
	// Lines are the stitch lines, or hem folds, of each edge; one that the folds
	// part comes in several.
	Lines [][]plane.Path
	Marks []mark.Mark // all lines but the edges, and those of tucks and pleats across
	// Words are what is written at places of it, and Measures what is measured on it.
	Words    []mark.Word
	Measures []Measure
	Grain    Grain
	// patches are what the pleats in the edges take up, as closed paths.
	patches []plane.Path
}

// drawnShape returns the piece as it is drawn.
func (p *Piece) drawnShape(unit length.Unit) *Shape {
	s := &Shape{Outline: ringOf(p.Edges, p.Outline), Marks: p.drawnMarks(unit), Words: p.drawnWords(unit), Measures: p.drawnMeasures(unit), Grain: p.grain}
	for _, e := range p.Edges {
		s.Lines = append(s.Lines, []plane.Path{e.Line})
	}
	for _, pleat := range p.EdgePleats {
		s.patches = append(s.patches, pleat.patch)
	}
	return s
}

// unfolded returns the shape before the folds of a group were folded.
func (s *Shape) unfolded(piece *Piece, f FlatGroup, found *Findings) (*Shape, bool) {
	axis := piece.EdgeOnFold()
	outlines := s.parts(piece, f)
	if len(outlines) != 1 {
		s.reportParts(piece, f, len(outlines), found)
		return nil, false
	}
	flat := &Shape{Outline: outlines[0].toCorner(), Grain: s.Grain}
	if !s.Grain.Given {
		flat.Grain = piece.likelyGrain(flat.Outline)
	}
	if axis >= 0 && !f.OnAxis && !flat.keepsAxis(axis) {
		found.Add(f.Rows[0].Place, "run the tucks along the fold or square to it, or draw the whole piece",
			"the folds cross %q, which lies on the fold of the cloth, at a slant: it would not be straight", piece.Edges[axis].Key)
		return nil, false
	}
	flat.Words, flat.Measures = unfoldWords(s.Words, f), unfoldMeasures(s.Measures, f)
	for _, m := range s.Marks {
		flat.Marks = append(flat.Marks, m.InParts(f.unfold(m.Path))...)
	}
	for _, lines := range s.Lines {
		var unfolded []plane.Path
		for _, line := range lines {
			unfolded = append(unfolded, f.unfold(line)...)
		}
		flat.Lines = append(flat.Lines, unfolded)
	}
	return flat, true
}

// parts returns the outlines that unfold from that of the piece: one, or the folds
// part the piece.
func (s *Shape) parts(piece *Piece, f FlatGroup) []Ring {
	outline, axis := s.Outline, piece.EdgeOnFold()
	if f.OnAxis {
		outline = outline.opened(axis, f.Origin, f.Out)
	}
	f.Folding.Over(outline.Path)
	// A sliver beside a corner that a fold just touches is no part of a piece.
	strands := slices.DeleteFunc(f.Folding.Unfolded(outline.Path), func(s plane.Strand) bool {
		return math.Abs(s.Path.Area()) < LeastArea
	})
	if f.OnAxis && len(strands) == 1 {
		strands = plane.HalfPlane(strands[0].Path, strands[0].Source, f.Origin, f.Out)
	}
	var parts []Ring
	for _, strand := range strands {
		part := Ring{Path: strand.Path}
		for _, segment := range strand.Source {
			part.Edges = append(part.Edges, outline.Edges[segment])
		}
		if f.OnAxis && len(strands) == 1 {
			part = Ring{append(slices.Clip(part.Path), part.Path[0]), append(part.Edges, axis)}
		}
		parts = append(parts, part)
	}
	return parts
}

// reportParts says which fold is the first to part the piece, or to leave a hole in it
// where the outline cuts into its flap. Each row is looked at by itself; where none of
// them does it alone, the piece is named.
func (s *Shape) reportParts(piece *Piece, f FlatGroup, parts int, found *Findings) {
	for _, r := range f.AsDrawn {
		parting := func(n int) bool {
			some := r
			some.Folds = r.Folds[:n]
			alone, ok := f.with([]FoldRow{some}).flattened(&Findings{Unit: found.Unit})
			return ok && len(s.parts(piece, alone)) != 1
		}
		if n := sort.Search(len(r.Folds), func(n int) bool { return parting(n + 1) }); n < len(r.Folds) {
			one := r.Folds[n]
			found.Add(r.Place, piece.howManyFit(r, one.Number)+"; a piece that is cut from a tucked block may have more of them: give it a table for its block",
				"the outline cuts into %s from the side: laid flat, the piece would have a hole or come apart beside its %s, %s from %q finished",
				r.name(one), r.stitchingName(), found.length(one.Stitching), r.Base.Name)
			return
		}
	}
	found.Add(f.Rows[0].Place, "the stitching of every fold must lie on the piece, and so must the centre line beside it",
		"the outline cuts into the folds from the side: laid flat, the piece would have a hole or come in %d parts", parts)
}

// keepsAxis reports whether the edge on the fold of the cloth is still one
// straight edge.
func (s *Shape) keepsAxis(axis int) bool {
	parts := 0
	straight := true
	for _, r := range s.Outline.Runs() {
		if r.Edge == axis {
			parts++
			straight = straight && r.Path.Straightness() <= Straightness
		}
	}
	return parts == 1 && straight
}

// unfold returns a line as it lies before the folds were folded. On a piece on the
// fold, layers of the other half may reach over the centre.
func (f FlatGroup) unfold(p plane.Path) []plane.Path {
	strands := f.Folding.Unfolded(p)
	if f.OnAxis {
		strands = nil
		for _, line := range f.withImage(p) {
			for _, s := range f.Folding.Unfolded(line) {
				strands = append(strands, plane.HalfPlane(s.Path, s.Source, f.Origin, f.Out)...)
			}
		}
	}
	var paths []plane.Path
	for _, s := range strands {
		if s.Path.Length() > SamePoint {
			paths = append(paths, s.Path)
		}
	}
	return paths
}

// withImage returns a line and its image on the other half of the piece, as one
// line where they meet on the fold of the cloth: there the folds go on.
func (f FoldGroup) withImage(p plane.Path) []plane.Path {
	image := p.Mirrored(f.Origin, f.Out)
	on := func(q plane.Point) bool { return math.Abs(f.U(q)) < SamePoint }
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
		if q.Distance(image[len(image)-1-i]) > SamePoint {
			return false
		}
	}
	return true
}
