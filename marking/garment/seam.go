package garment

import (
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
	Key        string // what the file calls it
	Sides      [2]SeamSide
	Ease       length.Amount // by how much the first side may be longer than the second
	Within     length.Amount // what they may differ beyond that
	Gathered   bool          // the longer side is drawn up to the other
	Difference length.Amount // of the sewn lengths: first less second
	// Plain tells that either side is one edge and nothing is folded in it, so that
	// the cut edges may be compared as well. CutDifference is theirs, first less second.
	Plain         bool
	CutDifference length.Amount
	Meeting       // without ends where a side is more than one edge

	once  int                 // how often it comes in the garment
	free  map[string][]Course // edges that no seam joins, by their keys
	place fault.Place
}

// SeamSide is one side of a seam: an edge, or several in a row.
type SeamSide struct {
	Courses []Course
	Cut     length.Amount // of the cutting lines
	Sewn    length.Amount // of the stitch lines, with folds in

	taken float64 // what tucks and pleats take of the stitch lines as they are drawn, in mm
	room  float64 // what is added to cutting lines that are drawn finished for them, in mm
}

// By how much two sides may differ that are to match, in mm, where the file does not say:
// about as fine as a ruler is read.
const (
	inchTolerance   = 25.4 / 16
	metricTolerance = 1.5
)

// seam works out a seam.
func (j joiner) seam(s source.SeamSpec) Seam {
	seam := Seam{
		Key: s.Key, Ease: j.Unit.Chosen(s.Ease.V), Within: j.Unit.Chosen(s.Within.Or(j.Unit.Either(inchTolerance, metricTolerance))),
		Gathered: s.Gathered, Plain: true, free: j.ties.free, place: s.Place,
	}
	sides := [2][]Course{j.courses(s.Sides[0]), j.courses(s.Sides[1])}
	j.checkMeet(s, sides)
	centres := [2]int{j.centres(sides[0]), j.centres(sides[1])}
	once := oftenOfAll(slices.Concat(sides[0], sides[1]))
	seam.once = once
	for i, courses := range sides {
		seam.Plain = seam.Plain && len(courses) == 1
		side := SeamSide{Courses: courses, Cut: length.Amount{Unit: j.Unit}}
		for k := range courses {
			c := &courses[k]
			c.Times /= once
			laps := centres[1-i] > centres[i] && j.toCentre(c)
			seam.Plain = j.cut(c) && !laps && seam.Plain
			side.Cut = side.Cut.Plus(c.Cut.Times(c.Times))
			e := c.drawn()
			side.taken += float64(c.Times) * max(0, e.Sewn.Length()-e.FinishedLength)
			side.room += float64(c.Times) * max(0, c.Cut.MM-e.Path.Length())
			// Within a tuck an edge is as long as ever, but no seam can be sewn there.
			left := min(e.FinishedLength, c.Piece.FinishedLength(e.Sewn))
			if left < piece.LeastSeam && left < e.Sewn.Length()-piece.LeastTakeUp {
				j.found.Add(s.Join, "make them fewer or smaller", "the tucks and pleats of %q leave %s of it to be sewn",
					c.Piece.Key+"."+c.Key, j.found.NothingOr(left))
			}
		}
		side.Sewn = j.together(courses)
		seam.Sides[i] = side
	}
	seam.Difference = seam.Sides[0].Sewn.Beyond(seam.Sides[1].Sewn)
	seam.CutDifference = seam.Sides[0].Cut.Beyond(seam.Sides[1].Cut)
	if a, b := sides[0], sides[1]; len(a) == 1 && len(b) == 1 && a[0].Times == b[0].Times {
		off := seam.Difference
		if seam.held() {
			off = length.Amount{Unit: j.Unit}
		}
		seam.Meeting = j.seamEnds(s, a[0], b[0], off)
	}
	return seam
}

// cut sets how long an edge is as it is cut, and reports whether nothing is folded in
// it, from one end of the cutting line to the other.
func (j joiner) cut(c *Course) (plain bool) {
	lengths, known := j.cuts[c.Piece]
	if !known {
		lengths = c.Piece.CutLengths()
		j.cuts[c.Piece] = lengths
	}
	cut := lengths[c.edge]
	c.Cut = j.Unit.Amount(cut)
	return math.Abs(cut-c.Piece.FinishedAlong(c.edge, c.drawn().Path)) < piece.LeastTakeUp
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

// Courses are the edges of both sides.
func (s Seam) Courses() []Course { return slices.Concat(s.Sides[0].Courses, s.Sides[1].Courses) }

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
	return max(a, b) / min(a, b)
}

// Longer returns the longer side of a difference, and the other one.
func (s Seam) Longer(difference length.Amount) (longer, shorter SeamSide) {
	if difference.MM < 0 {
		return s.Sides[1], s.Sides[0]
	}
	return s.Sides[0], s.Sides[1]
}
