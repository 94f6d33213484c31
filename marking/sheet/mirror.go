package sheet

import (
	"fmt"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A mirrored sheet lies on the wrong side of the cloth: all its
// lines are mirrored, from left to right, and what is written on it is not. Of two
// pieces that are left and right, the sheet as it is drawn is the mirrored one of
// the other. Which is worn at the left is said where the names of the piece's edges tell
// it; else only that they are two.

// fromBehind returns the marking as it looks from behind, turned over about x = 0 of its
// piece, so that what lies on each other in two views of a file does so from behind as well.
// Lines that have a direction keep it.
func fromBehind(m mark.Marking) mark.Marking {
	over := func(p plane.Path) plane.Path { return p.Mirrored(plane.Point{}, plane.Point{X: 1}) }
	m.Outline = over(m.Outline)
	marks := make([]mark.Mark, len(m.Marks))
	for i, line := range m.Marks {
		line.Path = piece.Directed(line.Role, over(line.Path))
		marks[i] = line
	}
	m.Marks = marks
	placed := func(q plane.Point) plane.Point { return q.Mirrored(plane.Point{}, plane.Point{X: 1}) }
	m.Words, m.Dimensions = slices.Clone(m.Words), slices.Clone(m.Dimensions)
	for i, w := range m.Words {
		m.Words[i] = w.Placed(placed)
	}
	for i, d := range m.Dimensions {
		m.Dimensions[i] = d.Placed(placed)
	}
	return m
}

// ofPair returns the words for one of two sheets that are left and right, which are printed
// large and pale across it, and what it is for: as it is worn, where that is known, else by
// the words given.
func ofPair(worn piece.Worn, unknown string) (pale, what string) {
	switch worn {
	case piece.WornLeft:
		return "LEFT", "for the left, as it is worn"
	case piece.WornRight:
		return "RIGHT", "for the right, as it is worn"
	}
	return unknown, "one of two: one is for the left, the other for the right"
}

// labelled returns the marking with pale words, and with one more note.
func labelled(m mark.Marking, note string, pale ...string) mark.Marking {
	m.Pale = slices.Concat(m.Pale, pale)
	m.Notes = append(slices.Clone(m.Notes), note)
	return m
}

// bothOf returns two sheets as those of a pair: half of the pieces are cut by each, of an odd
// number the one more by the first; both have words printed pale across them.
func bothOf(p *piece.Piece, one, other mark.Marking, pale ...string) []mark.Marking {
	if one.Cut != "" && !p.OnFold { // of one on the fold each has a half
		one.Cut, other.Cut = fmt.Sprintf("cut %d", p.Cut-p.Cut/2), fmt.Sprintf("cut %d", p.Cut/2)
	}
	first, what := ofPair(p.Worn(), "ONE SIDE")
	second, otherWhat := ofPair(p.Worn().Other(), "OTHER SIDE")
	return []mark.Marking{
		labelled(one, what, slices.Concat([]string{first}, pale)...),
		labelled(other, otherWhat, slices.Concat([]string{second}, pale)...),
	}
}

// asPair returns a marking as it is drawn, and turned over: both for the right side of the
// cloth.
func asPair(p *piece.Piece, m mark.Marking) []mark.Marking {
	other := fromBehind(m)
	m.Name += ": as drawn"
	other.Key += " turned over"
	other.Name += ": turned over"
	return bothOf(p, m, other)
}

// forWrongSide returns the sheets of a marking for the wrong side of the cloth: one, or,
// of a piece that is cut for left and right, one for each.
func forWrongSide(p *piece.Piece, m mark.Marking) []mark.Marking {
	const wrongSide = "WRONG SIDE UP"
	m.Side = mark.WrongSideUp
	m = m.With(wheeled(p)...)
	m.Notes = append(slices.Clone(m.Notes), "drawn as seen from the wrong side of the cloth")
	first, second := fromBehind(m), m
	first.Key += " mirrored"
	if !p.Pair && (p.OnFold || p.Times() < 2) {
		first.Name += ": mirrored"
		first.Pale = []string{wrongSide}
		return []mark.Marking{first}
	}
	first.Name += ": mirrored 1 of 2"
	second.Key += " mirrored, other"
	second.Name += ": mirrored 2 of 2"
	return bothOf(p, first, second, wrongSide)
}

// wheeled says how the lines of a mirrored sheet come onto the cloth. Turned over it has none to be
// followed, so one of half a piece marks both halves at once, on cloth that is folded between two
// sheets of tracing paper (common practice).
func wheeled(p *piece.Piece) []string {
	if !isOfHalf(p) {
		return []string{"lay it on the wrong side of the cloth, over tracing paper", "follow the lines with a wheel"}
	}
	fold := p.Edges[p.EdgeOnFold()].Key
	return []string{
		"fold the cloth at " + fold + ", right side in, and lay it between two sheets of tracing paper, their colour to the cloth",
		"lay this sheet on them, " + fold + " on the fold of the cloth",
		"follow the lines with a wheel, through both layers: that marks the other half too",
	}
}

// isOfHalf reports whether the sheet for the flat cloth has one half of the piece, and no other
// sheet has the second. That of a block whose tucks run across the fold has both.
func isOfHalf(p *piece.Piece) bool {
	return p.OnFold && !p.Whole && !p.Pair && (p.Block == nil || p.Block.Group.OnAxis)
}

// otherHalf is the note that a sheet has which is turned over; none where there is
// another for the other half, or where it has both.
func otherHalf(p *piece.Piece) []string {
	if turn := p.TurnOver(); turn != "" && !p.Pair && !(p.OnFold && p.Whole) {
		return []string{turn}
	}
	return nil
}
