// Package ink has the few strokes and letters that anything is drawn with.
//
// In come paths, boxes and texts in mm, with the pens and styles of this room; out come
// pages, as PDF or SVG. It knows the roles of lines (marking/mark), since each has its pen and
// its layer, and the paper that pages have. It knows no sewing, and not what a page
// says or where things lie on it.
//
//	canvas.go   what can be drawn, whatever pages are made of in the end
//	strokes.go  lines, runs of dashes, rings and check squares, made of that
//	hatching.go the lines that hatch an area
//	pen.go      the table of pens, one for each role: three widths, and rhythms of dashes
//	finepen.go  pens for what is not on the cloth
//	flag.go     heads at the ends of lines, and flags beside thin ones
//	letter.go   letters that stand in lines
//	colour.go   colours
//	coarse.go   which points lines in small pictures leave out
//	style.go    how letters are drawn, and how much room they take
//	type.go     the table of sizes of type, one for each use
//	font.go     the two fonts, and what they have a letter for
//	fraction.go fractions in a text, built of small figures
//	pdf.go      a Canvas that is a PDF; it alone touches the library
//	pdffile.go  what the file says round its pages, for which the library has no call
//	pdfobjects.go  a PDF taken apart, and put together anew
//	svg.go      a Canvas that is an SVG, for a file
//	svgmarks.go   the lines of the pieces in it, and what they are called
//	picture.go  a Canvas that is SVG elements, for the page of a browser
//	svgdrawing.go what both keep while they are drawn
//	svgtext.go    how a text is written
//	svgshape.go   how shapes, pens and colours are written
//
// A role gets its pen as a row in pens; a test fails while one has none or looks like
// another.
//
// Another output is one more file with a type that implements Canvas; who draws on it
// makes it and ends it. Place scales places, never pens or letters: a Text is Size points
// high on the page whatever Place says.
//
// Decisions. Lines are written straight into the page: the library would round them to
// 0.01 units and begin the dashes of each anew. Dashes begin where a line begins, not
// where its page does, so that they meet across a join. The same input gives the same
// bytes.
package ink
