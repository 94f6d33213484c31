package sheet

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. The lines of tucks and pleats lie too close for words beside them,
// so it is told in the notes what they are: in parts, each in a line of its own. On the
// fold a set is told as it is on the whole piece.

// sampledStep is how finely it is told what follows from a sample, in mm: no ruler shows
// more than 1/16 in of it.
const sampledStep = 25.4 / 16

// DescribeTucks says, in parts, what a set of tucks is. Lengths in mm are written by the
// function.
func DescribeTucks(t piece.TuckRow, written func(float64) string) []string {
	size := written(t.Width) + " wide"
	if t.Mirrored && t.InAll() == 1 {
		size = "on the centre, " + size
	}
	words := t.Key + ": " + countedTucks(t, size)
	if t.Twin {
		words += ", twin needle"
	}
	parts := slices.Concat([]string{words}, describeGap(t, written), describeGroups(t, written))
	if from, to := t.Between(); from != "" {
		parts = append(parts, fmt.Sprintf("stitched from %s to %s", from, to))
	}
	if t.Press != source.Unpressed {
		parts = append(parts, "pressed "+sideOf(t.Press, t.Base.Name))
	}
	if t.LetDown > 0 {
		parts = append(parts, letDown(t, written))
	}
	return parts
}

// letDown says how much longer growth tucks make their piece when they are let down.
func letDown(t piece.TuckRow, written func(float64) string) string {
	longer := func(tucks int) string {
		mm := t.LetDown * float64(tucks)
		if t.Sampled { // half a thread is no more than a ruler shows
			return "about " + written(math.Round(mm/sampledStep)*sampledStep)
		}
		return written(mm)
	}
	if t.Count == 1 {
		return "gives " + longer(1) + " let down"
	}
	return fmt.Sprintf("each tuck that is let down makes the piece %s longer, all %d together %s", longer(1), t.Count, longer(t.Count))
}

// DescribePleats says, in parts, what a row of pleats is. Lengths in mm are written by
// the function.
func DescribePleats(p piece.PleatRow, written func(float64) string) []string {
	parts := []string{p.Key + ": " + counted(p.FoldRow, p.Kind.String()+" pleat", written(p.Depth)+" deep")}
	if p.Press != source.Unpressed {
		parts = append(parts, "laid "+sideOf(p.Press, p.Base.Name))
	}
	return parts
}

// describeFolds says what each set of tucks of a piece is, and each row of pleats across
// it.
func describeFolds(p *piece.Piece, unit length.Unit) [][]string {
	var all [][]string
	for _, t := range p.TuckRows {
		all = append(all, DescribeTucks(t, unit.AsWritten))
	}
	for _, pleats := range p.PleatRows {
		all = append(all, DescribePleats(pleats, unit.AsWritten))
	}
	return all
}

// DescribeSizes says what a piece measures with its folds in, size by size: at the end of those
// that end on it, and where they are open.
func DescribeSizes(p *piece.Piece, unit length.Unit) []string {
	across, up := p.FoldedSizes()
	return append(sizesIn(p, across, "wide", unit), sizesIn(p, up, "long", unit)...)
}

// sizesIn says what a piece measures in one direction.
func sizesIn(p *piece.Piece, sizes []piece.SizeAt, direction string, unit length.Unit) []string {
	var told []string
	for _, at := range sizes {
		words := fmt.Sprintf("%s is %s %s", printedPart(p), unit.OnRuler(at.MM), direction)
		their, they := "at their end", "they are"
		between := len(at.Rows) > 0 && !slices.ContainsFunc(at.Rows, func(r piece.FoldRow) bool { return !r.Folds[0].End.Free })
		if between {
			their = "between their ends"
		}
		if len(p.FoldRows()) > 1 {
			var rows []string
			for _, r := range at.Rows {
				rows = append(rows, "the "+r.Called())
			}
			they = wording.Listed(rows, "and")
			their, they = "at the end of "+they, they+" are"
			if between {
				their = "where " + they + " sewn"
			}
		}
		switch {
		case len(at.Open) > 0:
			words += fmt.Sprintf(" at the %s, where %s open", wording.Listed(at.Open, "and"), they)
		case len(at.Rows) > 0:
			words = fmt.Sprintf("with the %s, %s %s", foldsIn(p), words, their)
		default:
			words = fmt.Sprintf("with the %s, %s", foldsIn(p), words)
		}
		told = append(told, words)
	}
	return told
}

// printedPart names what is measured: of a piece on the fold half, whichever is printed.
func printedPart(p *piece.Piece) string {
	if p.OnFold {
		return "this half"
	}
	return "the piece"
}

// foldsIn says that the folds of a piece are in.
func foldsIn(p *piece.Piece) string {
	switch {
	case len(p.PleatRows) == 0:
		return "tucks sewn"
	case len(p.TuckRows) == 0:
		return "pleats laid"
	}
	return "tucks and pleats in"
}

// counted says how many a row has of what it is made of, and of which size.
func counted(r piece.FoldRow, what, size string) string {
	n := r.InAll()
	words := fmt.Sprintf("%d %ss, ", n, what)
	switch {
	case n == 1:
		return fmt.Sprintf("1 %s, %s", what, size)
	case r.Mirrored && n%2 == 1:
		words += fmt.Sprintf("1 on the centre and %d on each side, ", n/2)
	case r.Mirrored:
		words += fmt.Sprintf("%d on each side, ", n/2)
	}
	return words + "each " + size
}

// sideOf says to which side of a line something is pressed: "away from centre front".
func sideOf(press source.Press, line string) string {
	if press == source.PressedAway {
		return "away from " + line
	}
	return "toward " + line
}
