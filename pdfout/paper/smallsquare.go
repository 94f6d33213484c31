package paper

import "tuckmark/marking/length"

// Rules of this file: a small check square has a side that a ruler of the file's unit reads
// without counting: its inch, or the longer tick at 25 mm. The two are so nearly as large
// as each other that the strip of a page is as high for both, and a garment takes the same
// pages in either unit.

// CheckSquare is a frame to be measured.
type CheckSquare struct {
	Name string  // what it is to measure: "1 in"
	Side float64 // in mm
}

// SmallSquare is the check square on every page of a sheet, for who measures in a unit.
func SmallSquare(unit length.Unit) CheckSquare {
	if unit == length.Inch {
		return CheckSquare{"1 in", 25.4}
	}
	return CheckSquare{"25 mm", 25}
}
