package pdfout

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a verdict is told in words: at what scale the sheets came out, what that
// does to the line that is most off, what may have done it, and what to do. They are called true
// only where no reading could be wrong enough for a line to be off. What is to be typed is said
// by whoever knows the commands.

// Answer is what is known of how sheets came out, for whoever measured them.
type Answer struct {
	Verdict Verdict
	Reading paper.Reading // that it was judged by
	On      paper.Paper   // of the sheets
	Unit    length.Unit   // that lengths are told in
	Within  float64       // what a line may be off, in mm
	Lines   CommandLines
}

// CommandLines are what an answer has somebody type.
type CommandLines struct {
	FirstPage string // prints the first page once more
	Corrected string // prints sheets that make up for what was measured
	Square    string // what to do so that the check square is judged by, "leave ... out"
	// Longer asks again, with what longer lines measure that are to be so long. Across and down
	// are Unmeasured where they are still to be measured, and "" where they were.
	Longer func(of, across, down string) string
}

// Unmeasured stands for what is still to be measured.
const Unmeasured = "..."

// CheckOf refuses to judge by a line that these sheets do not have, if it was no check square
// that was measured: what it measures may be true to what was written, and no sheet be true. It
// may be as far off as a length that was read off a ruler or off the sheets, by a step. The error
// is a *fault.Fault without a place.
func (a Answer) CheckOf() error {
	within := a.Unit.Ruler() + length.Rounding
	var none []string
	if one := a.Reading.Across; !a.Verdict.straights.across.haveNear(one.Of, within) {
		none = append(none, one.Whole+" across")
	}
	if one := a.Reading.Down; !a.Verdict.straights.down.haveNear(one.Of, within) {
		none = append(none, one.Whole+" down")
	}
	if len(none) == 0 {
		return nil
	}
	hint := a.Lines.Square + " where the check square was measured"
	for _, one := range []struct {
		way  string
		line Measurable
	}{{"down", a.Verdict.Longer.Down}, {"across", a.Verdict.Longer.Across}} {
		if one.line.Straight > 0 {
			hint = fmt.Sprintf("the longest line %s is %s; %s", one.way, a.where(one.line), hint)
		}
	}
	return &fault.Fault{Cause: "no line of these sheets is " + strings.Join(none, ", nor ") + ", as they are printed", Hint: hint}
}

// Text is the answer, in lines.
func (a Answer) Text() string {
	across, down := a.Reading.Across, a.Reading.Down
	lines := []string{fmt.Sprintf("printed at %s (%s of %s across, %s of %s down)", a.Verdict.Printed, across.Text, across.Whole, down.Text, down.Whole)}
	if a.Verdict.Off != 0 {
		lines = append(lines, a.worst())
	}
	switch {
	case a.Verdict.IsTrue(a.Within):
		lines = append(lines, a.whenTrue())
	case a.Verdict.SeemsTrue(a.Within):
		lines = append(lines, a.whenOpen()...)
	default:
		lines = append(lines, a.whenOff()...)
	}
	return strings.Join(lines, "\n") + "\n"
}

