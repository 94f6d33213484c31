package mark

import "tuckmark/marking/plane"

// Rules of this file: what is written in a drawing, and belongs to a place of it. It is
// never turned over with the lines: it must be read.

// Word is a short text at a place of a marking, such as the number of a tuck at its end.
type Word struct {
	Role Role // of the line that it belongs to
	Text string
	// Calls is set for the number that a line is called by, which is no measure.
	Calls bool
	At    plane.Point
	// Out, of length 1, is the side of the place on which the text stands.
	Out plane.Point
	// Head makes it the head of a row of other words, beside the last of which it stands;
	// nil for most.
	Head *Head
}

// Head is where the head of a row of words stands: beside the last of them, where the row lies
// level, and over it, where the words stand in a column.
type Head struct {
	Last  string      // the last word of the row, which has the place of the head
	Along plane.Point // of length 1, the side of that place on which this word stands
	Wide  float64     // in mm, about how wide its lines are over a column
}

// Dimension is a distance that is told in words: from one place to another, in mm.
type Dimension struct {
	From, To plane.Point
	Text     string // "hem fold: 2 1/4 in from the cut edge, hem 2 in and turn 1/4 in"
}

// Placed returns the word with its place and its side brought where a map of the plane
// brings them, which keeps lengths.
func (w Word) Placed(to func(plane.Point) plane.Point) Word {
	at := to(w.At)
	w.Out = to(w.At.Add(w.Out)).Sub(at)
	if w.Head != nil {
		w.Head = &Head{w.Head.Last, to(w.At.Add(w.Head.Along)).Sub(at), w.Head.Wide}
	}
	w.At = at
	return w
}

// Placed returns the dimension between the places to which a map brings its ends.
func (d Dimension) Placed(to func(plane.Point) plane.Point) Dimension {
	d.From, d.To = to(d.From), to(d.To)
	return d
}
