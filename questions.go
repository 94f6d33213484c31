package main

import (
	"bufio"
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
}

// questions are all that is asked; without an answer it is as it is usual.
func questions(usual start.Answers) []question {
	return []question{
		{"pieces", "Which pieces? Their names, with commas between them", strings.Join(usual.Pieces, ", "),
			func(a *start.Answers, said string) (err error) {
				a.Pieces, err = start.ReadPieces(said, ink.CanPrint)
				return err
			}},
		{"unit", "Which unit: in, cm or mm?", usual.Unit.String(),
			func(a *start.Answers, said string) (err error) {
				a.Unit, err = source.ReadUnit(said)
				return err
			}},
		{"size", "For which size or age?", usual.Size,
			func(a *start.Answers, said string) error {
				a.Size = said
				return source.CheckPrinted(said, ink.CanPrint)
			}},
		{"title", "What is it called?", usual.Title,
			func(a *start.Answers, said string) error {
				a.Title = said
				return source.CheckPrinted(said, ink.CanPrint)
			}},
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
		if one.option == "pieces" {
			askMeant(lines, say, a)
		}
	}
	return nil
}

// askMeant asks of each piece whose name is a slip or two away from a word that is known,
// whether that was meant. Without an answer, and with one that cannot be, the name stays.
func askMeant(lines *bufio.Reader, say io.Writer, a *start.Answers) {
	for i, name := range a.Pieces {
		meant := start.Meant(name)
		if meant == "" {
			continue
		}
		fmt.Fprintf(say, "%s: %s Write it anew, or keep [%s] ", name, wording.DidYouMean(meant), name)
		said, _ := lines.ReadString('\n')
		if said = strings.TrimSpace(said); said == "" {
			continue
		}
		anew := slices.Clone(a.Pieces)
		anew[i] = said
		if read, err := start.ReadPieces(strings.Join(anew, ","), ink.CanPrint); err != nil {
			fmt.Fprintln(say, err)
		} else if len(read) == len(anew) {
			a.Pieces = read
		}
	}
}
