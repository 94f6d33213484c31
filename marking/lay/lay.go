package lay

import (
	"math"
	"slices"

	"tuckmark/marking/piece"
)

// Rules of this file. A plain lay shows how much cloth will do. It promises no
// least cloth: a patient maker can often push pieces closer. From the end of the
// cloth on:
//
//   - First comes what is torn across the cloth, from single cloth, in strips from selvage
//     to selvage. What is left of a strip beside the torn things is single cloth like any
//     other, and other pieces are cut there where all that are cut of one find room.
//   - What is then left is laid in three ways. The cloth is folded lengthwise, selvage on
//     selvage, for all that is best cut so, and single again for the rest; or folded
//     for all that is narrow enough, though an odd one comes out of the upper layer
//     alone; or not folded at all.
//   - The grain of every piece runs along the cloth. A piece may be turned end for end,
//     where it can lie lower that way: the cloth has neither nap nor a pattern that
//     goes one way.
//   - The pieces are laid in turn, each as near to the end of the cloth as those that lie
//     there let it, also in a bay of one or between them, and then as far left.
//   - Their order is tried three times: the longest along the cloth first, the largest
//     first, the widest first; each with all of one piece one after another, and with
//     some of each in rounds; of very many only with the longest first. The shortest lay is
//     taken, of equally short ones the first.
//   - Single cloth right after a torn strip is one part of the lay with it.
//
// That pieces are cut two at a time from folded cloth, that narrow cloth is torn, and that
// gussets are cut from the waste beside a gown is common practice.

// HowLaid tells a maker how a plain lay is made.
const HowLaid = "What is torn across comes first. Each piece lies as near the beginning as it goes, also in the room that others leave, " +
	"on folded or single cloth or both; of a few such lays it is the shortest. This is no promise of the least cloth."

const (
	// scissorsRoom is how far apart pieces lie at least, in mm, so that each can be cut
	// out without a nick in the next: an eighth of an inch (common practice). What is
	// torn needs none, nor does a torn edge, a fold or a selvage.
	scissorsRoom = 25.4 / 8

	// shiftStep is how finely a piece is shifted across the cloth, in mm: by a sixteenth
	// of an inch, a step of the ruler, two of which are the room for scissors. Only on
	// cloth wider than any that is woven, beyond 6 m, the steps are wider.
	shiftStep = 25.4 / 16
)

// layOut lays everything out on cloth of a width in mm. It lays nothing where that is
// 0 or less.
func layOut(items []item, width float64) Lay {
	return layShortest(items, width, foldedThenSingle, foldedThroughout, singleThroughout)
}

// layShortest is layOut by the ways given, at least one.
func layShortest(items []item, width float64, ways ...way) Lay {
	if !(width > 0) {
		return Lay{}
	}
	lay := Lay{Width: width, TooWide: tooWide(items, width)}
	cloth := emptyCloth(width)
	folded := cloth.like(width / 2)
	var torn, pieces []poses
	for _, item := range items {
		if !item.isLaid() {
			continue
		}
		whole := item.opened()
		switch {
		case !cloth.fits(whole.width):
		case item.torn:
			torn = append(torn, poses{count: item.count, garments: item.garments, whole: whole})
		default:
			pieces = append(pieces, item.posesOn(cloth, folded, whole))
		}
	}
	torn = longestFirst.of(torn)
	var best plan
	for _, order := range ordersFor(pieces) {
		laid, rests := tear(torn, cloth)
		beside, others := layBeside(order.of(pieces), rests)
		begun := plan{}.with(planPart{placed: slices.Concat(laid, beside)})
		for _, way := range ways {
			for _, dealt := range way(others).deals() {
				below := math.Inf(1)
				if best.parts != nil {
					below = best.length - piece.SamePoint
				}
				if plan, ok := begun.layOn(cloth, dealt, below); ok && plan.length < below {
					best = plan
				}
			}
		}
	}
	for _, part := range best.parts {
		lay.add(part)
	}
	return lay
}

// emptyCloth is single cloth of a width in mm with nothing on it.
func emptyCloth(width float64) *band { return newBand(width, shiftStep, scissorsRoom) }

// tooWide returns the names of what is wider than cloth of a width in mm, each once.
// Nor would the half of it, by its fold, lie on half the cloth.
func tooWide(items []item, width float64) []string {
	var names []string
	cloth := emptyCloth(width)
	for _, item := range items {
		if item.isLaid() && !cloth.fits(item.opened().width) && !slices.Contains(names, item.name) {
			names = append(names, item.name)
		}
	}
	return names
}

// add adds a part to the end of the lay.
func (l *Lay) add(planned planPart) {
	part := Part{Folded: planned.folded, From: l.Length}
	for _, p := range planned.placed {
		outline := p.outline()
		part.Placed = append(part.Placed, Placed{Name: p.pose.name, Outline: outline, OnFold: p.pose.onFold, Upper: p.upper})
		l.Length = max(l.Length, outline.Bounds().Max.Y)
	}
	part.To = l.Length
	l.Parts = append(l.Parts, part)
}

// plan says where everything lies, without its outlines: of the plans that are made
// only one is drawn.
type plan struct {
	length float64 // along the cloth, mm
	parts  []planPart
}

// planPart is a stretch of cloth that lies one way; none of a plan is empty.
type planPart struct {
	folded bool
	placed []place
}

// with returns the plan with more at its end, which belongs to the last part where
// that lies the same way; the plan itself where there is no more.
func (l plan) with(more planPart) plan {
	if len(more.placed) == 0 {
		return l
	}
	l.parts = slices.Clone(l.parts)
	if n := len(l.parts); n > 0 && l.parts[n-1].folded == more.folded {
		l.parts[n-1].placed = slices.Concat(l.parts[n-1].placed, more.placed)
	} else {
		l.parts = append(l.parts, more)
	}
	for _, p := range more.placed {
		l.length = max(l.length, p.at.Y+p.pose.length)
	}
	return l
}

// layOn returns the plan with pieces laid at its end, folded cloth before single. It gives up,
// and says so, as soon as one of them does not lie lower than some length, in mm.
func (l plan) layOn(cloth *band, pieces shares, below float64) (plan, bool) {
	folded, single := cloth.like(cloth.width/2), cloth.like(cloth.width)
	folded.fillTo(l.length)
	folded.closeAt(below)
	nested, all := nest(pieces.folded, folded)
	if !all {
		return l, false
	}
	l = l.with(planPart{folded: true, placed: nested})
	room := 0.0 // to what was cut from the folded cloth; a torn edge needs none
	if len(nested) > 0 {
		room = scissorsRoom
	}
	single.fillTo(l.length + room)
	single.closeAt(below)
	nested, all = nest(pieces.single, single)
	return l.with(planPart{placed: nested}), all
}

// nest lays pieces on the cloth in turn, each as near to its end as it goes, and reports whether
// all have room under its ceiling. None is wider than the cloth.
func nest(all []batch, cloth *band) ([]place, bool) {
	var laid []place
	for _, b := range all {
		for k := range b.count {
			p, ok := b.pose.lowest(cloth, (b.before+k)%b.each)
			if !ok {
				return nil, false
			}
			p.upper = b.upper
			cloth.put(p.profile(), p.at)
			laid = append(laid, p)
		}
	}
	return laid, true
}
