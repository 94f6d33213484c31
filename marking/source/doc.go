// Package source reads the file that a maker writes.
//
// In come the bytes of a TOML file, and which letters can be printed, for what comes onto
// the sheets is looked through for them; out comes a Spec, which has every value as it is
// written, lengths in mm, each with its place; or all mistakes that can be told from the
// writing alone, in the order of their lines. Never known here: whether a name stands for
// anything and whether a value makes sense beside another piece or edge, which are looked
// at where pieces are worked out; paper, fonts, and how anything is drawn. Which keys go
// together is known. A Spec may come from elsewhere than a file: Given and GivenAt make
// its values, and Faults holds it to what Read sees to.
//
//	spec.go         a piece as it is written
//	garmentspec.go  the garment: what joins the pieces and is sewn to them
//	choice.go       the words that a file may choose among, a type for each choice
//	transfer.go     the ways to bring lines onto cloth, which the command line names too
//	value.go        a value that was given, or was not, and its place
//	faults.go       a Spec that a program made, held to the bounds of one that was read
//	joinfaults.go   the same of what joins pieces and is sewn to them
//	bounds.go       how much there may be in all pieces together
//	part.go         one part of it: its place, each value by itself, its faults
//	names.go        pieces, edges and lines looked up by name
//	keys.go         the keys that each table of a file may have
//	read.go         from the bytes to the Spec: the keys of pieces; what a file may hold at most
//	readfold.go     the keys of tucks and of pleats
//	tuckgroups.go   those of tucks in groups
//	readgarment.go  the keys of seams, trims, ruffles, bindings
//	readvalue.go    one value: text, a choice, a number, a length
//	readpoints.go   points, in pairs
//	readoutline.go  outlines and lines from a drawing
//	readedge.go     the edges of a piece; a rectangle
//	enlarge.go      points of a draft that is smaller than the piece
//	factor.go       a number that is no length, and its bounds
//	readline.go     lines of a piece
//	step.go         points in steps, each from the one before
//	written.go      a table as it is written, and one laid over another
//	layers.go       files and pieces that are like others, and what differs in them
//	view.go         the views of a file
//	folder.go       other files in its folder
//	table.go        one table: its keys, which of them are unknown or missing, its faults
//	otherwise.go    words of the trade that are no keys
//	unspaced.go     fractions in which a space may be missing
//	plaintext.go    bytes that are no text
//	spots.go        on which line each key, table and point stands
//	syntax.go, syntaxname.go
//	                what is no TOML, in a maker's words
//	readon.go       how a text is read on behind a slip
//	space.go        spaces that are not those of the space bar
//	opening.go      the bracket or the text that was left open
//
// Decided here: what is like something else is laid over that as it is written, before any
// table is read; so every key works in it as it does elsewhere, and every value keeps the
// file and the line on which it stands. Each value is checked by itself, and a faulty one
// counts as given, so that one slip gives one message. A key that is not known is never
// passed over.
//
// The text is gone through by two libraries. BurntSushi/toml reads the values; where it
// stops it tells the letter, which syntax.go needs to say what was meant. It does not tell
// where a key stands: that is found by the parser of pelletier/go-toml/v2. Its interface is
// called unstable and may change with its version, so spots.go alone knows it; a test holds
// the keys of both libraries against each other.
package source
