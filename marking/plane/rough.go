package plane

// Rules of this file. A line that was traced, or measured off paper, strays to both sides
// of the one that was meant, and at every point it turns by far more than that does. Where
// a straight line keeps near to a stretch that bends to and fro, the straight line was
// meant. A stretch that bends one way, or changes once from one way to the other, was meant
// as it is, however slight its bend; but for a few points between stretches that were not:
// they tell nothing of which way it bends.

// mostSplits bounds how many splits of a path lie one within another, and so keeps the time in
// proportion to its points; a stretch that comes out of so many stays as it is. Halves of
// halves come to single points after a quarter of that.
const mostSplits = 64

// fewPoints is how many points a stretch of a rough path may have that is taken as straight
// though it does not bend to and fro.
const fewPoints = 6

// WithoutRoughness returns the path with each stretch straight that a straight line keeps
// within so many mm of, and that changes more than once from bending one way to bending the
// other, and with what is left between such stretches straight where it is of few points and
// as near. Its ends stay, all points that are left are points of the path, and a path that
// has no such stretch is given back without points that repeat their predecessor.
//
// Stretches are found by splitting the path where it is farthest from the straight line
// between its ends, again and again: Ramer (1972), Douglas and Peucker (1973).
func (p Path) WithoutRoughness(within float64) Path {
	p = withoutRepeats(p)
	if len(p) < 3 || !p.bendsToAndFro() {
		return p
	}
	return straightened(Path{p[0]}, p, within, mostSplits)
}

// straightened appends a stretch of a rough path without its roughness, and without its first
// point.
func straightened(done, p Path, within float64, splits int) Path {
	if splits == 0 || len(p) > fewPoints && !p.bendsToAndFro() {
		return append(done, p[1:]...)
	}
	end := len(p) - 1
	at, most := 0, 0.0
	for i := 1; i < end; i++ {
		if foot, _ := nearestOnSegment(p[0], p[end], p[i]); p[i].Distance(foot) > most {
			at, most = i, p[i].Distance(foot)
		}
	}
	if most <= within {
		return append(done, p[end])
	}
	done = straightened(done, p[:at+1], within, splits-1)
	return straightened(done, p[at:], within, splits-1)
}

// bendsToAndFro reports whether the path changes more than once from bending one way to
// bending the other.
func (p Path) bendsToAndFro() bool {
	changes, last := 0, 0.0
	for i := 1; i+1 < len(p) && changes < 2; i++ {
		bend := p[i].Sub(p[i-1]).Cross(p[i+1].Sub(p[i]))
		if bend*last < 0 {
			changes++
		}
		if bend != 0 {
			last = bend
		}
	}
	return changes > 1
}
