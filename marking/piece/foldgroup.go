package piece

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. All rows that run the same way fold the cloth together: they
// are one group. Rows that run square to them are another, and what is folded
// first is folded first in the file. On a piece that is half of one on the fold,
// every row along the fold has its mirror image on the other half.
//
// Flat distances are known wherever the outline is drawn flat. Where it is drawn
// finished, only those from the base of a row are: its stitching follows from
// them, and the flat places of everything else from those.

// FoldGroup is the rows of a piece that run the same way.
type FoldGroup struct {
	Frame  // its origin lies on a line that rows are measured from, and they run along it
	Rows   []FoldRow
	OnAxis bool // the rows run along the fold of the cloth, on which the origin lies
}

// FlatGroup is a group whose rows have found their places on the flat cloth.
type FlatGroup struct {
	FoldGroup
	AsDrawn []FoldRow      // the rows before they were moved there, in the same order
	Folding *plane.Folding // how they fold the plane
	Of      []FoldOf       // of each fold of Folding, what it is
}

// FoldOf is a fold of a row. One on the other half of a piece on the fold is the image of one.
type FoldOf struct {
	Fold
	Row FoldRow
}

// with returns the group with other rows.
func (f FoldGroup) with(rows []FoldRow) FoldGroup {
	f.Rows = rows
	return f
}

// aligned bounds how far, in mm over the extent of the piece, two directions may
// part and still be one, and stand off a right angle and still be square.
const aligned = Straightness

// foldGroups sorts rows by the way they run, in the order of the file.
func foldGroups(piece *Piece, rows []FoldRow) []FoldGroup {
	extent := piece.Tree.Bounds().Width() + piece.Tree.Bounds().Height()
	var all []FoldGroup
	for _, r := range rows {
		i := slices.IndexFunc(all, func(f FoldGroup) bool {
			return math.Abs(f.Out.Cross(r.Base.Out))*extent < aligned
		})
		if i < 0 {
			f := FoldGroup{Frame: Frame{r.Base.Origin, r.Base.Out, r.Base.Out.Left()}}
			if axis := piece.EdgeOnFold(); axis >= 0 {
				e := piece.Edges[axis].Path
				if in := Inward(e); math.Abs(in.Cross(f.Out))*extent < aligned {
					f.Frame, f.OnAxis = Frame{e[0], in, in.Left()}, true
				}
			}
			i = len(all)
			all = append(all, f)
		}
		r.Mirrored = all[i].OnAxis
		all[i].Rows = append(all[i].Rows, r)
	}
	return all
}

// side is +1 for a row on the side of its base toward which u grows, else -1.
func (f FoldGroup) side(r FoldRow) float64 { return math.Copysign(1, r.Base.Out.Dot(f.Out)) }

// Offset is the u of the base of a row.
func (f FoldGroup) Offset(r FoldRow) float64 { return f.U(r.Base.Origin) }

// placed is a fold at its place in a group.
type placed struct {
	Fold
	row  *FoldRow
	nth  [2]int  // the row among those of the group, and the fold among those of the row
	side float64 // of the row
	u    float64 // of its stitching, finished
}

// placed returns a fold of the group.
func (f FoldGroup) placed(row, number int) placed {
	r := &f.Rows[row]
	return placed{Fold: r.Folds[number], row: r, nth: [2]int{row, number}, side: f.side(*r)}
}

// all returns every fold of the group, row by row.
func (f FoldGroup) all() []placed {
	var all []placed
	for i, r := range f.Rows {
		for k := range r.Folds {
			all = append(all, f.placed(i, k))
		}
	}
	return all
}

// stitched returns the group with the stitching of folds that have been placed.
func (f FoldGroup) stitched(all []placed) FoldGroup {
	rows := slices.Clone(f.Rows)
	for i := range rows {
		rows[i].Folds = slices.Clone(rows[i].Folds)
	}
	for _, p := range all {
		rows[p.nth[0]].Folds[p.nth[1]].Stitching = p.Stitching
	}
	return f.with(rows)
}

// plane returns the fold as geometry knows it, with its strip from at on.
func (f FoldGroup) plane(p placed, at float64) plane.Fold {
	one := plane.Fold{
		At: at, Width: p.Width, Back: p.Toward == (p.side > 0),
		From: math.Inf(-1), To: math.Inf(1),
	}
	if p.End.Given {
		one.From, one.To = p.row.within(p.End, f.Frame)
	}
	return one
}

