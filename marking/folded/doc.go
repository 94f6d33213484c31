// Package folded works out a piece as it looks when its tucks and pleats are sewn and pressed.
//
// In comes a checked piece, with the groups of its folds in the order in which they are folded;
// out comes a mark.Pressed, plain data for a screen. The pattern is not looked at again for
// mistakes, and paper is never known here.
//
//	folded.go     the way in
//	work.go       a piece that is being folded: its outline, its lines, what is shown of it
//	cloth.go      parts of the cloth, and what one group of folds makes of them
//	foldlines.go  creases and stitching
//	soft.go       soft lines where cloth is let go
//	block.go      the block that a piece is cut from
//	edgepleat.go  pleats in an edge
//	pile.go       which part lies on which: what is seen, how many layers there are
//	bins.go       which parts are near
//	notes.go      what the picture cannot show
//
// Decided:
//
//   - Lines that lie under a flap are hidden, as on a garment that is looked at. That there is
//     more cloth under a flap is told by the number of layers.
//   - The piece is drawn as wide as it is where all its folds are sewn. Where one ends on the
//     piece, what it took is drawn in to a line, with soft lines for the fullness, and a note says
//     how much wider the cloth is there.
//   - Where two flaps lie on each other that are pressed against each other, the one that lies
//     farther out from the base lies on top; the file does not say it.
package folded
