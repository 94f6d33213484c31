package main

import (
	"fmt"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/paper"
)

// Rules of this file: what somebody measured on a printed page is given by three options,
// for every command alike. Without --of it is the check square that was measured.

// squareFlags are the options that say what the check square measures.
func squareFlags() []cli.Flag {
	return []cli.Flag{
		&cli.StringFlag{Name: "across", Usage: "the check square measures `LENGTH` across: in inches of the 4 in square, in mm of the 100 mm one"},
		&cli.StringFlag{Name: "down", Usage: "and `LENGTH` down"},
		&cli.StringFlag{Name: "of", Usage: "what was measured is no check square, but lines that are to be `LENGTH` long, or one across and one down, such as \"12 1/2 x 9\""},
	}
}

// checkMeasured refuses one of these options without what belongs to it.
func checkMeasured(c *cli.Context) error {
	for _, pair := range [][2]string{{"across", "down"}, {"down", "across"}} {
		if c.IsSet(pair[0]) && !c.IsSet(pair[1]) {
			return misuse(fmt.Sprintf("--%s was given without --%s", pair[0], pair[1]),
				"measure the check square, or a line, both ways: a printer may be off one way only")
		}
	}
	if c.IsSet("of") && !c.IsSet("across") {
		return misuse("--of was given without --across and --down", "--of says how long the lines are to be that were measured: say what they measure, too")
	}
	return nil
}

// measured is what was measured, across the page and down.
func (p printing) measured(unit length.Unit) (paper.Reading, error) {
	wholes, err := p.wholes(unit)
	if err != nil {
		return paper.Reading{}, optionFault("of", err)
	}
	measure := func(text string, whole float64) (paper.Measured, error) {
		if p.of == nil {
			return paper.Measure(text, unit)
		}
		return paper.MeasureOf(text, whole, unit)
	}
	var r paper.Reading
	if r.Across, err = measure(*p.across, wholes[0]); err != nil {
		return r, optionFault("across", err)
	}
	if r.Down, err = measure(*p.down, wholes[1]); err != nil {
		return r, optionFault("down", err)
	}
	return r.ByOneRuler(), nil
}

// wholes are the lengths, in mm, that the lines are to have that were measured across and
// down: one for both, or two with an x between them, as the size of a paper is written. A
// unit behind the second is that of the first as well, where it has none.
func (p printing) wholes(unit length.Unit) (wholes [2]float64, err error) {
	if p.of == nil {
		return wholes, nil
	}
	across, down, two := strings.Cut(strings.NewReplacer("×", "x", "X", "x").Replace(*p.of), "x")
	if !two {
		down = across
	}
	if own, ok := length.WrittenUnit(down); ok {
		unit = own
	}
	for i, text := range [...]string{across, down} {
		if wholes[i], err = length.Parse(text, unit); err != nil {
			return wholes, err
		}
		if wholes[i] <= 0 {
			return wholes, &fault.Fault{
				Cause: fmt.Sprintf("%s is nothing that could be measured", wording.Quoted(strings.TrimSpace(text))),
				Hint:  `give the length that the line is to have, or those of one across and one down: --of "12 1/2 x 9"`,
			}
		}
	}
	return wholes, nil
}

// correction is what stands on the command line for a printer that is off; nothing
// where that was not asked for.
func (p printing) correction() []string {
	if p.across == nil {
		return nil
	}
	words := []string{"--across " + inShell(*p.across), "--down " + inShell(*p.down)}
	if p.of != nil {
		words = append(words, "--of "+inShell(*p.of))
	}
	return words
}
