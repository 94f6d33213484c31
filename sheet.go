package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/figures"
	"tuckmark/marking/garment"
	"tuckmark/marking/gauge"
	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/pdfout/arrange"
)

// Rules of this file: what the sheets of a file are made of, and what is said when they
// are made. Nothing is said before they are.

func sheetCommand(at *progress) *cli.Command {
	return &cli.Command{
		Name:  "sheet",
		Usage: "make the full-size sheets of every piece, as a PDF or an SVG",
		Flags: append([]cli.Flag{
			&cli.StringFlag{
				Name: "output", Aliases: []string{"o"},
				Usage: "write the sheets to `OUT.pdf`, or to OUT.svg, one page for a drawing program, a plotter or a cutter, or to - for another program (without it: beside FILE, under its name and those of the pieces that --pieces names)",
			},
			onOrOff("first-page-only", "make only the first page, to prove the scale with before the others are printed"),
		}, slices.Concat(pageFlags(), paperFlags(), []cli.Flag{viewFlag()}, pieceFlags(), squareFlags())...),
		Action: func(c *cli.Context) error {
			in, err := oneFile(c, "tuckmark sheet pinafore.toml -o pinafore.pdf")
			if err != nil {
				return err
			}
			p, err := readPrinting(c, at)
			if err != nil {
				return err
			}
			which := allPages
			if c.Bool("first-page-only") {
				which = firstPage
			}
			return makeSheets(listener(c), in, c.String("output"), p, which)
		},
	}
}

// pages are those of the sheets that are made.
type pages int

const (
	allPages pages = iota
	firstPage
)

// firstPageFile is what the first page alone is called behind the name of the file.
const firstPageFile = "-first-page"

// makeSheets takes the file in to the PDF out, or one with the name of the file where that is
// "", and says what it made.
func makeSheets(say io.Writer, in, out string, p printing, which pages) error {
	behind := ""
	if which == firstPage {
		behind = firstPageFile
	}
	file, to, err := p.openFor(in, out, behind)
	if err != nil {
		return err
	}
	pattern := file.pattern
	set := p.set(file)
	m, err := p.draw(in, to, set, file.paper, which)
	if err != nil {
		return err
	}
	text := p.remarked(in, pattern) + untemplated(set.Pieces) + m.text()
	if which == allPages {
		for _, line := range sheet.SampleLines(pattern) {
			text += fmt.Sprintf("once the sample is sewn, write %s\n", line)
		}
	}
	sayDone(say, text)
	return nil
}

// remarked is what is to be known of a pattern whose sheets are made.
func (p printing) remarked(in string, pattern *garment.Pattern) string {
	var lines strings.Builder
	if p.view == "" && len(pattern.Views) > 0 {
		others, makes := "another view", "that one"
		if len(pattern.Views) > 1 {
			others, makes = "other views", "the first of them"
		}
		fmt.Fprintf(&lines, "this is the file as it stands; it has %s, %s: `%s` makes %s\n",
			others, strings.Join(pattern.Views, ", "), p.again(in, "--view "+inShell(pattern.Views[0])), makes)
	}
	for _, remark := range pattern.Remarks {
		fmt.Fprintf(&lines, "note: %s\n", remark)
	}
	for _, piece := range pattern.Pieces {
		if piece.Block != nil && piece.Block.Measured == nil { // else it is tucked already
			fmt.Fprintf(&lines, "%s: %s\n", piece.Name, piece.Block.Tear(pattern.Unit))
		}
	}
	if p.gauges && len(gauge.Of(pattern)) == 0 {
		fmt.Fprintln(&lines, "--gauges adds none: "+noGauges)
	}
	return lines.String()
}

// untemplated says which pieces have their plain sheets where templates are asked for.
func untemplated(markings []mark.Marking) string {
	var lines strings.Builder
	for _, m := range markings {
		if sheet.InsteadOfTemplate(m) {
			fmt.Fprintf(&lines, "%s: nothing is drawn along or through a template of it; it is cut by its plain sheet\n", m.Name)
		}
	}
	return lines.String()
}

// newSet is what is drawn of the pieces of a pattern.
func newSet(p *garment.Pattern) arrange.Set {
	return arrange.Set{Title: p.Title, Size: p.Size, Unit: p.Unit, Pieces: sheet.Of(p)}
}

// withFigures is a set with the figures of its pattern.
func withFigures(set arrange.Set, p *garment.Pattern) arrange.Set {
	report := figures.Tables(p, figures.OwnUnit)
	set.Report = &report
	return set
}
