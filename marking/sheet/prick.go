package sheet

import (
	"fmt"
	"math"
	"slices"

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
// is a *Fault without a place.
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
	return !slices.Contains([]mark.Role{mark.Grain, mark.Arrow, mark.Prick, mark.Window}, role)
}

// pricked returns the marking with dots along its lines, no farther apart than
// spacing mm, and with some more notes.
func pricked(m mark.Marking, spacing float64, more ...string) mark.Marking {
	var lines []bends // of what is pricked
	for _, one := range m.Marks {
		if isPricked(one.Role) {
			lines = append(lines, bendsOf(one.Path))
		}
	}
	m.Marks = slices.Clone(m.Marks)
	for _, b := range lines {
		if b.line.Length() >= sameDot {
			m.Add(mark.Prick, "", b.dots(b.fixed(lines), spacing))
		}
	}
	m.Key += " pricked"
	m.Name += ": to be pricked"
	m = m.Noted(
		"prick a hole through the middle of every circle, with a pin or a punch, and dot through the holes with a sharp pencil or pounce powder",
		"count your pins: none may stay in the cloth")
	return m.Noted(more...)
}

// bends is a line, with how far along it each of its points lies.
type bends struct {
	line  *plane.Tree
	along []float64
}

func bendsOf(path plane.Path) bends {
	b := bends{line: plane.NewTree(path), along: make([]float64, len(path))}
	for i := 1; i < len(path); i++ {
		b.along[i] = b.along[i-1] + path[i].Distance(path[i-1])
	}
	return b
}

// fixed returns how far along the line a dot must be, in order: at its ends, its
// corners, and where it meets another of all lines.
func (b bends) fixed(all []bends) []float64 {
	at := []float64{0, b.line.Length()}
	path := b.line.Path()
	for k := 1; k+1 < len(path); k++ {
		in, out := path[k].Sub(path[k-1]), path[k+1].Sub(path[k])
		if math.Abs(math.Atan2(in.Cross(out), in.Dot(out))) > piece.LeastTurn {
			at = append(at, b.along[k])
		}
	}
	for _, other := range all {
		if other.line != b.line {
			for _, c := range plane.Crossings(b.line, other.line) {
				at = append(at, c.A)
			}
		}
	}
	slices.Sort(at)
	at = slices.CompactFunc(at, func(a, b float64) bool { return math.Abs(a-b) < sameDot })
	at[len(at)-1] = b.line.Length() // not a crossing close before it
	return at
}

// dots returns dots at the fixed places of the line and between them: evenly, and
// where it bends closer.
func (b bends) dots(fixed []float64, spacing float64) plane.Path {
	dots := plane.Path{b.line.At(fixed[0])}
	for i := 1; i < len(fixed); i++ {
		from, to := fixed[i-1], fixed[i]
		parts := math.Max(1, math.Ceil((to-from)/spacing-sameDot/spacing))
		for k := 0.0; k < parts; k++ {
			dots = b.between(dots, from+(to-from)*k/parts, from+(to-from)*(k+1)/parts)
		}
	}
	return dots
}

// between adds the dots behind one place of the line as far as another: that, and
// those in halves of the way where the line bends too far for one straight.
func (b bends) between(dots plane.Path, from, to float64) plane.Path {
	if to-from > leastDots && !b.flat(from, to) {
		middle := (from + to) / 2
		return b.between(b.between(dots, from, middle), middle, to)
	}
	return append(dots, b.line.At(to))
}

// flat reports whether the line strays from the straight between two of its places by
// no more than dotSagitta.
func (b bends) flat(from, to float64) bool {
	start, end := b.line.At(from), b.line.At(to)
	chord := plane.NewTree(plane.Path{start, end})
	first, _ := slices.BinarySearch(b.along, from)
	for i := first; i < len(b.along) && b.along[i] < to; i++ {
		if !chord.Nearer(b.line.Path()[i], dotSagitta) {
			return false
		}
	}
	return true
}
