// Package sketch is for tests only: short text that a test writes garments in, pieces
// that several tests use, and a few small reckonings of points that do not go by the code
// under test. Nothing that is built into the program may import it. It knows points and
// text; what is made of a sketch is in package made.
//
// A sketch is one piece. Each line is an edge: its key, its points in inches, and, behind
// a bar, what else the edge holds, parted by semicolons. A line without a colon belongs to
// the piece itself. What follows a line of dashes is written as in a file, with [ short
// for [piece.front.
//
//	fold = "centre"
//	centre: 0,0 0,10
//	neck: 0,10 2,12 | smooth = true; allowance = 0.25
//	side: 2,12 5,11 6,0
//	hem: 6,0 0,0 | hem = 2
//	---
//
//	[tuck.yoke]
//	beside = "centre"
//	...
//
// [Front] turns it into the text of a file, and so do [Piece] and [Joined] for more of them.
//
//	sketch.go   from a sketch to the text of a file
//	folds.go    tucks and pleats in a line each
//	pieces.go   sketches that several tests use
//	corners.go  sketches for what happens at corners
//	drafts.go   garments of random measures
//	frock.go    a file with all that figures can tell
//	picture.go  paths as a picture in text
//	everykey.go small files that have every key between them
//	values.go   the values and tables in the text of a file
//	edited.go   that text, saying something otherwise
//	odd.go      values that a maker hardly means
//	points.go   points as text; distances and places, worked out plainly
package sketch
