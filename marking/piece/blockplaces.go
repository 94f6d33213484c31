package piece

import (
	"math"
	"slices"
)

// Rules of this file: places on a block as it is torn, u across its folds from the line
// they are measured from, v along them, and how it lies on the cloth. Its lines run from
// torn edge to torn edge, or to where the folds end.

// FlatU returns where a distance from the base of a row lies on the flat block.
func (b *Block) FlatU(r FoldRow, u float64) float64 {
	return b.Group.Offset(r) + b.Group.side(r)*u
}

// UpperEdge is the v of the torn end at which the piece has its top.
func (b *Block) UpperEdge() float64 {
	if b.Up > 0 {
		return b.long.To + b.ends
	}
	return b.long.From - b.ends
}

// LowerEdge is the v of the other torn end.
func (b *Block) LowerEdge() float64 {
	if b.Up > 0 {
		return b.long.From - b.ends
	}
	return b.long.To + b.ends
}

// Begin returns the v of the torn end at which the folds of a row begin, or from which free
// ones are measured: the top, but for a row that hangs the other way, from an edge at the bottom.
func (b *Block) Begin(r FoldRow) float64 {
	if end := r.Folds[0].End; end.Given && b.Up*end.down*r.Base.Along.Dot(b.Along) > 0 {
		return b.LowerEdge()
	}
	return b.UpperEdge()
}

// First returns the v at which a fold begins: that torn end, or where it begins on the block.
func (b *Block) First(r FoldRow, f Fold) float64 {
	if f.End.Free {
		return b.V(r.Base.At(0, f.End.Begin))
	}
	return b.Begin(r)
}

// Level returns the v at which a fold ends: its end line, or the torn bottom.
func (b *Block) Level(r FoldRow, f Fold) float64 {
	if !f.End.Given {
		return b.LowerEdge()
	}
	return b.V(r.Base.At(0, f.End.V))
}

// OnCentre reports whether a tuck lies on the centre of a piece on the fold.
func (b *Block) OnCentre() bool {
	return b.Group.OnAxis && slices.ContainsFunc(b.Group.Rows, func(r FoldRow) bool { return r.Folds[0].About() })
}

// StitchedAt returns where the stitching of a fold lies on the finished piece, from its
// base: where it was asked for, or, once the block is measured, where it has come to lie
// with every fold taking its share of what they took together. The row is one of those as
// drawn.
func (b *Block) StitchedAt(r FoldRow, f Fold) float64 {
	if b.Measured == nil || f.About() {
		return f.Stitching
	}
	// By the folds before it: beside its base, and between that and the origin.
	taken := f.Near - f.Stitching + b.Group.side(r)*r.moved.Dot(b.Out)
	if r.Makes == TuckFolds {
		taken += f.Width // its fold line stays where it was drawn
	}
	return f.Stitching + (1-b.share())*taken
}

// StitchedAt returns where the stitching of a fold of a row lies on the finished piece, from
// its base; once its block is measured, where that has come to lie.
func (p *Piece) StitchedAt(r FoldRow, f Fold) float64 {
	if p.Block == nil {
		return f.Stitching
	}
	drawn := p.Block.Group.AsDrawn
	return p.Block.StitchedAt(drawn[slices.IndexFunc(drawn, func(one FoldRow) bool { return one.nth == r.nth })], f)
}

// OnCloth returns how far a block reaches across the cloth and along it.
func (b *Block) OnCloth(piece *Piece) (across, along float64) {
	if b.alongGrain(piece) {
		return b.Width, b.Length
	}
	return b.Length, b.Width
}

// alongGrain reports whether the folds of a block run along the grain.
func (b *Block) alongGrain(piece *Piece) bool {
	return math.Abs(piece.Flat.Grain.Direction.Dot(b.Along)) >= math.Abs(piece.Flat.Grain.Direction.Dot(b.Out))
}
