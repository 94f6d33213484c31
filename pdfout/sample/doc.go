// Package sample has pieces and figures for the tests of the rooms that print, drawn
// here by hand, in mm: shapes as a child's clothes have them, with every role but Prick on
// some piece. Tests alone use it. It knows no paper and no sheet, so that every room can
// lay its own sets of them.
//
//	pieces.go   pieces of a garment, from a plain rectangle to a bodice front
//	tucks.go    what is full of close lines, and a sample with a form to fill in
//	figures.go  reports
package sample

// Inch is the international inch (1959) in mm.
const Inch = 25.4
