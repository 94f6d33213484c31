package marking

import (
	"regexp"
	"strings"
)

// Rules of this file. Only what bears on the garment at hand is said, in few words. The
// rules named are those of the United States (16 CFR 1120.3 with ASTM F1816-97; 16 CFR
// 1615 and 1616); every country has its own, and nothing here is legal advice. What a
// garment is follows from the words that the file itself uses for it.

var (
	childWords = regexp.MustCompile(`\b(month|months|mo|year|years|yr|yrs|child|child's|children|toddler|infant|baby|newborn|boy|boys|girl|girls|[0-9]+t|[0-9]+m)\b`)
	adultWords = regexp.MustCompile(`\b(adult|adult's|woman|women|woman's|women's|man|men|man's|men's|lady|ladies)\b`)
	sleepWords = regexp.MustCompile(`\b(night\w*|sleep\w*|pyjamas?|pajamas?|bed\w*)\b`)
	cordWords  = regexp.MustCompile(`\b(ribbons?|cords?|drawstrings?|casings?|ties?|strings?)\b`)
	neckWords  = regexp.MustCompile(`\b(neck\w*|hoods?|collars?)\b`)
)

// words are all the words that a pattern is described with, in small letters.
func (p *Pattern) words() string { return strings.ToLower(p.Title + " " + p.Size) }

// forChild reports whether a garment may be a child's: its size is one, or is not
// given.
func (p *Pattern) forChild() bool {
	return childWords.MatchString(p.words()) || !adultWords.MatchString(p.words())
}

// cordAtNeck reports whether a ribbon, a cord or a casing for one runs at a neck.
func (p *Pattern) cordAtNeck() bool {
	for _, t := range p.Trims {
		words := strings.ToLower(t.Key + " " + t.Kind)
		at := words
		for _, c := range t.Courses {
			at += " " + strings.ToLower(c.Piece+" "+c.Edge)
		}
		if cordWords.MatchString(words) && neckWords.MatchString(at) {
			return true
		}
	}
	for _, piece := range p.Pieces {
		of := strings.ToLower(piece.Key + " " + piece.Name)
		for _, l := range piece.Lines {
			line := strings.ToLower(l.Key)
			along := ""
			if l.Along >= 0 {
				along = " " + strings.ToLower(piece.Edges[l.Along].Key)
			}
			if cordWords.MatchString(line) && neckWords.MatchString(line+along+" "+of) {
				return true
			}
		}
	}
	return false
}

// cautions lists what is to be heeded when this garment is made.
func (p *Pattern) cautions() []string {
	var all []string
	legal := false
	if p.forChild() && p.cordAtNeck() {
		all = append(all, "A ribbon, cord or casing lies at the neck. It can catch and strangle a child: sew it down, or leave it out. In the United States 16 CFR 1120.3 (with ASTM F1816-97) deals with drawstrings on children's outerwear, sizes 2T to 12.")
		legal = true
	}
	if p.forChild() && (p.Sleepwear || sleepWords.MatchString(p.words())) {
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
