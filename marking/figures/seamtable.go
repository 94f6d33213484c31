package figures

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file: the table of a seam has the lengths of both sides, under it stands
// whether they match, and then how the edges beside it go over it, end by end.

// seamsTitle heads the seams.
const seamsTitle = "Seams"

// seamSection lists the seams.
func seamSection(p *garment.Pattern, w writer) mark.Section {
	s := mark.Section{Title: seamsTitle}
	for _, seam := range p.Seams {
		s.Tables = append(s.Tables, seamTable(seam, w))
	}
	if slices.ContainsFunc(p.Seams, func(s garment.Seam) bool { return len(s.Ends) > 0 }) {
		s.Lines.Say("The two sides are matched at the end named first. Where the edge beside the seam goes over it, even means without a step, and smooth without a corner; a point sticks out there, a dip falls in.")
	}
	return s
}

// seamTable is the table of a seam.
func seamTable(s garment.Seam, w writer) mark.Table {
	t := mark.Table{Title: s.Key, Heads: []string{"", "cut", "sewn"}}
	for _, side := range s.Sides {
		for _, c := range side.Courses {
			t.Add(c.Title(), w.cell(c.Cut.Times(c.Times)), w.cell(c.Whole()))
		}
		if len(side.Courses) > 1 {
			t.AddTotal("together", w.cell(side.Cut), w.cell(side.Sewn))
		}
	}
	cut := ""
	if s.Plain {
		cut = w.cell(s.CutDifference.Magnitude())
	}
	if !s.Gathered {
		t.AddTotal("difference", cut, w.cell(s.Difference.Magnitude()))
	}
	t.Lines = roundedByThemselves(s, w)
	for _, text := range s.Laps(w.length) {
		t.Lines.Say("%s", text)
	}
	t.Lines = slices.Concat(t.Lines, seamVerdict(s, w), seamEndLines(s, w))
	return t
}

// roundedByThemselves says why a difference is not that of the lengths as they are printed;
// nothing where it is.
func roundedByThemselves(s garment.Seam, w writer) mark.Lines {
	var lines mark.Lines
	a, b := s.Sides[0], s.Sides[1]
	reads := func(a, b, difference length.Amount) bool { return a.Less(b).Steps == difference.Steps }
	if !s.Gathered && (!reads(a.Sewn, b.Sewn, s.Difference) || s.Plain && !reads(a.Cut, b.Cut, s.CutDifference)) {
		lines.Say("the difference is that of the exact lengths; each of those above is to the nearest %s by itself", w.length(w.unit.Amount(w.unit.Ruler())))
	}
	return lines
}

// seamVerdict says whether the sides of a seam match.
func seamVerdict(s garment.Seam, w writer) mark.Lines {
	var lines mark.Lines
	if text := s.Mismatch(w.length); text != "" {
		lines.Warn("%s", text)
	}
	if text := s.Advice(w.length); text != "" {
		lines.Say("%s", text)
	}
	if text := s.FullnessWarning(); text != "" {
		lines.Warn("%s", text)
	}
	longer, shorter := s.Longer(s.Difference)
	switch off := math.Abs(s.Difference.MM); {
	case s.Scant(): // the warning says it
	case s.Gathered && s.Ease.MM > 0:
		lines.Say("%s", s.EaseAndGathers(w.length))
	case s.Gathered:
		lines.Say("gather %s, %s times as long, into %s", longer.Title(), length.Factor(s.Fullness()), shorter.Title())
	case s.Matches() && off > s.Within.MM+length.Rounding:
		lines.Say("ease %s in: by %s, and the ease allowed is %s", longer.Title(), w.length(s.Difference.Magnitude()), w.length(s.Ease))
	case s.Matches():
		rounding := ""
		if math.Abs(s.Difference.Steps)*s.Within.Unit.Ruler() > s.Within.MM+length.Rounding {
			rounding = ": more than that is only rounding"
		}
		lines.Say("sewn, they match within %s%s", w.length(s.Within), rounding)
	}
	if s.Gathered && s.Ease.MM == 0 {
		both := "both"
		if s.OfHalves() {
			both = "each half of both"
		}
		lines.Say("mark %s in four equal parts and match the marks: every %s on %s, every %s on %s", both,
			w.length(longer.Sewn.Quarter()), longer.Title(), w.length(shorter.Sewn.Quarter()), shorter.Title())
	}
	if text := s.AllowancesDiffer(w.length); text != "" {
		lines.Warn("%s", text)
	}
	if s.Matches() && !s.CutMatches() {
		lines.Say("the cut edges differ in length, because their corners or the allowances beside them do; match the stitch lines")
	}
	return lines
}

