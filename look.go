package main

import (
	"context"
	"fmt"
	"io"
	"os/signal"
	"runtime/debug"
	"slices"
	"strconv"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/save"
	"tuckmark/pdfout/screen"
	"tuckmark/pdfout/serve"
	"tuckmark/pdfout/watch"
)

// Rules of this file: a file is shown in a browser until somebody ends that, and nothing is
// left behind. What is shown of it is in looking.go.

func lookCommand(at *progress) *cli.Command {
	return &cli.Command{
		Name:  "look",
		Usage: "show the pieces in a browser while you write their file: whenever you save it, the picture follows",
		Flags: slices.Concat([]cli.Flag{
			&cli.StringFlag{Name: "port", Usage: "be at this `PORT` of your machine (without it: any that is free)"},
			onOrOff("no-browser", "open no browser: the address is printed"),
		}, pageFlags(), paperFlags(), pieceFlags()),
		Action: func(c *cli.Context) error {
			in, err := oneFile(c, "tuckmark look pinafore.toml")
			if err != nil {
				return err
			}
			if in == standard {
				return misuse("look follows a file while it is saved, and cannot follow the standard input", "save what comes in as a file, and name that")
			}
			p, err := readPrinting(c, at)
			if err != nil {
				return err
			}
			port, err := readPort(c)
			if err != nil {
				return err
			}
			open := openBrowser
			if c.Bool("no-browser") {
				open = func(string) error { return nil }
			}
			return look(c.App.Writer, c.App.ErrWriter, &looking{printing: p, in: in}, port, open)
		},
	}
}

// readPort reads the port that is asked for; 0 is any.
func readPort(c *cli.Context) (int, error) {
	if !c.IsSet("port") {
		return 0, nil
	}
	port, err := strconv.Atoi(c.String("port"))
	if err != nil {
		return 0, optionFault("port", &fault.Fault{Cause: fmt.Sprintf("%q is no port", c.String("port")), Hint: "a port is a number, such as 8080; leave --port out for any that is free"})
	}
	return port, nil
}

// restingPercent is how much may be thrown away to what is in use, before it is gathered up, while
// a file is shown: for hours, beside other programs.
const restingPercent = 200

// look shows a file until it is told to end: by Ctrl-C, or when the terminal is closed.
func look(say, stderr io.Writer, l *looking, port int, open func(address string) error) error {
	l.progress.at(reading(l.in))
	if err := l.begin(); err != nil {
		return err
	}
	l.progress = nil // from now on nobody waits
	debug.SetGCPercent(restingPercent)
	ctx, stop := signal.NotifyContext(context.Background(), save.Endings()...)
	defer stop()
	server, err := serve.Listen(port)
	if err != nil {
		return optionFault("port", err)
	}
	site, changed := screen.NewSite(), watch.New()
	defer changed.Close()
	show := func() {
		site.Show(l.scene)
		server.Publish(l.scene.Version)
		changed.On(l.files())
	}
	show()
	go func() {
		for range changed.Changes() {
			// Where that goes wrong the page stays, and the next save may go right.
			orMishap(stderr, []string{program, "look", l.in}, func() int {
				if l.follow() {
					show()
				}
				return statusDone
			})
		}
	}()
	fmt.Fprintf(say, "%s is shown at %s\nwhenever it is saved, the picture follows; Ctrl-C ends it\n", wording.FileName(l.in), server.Address())
	go func() {
		if open(server.Address()) != nil {
			fmt.Fprintln(say, "no browser could be opened: type the address into one")
		}
	}()
	return server.Run(ctx, site)
}