// within returns the v of a frame along the row between which a fold with an end is stitched.
func (r FoldRow) within(e FoldEnd, frame Frame) (from, to float64) {
	at := func(v float64) float64 { return frame.V(r.Base.At(0, v)) }
	way := r.Base.Along.Mul(e.down).Dot(frame.Along)
	begin, end := math.Inf(-1)*math.Copysign(1, way), at(e.V)
	if e.Free {
		begin = at(e.Begin)
	}
	return min(begin, end), max(begin, end)
}

// begins is the u at which the strip of a fold begins, on a piece that is drawn flat.
func (f FoldGroup) begins(p placed) float64 {
	if p.side < 0 {
		return f.Offset(*p.row) - p.Far()
	}
	return f.Offset(*p.row) + p.Near
}

// folded returns the group of a piece that is drawn flat, with its stitching where
// that lies once all folds are in; ok is false where two strips share some of u, one
// above the other: then what lies between them has no one finished place.
func (f FoldGroup) folded() (settled FlatGroup, ok bool) {
	strips := f.all()
	var folds []plane.Fold
	slices.SortStableFunc(strips, func(a, b placed) int { return cmp.Compare(f.begins(a), f.begins(b)) })
	for i, p := range strips {
		folds = append(folds, f.plane(p, f.begins(p)))
		if i > 0 && folds[i].At < folds[i-1].End()-SamePoint {
			return FlatGroup{}, false
		}
	}
	all := f.mirrored(folds)
	folded := plane.NewFolding(f.Origin, f.Out, all)
	for i := range strips {
		p := &strips[i]
		base := folded.U(folded.DrawnIn(p.row.Base.Origin))
		p.Stitching = p.side * (folded.Seam(len(all)-len(folds)+i) - base)
	}
	return FlatGroup{FoldGroup: f.stitched(strips), AsDrawn: f.Rows, Folding: folded, Of: foldsOf(strips, len(all))}, true
}

// foldsOf returns what the folds of a folding are of which these are those of one half, in
// their order, and those before them the images of the last of these.
func foldsOf(half []placed, all int) []FoldOf {
	var of []FoldOf
	for i := range all {
		k := i - (all - len(half))
		if k < 0 {
			k = len(half) - 1 - i
		}
		of = append(of, FoldOf{half[k].Fold, *half[k].row})
	}
	return of
}

// mirrored adds to the folds of half a piece those of its other half.
func (f FoldGroup) mirrored(folds []plane.Fold) []plane.Fold {
	if !f.OnAxis {
		return folds
	}
	var both []plane.Fold
	for _, one := range slices.Backward(folds) {
		if one.At < -SamePoint {
			continue // it lies about the fold of the cloth and is its own image
		}
		image := one
		image.At, image.Back = -one.End(), !one.Back
		both = append(both, image)
	}
	return append(both, folds...)
}

// settled returns the group of a piece that is drawn finished, with its stitching.
func (f FoldGroup) settled(found *Findings) (FoldGroup, bool) {
	lines, ok := f.besideLines(found)
	if !ok {
		return f, false
	}
	return f.stitched(inOrder(lines).folds), true
}

// flattened returns the group of a piece that is drawn finished, with its rows where
// they lie on the flat cloth.
func (f FoldGroup) flattened(found *Findings) (FlatGroup, bool) {
	lines, ok := f.besideLines(found)
	if !ok {
		return FlatGroup{}, false
	}
	order := inOrder(lines)
	if !order.check(found) {
		return FlatGroup{}, false
	}
	shift := order.shifts()
	var folds []plane.Fold
	for i, p := range order.folds {
		folds = append(folds, f.plane(p, p.u+shift[i]))
	}
	flat := f.stitched(order.folds)
	drawn := slices.Clone(flat.Rows)
	for i := range drawn {
		for k, l := range lines {
			if math.Abs(f.Offset(drawn[i])-l.at) < SamePoint {
				drawn[i].moved = f.Out.Mul(order.shiftOf(k, shift))
			}
		}
		flat.Rows[i].Base.Origin = drawn[i].Base.Origin.Add(drawn[i].moved)
	}
	folding := plane.NewFolding(f.Origin, f.Out, f.mirrored(folds))
	return FlatGroup{FoldGroup: flat, AsDrawn: drawn, Folding: folding, Of: foldsOf(order.folds, len(folding.Folds()))}, true
}
