// Package seen is what can be seen on printed pages, for the tests of the rooms that
// print; they alone use it. Pages are read back from a PDF (Read), by a reader that is
// not its writer, or out of a picture (ReadPicture), or taken down from a canvas (Canvas), which is quicker where the PDF
// itself is not what is tested. Either way a test then asks a Page for texts, lines and
// frames, as they lie on the paper. It knows nothing of how anything was arranged: the
// pages of a sheet are put together by what is printed on them (JoinUp).
//
//	page.go    a page, its texts and its paths
//	pdf.go     pages out of a PDF
//	canvas.go  pages as they are drawn
//	record.go  all that a canvas is told, to tell it again
//	picture.go pages out of the elements of a picture
//	join.go    pages laid together by their join marks, as a maker does it
//	piece.go   the lines of a piece, sought on the pages of its sheet
//	bridge.go  what of a window may be left out at joins
package seen
