package sheet

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. Every set of tucks that is pressed to one side has an arrow that
// points there: below its ends, clear of the numbers; beside its last tuck where it runs
// from edge to edge. It touches no line: where none of the places that are tried is free,
// there is none, and the notes alone say it.

const (
	pressArrow = 16.0 // how long it is, in mm
	pressClear = 3.0  // of a line, at least, in mm: its word stands on the one side of it
	pressTries = 6    // places tried, one row of words apart
)

// press adds the arrow of a set whose fold lines and words are drawn: across them, from the
// base outward or, toward it, inward. The words at its ends reach words mm beyond them.
func (w foldWords) press(c creased, words float64) {
	lines := c.lines
	if len(lines) == 0 {
		return
	}
	tuck := c.Folds[0]
	var places []plane.Point // at which the end of the arrow nearer the base may lie
	first, last := lines[0], lines[len(lines)-1]
	foot := endsOf(first)[1]
	if tuck.End.Given {
		deepest := 0.0
		for _, line := range lines {
			deepest = max(deepest, line[len(line)-1].Sub(foot.at).Dot(foot.out))
		}
		across := last[len(last)-1].Sub(foot.at).Dot(w.out)
		for k := range pressTries {
			down := deepest + words + float64(k)*wordRow + pressClear
			places = append(places, foot.at.Add(w.out.Mul(max(-tuck.Width, (across-pressArrow)/2))).Add(foot.out.Mul(down)))
		}
	}
	for _, share := range []float64{0.4, 0.25, 0.6, 0.75} {
		places = append(places, last[0].Toward(last[len(last)-1], share).Add(w.out.Mul(tuck.Width+pressClear)))
	}
	for _, from := range places {
		arrow := plane.Path{from, from.Add(w.out.Mul(pressArrow))}
		if !w.isFree(arrow, foot.out) {
			continue
		}
		middle := from.Toward(arrow[1], 0.5)
		if tuck.Toward {
			arrow = arrow.Reversed()
		}
		w.m.Add(mark.Arrow, "", arrow)
		w.m.Words = append(w.m.Words, mark.Word{Role: mark.Arrow, Text: "press", At: middle, Out: foot.out})
		return
	}
}

// isFree reports whether an arrow, with its word below it, lies on the sheet and touches no
// line.
func (w foldWords) isFree(arrow plane.Path, down plane.Point) bool {
	over, under := down.Mul(-pressClear/2), down.Mul(wordRow+pressClear/2)
	beyond := w.out.Mul(pressClear / 2)
	from, to := arrow[0].Sub(beyond), arrow[1].Add(beyond)
	room := plane.Path{from.Add(over), to.Add(over), to.Add(under), from.Add(under), from.Add(over)}
	box, sheet := plane.NewTree(room), plane.NewTree(w.m.Outline)
	for _, corner := range room {
		if !sheet.Holds(corner) {
			return false
		}
	}
	near := box.Bounds().Grown(piece.Rounding)
	for _, line := range w.m.Marks {
		if !line.Path.Bounds().Meets(near) { // most lines are far off
			continue
		}
		if box.Holds(line.Path[0]) || len(plane.Crossings(box, plane.NewTree(line.Path))) > 0 {
			return false
		}
	}
	return true
}
