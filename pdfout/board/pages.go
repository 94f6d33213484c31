package board

import (
	"fmt"
	"strconv"
	"sync"

	"tuckmark/marking/plane"
	"tuckmark/pdfout"
	"tuckmark/pdfout/ink"
)

// Rules of this file: pages are shown as they come out of the printer, in their order, each with
// its number.

// Pages are the pages of a book, side by side.
func Pages(book *pdfout.Book) Board {
	var parts []Part
	for _, p := range book.Pages() {
		parts = append(parts, Part{
			Number: p.Number, Name: fmt.Sprintf("%d  %s", p.Number, p.Title), Box: plane.Box{Max: p.Size},
			Elements: sync.OnceValue(func() string {
				picture := ink.NewPicture("page-"+strconv.Itoa(p.Number), p.Size)
				book.DrawPage(picture, p.Number)
				return paperBox(p.Size) + picture.Elements()
			}),
		})
	}
	return flow(parts)
}
