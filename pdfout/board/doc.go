// Package board lays what is looked at on a screen side by side on one surface.
//
// In comes a planned pdfout.Book, or whatever else is drawn on an ink.Picture; out comes a
// Board: parts with their places, in mm, which writes itself as one inline SVG. It knows no
// sewing, and nothing of pages in a browser but what an SVG is.
//
//	board.go     what a board is, and how it is written
//	flow.go      parts in rows, about as wide as a screen for their height
//	lots.go      on several boards, where they are too many for one
//	sheets.go    the sheets, whole, with the grid of their pages under the lines
//	pages.go     the pages as they are printed
//	folded.go    pieces with their folds in, beside the flat ones, by the two that follow
//	topmost.go   cut edges that lie on each other
//	pair.go      drawings of one piece on one paper
//	wash.go      cloth: the darker the more layers lie there
//	shadekey.go  what the shades mean
//	partkey.go   the same in small, under each piece
//	views.go     views side by side, or laid over each other
//	viewpen.go   the pens by which these are told apart
//	columns.go   parts in rows and columns
//
// A part is drawn when its elements are asked for, and once.
package board
