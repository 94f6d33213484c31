// Package terminal sets a report as plain text, for a screen that is so many letters wide.
// In comes a mark.Report, out goes text. What the report speaks of is never known here, nor
// how wide a letter is: every one is as wide as the next.
//
//	text.go   the report from its title to its end; words in lines
//	table.go  rows in columns
//
// Decided here:
//
//   - It is a room of its own, for marks know points alone; where a line may be broken
//     follows from how lengths are printed (marking/length). The same report is set on
//     paper by pdfout/report.
//   - A number stays with its fraction and its unit. So a table with more numbers than fit
//     takes the room it needs, and is wider than the screen.
package terminal
