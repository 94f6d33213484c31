package marking

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. All rows that run the same way fold the cloth together: they
// are one folding. Rows that run square to them are another, and what is folded
// first is folded first in the file. On a piece that is half of one on the fold,
// every row along the fold has its mirror image on the other half.
//
// Flat distances are known wherever the outline is drawn flat. Where it is drawn
// finished, only those from the base of a row are: its finished seams follow from
// them, and the flat places of everything else from those.

// folding is the rows of a piece that run the same way.
type folding struct {
	rows   []*row
	origin plane.Point
	out    plane.Point
	onAxis bool // the rows run along the fold of the cloth, which is the origin
}

// aligned bounds how far, in mm over the extent of the piece, two directions may
// part and still be one, and stand off a right angle and still be square.
const aligned = straightness

// foldings sorts rows by the way they run, in the order of the file.
func foldings(piece *Piece, rows []*row) []*folding {
	extent := piece.tree.Bounds().Width() + piece.tree.Bounds().Height()
	var all []*folding
	for _, r := range rows {
		i := slices.IndexFunc(all, func(f *folding) bool {
			return math.Abs(f.out.Cross(r.base.out))*extent < aligned
		})
		if i >= 0 {
			all[i].rows = append(all[i].rows, r)
			continue
		}
		f := &folding{rows: []*row{r}, origin: r.base.origin, out: r.base.out}
		if axis := piece.foldEdge(); axis >= 0 {
			e := piece.Edges[axis].Path
			if in := inward(e); math.Abs(in.Cross(f.out))*extent < aligned {
				f.origin, f.out, f.onAxis = e[0], in, true
			}
		}
		all = append(all, f)
	}
	for _, f := range all {
		for _, r := range f.rows {
			r.mirrored = f.onAxis
		}
	}
	return all
}

// foldEdge returns the number of the edge on the fold of the cloth, or -1.
func (p *Piece) foldEdge() int {
	return slices.IndexFunc(p.Edges, func(e Edge) bool { return e.OnFold })
}

// side is +1 for a row on the side of its base toward which u grows, else -1.
func (f *folding) side(r *row) float64 { return math.Copysign(1, r.base.out.Dot(f.out)) }

// offset is the u of the base of a row, as the piece is drawn.
func (f *folding) offset(r *row) float64 { return r.base.origin.Sub(f.origin).Dot(f.out) }

// placed is a fold at its place in a folding.
type placed struct {
	row  *row
	fold *fold
	seam float64 // its u, finished
	side float64
}

// plane returns the fold as geometry knows it, with its strip from at on.
func (f *folding) plane(p placed, at float64) plane.Fold {
	one := plane.Fold{
		At: at, Width: p.fold.width, Back: p.fold.toward == (p.side > 0),
		From: math.Inf(-1), To: math.Inf(1),
	}
	if end := p.fold.end; end.given {
		level := p.row.base.at(0, end.v).Sub(f.origin).Dot(f.out.Left())
		if p.row.base.along.Mul(end.down).Dot(f.out.Left()) > 0 {
			one.To = level
		} else {
			one.From = level
		}
	}
	return one
}

// begins is the u at which the strip of a fold begins, on a piece that is drawn flat.
func (f *folding) begins(p placed) float64 {
	if p.side < 0 {
		return f.offset(p.row) - p.fold.far()
	}
	return f.offset(p.row) + p.fold.near
}

// flat returns the folding of a piece that is drawn flat, and finds where the seams
// of its folds lie once all of them are in; ok is false where two strips share some
// of u, one above the other: then what lies between them has no one finished place.
func (f *folding) flat() (folding *plane.Folding, ok bool) {
	var strips []placed
	var folds []plane.Fold
	for _, r := range f.rows {
		for k := range r.folds {
			strips = append(strips, placed{row: r, fold: &r.folds[k], side: f.side(r)})
		}
	}
	slices.SortStableFunc(strips, func(a, b placed) int { return cmp.Compare(f.begins(a), f.begins(b)) })
	for i, p := range strips {
		folds = append(folds, f.plane(p, f.begins(p)))
		if i > 0 && folds[i].At < folds[i-1].End()-samePoint {
			return nil, false
		}
	}
	all := f.mirrored(folds)
	folding = plane.NewFolding(f.origin, f.out, all)
	for i, p := range strips {
		base := folding.U(folding.DrawnIn(p.row.base.origin))
		p.fold.seam = p.side * (folding.Seam(len(all)-len(folds)+i) - base)
	}
	return folding, true
}

// mirrored adds to the folds of half a piece those of its other half.
func (f *folding) mirrored(folds []plane.Fold) []plane.Fold {
	if !f.onAxis {
		return folds
	}
	var both []plane.Fold
	for _, one := range slices.Backward(folds) {
		if one.At < -samePoint {
			continue // it lies about the fold of the cloth and is its own image
		}
		image := one
		image.At, image.Back = -one.End(), !one.Back
		both = append(both, image)
	}
	return append(both, folds...)
}

// line is rows of a folding beside one and the same line.
type line struct {
	name         string
	at           float64  // u, as drawn
	before, from []placed // on the side of less u, farthest first; on that of greater u, nearest first
}

