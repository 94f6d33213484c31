package sheet

import (
	"unicode/utf8"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A sheet of flat cloth has the edges of its piece by their keys. It is
// made of half a piece, which ends at the edge on the fold, and opened out where the whole
// is printed.

// edgeMarks returns the edges of a piece, as an outline of flat cloth has them.
func edgeMarks(p *piece.Piece, outline piece.Ring) []mark.Mark {
	var marks []mark.Mark
	for _, run := range outline.Runs() {
		one := mark.Mark{Role: mark.Cut, Name: p.Edges[run.Edge].Key, Key: p.Edges[run.Edge].Key, Path: run.Path}
		switch {
		case !p.Edges[run.Edge].OnFold:
		case p.LiesFolded():
			one.Role = mark.FoldEdge
			one.Name += ": place on the fold"
		default:
			one.Role = mark.Centre
		}
		marks = append(marks, one)
	}
	return marks
}

// openedOut returns a marking, whose outline of half a piece is given, as it is printed.
func openedOut(p *piece.Piece, m mark.Marking, half piece.Ring) mark.Marking {
	for _, run := range half.Runs() {
		if p.Edges[run.Edge].OnFold {
			return p.Printed(m, run.Path[0], piece.Inward(run.Path))
		}
	}
	return m
}

// leastPerLetter is about how much of a line, in mm, a letter of its name takes, with what is
// free at both ends.
const leastPerLetter = 1.3

// addGrain adds the grain line of a piece whose file draws none, where there is room. One
// that was guessed says so, or the notes say it where the line is too short for its name; and
// where there is no line they say how it runs.
func addGrain(m *mark.Marking, p *piece.Piece) {
	grain := p.Flat.Grain
	if grain.Drawn {
		return // it is among the marks
	}
	g := piece.PlaceGrain(plane.NewTree(m.Outline), grain.Direction, m.Marks, p.InAllowance())
	name := ""
	switch {
	case g == nil:
		m.Notes = append(m.Notes, noRoomForGrain(p))
		return
	case grain.Guess != "":
		name = "grain (taken " + grain.Guess + ")"
		if g.Length() < leastPerLetter*float64(utf8.RuneCountInString(name)) {
			name, m.Notes = "", append(m.Notes, "grain taken "+grain.Guess)
		}
	}
	m.Marks = append(m.Marks, mark.Mark{Role: mark.Grain, Name: name, Key: piece.GrainKey, Path: g})
}

// noRoomForGrain says how the grain runs of a piece that has no room for a line.
func noRoomForGrain(p *piece.Piece) string {
	switch grain := p.Flat.Grain; {
	case grain.Guess != "":
		return "grain taken " + grain.Guess + "; there is no room for its line"
	case grain.Along != "":
		return "the grain runs along " + grain.Along + "; there is no room for its line"
	case !p.LiesFolded():
		return "the grain runs along the centre; there is no room for its line"
	}
	return "the grain runs along the fold; there is no room for its line"
}

// cutAllRound adds the sides of the outline, which are cut along.
func cutAllRound(m *mark.Marking) {
	for i := 1; i < len(m.Outline); i++ {
		m.Add(mark.Cut, "", plane.Path{m.Outline[i-1], m.Outline[i]})
	}
}
