// Package length reads lengths as a maker writes them and prints them as a ruler shows
// them.
//
// In come a text such as "2 1/8" and the unit it counts in, or a number of millimetres;
// out come millimetres, or words: 2 1/8 in, 54 mm, 1 3/8 yd. Inside the program every
// length is in millimetres. Never known here: where a length stands in a file, what is
// measured, and whether it makes sense there.
//
//	unit.go      inch, centimetre, millimetre, and the steps of their rulers
//	parse.go     a text becomes millimetres, or a fault that shows how to write it
//	print.go     millimetres become a text: what a ruler shows, or what somebody chose
//	amount.go    a length with what the ruler shows of it: totals that add up in print
//	unspaced.go  fractions in which a space may be missing
//	mistyped.go  letters for figures, and other slips of the hand in what is no length
//	reading.go   a place between two steps of the ruler
//	fineness.go  to which step of a ruler a length was read
//	purchase.go  a length as it is asked for in a shop
//	words.go     where a sentence may be broken, so that no measure is torn
//
// Decided here: totals are sums of rounded parts, since a maker adds up what she reads.
// What stands in brackets, in the other system, is the nearest to the exact length, so
// those do not add up: two sums of rounded parts would drift apart by millimetres over a
// row of tucks. A difference of two printed lengths is that of the printed ones; whether
// it matters is decided by the exact one.
package length
