// Package grid makes ruled sheets, off which the points of a paper pattern are read.
//
// In come a size and a unit; out come markings (mark.Marking): a page that shows how a piece is
// read off, a page to write its points on, and the ruled sheet itself, with the steps in which
// they are used. Nothing is known here of a file: the lines of one that the first page shows are
// written here, and a test reads them. What is ruled is worked out of whole units alone.
//
//	size.go     how far a grid reaches
//	ruled.go    its lines
//	example.go  a small piece, and the lines of a file that say the same
//	guide.go    the pages beside it, and the order of work
package grid
