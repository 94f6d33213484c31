// Package fault is what is told of a mistake: its cause, what to do about it, and where it
// is.
//
// In come the words and the place, from the room that found the mistake; out comes an error
// that reads as a maker is told. Every room hands mistakes on as these, from the file to
// the screen, and none words again what another has said. Never known here: what was asked
// for, and who is told.
//
//	fault.go    one mistake
//	place.go    where something stands that somebody wrote
//	list.go     all mistakes that were found together
//	excerpt.go  the lines around a place
//
// Decided here: the mistakes of a file are collected and told together, in the order of
// their lines; of a length, of paper or of a command line there is one. Whoever first knows
// the place says it: a length does not know where it is written, the file does.
package fault
