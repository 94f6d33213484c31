package main

import (
	"cmp"
	"io"
	"slices"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
	"tuckmark/pdfout"
)

// Rules of this file: what the check square measures, or a longer line, is answered in words.
// Sheets that are off are an answer, not a failure.

func scaleCommand(at *progress) *cli.Command {
	return &cli.Command{
		Name:  "scale",
		Usage: "say what the printer did to the sheets, from the check square as it was measured",
		Flags: append(slices.Concat(paperFlags(), []cli.Flag{viewFlag()}, pieceFlags(), pageFlags(), squareFlags()),
			&cli.StringFlag{Name: "within", Usage: "count the sheets as true while no line is off by more than `LENGTH` (without it: 1/32 in, or 0.5 mm: closer than that no line is ruled)"}),
		Action: func(c *cli.Context) error {
			in, err := oneFile(c, `tuckmark scale --across "3 15/16" --down 4 pinafore.toml`)
			if err != nil {
				return err
			}
			if !c.IsSet("across") && !c.IsSet("down") {
				return misuse("scale needs what the check square measures",
					"measure it on the printed first page, from outside edge to outside edge, and write it like `"+`tuckmark scale --across "3 15/16" --down 4 `+fileInShell(in)+"`")
			}
			p, err := readPrinting(c, at)
			if err != nil {
				return err
			}
			return sayScale(c.App.Writer, in, p, c.String("within"))
		},
	}
}

// sayScale answers for the sheets of a file.
func sayScale(say io.Writer, in string, p printing, within string) error {
	file, err := p.open(in)
	if err != nil {
		return err
	}
	pattern := file.pattern
	unit := pattern.Unit
	measured, err := p.measured(unit)
	if err != nil {
		return err
	}
	limit := pdfout.UsualWithin(unit)
	if within != "" {
		if limit, err = length.Parse(within, unit); err == nil && limit < 0 {
			err = &fault.Fault{
				Cause: "a line cannot be off by less than nothing",
				Hint:  "leave it out for 1/32 in, or 0.5 mm",
			}
		}
		if err != nil {
			return optionFault("within", err)
		}
	}
	set := p.set(file)
	p.progress.at("placing the pieces on pages")
	verdict, err := pdfout.Judge(set, file.paper, measured.Scale(), measured.Doubt())
	if err != nil {
		return fault.At(fault.Place{File: called(in)}, err)
	}
	answer := pdfout.Answer{Verdict: verdict, Reading: measured, On: file.paper, Unit: unit, Within: limit, Lines: p.linesOfScale(in)}
	if p.of != nil {
		if err := answer.CheckOf(); err != nil {
			return optionFault("of", err)
		}
	}
	return writeOut(say, "the answer", []byte(wording.FileName(called(in))+": "+answer.Text()))
}

// linesOfScale are what the answer for a file has somebody type.
func (p printing) linesOfScale(in string) pdfout.CommandLines {
	return pdfout.CommandLines{
		FirstPage: p.again(in, "--first-page-only"),
		Corrected: p.again(in, p.correction()...),
		Square:    "leave --of out",
		Longer: func(of, across, down string) string {
			return p.command("tuckmark scale", in, []string{
				"--of " + inShell(of), "--across " + inShell(cmp.Or(across, *p.across)), "--down " + inShell(cmp.Or(down, *p.down)),
			})
		},
	}
}
