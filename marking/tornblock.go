package marking

import (
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: places on a block as it is torn, u across its folds from the line
// they are measured from, v along them, and how it lies on the cloth. Its lines run from
// torn edge to torn edge, or to where the folds end.

// at returns a place of the block, flat or finished.
func (b *Block) at(u, v float64) plane.Point {
	return b.folding.origin.Add(b.folding.out.Mul(u)).Add(b.folding.out.Left().Mul(v))
}

// u is how far across the folds a place lies, v how far along them.
func (b *Block) u(p plane.Point) float64 { return p.Sub(b.folding.origin).Dot(b.folding.out) }
func (b *Block) v(p plane.Point) float64 { return p.Sub(b.folding.origin).Dot(b.folding.out.Left()) }

// across returns a line across the folds, along one along them.
func (b *Block) across(us stretch, v float64) plane.Path {
	return plane.Path{b.at(us.from, v), b.at(us.to, v)}
}
func (b *Block) along(u float64, vs stretch) plane.Path {
	return plane.Path{b.at(u, vs.from), b.at(u, vs.to)}
}

// rectangle returns a closed path, counter-clockwise.
func (b *Block) rectangle(us, vs stretch) plane.Path {
	return plane.Path{b.at(us.from, vs.from), b.at(us.to, vs.from), b.at(us.to, vs.to), b.at(us.from, vs.to), b.at(us.from, vs.from)}
}

// flatU returns where a distance from the base of a row lies on the flat block.
func (b *Block) flatU(r row, u float64) float64 {
	return b.folding.offset(r) + b.folding.side(r)*u
}

// top is the v of the torn end at which the piece has its top.
func (b *Block) top() float64 {
	if b.up > 0 {
		return b.vs.to + b.Ends
	}
	return b.vs.from - b.Ends
}

// bottom is the v of the other torn end.
func (b *Block) bottom() float64 {
	if b.up > 0 {
		return b.vs.from - b.Ends
	}
	return b.vs.to + b.Ends
}

// begin returns the v of the torn end at which the folds of a row begin: the top,
// but for a row that hangs the other way, from an edge at the bottom.
func (b *Block) begin(r row) float64 {
	if end := r.folds[0].end; end.given && b.up*end.down*r.base.along.Dot(b.folding.out.Left()) > 0 {
		return b.bottom()
	}
	return b.top()
}

// level returns the v at which a fold ends: its end line, or the torn bottom.
func (b *Block) level(r row, f fold) float64 {
	if !f.end.given {
		return b.bottom()
	}
	return b.v(r.base.at(0, f.end.v))
}

// onCentre reports whether a tuck lies on the centre of a piece on the fold.
func (b *Block) onCentre() bool {
	return b.folding.onAxis && slices.ContainsFunc(b.folding.rows, func(r row) bool { return r.folds[0].about() })
}

// stitchedAt returns where the stitching of a fold lies on the finished piece, from its
// base: where it was asked for, or, once the block is measured, where it has come to lie
// with every fold taking its share of what they took together. The row is one of those
// drawn, by its number.
func (b *Block) stitchedAt(number int, f fold) float64 {
	if b.Measure == nil || f.about() {
		return f.stitching
	}
	r := b.folding.asDrawn[number]
	share := (b.Width - b.Measure.Top) / b.TakeUp
	// By the folds before it: beside its base, and between that and the origin.
	taken := f.near - f.stitching + b.folding.side(r)*b.folding.moved[number].Dot(b.folding.out)
	if r.kind == tuckFolds {
		taken += f.width // its fold line stays where it was drawn
	}
	return f.stitching + (1-share)*taken
}

// onCloth returns how far a block reaches across the cloth and along it.
func (b *Block) onCloth(piece *Piece) (across, along float64) {
	if b.alongGrain(piece) {
		return b.Width, b.Length
	}
	return b.Length, b.Width
}

// alongGrain reports whether the folds of a block run along the grain.
func (b *Block) alongGrain(piece *Piece) bool {
	return math.Abs(piece.grainDirection.Dot(b.folding.out.Left())) >= math.Abs(piece.grainDirection.Dot(b.folding.out))
}
