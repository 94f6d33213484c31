package main

import (
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/length"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a shell that completes a command line asks the program, by the same
// line with one option more. It is told what the command line itself knows: commands,
// options, the words of some options. Where it is told nothing it offers files.

// asksWords reports whether a command line is a shell's question for words. The option that
// says so is the parser's own, which has it last; options are not put in order then, since
// what is asked about is what stands before it. Behind -- the parser would take it for the name
// of a file, and carry the line out.
func asksWords(args []string) bool {
	return len(args) > 0 && args[len(args)-1] == "--"+cli.BashCompletionFlag.Names()[0]
}

// completing offers the words that go on from the last one that was typed: what an option or a
// command takes, where that is one of few words, or else the options that begin like it.
func completing(command *cli.Command) cli.BashCompleteFunc {
	options := cli.DefaultCompleteWithFlags(command)
	return func(c *cli.Context) {
		typed := os.Args[len(os.Args)-2] // the parser looks there as well
		option, takesValue := optionWithValue(typed, command.Flags)
		beginning := len(typed) == len("--o") && strings.HasPrefix(typed, "--") // of a longer name
		switch {
		case takesValue && !beginning:
			offer(c.App.Writer, wordsOf(option))
		case typed == completionName:
			offer(c.App.Writer, shellNames())
		case typed == helpName:
			offer(c.App.Writer, helpWords(c.App, readGuide()))
		default:
			options(c)
		}
	}
}

func offer(w io.Writer, words []string) {
	for _, word := range words {
		fmt.Fprintln(w, word)
	}
}

// wordsOf are what an option takes that takes one of few words; none of any other.
func wordsOf(option string) []string {
	switch option {
	case "paper":
		return append(paper.Names(), "single", "roll:36in")
	case "transfer":
		return source.TransferNames()
	case "unit":
		return []string{length.Inch.String(), length.Centimetre.String(), length.Millimetre.String()}
	}
	return nil
}

const completionName = "completion"

func completionCommand() *cli.Command {
	return &cli.Command{
		Name:      completionName,
		Usage:     "print what lets a shell finish the words that you begin: " + wording.Listed(shellNames(), "or"),
		UsageText: "tuckmark completion SHELL",
		Description: "With it the Tab key finishes commands, options and the names of .toml files.\n" +
			"Put the line for your shell into the file that is read whenever it begins:\n\n" +
			shellLines(),
		Action: func(c *cli.Context) error {
			if c.Args().Len() != 1 {
				return misuse("completion takes the name of one shell", "the shells it knows are "+wording.Listed(shellNames(), "and"))
			}
			return sayScript(c.App.Writer, c.Args().First())
		},
	}
}

// sayScript prints what a shell of this name is to read.
func sayScript(w io.Writer, name string) error {
	for _, shell := range shells {
		if shell.name == name {
			return writeOut(w, "the script", []byte(shell.script))
		}
	}
	hint := "the shells it knows are " + wording.Listed(shellNames(), "and")
	if near := wording.Nearest(name, shellNames()); near != "" {
		hint = wording.DidYouMean(near)
	}
	return misuse(fmt.Sprintf("there is no script for the shell %q", name), hint)
}

func shellNames() []string {
	var names []string
	for _, shell := range shells {
		names = append(names, shell.name)
	}
	return names
}

// shellLines are the lines that make each shell read its script, a paragraph each.
func shellLines() string {
	var all strings.Builder
	for _, shell := range shells {
		fmt.Fprintf(&all, "%s, %s:\n  %s\n", shell.name, shell.file, shell.line)
	}
	return strings.TrimRight(all.String(), "\n")
}
