package garment

import (
	"fmt"
	"regexp"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file: a garment whose largest piece is no larger than a doll's, or a piece
// larger than a bed, has likely been written in another unit than its file says.

const (
	// dollSize is how long and how wide the largest piece of a doll's dress is at most, in
	// mm: 5 in. A bib for the new-born is larger (common practice).
	dollSize = 25.4 * 5
	// bedWidth and bedLength are the size of a small double bed in mm, 48 by 75 in: larger
	// than the skirt of a christening gown is spread (common practice).
	bedWidth, bedLength = 25.4 * 48, 25.4 * 75
)

// smallWithReason matches titles, and names of pieces, that are meant to be small.
var smallWithReason = regexp.MustCompile(`doll|gusset|tab|string|\btie|loop|strap|pocket|cuff|collar|band|belt|boot|shoe|mitten|button|sample|trial`)

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
