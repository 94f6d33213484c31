package main

import (
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/pdfout"
	"tuckmark/pdfout/paper"
)

// Rules of this file: what the check square measures, or a longer line, is answered in
// words: at what scale the sheets came out, what that does to the longest line, what may
// have done it, and what to do. Sheets that are off are an answer, not a failure. They are
// called true only where no reading could be wrong enough for a line to be off.

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
	a := answer{printing: p, file: in, unit: unit, limit: limit, reading: measured, verdict: verdict}
	if err := a.checkOf(); err != nil {
		return optionFault("of", err)
	}
	return writeOut(say, "the answer", []byte(a.text()))
}

// checkOf refuses to judge by a line that these sheets do not have: what it measures may be
// true to what was written, and no sheet be true. It may be as far off as a length that was
// read off a ruler or off the sheets, by a step.
func (a answer) checkOf() error {
	if a.of == nil {
		return nil
	}
	within := a.unit.Ruler() + length.Rounding
	var none []string
	if one := a.reading.Across; !a.verdict.Straights.Across(one.Of, within) {
		none = append(none, one.Whole+" across")
	}
	if one := a.reading.Down; !a.verdict.Straights.Down(one.Of, within) {
		none = append(none, one.Whole+" down")
	}
	if len(none) == 0 {
		return nil
	}
	hint := "leave --of out where the check square was measured"
	for _, one := range []struct {
		way  string
		line pdfout.Measurable
	}{{"down", a.verdict.Longer.Down}, {"across", a.verdict.Longer.Across}} {
		if one.line.Straight > 0 {
			hint = fmt.Sprintf("the longest line %s is %s; %s", one.way, a.where(one.line), hint)
		}
	}
	return &fault.Fault{Cause: "no line of these sheets is " + strings.Join(none, ", nor ") + ", as they are printed", Hint: hint}
}

// answer is what is known of how sheets came out.
type answer struct {
	printing
	file    string
	unit    length.Unit
	limit   float64 // what a line may be off, in mm
	reading paper.Reading
	verdict pdfout.Verdict
}

// text is the answer.
func (a answer) text() string {
	lines := []string{fmt.Sprintf("%s: printed at %s (%s of %s across, %s of %s down)", fault.FileName(called(a.file)), a.verdict.Printed,
		a.reading.Across.Text, a.reading.Across.Whole, a.reading.Down.Text, a.reading.Down.Whole)}
	if a.verdict.Off != 0 {
		lines = append(lines, a.worst())
	}
	switch {
	case a.verdict.IsTrue(a.limit):
		lines = append(lines, a.whenTrue())
	case a.verdict.SeemsTrue(a.limit):
		lines = append(lines, a.whenOpen()...)
	default:
		lines = append(lines, a.whenOff()...)
	}
	return strings.Join(lines, "\n") + "\n"
}

// named names a line, its piece and its length.
func (a answer) named(l pdfout.Line) string {
	if l.Piece == "" {
		return l.Name
	}
	name := l.Role.String()
	if own := strings.TrimSuffix(l.Name, ": "+name); own != "" {
		name = fmt.Sprintf("%q, a %s", own, l.Role)
	}
	return name + " of " + l.Piece
}

// worst says what becomes of the line that comes out most off; where none is, the rest of the
// answer goes on from there.
func (a answer) worst() string {
	off, l := a.verdict.Off, a.verdict.Worst
	line := fmt.Sprintf("%s, %s", a.named(l), a.unit.OnRuler(l.Length))
	if off == 0 {
		return "no line seems to be off, not even the longest of these sheets, " + line
	}
	which := "over the longest line of these sheets"
	if s := a.verdict.Printed; s.Across != s.Down {
		which = "over the line that takes it worst"
	}
	how := "long"
	if off < 0 {
		how = "short"
	}
	return fmt.Sprintf("%s, %s, that is %s too %s", which, line, a.unit.OnRuler(math.Abs(off)), how)
}

// open says what the reading leaves open.
func (a answer) open() string {
	l := a.verdict.Unsure
	which := "that line"
	if l != a.verdict.Worst {
		which = fmt.Sprintf("%s, %s", a.named(l), a.unit.OnRuler(l.Length))
	}
	return fmt.Sprintf("a reading to %s may miss %s of %s", a.reading.ReadTo(), a.unit.OnRuler(a.verdict.Open), which)
}

