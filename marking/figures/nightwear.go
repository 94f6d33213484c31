package figures

import (
	"fmt"
	"strconv"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file: what is worn to bed, or about it, is told by the title, or by the
// file outright. Of the exemptions that 16 CFR 1615.1 and 1616.2 have, those are named that
// the garment may fall under: its size is what the file says, and its length what its
// pieces measure, with a ruffle or lace that hangs from the hem. How close a tight-fitting garment must lie is a table of its own there,
// which no piece is held against.

var (
	nightWords = anyOf(`night|nighty|night(gown|dress|shirt|suit|wear|clothes|ie)(s|es)?|sleep|sleeping|sleep(er|suit|sack|shirt|wear)s?|` +
		`pyjamas?|pajamas?|pjs?|bedtime|bed[ -]?(gown|jacket)s?|lounge[ -]?wear|lounging|dressing[ -]?gowns?|house[ -]?coats?|(bath)?robes?`)
	// A robe of this kind is worn by day.
	dayRobe = anyOf(`(christening|baptism|baptismal|choir|day|court|coronation|state|academic|graduation|beach|king's|queen's|wizard's)[ -]robes?|robes? (of|de) \w+`)
	// What may lie close to the body, and what never does, where nothing else is said.
	closeWords = anyOf(`pyjamas?|pajamas?|pjs?|(sleep|night)?suits?|sleepers?`)
	looseWords = anyOf(`\w*(gown|dress|robe|coat|jacket|sack|shirt)(s|es)?`)
)

// isNightwear reports whether a garment counts as sleepwear.
func isNightwear(p *garment.Pattern) bool {
	return p.Sleepwear || nightWords.MatchString(dayRobe().ReplaceAllString(titleWords(p), ""))
}

// age is what the size of a garment says of the exemption of infants' ones.
type age int

const (
	ageUnknown age = iota
	ageInfant      // sized nine months or smaller
	ageOlder
)

// infantMonths is the largest size of an infant's garment, and the lengths are the most
// that it may have, in mm, in one piece and each in two (16 CFR 1615.1(c)).
const (
	infantMonths   = 9
	infantOnePiece = 648
	infantTwoPiece = 400
)

var (
	monthsForm = wording.FormOf(`\b([0-9]+) ?-?(?:months?|mos?|m)\b`)
	olderForm  = wording.FormOf(`[0-9] ?-?(?:t|years?|yrs?)\b|\btoddlers?\b`)
	newForm    = anyOf(`newborn|new-born|nb|premature|preemie`)
)

// ageOf reads the size of a garment, of several sizes the largest.
func ageOf(p *garment.Pattern) age {
	said := titleWords(p)
	if olderForm.MatchString(said) {
		return ageOlder
	}
	found := ageUnknown
	if newForm.MatchString(said) {
		found = ageInfant
	}
	for _, m := range monthsForm().FindAllStringSubmatch(said, -1) {
		if months, err := strconv.Atoi(m[1]); err != nil || months > infantMonths {
			return ageOlder
		}
		found = ageInfant
	}
	return found
}

// nightCaution says what rules there are for a garment that counts as sleepwear.
func nightCaution(p *garment.Pattern) string {
	age, title := ageOf(p), titleWords(p)
	rules := "16 CFR 1615 (sizes 0 to 6X) and 1616 (sizes 7 to 14) ask"
	if age == ageInfant {
		rules = "16 CFR 1615 asks"
	}
	text := "Children's sleepwear, robes among it, must meet flammability rules in many countries. In the United States " + rules + " for cloth that passes flame tests"
	if age != ageInfant && (closeWords.MatchString(title) || !looseWords.MatchString(title)) {
		text += ", unless the garment is tight-fitting as they define it"
	}
	text += "."
	if age == ageOlder {
		return text
	}
	return text + " Exempt is an infant's garment, sized nine months or smaller, of at most 64.8 cm (25 3/4 in) in one piece, or 40 cm (15 3/4 in) each in two" +
		besideLimits(p) + "."
}

// besideLimits holds the longest piece from neck or shoulder to hem, with what hangs from that, against
// the limits of an infant's garment; it says nothing where no piece has both, where the length of
// one that has is not known, or where the garment is as long as several pieces.
func besideLimits(p *garment.Pattern) string {
	said, longest := "", 0.0
	measured := map[string]bool{}
	for i := range p.Pieces {
		one := &p.Pieces[i]
		hem, hasTop := neckAndHem(one)
		if hem < 0 || !hasTop {
			continue
		}
		mm, known := one.FarthestFrom(hem)
		hangs, ends := p.HangsFrom(one, hem)
		if !known || !ends {
			return ""
		}
		measured[one.Name] = true
		if mm += hangs.Depth.MM; mm > longest {
			said, longest = fmt.Sprintf("%s is %s long as sewn", one.Name, p.Unit.OnRuler(mm)), mm
			if hangs.Key != "" {
				said += " with its " + hangs.What
			}
		}
	}
	for _, d := range p.Measures.Drops {
		if topWords.MatchString(wording.InWords(d.Top)) && !measured[d.Piece] {
			return ""
		}
	}
	if longest == 0 {
		return ""
	}
	verdict := "within both"
	switch {
	case longest > infantOnePiece+piece.Rounding:
		verdict = "more than either"
	case longest > infantTwoPiece+piece.Rounding:
		verdict = "within the first"
	}
	return fmt.Sprintf(": %s, %s", said, verdict)
}

var topWords = anyOf(`neck\w*|shoulders?`)

// neckAndHem returns the number of the hem of a piece, below 0 where it has none, and whether it
// has a neck or a shoulder.
func neckAndHem(p *piece.Piece) (hem int, hasTop bool) {
	hem = -1
	for i, e := range p.Edges {
		key := wording.InWords(e.Key)
		hasTop = hasTop || topWords.MatchString(key)
		if hemWords.MatchString(key) {
			hem = i
		}
	}
	return hem, hasTop
}
