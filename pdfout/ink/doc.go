// Package ink has the few strokes and letters that anything is drawn with.
//
// In come paths, boxes and texts in mm, with the pens and styles of this room; out come
// pages, as PDF. It knows the roles of lines (marking/mark), since each has its pen and
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
//
// A role gets its pen as a row in pens; a test fails while one has none or looks like
// another.
//
// Another output is one more file with a type that implements Canvas; who draws on it
// makes it and ends it. An SVG, for instance, would begin an <svg> for each NewPage,
// width and height in mm, under a transform that turns y up (and divides by the
// paper's Scale, as the PDF does); collect Path, Box and Circle in one d attribute until
// Stroke, Fill or Clip uses it (Between fills by the even-odd rule); keep pen, ink,
// clip and shift on a stack of <g>, which Save opens and Restore ends; write Width,
// Colour, Dashes and Round of a Pen as stroke attributes, and one <g> for each Layer.
// Text is turned back, set in the Go fonts of the Weight, Size points high on the page
// whatever Place says: Place scales places, never pens or letters.
//
// Decisions. Lines are written straight into the page: the library would round them to
// 0.01 units and begin the dashes of each anew. Dashes begin where a line begins, not
// where its page does, so that they meet across a join. The same input gives the same
// bytes.
package ink
