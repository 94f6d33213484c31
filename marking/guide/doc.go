// Package guide is the guide to the file as help prints it: Markdown read into sections, and what
// these say of a word, as lines of plain text. In come the pages, as a folder of files, and a word;
// out go lines of at most Width letters. How the word was asked for, and which commands and options
// there are, is not known here.
//
//	guide.go   the sections of the guide, and what they say of the keys of the file
//	answer.go  what the guide says of a word, and which sections speak of it
//	word.go    words that are the same but for capitals, signs and the s of several
//	text.go    Markdown as plain text
//
// Decided here:
//
//   - It is a room of its own, for it alone knows Markdown; what a place in the file is called it
//     asks of marking/source, and where a line may be broken of marking/terminal.
package guide
