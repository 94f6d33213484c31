package board

import (
	"fmt"
	"strconv"
	"strings"
	"sync"

	"tuckmark/marking/plane"
	"tuckmark/pdfout"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a sheet is shown whole, on white paper whatever the page around it is, and
// under its lines how its pages cut it: the strips that two of them share, the lines along which
// they are cut and joined, their numbers. Pages that are not printed are faint.
//
//	path.paper   the pages that are printed, and the rim that no printer reaches
//	path.blank   those that are not
//	g.grid       how pages cut the sheet

// The grid: the size of a page's number in mm, as a share of the sheet's longer side, at least and
// at most, how far it stands inside its corner, in sizes, and the colours.
const (
	numberShare = 0.016
	leastNumber = 9.0
	mostNumber  = 36.0
	numberInset = 0.45
	sharedFill  = "#e4ecf4"
	joinStroke  = "#7d96ae"
	numberFill  = "#5c6e80"
)

// rim is how much paper lies around what can be printed, in mm: a little less than pages have.
const rim = 8.0

// Sheets are the sheets of a book, whole, side by side.
func Sheets(book *pdfout.Book) Board {
	var parts []Part
	for i, s := range book.Sheets() {
		var keys []string
		for _, p := range s.Parts {
			keys = append(keys, p.Key)
		}
		parts = append(parts, Part{
			Name: s.Title + ", " + text.Numbers("page", pageNumbers(s)), Keys: keys, Box: plane.Box{Max: s.Size.Add(plane.Point{X: 2 * rim, Y: 2 * rim})},
			Elements: sync.OnceValue(func() string {
				picture := ink.NewPicture("sheet-"+strconv.Itoa(i+1), s.Size)
				book.DrawSheet(picture, i)
				return fmt.Sprintf("<g transform=\"translate(%s %s)\">\n", number(rim), number(rim)) +
					paperOf(s) + gridOf(s) + picture.Elements() + "</g>\n"
			}),
		})
	}
	return flow(parts)
}

// pageNumbers are the numbers of the pages of a sheet.
func pageNumbers(s pdfout.SheetPlan) []int {
	var all []int
	for _, p := range s.Pages {
		all = append(all, p.Number)
	}
	return all
}

// paperOf draws the paper of a sheet.
func paperOf(s pdfout.SheetPlan) string {
	var printed, blank strings.Builder
	for _, p := range s.Pages {
		printed.WriteString(boxOn(s, p.Window.Grown(rim)))
	}
	for _, b := range s.Blank {
		blank.WriteString(boxOn(s, b))
	}
	var out string
	if blank.Len() > 0 {
		out = fmt.Sprintf(`<path class="blank" d="%s" fill="%s" fill-opacity="0.3"/>`+"\n", blank.String(), paperFill)
	}
	return out + fmt.Sprintf(`<path class="paper" d="%s" fill="%s"/>`+"\n", printed.String(), paperFill)
}

// gridOf draws how pages cut a sheet; nothing of one page.
func gridOf(s pdfout.SheetPlan) string {
	if len(s.Pages) == 1 {
		return ""
	}
	var shared, cores, numbers strings.Builder
	size := min(max(numberShare*max(s.Size.X, s.Size.Y), leastNumber), mostNumber)
	for _, p := range s.Pages {
		fmt.Fprintf(&shared, `<path d="%s%s"/>`+"\n", boxOn(s, p.Window), boxOn(s, p.Core))
		cores.WriteString(boxOn(s, p.Core))
		fmt.Fprintf(&numbers, `<text x="%s" y="%s">%d</text>`+"\n",
			number(p.Core.Min.X+numberInset*size), number(s.Size.Y-p.Core.Max.Y+(1+numberInset)*size), p.Number)
	}
	return fmt.Sprintf(`<g class="grid">
<g fill="%s" fill-rule="evenodd">
%s</g>
<path class="fine" d="%s" fill="none" stroke="%s" stroke-width="0.35"/>
<g font-size="%s" font-weight="bold" fill="%s">
%s</g>
</g>
`, sharedFill, shared.String(), cores.String(), joinStroke, number(size), numberFill, numbers.String())
}

// boxOn is a box on a sheet as part of the d of a path.
func boxOn(s pdfout.SheetPlan, b plane.Box) string {
	return fmt.Sprintf("M%s %sh%sv%sh-%sz", number(b.Min.X), number(s.Size.Y-b.Max.Y), number(b.Width()), number(b.Height()), number(b.Width()))
}
