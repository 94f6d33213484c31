package folded

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A piece that is cut from a tucked block never lies flat: what lies flat
// is the block, as it is torn, with the lines of its folds.

// block is the torn block, as much of it as is shown of the piece.
func (w *work) block() mark.Opened {
	b := w.Block
	flat := func(u float64) float64 { return b.Group.Folding.U(b.Group.Folding.Flat(b.At(u, 0))) }
	us := piece.Stretch{From: flat(b.Wide.From) - b.Sides, To: flat(b.Wide.To) + b.Sides}
	vs := piece.Stretch{From: min(b.LowerEdge(), b.UpperEdge()), To: max(b.LowerEdge(), b.UpperEdge())}
	if b.Group.OnAxis {
		us.From = 0
	}
	sides := b.Rectangle(us, vs)
	o := mark.Opened{Outline: sides}
	var half []mark.Mark
	for i := 1; i < len(sides); i++ {
		if middle := sides[i-1].Toward(sides[i], 0.5); !b.Group.OnAxis || b.U(middle) > piece.SamePoint {
			half = append(half, mark.Mark{Role: mark.BlockEdge, Path: plane.Path{sides[i-1], sides[i]}})
		}
	}
	for _, r := range b.Group.Rows {
		for _, f := range r.Folds {
			vs := piece.Stretch{From: b.First(r, f), To: b.Level(r, f)}
			for _, l := range f.Lines {
				if u := b.FlatU(r, l.U); !b.Group.OnAxis || math.Abs(u) > piece.SamePoint {
					half = append(half, mark.Mark{Role: l.Role, Key: r.FoldKey(f, l.Role), Path: b.Lengthwise(u, vs)})
				}
			}
		}
	}
	if !b.Group.OnAxis {
		o.Marks = half
		return o
	}
	o.Outline = w.opened(sides)
	o.Marks = append(w.openedMarks(half), w.centre(func(plane.Path) plane.Path { return b.Lengthwise(0, vs) })...)
	return o
}
