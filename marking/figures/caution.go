package figures

import (
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
)

// Rules of this file. Only what bears on the garment at hand is said, in few words. The
// rules named are those of the United States (16 CFR 1120.3 with ASTM F1816-97; 16 CFR
// 1615 and 1616); every country has its own, and nothing here is legal advice. What a
// garment is follows from the words that the file itself uses for it.

var (
	childWords = anyOf(`month|months|mo|year|years|yr|yrs|child|child's|children|toddler|infant|baby|newborn|boy|boys|girl|girls|[0-9]+t|[0-9]+m`)
	adultWords = anyOf(`adult|adult's|woman|women|woman's|women's|man|men|man's|men's|lady|ladies`)
)

// titleWords are all the words that a pattern is described with, in small letters.
func titleWords(p *garment.Pattern) string { return strings.ToLower(p.Title + " " + p.Size) }

// forChild reports whether a garment may be a child's: its size is one, or is not
// given.
func forChild(p *garment.Pattern) bool {
	return childWords.MatchString(titleWords(p)) || !adultWords.MatchString(titleWords(p))
}

// What the rules for cords say (16 CFR 1120.3 with ASTM F1816-97).
const (
	strangles   = " can catch and strangle a child: sew it down, or leave it out. In the United States 16 CFR 1120.3 (with ASTM F1816-97) deals with neck and hood drawstrings on children's upper outerwear, sizes 2T to 12"
	atNeck      = "A ribbon, cord, tie or casing lies at the neck. It" + strangles + "."
	drags       = " Its ends can catch in a door or on a vehicle, and drag a child"
	below       = "A cord, ribbon, tie or casing lies at the waist." + drags + "."
	atWaist     = "A cord, tie or casing lies at the waist or the hem." + drags + ". In the United States 16 CFR 1120.3 (with ASTM F1816-97) deals with drawstrings at waist and bottom of children's upper outerwear, sizes 2T to 16: " + threeInches + "."
	anyhow      = "A string or tie is a piece by itself. At a neck or a hood it" + strangles + "; at waist and bottom, sizes 2T to 16, " + threeInches + "."
	threeInches = "at most 3 in of one may lie outside its channel at full width, without knots or toggles, and it is bar-tacked"
)

// ofChildren is said on all sheets: what a garment is, its file need not tell.
const ofChildren = "Cords and ribbons at a child's neck, hood, waist or hem can catch, and nightwear and robes can burn: follow the safety rules where you live."

// What is said where sheets are cut, and where they are pricked (common practice).
const (
	ofBlades = "Cut paper and card with a sharp blade along a metal ruler, on a cutting mat, the fingers well behind it."
	ofPoints = "Prick over felt or cork, the fingers clear of pin and punch. Use fine powder sparingly, do not breathe it in, and keep it and all that is sharp from children."
)

// cautionsOf lists what is to be heeded when this garment is made.
func cautionsOf(p *garment.Pattern) []string {
	var all []string
	if forChild(p) {
		lies := cordsOf(p)
		if lies[cordAtNeck] {
			all = append(all, atNeck)
		}
		switch {
		case lies[cordAnyhow] && !lies[cordAtNeck]:
			all = append(all, anyhow)
		case lies[cordAtWaist]:
			all = append(all, atWaist)
		case lies[cordBelow]:
			all = append(all, below)
		}
		if isNightwear(p) {
			all = append(all, nightCaution(p))
		}
	}
	if len(all) > 0 {
		all = append(all, "Follow the rules where you live and where you sell; this is no legal advice.")
	}
	return append(all,
		"Try the marker on a scrap of the same cloth. Take its marks out with cold water, before any iron or detergent: heat can set them for good.",
		"Count the pins into the cloth, and count them out again.")
}

// Cautions are what is to be heeded when a garment is made from some sheets: what bears on
// all children's clothing, whatever the file says of it, what bears on this garment, and what
// bears on the sheets. It leaves the law to those who know it where the maker lives.
func Cautions(p *garment.Pattern, sheets []mark.Marking) []string {
	all := append([]string{ofChildren}, cautionsOf(p)...)
	if slices.ContainsFunc(sheets, isCut) {
		all = append(all, ofBlades)
	}
	if slices.ContainsFunc(sheets, isPricked) {
		all = append(all, ofPoints)
	}
	return all
}

// isPricked reports whether a sheet has dots to be pricked.
func isPricked(sheet mark.Marking) bool {
	return slices.ContainsFunc(sheet.Marks, func(m mark.Mark) bool { return m.Role == mark.Prick })
}

// isCut reports whether a sheet itself is cut, as templates and gauges are.
func isCut(sheet mark.Marking) bool {
	return sheet.Kind.OfCard() || slices.ContainsFunc(sheet.Marks, func(m mark.Mark) bool {
		return (m.Role == mark.Match || m.Role == mark.Window) && m.Path.Length() > 0
	})
}

// cautionSection says what is to be heeded, after everything else.
func cautionSection(p *garment.Pattern) mark.Section {
	s := mark.Section{Title: "Cautions"}
	sayAll(&s.Lines, cautionsOf(p))
	return s
}
