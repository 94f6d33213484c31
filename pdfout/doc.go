// Package pdfout prints a set of marked pieces (arrange.Set) true to size: it decides
// which page comes when, and draws them. Draw writes a PDF, DrawFirst its first page
// alone, and Judge says what a printer that is off does to the lines. Nothing of sewing
// is known here: a line has a role, and a name; nor anything of the PDF, for pages are
// drawn on an ink.Canvas.
//
// The way of the data: check refuses what cannot be drawn; plan takes the sheets of
// arrange.Arrange, lays forms and figures (package report) and numbers all pages, which
// makes a book; letter finds joins and places for all texts; draw leads through the book
// page by page. Each stage adds to the book and changes nothing of the stage before.
// Another output is another ink.Canvas: beside draw in draw.go, with the same book.
//
//	draw.go      Draw and DrawFirst: from a set to a PDF
//	check.go     what is refused before anything is planned
//	book.go      the order of the pages, which is decided there alone
//	cover.go     the first page: the check square, and what is told beside it
//	guidance.go  the words of that
//	linekey.go   the key of the lines, on the first page
//	assembly.go  pictures of the sheets, with the numbers of their pages
//	form.go      a page to sew from and to write on
//	page.go      a page of a sheet
//	header.go    what stands over a page
//	whole.go     paper on which nothing is joined: pages as panels on a large one
//	verdict.go   Judge: what a scale does to the lines
//	summary.go   what was drawn, in a sentence or two
//
// What took thought:
//
//   - The first page proves the scale and says how to go on; it is worth printing alone.
//     Its words name only what is on these pages.
//   - For a printer that is off the whole page is scaled, text and margins with it: what
//     comes out is the page as it was planned. So all is planned in mm of the paper as it
//     comes out, and the canvas alone knows the scale.
//   - Whether a scale matters is told by the line that comes out most off, not by the
//     scale: a small piece may be marked from sheets that would spoil a large one.
//   - A form is refused rather than made smaller or cut short: it is written on.
//   - The cautions are the set's. No rule of cloth is looked for here.
package pdfout
