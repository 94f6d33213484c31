// Package board lays what is looked at on a screen side by side on one surface.
//
// In comes a planned pdfout.Book, or whatever else is drawn on an ink.Picture; out comes a
// Board: parts with their places, in mm, which writes itself as one inline SVG. It knows no
// sewing, and nothing of pages in a browser but what an SVG is.
//
//	board.go   what a board is, and how it is written
//	flow.go    parts in rows, about as wide as a screen for their height
//	sheets.go  the sheets, whole, with the grid of their pages under the lines
//	pages.go   the pages as they are printed
//
// A part is drawn when its elements are asked for, and once.
package board
