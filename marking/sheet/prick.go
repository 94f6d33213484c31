package sheet

import (
	"fmt"
	"math"
	"slices"
	"sort"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A line is pricked at its ends, at its corners, wherever
// another line crosses it, and between those so closely that no dot is farther from
// the last than the spacing, and that the straight between two dots strays from a
// curve by no more than dotSagitta: joined by a ruler, the dots give the line back.
// What is not drawn on cloth, such as the grain line, is not pricked. Dots of two lines
// that cross lie in the same place, and are two circles in one.

const (
	// usualDots is how far apart dots are on a straight line where no other spacing
	// is asked for, in mm: 1/4 in.
	usualDots = 25.4 / 4
	// leastDots is the closest spacing, in mm, and what a bend is divided down to: closer
	// holes tear into one.
	leastDots = 2.0
	// mostDots is the widest spacing, in mm: farther apart they are no line.
	mostDots = 50.0
	// dotSagitta bounds how far a curve strays from the straight between two dots,
	// in mm: 1/64 in, which is less than a pencil line is wide.
	dotSagitta = 25.4 / 64
	// sameDot is how near to each other two places of one line, in mm, are one dot.
	sameDot = 0.01
)

// Dotted returns the pattern with lines pricked no farther apart than mm. The error
// is a *fault.Fault without a place.
func Dotted(p *garment.Pattern, mm float64) (*garment.Pattern, error) {
	if !(mm >= leastDots && mm <= mostDots) {
		return nil, &fault.Fault{Cause: "these dots are too close together or too far apart",
			Hint: fmt.Sprintf("they may be from %.0f mm to %.0f mm apart; 1/4 in serves most cloth", leastDots, mostDots)}
	}
	other := *p
	other.Dots = mm
	return &other, nil
}

// dotsApart is how far apart dots are pricked, in mm.
func dotsApart(pattern *garment.Pattern) float64 {
	if pattern.Dots > 0 {
		return pattern.Dots
	}
	return usualDots
}

// isPricked reports whether lines of the role are brought onto the cloth.
func isPricked(role mark.Role) bool {
	return !slices.Contains([]mark.Role{mark.Grain, mark.Arrow, mark.Prick, mark.Window, mark.Waste}, role)
}

// pricked returns the marking with dots along its lines, no farther apart than
// spacing mm, and with some more notes.
func pricked(m mark.Marking, spacing float64, more ...string) mark.Marking {
	var lines []*plane.Tree // that are pricked
	for _, one := range m.Marks {
		if isPricked(one.Role) {
			lines = append(lines, plane.NewTree(one.Path))
		}
	}
	m.Marks = slices.Clone(m.Marks)
	for _, line := range lines {
		if line.Length() >= sameDot {
			m.Add(mark.Prick, "", dotsAlong(line, fixedDots(line, lines), spacing))
		}
	}
	m.Key += " pricked"
	m.Name += ": to be pricked"
	m = m.With(
		"prick a hole through the middle of every circle, with a pin or a punch, and dot through the holes with a sharp pencil or pounce powder",
		"count your pins: none may stay in the cloth")
	return m.With(more...)
}

// fixedDots returns how far along a line a dot must be, in order: at its ends, its
// corners, and where it meets another of all lines.
func fixedDots(line *plane.Tree, all []*plane.Tree) []float64 {
	at := []float64{0, line.Length()}
	path := line.Path()
	for k := 1; k+1 < len(path); k++ {
		in, out := path[k].Sub(path[k-1]), path[k+1].Sub(path[k])
		if math.Abs(math.Atan2(in.Cross(out), in.Dot(out))) > piece.LeastTurn {
			at = append(at, line.Along(k))
		}
	}
	for _, other := range all {
		if other != line {
			for _, c := range plane.Crossings(line, other) {
				at = append(at, c.A)
			}
		}
	}
	slices.Sort(at)
	at = slices.CompactFunc(at, func(a, b float64) bool { return math.Abs(a-b) < sameDot })
	at[len(at)-1] = line.Length() // not a crossing close before it
	return at
}

// dotsAlong returns dots at the fixed places of a line and between them: evenly, and
// where it bends closer.
func dotsAlong(line *plane.Tree, fixed []float64, spacing float64) plane.Path {
	dots := plane.Path{line.At(fixed[0])}
	for i := 1; i < len(fixed); i++ {
		from, to := fixed[i-1], fixed[i]
		parts := math.Max(1, math.Ceil((to-from)/spacing-sameDot/spacing))
		for k := 0.0; k < parts; k++ {
			dots = dotsBetween(dots, line, from+(to-from)*k/parts, from+(to-from)*(k+1)/parts)
		}
	}
	return dots
}

// dotsBetween adds the dots behind one place of a line as far as another: that, and
// those in halves of the way where the line bends too far for one straight.
func dotsBetween(dots plane.Path, line *plane.Tree, from, to float64) plane.Path {
	if to-from > leastDots && !isFlat(line, from, to) {
		middle := (from + to) / 2
		return dotsBetween(dotsBetween(dots, line, from, middle), line, middle, to)
	}
	return append(dots, line.At(to))
}

// isFlat reports whether a line strays from the straight between two of its places by
// no more than dotSagitta.
func isFlat(line *plane.Tree, from, to float64) bool {
	chord := plane.NewTree(plane.Path{line.At(from), line.At(to)})
	path := line.Path()
	first := sort.Search(len(path), func(i int) bool { return line.Along(i) >= from })
	for i := first; i < len(path) && line.Along(i) < to; i++ {
		if !chord.Nearer(path[i], dotSagitta) {
			return false
		}
	}
	return true
}
