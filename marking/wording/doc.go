// Package wording puts what the program says into words: in messages about a file and
// in the notes of a sheet alike.
//
// In come values and names; out come the pieces of a sentence. It knows no lengths (those
// are read and printed in the room length) and no sewing, of a file nothing but its name, and is
// told the words it joins.
//
//	quote.go    what somebody wrote, as a message repeats it, and the name of a file as it is said
//	list.go     several things in one sentence, and how many there are
//	inwords.go  a name as words are looked for in it, and a size as it is said
//	form.go     words that are looked for in others
//	strange.go  a letter that looks like a space, or like nothing, by its name
//	nearest.go  the known word that a mistyped one is meant for, and the hint that says so
package wording
