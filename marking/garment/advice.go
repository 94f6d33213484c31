package garment

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file: of a seam that does not match it says what a teacher would: where the
// difference likely comes from, and what to move by how much. A cause is named only where
// something of the pattern measures as much as the difference; the first that does, of
//
//	ease          it is given to the side named first, and the other is longer
//	an edge       one of the same name that no seam joins
//	folds         what tucks and pleats take of one side, or more than of the other
//	allowances    what they take at an end, where those of the two sides are unlike
//	one of them   an allowance, or a hem, that one of the two may have been drawn without
//	corners       what they take at an end, where the allowances are alike
//	a slip        whole inches, or centimetres
//
// What is moved lies at the hem, where there is one; never at the centre; else at the end
// that does not come to lie on the other when the two are matched at the first. Where the
// longer side may be meant to be gathered, that is asked first.

const (
	// causeFits is how near a cause must come to a difference, in mm: half a step of a ruler.
	causeFits = inchTolerance / 2
	// slipFits is the same of whole inches, of which one is always near.
	slipFits = inchTolerance / 4
	// easily is how much of a seam can be eased in, as a share of it (common practice).
	easily = 0.1
)

// Advice says where the difference of the two sides likely comes from, and what to move;
// nothing where they match.
func (s Seam) Advice(say func(length.Amount) string) string {
	if s.Matches() {
		return ""
	}
	a := adviser{s, say, math.Abs(s.Difference.MM), 0, 1}
	if s.Difference.MM < 0 {
		a.long, a.short = 1, 0
	}
	for _, done := range []func() string{a.easeOfTheOther, a.forgotten} {
		if text := done(); text != "" {
			return text
		}
	}
	text := a.remedy()
	for _, cause := range []func() string{a.folds, a.allowances, a.drawnWithout, a.corners, a.slip} {
		why := cause()
		switch {
		case why == "":
			continue
		case text == "":
			return why
		case strings.HasSuffix(why, "?"):
			return why + " If not, " + text
		}
		return why + "; " + text
	}
	if text != "" && a.likelyGathered() {
		return fmt.Sprintf("if the longer side is to be gathered, %s times as long, make the seam a gathered one; else %s", length.Factor(a.Fullness()), text)
	}
	return text
}

// Names tell what is gathered (common practice): drawsUp matches edges that are, such as the top
// of a skirt or the cap of a sleeve; holds matches pieces that others are gathered to, and
// neverDrawn those beside them that are sewn as they are; staysPlain matches such edges.
var (
	drawsUp    = wording.FormOf(`\b(?:top|waist|waistline|head|cap|crown|foot|bottom|wrist|frill|ruffle|flounce)\b|gather`)
	holds      = wording.FormOf(`\b(?:yoke|waist|waistband|band|neckband|wristband|cuff)\b`)
	neverDrawn = wording.FormOf(`\b(?:collar|facing|lining|gusset)\b`)
	staysPlain = wording.FormOf(`\b(?:shoulder|side|underarm|overarm|under|over|gusset|centre|center|seam|end|fold)\b|^c\.? ?[fb]\.?$`)
)

// likelyGathered reports whether the longer side may be meant to be gathered: it is as full
// as gathers are, and names tell of them.
func (a adviser) likelyGathered() bool {
	if full := a.Fullness(); full < leastFull || full > mostFull {
		return false
	}
	likely := false
	for i, side := range a.Sides {
		for _, c := range side.Courses {
			of, edge, long := c.Piece.Words(), wording.InWords(c.Key), i == a.long
			if staysPlain.MatchString(edge) || long && (holds.MatchString(of) || neverDrawn.MatchString(of)) {
				return false
			}
			likely = likely || !long && holds.MatchString(of) || long && drawsUp.MatchString(edge) ||
				long && strings.Contains(of, "sleeve") && strings.Contains(edge, "arm")
		}
	}
	return likely
}

