// Package text sets text in lines.
//
// In come words, a style (ink.Style) and a width in mm; out come Lines: labels at their
// places, and lines to write on, about an upper left corner that whoever has asked puts
// somewhere. It knows letters and how wide they are; not what is said, nor what
// else is on the page.
//
//	words.go    names, notes, page numbers and counts of pages as a sentence says them
//	wrap.go     a text broken into lines
//	shorten.go  what is left out where there is too little room
//	lines.go    lines one under the other
//	sum.go      sums to be done by hand, with spaces for numbers
//	label.go    one line of text at a place
//	slab.go     the room a text takes, at any angle
//
// Decisions. Names and prose are broken at any space, what has measures in it never
// inside one: "17 11/16 in" cut in two is read as 17. What is left out is left out by
// whole words, for the same reason. A word longer than its line is cut rather than
// printed past it.
package text
