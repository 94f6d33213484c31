// Package arrange lays pieces on pages.
//
// In comes a Set of markings and a paper; out come Sheets, each a grid of pages with the
// pieces on it, its joins, the places of all that is written on it. What has a form to be
// filled in comes out as it came, and is laid elsewhere. Nothing is drawn here but joins. It
// knows lines by their roles, pages by their cells; what a tuck or a seam is it does not
// know, nor which page of a PDF a page will be. Lengths are in mm, y is up.
//
//	set.go          what is drawn at once
//	piece.go        a piece as it lies on a sheet
//	sheet.go        a sheet, and what lies on it
//	arrange.go      which pieces come on which sheet
//	least.go        how many pages large pieces need at least
//	grid.go         a sheet as a grid of pages
//	cell.go         how pages hang together, and in which order they are glued
//	place.go        where the grid lies on a large piece
//	pack.go         a page being filled, for all that put pieces on one
//	shelf.go        small pieces on pages of their own
//	fewest.go       orders in which these need fewer pages
//	stage.go        which kinds of pieces share pages
//	share.go        small pieces on pages of large ones
//	beside.go       large pieces beside each other
//	freeroom.go     what large pieces leave free there
//	join.go         trim lines and join marks
//	bridge.go       windows in parts, where pages are joined
//	field.go        which places of a sheet are free
//	lettering.go    all text of a sheet, in its order
//	inscription.go  text set in lines
//	roomiest.go     the roomiest place in a piece for it
//	near.go         a text by the place it belongs to, with a leader
//	key.go          what has no room there
//	looks.go        at how many places is looked, for all of these
//	word.go         what is written at places of a piece
//	dimension.go    distances told in words
//	pale.go         pale words across pieces
//	sign.go         the name of a piece in it
//	panel.go        what is to be known of a piece, and done with it
//	panelpage.go    pages of panels that have no room by their pieces
//	sketch.go       a small drawing among the notes
//	hem.go          what of a piece is folded under
//	lineletter.go   letters in lines
//	ruled.go        numbers and words on ruled paper
//	caption.go      names along lines
//
// A sheet is made by Arrange, then FindJoins takes room for its marks, then Letter for
// its text; each takes what the one before has left.
//
// Decisions. A page is cut at its left and at its top and laid on those before it: a
// trim line is needed on two sides only, and the order of the pages is that of gluing.
// Fewest pages count first, bridges among them, then fewest short marks cut, then least
// line along a join. Small pieces go beside large ones only where that saves a page,
// since a maker would rather have them together.
package arrange
