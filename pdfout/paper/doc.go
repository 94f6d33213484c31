// Package paper knows what is printed on: its size, what of it a printer can print, how
// pages are asked for, and what a printer that is off makes of a mm.
//
// In comes what somebody asked for or measured, as text ("a4", "roll:36in",
// "3 15/16"); out comes a Paper, whose boxes say where things may be printed, or a
// Scale. Never known here are pieces, roles, and what is written or drawn on a page. What
// any page needs is known, since paper that cannot give it is refused: the room of the
// first page, the strip for the header, the grid and the frames of check squares, how
// wide a join must be, and how long and how many pages of a PDF may be. Lengths are in
// mm, upward and to the right from the lower left corner.
//
//	paper.go    a paper, its margin and overlap, and which papers are refused
//	papers.go   the papers that have a name: a row for each
//	window.go   what of a page is kept free, and what is left
//	snap.go     the grid that check squares stand on
//	smallsquare.go  the check square of every page, in the unit of the file
//	find.go     papers as they are asked for: by name, by size, from a roll
//	scale.go    what a printer makes of a mm
//	measure.go  what somebody measured of the check square, or of a longer line
//	fit.go      what "fit to page" makes of a sheet, and which fit a scale tells of
//
// A paper is added as a row in papers.go; the message that lists the papers, the help of the
// command line and what "fit to page" may have done follow from there. One row more, in
// find_test.go, holds its size against the standard, and the messages there name it.
//
// Decisions. For a printer that is off the whole page is scaled, text and margins with
// it: what comes out is the page as it was planned. So every box here is one of the
// printed sheet, and only who writes the page turns it into what is written. Half a per
// mille counts as true: nobody reads it off a ruler.
package paper
