package figures

import (
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/wording"
)

// Rules of this file: where cords, ribbons, ties and casings lie is told by the words that
// the file has for them, for what they run along, and for what they are sewn to. What
// cannot catch a child is passed over: elastic, a bow in the hair, the hem of a sleeve.

// cordPlace is where something lies that is drawn up or tied.
type cordPlace int

const (
	noCord      cordPlace = iota
	cordAnyhow            // a string that is a piece of its own, of which the file does not say where it goes
	cordBelow             // at the waist of what is worn below it only
	cordAtWaist           // or at the hem of the garment
	cordAtNeck            // or on a hood or a bonnet
)

// cord is what may be one.
type cord struct {
	name    string   // its own words
	at      []string // the words for where it lies
	isPiece bool
}

// cordsOf reports for every place whether a cord lies there: sewn on, as a line, as a
// binding that is left long to be tied, or as a piece of its own.
func cordsOf(p *garment.Pattern) (lies [cordAtNeck + 1]bool) {
	var all []cord
	for _, t := range p.Trims {
		all = append(all, cord{name: t.Key + " " + t.Kind.String(), at: alongWords(t.Courses)})
	}
	for _, b := range p.Bindings {
		all = append(all, cord{name: b.Key, at: alongWords(b.Courses)})
	}
	for _, piece := range p.Pieces {
		of := piece.Key + " " + piece.Name
		all = append(all, cord{of, sewnTo(p, piece.Key), true})
		for _, l := range piece.Lines {
			at := []string{of}
			if l.Along >= 0 {
				at = append(at, piece.Edges[l.Along].Key)
			}
			all = append(all, cord{name: l.Key, at: at})
		}
	}
	for _, c := range all {
		lies[c.place(strings.ToLower(p.Title))] = true
	}
	return lies
}

// alongWords are the words for edges and lines, and for the pieces that they are of.
func alongWords(courses []garment.Course) []string {
	var all []string
	for _, c := range courses {
		all = append(all, c.Piece.Key, c.Piece.Name, c.Key)
	}
	return all
}

// sewnTo are the words for what a piece is joined to, and for the seams that join it.
func sewnTo(p *garment.Pattern, piece string) []string {
	var all []string
	for _, s := range p.Seams {
		for i, side := range s.Sides {
			for _, c := range side.Courses {
				if c.Piece.Key == piece {
					all = append(append(all, s.Key), alongWords(s.Sides[1-i].Courses)...)
				}
			}
		}
	}
	return all
}

// anyOf is the form of one of several words, in small letters.
func anyOf(words string) wording.Form { return wording.FormOf(`\b(` + words + `)\b`) }

var (
	stringWords  = anyOf(`cords?|draw-?strings?|ties?|neckties?|strings?`)
	casingWords  = anyOf(`casings?`)
	ribbonWords  = anyOf(`ribbons?`)
	elasticWords = anyOf(`elastic\w*`)

	neckWords      = anyOf(`neck\w*|hoods?|collars?|bonnets?|bibs?|chins?`)
	waistWords     = anyOf(`waist\w*|belts?`)
	hemWords       = anyOf(`hems?|bottom|lower edge`)
	elsewhereWords = anyOf(`sleeves?|cuffs?|wrists?|ankles?|knees?|legs?|shoulders?|pockets?|hair|bows?|bags?|dolls?`)

	// What is tied at the neck as a whole, what hangs from the shoulders, and what does
	// not: no upper garment, of which the rules speak. A skirt may be that of a frock.
	tiedWords    = anyOf(`bonnets?|hoods?|bibs?`)
	upperWords   = anyOf(`dress|dresses|frocks?|gowns?|robes?|coats?|jackets?|capes?|cloaks?|shirts?|blouses?|suits?|sets?|outfits?`)
	trouserWords = anyOf(`trousers|pants|bloomers|drawers|knickers|shorts|leggings|breeches|tights`)
	skirtWords   = anyOf(`skirts?|petticoats?|underskirts?`)
)

// place returns where a cord lies in a garment of some title; noCord where it is none. A
// ribbon along a hem is sewn flat, and draws nothing up; a casing of trousers is mostly for
// elastic.
func (c cord) place(title string) cordPlace {
	name := wording.InWords(c.name)
	at := name + " " + wording.InWords(strings.Join(c.at, " "))
	isString := stringWords.MatchString(name)
	isDrawn := isString || casingWords.MatchString(name)
	if !isDrawn && !ribbonWords.MatchString(name) || elasticWords.MatchString(name) {
		return noCord
	}
	isUpper := upperWords.MatchString(title)
	if !isUpper {
		at += " " + strings.Join(append(trouserWords().FindAllString(title, 1), tiedWords().FindAllString(title, 1)...), " ")
	}
	switch {
	case neckWords.MatchString(at):
		return cordAtNeck
	case elsewhereWords.MatchString(at):
		return noCord
	case trouserWords.MatchString(at):
		if waistWords.MatchString(at) && !casingWords.MatchString(name) {
			return cordBelow
		}
		return noCord
	case !isUpper && skirtWords.MatchString(title) && waistWords.MatchString(at):
		return cordBelow
	case waistWords.MatchString(at), isDrawn && hemWords.MatchString(at):
		return cordAtWaist
	case isString && c.isPiece:
		return cordAnyhow
	}
	return noCord
}
