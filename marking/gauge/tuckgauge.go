package gauge

import (
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
)

// tuckKind is tucks for which one gauge does.
type tuckKind struct {
	width float64
	gap   float64 // where there is a next tuck
	row   bool    // there is a next tuck
	sets  []string
}

// sameTucks reports whether two lengths of tucks are one, to a thousandth of 1 mm.
func sameTucks(a, b float64) bool { return math.Round(a*1000) == math.Round(b*1000) }

// tuckKinds returns the kinds of tucks in the order of the file; single tucks go with
// the first row of that width, and come last where there is none.
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
			add(tuckKind{width: t.Width, gap: t.Gap, row: true}, set,
				func(k *tuckKind) bool { return sameTucks(k.width, t.Width) && sameTucks(k.gap, t.Gap) })
		}
	})
	eachGauged(p, func(t piece.TuckRow, set string) {
		if t.Count < 2 {
			add(tuckKind{width: t.Width}, set, func(k *tuckKind) bool { return sameTucks(k.width, t.Width) })
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
			what := "tucks"
			if t.Count == 1 && !t.Mirrored {
				what = "tuck"
			}
			visit(t, fmt.Sprintf("the %s %s of %s", t.Key, what, one.Name))
		}
	}
}

// touches reports whether the tucks of a row just touch: there is nothing between
// them that could be cut in card.
func (k tuckKind) touches() bool { return k.row && math.Abs(k.gap) < length.Hair }

// next returns how far from the end the next tuck is folded, in mm; 0 where there is no step
// for that.
func (k tuckKind) next() float64 {
	if k.row && k.gap >= length.Hair {
		return k.width + k.gap
	}
	return 0
}

// tuckGauges returns the tuck gauges of the pattern.
func tuckGauges(p *garment.Pattern) []mark.Marking {
	var all []mark.Marking
	for i, k := range tuckKinds(p) {
		m := tuckCard(k.width, k.next())
		m.Key = fmt.Sprintf("tuck gauge %d", i+1)
		m.Name = "Tuck gauge: " + onCard(p.Unit, k.width) + " wide"
		if k.row && !k.touches() && k.gap > 0 {
			m.Name += ", " + onCard(p.Unit, k.gap) + " between"
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
		return steps
	case k.touches():
		return append(steps, over, fold+"the same step, for the tucks touch")
	case k.gap > 0:
		return append(steps, over, fmt.Sprintf(fold+"the step called next fold, %s from the end, which leaves %s between them", onCard(unit, k.width+k.gap), onCard(unit, k.gap)))
	}
	return append(steps, fmt.Sprintf("take the next fold from the sheet: each tuck lies %s over the stitching of the next", onCard(unit, -k.gap)))
}

// tuckCard returns the card with a step above at the stitching, and one below where the next
// tuck is folded, at these distances from its end; with none below for 0.
func tuckCard(stitch, next float64) mark.Marking {
	last := max(stitch, next)
	long, high := max(tuckCardLong, 2*last, last+tuckCardHold), tuckCardHigh
	point := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	foot := 0.0 // of the end
	if next > 0 {
		foot = stepDeep
	}
	corners := plane.Path{
		point(next, 0), point(long-tuckCardOff, 0), point(long, tuckCardOff),
		point(long, high-tuckCardOff), point(long-tuckCardOff, high),
		point(stitch, high), point(stitch, high-stepDeep), point(0, high-stepDeep),
	}
	if next > 0 {
		corners = append(corners, point(0, foot), point(next, foot))
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
	beside(mark.Cut, "fold", 0, (foot+high-stepDeep)/2)
	if next > 0 {
		beside(mark.TuckFold, "next fold", next, stepDeep/2)
	}
	return m
}
