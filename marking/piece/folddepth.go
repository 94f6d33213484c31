package piece

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file. How deep a fold that does not run from edge to edge is stitched is
// told along its own fold line, up from its end: to the stitch line that it begins at, to
// the cut edge over that, and to the torn edge of a block. Where the neck rises, that is
// more with every fold, though all may end level; a fold beyond the neck begins at the
// shoulder. All of it is measured on the flat cloth, where a ruler is laid along the
// fold; cut through all its layers, a tuck has its fold as long there as it is in the
// finished piece.

// Depth is how deep a fold ends, in mm along its fold line on the flat cloth.
type Depth struct {
	Edge int     // the number of the edge at whose line the fold begins
	Sewn float64 // below the line of that edge; below 0 it ends above it, in the allowance
	Cut  float64 // below the cut edge
	Torn float64 // below the torn edge of the block; 0 for a piece that has none
	Long float64 // how long a fold is that begins on the piece as well; 0 for others
}

// Depths returns how deep the folds of a row end, in their order; none for a row that runs
// from edge to edge, or where one of its fold lines lies on the very edge of the piece.
func (p *Piece) Depths(r FoldRow) []Depth {
	var sewn, ruled []*plane.Tree // the line of each edge, as far as it is sewn, and all of it
	for _, e := range p.Edges {
		sewn, ruled = append(sewn, plane.NewTree(e.Sewn)), append(ruled, plane.NewTree(e.Line))
	}
	var all []Depth
	for _, f := range r.Folds {
		cloth, ok := p.clothOver(r, f)
		if !ok {
			return nil
		}
		flat := func(at plane.Point) float64 { return f.End.down * r.Base.V(p.lengths.flat(at)) }
		end := flat(r.Base.At(r.Base.U(cloth[0]), f.End.V))
		edge, begin, ok := lastCrossed(cloth, sewn)
		if !ok { // it lies in the allowance beside its edge
			edge, begin, ok = lastCrossed(cloth, ruled)
		}
		if !ok {
			return nil
		}
		d := Depth{Edge: edge, Sewn: end - flat(begin), Cut: end - flat(cloth[1])}
		if f.End.Free {
			d.Long = end - flat(r.Base.At(r.Base.U(cloth[0]), f.End.Begin))
		}
		if p.Block != nil {
			d.Torn = math.Abs(p.Block.Level(r, f) - p.Block.Begin(r))
		}
		all = append(all, d)
	}
	return all
}

// clothOver returns the line of a fold, as the piece is drawn, over the whole cloth that
// holds its end: from its lower end up.
func (p *Piece) clothOver(r FoldRow, f Fold) (line plane.Path, ok bool) {
	if !f.End.Given {
		return nil, false
	}
	// A flap that hangs over the neck has its fold beside the piece, but not its stitching;
	// and along the very rim there is cloth on one side only.
	fold, stitching := p.foldDrawn(r, f), p.stitchingDrawn(f)
	for _, u := range []float64{fold, fold + besideRim, fold - besideRim, stitching, stitching + besideRim, stitching - besideRim} {
		for _, s := range r.Base.Chords(p.Tree, u) {
			if _, holds := f.End.UpTo([]Stretch{s}); !holds {
				continue
			}
			line = r.Base.Lengthwise(u, s)
			if f.End.down > 0 {
				line = line.Reversed()
			}
			return line, true
		}
	}
	return nil, false
}

// stitchingDrawn is how far from its base a fold is measured as the piece is drawn.
func (p *Piece) stitchingDrawn(f Fold) float64 {
	if p.DrawnFinished {
		return f.Stitching
	}
	return f.At
}

// foldDrawn is how far from its base the fold line of a fold lies as the piece is drawn.
// Drawn finished, that of a tuck is the edge of its flap, which over the fold of the cloth
// lies on the other half; that of a pleat lies where the pleat is laid.
func (p *Piece) foldDrawn(r FoldRow, f Fold) float64 {
	if !p.DrawnFinished || r.Makes == PleatFolds {
		return p.stitchingDrawn(f)
	}
	u := f.reach().To
	if f.Toward {
		u = f.reach().From
	}
	u += p.StitchedAt(r, f) - f.Stitching
	if axis := p.EdgeOnFold(); r.Mirrored {
		e := p.Edges[axis].Path
		if at := r.Base.At(u, 0); at.Sub(e[0]).Dot(Inward(e)) < 0 {
			u = r.Base.U(at.Mirrored(e[0], Inward(e)))
		}
	}
	return u
}

// lastCrossed returns the edge by whose line a rising line leaves the garment at last, and
// where.
func lastCrossed(rising plane.Path, lines []*plane.Tree) (edge int, at plane.Point, ok bool) {
	direction := rising.EndDirection()
	// An edge without an allowance is sewn at the very end of the rising line.
	line := plane.NewTree(plane.Path{rising[0], rising[1].Add(direction.Mul(SamePoint))})
	highest := math.Inf(-1)
	for i, tree := range lines {
		for _, c := range plane.Crossings(line, tree) {
			// The garment lies to the left of every stitch line.
			if _, along := tree.Path().At(c.B); c.A > highest && along.Cross(direction) < 0 {
				highest, edge, at, ok = c.A, i, c.At, true
			}
		}
	}
	return edge, at, ok
}
