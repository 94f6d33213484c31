// Package mark is all that paper and screen may know of a pattern: lines with a role and a
// name, and figures as they are printed.
//
// What comes in is made by the rooms above it: sheet and gauge make markings, figures makes
// a report. It goes out as it is to whatever draws or prints. Nothing is worked out here.
//
// Drawing knows roles, not sewing: of a tuck there is a name in the line key and nothing
// more. Whether two lines are drawn alike is decided by their roles alone; a line that is
// to be drawn as none is yet gets a role of its own, and a pen in pdfout.
//
//	role.go     what a line is for
//	mark.go     one line
//	word.go     what is written at a place of them
//	pressed.go  a piece with its tucks and pleats sewn and pressed
//	sketch.go   a small drawing beside the notes
//	kind.go     what a marking is for, and which side of the cloth lies up
//	bounds.go   how much is drawn at once, at most
//	marking.go  the lines of one sheet, gauge or form, and what is written with them
//	task.go     a step of the order of work
//	report.go   the figures: tables, sentences, pictures
//	told.go     what is said of a line that is pointed at, and of a place of the file
//
// Decided here:
//
//   - A pricked line is one mark, and the points of its path are its dots: so a sheet has
//     as many marks as lines, however closely they are pricked.
//   - Lengths are in mm where something is drawn, and words where something is read: what
//     is printed of a pattern is rounded before it comes here. Behind this room only sizes
//     that are first known there are put into words, in messages: of paper, and of a
//     form or a piece that does not go onto it.
package mark
