package piece

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. Folds that do not run from edge to edge end at a line: level,
// the row's length below the place where the stitch line of the edge they hang
// from meets their base; or following that stitch line, the same length from all
// of it; or stepped, each fold longer than the one before by the same step. Where they
// hang from several edges, the stitch lines of these are one. Or folds run between two
// lines (foldbetween.go).

// FoldEnd is the level at which a fold ends that does not run from edge to edge.
type FoldEnd struct {
	Given bool
	V     float64 // along the base
	// Free tells that the fold begins on the piece as well, at Begin, and is open beyond either end.
	Free bool
	// Begin is the v from which length is counted: where the stitch line meets the base that it is
	// measured from; where a fold begins that runs to or from a line.
	Begin  float64
	down   float64 // +1 where the cloth below lies at greater v, -1 where at less
	length float64 // from Begin to V
}

// Downward is the direction in which the folds of a row run to their ends; none for a row
// from edge to edge.
func (r FoldRow) Downward() plane.Point { return r.Base.Along.Mul(r.Folds[0].End.down) }

// ended returns a row with the ends of its folds. The piece is as it is drawn; drawn
// says how far from the base a fold's stitching lies there.
func (r FoldRow) ended(piece *Piece, drawn func(Fold) float64, found *Findings) (FoldRow, bool) {
	switch {
	case r.ends.From.Given():
		return r.between(piece, drawn, found)
	case !r.ends.Below.Given():
		return r, true
	}
	from, ok := piece.checkHung(r.ends, found)
	if !ok {
		return r, false
	}
	hung := piece.stitchLineOf(from)
	begin, along, meets := r.Base.meets(piece.Outline, hung)
	if slices.Contains(from, r.Base.Edge) || !meets {
		found.Add(r.ends.Below.Place, "name the edge at whose stitch line the "+r.Makes.String()+"s begin",
			"the stitch line of %s does not meet %q, so nothing can be measured from there", r.ends.Edges(), r.Base.Name)
		return r, false
	}
	// The cloth lies to the left of every edge's line.
	_, dir := hung.At(along)
	end := FoldEnd{Given: true, down: 1, Begin: begin, length: r.ends.Length.V}
	if dir.Left().Dot(r.Base.Along) < 0 {
		end.down = -1
	}
	var follow *plane.Tree // the line at the row's length from the stitch line; nil where nothing is left
	reach := piece.Tree.Bounds().Width() + piece.Tree.Bounds().Height()
	if r.ends.Shape.V == source.EndFollow {
		if line, ok := plane.Offset(hung, end.length, reach); ok {
			follow = plane.NewTree(line.Path)
		}
	}
	r.Folds = slices.Clone(r.Folds)
	for k := range r.Folds {
		f := &r.Folds[k]
		f.End = end
		switch r.ends.Shape.V {
		case source.EndStepped:
			f.End.length += float64(f.Number) * r.ends.Step.V
		case source.EndFollow:
			length, ok := following(r, follow, end, drawn(*f), reach)
			if !ok {
				found.Add(r.ends.Shape.Place, `have them end level: end = "level"`,
					"%s has no place to end: nothing beside it lies %s from the stitch line of %s",
					r.name(*f), found.Written(end.length), r.ends.Edges())
				return r, false
			}
			f.End.length = length
		}
		f.End.V = f.End.Begin + f.End.down*f.End.length
	}
	return r, true
}

// following returns how far below the begin of the row a fold at u ends that ends
// on a line. Nothing of the piece lies farther than reach from the begin.
func following(r FoldRow, line *plane.Tree, end FoldEnd, u, reach float64) (float64, bool) {
	if line == nil {
		return 0, false
	}
	// The lowest place above which no cloth is farther from the edge.
	fold := plane.NewTree(plane.Path{r.Base.At(u, end.Begin-reach), r.Base.At(u, end.Begin+reach)})
	length, met := math.Inf(-1), false
	for _, c := range plane.Crossings(line, fold) {
		length, met = max(length, end.down*(r.Base.V(c.At)-end.Begin)), true
	}
	return length, met
}

// UpTo returns the stretch of a line that holds the end, from its upper end, or from where a
// free fold begins, down to there.
func (e FoldEnd) UpTo(stretches []Stretch) ([]Stretch, bool) {
	for _, s := range stretches {
		switch {
		case !s.within(e.V):
			continue
		case e.Free && !s.within(e.Begin):
			return nil, false
		case e.Free:
			return []Stretch{{min(e.Begin, e.V), max(e.Begin, e.V)}}, true
		case e.down > 0:
			return []Stretch{{s.From, e.V}}, true
		}
		return []Stretch{{e.V, s.To}}, true
	}
	return nil, false
}

// within reports whether a place lies within a stretch, off its ends.
func (s Stretch) within(v float64) bool { return v >= s.From+SamePoint && v <= s.To-SamePoint }

// stitched reports whether a fold is stitched at v, where there is cloth.
func (e FoldEnd) stitched(v float64) bool {
	return !e.Given || e.down*(v-e.V) < 0 && (!e.Free || e.down*(v-e.Begin) > 0)
}

// Levels are the places along the base where a fold ends on the piece: where it ends, and
// where it begins if it is free.
func (e FoldEnd) Levels() []float64 {
	switch {
	case !e.Given:
		return nil
	case e.Free:
		return []float64{e.V, e.Begin}
	}
	return []float64{e.V}
}

// EndLines returns the lines along which a row ends: across every strip, from one
// to the next; of free folds that along which they begin as well. There are none for a row
// that runs from edge to edge.
func (r FoldRow) EndLines() []plane.Path {
	var lines []plane.Path
	for k := range r.Folds[0].End.Levels() {
		var line plane.Path
		for _, f := range r.Folds {
			for _, u := range []float64{f.endLine.From, f.endLine.To} {
				line = append(line, r.Base.At(u, f.End.Levels()[k]))
			}
		}
		lines = append(lines, line.WithoutStraightPoints())
	}
	return lines
}

// reportEndOutside says why a fold cannot end where it is to: the cloth at u
// either ends before or begins after that.
func reportEndOutside(piece *Piece, r FoldRow, f Fold, u float64, chords []Stretch, found *Findings) {
	end := f.End
	if r.ends.From.Given() {
		r.reportNotBetween(piece, f, u, found)
		return
	}
	highest, lowest := math.Inf(1), math.Inf(-1) // how far below the begin there is cloth
	for _, c := range chords {
		highest = min(highest, end.down*(c.From-end.Begin), end.down*(c.To-end.Begin))
		lowest = max(lowest, end.down*(c.From-end.Begin), end.down*(c.To-end.Begin))
	}
	if highest > end.length-SamePoint {
		found.Add(r.Place, piece.howManyFit(r, f.Number),
			"%s has no cloth: %s from %q the piece begins %s the stitch line of %s, and the %ss are to end %s it",
			r.name(f), found.length(u), r.Base.Name, below(found.length, highest), r.ends.Edges(), r.Makes, below(found.Written, end.length))
		return
	}
	found.Add(r.ends.Length.Place, r.Makes.String()+"s end on the piece, below the edge they begin at",
		"the end line lies outside the piece: at %s %d, %s from %q, the cloth ends %s the stitch line of %s, and the %ss are to end %s it",
		r.Makes, f.Number+1, found.length(u), r.Base.Name, below(found.length, lowest), r.ends.Edges(), r.Makes, below(found.Written, end.length))
}

// below says how far below a line a place lies, or above it.
func below(length func(float64) string, v float64) string {
	if v < 0 {
		return length(-v) + " above"
	}
	return length(v) + " below"
}
