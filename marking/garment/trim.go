package garment

import (
	"fmt"

	"tuckmark/marking/length"
	"tuckmark/marking/source"
)

// Rules of this file. Lace, ribbon, cord or braid lies on a stitch line. It takes the
// length of that line, times its fullness; round what turns outward a little more, so
// that its outer edge reaches round (reach.go); and what its joins take. A cord bends along
// a curve by itself, and takes more at corners alone.

// Trim is what is sewn on along stitch lines and bought by length.
type Trim struct {
	SewnOn
	Reach
	Kind      source.TrimKind
	Lies      source.Lies   // on which side of its line
	Width     float64       // 0 where the file does not say
	Fullness  float64       // how many times as long as its line; 1 where it lies flat
	Gathered  length.Amount // the line times the fullness
	Joins     int           // how many times its ends are joined or turned in
	JoinTakes length.Amount // each
	Total     length.Amount // to be cut
}

// LeftOut says what turns outward of the line where what that takes is not known, for want
// of a width; "" where nothing does, or it is known.
func (t Trim) LeftOut() string {
	corners, curves := len(t.Corners) > 0, len(t.Curves) > 0
	switch {
	case t.Width > 0:
		return ""
	case corners && curves:
		return "corners and outward curves"
	case corners:
		return "corners"
	case curves:
		return "outward curves"
	}
	return ""
}

// NoRoom says that its outer edge has no room in the tightest hollow of the line; "" where
// it has.
func (t Trim) NoRoom(say func(length.Amount) string) string {
	if t.Hollow.MM == 0 {
		return ""
	}
	return fmt.Sprintf("the line has a hollow curve of %s radius, and %s as wide as that has no room there for its outer edge: take it narrower, or fold it there as in a corner",
		say(t.Hollow), t.Kind)
}

// trim works out a trim.
func (j joiner) trim(s source.TrimSpec) Trim {
	t := Trim{
		SewnOn: j.sewnOn(s.Key, s.Place, s.Along), Kind: s.Kind.V, Lies: s.Lies.V, Width: s.Width.V, Fullness: s.Fullness.Or(1),
		Joins: s.Joins.Or(1), JoinTakes: j.Unit.Chosen(2 * usualJoining(j.Unit)),
	}
	if s.JoinTakes.Given() {
		t.JoinTakes = j.Unit.AtLeast(s.JoinTakes.V)
	}
	t.Gathered = t.LineLength.By(t.Fullness)
	side := 1.0 // the sign of a turn round which the trim is on the outside
	if s.Lies.V == source.LiesOn {
		side = -1
	}
	t.Reach = j.reach(t.Courses, t.Width, t.Fullness, side)
	if t.Kind == source.Cord {
		t.Reach = t.Reach.atCorners()
	}
	t.Total = j.Unit.Sum(t.Gathered, t.Reach.Takes(), t.JoinTakes.Times(t.Joins))
	return t
}
