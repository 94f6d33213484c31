package marking

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// Rules of this file: the table of a seam has the lengths of both sides, under it stands
// whether they match, and then how the edges beside it go over it, end by end.

// seamSection walks the seams.
func seamSection(p *Pattern, w Wording) Section {
	s := Section{Title: "Seams"}
	for _, seam := range p.Seams {
		t := Table{Title: seam.Key, Heads: []string{"", "cut", "sewn"}}
		for _, side := range seam.Sides {
			for _, c := range side.Courses {
				t.Rows = append(t.Rows, Row{Cells: []string{c.title(), w.cell(c.cut.Times(c.Times)), w.cell(c.Whole())}})
			}
			if len(side.Courses) > 1 {
				t.Rows = append(t.Rows, Row{Cells: []string{"together", w.cell(side.Cut), w.cell(side.Sewn)}, Total: true})
			}
		}
		cut := ""
		if seam.Plain {
			cut = w.cell(seam.CutDifference.magnitude())
		}
		if !seam.Gathered {
			t.Rows = append(t.Rows, Row{Cells: []string{"difference", cut, w.cell(seam.Difference.magnitude())}, Total: true})
		}
		t.Lines = append(seamVerdict(seam, w), seamEndLines(seam, w)...)
		s.Tables = append(s.Tables, t)
	}
	if slices.ContainsFunc(p.Seams, func(s Seam) bool { return len(s.Ends) > 0 }) {
		s.Lines = []Sentence{{Text: "The two sides are matched at the end named first. A jog is a step where the edge beside the seam goes over it, a point sticks out there, a dip falls in."}}
	}
	return s
}

// seamVerdict says whether the sides of a seam match.
func seamVerdict(s Seam, w Wording) []Sentence {
	var lines []Sentence
	if text := s.mismatch(w.length); text != "" {
		lines = append(lines, Sentence{Text: text, Warning: true})
	}
	longer, shorter := s.longer(s.Difference)
	switch off := math.Abs(s.Difference.MM); {
	case s.Gathered && s.Fullness() < leastFull:
		lines = append(lines, Sentence{Text: fmt.Sprintf("%s is only %s times as long as %s, scant for gathers", longer.title(), factor(s.Fullness()), shorter.title()), Warning: true})
	case s.Gathered:
		lines = append(lines, Sentence{Text: fmt.Sprintf("gather %s, %s times as long, into %s", longer.title(), factor(s.Fullness()), shorter.title())})
	case s.Matches() && off > s.Within.MM+sameLength:
		lines = append(lines, Sentence{Text: fmt.Sprintf("ease %s in: by %s, and the ease allowed is %s", longer.title(), w.length(s.Difference.magnitude()), w.length(s.Ease))})
	case s.Matches():
		text := fmt.Sprintf("sewn, they match within %s", w.length(s.Within))
		if math.Abs(s.Difference.steps)*s.Within.unit.ruler() > s.Within.MM+sameLength {
			text += ": more than that is only the rounding of each length"
		}
		lines = append(lines, Sentence{Text: text})
	}
	if s.Gathered {
		lines = append(lines, Sentence{Text: fmt.Sprintf("mark both in four equal parts and match the marks: every %s on %s, every %s on %s",
			w.length(longer.Sewn.quarter()), longer.title(), w.length(shorter.Sewn.quarter()), shorter.title())})
	}
	unit := s.Within.unit
	if text := s.allowancesDiffer(func(mm float64) string { return w.length(unit.chosen(mm)) }); text != "" {
		lines = append(lines, Sentence{Text: text, Warning: true})
	}
	if s.Matches() && !s.CutMatches() {
		lines = append(lines, Sentence{Text: "the cut edges differ in length, because their corners or the allowances beside them do; match the stitch lines"})
	}
	return lines
}

// seamEndLines says how the edges beside a seam go over it.
func seamEndLines(s Seam, w Wording) []Sentence {
	var lines []Sentence
	for _, end := range s.Ends {
		where := "at " + end.Neighbours[0]
		if !end.Alike() {
			where += " and " + end.Neighbours[1]
		}
		tooFar := func(a Amount) bool { return a.MM > s.Within.MM+sameLength }
		parts := seamJogs(s, end, w)
		switch degrees := math.Round(math.Abs(end.Bend)); {
		case end.Straight():
			parts = append(parts, "no point")
		case end.Bend > 0:
			parts = append(parts, fmt.Sprintf("a point of %.0f degrees", degrees))
		default:
			parts = append(parts, fmt.Sprintf("a dip of %.0f degrees", degrees))
		}
		lines = append(lines, Sentence{
			Text:    where + ": " + strings.Join(parts, ", "),
			Warning: end.Alike() && (!end.Straight() || tooFar(end.Jog) || end.CutJogKnown && tooFar(end.CutJog)),
		})
	}
	return lines
}

