// Package report sets figures on pages: titles, tables, sentences and pictures.
//
// In come a mark.Report and a paper; out come pages (Lay), each of which draws itself on a
// canvas, or the refusal of what cannot be printed (Check, and Lay where numbers are too
// wide). Never known here is what the figures say, and of what, nor where in a book the
// pages come and what stands over them.
//
// The way of the data: a setter turns the parts of a report into bands, strips that are
// never broken; columns.go breaks the bands into columns and pages.
//
//	setter.go        Lay: what is set, in which order, and what stays together
//	sentence.go      sentences, warnings and lines to write on
//	table.go         tables
//	grid.go          the stops that all their numbers end at
//	picture.go       a picture of how things lie
//	drawing.go       the same by itself, in the room there is for it
//	picturebands.go  what is said of the bands of a picture
//	picturenames.go  the names of its shapes
//	band.go          bands, and pages of them
//	columns.go       bands in columns and on pages
//	printable.go     Check: whether there is a letter for every sign, a place for every point
//
// What took thought:
//
//   - How many columns a page has is decided for a whole report, by its widest table: a page
//     on which both are mixed is hard to read from across a table. All numbers end at the
//     stops of one grid, so that the eye runs down them from table to table.
//   - A number that is cut short is a wrong one, and so is a measure broken between two
//     lines. Words are shortened before a number is; where numbers alone are too wide
//     the report is refused. Nothing is set small to fit.
//   - Nothing that heads something is the last in its column, and a table is broken only
//     where no column has room for it. What has to stay together is bounded in height, so
//     that it fits on any page.
//   - A picture is never true to size, and looks it: thin lines, a tint, no pen that a
//     sheet has but that of a fold.
//   - What stands across a page is not moved forward for what comes after it, and that
//     goes on in the columns; so a picture may come a page after its section begins.
package report
