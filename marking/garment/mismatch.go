package garment

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
)

// Rules of this file: it says in words what keeps the two sides of a seam from lying on
// each other, for remarks and figures alike; how a length is put is left to those.

// Mismatch says, in words, by how much the two sides do not match, sewn and cut;
// nothing where their stitch lines do. Cut edges of matching stitch lines may differ:
// their corners are cut at other angles.
func (s Seam) Mismatch(say func(length.Amount) string) string {
	if s.Matches() {
		return ""
	}
	tell := func(how string, difference length.Amount) string {
		longer, shorter := s.Longer(difference)
		off := difference.Magnitude()
		by, allowed := say(off), s.Within
		if difference.MM > 0 {
			allowed = s.Ease.Plus(s.Within)
		}
		switch {
		case off.Steps == 0:
			by = "less than " + say(off.Unit.Amount(off.Unit.Ruler()))
		case off.Steps <= allowed.Steps && off.Steps*off.Unit.Ruler() < off.MM:
			by = "just over " + by
		}
		return fmt.Sprintf("%s %s %s %s longer than %s", how, longer.Title(), longer.is(), by, shorter.Title())
	}
	text := tell("sewn,", s.Difference)
	if !s.CutMatches() {
		text += "; as it is cut," + tell("", s.CutDifference)
	}
	if s.Ease.MM > 0 {
		text += fmt.Sprintf("; the ease allowed is %s, of the side that is named first", say(s.Ease))
	}
	return text
}

// mostNamed is how many edges of one side are named in a sentence.
const mostNamed = 2

// Title names a side in a sentence: "the shoulder of Front", or several joined by
// "and".
func (s SeamSide) Title() string {
	if n := len(s.Courses); n > mostNamed {
		return fmt.Sprintf("the %s of %s and %d more", s.Courses[0].Key, s.Courses[0].Piece.Name, n-1)
	}
	var names []string
	for _, c := range s.Courses {
		name := "the " + c.Key + " of " + c.Piece.Name
		if c.Times > 1 {
			name += fmt.Sprintf(" (%d times)", c.Times)
		}
		names = append(names, name)
	}
	return strings.Join(names, " and ")
}

// is is the verb that goes with the title of a side.
func (s SeamSide) is() string {
	if len(s.Courses) > 1 {
		return "are together"
	}
	return "is"
}

// NotchesTurned says that notches miss each other that would meet from the other end of one
// side; nothing of others.
func (s Seam) NotchesTurned(say func(length.Amount) string) string {
	if s.NotchesMiss == 0 {
		return ""
	}
	return fmt.Sprintf("the notches miss each other by %s, and would meet if those of one side were measured from its other end", say(s.Within.Unit.Amount(s.NotchesMiss)))
}

// MeetUndecided says that nothing tells which ends of the two edges come together, and what
// may be written then; nothing where something does, or the seam is the same either way.
func (s Seam) MeetUndecided() (text, write string) {
	if !s.Undecided() {
		return "", ""
	}
	end := s.Ends[0].Neighbours
	return fmt.Sprintf("which ends meet could not be told: %q was laid on %q", end[0], end[1]),
		fmt.Sprintf("if it lies on %q, write meet = [%q, %q]", s.Else[1], s.Else[0], s.Else[1])
}

// AllowancesDiffer says that the allowances of the two sides differ, where each side has
// one; nothing where they do not.
func (s Seam) AllowancesDiffer(say func(length.Amount) string) string {
	a, oneA := s.Sides[0].allowance()
	b, oneB := s.Sides[1].allowance()
	if !oneA || !oneB || math.Abs(a-b) <= piece.SamePoint {
		return ""
	}
	chosen := s.Within.Unit.Chosen
	return fmt.Sprintf("the allowances of its two sides differ, %s and %s: the cut edges do not lie on each other when it is sewn", say(chosen(a)), say(chosen(b)))
}

// allowance returns the allowance of a side in mm; one is false where its edges have
// several.
func (s SeamSide) allowance() (mm float64, one bool) {
	mm = s.Courses[0].drawn().Allowance
	return mm, !slices.ContainsFunc(s.Courses, func(c Course) bool { return math.Abs(c.drawn().Allowance-mm) > piece.SamePoint })
}
