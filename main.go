// Command tuckmark makes full-size marking sheets for sewing from a
// description of the pieces.
//
// The way of the data: a file is read and checked (package marking), every
// piece becomes its marks, and the marks are drawn on paper (package pdfout).
// This package holds the command line and the files, and nothing else.
package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"unicode"

	"github.com/urfave/cli/v3"

	"tuckmark/marking"
	"tuckmark/pdfout"
)

// Exit statuses.
const (
	statusDone  = 0
	statusFault = 1 // a mistake in the file, or a file that cannot be read or written
	statusUsage = 2 // a command line that is not understood
)

func main() {
	os.Exit(run(os.Args, os.Stdout, os.Stderr))
}

// run carries out one command line and returns the exit status.
func run(args []string, stdout, stderr io.Writer) int {
	err := newCommand(stdout, stderr).Run(context.Background(), args)
	if err == nil {
		return statusDone
	}
	if strings.HasPrefix(err.Error(), helpWithArgument) { // which the parser does not call a usage error
		err = &usageError{plainUsage(err), "`tuckmark --help` shows every command, and `tuckmark sheet --help` what one of them takes"}
	}
	fmt.Fprintln(stderr, err)
	var usage *usageError
	if errors.As(err, &usage) {
		return statusUsage
	}
	return statusFault
}

// usageError is a command line that is not understood.
type usageError struct{ cause, hint string }

func (e *usageError) Error() string {
	if e.hint == "" {
		return "tuckmark: " + e.cause
	}
	return "tuckmark: " + e.cause + "\nhint: " + e.hint
}

const commandsHint = "`tuckmark sheet FILE.toml` makes the sheets, `tuckmark figures FILE.toml` prints the numbers; `tuckmark --help` shows every command"

// commandHint advises somebody who gave a word that is no command.
func commandHint(word string) string {
	if strings.EqualFold(filepath.Ext(word), ".toml") {
		return fmt.Sprintf("say what to do with the file: `tuckmark sheet %[1]s` makes the sheets, `tuckmark figures %[1]s` prints the numbers", word)
	}
	return commandsHint
}

func newCommand(stdout, stderr io.Writer) *cli.Command {
	misused := func(_ context.Context, cmd *cli.Command, err error, _ bool) error {
		return &usageError{plainUsage(err), "`" + cmd.FullName() + " --help` shows what it takes"}
	}
	return &cli.Command{
		Name:  "tuckmark",
		Usage: "full-size marking sheets for sewing, from a description of the pieces",
		Description: "Make the sheets:   tuckmark sheet linden.toml\n" +
			"Print the numbers: tuckmark figures linden.toml\n" +
			"Print them at 100 %, measure the check square on the first page, and only\n" +
			"then mark cloth with them.",
		Writer:         stdout,
		ErrWriter:      stderr,
		OnUsageError:   misused,
		ExitErrHandler: func(context.Context, *cli.Command, error) {}, // run says it
		Action: func(_ context.Context, cmd *cli.Command) error {
			if word := cmd.Args().First(); word != "" {
				return &usageError{fmt.Sprintf("there is no command %q", word), commandHint(word)}
			}
			return &usageError{"no command was given", commandsHint}
		},
		Commands:        []*cli.Command{sheetCommand(misused), gaugeCommand(misused), scaleCommand(misused), figuresCommand(misused)},
		HideHelpCommand: true, // --help says it all
	}
}

func sheetCommand(misused cli.OnUsageErrorFunc) *cli.Command {
	return &cli.Command{
		Name:         "sheet",
		Usage:        "make the full-size sheets of every piece, as a PDF",
		ArgsUsage:    "FILE.toml",
		OnUsageError: misused,
		Flags: append([]cli.Flag{
			&cli.StringFlag{
				Name: "output", Aliases: []string{"o"},
				Usage: "write the sheets to `OUT.pdf` (without it: beside FILE, under its name)",
			},
			&cli.BoolFlag{Name: "first-page-only", Usage: "make only the first page, to prove the scale with before the others are printed"},
			&cli.BoolFlag{Name: "no-figures", Usage: "leave out the pages with the figures for the cutting table"},
			&cli.BoolFlag{Name: "gauges", Usage: "add the gauges, to be cut from card"},
		}, slices.Concat(paperFlags(), pieceFlags(), squareFlags())...),
		Action: func(_ context.Context, cmd *cli.Command) error {
			in, err := oneFile(cmd, "tuckmark sheet linden.toml -o linden.pdf")
			if err != nil {
				return err
			}
			p, err := readPrinting(cmd)
			if err != nil {
				return err
			}
			first := cmd.Bool("first-page-only")
			behind := ""
			if first {
				behind = firstPage
			}
			return makeSheets(cmd.Root().Writer, in, outputName(cmd, in, behind), p, first)
		},
	}
}

// outputName is the name of the PDF that is asked for, or else that of the file, with
// something behind it.
func outputName(cmd *cli.Command, in, behind string) string {
	if out := cmd.String("output"); out != "" {
		return out
	}
	return strings.TrimSuffix(in, filepath.Ext(in)) + behind + ".pdf"
}