// seamJogs says which side runs past the other at an end of a seam, sewn and cut.
func seamJogs(s Seam, end SeamEnd, w Wording) []string {
	past := func(side int, of string, by Amount) string {
		names := seamNames(s)
		if side < 0 {
			names[0], names[1] = names[1], names[0]
		}
		return fmt.Sprintf("%s%s runs %s past %s", of, names[0], w.length(by), names[1])
	}
	sewn := end.Past != 0
	cut := end.CutJogKnown && end.CutPast != 0
	switch {
	case sewn && cut && end.Past == end.CutPast && (end.Jog.steps == end.CutJog.steps || math.Abs(end.Jog.MM-end.CutJog.MM) < leastFolded):
		return []string{past(end.Past, "", end.Jog)}
	case sewn && cut:
		return []string{past(end.Past, "", end.Jog), past(end.CutPast, "the cut edge of ", end.CutJog)}
	case sewn:
		return []string{past(end.Past, "", end.Jog)}
	case cut:
		return []string{past(end.CutPast, "the cut edge of ", end.CutJog)}
	}
	return []string{"no jog"}
}

// mismatch says, in words, by how much the two sides do not match, sewn and cut;
// nothing where their stitch lines do. Cut edges of matching stitch lines may differ:
// their corners are cut at other angles.
func (s Seam) mismatch(length func(Amount) string) string {
	if s.Matches() {
		return ""
	}
	tell := func(how string, difference Amount) string {
		longer, shorter := s.longer(difference)
		off, exact := difference.magnitude(), ""
		if difference.steps*difference.MM <= 0 { // as it is read, nothing, or the other way round
			off, exact = off.unit.amount(off.MM), ", by their exact lengths"
		}
		by, allowed := length(off), s.Within
		if difference.MM > 0 {
			allowed = s.Ease.Plus(s.Within)
		}
		switch {
		case off.steps == 0:
			by, exact = "less than "+length(off.unit.amount(off.unit.ruler())), ""
		case off.steps <= allowed.steps && off.steps*off.unit.ruler() < off.MM:
			by = "just over " + by
		}
		return fmt.Sprintf("%s %s %s %s longer than %s%s", how, longer.title(), longer.is(), by, shorter.title(), exact)
	}
	text := tell("sewn,", s.Difference)
	if !s.CutMatches() {
		text += "; as it is cut," + tell("", s.CutDifference)
	}
	if s.Ease.MM > 0 {
		text += fmt.Sprintf("; the ease allowed is %s, of the side that is named first", length(s.Ease))
	}
	return text
}

// mostNamed is how many edges of one side are named in a sentence.
const mostNamed = 2

// title names a side in a sentence: "the shoulder of Front", or several joined by
// "and".
func (s SeamSide) title() string {
	if n := len(s.Courses); n > mostNamed {
		return fmt.Sprintf("the %s of %s and %d more", s.Courses[0].Edge, s.Courses[0].piece.Name, n-1)
	}
	var names []string
	for _, c := range s.Courses {
		name := "the " + c.Edge + " of " + c.piece.Name
		if c.Times > 1 {
			name += fmt.Sprintf(" (%d times)", c.Times)
		}
		names = append(names, name)
	}
	return strings.Join(names, " and ")
}

// seamNames are what the two sides of a seam between two edges are called where they meet:
// their pieces, or their edges where both are on one piece.
func seamNames(s Seam) [2]string {
	a, b := s.Sides[0].Courses[0], s.Sides[1].Courses[0]
	switch {
	case a.piece != b.piece:
		return [2]string{a.piece.Name, b.piece.Name}
	case a.edge != b.edge:
		return [2]string{a.Edge, b.Edge}
	}
	return [2]string{"one", "the other"}
}

// is is the verb that goes with the title of a side.
func (s SeamSide) is() string {
	if len(s.Courses) > 1 {
		return "are together"
	}
	return "is"
}