// whenTrue says how to go on with sheets that are known to be true.
func (a answer) whenTrue() string {
	line := fmt.Sprintf("that is no more than %s, whatever a reading to %s may miss", a.unit.AsWritten(a.limit), a.reading.ReadTo())
	if a.verdict.Off == 0 {
		line = fmt.Sprintf("%s, and a reading to %s misses no more than %s of any line", a.worst(), a.reading.ReadTo(), a.unit.AsWritten(a.limit))
	}
	line += ": the sheets are true"
	if !a.paper.WhollyOnOne() {
		line += "; print the other pages with the same settings"
	}
	return line
}

// whenOpen says how to make sure of sheets that seem to be true.
func (a answer) whenOpen() []string {
	line := "that is no more than " + a.unit.AsWritten(a.limit)
	if a.verdict.Off == 0 {
		line = a.worst()
	}
	lines := []string{fmt.Sprintf("%s, but %s: it does not show whether the sheets are true", line, a.open())}
	lines = append(lines, a.longer()...)
	if a.paper.WhollyOnOne() {
		return lines
	}
	return append(lines, "when the pages are joined, lay a long ruler along the longest line too, before you mark cloth")
}

// longer says which lines show more than what was measured; what could be done without
// them where there are none. What was measured the other way need not be measured again.
func (a answer) longer() []string {
	lines := []string{"a longer line shows more; print it with the same settings, and measure it from the middle of its one end to the middle of the other:"}
	var wholes, options []string
	for _, one := range []struct {
		way      string
		line     pdfout.Measurable
		measured paper.Measured
		text     string // as it was given
	}{
		{"across", a.verdict.Longer.Across, a.reading.Across, *a.across},
		{"down", a.verdict.Longer.Down, a.reading.Down, *a.down},
	} {
		whole, text := one.measured.Whole, inShell(one.text)
		if one.line.Straight > worthwhile*one.measured.Of {
			whole, text = a.plain(one.line.Straight), "..."
			lines = append(lines, "  "+one.way+": "+a.where(one.line))
		}
		wholes = append(wholes, whole)
		options = append(options, "--"+one.way+" "+text)
	}
	switch {
	case len(lines) > 1:
		options = append([]string{"--of " + inShell(strings.Join(wholes, " x "))}, options...)
		return append(lines, "  "+a.command("tuckmark scale", a.file, options))
	case a.unit == length.Inch:
		return []string{`read it as finely as you can, and write it so: "4 0/32" was read to 1/32 in`}
	default:
		return []string{`read it as finely as you can, and write it so: "100 0/2 mm" was read to half a mm`}
	}
}

// worthwhile is how many times as long as what was measured a line must be for somebody to
// be asked to measure once more.
const worthwhile = 1.1

// nearPlain bounds how far, in mm, a line that is to be measured may lie off a plain
// length and be given as that: a hundredth of what anybody reads.
const nearPlain = 0.01

// plain gives the length of a line that was worked out, for somebody who has to repeat it.
func (a answer) plain(mm float64) string {
	step := a.unit.Ruler() / 2
	if near := math.Round(mm/step) * step; math.Abs(near-mm) < nearPlain {
		mm = near
	}
	return a.unit.AsWritten(mm)
}

// where says where to find what is measured of a line.
func (a answer) where(m pdfout.Measurable) string {
	name, long := a.named(m.Line), a.plain(m.Straight)
	if m.IsPart() {
		name = "the straight part of " + name
	}
	return fmt.Sprintf("%s, %s, %s", name, long, m.Where())
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
	lines = append(append(lines, again...),
		"  2. should it measure the same again, print sheets that make up for it, on the same paper and with the same settings;",
		"     on them, as they come out of the printer, the square measures what it should:",
		"     "+a.again(a.file, a.correction()...),
		"     "+a.open())
	if a.verdict.Open <= a.limit {
		return lines
	}
	for _, line := range a.longer() {
		lines = append(lines, "     "+line)
	}
	return lines
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
		lines = append(lines, fmt.Sprintf("“fit to page” may have done this: of sheets for %s, printed %s, it makes %s both ways", a.paper.ShortTitle(), on, paper.Percent(f.Scale)))
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
