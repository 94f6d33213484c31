// Package marking is the way in from outside: what a file or a program says of the pieces
// of a garment comes in, and a pattern goes out that everything else is made of. It knows
// neither TOML nor paper, and works nothing out itself:
//
//	check.go   from a Spec to a Pattern
//	choose.go  some pieces of a Pattern
//
// The way of the data, each stage by the room that makes it and never written to after:
//
//	bytes of a file        at most source.MaxFileSize
//	  | source.Read        keys known, values of the right kind, lengths in mm, with places,
//	  |                    or a fault.List of what is written wrong;
//	  |                    a program may make the Spec itself: source.Given, source.GivenAt;
//	  |                    Check first holds it to the same bounds: Spec.Faults
//	source.Spec
//	  | marking.Check      outlines closed, names found, every line on its piece; what of
//	  |                    that is wrong is told at once, as a fault.List
//	garment.Pattern        its pieces (piece.Piece, flat and finished) and what joins them
//	  | marking.Choose     some of the pieces by name
//	  |
//	  | sheet.Of, gauge.Of  every line of a sheet or a card, with its role
//	  +--> mark.Marking
//	  |
//	  | figures.Report     every length that is told, in tables; figures.JSON: as data
//	  +--> mark.Report
//
// mark.Marking and mark.Report are all of a pattern that paper (pdfout) and screen
// (marking/terminal) may know. Beside them these know lengths; and paper points and paths,
// and what a mistake is. How another output is added, such as an SVG, is told at the door of
// pdfout.
//
// Behind Check no mistake of a file is looked for. What can still be refused is what was
// asked for on the command line: a piece that is not there, dots too close, a paper too
// small.
//
// Each room knows those before it only:
//
//	plane    points and paths, without a meaning
//	fault    a mistake: cause, hint and place
//	wording  names and numbers in a sentence
//	length   lengths as they are read and as they are printed
//	drawing  the lines of an SVG
//	source   the file as it is written
//	mark     lines with a role, tables and sentences
//	piece    one piece: its edges, stitch lines, folds and marks, flat and finished
//	garment  what joins the pieces: seams, trims, ruffles, bindings
//	lay      what is torn and cut, and the cloth that takes
//	sheet    what is drawn of a piece, by the way its lines come onto the cloth
//	gauge    cards to measure with
//	figures  what is told in numbers
//	terminal a report as text, beside all this
package marking