// firstPage is what the first page alone is called behind the name of the file.
const firstPage = "-first-page"

func figuresCommand(misused cli.OnUsageErrorFunc) *cli.Command {
	return &cli.Command{
		Name:         "figures",
		Usage:        "print the numbers for the cutting table: what to tear, tucks, edges, seams, trims, cloth",
		ArgsUsage:    "FILE.toml",
		OnUsageError: misused,
		Flags: []cli.Flag{
			&cli.BoolFlag{Name: "all-units", Usage: "give every length in inches and in millimetres"},
			&cli.BoolFlag{Name: "json", Usage: "give the figures as data for a script"},
		},
		Action: func(_ context.Context, cmd *cli.Command) error {
			in, err := oneFile(cmd, "tuckmark figures linden.toml")
			if err != nil {
				return err
			}
			if cmd.Bool("json") && cmd.Bool("all-units") {
				return &usageError{"json and all-units cannot be had together", "the data have every length in mm and as it is printed; leave --all-units out"}
			}
			return printFigures(cmd.Root().Writer, in, cmd.Bool("json"), cmd.Bool("all-units"))
		},
	}
}

// oneFile returns the one file that a command is given.
func oneFile(cmd *cli.Command, example string) (string, error) {
	if in := cmd.Args().First(); cmd.Args().Len() == 1 && in != "" {
		return in, nil
	}
	hint := "write it like `" + example + "`"
	for _, word := range cmd.Args().Slice() {
		if strings.Contains(word, "/") && strings.IndexFunc(word, func(r rune) bool { return r != '/' && !unicode.IsDigit(r) }) < 0 {
			hint = `a length with a space in it stands in quotes, such as "3 15/16"`
		}
	}
	return "", &usageError{cmd.Name + " takes the name of one file", hint}
}

// textWidth is how many letters a line on the screen has.
const textWidth = 80

// printFigures takes the file in to its figures, as text or as data.
func printFigures(say io.Writer, in string, data, allUnits bool) error {
	pattern, err := readPattern(in)
	if err != nil {
		return err
	}
	if data {
		return writeOut(say, pattern.Figures().JSON())
	}
	return writeOut(say, []byte(pattern.Report(allUnits).Text(textWidth)))
}

// readPattern reads a file and checks it.
func readPattern(in string) (*marking.Pattern, error) {
	data, err := readFile(in)
	if err != nil {
		return nil, err
	}
	spec, err := marking.Read(in, data, pdfout.CanPrint)
	if err != nil {
		return nil, err
	}
	return marking.Check(spec)
}

// makeSheets takes the file in to the PDF out, and says what it made.
func makeSheets(say io.Writer, in, out string, p printing, onlyFirst bool) error {
	pattern, paper, err := p.open(in)
	if err != nil {
		return err
	}
	m, err := p.draw(in, out, p.set(pattern), paper, onlyFirst)
	if err != nil {
		return err
	}
	// The sheets are made; that nobody listens is no failure.
	for _, remark := range pattern.Remarks {
		fmt.Fprintln(say, remark)
	}
	for _, piece := range pattern.Pieces {
		if piece.Block != nil {
			fmt.Fprintf(say, "%s: %s\n", piece.Name, piece.Block.Tear(pattern.Unit))
		}
	}
	fmt.Fprint(say, m.text())
	return nil
}

// asRefused says in which file what cannot be drawn is.
func asRefused(in string, err error) error {
	var refused *pdfout.Refusal
	if errors.As(err, &refused) {
		return &fileError{in, refused.Cause, refused.Hint}
	}
	return err
}

// newSet is what is drawn of a pattern, with or without its figures.
func newSet(p *marking.Pattern, figures bool) pdfout.Set {
	set := pdfout.Set{Title: p.Title, Size: p.Size, Unit: p.Unit, Pieces: p.Markings()}
	if figures {
		report := p.Report(false)
		set.Report = &report
	}
	return set
}

// helpWithArgument is how the parser begins its answer to `sheet --help FILE`.
const helpWithArgument = "No help topic for "

// plainUsage says in our own words what the flag parser found.
func plainUsage(err error) string {
	said := err.Error()
	if strings.HasPrefix(said, helpWithArgument) {
		return "--help stands by itself, without a file"
	}
	if flag, ok := strings.CutPrefix(said, "flag provided but not defined: "); ok {
		return fmt.Sprintf("there is no option %q", strings.TrimLeft(flag, "-"))
	}
	if flag, ok := strings.CutPrefix(said, "flag needs an argument: "); ok {
		return fmt.Sprintf("the option %q needs a value", strings.TrimLeft(flag, "-"))
	}
	if rest, ok := strings.CutPrefix(said, "invalid value "); ok {
		value, rest, _ := strings.Cut(rest, " for flag ")
		flag, _, _ := strings.Cut(rest, ":")
		return fmt.Sprintf("the option %q does not take %s", strings.TrimLeft(flag, "-"), value)
	}
	return said
}
