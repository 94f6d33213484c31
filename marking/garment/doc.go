// Package garment makes a pattern of what a file says: its pieces, each checked and worked
// out by the room piece, and all that joins them or is sewn to them.
//
// In comes a source.Spec, in which every value is of the right kind by itself. Out comes a
// Pattern in which all that names anything has found it and every length is known, sewn
// and cut; or every mistake of the file at once. What is drawn of it, and on what, is never
// known here. Words are: the remarks that a teacher would make, and what does not match in
// a seam (mismatch.go), which figures tell as well, lengths as they wish.
//
//	pattern.go   what comes out
//	several.go   how many garments are made of it at once
//	check.go     the way from a file to it
//	bounds.go    how much of it is too much
//	names.go     names such as "front.neck" stand for something that can be sewn
//	course.go    an edge or a line that something is sewn along, as often as it comes
//	seam.go      two sides that are sewn together, and whether they match
//	lap.go       how far an edge is sewn that laps, to what does not open
//	gathers.go   a side that is gathered, and eased beside it
//	ties.go      what the seams and trims of the whole garment hold together
//	meeting.go   which ends of a seam come together, and what tells it
//	seamend.go   how what lies beside a seam goes on over it
//	mismatch.go  in words, what keeps two sides from lying on each other
//	advice.go    where that likely comes from, and what to move by how much
//	chain.go     courses that go on into each other, also over the fold
//	turning.go   the corners and curves of a line, also of one that was traced
//	reach.go     what the outer edge takes to reach round them
//	strand.go    in how many lengths something is sewn along courses, over the seams
//	trim.go      lace, ribbon, cord and braid along stitch lines
//	slant.go     how much longer than its middle a border of lace is where its ends slant
//	ruffle.go    gathered strips: how many, how deep, where their joins fall
//	binding.go   bias strips, and the square they come from
//	round.go     what goes round the garment, from piece to piece over the seams
//	girth.go     how far it is round: at chest, waist and hem
//	opening.go   where it opens, and on which line it is closed
//	hanging.go   what hangs beyond an edge it is sewn to
//	drop.go      how long it is, from neck to hem
//	fit.go       that beside what the child measures
//	remarks.go   what is no mistake, but may not be meant
//	omission.go  of that, what may have been left out
//	size.go      of that, what is too small or too large to be meant
//
// "Seam" is here what two edges are joined by, and nothing else.
//
// Decided:
//
//   - Whether a seam matches is said of its stitch lines. Cut edges of equal stitch lines
//     differ in length where their corners, or the allowances beside them, do; that is no
//     fault, and is said only beside one.
//   - The difference of two lengths is that of the exact ones, rounded once: a maker cuts it
//     off or eases it in. That of the printed ones may be a step more or less, or several
//     where an edge comes several times.
//   - Which ends of a seam meet is asked of all that may tell it, the weightiest first: what
//     the file says, the centre, the other seams, names, notches (meeting.go). Only then of
//     lengths and angles, and the figures say that this is hardly more than a guess.
//   - A bend or a jog at the end of a seam is amiss only where one line goes over it, as the
//     two halves of a neck do; elsewhere it is not told, for a corner is meant.
//   - A bias strip comes from the least square that gives it in few strips, for every join
//     shows; from the whole width of the cloth only where no square does.
//   - What goes round follows from the seams, and what a level is called from names. Where a
//     seam is left out nothing is known, rather than something that is nearly so.
//   - Curves and corners are one matter: what lies beside the line must reach round. They are
//     told apart by how sharply a line turns, for a mitre is longer than an arc, and a maker
//     folds the one and draws up the other. The turns are added up and not the length of
//     the outer edge measured, since what is too long in a hollow is of no use elsewhere.
//   - The middle of a strip of a ruffle comes at the centre front, so that no join does.
package garment
