// Package lay says what is torn and cut of the cloth, and lays it out, so that the length
// to buy is known.
//
// In comes a garment.Pattern. Out come its cuttings, each with its size across the cloth
// and along it; the Lay they make, with everything in its place, where the width of the
// cloth is known; and remarks on what does not lie on it. How a garment is sewn is never
// known here, nor how the lay is drawn, nor in what lengths cloth is sold (that is the room
// length). Of the words about a lay this room has those that say how it was made, and what
// each cutting is called; tables are made in figures.
//
//	cuttings.go  what is torn, and what is cut round its outline
//	laid.go      what of that is laid, and the lay as it comes out
//	item.go      a thing to be cut, as it is drawn: grain, fold, how many
//	pose.go      a thing as it lies on the cloth, and where
//	lay.go       the rules of a plain lay, and the shortest of a few
//	torn.go      what is torn from selvage to selvage, and what is cut beside it
//	ways.go      what comes from folded cloth and what from single: the few ways
//	orders.go    what is laid before what
//	band.go      shapes put into a band, and what of it is taken
//	profile.go   a shape as a band sees it
//
// An item becomes poses (whole, by its half on the fold, doubled on folded cloth), a way
// chooses among them, and each gets a place. Of all the plans that are made only the
// shortest is turned into outlines.
//
// Decided:
//
//   - A plain lay is one that a maker can repeat from its picture: one piece after another,
//     each as near to the end of the cloth as it goes, also in the bays of those before it.
//     A few orders are tried, and no piece is moved again. It promises no least cloth.
//   - The least that any lay can take is all area over the width of the cloth, or the
//     longest piece; BenchmarkLayOfExamples holds the lays of the examples beside it.
//   - However much is laid, the time grows with it and no faster: a band closes the gaps
//     between its shapes after it has looked for room so many times.
//   - All that are cut of one piece lie beside what is torn, or none, so that nobody looks
//     for one piece in two places.
//   - Of ways that are equally short the first is taken, and shorter by rounding is not
//     shorter: the same file gives the same lay on every machine.
//   - What is wider than the cloth is left out and said; it is never turned off its grain
//     to make it fit.
package lay
