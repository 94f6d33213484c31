// Package proof holds what is printed against the pieces it was printed from, as other
// programs draw it: besides what finds such programs it has tests alone. Two renderers draw
// every page; squares and lines are measured in dots, and the pages of a sheet, laid together
// by their join marks, must have every dot of every line and no other.
//
//	tool.go           a program that others wrote
//	render_test.go    squares, lines and margins in dots, and texts as read
//	stitched_test.go  pages laid together against one single page
//	printout_test.go  a set as it was printed
//	centre_test.go    the middles of marks that are measured to
//	press_test.go     what a print shop looks at, and what is read aloud
//	raster_test.go    renderers, and what a dot of a page may belong to
package proof
