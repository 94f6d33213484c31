package gauge

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file (w is the width of a tuck, fold to stitching; g the cloth that
// shows between one tuck's fold and the next tuck's stitching):
//
//   - The end of the card lies on the fold of a tuck. Its upper corner is cut away to w
//     from the end: along that step the tuck is stitched.
//   - Its lower corner is cut away to w + g: the distance from tuck to tuck when they are
//     sewn (Patton, Home and School Sewing, about 1901). With the sewn tuck laid over
//     toward the next one, its fold lies w from its stitching; the next stitching lies
//     g beyond that fold, and the next fold w beyond that. So the lower step shows
//     where the next tuck is folded. It does so whatever a tuck really takes up, for
//     that lies behind the fold.
//   - Of tucks in groups each b that shows between two groups has a step below that, in the
//     same way: w + b from the end, for the first fold of the next group. Where the groups are
//     so uneven that the card would be high, only the sheet has them.
//   - A step and no notch: between two notches, or a notch and the end, narrow tucks leave
//     a tooth of card that bends. The tongue that is left between two steps is 1/2 in high,
//     however narrow the tucks.
//   - With g = 0 the upper step serves for both. Below 0 there is no lower one: it would lie
//     under the tuck. A single tuck has no next one.
//   - Tucks sewn with a twin needle have no gauge: their stitching lies on the fold line,
//     and no fold is made to lay a card on. Nor have tucks narrower than can be cut.

const (
	tuckCardHigh = 25.4 * 5 / 4 // of a tuck gauge, in mm
	tuckCardLong = 25.4 * 3     // of a tuck gauge, in mm, at least: enough to hold
	tuckCardHold = 25.4 * 5 / 2 // beyond the last step, in mm, at least: its name stands there
	tuckCardOff  = 25.4 / 4     // what is cut off its other corners, in mm, so that it is not turned round
	stepDeep     = 25.4 * 3 / 8 // from the side of the card to the foot of a step, in mm
	mostSteps    = 4            // on one side of it
)

// tuckKind is tucks for which one gauge does.
type tuckKind struct {
	width float64
	gap   float64 // where there is a next tuck
	row   bool    // there is a next tuck
	// betweens is what shows between the groups of one set, each once; those are of single tucks
	// where row is false.
	betweens []float64
	sets     []string
}

// nextStep is a step at which the next tuck is folded, or the first of the next group.
type nextStep struct {
	at   float64 // from the end
	name string
}

// kindOf returns the kind of a set of tucks.
func kindOf(t piece.TuckRow) tuckKind {
	k := tuckKind{width: t.Width, row: t.Together() > 1}
	if k.row {
		k.gap = t.Gap
	}
	for _, between := range t.Betweens {
		if !slices.ContainsFunc(k.betweens, func(b float64) bool { return sameTucks(b, between) }) {
			k.betweens = append(k.betweens, between)
		}
	}
	slices.Sort(k.betweens)
	return k
}

// alike reports whether one gauge does for both kinds.
func (k tuckKind) alike(other tuckKind) bool {
	return k.row == other.row && sameTucks(k.width, other.width) && sameTucks(k.gap, other.gap) &&
		slices.EqualFunc(k.betweens, other.betweens, sameTucks)
}

// sameTucks reports whether two lengths of tucks are one, to a thousandth of 1 mm.
func sameTucks(a, b float64) bool { return math.Round(a*1000) == math.Round(b*1000) }

// tuckKinds returns the kinds of tucks in the order of the file; single tucks go with
// the first kind of that width, and come last where there is none.
func tuckKinds(p *garment.Pattern) []*tuckKind {
	var kinds []*tuckKind
	add := func(kind tuckKind, set string, alike func(k *tuckKind) bool) {
		i := slices.IndexFunc(kinds, alike)
		if i < 0 {
			i = len(kinds)
			kinds = append(kinds, &kind)
		}
		kinds[i].sets = append(kinds[i].sets, set)
	}
	eachGauged(p, func(t piece.TuckRow, set string) {
		if t.Count >= 2 {
			add(kindOf(t), set, func(k *tuckKind) bool { return k.alike(kindOf(t)) })
		}
	})
	eachGauged(p, func(t piece.TuckRow, set string) {
		if t.Count < 2 {
			add(kindOf(t), set, func(k *tuckKind) bool { return sameTucks(k.width, t.Width) })
		}
	})
	return kinds
}

// eachGauged visits the sets of tucks that a gauge can be made for, with what a note
// calls each.
func eachGauged(p *garment.Pattern, visit func(t piece.TuckRow, set string)) {
	for _, one := range p.Pieces {
		for _, t := range one.TuckRows {
			if t.Twin || t.Width < length.Hair {
				continue
			}
			visit(t, fmt.Sprintf("the %s of %s", t.Called(), one.Name))
		}
	}
}

// touches reports whether the tucks of a row just touch: there is nothing between
// them that could be cut in card.
func (k tuckKind) touches() bool { return k.row && math.Abs(k.gap) < length.Hair }

// nexts returns the steps for the next tuck, and for the next group, the nearest first.
func (k tuckKind) nexts(unit length.Unit) []nextStep {
	var all []nextStep
	if k.row && k.gap >= length.Hair {
		all = append(all, nextStep{k.width + k.gap, "next fold"})
	}
	for _, between := range k.ofGroups() {
		if between >= length.Hair {
			all = append(all, nextStep{k.width + between, k.next(between, unit)})
		}
	}
	slices.SortStableFunc(all, func(a, b nextStep) int { return cmp.Compare(a.at, b.at) })
	return all
}

// next is what the step is called that leaves so much between two groups, or between two tucks
// where each group is one.
func (k tuckKind) next(between float64, unit length.Unit) string {
	name := "next fold"
	if k.row {
		name = "next group"
	}
	if len(k.ofGroups()) > 1 {
		name += " (" + onCard(unit, between) + ")"
	}
	return name
}

// ofGroups is what shows between groups for which there is a step of its own: none where
// there would be too many.
func (k tuckKind) ofGroups() []float64 {
	if len(k.betweens) >= mostSteps {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(k.betweens), func(b float64) bool { return k.row && sameTucks(b, k.gap) })
}

// tuckGauges returns the tuck gauges of the pattern.
func tuckGauges(p *garment.Pattern) []mark.Marking {
	var all []mark.Marking
	for i, k := range tuckKinds(p) {
		m := tuckCard(k.width, k.nexts(p.Unit))
		m.Key = fmt.Sprintf("tuck gauge %d", i+1)
		m.Name = "Tuck gauge: " + onCard(p.Unit, k.width) + " wide"
		if k.row && !k.touches() && k.gap > 0 {
			m.Name += ", " + onCard(p.Unit, k.gap) + " between"
		}
		if k.row && len(k.ofGroups()) > 0 {
			m.Name += ", in groups"
		}
		m.Notes = append(m.Notes, "for "+wording.Listed(k.sets, "and"))
		m.Steps = k.steps(p.Unit)
		all = append(all, m)
	}
	return all
}

// steps says how the gauge is used.
func (k tuckKind) steps(unit length.Unit) []string {
	steps := []string{
		"lay the end called fold on the fold of a tuck",
		fmt.Sprintf("stitch along the step called stitch, %s from the fold", onCard(unit, k.width)),
	}
	const over, fold = "lay the tuck over toward the next one, and the end on its fold again", "fold the next tuck along "
	switch {
	case !k.row:
	case k.touches():
		steps = append(steps, over, fold+"the same step, for the tucks touch")
	case k.gap > 0:
		steps = append(steps, over, fmt.Sprintf(fold+"the step called next fold, %s from the end, which leaves %s between them", onCard(unit, k.width+k.gap), onCard(unit, k.gap)))
	default:
		steps = append(steps, fmt.Sprintf("take the next fold from the sheet: each tuck lies %s over the stitching of the next", onCard(unit, -k.gap)))
	}
	return append(steps, k.groupSteps(unit)...)
}

// groupSteps says how the gauge leads from one group to the next.
func (k tuckKind) groupSteps(unit length.Unit) []string {
	after, which := "after the last tuck of a group fold the first of the next ", "group"
	if !k.row {
		after, which = "lay the tuck over toward the next one, and the end on its fold again; fold the next tuck ", "tuck"
	}
	if len(k.betweens) >= mostSteps {
		return []string{after + "by the sheet, for what shows between is not the same"}
	}
	var steps []string
	for _, between := range k.ofGroups() {
		where := fmt.Sprintf("along the step called %s, %s from the end, which leaves %s between them", k.next(between, unit), onCard(unit, k.width+between), onCard(unit, between))
		if between < length.Hair {
			where = fmt.Sprintf("along the step called stitch, for the %ss touch", which)
		}
		steps = append(steps, after+where)
	}
	if len(steps) > 1 {
		steps = append(steps, "the sheet says which of them comes next")
	}
	return steps
}

// tuckCard returns the card with a step above at the stitching, and below, one under the other,
// those where the next tuck is folded, the nearest first; without those where there are none.
func tuckCard(stitch float64, nexts []nextStep) mark.Marking {
	n, farthest := len(nexts), 0.0
	if n > 0 {
		farthest = nexts[n-1].at
	}
	last := max(stitch, farthest)
	long, high := max(tuckCardLong, 2*last, last+tuckCardHold), tuckCardHigh+stepDeep*float64(max(0, n-1))
	point := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	foot := func(i int) float64 { return stepDeep * float64(n-i) } // of what lies above step i
	corners := plane.Path{
		point(farthest, 0), point(long-tuckCardOff, 0), point(long, tuckCardOff),
		point(long, high-tuckCardOff), point(long-tuckCardOff, high),
		point(stitch, high), point(stitch, high-stepDeep), point(0, high-stepDeep),
	}
	from := 0.0
	for i, step := range nexts {
		corners = append(corners, point(from, foot(i)), point(step.at, foot(i)))
		from = step.at
	}
	var sides []mark.Mark
	for i, from := range corners {
		sides = append(sides, cutSide("", from, corners[(i+1)%len(corners)]))
	}
	m := card(sides)
	beside := func(role mark.Role, text string, x, y float64) {
		m.Words = append(m.Words, mark.Word{Role: role, Text: text, At: point(x, y), Out: point(1, 0)})
	}
	beside(mark.TuckStitch, "stitch", stitch, high-stepDeep/2)
	beside(mark.Cut, "fold", 0, (foot(0)+high-stepDeep)/2)
	for i, step := range nexts {
		beside(mark.TuckFold, step.name, step.at, foot(i)-stepDeep/2)
	}
	return m
}
