package piece

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. Folds may run from a line of the piece to another, and are open beyond
// both; or from an edge to a line, and are open beyond that. A fold ends where it meets the
// line: its fold line on a piece that is drawn flat, its stitching on one that is drawn
// finished. At an edge it runs to the cutting line, as folds do that hang from one.

// besideRim is how far beside the rim of a piece, in mm, there is cloth of it for certain.
const besideRim = 2 * SamePoint

// bound is what folds, or a line, run from or to.
type bound struct {
	source.Text
	tree *plane.Tree
	edge int // its number, or -1 for a line of the piece
}

// boundOf finds the edge or line that a text names.
func (p *Piece) boundOf(name source.Text, found *Findings) (bound, bool) {
	if line := p.Line(name.V); line != nil {
		return bound{name, plane.NewTree(line.Path), -1}, true
	}
	if i := p.EdgeNumber(name.V); i >= 0 {
		return bound{name, plane.NewTree(p.Edges[i].Path), i}, true
	}
	found.noCourse(p, name)
	return bound{}, false
}

// Between returns what the folds of a row run from and to, in the words of the file; "" for
// most.
func (r FoldRow) Between() (from, to string) { return r.ends.From.V, r.ends.To.V }

// between returns a row whose folds run between two lines, or a line and an edge, with their
// ends. The piece is as it is drawn, drawn says where a fold lies there.
func (r FoldRow) between(piece *Piece, drawn func(Fold) float64, found *Findings) (FoldRow, bool) {
	from, okFrom := piece.boundOf(r.ends.From, found)
	to, okTo := piece.boundOf(r.ends.To, found)
	switch {
	case !okFrom || !okTo:
		return r, false
	case from.V == to.V:
		found.Add(to.Place, "name two lines that lie apart", "the %ss would end where they begin", r.Makes)
		return r, false
	case from.edge >= 0 && to.edge >= 0:
		found.Add(from.Place, "leave from and to out, and they run from edge to edge", "%q and %q are both edges", from.V, to.V)
		return r, false
	case from.edge >= 0:
		return r.betweenEdge(piece, from, to, drawn, found)
	case to.edge >= 0:
		return r.betweenEdge(piece, to, from, drawn, found)
	}
	r.Folds = slices.Clone(r.Folds)
	for k := range r.Folds {
		f := &r.Folds[k]
		begin, okBegin := r.meetsAt(piece, from, *f, drawn(*f), found)
		if !okBegin {
			return r, false
		}
		end, okEnd := r.meetsAt(piece, to, *f, drawn(*f), found)
		if !okEnd {
			return r, false
		}
		f.End = FoldEnd{Given: true, Free: true, V: end, Begin: begin, down: math.Copysign(1, end-begin), length: math.Abs(end - begin)}
		if f.End.length < LeastLine || f.End.down != r.Folds[0].End.down {
			found.Add(to.Place, "name two lines that lie apart over all "+r.Makes.String()+"s", "%q and %q come together at %s", from.V, to.V, r.name(*f))
			return r, false
		}
	}
	return r, true
}

// betweenEdge returns a row that runs between an edge and a line.
func (r FoldRow) betweenEdge(piece *Piece, edge, line bound, drawn func(Fold) float64, found *Findings) (FoldRow, bool) {
	r.Folds = slices.Clone(r.Folds)
	over := make([]Stretch, len(r.Folds)) // the cloth on which each ends
	down := 0.0
	for k := range r.Folds {
		f, u := &r.Folds[k], drawn(r.Folds[k])
		v, ok := r.meetsAt(piece, line, *f, u, found)
		if !ok {
			return r, false
		}
		f.End = FoldEnd{Given: true, V: v}
		if over[k], ok = r.clothAt(piece, u, v); !ok {
			r.reportNotBetween(piece, *f, u, found)
			return r, false
		}
		switch onEdge := func(v float64) bool { return edge.tree.Nearer(r.Base.At(u, v), 2*besideRim) }; {
		case down != 0:
		case onEdge(over[k].From):
			down = 1
		case onEdge(over[k].To):
			down = -1
		}
	}
	// They may all run into its neighbour, as at a shoulder: then it must lie on one side of the line.
	if _, vs := r.Base.Extent(edge.tree.Path()); down == 0 {
		switch v := r.Folds[0].End.V; {
		case vs.To < v:
			down = 1
		case vs.From > v:
			down = -1
		}
	}
	if down == 0 {
		found.Add(edge.Place, "name the edge that they run into, or a second line", "none of the %ss runs into %q", r.Makes, edge.V)
		return r, false
	}
	for k := range r.Folds {
		end := &r.Folds[k].End
		end.down, end.Begin = down, over[k].From
		if down < 0 {
			end.Begin = over[k].To
		}
		end.length = math.Abs(end.V - end.Begin)
	}
	return r, true
}

// clothAt returns the stretch of cloth at u that holds v; along the very rim of the piece, that
// beside it.
func (r FoldRow) clothAt(piece *Piece, u, v float64) (Stretch, bool) {
	for _, u := range []float64{u, u + besideRim, u - besideRim} {
		for _, s := range r.Base.Chords(piece.Tree, u) {
			if s.within(v) {
				return s, true
			}
		}
	}
	return Stretch{}, false
}

// meetsAt returns where a fold at u meets a line, along the base. An end of the line that lies off
// the fold by no more than an edge may bend counts as meeting it.
func (r FoldRow) meetsAt(piece *Piece, b bound, f Fold, u float64, found *Findings) (v float64, ok bool) {
	all := r.Base.metAt(b.tree, u, Straightness)
	slices.Sort(all)
	all = slices.CompactFunc(all, func(a, b float64) bool { return math.Abs(a-b) < SamePoint })
	switch len(all) {
	case 1:
		return all[0], true
	case 0:
		found.Add(b.Place, piece.howManyFit(r, f.Number)+"; have the line run across all of them",
			"%s does not meet %q: it lies %s from %q", r.name(f), b.V, found.length(u), r.Base.Name)
	default:
		found.Add(b.Place, "name a line that each of them meets once", "%s meets %q %d times, so nothing says where it ends", r.name(f), b.V, len(all))
	}
	return 0, false
}

// reportNotBetween says that there is no cloth from one end of a fold to the other.
func (r FoldRow) reportNotBetween(piece *Piece, f Fold, u float64, found *Findings) {
	from, to := r.Between()
	found.Add(r.Place, piece.howManyFit(r, f.Number), "%s leaves the piece between %q and %q: %s from %q there is no cloth all the way from one to the other",
		r.name(f), from, to, found.length(u), r.Base.Name)
}
