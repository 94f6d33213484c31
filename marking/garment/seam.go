package garment

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file. Edges that are joined must have equal sewn lengths, with
// pleats folded and tucks stitched, but for the ease that is allowed and for what
// no hand can hold to. A side that is gathered is drawn up to the other. An edge
// counts as often as the garment has it, over how often it has the same seam. Ease is
// given to the side that is named first: that one may be longer.

// Seam is two sides that are sewn together.
type Seam struct {
	Key        string
	Sides      [2]SeamSide
	Ease       length.Amount // by how much the first side may be longer than the second
	Within     length.Amount // what they may differ beyond that
	Gathered   bool
	Difference length.Amount // of the sewn lengths as they are printed: first less second
	// Plain tells that either side is one edge and nothing is folded in it, so that
	// the cut edges may be compared as well. CutDifference is theirs, first less second.
	Plain         bool
	CutDifference length.Amount
	Ends          []SeamEnd // none where a side is more than one edge

	place fault.Place
}

// SeamSide is one side of a seam: an edge, or several in a row.
type SeamSide struct {
	Courses []Course
	Cut     length.Amount // of the cutting lines
	Sewn    length.Amount // of the stitch lines, with folds in
}

// seamTolerance is by how much two sides may differ that are to match, in mm, where
// the file does not say: 1/16 in, as fine as a ruler is read.
const seamTolerance = 25.4 / 16

// metricTolerance is the same where the file is not in inches: 1.5 mm.
const metricTolerance = 1.5

// cutEdge is an edge as it is cut.
type cutEdge struct {
	length float64 // on the flat cloth
	plain  bool    // nothing is folded in it, from one end of the cutting line to the other
}

// cutEdges returns the edges of a piece as they are cut.
func cutEdges(p *piece.Piece) []cutEdge {
	var all []cutEdge
	for i, length := range p.CutLengths() {
		folded := p.FinishedAlong(i, p.Edges[i].Path)
		all = append(all, cutEdge{length, math.Abs(length-folded) < piece.LeastTakeUp})
	}
	return all
}

// newSeam works out a seam whose names have been checked. cuts holds the edges of every
// piece. ok is false where tucks and pleats leave nothing of an edge to be sewn.
func (p *Pattern) newSeam(s source.SeamSpec, spec *source.Spec, cuts map[*piece.Piece][]cutEdge, found *piece.Findings) (seam Seam, ok bool) {
	seam = Seam{
		Key: s.Key, Ease: p.Unit.Chosen(s.Ease.V), Within: p.Unit.Chosen(p.Unit.Either(seamTolerance, metricTolerance)),
		Gathered: s.Gathered, Plain: true, place: s.Place,
	}
	if s.Within.Given() {
		seam.Within = p.Unit.Chosen(s.Within.V)
	}
	sides := [2][]Course{p.courses(s.Sides[0], spec), p.courses(s.Sides[1], spec)}
	once := oftenOfAll(slices.Concat(sides[0], sides[1]))
	for i := range sides {
		for k := range sides[i] {
			sides[i][k].Times /= once
		}
	}
	before := len(found.List)
	for i, courses := range sides {
		seam.Plain = seam.Plain && len(courses) == 1
		side := SeamSide{Courses: courses, Cut: length.Amount{Unit: p.Unit}, Sewn: p.length(courses)}
		for k := range courses {
			c := &courses[k]
			cut := cuts[c.Of][c.At]
			c.Cut = p.Unit.Amount(cut.length)
			side.Cut = side.Cut.Plus(c.Cut.Times(c.Times))
			seam.Plain = seam.Plain && cut.plain
			if e := c.Of.Edges[c.At]; e.FinishedLength < piece.LeastSeam && e.FinishedLength < e.Sewn.Length()-piece.LeastTakeUp {
				found.Add(s.Join, "make them fewer or smaller", "the tucks and pleats of %q leave %s of it to be sewn",
					c.Piece+"."+c.Edge, found.NothingOr(e.FinishedLength))
			}
		}
		seam.Sides[i] = side
	}
	seam.Difference = seam.Sides[0].Sewn.Less(seam.Sides[1].Sewn)
	seam.CutDifference = seam.Sides[0].Cut.Less(seam.Sides[1].Cut)
	if a, b := sides[0], sides[1]; len(a) == 1 && len(b) == 1 && a[0].Times == b[0].Times {
		off := seam.Difference
		if seam.held() {
			off = length.Amount{Unit: p.Unit}
		}
		seam.Ends = p.seamEnds(a[0], b[0], off)
	}
	return seam, len(found.List) == before
}

// oftenOfAll returns how often the same seam comes in the garment: the greatest number
// that divides how often each of its edges does. Of a left and a right sleeve it is 2.
func oftenOfAll(courses []Course) int {
	often := 0
	for _, c := range courses {
		for a := c.Times; a != 0; {
			often, a = a, often%a
		}
	}
	return often
}

// held reports whether the longer side is held in to the shorter, so that the ends
// of both meet.
func (s Seam) held() bool {
	return s.Gathered || s.Ease.MM > 0 && s.Matches()
}

// Matches reports whether the two sides can be sewn together as they are: their sewn
// lengths differ by no more than Within, or the first is longer by no more than Ease
// besides. Gathered ones always can.
func (s Seam) Matches() bool { return s.Gathered || s.holds(s.Difference) }

// holds reports whether a difference, first less second, is one that can be sewn.
func (s Seam) holds(difference length.Amount) bool {
	return difference.MM <= s.Ease.MM+s.Within.MM+length.Rounding && difference.MM >= -s.Within.MM-length.Rounding
}

// CutMatches reports whether the cutting lines match as well, where they can be
// compared.
func (s Seam) CutMatches() bool {
	return s.Gathered || !s.Plain || s.holds(s.CutDifference)
}

// Fullness returns how many times as long the longer side is as the shorter.
func (s Seam) Fullness() float64 {
	a, b := s.Sides[0].Sewn.MM, s.Sides[1].Sewn.MM
	return math.Max(a, b) / math.Min(a, b)
}

// Longer returns the longer side of a difference, and the other one.
func (s Seam) Longer(difference length.Amount) (longer, shorter SeamSide) {
	if difference.MM < 0 {
		return s.Sides[1], s.Sides[0]
	}
	return s.Sides[0], s.Sides[1]
}

// AllowancesDiffer says that the allowances of the two sides differ, where each side has
// one; nothing where they do not.
func (s Seam) AllowancesDiffer(length func(float64) string) string {
	a, b, differ := s.allowances()
	if !differ {
		return ""
	}
	return fmt.Sprintf("the allowances of its two sides differ, %s and %s: the cut edges do not lie on each other when it is sewn", length(a), length(b))
}

// allowances returns the allowances of the two sides where each has one, and reports
// whether they differ.
func (s Seam) allowances() (a, b float64, differ bool) {
	one := func(side SeamSide) (float64, bool) {
		first := side.Courses[0].Of.Edges[side.Courses[0].At].Allowance
		for _, c := range side.Courses {
			if math.Abs(c.Of.Edges[c.At].Allowance-first) > piece.SamePoint {
				return 0, false
			}
		}
		return first, true
	}
	a, oneA := one(s.Sides[0])
	b, oneB := one(s.Sides[1])
	return a, b, oneA && oneB && math.Abs(a-b) > piece.SamePoint
}