// named names a line, its piece and its length.
func (a Answer) named(l Line) string {
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
func (a Answer) worst() string {
	off, l := a.Verdict.Off, a.Verdict.Worst
	line := fmt.Sprintf("%s, %s", a.named(l), a.Unit.OnRuler(l.Length))
	if off == 0 {
		return "no line seems to be off, not even the longest of these sheets, " + line
	}
	which := "over the longest line of these sheets"
	if s := a.Verdict.Printed; s.Across != s.Down {
		which = "over the line that takes it worst"
	}
	how := "long"
	if off < 0 {
		how = "short"
	}
	return fmt.Sprintf("%s, %s, that is %s too %s", which, line, a.Unit.OnRuler(math.Abs(off)), how)
}

// open says what the reading leaves open.
func (a Answer) open() string {
	l := a.Verdict.Unsure
	which := "that line"
	if l != a.Verdict.Worst {
		which = fmt.Sprintf("%s, %s", a.named(l), a.Unit.OnRuler(l.Length))
	}
	return fmt.Sprintf("a reading to %s may miss %s of %s", a.Reading.ReadTo(), a.Unit.OnRuler(a.Verdict.Open), which)
}

// whenTrue says how to go on with sheets that are known to be true.
func (a Answer) whenTrue() string {
	line := fmt.Sprintf("that is no more than %s, whatever a reading to %s may miss", a.Unit.AsWritten(a.Within), a.Reading.ReadTo())
	if a.Verdict.Off == 0 {
		line = fmt.Sprintf("%s, and a reading to %s misses no more than %s of any line", a.worst(), a.Reading.ReadTo(), a.Unit.AsWritten(a.Within))
	}
	line += ": the sheets are true"
	if !a.On.WhollyOnOne() {
		line += "; print the other pages with the same settings"
	}
	return line
}

// whenOpen says how to make sure of sheets that seem to be true.
func (a Answer) whenOpen() []string {
	line := "that is no more than " + a.Unit.AsWritten(a.Within)
	if a.Verdict.Off == 0 {
		line = a.worst()
	}
	lines := []string{fmt.Sprintf("%s, but %s: it does not show whether the sheets are true", line, a.open())}
	lines = append(lines, a.longer()...)
	for _, m := range []Measurable{a.Verdict.Longer.Across, a.Verdict.Longer.Down} {
		if m.Line == a.Verdict.Unsure && !m.IsPart() {
			return lines // the longest line is measured as it is
		}
	}
	if a.On.WhollyOnOne() {
		return lines
	}
	return append(lines, "when the pages are joined, lay a long ruler along the longest line too, before you mark cloth")
}

// longer says which lines show more than what was measured; what could be done without
// them where there are none. What was measured the other way need not be measured again.
func (a Answer) longer() []string {
	lines := []string{"a longer line shows more; print it with the same settings, and measure it from the middle of its one end to the middle of the other:"}
	wholes, texts := [2]string{a.Reading.Across.Whole, a.Reading.Down.Whole}, [2]string{}
	for i, one := range []struct {
		way      string
		line     Measurable
		measured paper.Measured
	}{
		{"across", a.Verdict.Longer.Across, a.Reading.Across},
		{"down", a.Verdict.Longer.Down, a.Reading.Down},
	} {
		if one.line.Straight > worthwhile*one.measured.Of {
			wholes[i], texts[i] = a.plain(one.line.Straight), Unmeasured
			lines = append(lines, "  "+one.way+": "+a.where(one.line))
		}
	}
	switch {
	case len(lines) > 1:
		return append(lines, "  "+a.Lines.Longer(wholes[0]+" x "+wholes[1], texts[0], texts[1]))
	case a.Unit == length.Inch:
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
func (a Answer) plain(mm float64) string {
	step := a.Unit.Ruler() / 2
	if near := math.Round(mm/step) * step; math.Abs(near-mm) < nearPlain {
		mm = near
	}
	return a.Unit.AsWritten(mm)
}

// where says where to find what is measured of a line.
func (a Answer) where(m Measurable) string {
	name, long := a.named(m.Line), a.plain(m.Straight)
	if m.IsPart() {
		name = "the straight part of " + name
	}
	return fmt.Sprintf("%s, %s, %s", name, long, m.Where())
}

// whenOff says how to come to sheets that are true.
func (a Answer) whenOff() []string {
	lines := []string{fmt.Sprintf("that is more than %s, beyond which a line cannot be ruled where it belongs: mark no cloth with these sheets", a.Unit.AsWritten(a.Within))}
	lines = append(lines, a.causes()...)
	again := []string{
		"     print the first page once more, and measure its square again:",
		"     " + a.Lines.FirstPage,
	}
	if a.On.WhollyOnOne() {
		again = []string{"     and measure the square of the next print before it is used"}
	}
	lines = append(lines,
		"what to do:",
		"  1. where you print, choose 100 % or actual size, turn off “fit to page” and every other scaling,")
	lines = append(append(lines, again...),
		"  2. should it measure the same again, print sheets that make up for it, on the same paper and with the same settings;",
		"     on them, as they come out of the printer, the square measures what it should:",
		"     "+a.Lines.Corrected,
		"     "+a.open())
	if a.Verdict.Open <= a.Within {
		return lines
	}
	for _, line := range a.longer() {
		lines = append(lines, "     "+line)
	}
	return lines
}

// causes says what may have made the sheets come out so.
func (a Answer) causes() []string {
	found := a.On.Recognised(a.Verdict.Printed)
	var lines []string
	for _, f := range found {
		on := "on " + f.On
		if f.Inside {
			on += ", inside the 1/4 in that many printers leave free at each edge"
		}
		lines = append(lines, fmt.Sprintf("“fit to page” may have done this: of sheets for %s, printed %s, it makes %s both ways", a.On.ShortTitle(), on, paper.Percent(f.Scale)))
	}
	if len(found) > 0 {
		return lines
	}
	other, differs := a.On.OtherFit()
	if s := a.Verdict.Printed; !differs || s.Across != s.Down || s.Across > 1 {
		return nil // it could not have been that
	}
	return []string{fmt.Sprintf("for comparison: “fit to page” on %s would print these sheets at %s both ways, and the square would measure %s",
		other.On, paper.Percent(other.Scale), a.Unit.OnRuler(paper.FrameFor(a.Unit).Side*other.Scale))}
}
