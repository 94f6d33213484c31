package marking

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. Edges that are joined must have equal sewn lengths, with
// pleats folded and tucks stitched, but for the ease that is allowed and for what
// no hand can hold to. A side that is gathered is drawn up to the other. An edge
// counts as often as the garment has it, or once on both sides where all have it
// equally often.

// Seam is two sides that are sewn together.
type Seam struct {
	Key        string
	Sides      [2]SeamSide
	Ease       Amount // by how much one side may be longer
	Within     Amount // what they may differ beyond that
	Gathered   bool
	Difference Amount // of the sewn lengths as they are printed: first less second
	// Plain tells that nothing is folded in either side, so that the cut edges
	// may be compared as well. CutDifference is theirs, first less second.
	Plain         bool
	CutDifference Amount
	Ends          []SeamEnd // none where a side is more than one edge

	place Place
}

// SeamSide is one side of a seam: an edge, or several in a row.
type SeamSide struct {
	Courses []Course
	Cut     Amount // of the cutting lines
	Sewn    Amount // of the stitch lines, with folds in
}

// seamTolerance is by how much two sides may differ that are to match, in mm, where
// the file does not say: 1/16 in, as fine as a ruler is read.
const seamTolerance = 25.4 / 16

// metricTolerance is the same where the file is not in inches: 1.5 mm.
const metricTolerance = 1.5

// leastFolded bounds how much of an edge a fold takes, in mm, to count: more than
// rounding.
const leastFolded = 0.05

// cutEdge is an edge as it is cut.
type cutEdge struct {
	length float64 // on the flat cloth
	plain  bool    // nothing is folded in it, from one end of the cutting line to the other
}

// cutEdges returns the edges of a piece as they are cut.
func (p *Piece) cutEdges() []cutEdge {
	var all []cutEdge
	for i, length := range p.cutLengths() {
		folded := p.foldedAlong(i, p.Edges[i].Path)
		all = append(all, cutEdge{length, math.Abs(length-folded) < leastFolded})
	}
	return all
}

// newSeam works out a seam whose names have been checked. cuts holds the edges of every
// piece. ok is false where tucks and pleats leave nothing of an edge to be sewn.
func (p *Pattern) newSeam(s SeamSpec, spec *Spec, cuts map[*Piece][]cutEdge, found *findings) (seam Seam, ok bool) {
	seam = Seam{
		Key: s.Key, Ease: p.Unit.chosen(s.Ease.MM), Within: p.Unit.chosen(p.Unit.either(seamTolerance, metricTolerance)),
		Gathered: s.Gathered, Plain: true, place: s.Place,
	}
	if s.Within.Given() {
		seam.Within = p.Unit.chosen(s.Within.MM)
	}
	sides := [2][]Course{p.courses(s.Sides[0], spec), p.courses(s.Sides[1], spec)}
	if all := slices.Concat(sides[0], sides[1]); allOften(all, all[0].Times) {
		for i := range sides {
			for k := range sides[i] {
				sides[i][k].Times = 1
			}
		}
	}
	before := len(found.list)
	for i, courses := range sides {
		side := SeamSide{Courses: courses, Cut: Amount{unit: p.Unit}, Sewn: p.length(courses)}
		for k := range courses {
			c := &courses[k]
			cut := cuts[c.piece][c.edge]
			c.cut = p.Unit.amount(cut.length)
			side.Cut = side.Cut.Plus(c.cut.Times(c.Times))
			seam.Plain = seam.Plain && cut.plain
			if e := c.piece.Edges[c.edge]; e.Folded < leastSeam && e.Folded < e.Sewn.Length()-leastFolded {
				found.add(s.Join, "make them fewer or smaller", "the tucks and pleats of %q leave %s of it to be sewn",
					c.Piece+"."+c.Edge, found.nothingOr(e.Folded))
			}
		}
		seam.Sides[i] = side
	}
	seam.Difference = seam.Sides[0].Sewn.Less(seam.Sides[1].Sewn)
	seam.CutDifference = seam.Sides[0].Cut.Less(seam.Sides[1].Cut)
	if a, b := sides[0], sides[1]; len(a) == 1 && len(b) == 1 && a[0].Times == b[0].Times {
		off := seam.Difference
		if seam.held() {
			off = Amount{unit: p.Unit}
		}
		seam.Ends = p.seamEnds(a[0], b[0], off)
	}
	return seam, len(found.list) == before
}

// allOften reports whether every course comes that often.
func allOften(courses []Course, times int) bool {
	return !slices.ContainsFunc(courses, func(c Course) bool { return c.Times != times })
}

