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

// seamSection walks the seams.
func seamSection(p *garment.Pattern, w Wording) mark.Section {
	s := mark.Section{Title: "Seams"}
	for _, seam := range p.Seams {
		t := mark.Table{Title: seam.Key, Heads: []string{"", "cut", "sewn"}}
		for _, side := range seam.Sides {
			for _, c := range side.Courses {
				t.Rows = append(t.Rows, mark.Row{Cells: []string{c.Title(), w.cell(c.Cut.Times(c.Times)), w.cell(c.Whole())}})
			}
			if len(side.Courses) > 1 {
				t.Rows = append(t.Rows, mark.Row{Cells: []string{"together", w.cell(side.Cut), w.cell(side.Sewn)}, Total: true})
			}
		}
		cut := ""
		if seam.Plain {
			cut = w.cell(seam.CutDifference.Magnitude())
		}
		if !seam.Gathered {
			t.Rows = append(t.Rows, mark.Row{Cells: []string{"difference", cut, w.cell(seam.Difference.Magnitude())}, Total: true})
		}
		t.Lines = append(seamVerdict(seam, w), seamEndLines(seam, w)...)
		s.Tables = append(s.Tables, t)
	}
	if slices.ContainsFunc(p.Seams, func(s garment.Seam) bool { return len(s.Ends) > 0 }) {
		s.Lines = []mark.Sentence{{Text: "The two sides are matched at the end named first. A jog is a step where the edge beside the seam goes over it, a point sticks out there, a dip falls in."}}
	}
	return s
}

// seamVerdict says whether the sides of a seam match.
func seamVerdict(s garment.Seam, w Wording) []mark.Sentence {
	var lines []mark.Sentence
	if text := s.Mismatch(w.length); text != "" {
		lines = append(lines, mark.Sentence{Text: text, Warning: true})
	}
	longer, shorter := s.Longer(s.Difference)
	switch off := math.Abs(s.Difference.MM); {
	case s.Scant():
		lines = append(lines, mark.Sentence{Text: fmt.Sprintf("%s is only %s times as long as %s, scant for gathers", longer.Title(), length.Factor(s.Fullness()), shorter.Title()), Warning: true})
	case s.Gathered:
		lines = append(lines, mark.Sentence{Text: fmt.Sprintf("gather %s, %s times as long, into %s", longer.Title(), length.Factor(s.Fullness()), shorter.Title())})
	case s.Matches() && off > s.Within.MM+length.Rounding:
		lines = append(lines, mark.Sentence{Text: fmt.Sprintf("ease %s in: by %s, and the ease allowed is %s", longer.Title(), w.length(s.Difference.Magnitude()), w.length(s.Ease))})
	case s.Matches():
		text := fmt.Sprintf("sewn, they match within %s", w.length(s.Within))
		if math.Abs(s.Difference.Steps)*s.Within.Unit.Ruler() > s.Within.MM+length.Rounding {
			text += ": more than that is only the rounding of each length"
		}
		lines = append(lines, mark.Sentence{Text: text})
	}
	if s.Gathered {
		lines = append(lines, mark.Sentence{Text: fmt.Sprintf("mark both in four equal parts and match the marks: every %s on %s, every %s on %s",
			w.length(longer.Sewn.Quarter()), longer.Title(), w.length(shorter.Sewn.Quarter()), shorter.Title())})
	}
	if text := s.AllowancesDiffer(w.length); text != "" {
		lines = append(lines, mark.Sentence{Text: text, Warning: true})
	}
	if s.Matches() && !s.CutMatches() {
		lines = append(lines, mark.Sentence{Text: "the cut edges differ in length, because their corners or the allowances beside them do; match the stitch lines"})
	}
	return lines
}

// seamEndLines says how the edges beside a seam go over it.
func seamEndLines(s garment.Seam, w Wording) []mark.Sentence {
	var lines []mark.Sentence
	for _, end := range s.Ends {
		where := "at " + end.Neighbours[0]
		if !end.Alike() {
			where += " and " + end.Neighbours[1]
		}
		tooFar := func(a length.Amount) bool { return a.MM > s.Within.MM+length.Rounding }
		parts := seamJogs(s, end, w)
		switch degrees := math.Round(math.Abs(end.Bend)); {
		case end.Straight():
			parts = append(parts, "no point")
		case end.Bend > 0:
			parts = append(parts, fmt.Sprintf("a point of %.0f degrees", degrees))
		default:
			parts = append(parts, fmt.Sprintf("a dip of %.0f degrees", degrees))
		}
		lines = append(lines, mark.Sentence{
			Text:    where + ": " + strings.Join(parts, ", "),
			Warning: end.Alike() && (!end.Straight() || tooFar(end.Jog) || end.CutJogKnown && tooFar(end.CutJog)),
		})
	}
	return lines
}

// seamJogs says which side runs past the other at an end of a seam, sewn and cut.
func seamJogs(s garment.Seam, end garment.SeamEnd, w Wording) []string {
	past := func(side int, of string, by length.Amount) string {
		names := seamNames(s)
		if side < 0 {
			names[0], names[1] = names[1], names[0]
		}
		return fmt.Sprintf("%s%s runs %s past %s", of, names[0], w.length(by), names[1])
	}
	sewn := end.Past != 0
	cut := end.CutJogKnown && end.CutPast != 0
	switch {
	case sewn && cut && end.Past == end.CutPast && (end.Jog.Steps == end.CutJog.Steps || math.Abs(end.Jog.MM-end.CutJog.MM) < piece.LeastTakeUp):
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
