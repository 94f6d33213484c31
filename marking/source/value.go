package source

import (
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
)

// Value is one thing that a file says, or may leave out: then it is the zero value.
type Value[T any] struct {
	V     T
	Place fault.Place
	given bool
}

// Given returns a value that comes from no file.
func Given[T any](v T) Value[T] { return GivenAt(v, fault.Place{}) }

// GivenAt returns a value with the place that messages about it name.
func GivenAt[T any](v T, at fault.Place) Value[T] { return Value[T]{V: v, Place: at, given: true} }

// Given reports whether the value was given at all.
func (v Value[T]) Given() bool { return v.given }

// Or returns the value, or another one where it was not given.
func (v Value[T]) Or(otherwise T) T {
	if v.given {
		return v.V
	}
	return otherwise
}

// What most values of a file are.
type (
	Text    = Value[string]
	Length  = Value[float64]   // in mm
	Lengths = Value[[]float64] // in mm
	Factor  = Value[float64]   // how many times as long something is
	Count   = Value[int]
	Flag    = Value[bool] // yes or no, where it matters whether it was said
)

// Point is one place of the piece.
type Point = Value[plane.Point]

// Points are places of the piece, at least two.
type Points struct {
	Value[[]plane.Point]
	lines  []int           // the line of each point; nil where they come from no file
	others map[int][]Other // what points may be meant as, by their numbers
}

// Other is what a point may be meant as, if a space is missing in a fraction.
type Other struct {
	V  plane.Point
	By string // how it is to be written: `"3 7/8" for 37/8`
}

// Others returns what a point may be meant as, the first of which is 0; nil for most.
func (p Points) Others(i int) []Other { return p.others[i] }

// Through returns points in the place of these, whose own lines are not known.
func (p Points) Through(points []plane.Point) Points {
	other := Points{Value: p.Value, lines: slices.Repeat([]int{p.Place.Line}, len(points))}
	other.V = points
	return other
}

// On returns a place on the line on which a point stands, the first of which is 0, in the
// file in which that is; the line is 0 where it is not known.
func (p Points) On(at fault.Place, i int) fault.Place {
	if p.Place.File != "" {
		at.File = p.Place.File
	}
	if i >= len(p.lines) {
		return at.On(0)
	}
	return at.On(p.lines[i])
}
