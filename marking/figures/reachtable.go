package figures

import (
	"fmt"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
)

// Rules of this file: what is added for the outer edge of a trim or a ruffle stands in rows
// of its own, and lines say what it is for and how it is put in. Of what gathers give, and
// of a hollow that has too much, there are lines alone, for nothing is added.

// addBends adds the rows of the corners and curves for which something is added, and of
// corners for which nothing is known.
func addBends(t *mark.Table, r garment.Reach, w writer) {
	for _, c := range r.Corners {
		name := "square corner of " + c.Piece
		if !c.Square() {
			name = fmt.Sprintf("corner of %s, turning %.0f degrees", c.Piece, c.Turn)
		}
		addTimes(t, name, c.Takes, c.Times, w)
	}
	for _, c := range r.Curves {
		if c.Takes.Steps > 0 {
			addTimes(t, fmt.Sprintf("curve of %s, turning %.0f degrees", c.Piece, c.Turn), c.Takes, c.Times, w)
		}
	}
}

// sayReach says how what is added goes in: at a corner and along a curve as the words go that
// are given, and what of it gathers give.
func sayReach(lines *mark.Lines, r garment.Reach, corner, curve string, w writer) {
	if garment.Taken(r.Corners).Steps > 0 {
		lines.Say("what is added at a corner is %s", corner)
	}
	added, given := garment.Taken(r.Curves).Steps > 0, r.Given()
	if added {
		lines.Say("what is added round a curve is %s, or the outer edge cups", curve)
	}
	switch {
	case given.Steps == 0:
	case added:
		lines.Say("another %s of what the outer edge needs round curves comes out of its fullness", w.length(given))
	default:
		lines.Say("round curves the outer edge needs %s more, which its fullness gives", w.length(given))
	}
}
