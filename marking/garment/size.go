package garment

import (
	"fmt"
	"regexp"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: a garment whose largest piece is no larger than a doll's, one that goes
// not round a new-born child, or is for a child smaller than that, or a piece larger than a
// bed, has likely been written in another unit than its file says.

const (
	// dollSize is how long and how wide the largest piece of a doll's dress is at most, in
	// mm: 5 in. A bib for the new-born is larger (common practice).
	dollSize = 25.4 * 5
	// smallestChest is less than is measured round any child that is sewn for, in mm: 9 in,
	// half of what a child of 1 year has (Holt, The Care and Feeding of Children, 1907: 18
	// in). newborn is the chest of a child that is born in time, 13 in (common practice),
	// beneath which no garment is for an age.
	smallestChest, newborn = 25.4 * 9, 25.4 * 13
	// widestChest is the widest that is put on a child, in mm: 60 in (common practice).
	widestChest = 25.4 * 60
	// bedWidth and bedLength are the size of a small double bed in mm, 48 by 75 in: larger
	// than the skirt of a christening gown is spread (common practice).
	bedWidth, bedLength = 25.4 * 48, 25.4 * 75
)

// smallWithReason matches titles, and names of pieces, that are meant to be small.
var smallWithReason = regexp.MustCompile(`doll|gusset|tab|string|\btie|loop|strap|pocket|cuff|collar|band|belt|boot|shoe|mitten|button|sample|trial`)

// forDolls matches titles and sizes of garments that are smaller than a child with reason, and
// ofAge sizes by months and years.
var (
	forDolls = regexp.MustCompile(`\b(?:doll|dolls|doll's|bear|bears|teddy|toy|premature|preterm|preemie|prem|sample|trial|quarter)\b`)
	ofAge    = regexp.MustCompile(`\d ?-?(?:m|mos?|months?|y|yrs?|years?)\b|\bnew-?born\b`)
)

// tooSmallToWear says that a garment cannot go round a child, or that the child of the file is
// smaller than any.
func tooSmallToWear(p *Pattern, spec *source.Spec) []piece.Remark {
	title, least := wording.InWords(p.Title+" "+p.Size), smallestChest
	if forDolls.MatchString(title) {
		return nil
	}
	if ofAge.MatchString(wording.InWords(p.Size)) {
		least = newborn
	}
	ask := func(mm float64) string {
		for _, u := range []length.Unit{length.Millimetre, length.Centimetre, length.Inch} {
			if by := u.MM() / p.Unit.MM(); by > 1 && mm*by >= least && mm*by <= widestChest {
				return fmt.Sprintf("is the unit right? unit = %q would make it %s", u.String(), u.OnRuler(mm*by))
			}
		}
		return "is the unit right?"
	}
	if chest := spec.Fit.Chest; chest.Given() && chest.V < smallestChest {
		return []piece.Remark{{Place: chest.Place, Text: fmt.Sprintf("a chest of %s is a doll's, for that of a new-born child is about %s: %s",
			p.Unit.AsWritten(chest.V), p.Unit.OnRuler(newborn), ask(chest.V))}}
	}
	for _, g := range p.Measures.Girths {
		if g.Level == AtChest && g.Round.MM < least {
			return []piece.Remark{{Place: spec.Unit.Place, Text: fmt.Sprintf("the finished chest, %s, would fit a doll, for that of a new-born child is about %s: %s",
				g.Round, p.Unit.OnRuler(newborn), ask(g.Round.MM))}}
		}
	}
	return nil
}

// sizes says which pieces are too small or too large to be meant.
func sizes(p *Pattern) []piece.Remark {
	var all []piece.Remark
	say := func(one *piece.Piece, text string, fits func(across, along float64) bool) {
		across, along := one.Size()
		text = fmt.Sprintf(text, one.Key, p.Unit.OnRuler(across), p.Unit.OnRuler(along))
		for _, u := range []length.Unit{length.Millimetre, length.Centimetre, length.Inch} {
			if by := u.MM() / p.Unit.MM(); fits(across*by, along*by) {
				text += fmt.Sprintf(" unit = %q would make it %s by %s", u.String(), u.OnRuler(across*by), u.OnRuler(along*by))
				break
			}
		}
		all = append(all, piece.Remark{Place: one.Place, Text: text})
	}
	largest := -1
	for i := range p.Pieces {
		one := &p.Pieces[i]
		across, along := one.Size()
		if largest < 0 || max(across, along) > longest(&p.Pieces[largest]) {
			largest = i
		}
		if beyondBed(across, along) {
			say(one, "%q is %s by %s, larger than a bed: is the unit right?", func(a, b float64) bool { return !beyondBed(a, b) && max(a, b) > dollSize })
		}
	}
	if largest < 0 {
		return all
	}
	one := &p.Pieces[largest]
	if longest(one) <= dollSize && !smallWithReason.MatchString(wording.InWords(p.Title+" "+one.Key+" "+one.Name)) {
		say(one, "the largest piece, %q, is %s by %s, no larger than a doll's: is the unit right?",
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
