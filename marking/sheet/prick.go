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

// Rules of this file. A line is pricked at its ends, at its corners, wherever another line
// crosses it, and where a straight part of it begins or ends. Between those a straight line
// is ruled, and has no dots unless a spacing is asked for; a curve has them so closely that
// none is farther from the last than the spacing, and that the straight between two strays
// from it by no more than dotSagitta: joined by a ruler, the dots give the line back.
//
// A fold has a second dot beside each of those places, a little farther along it, and every
// other line has one: on the cloth they are told apart, and no dot is off its line.
//
// What is not drawn on cloth, such as the grain line, is not pricked. Dots of two lines
// that cross lie in the same place, and are two circles in one.

const (
	// usualDots is how far apart dots are on a curve where no other spacing is asked for,
	// in mm: 1/4 in.
	usualDots = 25.4 / 4
	// leastDots is the closest spacing, in mm, and what a bend is divided down to: closer
	// holes tear into one.
	leastDots = 2.0
	// mostDots is the widest spacing, in mm: farther apart they are no line. A straight
	// part as long as that is ruled.
	mostDots = 50.0
	// besideDot is how far along a fold its second dot is from the first, in mm: seen at
	// once to be two in one place, and closer than the lines of 1/8 in tucks.
	besideDot = 2.5
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

// dotting is how far apart dots are, in mm, at most.
type dotting struct {
	bent     float64 // on a curve
	straight float64 // on a straight line; infinite where that is ruled from dot to dot
	left     *int    // how many more are made on all sheets; below 0 there are too many
}

// dottingOf returns how the lines of a pattern are pricked.
func dottingOf(pattern *garment.Pattern) dotting {
	left := mark.MostDots
	if pattern.Dots > 0 {
		return dotting{pattern.Dots, pattern.Dots, &left}
	}
	return dotting{usualDots, math.Inf(1), &left}
}

// isPricked reports whether lines of the role are brought onto the cloth.
func isPricked(role mark.Role) bool {
	return !role.OnRuledPaper() && !slices.Contains([]mark.Role{mark.Grain, mark.Arrow, mark.Prick, mark.Window, mark.Waste, mark.DrawHere, mark.Laid}, role)
}

// countPins is the last step of whatever is pricked or pinned.
const countPins = "count your pins: none may stay in the cloth"

// isFold reports whether the cloth is folded along lines of the role.
func isFold(role mark.Role) bool {
	return slices.Contains([]mark.Role{mark.Fold, mark.TuckFold, mark.PleatFold}, role)
}

// pricked returns the marking with dots along its lines, and with some more steps.
func pricked(m mark.Marking, d dotting, more ...string) mark.Marking {
	m, of := d.dotted(m, func(one mark.Mark) bool { return isPricked(one.Role) })
	m.Key += " pricked"
	m.Name += ": to be pricked"
	m = m.With(d.steps()...)
	if slices.ContainsFunc(of, func(one mark.Mark) bool { return isFold(one.Role) }) {
		m = m.With(foldDots)
	}
	return m.With(more...).With(countPins)
}

// foldDots is the step of a pricked sheet on which something is folded.
const foldDots = "fold where two dots stand close together; the fold runs through both"

// dotted returns the marking with dots along those of its lines that are wanted, and these lines.
func (d dotting) dotted(m mark.Marking, wanted func(mark.Mark) bool) (mark.Marking, []mark.Mark) {
	var lines []*plane.Tree // that are pricked
	var of []mark.Mark      // each
	for _, one := range m.Marks {
		if wanted(one) {
			lines, of = append(lines, plane.NewTree(one.Path)), append(of, one)
		}
	}
	m.Marks = slices.Clone(m.Marks)
	for i, line := range lines {
		if line.Length() < sameDot || *d.left < 0 {
			continue
		}
		fixed := fixedDots(line, lines)
		dots := d.along(line, fixed)
		if isFold(of[i].Role) {
			dots = withSecond(dots, fixed)
		}
		path := make(plane.Path, len(dots))
		for k, at := range dots {
			path[k] = line.At(at)
		}
		dotted := mark.Mark{Role: mark.Prick, Path: path}
		if of[i].Called() != "" {
			dotted.Key = mark.KeyWith(of[i].Called(), mark.Prick)
		}
		m.Marks = append(m.Marks, dotted)
		*d.left -= len(path)
	}
	return m, of
}

// onTucked returns a cutting sheet by which those lines are dotted that the tucked block has not
// yet: all but where it is cut, the tucks that are sewn, and what it is laid by. A mirrored sheet
// could not be laid there, for the tucks lie on the right side; so it is pricked for that as well.
func (d dotting) onTucked(cutting mark.Marking) mark.Marking {
	m, of := d.dotted(cutting, func(one mark.Mark) bool {
		return isPricked(one.Role) && !slices.Contains([]mark.Role{mark.Cut, mark.TuckStitch, mark.TuckEnd, mark.Cross, mark.Match, mark.Notch}, one.Role)
	})
	at := slices.Index(m.Steps, markRound)
	if len(of) == 0 || at < 0 {
		return cutting
	}
	dots := d.steps()
	if slices.ContainsFunc(of, func(one mark.Mark) bool { return isFold(one.Role) }) {
		dots = append(dots, foldDots)
	}
	m.Steps = slices.Concat(dots[:1], m.Steps[:at+1], dots[1:], m.Steps[at+1:], []string{countPins})
	return m
}

// steps says how the dots of a pricked sheet are used.
func (d dotting) steps() []string {
	steps := []string{
		"prick a hole through the middle of every circle, with a pin or a punch",
		"dot the cloth through the holes, with a sharp pencil or pounce powder",
	}
	if math.IsInf(d.straight, 1) {
		steps = append(steps, "rule the straight lines from dot to dot; the close dots are those of a curve")
	}
	return steps
}

// fixedDots returns how far along a line a dot must be, in order: at its ends, its
// corners, the ends of its straight parts, and where it meets another of all lines.
func fixedDots(line *plane.Tree, all []*plane.Tree) []float64 {
	at := []float64{0, line.Length()}
	path := line.Path()
	for k := 1; k+1 < len(path); k++ {
		in, out := path[k].Sub(path[k-1]), path[k+1].Sub(path[k])
		if math.Abs(plane.Turn(in, out)) > piece.LeastTurn || max(in.Length(), out.Length()) >= mostDots {
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

// along returns how far along a line its dots are: at the fixed places and between them,
// evenly, and where it bends closer.
func (d dotting) along(line *plane.Tree, fixed []float64) []float64 {
	dots := []float64{fixed[0]}
	for i := 1; i < len(fixed); i++ {
		from, to := fixed[i-1], fixed[i]
		spacing := d.bent
		if isFlat(line, from, to, piece.Straightness) {
			spacing = d.straight
		}
		parts := math.Max(1, math.Ceil((to-from)/spacing-sameDot/spacing))
		for k := 0.0; k < parts; k++ {
			dots = dotsBetween(dots, line, from+(to-from)*k/parts, from+(to-from)*(k+1)/parts)
		}
	}
	return dots
}

// dotsBetween adds the dots behind one place of a line as far as another: that, and
// those in halves of the way where the line bends too far for one straight.
func dotsBetween(dots []float64, line *plane.Tree, from, to float64) []float64 {
	if to-from > leastDots && !isFlat(line, from, to, dotSagitta) {
		middle := (from + to) / 2
		return dotsBetween(dotsBetween(dots, line, from, middle), line, middle, to)
	}
	return append(dots, to)
}

// isFlat reports whether a line strays from the straight between two of its places by
// no more than within, in mm.
func isFlat(line *plane.Tree, from, to, within float64) bool {
	chord := plane.NewTree(plane.Path{line.At(from), line.At(to)})
	path := line.Path()
	first := sort.Search(len(path), func(i int) bool { return line.Along(i) >= from })
	for i := first; i < len(path) && line.Along(i) < to; i++ {
		if !chord.Nearer(path[i], within) {
			return false
		}
	}
	return true
}

// withSecond returns the dots of a fold with a second one beside each of the fixed: behind
// it, or before it where there is no room behind. Where there is none either way the fold
// has other dots as close.
func withSecond(dots, fixed []float64) []float64 {
	all := slices.Clone(dots)
	end := dots[len(dots)-1]
	for _, at := range fixed {
		for _, second := range []float64{at + besideDot, at - besideDot} {
			taken := func(other float64) bool { return math.Abs(other-second) < leastDots-sameDot }
			if second >= 0 && second <= end && !slices.ContainsFunc(all, taken) {
				all = append(all, second)
				break
			}
		}
	}
	slices.Sort(all)
	return all
}
