// Command tuckmark makes full-size marking sheets for sewing from a description of the
// pieces.
//
// In come the words of a command line; out go files, what is said on the screen, and an exit
// status. A file is read and checked (marking), what is asked for is made of it
// (marking/sheet, gauge, figures) and drawn on paper (pdfout). Nothing of sewing or of
// paper is worked out here.
//
// What belongs here: what people type and are given back to type; files, terminals and browsers,
// which no other room knows; and the seam between the two halves of the rooms, where what marking
// makes becomes what pdfout draws and shows. Whatever could be said without a command line is said
// in a room below.
//
// A command line:
//
//	main.go         commands, and how a run ends
//	commandline.go  what people type, and what is wrong with it
//	typed.go        what they are given back to type
//	completion.go   what a shell is told that completes a line; shells.go  its scripts
//	version.go      what --version says
//	fault.go        faults of the command line; mishap.go  of the program itself
//
// Options that several commands share:
//
//	printing.go     paper and pieces
//	measured.go     what was measured on a printed page
//	format.go       PDF or SVG
//	times.go        how many garments the figures are for
//
// A command each, and what only one needs:
//
//	start.go, grid.go, look.go, sheet.go, gauge.go, figures.go, scale.go, help.go
//	questions.go    start: what a first file is made of, and asking for it at a terminal
//	looking.go      look: what it shows, as the file is now
//	browser.go      look: opening the browser; browser_unix.go, browser_other.go  apart from Ctrl-C
//
// What comes in, and what goes out:
//
//	input.go        a file, or what another program leads in
//	file.go         a file that is read, with what it names
//	opened.go       that, as far as it is meant, and its paper
//	made.go         what was made, and what is said of it
//	output.go       where it goes, and what is in its way
//	outname.go      what it is called
//	progress.go     what a command is at, where somebody waits for it
package main
