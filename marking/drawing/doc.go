// Package drawing reads the lines of an SVG drawing.
//
// In come the bytes of a file; out come the lines that are drawn in it, in mm, real size, y up,
// each with its id and the groups it stands in; or all that is wrong with it. A piece asks for
// its outline and gets edges by their names. Never known here: where the file lies, and what an
// edge is sewn to. Nothing outside the bytes is looked at: no other file, no network, no
// script.
//
//	drawing.go    from the bytes to the lines; bounds of what is drawn
//	together.go   the drawings of one file, one after the other; bounds of all of them
//	walk.go       one element after the other: groups, uses, views
//	tree.go       the elements of the XML
//	pathdata.go   the commands of a path
//	arc.go        arcs of a path, circles, ellipses
//	basic.go      line, polyline, polygon, rect, circle, ellipse
//	numbers.go    numbers as SVG has them
//	units.go      lengths with their units
//	transform.go  lists of transforms
//	viewbox.go    the size of a drawing; what is shown, fitted into its view
//	flatten.go    curves become short straight parts
//	corner.go     where a line has corners
//	take.go       what a piece takes of a drawing: edges by their names
//	misfit.go     corners and names that are not as many
//
// Decided here: whatever is drawn counts, whether it has a colour or not. Style sheets are not
// read; where one would move a line the drawing is refused, as it is wherever it is broken: a
// browser draws as far as it can, and half an outline would be cut. Every curve is made of
// cubics from the first, which a transform leaves cubic, and is followed last of all, in mm.
package drawing
