package piece

import (
	"cmp"
	"math"
	"slices"
)

// Rules of this file. Of a piece that is drawn finished, only the distances from the base
// of a row are flat. So the folds beside each line that rows are measured from are put in
// their order, their stitching is counted from there, and how far the flat cloth is moved
// follows from all folds between it and the origin, which stays where it is.

// foldOrder is the folds of a group in the order of their u.
type foldOrder struct {
	folds  []placed
	starts []int // of each line that rows are measured from, the first fold beyond it
	zero   int   // the first fold beyond the u of 0
}

// inOrder puts the folds beside lines in their order. The lines are in theirs.
func inOrder(lines []foldsBeside) foldOrder {
	var o foldOrder
	for _, l := range lines {
		o.folds = append(o.folds, l.before...)
		o.starts = append(o.starts, len(o.folds))
		if math.Abs(l.at) < SamePoint {
			o.zero = len(o.folds)
		}
		o.folds = append(o.folds, l.beyond...)
	}
	return o
}

// check looks whether the folds of one line lie clear of those of the next.
func (o foldOrder) check(found *Findings) bool {
	for i := 1; i < len(o.folds); i++ {
		if o.folds[i].u < o.folds[i-1].u-SamePoint {
			a, b := o.folds[i-1].row, o.folds[i].row
			found.Add(b.Place, "measure both rows from the same line",
				"the %ss of %q lie between %q and the %ss of %q, which are measured from there",
				b.Makes, b.Key, a.Base.Name, a.Makes, a.Key)
			return false
		}
	}
	return true
}

// shifts returns how far the flat cloth before each fold is moved, and last that
// beyond all of them.
func (o foldOrder) shifts() []float64 {
	shift := make([]float64, len(o.folds)+1)
	for i := o.zero; i < len(o.folds); i++ {
		take := 2 * o.folds[i].Width
		if o.folds[i].About() && i == o.zero {
			take = o.folds[i].Width
			shift[i] = -take
			shift[i+1] = take
			continue
		}
		shift[i+1] = shift[i] + take
	}
	before := 0.0
	if o.zero < len(o.folds) {
		before = min(0, shift[o.zero])
	}
	for i := o.zero - 1; i >= 0; i-- {
		before -= 2 * o.folds[i].Width
		shift[i] = before
	}
	return shift
}

// shiftOf returns how far line k is moved, which lies on the middle of a fold about it.
func (o foldOrder) shiftOf(k int, shift []float64) float64 {
	start := o.starts[k]
	if start == o.zero {
		return 0
	}
	if start < len(o.folds) && o.folds[start].About() {
		return shift[start] + o.folds[start].Width
	}
	return shift[start]
}

// foldsBeside is the folds of a group beside one and the same line.
type foldsBeside struct {
	name           string
	at             float64  // u, as drawn
	before, beyond []placed // on the side of less u, farthest first; on that of greater u, nearest first
}

// besideLines sorts the folds by the lines they are measured from, with the origin
// among them.
func (f FoldGroup) besideLines(found *Findings) ([]foldsBeside, bool) {
	lines := []foldsBeside{{at: 0}}
	for n, r := range f.Rows {
		at := f.Offset(r)
		i := slices.IndexFunc(lines, func(l foldsBeside) bool { return math.Abs(l.at-at) < SamePoint })
		if i < 0 {
			lines = append(lines, foldsBeside{at: at})
			i = len(lines) - 1
		}
		l := &lines[i]
		l.name = r.Base.Name
		for k := range r.Folds {
			if one := f.placed(n, k); one.side > 0 || one.About() {
				l.beyond = append(l.beyond, one)
			} else {
				l.before = append(l.before, one)
			}
		}
	}
	slices.SortFunc(lines, func(a, b foldsBeside) int { return cmp.Compare(a.at, b.at) })
	for i := range lines {
		if !lines[i].settle(found) {
			return nil, false
		}
	}
	return lines, true
}

// settle puts the folds beside a line in order and finds their stitching, counted from
// the line with all of them folded.
func (l *foldsBeside) settle(found *Findings) bool {
	nearest := func(a, b placed) int { return cmp.Compare(a.Near, b.Near) }
	slices.SortStableFunc(l.beyond, nearest)
	slices.SortStableFunc(l.before, nearest)
	about := 0.0 // half of a strip that lies about the line
	if len(l.beyond) > 0 && l.beyond[0].About() {
		about = l.beyond[0].Width
	}
	for _, side := range [][]placed{l.beyond, l.before} {
		taken, end := about, about
		for i := range side {
			p := &side[i]
			if p.About() {
				if i > 0 {
					reportTaken(*p, side[i-1], found)
					return false
				}
				p.Stitching, p.u = 0, l.at
				if math.Abs(p.Near+p.Width) > SamePoint {
					found.Add(p.row.Place, "give first 0 to have it on the line, or at least half of what it takes up",
						"%s lies across %q, but not on the middle of it", p.row.name(p.Fold), l.name)
					return false
				}
				continue
			}
			if p.Near < end-SamePoint {
				reportTaken(*p, l.nearer(side, i), found)
				return false
			}
			p.Stitching = p.Near - taken
			p.u = l.at + p.side*p.Stitching
			taken += 2 * p.Width
			end = p.Far()
		}
	}
	slices.Reverse(l.before)
	return true
}

// nearer returns the fold that lies next to fold i of one side of the line, on the
// way to it: for the first, one that lies about the line.
func (l *foldsBeside) nearer(side []placed, i int) placed {
	if i > 0 {
		return side[i-1]
	}
	return l.beyond[0]
}

// reportTaken notes that two folds take up the same cloth, in the place of the one
// that stands later in the file.
func reportTaken(a, b placed, found *Findings) {
	if a.row.Place.Line < b.row.Place.Line {
		a, b = b, a
	}
	found.Add(a.row.Place, "move one of the two, or make it smaller",
		"%s takes up cloth that %s takes up already", a.row.name(a.Fold), b.row.nameElsewhere(b.Fold))
}
