// Package sheet makes the sheets of a pattern: every line of a piece as it comes onto the
// cloth, in its role, with its words.
//
// In comes a checked pattern (garment.Pattern), whose lines are worked out; out go
// markings (mark.Marking), each of which is printed by itself. Nothing is checked here
// again, and nothing here knows paper: no size of a page, no pen, no place on it. There are
// three crumbs of it: a sample is no wider than fits across every page (sampleWidest), since
// a strip is ruled in one; a number at a tuck is about as wide as it is printed (digitWide),
// since it stands only where it has room; and a sketch among the notes has the size it has
// there (sketchWide).
//
//	sheet.go            which sheets a piece has
//	bounds.go           how much comes onto sheets at most
//	transfer.go         the table of transfers: for each way to bring lines onto cloth its sheets
//	outline.go          what all sheets of flat cloth do with an outline
//	markingsheet.go     a piece as it is cut from flat cloth
//	tucksheet.go        the tucked block that a piece is cut from
//	tuckruler.go        a tick for every line of that block
//	cuttingsheet.go     the finished piece, to be cut from its block
//	foldwords.go        numbers and distances at the ends of folds
//	rowwords.go         which of them each sheet has
//	depth.go            how deep folds end, measured on the sheet
//	pressarrow.go       which way a set of tucks is pressed
//	blocksketch.go      how a tucked block lies, small
//	cross.go            the crosses by which tuck sheet and cutting sheet are laid
//	describe.go         what tucks and pleats are, in words
//	tuckgroups.go       tucks in groups, in words
//	template.go         a piece cut out in paper, to be drawn along and through
//	templateoutline.go  where a template ends
//	window.go           its windows, and ticks where there is no room for one
//	mirror.go           a sheet for the wrong side; left and right
//	prick.go            dots along the lines
//	samplesheet.go      a strip of tucks to be sewn first
//	alike.go            one sheet for pieces that are alike
//	allviews.go         the lines of other views of a file beside those of one
//
// A transfer is added in three places: its constant and its word in marking/source, from
// where messages and the command line's help have it; its row in the table of transfer.go;
// and a file that makes its sheet out of the piece's. A sheet that every
// way has in common is a field of pieceSheets.
//
// Decided here:
//
//   - A template is cut along the stitch lines as they are ruled, run out to the next
//     cutting line. Which edges those are is a word in the file; without it all that
//     bend, round or square, for straight ones are as well ruled.
//   - A window has one side on its line, and not the line in its middle: a pencil leans on
//     the side, and half a millimetre either way is too much.
//   - A cutting sheet lies on tucked cloth, right side up: it is neither mirrored nor
//     pricked, whichever way the flat block is marked.
//   - A template has the folds of a piece only while the piece is marked flat. One that is
//     cut from a block has its tucks in when the template is laid on it.
//   - Sheets are made of half a piece, and opened out at the end, so that both halves are
//     one to the last digit.
package sheet
