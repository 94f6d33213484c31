package sheet

import (
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: what the sheets of a pattern take grows with the lines of its pieces
// times the ways in which they come onto the cloth, and of some ways with how long they are. That is
// reckoned before a sheet is made. Where lines cross there are dots as well, which nothing tells
// before: those are counted as they are made, and no more are made than are drawn (mark.MostDots).

const (
	// mostSheets is for how many pieces sheets are made, each as often as there are ways for it.
	mostSheets = 800
	// mostLines is the most lines on all sheets together.
	mostLines = 12_000
	// mostWindowed bounds how long the lines of all templates are together that may have windows,
	// in mm: 300 m, each mm of which is looked at.
	mostWindowed = 300_000.0
)

// Check refuses a pattern of whose lines too much would come onto sheets; the fault stands at
// the piece with which it is too much.
func Check(p *garment.Pattern) error {
	sheets, lines, dots, windowed := 0, 0, 0.0, 0.0
	d := dottingOf(p)
	for i := range p.Pieces {
		one := &p.Pieces[i]
		ways := waysOf(one, p)
		marks := slices.Concat(one.Flat.Marks, one.FoldMarks())
		sheets, lines = sheets+len(ways), lines+len(ways)*len(marks)
		if slices.Contains(ways, source.Prick) {
			dots += d.least(marks)
		}
		if slices.Contains(ways, source.Template) {
			windowed += lengthThrough(one, marks)
		}
		tooMuch := func(hint, cause string) error { return &fault.Fault{Place: one.Place, Cause: cause, Hint: hint} }
		switch {
		case sheets > mostSheets:
			return tooMuch(fewerPieces, "with those of this piece there are more than "+wording.Thousands(mostSheets)+" sheets, one for each way of each piece, and no more are made at once")
		case lines > mostLines:
			return tooMuch(fewerPieces, "the sheets, as far as those of this piece, have "+wording.Thousands(lines)+" lines; at most "+wording.Thousands(mostLines)+" are drawn at once")
		case dots > mark.MostDots:
			return tooMuch("prick them farther apart with --dots, rule straight lines from dot to dot without it, or "+fewerPieces,
				"the lines, as far as those of this piece, have more than "+wording.Thousands(mark.MostDots)+" dots to be pricked, and no more are drawn at once")
		case windowed > mostWindowed:
			return tooMuch(`bring them onto the cloth another way, such as transfer = "trace", or `+fewerPieces,
				"the lines of the templates, as far as that of this piece, are "+wording.Thousands(int(windowed/1000))+" m long together; at most "+wording.Thousands(mostWindowed/1000)+" m are looked along for windows")
		}
	}
	return nil
}

const fewerPieces = "print fewer pieces at once, with --pieces"

// least is how many dots some lines have at least: those of how long they are.
func (d dotting) least(marks []mark.Mark) float64 {
	dots := 0.0
	for _, m := range marks {
		if !isPricked(m.Role) {
			continue
		}
		spacing := d.straight
		if m.Path.Straightness() > piece.Straightness {
			spacing = d.bent
		}
		dots += m.Path.Length() / spacing
	}
	return dots
}

// lengthThrough is how long the lines of a piece are, in mm, that may have windows in its
// template.
func lengthThrough(p *piece.Piece, marks []mark.Mark) float64 {
	long := 0.0
	for _, m := range marks {
		if hasWindows(m.Role) {
			long += m.Path.Length()
		}
	}
	if p.OnFold {
		return 2 * long
	}
	return long
}
