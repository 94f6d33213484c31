package plane

import (
	"math"
	"slices"
)

// Rules of this file (u, v and g as in fold.go): the strips part the flat plane into cells.
// Folding moves a cell as it is, or mirrors it, and lays cells on each other. What lies in a
// strip beyond the v at which its fold ends is in no cell: there it is drawn in to a line.

// Cell is a part of the flat plane with no fold in it: all of some u and some v.
type Cell struct {
	Fold     int      // the fold whose strip it lies in or before
	Part     CellPart // where it lies beside that
	Mirrored bool     // folded, it lies with its other side up

	folding *Folding
	us, vs  [2]float64
	step    float64 // from a u to its g, or, mirrored, the two together
}

// CellPart says where a cell lies beside a fold.
type CellPart int

// The parts, in the order of u.
const (
	BeforeStrip CellPart = iota // between the strip and that of the fold before
	NearHalf                    // in the strip, up to the crease
	FarHalf                     // in the strip, from the crease on
)

// Cells returns the cells of the plane in the order of u. The last is what lies beyond all
// strips, which counts as lying before a fold that there is not.
func (f *Folding) Cells() []Cell {
	everywhere := [2]float64{math.Inf(-1), math.Inf(1)}
	var all []Cell
	from := math.Inf(-1)
	for k, one := range f.folds {
		s, crease := f.seam[k], one.At+one.Width
		before := Cell{Fold: k, folding: f, us: [2]float64{from, one.At}, vs: everywhere, step: -f.shift[k]}
		near := Cell{Fold: k, Part: NearHalf, folding: f, us: [2]float64{one.At, crease}, vs: [2]float64{one.From, one.To}, step: s - one.At}
		far := Cell{Fold: k, Part: FarHalf, folding: f, us: [2]float64{crease, one.End()}, vs: near.vs, Mirrored: true, step: s + one.End()}
		if one.Back {
			near.Mirrored, near.step = true, s+one.At
			far.Mirrored, far.step = false, s-one.End()
		}
		all = append(all, before, near, far)
		from = one.End()
	}
	n := len(f.folds)
	return append(all, Cell{Fold: n, folding: f, us: [2]float64{from, math.Inf(1)}, vs: everywhere, step: -f.shift[n]})
}

// Folded returns where a place of the cell comes to lie.
func (c Cell) Folded(p Point) Point {
	if c.Mirrored {
		return c.folding.moved(p, c.step-2*c.folding.U(p))
	}
	return c.folding.moved(p, c.step)
}

// Area returns what of a closed path lies in the cell, where that comes to lie: a closed
// path, or nil for nothing. Where the cell parts the path it runs there and back along the
// side of the cell.
func (c Cell) Area(p Path) Path {
	f := c.folding
	for i, out := range []Point{f.out, f.out.Left()} {
		limits := [2][2]float64{c.us, c.vs}[i]
		if !math.IsInf(limits[0], 0) {
			p = p.Side(f.origin.Add(out.Mul(limits[0])), out)
		}
		if !math.IsInf(limits[1], 0) {
			p = p.Side(f.origin.Add(out.Mul(limits[1])), out.Mul(-1))
		}
	}
	if len(p) < 4 {
		return nil
	}
	folded := make(Path, len(p))
	for i, q := range p {
		folded[i] = c.Folded(q)
	}
	return folded
}

// Lines returns the parts of a path that lie in the cell, where they come to lie. What runs
// along a side of the cell lies in it where the cell lies at greater u, or v.
func (c Cell) Lines(p Path) []Path {
	var parts []Path
	going := false // the last part reaches to the end of the segment before
	for i := 1; i < len(p); i++ {
		from, to := c.shares(p[i-1], p[i])
		if from >= to {
			going = false
			continue
		}
		if n := len(parts); going && from == 0 {
			parts[n-1] = append(parts[n-1], c.Folded(p[i-1].Toward(p[i], to)))
		} else {
			parts = append(parts, Path{c.Folded(p[i-1].Toward(p[i], from)), c.Folded(p[i-1].Toward(p[i], to))})
		}
		going = to == 1
	}
	return slices.DeleteFunc(parts, func(part Path) bool { return part.Length() <= touch })
}

// shares returns the shares of the way from a to b between which it lies in the cell; the
// first is not below the second where it does nowhere.
func (c Cell) shares(a, b Point) (from, to float64) {
	from, to = 0, 1
	f := c.folding
	for i, way := range [2][2]float64{{f.U(a), f.U(b)}, {f.V(a), f.V(b)}} {
		limits, step := [2][2]float64{c.us, c.vs}[i], way[1]-way[0]
		switch {
		case math.Abs(step) > touch:
			at := [2]float64{(limits[0] - way[0]) / step, (limits[1] - way[0]) / step}
			from, to = max(from, min(at[0], at[1])), min(to, max(at[0], at[1]))
		case way[0] < limits[0]-touch || way[0] >= limits[1]-touch:
			return 1, 0
		}
	}
	return from, to
}

// Chords returns the stretches over which the line at u lies in a closed path, as lines in the
// order of v. The path may run there and back along a line.
func (f *Folding) Chords(p Path, u float64) []Path {
	var crossed []float64
	for i := 1; i < len(p); i++ {
		a, b := f.U(p[i-1])-u, f.U(p[i])-u
		if (a < 0) != (b < 0) {
			crossed = append(crossed, f.V(p[i-1].Toward(p[i], clampShare(a/(a-b)))))
		}
	}
	slices.Sort(crossed)
	var chords []Path
	for i := 0; i+1 < len(crossed); i += 2 {
		if crossed[i+1]-crossed[i] > touch {
			chords = append(chords, Path{f.At(u, crossed[i]), f.At(u, crossed[i+1])})
		}
	}
	return chords
}

// Across returns what of the chords at u lies where fold k is folded.
func (f *Folding) Across(p Path, u float64, k int) []Path {
	var lines []Path
	for _, chord := range f.Chords(p, u) {
		from, to := max(f.V(chord[0]), f.folds[k].From), min(f.V(chord[1]), f.folds[k].To)
		if to-from > touch {
			lines = append(lines, Path{f.At(u, from), f.At(u, to)})
		}
	}
	return lines
}

// At returns the place at u and v.
func (f *Folding) At(u, v float64) Point {
	return f.origin.Add(f.out.Mul(u)).Add(f.out.Left().Mul(v))
}
