package sheet

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A cross on a line of the tuck sheet is laid on the same one of the
// cutting sheet. A line has one near either end. Each has a letter, the same on both sheets,
// from A on: first that nearer the top of the block.

const (
	crossAway = 25.4     // of a cross from the end of its line, in mm: clear of a seam
	crossArm  = 25.4 / 4 // of a cross, in mm
)

// cross is one cross of a piece that is cut from a block.
type cross struct {
	letter    string
	at, along plane.Point // along its line, up
	line      string      // that it stands on: "centre front"
	// onBlock tells that the block has it too.
	onBlock bool
}

// crossesOf returns the crosses of a piece that is cut from a block; none on a line that is
// too short for two.
func crossesOf(p *piece.Piece) []cross {
	b := p.Block
	reach := tuckPaperOf(b).below
	var all []cross
	for _, line := range layingLines(p) {
		long := line.path.Length()
		if long < 4*crossAway {
			continue
		}
		first, _ := line.path.At(crossAway)
		last, _ := line.path.At(long - crossAway)
		if b.Up*(b.V(last)-b.V(first)) > 0 {
			first, last = last, first
		}
		_, along := line.path.At(0)
		if b.Up*along.Dot(b.Along) < 0 {
			along = along.Mul(-1)
		}
		for _, at := range []plane.Point{first, last} {
			v := b.V(at)
			all = append(all, cross{letterOf(len(all)), at, along, line.name, line.centre && b.Group.OnAxis && v > reach.From && v < reach.To})
		}
	}
	return all
}

// letterOf returns the letter of a cross: A, B, and so on; behind Z, AA.
func letterOf(i int) string {
	if i < 26 {
		return string(rune('A' + i))
	}
	return letterOf(i/26-1) + letterOf(i%26)
}

// addCross adds a cross with its letter, which stands on that side of its line.
func addCross(m *mark.Marking, c cross, out plane.Point) {
	for _, arm := range []plane.Point{c.along.Mul(crossArm), c.along.Left().Mul(crossArm)} {
		m.Add(mark.Cross, "", plane.Path{c.at.Sub(arm), c.at.Add(arm)})
	}
	m.Words = append(m.Words, mark.Word{Role: mark.Cross, Text: c.letter, At: c.at.Add(c.along.Mul(crossArm / 2)), Out: out})
}
