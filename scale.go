package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/pdfout"
	"tuckmark/pdfout/paper"
)

// Rules of this file: what the check square measures is answered in words: at what
// scale the sheets came out, what that does to the longest line, what may have done
// it, and what to do. Sheets that are off are an answer, not a failure.

func scaleCommand() *cli.Command {
	return &cli.Command{
		Name:  "scale",
		Usage: "say what the printer did to the sheets, from the check square as it was measured",
		Flags: append(slices.Concat(paperFlags(), pieceFlags(), squareFlags()),
			&cli.StringFlag{Name: "within", Usage: "count the sheets as true while no line is off by more than `LENGTH` (without it: 1/32 in, or 0.5 mm, half the smallest step of a ruler)"}),
		Action: func(c *cli.Context) error {
			in, err := oneFile(c, `tuckmark scale --across "3 15/16" --down 4 linden.toml`)
			if err != nil {
				return err
			}
			if !c.IsSet("across") && !c.IsSet("down") {
				return misuse("scale needs what the check square measures",
					"measure it on the printed first page, from outside edge to outside edge, and write it like `"+`tuckmark scale --across "3 15/16" --down 4 `+fileInShell(in)+"`")
			}
			p, err := readPrinting(c)
			if err != nil {
				return err
			}
			return sayScale(c.App.Writer, in, p, c.String("within"))
		},
	}
}

// sayScale answers for the sheets of a file.
func sayScale(say io.Writer, in string, p printing, within string) error {
	pattern, on, err := p.open(in)
	if err != nil {
		return err
	}
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
				Hint:  "leave it out for half the smallest step of a ruler",
			}
		}
		if err != nil {
			return optionFault("within", err)
		}
	}
	verdict, err := pdfout.Judge(p.set(pattern), on, measured.scale())
	if err != nil {
		return fault.At(fault.Place{File: in}, err)
	}
	a := answer{printing: p, file: in, unit: unit, limit: limit, square: measured, verdict: verdict}
	return writeOut(say, "the answer", []byte(a.text()))
}

// answer is what is known of how sheets came out.
type answer struct {
	printing
	file    string
	unit    length.Unit
	limit   float64 // what a line may be off, in mm
	square  square
	verdict pdfout.Verdict
}

// text is the answer.
func (a answer) text() string {
	lines := []string{fmt.Sprintf("%s: printed at %s (%s of %s across, %s of %s down)", a.file, a.verdict.Printed,
		a.square.across.Text, a.square.across.Frame(), a.square.down.Text, a.square.down.Frame())}
	lines = append(lines, a.worst())
	if a.verdict.True(a.limit) {
		lines = append(lines, a.whenTrue()...)
	} else {
		lines = append(lines, a.whenOff()...)
	}
	return strings.Join(lines, "\n") + "\n"
}

// worst says what becomes of the line that comes out most off.
func (a answer) worst() string {
	l := a.verdict.Worst
	name := l.Role.String()
	if own := strings.TrimSuffix(l.Name, ": "+name); own != "" {
		name = fmt.Sprintf("%q, a %s", own, l.Role)
	}
	which := "over the longest line of these sheets"
	if s := a.verdict.Printed; s.Across != s.Down {
		which = "over the line that takes it worst"
	}
	line := fmt.Sprintf("%s, %s of %s, %s, ", which, name, l.Piece, a.unit.OnRuler(l.Length))
	switch off := a.verdict.Off; {
	case off > 0:
		return line + "that is " + a.unit.OnRuler(off) + " too long"
	case off < 0:
		return line + "that is " + a.unit.OnRuler(-off) + " too short"
	}
	return line + "that is nothing"
}

// whenTrue says how to go on with sheets that came out true.
func (a answer) whenTrue() []string {
	return []string{
		fmt.Sprintf("that is no more than %s: the sheets are true; print the other pages with the same settings", a.unit.AsWritten(a.limit)),
		fmt.Sprintf("a ruler may miss up to %s of that line on the small length of the square: when the pages are joined, lay it along that line too", a.unit.OnRuler(a.verdict.Unseen(a.unit))),
	}
}

// whenOff says how to come to sheets that are true.
func (a answer) whenOff() []string {
	lines := []string{fmt.Sprintf("that is more than %s, beyond which a line cannot be ruled where it belongs: mark no cloth with these sheets", a.unit.AsWritten(a.limit))}
	lines = append(lines, a.causes()...)
	again := []string{
		"     print the first page once more, and measure its square again:",
		"     " + a.again(a.file, "--first-page-only"),
	}
	if a.paper.WhollyOnOne() {
		again = []string{"     and measure the square of the next print before it is used"}
	}
	lines = append(lines,
		"what to do:",
		"  1. where you print, choose 100 % or actual size, turn off “fit to page” and every other scaling,")
	return append(append(lines, again...),
		"  2. should it measure the same again, print sheets that make up for it, on the same paper and with the same settings;",
		"     on them, as they come out of the printer, the square measures what it should:",
		"     "+a.again(a.file, a.correction()...),
		fmt.Sprintf("     read the square as finely as you can: %s misread on it is %s on that line",
			a.unit.AsWritten(pdfout.UsualWithin(a.unit)), a.unit.OnRuler(a.verdict.Unseen(a.unit))),
	)
}

// causes says what may have made the sheets come out so.
func (a answer) causes() []string {
	found := a.paper.Recognised(a.verdict.Printed)
	var lines []string
	for _, f := range found {
		on := "on " + f.On
		if f.Inside {
			on += ", inside the 1/4 in that many printers leave free at each edge"
		}
		lines = append(lines, fmt.Sprintf("“fit to page” does this to sheets for %s, printed %s: %s both ways", a.paper.ShortTitle(), on, paper.Percent(f.Scale)))
	}
	if len(found) > 0 {
		return lines
	}
	other, differs := a.paper.OtherFit()
	if s := a.verdict.Printed; !differs || s.Across != s.Down || s.Across > 1 {
		return nil // it could not have been that
	}
	return []string{fmt.Sprintf("for comparison: “fit to page” on %s would print these sheets at %s both ways, and the square would measure %s",
		other.On, paper.Percent(other.Scale), a.unit.OnRuler(pdfout.Side(other.Scale, a.unit)))}
}
