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
//   - The end of the card lies on the fold of a tuck. The first notch is w from it:
//     there the tuck is stitched.
//   - The second notch is w + g from it: the distance from tuck to tuck when they are
//     sewn (Patton, Home and School Sewing, about 1901). With the sewn tuck laid over
//     toward the next one, its fold lies w from its stitching; the next stitching lies
//     g beyond that fold, and the next fold w beyond that. So the second notch shows
//     where the next tuck is folded. It does so whatever a tuck really takes up, for
//     that lies behind the fold.
//   - With g = 0 the two notches are one. Below 0 there is no second one: it would lie
//     under the tuck. A single tuck has no next one.
//   - Tucks sewn with a twin needle have no gauge: their stitching lies on the fold line,
//     and no fold is made to lay a card on. Nor have tucks narrower than can be cut.

const (
	tuckCardHigh  = 25.4 * 3 / 4 // of a tuck gauge, in mm
	tuckCardLong  = 25.4 * 3     // of a tuck gauge, in mm, at least: enough to hold
	tuckCardHold  = 25.4 * 3 / 2 // beyond the last notch, in mm, at least
	tuckCardOff   = 25.4 / 4     // what is cut off its other corners, in mm, so that it is not turned round
	notchDeep     = 25.4 / 4     // from the side of the card to the point of a notch, in mm
	notchHalfWide = 25.4 / 8     // from the point of a notch to its side, along the card, in mm, at most
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

// notches returns how far from the end the notches lie, in mm: one, or two.
func (k tuckKind) notches() []float64 {
	if k.row && k.gap >= length.Hair {
		return []float64{k.width, k.width + k.gap}
	}
	return []float64{k.width}
}

// tuckGauges returns the tuck gauges of the pattern.
func tuckGauges(p *garment.Pattern) []mark.Marking {
	var all []mark.Marking
	for i, k := range tuckKinds(p) {
		m := tuckCard(k.notches())
		m.Key = fmt.Sprintf("tuck gauge %d", i+1)
		m.Name = "Tuck gauge: " + onCard(p.Unit, k.width) + " wide"
		if k.row && !k.touches() && k.gap > 0 {
			m.Name += ", " + onCard(p.Unit, k.gap) + " between"
		}
		m.Notes = append(m.Notes, "for "+wording.Listed(k.sets, "and"))
		m.Steps = k.notes(p.Unit)
		all = append(all, m)
	}
	return all
}

// notes says how the gauge is used.
func (k tuckKind) notes(unit length.Unit) []string {
	notch := "notch"
	if len(k.notches()) > 1 {
		notch = "first notch"
	}
	notes := []string{fmt.Sprintf("lay the square end on the fold of a tuck: stitch at the %s, %s from it", notch, onCard(unit, k.width))}
	const next = "then lay the tuck over toward the next one, and the end on its fold: fold the next tuck at the "
	switch {
	case !k.row:
		return notes
	case k.touches():
		return append(notes, next+"same notch, for the tucks touch")
	case k.gap > 0:
		return append(notes, fmt.Sprintf(next+"second notch, %s from the end, which leaves %s between them", onCard(unit, k.width+k.gap), onCard(unit, k.gap)))
	}
	return append(notes, fmt.Sprintf("each tuck lies %s over the stitching of the next: take the folds from the sheet", onCard(unit, -k.gap)))
}

// tuckCard returns the card with the points of its notches at these distances from its
// end, in rising order. A notch opens to both sides alike; where there is less room
// than for two that meet, the side nearer to the end stands upright over the point, or
// the one before it opens less.
func tuckCard(at []float64) mark.Marking {
	last := at[len(at)-1]
	long := max(tuckCardLong, 2*last, last+tuckCardHold)
	point := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	corners := plane.Path{
		point(0, 0), point(long-tuckCardOff, 0), point(long, tuckCardOff),
		point(long, tuckCardHigh-tuckCardOff), point(long-tuckCardOff, tuckCardHigh),
	}
	for i := len(at) - 1; i >= 0; i-- {
		before, opens := at[i], notchHalfWide // card before it; how far it opens away from the end
		if i > 0 {
			before -= at[i-1]
		}
		if i+1 < len(at) {
			opens = min(opens, (at[i+1]-at[i])/2)
		}
		corners = append(corners, point(at[i]+opens, tuckCardHigh), point(at[i], tuckCardHigh-notchDeep))
		if before > 2*notchHalfWide {
			corners = append(corners, point(at[i]-notchHalfWide, tuckCardHigh))
		} else {
			corners = append(corners, point(at[i], tuckCardHigh))
		}
	}
	corners = append(corners, point(0, tuckCardHigh), point(0, 0))
	var sides []mark.Mark
	for i := 1; i < len(corners); i++ {
		sides = append(sides, cutSide("", corners[i-1], corners[i]))
	}
	m := card(sides)
	for i, x := range at {
		role, name := mark.TuckStitch, "stitch"
		if i > 0 {
			role, name = mark.TuckFold, "next fold"
		}
		m.Marks = append(m.Marks, mark.Mark{Role: role, Name: name, Path: plane.Path{point(x, 0), point(x, tuckCardHigh-notchDeep)}})
	}
	return m
}