// adviser looks for causes of a difference.
type adviser struct {
	Seam
	say         func(length.Amount) string
	off         float64 // by how much the longer side is longer
	long, short int     // their numbers
}

func (a adviser) fits(mm float64) bool { return math.Abs(mm-a.off) <= causeFits }

func (a adviser) length(mm float64) string { return a.say(a.Within.Unit.Amount(mm)) }

// name names a side where it is compared with the other: by its piece, by its edge where
// both are on one, or by how long it is where it has several edges.
func (a adviser) name(side int) string {
	x, y := a.Sides[0].Courses[0], a.Sides[1].Courses[0]
	own := a.Sides[side].Courses[0]
	switch {
	case len(a.Sides[side].Courses) > 1 && side == a.long:
		return "the longer side"
	case len(a.Sides[side].Courses) > 1:
		return "the shorter side"
	case x.Piece == y.Piece:
		return own.Key
	}
	return own.Piece.Name
}

func (a adviser) easeOfTheOther() string {
	if a.Ease.MM == 0 || a.long == 0 || a.off > a.Ease.MM+a.Within.MM+length.Rounding {
		return ""
	}
	return fmt.Sprintf("to have %s eased in, name it first", a.name(1))
}

// forgotten finds an edge that may be missing on the shorter side.
func (a adviser) forgotten() string {
	for _, own := range a.Sides[a.short].Courses {
		for _, c := range a.free[own.Key] {
			if c.Piece != own.Piece && a.fits(c.Whole().MM/float64(a.once)) {
				return fmt.Sprintf("that is as much as the %s of %s, which no seam joins: does it belong to that side?", c.Key, c.Piece.Name)
			}
		}
	}
	return ""
}

// folds looks at what folds take of the two sides, and at room that a piece drawn finished
// would have for them twice.
func (a adviser) folds() string {
	long, short := a.Sides[a.long], a.Sides[a.short]
	switch {
	case short.taken > causeFits && long.taken > causeFits && a.fits(short.taken-long.taken):
		return fmt.Sprintf("tucks and pleats take %s of %s and %s of %s", a.length(short.taken), a.name(a.short), a.length(long.taken), a.name(a.long))
	case short.taken > causeFits && a.fits(short.taken):
		return fmt.Sprintf("its tucks and pleats take as much of %s: is it drawn without room for them?", a.name(a.short))
	case long.room > causeFits && a.fits(long.room):
		return fmt.Sprintf("its tucks and pleats take as much of %s: is it drawn with room for them, and so not finished?", a.name(a.long))
	}
	return ""
}

// takenMore returns how much more a corner takes of the shorter side.
func (a adviser) takenMore(e SeamEnd) float64 { return e.corner[a.short] - e.corner[a.long] }

// allowances looks for an end at which the neighbours have unlike allowances.
func (a adviser) allowances() string {
	for _, e := range a.Ends {
		long, short := e.edges[a.long].drawn(), e.edges[a.short].drawn()
		if a.fits(a.takenMore(e)) && math.Abs(long.Allowance-short.Allowance) > piece.SamePoint {
			return fmt.Sprintf("at %q %s has %s, and %s has %s", short.Key, a.name(a.short), a.allowanceOf(short), a.name(a.long), a.allowanceOf(long))
		}
	}
	return ""
}

// allowanceOf says what an edge is sewn or hemmed with.
func (a adviser) allowanceOf(e piece.Edge) string {
	chosen := func(mm float64) string { return a.say(a.Within.Unit.Chosen(mm)) }
	switch {
	case e.Hem > 0 && e.Turn > 0:
		return fmt.Sprintf("a hem of %s with a turn of %s", chosen(e.Hem), chosen(e.Turn))
	case e.Hem > 0:
		return fmt.Sprintf("a hem of %s without a turn", chosen(e.Hem))
	case e.Allowance > 0:
		return fmt.Sprintf("an allowance of %s", chosen(e.Allowance))
	}
	return "no allowance"
}

