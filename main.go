// Command tuckmark makes full-size marking sheets for sewing from a description of the
// pieces.
//
// In come the words of a command line; out go files, what is said on the screen, and an exit
// status. A file is read and checked (marking), what is asked for is made of it
// (marking/sheet, gauge, figures) and drawn on paper (pdfout). Nothing of sewing or of
// paper is worked out here.
//
//	main.go         commands, and how a run ends
//	commandline.go  what people type, and what is wrong with it
//	version.go      what --version says
//	completion.go   what a shell is told that completes a line; shells.go  its scripts
//	fault.go        faults of the command line
//	progress.go     what a command is at, where somebody waits for it
//	mishap.go       faults of the program itself
//	printing.go     paper and pieces: options that several commands share
//	opened.go       a file that was read, as far as it is meant, and its paper
//	measured.go     what was measured on a printed page: three more
//	times.go        how many garments the figures are for
//	start.go, grid.go, look.go, sheet.go, gauge.go, figures.go, scale.go, help.go  a command each
//	looking.go      what look shows, as the file is now
//	questions.go    what a first file is made of, and asking for it at a terminal
//	outname.go      what a PDF is called
//	format.go       PDF or SVG
//	made.go         what was made, and what is said of it
//	browser.go      opening the browser; browser_unix.go, browser_other.go  apart from Ctrl-C
//	file.go         reading files
//	standard.go     what comes in from other programs, and goes out to them
//	output.go       where sheets go, and what is in their way
package main

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"runtime/debug"
	"syscall"

	"github.com/urfave/cli/v2"
)

// Exit statuses.
const (
	statusDone  = 0
	statusFault = 1 // a mistake in the file, or a file that cannot be read or written
	statusUsage = 2 // a command line that is not understood
	// statusMishap is a mistake in the program itself.
	statusMishap = 3
)

// A run throws away some 30 MB, and is over in a tenth of a second: to gather that up would take
// a tenth of its work. So it may be eight times as much as what is in use (gcPercent), as long as
// the two together take no more than memoryLimit, in bytes.
const (
	gcPercent   = 800
	memoryLimit = 300 << 20
)

func main() {
	debug.SetGCPercent(gcPercent)
	debug.SetMemoryLimit(memoryLimit)
	signal.Ignore(syscall.SIGQUIT) // Ctrl-\ would print a trace
	os.Exit(run(os.Args, os.Stdout, os.Stderr))
}

// run carries out one command line and returns the exit status.
func run(args []string, stdout, stderr io.Writer) int {
	return orMishap(stderr, args, func() int { return carryOut(args, stdout, stderr) })
}

func carryOut(args []string, stdout, stderr io.Writer) int {
	app := newApp(stdout, stderr)
	err := unheard(app.Writer, helpMisused(app.Run(inOrder(args, app))))
	if err == nil {
		return statusDone
	}
	fmt.Fprintln(stderr, err)
	if errors.As(err, new(usageFault)) {
		return statusUsage
	}
	return statusFault
}

func newApp(stdout, stderr io.Writer) *cli.App {
	at := progressOn(stderr)
	app := &cli.App{
		Name:      "tuckmark",
		Usage:     "full-size marking sheets for sewing, from a description of the pieces",
		UsageText: "tuckmark COMMAND [options] FILE.toml",
		Description: "Begin a file:      tuckmark start pinafore.toml\n" +
			"See what it makes: tuckmark look pinafore.toml\n" +
			"Make the sheets:   tuckmark sheet pinafore.toml\n" +
			"Print the numbers: tuckmark figures pinafore.toml\n" +
			"Print them at 100 %, measure the check square on the first page, and only\n" +
			"then mark cloth with them. `tuckmark sheet --help` shows what sheet takes.",
		Writer:               at.before(stdout),
		ErrWriter:            at.before(stderr),
		OnUsageError:         misused,
		ExitErrHandler:       func(*cli.Context, error) {}, // run says it
		After:                func(*cli.Context) error { at.end(); return nil },
		Action:               noCommand,
		Commands:             []*cli.Command{startCommand(), gridCommand(at), lookCommand(at), sheetCommand(at), gaugeCommand(at), scaleCommand(at), figuresCommand(at), completionCommand(), helpCommand()},
		Flags:                []cli.Flag{versionFlag(), cli.HelpFlag}, // the parser leaves help out beside a command called so
		EnableBashCompletion: true,
	}
	for _, command := range app.Commands {
		command.UsageText = cmp.Or(command.UsageText, "tuckmark "+command.Name+" [options] FILE.toml")
		command.OnUsageError = misused
		command.BashComplete = completing(command)
		command.HideHelpCommand = true // so that a file may be called help
	}
	withWordsHint(app)
	return app
}
