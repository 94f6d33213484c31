package arrange

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: what is folded under along an edge is no place for words, since they
// would come to lie inside the garment, and be traced onto it.

// hemmed reports whether a place lies between a line to be folded along and the edge that
// is folded there: on that side of the line on which the outline is nearer.
func (p Piece) hemmed(at plane.Point) bool {
	for _, l := range p.Lines {
		if l.Role != mark.Fold {
			continue
		}
		on, along := l.Nearest(at)
		across := at.Sub(on).Unit()
		if along <= 0 || along >= l.Length() || across == (plane.Point{}) {
			continue
		}
		if p.edgeFrom(on, across) < p.edgeFrom(on, across.Mul(-1)) {
			return true
		}
	}
	return false
}

// edgeFrom is how far off the outline lies in a direction of length 1, in mm; without
// bounds where it does not.
func (p Piece) edgeFrom(at, u plane.Point) float64 {
	path, nearest := p.Outline.Path(), math.Inf(1)
	beyond := at.Add(u.Mul(p.Bounds.Width() + p.Bounds.Height()))
	p.Outline.Within(plane.EmptyBox().With(at).With(beyond), func(i int) bool {
		a, b := path[i].Sub(at), path[i+1].Sub(at)
		ca, cb := u.Cross(a), u.Cross(b)
		if ca*cb <= 0 && ca != cb {
			if d := a.Toward(b, ca/(ca-cb)).Dot(u); d > onFold {
				nearest = math.Min(nearest, d)
			}
		}
		return true
	})
	return nearest
}

// onFold is how near to a fold line the outline is that only ends there, in mm.
const onFold = 0.01