// held reports whether the longer side is held in to the shorter, so that the ends
// of both meet.
func (s Seam) held() bool {
	return s.Gathered || s.Ease.MM > 0 && s.Matches()
}

// Matches reports whether the two sides can be sewn together as they are: their sewn
// lengths differ by no more than Ease and Within together. Gathered ones always can.
func (s Seam) Matches() bool {
	return s.Gathered || math.Abs(s.Difference.MM) <= s.Ease.MM+s.Within.MM+sameLength
}

// CutMatches reports whether the cutting lines match as well, where they can be
// compared.
func (s Seam) CutMatches() bool {
	return s.Gathered || !s.Plain || math.Abs(s.CutDifference.MM) <= s.Ease.MM+s.Within.MM+sameLength
}

// Fullness returns how many times as long the longer side is as the shorter.
func (s Seam) Fullness() float64 {
	a, b := s.Sides[0].Sewn.MM, s.Sides[1].Sewn.MM
	return math.Max(a, b) / math.Min(a, b)
}

// apart returns by how much two lengths differ, without a sign. Each length is rounded
// before one is taken from the other, so what is read may have the other sign than the
// exact difference, or be nothing.
func apart(difference Amount) Amount {
	difference.MM, difference.steps = math.Abs(difference.MM), math.Abs(difference.steps)
	return difference
}

// longer returns the longer side of a difference, and the other one.
func (s Seam) longer(difference Amount) (longer, shorter SeamSide) {
	if difference.MM < 0 {
		return s.Sides[1], s.Sides[0]
	}
	return s.Sides[0], s.Sides[1]
}

// SeamEnd is where a seam ends, and its two neighbours go on into each other.
type SeamEnd struct {
	Neighbours [2]string // the edges that meet there, of the first and second side
	// Jog is by how much the finished lines of the two miss each other along the
	// seam, the pieces being laid stitch line on stitch line and matched at the
	// first end: the one whose neighbour in the first side stands first in the file.
	// CutJog is the same of their cutting lines; CutJogKnown is false where one of
	// them does not reach the seam, or there is none, on the fold of the cloth.
	Jog, CutJog Amount
	CutJogKnown bool
	// Past and CutPast tell which side runs past the other there: 1 the first, -1
	// the second, 0 neither.
	Past, CutPast int
	// Bend is how far the line turns where it goes over the seam, in degrees:
	// above 0 it makes a point, below 0 a dip.
	Bend float64
}

// leastBend is from how much on a line that goes over a seam has a point or a dip
// that is seen, in degrees: as much as makes a corner.
const leastBend = leastTurn * 180 / math.Pi

// Straight reports whether the line goes over the seam without a point or a dip that
// is seen.
func (e SeamEnd) Straight() bool { return math.Abs(e.Bend) < leastBend }

// Alike reports whether the two neighbours are called alike, as two halves of one
// neck are, so that no corner is meant between them.
func (e SeamEnd) Alike() bool { return e.Neighbours[0] == e.Neighbours[1] }

// corner is one end of an edge as it is sewn.
type corner struct {
	neighbour string
	angle     float64 // of the piece between the two sewn lines, in radians
	beyond    float64 // along the stitch line from its sewn end to the cutting line, with folds in
	reaches   bool    // whether it reaches the cutting line of its neighbour
	place     Place   // of the neighbour
}

// corners returns the two ends of an edge, in the direction of the outline.
func (p *Piece) corners(edge int) [2]corner {
	before, after := p.neighbours(edge)
	e := p.Edges[edge]
	_, start, _ := e.Line.Nearest(e.Sewn[0])
	_, end, _ := e.Line.Nearest(e.Sewn[len(e.Sewn)-1])
	return [2]corner{
		{
			neighbour: p.Edges[before].Key,
			angle:     turnLeft(e.Sewn.StartDirection(), p.Edges[before].Sewn.EndDirection().Mul(-1)),
			beyond:    p.foldedAlong(edge, e.Line.Between(0, start)),
			reaches:   p.turn(before, edge) > leastTurn && !p.Edges[before].OnFold,
			place:     p.Edges[before].place,
		},
		{
			neighbour: p.Edges[after].Key,
			angle:     turnLeft(p.Edges[after].Sewn.StartDirection(), e.Sewn.EndDirection().Mul(-1)),
			beyond:    p.foldedAlong(edge, e.Line.Between(end, e.Line.Length())),
			reaches:   p.turn(edge, after) > leastTurn && !p.Edges[after].OnFold,
			place:     p.Edges[after].place,
		},
	}
}

// turnLeft returns the angle from one direction to another, turning left: from 0 to
// a full turn.
func turnLeft(from, to plane.Point) float64 {
	angle := math.Atan2(from.Cross(to), from.Dot(to))
	if angle < 0 {
		angle += 2 * math.Pi
	}
	return angle
}

