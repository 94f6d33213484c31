package plane

// Run is the part of a path that lies in a box without leaving it.
type Run struct {
	// Start is how far along the whole path the run begins, in mm: what a
	// dashed line needs so that its dashes do not begin anew at the box.
	Start float64
	// Path has at least two points and some length.
	Path Path
}

// Clip returns the runs of the path in the box, in path order; the sides of
// the box count as inside, so that a line along a side is given whole. A path
// that only touches the box, in single places, gives nothing there, and a
// path without length gives nothing at all. A closed path that starts inside
// the box and leaves it gives its first and its last run apart: they meet in
// the point where the path begins. Repeated points are passed over. The ends
// of a run lie on the box to the precision of the arithmetic.
func (t *Tree) Clip(b Box) []Run {
	p := t.path
	var runs []Run
	last := -2 // the segment looked at last; none yet
	t.Within(b, func(i int) bool {
		from, to, in := shareInside(p[i], p[i+1], b)
		if !in || from == to || p[i] == p[i+1] {
			// Where the path stays inside, a repeated point lies there too.
			if p[i] == p[i+1] && last == i-1 {
				last = i
			}
			return true
		}
		if last != i-1 || from > 0 {
			start := t.along[i] + from*(t.along[i+1]-t.along[i])
			runs = append(runs, Run{Start: start, Path: Path{between(p[i], p[i+1], from)}})
		}
		run := &runs[len(runs)-1]
		run.Path = append(run.Path, between(p[i], p[i+1], to))
		last = i
		return true
	})
	return runs
}

// between is Toward, but exact at both ends.
func between(p, q Point, t float64) Point {
	if t == 1 {
		return q
	}
	return p.Toward(q, t)
}

// shareInside returns which share of the segment pq, from 0 to 1, lies in the
// box, and whether any of it does (Liang and Barsky's clipping, as commonly
// taught).
func shareInside(p, q Point, b Box) (from, to float64, in bool) {
	from, to = 0, 1
	for _, side := range [4]struct{ start, step, limit float64 }{
		{p.X, q.X - p.X, b.Max.X},
		{-p.X, p.X - q.X, -b.Min.X},
		{p.Y, q.Y - p.Y, b.Max.Y},
		{-p.Y, p.Y - q.Y, -b.Min.Y},
	} {
		room := side.limit - side.start
		switch {
		case side.step == 0:
			if room < 0 {
				return 0, 0, false
			}
		case side.step > 0:
			to = min(to, room/side.step)
		default:
			from = max(from, room/side.step)
		}
	}
	return from, to, from <= to
}
