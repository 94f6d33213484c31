package mark

import "tuckmark/marking/plane"

// Sketch is a small drawing that shows what the notes of a marking say, and is not laid on
// cloth. Its places are in mm on the paper, from its lower left corner, y up.
type Sketch struct {
	Width, Height float64
	Lines         []plane.Path
	Labels        []SketchLabel
}

// SketchLabel is a text of a sketch, set with its middle at a place.
type SketchLabel struct {
	Text string
	At   plane.Point
}
