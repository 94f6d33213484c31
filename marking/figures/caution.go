package figures

import (
	"regexp"
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
	childWords = regexp.MustCompile(`\b(month|months|mo|year|years|yr|yrs|child|child's|children|toddler|infant|baby|newborn|boy|boys|girl|girls|[0-9]+t|[0-9]+m)\b`)
	adultWords = regexp.MustCompile(`\b(adult|adult's|woman|women|woman's|women's|man|men|man's|men's|lady|ladies)\b`)
	sleepWords = regexp.MustCompile(`\b(night|nighty|night(gown|dress|shirt|suit|wear|clothes|ie)(s|es)?|sleep|sleeping|sleep(er|suit|sack|shirt|wear)s?|pyjamas?|pajamas?|bedtime|bed[ -]?gowns?)\b`)
	cordWords  = regexp.MustCompile(`\b(ribbons?|cords?|drawstrings?|casings?|ties?|strings?)\b`)
	neckWords  = regexp.MustCompile(`\b(neck\w*|hoods?|collars?)\b`)
)

// titleWords are all the words that a pattern is described with, in small letters.
func titleWords(p *garment.Pattern) string { return strings.ToLower(p.Title + " " + p.Size) }

// forChild reports whether a garment may be a child's: its size is one, or is not
// given.
func forChild(p *garment.Pattern) bool {
	return childWords.MatchString(titleWords(p)) || !adultWords.MatchString(titleWords(p))
}

// cordAtNeck reports whether a ribbon, a cord or a casing for one runs at a neck: sewn
// on, as a line or a piece of its own, or as a binding that is left long to be tied.
func cordAtNeck(p *garment.Pattern) bool {
	for _, t := range p.Trims {
		if isCordAtNeck(t.Key+" "+t.Kind.String(), t.Courses) {
			return true
		}
	}
	for _, b := range p.Bindings {
		if isCordAtNeck(b.Key, b.Courses) {
			return true
		}
	}
	for _, piece := range p.Pieces {
		of := piece.Key + " " + piece.Name
		if isCordAtNeck(of, nil) {
			return true
		}
		for _, l := range piece.Lines {
			along := ""
			if l.Along >= 0 {
				along = piece.Edges[l.Along].Key
			}
			if isCordAtNeck(l.Key, []garment.Course{{Key: along, Piece: &piece}}) {
				return true
			}
		}
	}
	return false
}

// isCordAtNeck reports whether a name is that of a ribbon, cord or casing, and it or what
// it runs along is at a neck.
func isCordAtNeck(name string, along []garment.Course) bool {
	at := name
	for _, c := range along {
		at += " " + c.Piece.Key + " " + c.Piece.Name + " " + c.Key
	}
	return cordWords.MatchString(strings.ToLower(name)) && neckWords.MatchString(strings.ToLower(at))
}

// cautionsOf lists what is to be heeded when this garment is made.
func cautionsOf(p *garment.Pattern) []string {
	var all []string
	legal := false
	if forChild(p) && cordAtNeck(p) {
		all = append(all, "A ribbon, cord or casing lies at the neck. It can catch and strangle a child: sew it down, or leave it out. In the United States 16 CFR 1120.3 (with ASTM F1816-97) deals with neck and hood drawstrings on children's upper outerwear, sizes 2T to 12.")
		legal = true
	}
	if forChild(p) && (p.Sleepwear || sleepWords.MatchString(titleWords(p))) {
		all = append(all, "Children's sleepwear must meet flammability rules in many countries. In the United States 16 CFR 1615 and 1616 ask for cloth that passes flame tests, unless the garment is tight-fitting or an infant's of nine months or smaller.")
		legal = true
	}
	if legal {
		all = append(all, "Follow the rules where you live and where you sell; this is no legal advice.")
	}
	return append(all,
		"Try the marker on a scrap of the same cloth. Take its marks out with cold water, before any iron or detergent: heat can set them for good.",
		"Count the pins into the cloth, and count them out again.")
}

// Cautions are what the first page of some sheets says, in few words, whatever the
// garment: it leaves the law to those who know it where the maker lives.
func Cautions(sheets []mark.Marking) []string {
	all := []string{
		"Try the marker on a scrap of the same cloth, and take it out with cold water, before any iron comes near it.",
		"Cords and ribbons at a child's neck can catch, and nightwear can burn: follow the safety rules where you live.",
		"Count your pins in, and count them out again.",
	}
	if slices.ContainsFunc(sheets, isCut) {
		all = append(all, "Cut paper and card with a sharp blade on a cutting mat, the fingers well behind it.")
	}
	return all
}

// isCut reports whether a sheet itself is cut, as templates and gauges are.
func isCut(sheet mark.Marking) bool {
	return sheet.Card || slices.ContainsFunc(sheet.Marks, func(m mark.Mark) bool {
		return (m.Role == mark.Match || m.Role == mark.Window) && m.Path.Length() > 0
	})
}

// cautionSection says what is to be heeded, after everything else.
func cautionSection(p *garment.Pattern) mark.Section {
	s := mark.Section{Title: "Cautions"}
	sayAll(&s.Lines, cautionsOf(p))
	return s
}
