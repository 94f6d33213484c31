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

// A run throws away some 20 MB, and is over in a tenth of a second: to gather that up would take
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
	if before, begun, after, asks := cutAtCursor(args); asks {
		for _, line := range finished(app, before, begun, after) {
			fmt.Fprintln(stdout, line)
		}
		return statusDone
	}
	words := inOrder(args, app)
	err := checkValues(words, app)
	if err == nil {
		err = unheard(app.Writer, helpMisused(app.Run(words)))
	}
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
			"See the numbers:   tuckmark figures pinafore.toml\n" +
			"Print the sheets at 100 %, measure the check square on the first page, and\n" +
			"only then mark cloth with them. `tuckmark sheet --help` shows what sheet takes.",
		Writer:         at.before(stdout),
		ErrWriter:      at.before(stderr),
		OnUsageError:   misused,
		ExitErrHandler: func(*cli.Context, error) {}, // run says it
		Before:         versionAlone,
		After:          func(*cli.Context) error { at.end(); return nil },
		Action:         noCommand,
		Commands:       []*cli.Command{startCommand(), gridCommand(at), lookCommand(at), sheetCommand(at), gaugeCommand(at), scaleCommand(at), figuresCommand(at), completionCommand(), helpCommand()},
		Flags:          []cli.Flag{versionFlag(), cli.HelpFlag}, // the parser leaves help out beside a command called so
	}
	for _, command := range app.Commands {
		command.UsageText = cmp.Or(command.UsageText, "tuckmark "+command.Name+" [options] FILE.toml")
		command.OnUsageError = misused
		command.HideHelpCommand = true // so that a file may be called help
	}
	withWordsHint(app)
	return app
}