// drawnWithout looks for an allowance that one of the two may be drawn without; then they
// differ as much when they are cut.
func (a adviser) drawnWithout() string {
	if !a.Plain || math.Abs(a.CutDifference.MM-a.Difference.MM) > causeFits || len(a.Ends) == 0 {
		return ""
	}
	both := 0.0
	for _, e := range a.Ends {
		edge := e.edges[a.short].drawn()
		both += edge.Allowance
		what := "the allowance of " + fmt.Sprintf("%q", edge.Key)
		if edge.Hem > 0 {
			what = "the hem and its turn at " + fmt.Sprintf("%q", edge.Key)
		}
		if edge.Allowance > 0 && a.fits(edge.Allowance) {
			return fmt.Sprintf("that is as much as %s: is %s drawn without it?", what, a.name(a.short))
		}
	}
	if both > 0 && a.fits(both) {
		return fmt.Sprintf("that is as much as the allowances at its two ends: is %s drawn without them?", a.name(a.short))
	}
	return ""
}

// corners looks at what the corners take, where the longer side is not longer as it is cut.
func (a adviser) corners() string {
	cut := a.CutDifference.MM
	if a.long == 1 {
		cut = -cut
	}
	var told []string
	for _, e := range a.Ends {
		if math.Abs(a.takenMore(e)) > causeFits {
			told = append(told, fmt.Sprintf("%s of %s and %s of %s at %q",
				a.length(e.corner[a.short]), a.name(a.short), a.length(e.corner[a.long]), a.name(a.long), e.Neighbours[a.short]))
		}
		cut += a.takenMore(e)
	}
	if !a.Plain || len(told) == 0 || a.CutDifference.MM*a.Difference.MM > 0 && !a.CutMatches() || !a.fits(cut) {
		return ""
	}
	return "the corners take " + strings.Join(told, ", ")
}

// slip looks for a whole number of inches or centimetres.
func (a adviser) slip() string {
	one, name := 25.4, "inch"
	if a.Within.Unit != length.Inch {
		one, name = 10, "centimetre"
	}
	switch n := math.Round(a.off / one); {
	case n == 0 || !a.Plain || math.Abs(a.off-n*one) > slipFits || math.Abs(a.CutDifference.MM-a.Difference.MM) > causeFits:
		return ""
	case n == 1:
		return fmt.Sprintf("that is a whole %s: look for a slip in its points", name)
	default:
		plural := map[string]string{"inch": "inches", "centimetre": "centimetres"}[name]
		return fmt.Sprintf("that is %.0f whole %s: look for a slip in its points", n, plural)
	}
}

// remedy says what to move, by how much.
func (a adviser) remedy() string {
	by := a.Difference.Magnitude()
	if a.long == 0 {
		by = by.Beyond(a.Ease)
	}
	if by.Steps <= 0 {
		return ""
	}
	where := ""
	if len(a.Ends) > 0 {
		where = fmt.Sprintf(" at %q", a.moved().Neighbours[a.long])
	}
	text := fmt.Sprintf("take %s off %s%s, or add it to %s", a.say(by), a.name(a.long), where, a.name(a.short))
	switch ease := a.say(a.Difference.Magnitude()); {
	case a.off > easily*a.Sides[a.short].Sewn.MM:
		return text
	case a.long == 1:
		return text + "; or allow an ease of " + ease + ", " + a.name(a.long) + " named first"
	default:
		return text + "; or allow an ease of " + ease
	}
}

// moved returns the end at which a side is made longer or shorter.
func (a adviser) moved() SeamEnd {
	last := a.Ends[1]
	for _, e := range a.Ends {
		if e.edges[0].drawn().Hem > 0 || e.edges[1].drawn().Hem > 0 {
			return e
		}
	}
	if last.atCentre {
		return a.Ends[0]
	}
	return last
}
