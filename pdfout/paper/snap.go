package paper

import (
	"math"
)

// What the corners of check squares lie on.
const (
	// SquareGrid is what they are multiples of, in mm on the page.
	SquareGrid = 6 * Pt
	// onGrid bounds how far a place may be off the grid through rounding and
	// still count as on it, in steps of the grid.
	onGrid = 1e-6
)

// SnapUp brings a length on the page, in mm, up to a multiple of SquareGrid.
func SnapUp(mm float64) float64 { return math.Ceil(mm/SquareGrid-onGrid) * SquareGrid }

// SnapDown brings it down to one.
func SnapDown(mm float64) float64 { return math.Floor(mm/SquareGrid+onGrid) * SquareGrid }
