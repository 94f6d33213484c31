package main

import (
	"io"
	"slices"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/figures"
	"tuckmark/marking/garment"
	"tuckmark/marking/gauge"
	"tuckmark/marking/mark"
	"tuckmark/pdfout/arrange"
)

// Rules of this file: gauges are printed by themselves, on as few pages as they fit,
// in the same ways as the sheets.

// gaugesFile is what the gauges are called behind the name of the file.
const gaugesFile = "-gauges"

func gaugeCommand(at *progress) *cli.Command {
	return &cli.Command{
		Name:  "gauge",
		Usage: "make gauges to be cut from card: for edges that bend, allowances and tucks, as a PDF or an SVG",
		Flags: append([]cli.Flag{
			&cli.StringFlag{
				Name: "output", Aliases: []string{"o"},
				Usage: "write the gauges to `OUT.pdf`, or to OUT.svg, one page for a drawing program, a plotter or a cutter, or to - for another program (without it: beside FILE, under its name, those of the pieces that --pieces names, and " + gaugesFile + ")",
			},
			viewFlag(),
			&cli.StringFlag{Name: "pieces", Usage: "make only the gauges of these pieces, such as `front,back`"},
		}, slices.Concat(paperFlags(), squareFlags())...),
		Action: func(c *cli.Context) error {
			in, err := oneFile(c, "tuckmark gauge pinafore.toml")
			if err != nil {
				return err
			}
			p, err := readPrinting(c, at)
			if err != nil {
				return err
			}
			return makeGauges(listener(c), in, c.String("output"), p)
		},
	}
}

// noGauges says why there are none.
const noGauges = "there is nothing to make a gauge for"

// makeGauges takes the file in to the PDF of its gauges, out, or one with the name of the file
// where that is "", and says what it made.
func makeGauges(say io.Writer, in, out string, p printing) error {
	file, to, err := p.openFor(in, out, gaugesFile)
	if err != nil {
		return err
	}
	pattern := file.pattern
	if err := gauge.Check(pattern); err != nil {
		return err
	}
	gauges := gauge.Of(pattern)
	if len(gauges) == 0 {
		return fileFault(called(in), noGauges, "a gauge is made for an edge with an allowance that bends, for every allowance, and for tucks")
	}
	set := gaugeSet(pattern, gauges)
	set.Scale = p.onPage("tuckmark gauge", anyFile)
	m, err := p.draw(in, to, set, file.paper, allPages)
	if err != nil {
		return err
	}
	sayDone(say, m.text())
	return nil
}

// gaugeSet is what is drawn of the gauges of a pattern.
func gaugeSet(p *garment.Pattern, gauges []mark.Marking) arrange.Set {
	title := "Gauges"
	if p.Title != "" {
		title += ": " + p.Title
	}
	var use []string
	for _, task := range gauge.Work(gauges)[1:] { // that they are cut out stands over them
		use = append(use, task.Do+".")
	}
	return arrange.Set{
		Title: title, Size: p.Size, Unit: p.Unit, Pieces: gauges, Cautions: figures.Cautions(p, gauges), Use: use, What: "the gauges",
		Kind: "Full-size gauges: print them on card, or paste them on card, and cut them out",
	}
}
