package sheet

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A mirrored sheet lies on the wrong side of the cloth: all its
// lines are mirrored, from left to right, and what is written on it is not. Of two
// pieces that are left and right, the sheet as it is drawn is the mirrored one of
// the other.

// fromBehind returns the marking as it looks from behind, in the same place. Lines
// that have a direction keep it.
func fromBehind(m mark.Marking) mark.Marking {
	middle := m.Outline.Bounds().Centre()
	over := func(p plane.Path) plane.Path { return p.Mirrored(middle, plane.Point{X: 1}) }
	m.Outline = over(m.Outline)
	marks := make([]mark.Mark, len(m.Marks))
	for i, line := range m.Marks {
		marks[i] = mark.Mark{Role: line.Role, Name: line.Name, Path: piece.Directed(line.Role, over(line.Path))}
	}
	m.Marks = marks
	placed := func(q plane.Point) plane.Point { return plane.Path{q}.Mirrored(middle, plane.Point{X: 1})[0] }
	m.Words, m.Dimensions = slices.Clone(m.Words), slices.Clone(m.Dimensions)
	for i, w := range m.Words {
		m.Words[i] = w.Placed(placed)
	}
	for i, d := range m.Dimensions {
		m.Dimensions[i] = d.Placed(placed)
	}
	return m
}

// asPair returns a marking as it is drawn, and turned over.
func asPair(m mark.Marking) []mark.Marking {
	other := fromBehind(m)
	m.Name += ": as drawn"
	other.Key += " turned over"
	other.Name += ": turned over"
	return []mark.Marking{m, other.With("the mirror image of the piece as it is drawn: one of them is for the left, the other for the right")}
}

// overTracingPaper is how a mirrored sheet is used.
const overTracingPaper = "over tracing paper, and follow the lines with a wheel"

// forWrongSide returns the sheets of a marking for the wrong side of the cloth: one, or,
// of a piece that is cut for left and right, one for each.
func forWrongSide(p *piece.Piece, m mark.Marking) []mark.Marking {
	const sides = "; what is at the left here is at the right on the right side"
	m.Side = mark.WrongSideUp
	first, second := fromBehind(m), m
	first.Key += " mirrored"
	if !p.Pair && (p.OnFold || p.Times() < 2) {
		first.Name += ": mirrored"
		return []mark.Marking{first.With("lay it on the wrong side of the cloth, " + overTracingPaper + sides)}
	}
	first.Name += ": mirrored 1 of 2"
	second.Key += " mirrored, other"
	second.Name += ": mirrored 2 of 2"
	return []mark.Marking{
		first.With("for the one that lies, right side up, as the piece is drawn: lay it on the wrong side, " + overTracingPaper + sides),
		second.With("for the other one, its mirror image: lay it on the wrong side, " + overTracingPaper + ". One of the two is for the left, the other for the right"),
	}
}

// otherHalf is the note that a sheet has which is turned over; none where there is
// another for the other half, or where it has both.
func otherHalf(p *piece.Piece) []string {
	if turn := p.TurnOver(); turn != "" && !p.Pair && !(p.OnFold && p.Whole) {
		return []string{turn}
	}
	return nil
}
