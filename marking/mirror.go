package marking

import "tuckmark/marking/plane"

// Rules of this file. A mirrored sheet lies on the wrong side of the cloth: all its
// lines are mirrored, from left to right, and what is written on it is not. Of two
// pieces that are left and right, the sheet as it is drawn is the mirrored one of
// the other.

// fromBehind returns the marking as it looks from behind, in the same place. Lines
// that have a direction keep it.
func fromBehind(m Marking) Marking {
	middle := m.Outline.Bounds().Centre()
	over := func(p plane.Path) plane.Path { return p.Mirrored(middle, plane.Point{X: 1}) }
	m.Outline = over(m.Outline)
	marks := make([]Mark, len(m.Marks))
	for i, mark := range m.Marks {
		marks[i] = Mark{mark.Role, mark.Name, directed(mark.Role, over(mark.Path))}
	}
	m.Marks = marks
	return m
}

// asPair returns a marking as it is drawn, and turned over.
func asPair(m Marking) []Marking {
	other := fromBehind(m)
	m.Name += ": as drawn"
	other.Key += " turned over"
	other.Name += ": turned over"
	other.Notes = append(other.Notes[:len(other.Notes):len(other.Notes)],
		"the mirror image of the piece as it is drawn: one of them is for the left, the other for the right")
	return []Marking{m, other}
}

// forWrongSide returns the sheets of a marking for the wrong side of the cloth: one,
// or one for each of two pieces that are left and right.
func forWrongSide(m Marking, pair bool) []Marking {
	first := fromBehind(m)
	first.Key += " mirrored"
	first.Name += ": mirrored"
	note := func(m *Marking, text string) { m.Notes = append(m.Notes[:len(m.Notes):len(m.Notes)], text) }
	const use = "over tracing paper, and follow the lines with a wheel"
	if !pair {
		note(&first, "lay it on the wrong side of the cloth, "+use+"; what is at the left here is at the right on the right side")
		return []Marking{first}
	}
	first.Name += " 1 of 2"
	second := m
	second.Key += " mirrored, other"
	second.Name += ": mirrored 2 of 2"
	note(&first, "for the one that lies, right side up, as the piece is drawn: lay it on the wrong side, "+use+"; what is at the left here is at the right on the right side")
	note(&second, "for the other one, its mirror image: lay it on the wrong side, "+use+". One of the two is for the left, the other for the right")
	return []Marking{first, second}
}

// turnOver says when what is made for the piece as it is drawn is turned over; "" for
// never.
func (p *Piece) turnOver() string {
	switch {
	case p.OnFold:
		return "turn it over for the other half"
	case p.Cut/p.Layers > 1:
		return "where one is for the left and one for the right, turn it over for the second"
	}
	return ""
}

// otherHalf is the note that a sheet has which is turned over; none where there is
// another for the other half, or where it has both.
func (p *Piece) otherHalf() []string {
	if turn := p.turnOver(); turn != "" && !p.Pair && !(p.OnFold && p.Whole) {
		return []string{turn}
	}
	return nil
}