// seamEndLines says how the edges beside a seam go over it.
func seamEndLines(s garment.Seam, w writer) mark.Lines {
	var lines mark.Lines
	tooFar := func(a length.Amount) bool { return a.MM > s.Within.MM+length.Rounding }
	for _, end := range s.Ends {
		told := seamJogs(s, end, w)
		if end.GoesOver {
			told = append(told, bendOf(end))
		}
		say := lines.Say
		if end.GoesOver && (!end.Straight() || tooFar(end.Jog) || end.CutJogKnown && tooFar(end.CutJog)) {
			say = lines.Warn
		}
		say("at %s: %s", endName(s, end), strings.Join(told, ", "))
	}
	if text := s.NotchesTurned(w.length); text != "" {
		lines.Warn("%s", text)
	}
	switch {
	case s.Undecided():
		text, write := s.MeetUndecided()
		lines.Warn("%s", text)
		lines.Hint("%s", write)
	case s.ToldBy.Guess():
		lines.Say("which ends meet is hardly more than a guess, by the %s: look at them before you sew", s.ToldBy)
		lines.Hint("if it is the others, meet = [%q, %q] says it", s.Else[0], s.Else[1])
	}
	return lines
}

// endName names an end of a seam by the edges that come together there.
func endName(s garment.Seam, end garment.SeamEnd) string {
	if end.Alike() {
		return end.Neighbours[0]
	}
	a, b := s.Sides[0].Courses[0], s.Sides[1].Courses[0]
	atA, atB := a.EndsAt(end.Neighbours[0]), b.EndsAt(end.Neighbours[1])
	if a.Piece == b.Piece {
		return atA + " and " + atB
	}
	return fmt.Sprintf("%s of %s and %s of %s", atA, a.Piece.Name, atB, b.Piece.Name)
}

// bendOf says how the line turns that goes over a seam.
func bendOf(end garment.SeamEnd) string {
	degrees := math.Round(math.Abs(end.Bend))
	switch {
	case end.Straight():
		return "smooth"
	case end.Bend > 0:
		return fmt.Sprintf("a point of %.0f degrees", degrees)
	}
	return fmt.Sprintf("a dip of %.0f degrees", degrees)
}

// seamJogs says which side runs past the other at an end of a seam, sewn and cut.
func seamJogs(s garment.Seam, end garment.SeamEnd, w writer) []string {
	past := func(side int, of string, by length.Amount) string {
		names := seamNames(s)
		if side < 0 {
			names[0], names[1] = names[1], names[0]
		}
		return fmt.Sprintf("%s%s runs %s past %s", of, names[0], w.length(by), names[1])
	}
	var jogs []string
	sewn := end.Past != 0
	if sewn {
		jogs = append(jogs, past(end.Past, "", end.Jog))
	}
	same := sewn && end.Past == end.CutPast &&
		(end.Jog.Steps == end.CutJog.Steps || math.Abs(end.Jog.MM-end.CutJog.MM) < piece.LeastTakeUp)
	if end.CutJogKnown && end.CutPast != 0 && !same {
		jogs = append(jogs, past(end.CutPast, "the cut edge of ", end.CutJog))
	}
	if len(jogs) == 0 {
		return []string{"even"}
	}
	return jogs
}

// seamNames are what the two sides of a seam between two edges are called where they meet:
// their pieces, or their edges where both are on one piece.
func seamNames(s garment.Seam) [2]string {
	a, b := s.Sides[0].Courses[0], s.Sides[1].Courses[0]
	switch {
	case a.Piece != b.Piece:
		return [2]string{a.Piece.Name, b.Piece.Name}
	case a.Key != b.Key:
		return [2]string{a.Key, b.Key}
	}
	return [2]string{"one", "the other"}
}
