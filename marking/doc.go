// Package marking is the way in from outside: what a file or a program says of the pieces
// of a garment comes in, and a pattern goes out that everything else is made of. It knows
// neither TOML nor paper, and works nothing out itself.
//
// The way of the data, each stage by the room that makes it and never written to after:
//
//	bytes of a file        at most source.MaxFileSize
//	  | source.Read        keys known, values of the right kind, lengths in mm, with places;
//	  |                    a program may make the Spec itself: source.Given, source.GivenAt
//	source.Spec
//	  | marking.Check      outlines closed, names found, every line on its piece: here alone
//	  |                    mistakes are found, all of them, as fault.List
//	garment.Pattern        its pieces (piece.Piece, flat and finished) and what joins them
//	  | marking.Choose     some of the pieces by name
//	  |
//	  | sheet.Of, gauge.Of  every line of a sheet or a card, with its role
//	  +--> mark.Marking
//	  |
//	  | figures.Report     every length that is told, in tables; figures.JSON: as data
//	  +--> mark.Report
//
// mark.Marking and mark.Report are all that paper (pdfout) and screen (marking/terminal)
// may know.
//
// Each room knows those before it only:
//
//	plane    points and paths, without a meaning
//	fault    a mistake: cause, hint and place
//	length   lengths as they are read and as they are printed
//	wording  names and numbers in a sentence
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
