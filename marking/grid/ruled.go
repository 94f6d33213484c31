package grid

import (
	"fmt"
	"math"
	"strconv"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: lines run up and across at every eighth of an inch, or every millimetre,
// over the whole of the grid; (0, 0) is its lower left corner. A whole line is named by its
// number, in the unit.

// Of is the ruled sheet of a size, with the pages beside it, in the order in which they are used.
func Of(size Size, unit length.Unit) []mark.Marking {
	return []mark.Marking{guide(unit), table(unit), sheet(size, unit)}
}

// Keys of the three.
const (
	guideKey = "how to read"
	tableKey = "points"
	sheetKey = "grid"
)

// sheet is the ruled sheet.
func sheet(size Size, unit length.Unit) mark.Marking {
	m := mark.Marking{
		Key: sheetKey, Kind: mark.Grid,
		Name:    fmt.Sprintf("Grid, %s across and %s up", unit.AsWritten(size.Wide), unit.AsWritten(size.High)),
		Outline: plane.Box{Max: plane.Point{X: size.Wide, Y: size.High}}.Outline(),
	}
	rule(&m, size, unit)
	return m
}

// rule adds the lines of a grid.
func rule(m *mark.Marking, size Size, unit length.Unit) {
	parts := int(unit.Either(8, 10)) // from one whole line to the next
	lines := func(reach float64, along func(at float64) plane.Path) {
		for i := range int(math.Round(reach/step(unit)))*parts + 1 {
			role, name := mark.RuledFine, ""
			switch {
			case i%parts == 0:
				role, name = mark.RuledWhole, number(i/parts, unit)
			case i%(parts/2) == 0:
				role = mark.RuledHalf
			}
			m.Add(role, name, along(float64(i)*step(unit)/float64(parts)))
		}
	}
	lines(size.Wide, func(x float64) plane.Path { return plane.Path{{X: x}, {X: x, Y: size.High}} })
	lines(size.High, func(y float64) plane.Path { return plane.Path{{Y: y}, {X: size.Wide, Y: y}} })
}

// number is that of a whole line, counted from 0.
func number(n int, unit length.Unit) string {
	if unit == length.Millimetre {
		n *= 10
	}
	return strconv.Itoa(n)
}
