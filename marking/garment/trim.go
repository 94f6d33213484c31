package garment

import (
	"fmt"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. Lace, ribbon, cord or braid lies on a stitch line. It takes the
// length of that line, times its fullness; round what turns outward a little more, so
// that its outer edge reaches round (reach.go); and what its joins take. Each strand has a length
// of its own, with a join of its own. A cord bends along
// a curve by itself, and takes more at corners alone.

// Trim is what is sewn on along stitch lines and bought by length.
type Trim struct {
	SewnOn
	Reach
	Kind      source.TrimKind
	Lies      source.Lies   // on which side of its line
	Width     float64       // 0 where the file does not say
	Fullness  float64       // how many times as long as its line; 1 where it lies flat
	Lengths   []TrimLength  // that it is cut in
	Gathered  length.Amount // the line times the fullness, of all lengths together
	Joins     int           // how many times its ends are joined or turned in
	JoinTakes length.Amount // each
	Total     length.Amount // to be cut
}

// TrimLength is what is cut in one, for one strand.
type TrimLength struct {
	Strand
	Gathered length.Amount // the line times the fullness
	Joins    int           // how many times its ends are joined or turned in
	Total    length.Amount // to be cut
}

// Count is how many lengths it is cut in, one for each strand.
func (t Trim) Count() int { return timesOf(t.Lengths) }

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

// overTucks says which tucks a trim lies over that runs along them, and whether they are clear of
// it on the other side of its line; "" where it lies over none, or its width is not known.
func (t Trim) overTucks(say func(length.Amount) string) string {
	over := func(lies source.Lies) []string {
		var all []string
		for _, c := range t.Courses {
			side := piece.OnRight
			if lies == source.LiesOn {
				side = piece.OnLeft
			} else if c.isEdge() {
				continue // beyond the piece
			}
			for _, tucks := range c.Piece.LaidOver(c.line, side, t.Width) {
				all = append(all, tucks+" of "+c.Piece.Name)
			}
		}
		return all
	}
	tucks := over(t.Lies)
	if len(tucks) == 0 {
		return ""
	}
	text := fmt.Sprintf("%s wide, the %s lies over %s", say(t.LineLength.Unit.Chosen(t.Width)), t.Kind, wording.Listed(tucks, "and"))
	other := source.LiesOn
	if t.Lies == source.LiesOn {
		other = source.LiesBeyond
	}
	if inside := func(c Course) bool { return !c.isEdge() }; slices.ContainsFunc(t.Courses, inside) && len(over(other)) == 0 {
		text += fmt.Sprintf("; lies = %q lays it on the other side of its line, clear of them", other)
	}
	return text
}

// trim works out a trim.
func (j joiner) trim(s source.TrimSpec) Trim {
	t := Trim{
		SewnOn: j.sewnOn(s.Key, s.Place, s.Along), Kind: s.Kind.V, Lies: s.Lies.V, Width: s.Width.V, Fullness: s.Fullness.Or(1),
		JoinTakes: j.Unit.Chosen(2 * usualJoining(j.Unit)), Gathered: length.Amount{Unit: j.Unit}, Total: length.Amount{Unit: j.Unit},
	}
	if s.JoinTakes.Given() {
		t.JoinTakes = j.Unit.AtLeast(s.JoinTakes.V)
	}
	t.Reach = j.trimReach(t, t.Courses)
	strands, joins := j.asGiven(t.Courses, s.Joins)
	for _, one := range strands {
		l := TrimLength{Strand: one, Gathered: one.Line.By(t.Fullness), Joins: joins}
		l.Total = j.Unit.Sum(l.Gathered, j.trimReach(t, one.Courses).Takes(), t.JoinTakes.Times(joins))
		t.Lengths = append(t.Lengths, l)
		t.Joins += one.Times * joins
		t.Gathered = t.Gathered.Plus(l.Gathered.Times(one.Times))
		t.Total = t.Total.Plus(l.Total.Times(one.Times))
	}
	return t
}

// trimReach is how a trim goes round the corners and curves of some of its courses.
func (j joiner) trimReach(t Trim, courses []Course) Reach {
	side := 1.0 // the sign of a turn round which the trim is on the outside
	if t.Lies == source.LiesOn {
		side = -1
	}
	r := j.reach(courses, t.Width, t.Fullness, side)
	if t.Kind == source.Cord {
		r = r.atCorners()
	}
	return r
}
