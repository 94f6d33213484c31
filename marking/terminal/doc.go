// Package terminal sets a report as plain text, for a screen that is so many letters wide.
// A mark.Report comes in and text goes out; what it speaks of is never known here, and
// no more is a letter's width: every one is as wide as the next.
//
//	text.go   the report from its title to its end; words in lines
//	table.go  rows in columns
//
// It is a room of its own because marks know nothing but points: where a line may be broken
// follows from how lengths are printed, which is known to marking/length. The same report is
// set on paper by pdfout/report.
//
// A number stays with its fraction and its unit, so a table with more numbers than fit
// takes the room it needs and is wider than the screen.
package terminal
