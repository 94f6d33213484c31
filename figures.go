package main

import (
	"io"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/figures"
	"tuckmark/marking/terminal"
)

// Rules of this file: the same figures come as text to be read or as data for a script,
// and never as both.

func figuresCommand(at *progress) *cli.Command {
	return &cli.Command{
		Name:  "figures",
		Usage: "print the numbers for the cutting table: what to tear, tucks, edges, seams, trims, cloth",
		Flags: []cli.Flag{
			onOrOff("all-units", "give every length in inches and in millimetres"),
			onOrOff("json", "give the figures as data for a script"),
			timesFlag(),
			viewFlag(),
			onOrOff("views", "put the views of the file side by side, with what differs between them"),
		},
		Action: func(c *cli.Context) error {
			in, err := oneFile(c, "tuckmark figures pinafore.toml")
			if err != nil {
				return err
			}
			form, err := readForm(c)
			if err != nil {
				return err
			}
			times, err := readTimes(c)
			if err != nil {
				return err
			}
			at.at(reading(in))
			if c.Bool("views") {
				return printViews(c.App.Writer, in, form, times)
			}
			return printFigures(c.App.Writer, in, c.String("view"), form, times)
		},
	}
}

// form is how figures are given.
type form int

const (
	inItsUnit  form = iota // text, with lengths in the unit of the file
	inAllUnits             // text, with lengths in inches and millimetres
	asData
)

func readForm(c *cli.Context) (form, error) {
	switch data, all := c.Bool("json"), c.Bool("all-units"); {
	case c.Bool("views") && data:
		return 0, misuse("json and views cannot be had together", "the data are of one view: leave --views out, and name it with --view")
	case c.Bool("views") && c.IsSet("view"):
		return 0, misuse("view and views cannot be had together", "--view is one of them, --views are all of them side by side")
	case data && all:
		return 0, misuse("json and all-units cannot be had together", "the data have every length in mm and as it is printed; leave --all-units out")
	case data:
		return asData, nil
	case all:
		return inAllUnits, nil
	}
	return inItsUnit, nil
}

// printFigures takes the file in to its figures, for so many garments.
func printFigures(say io.Writer, in, view string, f form, times int) error {
	pattern, err := readPattern(in, view)
	if err != nil {
		return err
	}
	if pattern, err = forGarments(pattern, times); err != nil {
		return err
	}
	if f == asData {
		return writeOut(say, "the figures", figures.JSON(pattern))
	}
	return writeOut(say, "the figures", []byte(terminal.Text(figures.Report(pattern, f.units()), terminal.Width)))
}

// units are those in which figures are printed as text.
func (f form) units() figures.Units {
	if f == inAllUnits {
		return figures.AllUnits
	}
	return figures.OwnUnit
}

// printViews takes the file in to what differs between its views, for so many garments.
func printViews(say io.Writer, in string, f form, times int) error {
	patterns, err := readViews(in)
	if err != nil {
		return err
	}
	for i := range patterns {
		if patterns[i], err = forGarments(patterns[i], times); err != nil {
			return err
		}
	}
	return writeOut(say, "the figures", []byte(terminal.Text(figures.Views(patterns, f.units()), terminal.Width)))
}
