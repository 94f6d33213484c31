package gauge

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file. A gauge is a card that is cut out once and laid on the cloth
// again and again, where a ruler is no help or is slow: along an edge that bends, along
// the straight ones, and on the fold of a tuck. All of its sides are cut, so all of
// them have that role. What can be cut and held in card bounds what is told apart.

// sameCard bounds how far two gauges may differ anywhere, in mm, and still be one:
// no scissors cut card more finely.
const sameCard = 0.1

// widestCard returns the most that a gauge reaches across, or a part of one along its
// edge, in mm: what is held flat with one hand.
func widestCard(u length.Unit) float64 { return u.Either(25.4*6, 150) }

// mostGauges is the most gauges that are made at once, each part of a long one counted. A garment
// has a dozen; each finds its own place on a page, with all that is written on it.
const mostGauges = 150

// Check refuses a pattern with more gauges than are made at once; the fault stands at the piece with
// whose edges there are too many, or at the file.
func Check(p *garment.Pattern) error {
	tooMany := func(at fault.Place, with string) error {
		return &fault.Fault{Place: at, Cause: fmt.Sprintf("with those %s there are more than %d gauges, a long one counted in its parts, and no more are made at once", with, mostGauges),
			Hint: "make those of fewer pieces at once, with --pieces"}
	}
	cards := 1 // for allowances
	long := widestCard(p.Unit) - partOverlap(p.Unit)
	for _, g := range gaugedEdges(p) {
		if cards += int(math.Ceil(g.edge().Path.Length() / long)); cards > mostGauges {
			return tooMany(g.piece.Place, "of this piece")
		}
	}
	if cards+len(tuckKinds(p)) > mostGauges {
		return tooMany(fault.Place{File: p.Files[0]}, "for tucks")
	}
	return nil
}

// Of returns the gauges of the pattern, to be cut from card: one for every marked
// edge, in parts where it is long; one for all straight lines; and one for every kind
// of tucks. Each comes once, though several edges or sets may need it. None for a
// pattern that has nothing to be marked so.
func Of(p *garment.Pattern) []mark.Marking {
	all := edgeGauges(p)
	if m, ok := stepGauge(p); ok {
		all = append(all, m)
	}
	return append(all, tuckGauges(p)...)
}

// card returns a marking whose outline is made of sides, each of which begins where
// the one before it ends, counter-clockwise, the last where the first begins.
func card(sides []mark.Mark) mark.Marking {
	m := mark.Marking{Kind: mark.Gauge}
	for _, side := range sides {
		m.Marks = append(m.Marks, side)
		m.Outline = append(m.Outline, side.Path[:len(side.Path)-1]...)
	}
	m.Outline = append(m.Outline, m.Outline[0])
	return m
}

// cutSide is one straight side of a card.
func cutSide(name string, from, to plane.Point) mark.Mark {
	return mark.Mark{Role: mark.Cut, Name: name, Path: plane.Path{from, to}}
}

// onCard gives a length as it is printed on a gauge: exactly where it is a plain
// one, else as a ruler shows it.
func onCard(u length.Unit, mm float64) string {
	if length.IsPlain(mm) {
		return u.AsWritten(mm)
	}
	if mm < u.Ruler()/2 {
		return u.OnRuler(mm) // which says that it is less
	}
	return "about " + u.OnRuler(mm)
}
