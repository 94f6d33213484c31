package main

import (
	"cmp"
	"fmt"
	"io"
	"slices"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/grid"
	"tuckmark/marking/length"
	"tuckmark/marking/source"
	"tuckmark/pdfout/arrange"
)

// Rules of this file: a grid is of no file. Its PDF lies in the folder one is in, where no other
// is named.

const gridName = "grid"

// gridFile is what the grid is called where it is given no name.
const gridFile = "grid.pdf"

func gridCommand(at *progress) *cli.Command {
	return &cli.Command{
		Name:      gridName,
		Usage:     "make ruled sheets, off which the points of a paper pattern are read, as a PDF",
		UsageText: "tuckmark grid [options]",
		Flags: append([]cli.Flag{
			&cli.StringFlag{
				Name: "output", Aliases: []string{"o"},
				Usage: "write the sheets to `OUT.pdf`, or to - for another program (without it: " + gridFile + " in the folder you are in)",
			},
			&cli.StringFlag{Name: "unit", Usage: "rule them in `UNIT`: in, cm or mm (without it: in)"},
			&cli.StringFlag{Name: "wide", Usage: "let them reach `LENGTH` across (without it: 14 in, or 35 cm)"},
			&cli.StringFlag{Name: "high", Usage: "and `LENGTH` up (without it: 24 in, or 60 cm)"},
		}, slices.Concat(paperFlags(), squareFlags())...),
		Action: func(c *cli.Context) error {
			if word := c.Args().First(); c.Args().Len() > 0 {
				return misuse(fmt.Sprintf("grid is of no file, and does not know what %q is for", word),
					"write it like `tuckmark grid`; a name for the PDF is given with -o")
			}
			p, err := readPrinting(c, at)
			if err != nil {
				return err
			}
			return makeGrid(listener(c), c, p)
		},
	}
}

// makeGrid writes the PDF of a grid, and says what it made.
func makeGrid(say io.Writer, c *cli.Context, p printing) error {
	unit, err := source.ReadUnit(cmp.Or(c.String("unit"), length.Inch.String()))
	if err != nil {
		return optionFault("unit", err)
	}
	size := grid.Usual(unit)
	for _, option := range []struct {
		name  string
		reach *float64
	}{{"wide", &size.Wide}, {"high", &size.High}} {
		text := given(c, option.name)
		if text == nil {
			continue
		}
		mm, err := length.Parse(*text, unit)
		if err == nil {
			*option.reach, err = grid.Reach(mm, unit)
		}
		if err != nil {
			return optionFault(option.name, err)
		}
	}
	on, err := p.paperIn(unit)
	if err != nil {
		return err
	}
	out, err := p.outputTo(cmp.Or(c.String("output"), gridFile))
	if err != nil {
		return err
	}
	set := gridSet(size, unit)
	set.Scale = gridAgain(c, p)
	m, err := p.draw(program, out, set, on, allPages)
	if err != nil {
		return err
	}
	sayDone(say, m.text())
	return nil
}

// gridAgain is the command that makes the same grid.
func gridAgain(c *cli.Context, p printing) string {
	var words []string
	for _, name := range []string{"unit", "wide", "high"} {
		if c.IsSet(name) {
			words = append(words, "--"+name+" "+inShell(c.String(name)))
		}
	}
	return p.onPage("tuckmark grid", words...)
}

// gridSet is what is drawn of a grid.
func gridSet(size grid.Size, unit length.Unit) arrange.Set {
	return arrange.Set{
		Title: "Grid", Unit: unit, Pieces: grid.Of(size, unit), Work: grid.Work(), What: "the grid", FormsFor: "to be read and written on",
		Called: grid.Called(unit),
		Kind:   "Full-size ruled sheets, off which the points of a paper pattern are read",
	}
}