// finished returns the folding of a piece that is drawn finished, and moves the
// bases of its rows to where they lie on the flat cloth.
func (f *folding) finished(found *findings) (*plane.Folding, bool) {
	lines, ok := f.lines(found)
	if !ok {
		return nil, false
	}
	// All folds in order, and where among them u is 0.
	var all []placed
	zero := 0
	starts := make([]int, len(lines)) // where the folds beyond each line begin
	for i, l := range lines {
		all = append(all, l.before...)
		starts[i] = len(all)
		if math.Abs(l.at) < samePoint {
			zero = len(all)
		}
		all = append(all, l.from...)
	}
	for i := 1; i < len(all); i++ {
		if all[i].seam < all[i-1].seam-samePoint {
			a, b := all[i-1].row, all[i].row
			found.add(b.place, "measure both rows from the same line",
				"the %ss of %q lie between %q and the %ss of %q, which are measured from there",
				b.of, b.key, a.base.name, a.of, a.key)
			return nil, false
		}
	}
	// How far the flat cloth before each fold is moved.
	shift := make([]float64, len(all)+1)
	for i := zero; i < len(all); i++ {
		take := 2 * all[i].fold.width
		if all[i].fold.about() && i == zero {
			take = all[i].fold.width
			shift[i] = -take
			shift[i+1] = take
			continue
		}
		shift[i+1] = shift[i] + take
	}
	before := 0.0
	if zero < len(all) {
		before = math.Min(0, shift[zero])
	}
	for i := zero - 1; i >= 0; i-- {
		before -= 2 * all[i].fold.width
		shift[i] = before
	}
	var folds []plane.Fold
	for i, p := range all {
		folds = append(folds, f.plane(p, p.seam+shift[i]))
	}
	for i, l := range lines {
		move := 0.0
		if starts[i] != zero {
			move = shift[starts[i]]
			if len(l.from) > 0 && l.from[0].fold.about() {
				move += l.from[0].fold.width
			}
		}
		f.moveBases(l.at, f.out.Mul(move))
	}
	return plane.NewFolding(f.origin, f.out, f.mirrored(folds)), true
}

// moveBases moves the bases of the rows beside one line.
func (f *folding) moveBases(at float64, step plane.Point) {
	for _, r := range f.rows {
		if math.Abs(f.offset(r)-at) < samePoint {
			r.moved = step
		}
	}
}

// lines sorts the rows by the lines they are measured from, with the origin among
// them.
func (f *folding) lines(found *findings) ([]line, bool) {
	lines := []line{{at: 0}}
	for _, r := range f.rows {
		at := f.offset(r)
		i := slices.IndexFunc(lines, func(l line) bool { return math.Abs(l.at-at) < samePoint })
		if i < 0 {
			lines = append(lines, line{at: at})
			i = len(lines) - 1
		}
		l := &lines[i]
		l.name = r.base.name
		for k := range r.folds {
			one := placed{row: r, fold: &r.folds[k], side: f.side(r)}
			if one.side > 0 || one.fold.about() {
				l.from = append(l.from, one)
			} else {
				l.before = append(l.before, one)
			}
		}
	}
	slices.SortFunc(lines, func(a, b line) int { return cmp.Compare(a.at, b.at) })
	for i := range lines {
		l := &lines[i]
		if !l.settle(found) {
			return nil, false
		}
	}
	return lines, true
}

// settle puts the folds beside a line in order and finds their seams, counted from
// the line with all of them folded.
func (l *line) settle(found *findings) bool {
	nearest := func(a, b placed) int { return cmp.Compare(a.fold.near, b.fold.near) }
	slices.SortStableFunc(l.from, nearest)
	slices.SortStableFunc(l.before, nearest)
	about := 0.0 // half of a strip that lies about the line
	if len(l.from) > 0 && l.from[0].fold.about() {
		about = l.from[0].fold.width
	}
	for _, row := range [][]placed{l.from, l.before} {
		taken, end := about, about
		for i := range row {
			p := &row[i]
			if p.fold.about() {
				if i > 0 {
					reportTaken(*p, row[i-1], found)
					return false
				}
				p.fold.seam, p.seam = 0, l.at
				if math.Abs(p.fold.near+p.fold.width) > samePoint {
					found.add(p.row.place, "give first 0 to have it on the line, or at least half of what it takes up",
						"%s lies across %q, but not on the middle of it", p.row.name(*p.fold), l.name)
					return false
				}
				continue
			}
			if p.fold.near < end-samePoint {
				reportTaken(*p, l.nearer(row, i), found)
				return false
			}
			p.fold.seam = p.fold.near - taken
			p.seam = l.at + p.side*p.fold.seam
			taken += 2 * p.fold.width
			end = p.fold.far()
		}
	}
	slices.Reverse(l.before)
	return true
}

// nearer returns the fold that lies next to fold i of one side of the line, on the
// way to it: for the first, one that lies about the line.
func (l *line) nearer(row []placed, i int) placed {
	if i > 0 {
		return row[i-1]
	}
	return l.from[0]
}

// reportTaken notes that two folds take up the same cloth, in the place of the one
// that stands later in the file.
func reportTaken(a, b placed, found *findings) {
	if a.row.place.Line < b.row.place.Line {
		a, b = b, a
	}
	found.add(a.row.place, "move one of the two, or make it smaller",
		"%s takes up cloth that %s takes up already", a.row.name(*a.fold), b.row.nameElsewhere(*b.fold))
}
