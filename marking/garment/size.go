package garment

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: a garment whose largest piece is no larger than a doll's, one that goes
// not round a new-born child, or is for a child smaller than that, or is wider than any child's,
// or a piece larger than a bed, has likely been written in another unit than its file says. That
// unit is not what a drawing is measured in, which has its own size.

const (
	// dollSize is how long and how wide the largest piece of a doll's dress is at most, in
	// mm: 5 in. A bib for the new-born is larger (common practice).
	dollSize = 25.4 * 5
	// smallestChest is less than is measured round any child that is sewn for, in mm: 9 in,
	// half of what a child of 1 year has (Holt, The Care and Feeding of Children, 1907: 18
	// in). newborn is the chest of a child that is born in time, 13 in (common practice),
	// beneath which no garment is for an age.
	smallestChest, newborn = 25.4 * 9, 25.4 * 13
	// widestChest is the widest that is put on a child, in mm, where it is not gathered: 48 in,
	// half as much again as a child of 14 years measures (32 in, from memory; one of 4 years has
	// 20 3/4: Holt, as above).
	widestChest = 25.4 * 48
	// bedWidth and bedLength are the size of a small double bed in mm, 48 by 75 in: larger
	// than the skirt of a christening gown is spread (common practice).
	bedWidth, bedLength = 25.4 * 48, 25.4 * 75
)

// smallWithReason matches titles, and names of pieces, that are meant to be small.
var smallWithReason = wording.FormOf(`doll|gusset|tab|string|\btie|loop|strap|pocket|cuff|collar|band|belt|boot|shoe|mitten|button|sample|trial`)

// forDolls matches titles and sizes of garments that are smaller than a child with reason, gathered
// those of wider ones, and ofAge sizes by months and years.
var (
	forDolls = wording.FormOf(`\b(?:doll|dolls|doll's|bear|bears|teddy|toy|premature|preterm|preemie|prem|sample|trial|quarter)\b`)
	gathered = wording.FormOf(`bishop|smock|gather|shirr|cape|cloak`)
	ofAge    = wording.FormOf(`\d ?-?(?:m|mos?|months?|y|yrs?|years?)\b|\bnew-?born\b`)
)

// outOfChildren says that a garment cannot go round a child, or is wider than any child's, or that
// the child of the file is no child.
func outOfChildren(p *Pattern, spec *source.Spec) []piece.Remark {
	title, least := wording.InWords(p.Title+" "+p.Size), smallestChest
	if forDolls.MatchString(title) {
		return nil
	}
	said := func(at fault.Place, text, ask string) []piece.Remark {
		return []piece.Remark{{Place: at, Text: text + ": " + ask}}
	}
	if chest := spec.Fit.Chest; chest.Given() {
		other, written := p.otherUnit(chest.V, least), p.Unit.AsWritten(chest.V)
		switch {
		case chest.V < smallestChest:
			return said(chest.Place, fmt.Sprintf("a chest of %s is a doll's, for that of a new-born child is about %s", written, p.Unit.OnRuler(newborn)), asked(other))
		case chest.V > widestChest && other != "":
			return said(chest.Place, "a chest of "+written+" is that of no child", asked(other))
		}
	}
	if ofAge.MatchString(wording.InWords(p.Size)) {
		least = newborn
	}
	for _, g := range p.Measures.Girths {
		if g.Level != AtChest {
			continue
		}
		other := p.otherUnit(g.Round.MM, least)
		ask := asked(other)
		if p.drawn(g) {
			ask = piece.AskRealSize
		}
		switch {
		case g.Round.MM < least:
			return said(spec.Unit.Place, fmt.Sprintf("the finished chest, %s, would fit a doll, for that of a new-born child is about %s", g.Round, p.Unit.OnRuler(newborn)), ask)
		case g.Round.MM > widestChest && other != "" && !gathered.MatchString(title) && !p.drawnUp(g):
			return said(spec.Unit.Place, fmt.Sprintf("the finished chest, %s, is that of no child", g.Round), ask)
		}
	}
	return nil
}

// asked asks after the unit of a file, with another that would do; "" for none.
func asked(other string) string { return joinTexts(" ", "is the unit right?", other) }

// otherUnit says which other unit would make a chest one that children wear, of so much at
// least; "" where none would.
func (p *Pattern) otherUnit(chest, least float64) string {
	for _, u := range []length.Unit{length.Millimetre, length.Centimetre, length.Inch} {
		if by := u.MM() / p.Unit.MM(); u != p.Unit && chest*by >= least && chest*by <= widestChest {
			return fmt.Sprintf("unit = %q would make it %s", u.String(), u.OnRuler(chest*by))
		}
	}
	return ""
}

// has reports whether a piece has a part of a way round.
func (g Girth) has(one *piece.Piece) bool {
	return slices.ContainsFunc(g.Parts, func(part GirthPart) bool { return part.Piece == one.Name })
}

// drawn reports whether what goes round has a piece whose outline a drawing has.
func (p *Pattern) drawn(g Girth) bool {
	return slices.ContainsFunc(p.Pieces, func(one piece.Piece) bool { return one.FromDrawing && g.has(&one) })
}

// drawnUp reports whether a piece that goes round is gathered to another.
func (p *Pattern) drawnUp(g Girth) bool {
	return slices.ContainsFunc(p.Seams, func(s Seam) bool {
		longer := s.Sides[0]
		if s.Sides[1].Sewn.MM > longer.Sewn.MM {
			longer = s.Sides[1]
		}
		return s.Gathered && slices.ContainsFunc(longer.Courses, func(c Course) bool { return g.has(c.Piece) })
	})
}

// sizes says which pieces are too small or too large to be meant.
func sizes(p *Pattern) []piece.Remark {
	var all []piece.Remark
	say := func(one *piece.Piece, text string, fits func(across, along float64) bool) {
		across, along := one.Size()
		text = fmt.Sprintf(text, one.Key, p.Unit.OnRuler(across), p.Unit.OnRuler(along))
		other := ""
		for _, u := range []length.Unit{length.Millimetre, length.Centimetre, length.Inch} {
			if by := u.MM() / p.Unit.MM(); fits(across*by, along*by) {
				other = fmt.Sprintf("unit = %q would make it %s by %s", u.String(), u.OnRuler(across*by), u.OnRuler(along*by))
				break
			}
		}
		ask := asked(other)
		if one.FromDrawing {
			ask = piece.AskRealSize
		}
		all = append(all, piece.Remark{Place: one.Place, Text: text + ": " + ask})
	}
	largest := -1
	for i := range p.Pieces {
		one := &p.Pieces[i]
		across, along := one.Size()
		if largest < 0 || max(across, along) > longest(&p.Pieces[largest]) {
			largest = i
		}
		if beyondBed(across, along) {
			say(one, "%q is %s by %s, larger than a bed", func(a, b float64) bool { return !beyondBed(a, b) && max(a, b) > dollSize })
		}
	}
	if largest < 0 {
		return all
	}
	one := &p.Pieces[largest]
	if longest(one) <= dollSize && !smallWithReason.MatchString(wording.InWords(p.Title)+" "+one.Words()) {
		say(one, "the largest piece, %q, is %s by %s, no larger than a doll's",
			func(a, b float64) bool { return max(a, b) > dollSize && !beyondBed(a, b) })
	}
	return all
}

// longest returns how long or wide a piece is, whichever is more.
func longest(one *piece.Piece) float64 { return max(one.Size()) }

// beyondBed reports whether a size is larger than a bed, both ways.
func beyondBed(across, along float64) bool {
	return min(across, along) > bedWidth && max(across, along) > bedLength
}