// seamEnds lays two edges along each other and looks at the ends. Which end lies on
// which follows from the names of the neighbours; where these do not tell, from how
// the ends meet best. off is by how much the first edge is longer.
func (p *Pattern) seamEnds(a, b Course, off Amount) []SeamEnd {
	first, second := a.piece.corners(a.edge), b.piece.corners(b.edge)
	drawn := p.laid(first, second, off)
	turned := p.laid(first, [2]corner{second[1], second[0]}, off)
	// An edge that is joined with itself lies on its mirror image. Two pieces drawn
	// side by side, as they are sewn, have their common edge run opposite ways; that
	// is so where nothing else tells.
	if a.piece == b.piece && a.edge == b.edge || meetBetter(drawn, turned) {
		return drawn
	}
	return turned
}

// laid returns how two edges meet at their ends, the first corner of the one lying on
// the first of the other.
func (p *Pattern) laid(first, second [2]corner, off Amount) []SeamEnd {
	order := []int{0, 1}
	if first[1].place.Line < first[0].place.Line {
		order = []int{1, 0}
	}
	var ends []SeamEnd
	for n, i := range order {
		jog, cut := Amount{unit: p.Unit}, first[i].beyond-second[i].beyond
		if n == 1 {
			jog, cut = off, cut+off.MM
		}
		ends = append(ends, SeamEnd{
			Neighbours: [2]string{first[i].neighbour, second[i].neighbour},
			Jog:        apart(jog), Past: sign(jog.MM),
			CutJog: p.Unit.amount(math.Abs(cut)), CutPast: sign(cut),
			CutJogKnown: first[i].reaches && second[i].reaches,
			Bend:        (math.Pi - first[i].angle - second[i].angle) * 180 / math.Pi,
		})
	}
	return ends
}

// sign is 1 for a length above 0, -1 for one below, and 0 for one that is nothing.
func sign(mm float64) int {
	switch {
	case mm > rounding:
		return 1
	case mm < -rounding:
		return -1
	}
	return 0
}

// meetBetter reports whether the first way of laying two edges is the likelier one:
// more neighbours of one name meet, or else the lines bend less, or else the cut edges
// miss each other less.
func meetBetter(a, b []SeamEnd) bool {
	for _, amiss := range []func(SeamEnd) float64{
		func(e SeamEnd) float64 {
			if e.Alike() {
				return 0
			}
			return 1
		},
		func(e SeamEnd) float64 { return math.Abs(e.Bend) },
		func(e SeamEnd) float64 { return e.CutJog.MM },
	} {
		sum := 0.0
		for i := range a {
			sum += amiss(a[i]) - amiss(b[i])
		}
		if math.Abs(sum) > rounding {
			return sum < 0
		}
	}
	return false
}

// allowances returns the allowances of the two sides where each has one, and reports
// whether they differ.
func (s Seam) allowances() (a, b float64, differ bool) {
	one := func(side SeamSide) (float64, bool) {
		first := side.Courses[0].piece.Edges[side.Courses[0].edge].Allowance
		for _, c := range side.Courses {
			if math.Abs(c.piece.Edges[c.edge].Allowance-first) > samePoint {
				return 0, false
			}
		}
		return first, true
	}
	a, oneA := one(s.Sides[0])
	b, oneB := one(s.Sides[1])
	return a, b, oneA && oneB && math.Abs(a-b) > samePoint
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
		off, exact := apart(difference), ""
		if difference.steps*difference.MM <= 0 { // as it is read, nothing, or the other way round
			off, exact = off.unit.amount(off.MM), ", by their exact lengths"
		}
		by := length(off)
		switch {
		case off.steps == 0:
			by, exact = "less than "+length(off.unit.amount(off.unit.ruler())), ""
		case off.steps <= s.Ease.Plus(s.Within).steps && off.steps*off.unit.ruler() < off.MM:
			by = "just over " + by
		}
		return fmt.Sprintf("%s %s %s %s longer than %s%s", how, longer.title(), longer.is(), by, shorter.title(), exact)
	}
	text := tell("sewn,", s.Difference)
	if !s.CutMatches() {
		text += "; as it is cut," + tell("", s.CutDifference)
	}
	if s.Ease.MM > 0 {
		text += fmt.Sprintf("; the ease allowed is %s", length(s.Ease))
	}
	return text
}

// title names a side in a sentence: "the shoulder of Front", or several joined by
// "and".
func (s SeamSide) title() string {
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

// names are what the two sides of a seam between two edges are called where they meet:
// their pieces, or their edges where both are on one piece.
func (s Seam) names() [2]string {
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
