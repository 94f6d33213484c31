// Package start writes the first file of a maker: one that works at once and says, line by
// line, what may be changed.
//
// In come her answers: names of pieces, a unit, a size, a title. Out comes the text of a
// file, TOML, or what is wrong with an answer. Never known here: the terminal and its
// questions, where the file will lie, and how it is drawn.
//
//	answers.go  what a maker is asked, and what is wrong with an answer
//	kind.go     what kind of piece a name stands for, and which pieces belong together
//	child.go    how large a child of a size is
//	steps.go    lengths in round numbers of a unit, as a file has them
//	block.go    the measures and curves that all pieces of a garment share
//	piece.go    what the draft of a piece is filled in with, by its kind:
//	bodice.go   fronts, backs and yokes
//	gathered.go skirts, and panels below a yoke
//	sleeve.go   sleeves, by their armhole
//	small.go    collars, pockets, caps
//	seams.go    which edges of these pieces are sewn together, and what lacks a piece below it
//	write.go    the drafts in drafts/, filled in and joined to one text
//
// Decided here: the text of a kind of piece is a draft, drafts/*.toml, which reads like the
// file itself. What is filled in are whole numbers of one step, an eighth of an inch or half
// a centimetre, so that edges which are sewn together are alike to the last digit, and not
// only nearly so. Front and back share the outline from neck to hem; so they match.
package start
