// Package pdfout prints a set of marked pieces true to size: it decides which page comes
// when, and draws them.
//
// In come an arrange.Set and a paper; out come a PDF and a Summary of it (Draw), its first
// page alone (DrawFirst), one page as an SVG (DrawSVG), a Book to be drawn page by page or sheet
// by sheet on any canvas (Plan), or a Verdict on what a printer that is off does to the lines
// (Judge), and the Answer that says so. Never known here is sewing: a line has a role, and a
// name. How a PDF or an SVG is written is known in ink alone; here it is begun and ended, in
// draw.go, and all pages are drawn on an ink.Canvas.
//
// The way of the data: check refuses what cannot be drawn on any page; plan takes the
// sheets of arrange.Arrange, lays forms and figures (package report), refuses what they
// have no room for, and numbers all pages, which makes a book; letter finds joins and
// places for all texts, and numbers again where some of them take pages more; DrawPage draws
// any page of the book, DrawSheet any sheet.
// Another output is another ink.Canvas, with a function beside onPDF that begins it.
//
//	draw.go      Plan, Draw, DrawFirst and DrawSVG: from a set to a document
//	refuse.go    what is refused before anything is planned
//	book.go      the book, and the order of pages that are printed one by one
//	front.go       the pages in front: their order, and how large the pieces are drawn
//	flow.go        pages in front as they are filled, column by column
//	entry.go       texts and drawings that are put where there is room for them
//	cover.go       the first page: check square, long rules, heading
//	rule.go        a graduated rule
//	guidance.go    the words of that, and of how pages are joined
//	miniature.go   small drawings of all pieces
//	smallpiece.go  how a piece looks from afar
//	worksteps.go   the order of work
//	note.go        joining and cautions
//	joindrawing.go how pages are joined, drawn
//	linekey.go     the key of the lines
//	keysample.go   what it shows: lines as they look in use
//	assembly.go    pictures of the sheets, with the numbers of their pages
//	form.go        a page to sew from and to write on
//	formtable.go   a table to be filled in, on such a page
//	atonce.go    several things done at the same time
//	page.go      a page of a sheet
//	sheets.go    what a book holds, for whoever shows it: its pages, and its sheets whole
//	header.go    what stands over a page
//	whole.go     paper on which nothing is joined: large pages, and the order of what
//	             lies on them, pages in front, figures and forms among it
//	verdict.go   Judge: what a scale does to the lines, and what a reading leaves open
//	longer.go    lines on one page that show more than the check square
//	answer.go    Answer: a verdict in words, with what may have been done and what to do
//	summary.go   what was drawn, in a sentence or two
//
// What took thought:
//
//   - The first page proves the scale and says how to go on; it is worth printing alone.
//     Its words name only what is on these pages.
//   - For a printer that is off the whole page is scaled, text and margins with it: what
//     comes out is the page as it was planned. So all is planned in mm of the paper as it
//     comes out: what room there is (package paper) hangs on the scale, and the canvas
//     alone draws by it. The first page and the headers only name it; Judge reckons with it.
//   - Whether a scale matters is told by the line that comes out most off, not by the
//     scale: a small piece may be marked from sheets that would spoil a large one.
//   - A form is refused rather than made smaller or cut short: it is written on.
//   - The cautions are the set's. No rule of cloth is looked for here.
package pdfout
