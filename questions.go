package main

import (
	"bufio"
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"tuckmark/marking/source"
	"tuckmark/marking/start"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/ink"
)

// Rules of this file: a question shows what is taken for no answer, and is asked again, with
// the reason, until it is answered so that it can stand in a file. Who stops answering gets
// no file.

// question is one thing that a first file is made of: an option, or asked at a terminal.
type question struct {
	option, text string
	usual        string
	take         func(a *start.Answers, said string) error
	// doubt asks whether what was answered was meant, where that is not certain; nil: it always is.
	doubt func(lines *bufio.Reader, say io.Writer, a *start.Answers)
}

// questions are all that is asked; without an answer it is as it is usual.
func questions(usual start.Answers) []question {
	return []question{
		{"pieces", "Which pieces? Their names, with commas between them", strings.Join(usual.Pieces, ", "),
			func(a *start.Answers, said string) (err error) {
				a.Pieces, err = start.ReadPieces(said, ink.CanPrint)
				return err
			}, askMeant},
		{"unit", "Which unit: in, cm or mm?", usual.Unit.String(),
			func(a *start.Answers, said string) (err error) {
				a.Unit, err = source.ReadUnit(said)
				return err
			}, nil},
		{"size", "For which size or age?", usual.Size,
			func(a *start.Answers, said string) error {
				a.Size = said
				return source.CheckPrinted(said, ink.CanPrint)
			}, askChild},
		{"title", "What is it called?", usual.Title,
			func(a *start.Answers, said string) error {
				a.Title = said
				return source.CheckPrinted(said, ink.CanPrint)
			}, nil},
	}
}

// answer takes an answer up; one that is wrong changes nothing.
func (q question) answer(a *start.Answers, said string) error {
	answered := *a
	if err := q.take(&answered, said); err != nil {
		return err
	}
	*a = answered
	return nil
}

// askAnswers asks for all that makes the file out.
func askAnswers(from io.Reader, say io.Writer, out string, a *start.Answers) error {
	fmt.Fprintf(say, "A few questions for %s. Enter takes what stands in brackets.\n", wording.FileName(out))
	lines := bufio.NewReader(from)
	for _, one := range questions(*a) {
		for {
			fmt.Fprintf(say, "%s [%s] ", one.text, one.usual)
			said, ended := lines.ReadString('\n')
			said = strings.TrimSpace(said)
			if ended != nil && said == "" {
				fmt.Fprintln(say)
				return fileFault(out, "the questions were not all answered, and no file was written",
					"answer on the command line: `tuckmark start --pieces front,back "+fileInShell(out)+"`")
			}
			if said == "" {
				break
			}
			err := one.answer(a, said)
			if err == nil {
				break
			}
			fmt.Fprintln(say, err)
		}
		if one.doubt != nil {
			one.doubt(lines, say, a)
		}
	}
	return nil
}

// askAnew says what is doubtful of a word, and takes another in its place; enter keeps it.
func askAnew(lines *bufio.Reader, say io.Writer, doubt, word string) string {
	fmt.Fprintf(say, "%s: %s Write it anew, or keep [%s] ", word, doubt, word)
	said, _ := lines.ReadString('\n')
	return cmp.Or(strings.TrimSpace(said), word)
}

// askMeant asks of each piece whose name is a slip or two away from a word that is known,
// whether that was meant, until it is kept or another that can be. Several names take the place
// of all.
func askMeant(lines *bufio.Reader, say io.Writer, a *start.Answers) {
	for i := 0; i < len(a.Pieces); {
		name := a.Pieces[i]
		meant := start.Meant(name)
		if meant == "" {
			i++
			continue
		}
		said := askAnew(lines, say, wording.DidYouMean(meant), name)
		if said == name {
			i++
			continue
		}
		anew := slices.Clone(a.Pieces)
		anew[i] = said
		if strings.Contains(said, ",") {
			anew, i = []string{said}, 0
		}
		if read, err := start.ReadPieces(strings.Join(anew, ","), ink.CanPrint); err != nil {
			fmt.Fprintln(say, err)
		} else {
			a.Pieces = read
		}
	}
}

// askChild asks for a size that tells an age or a height where this one tells neither, until one
// does or it is kept.
func askChild(lines *bufio.Reader, say io.Writer, a *start.Answers) {
	for !start.TellsChild(a.Size) {
		said := askAnew(lines, say, "this tells no age in figures, and the pieces would be drafted for 2 years.", a.Size)
		if said == a.Size {
			return
		}
		if err := source.CheckPrinted(said, ink.CanPrint); err != nil {
			fmt.Fprintln(say, err)
		} else {
			a.Size = said
		}
	}
}
