package grid

import (
	"fmt"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: what is said beside the grid is what a maker does, in its order, and true
// of every piece.

// guide is the page that shows how a piece is read off.
func guide(unit length.Unit) mark.Marking {
	size := Size{unit.Either(4*25.4, 100), unit.Either(5*25.4, 130)}
	m := mark.Marking{
		Key: guideKey, Kind: mark.Grid, Name: "How a piece is read off",
		Notes:   []string{"half a small front, on the fold, as it lies on the grid, and what is typed for it"},
		Outline: plane.Box{Max: plane.Point{X: size.Wide, Y: size.High}}.Outline(),
		Form:    &mark.Form{Listing: Listing(unit)},
	}
	rule(&m, size, unit)
	draw(&m, unit)
	m.Steps = []string{
		"Lay the pattern flat on the joined grid, its grain along a line that runs up; a piece for the fold with the fold on line 0. Let it lie as far down and to the left as it goes, and weigh it down.",
		"Prick with a pin through each corner, and through a curve about every " + curveStep(unit) + ", more often where it bends. Or print the grid on tracing paper, lay it over and mark the points.",
		"Lift the pattern and number the points, from the lower left corner up and all the way round.",
		"Read each point, first across, then up, and write it on the next page, which says how finely.",
		"Give every edge a name, and its points in their order; a corner stands in both its edges.",
		"Under the points of a curve write smooth = true. Straight edges need their two corners and no more.",
		"Read the cut edge: the outline has seam allowances and hems in it, and allowance says how wide they are. Of a pattern without them read the stitch line, and write drawn-to = \"stitching\" in the piece.",
		"Make the sheets and lay the pattern on them. Where one is off, count the points from the corner and mend the nearest.",
	}
	return m
}

// finest says how finely corners and curves are read. Where points of a curve lie close, an
// eighth of an inch is so much of the way between them that the curve is wavy.
func finest(unit length.Unit) string {
	if unit == length.Inch {
		return "Read corners to 1/8 in, curves to 1/16 in, between the lines: points of a curve closer than 3/4 in make it wavy if they are read to 1/8 in."
	}
	return "Read corners to 1 mm, curves to half of one, between the lines: points of a curve closer than " + unit.AsWritten(20) + " make it wavy if they are read to 1 mm."
}

// Called is what the line key calls the lines of a grid.
func Called(unit length.Unit) map[mark.Role]string {
	if unit == length.Inch {
		return map[mark.Role]string{mark.RuledWhole: "whole inch", mark.RuledHalf: "1/2 in", mark.RuledFine: "1/8 in"}
	}
	return map[mark.Role]string{mark.RuledWhole: unit.AsWritten(10), mark.RuledHalf: "5 mm", mark.RuledFine: "1 mm"}
}

// curveStep is how far apart points of a curve are read, in words.
func curveStep(unit length.Unit) string {
	if unit == length.Inch {
		return "inch"
	}
	return unit.AsWritten(25)
}

// begin says how a file is begun.
const begin = "Begin the file with tuckmark start bodice.toml --pieces front,back. Put your points in place of its own, and take out the hem, turn and notch that your pattern has not."

// table is the page that points are written on.
func table(unit length.Unit) mark.Marking {
	return mark.Marking{
		Key: tableKey, Kind: mark.Grid, Name: "Points of a piece",
		Notes: []string{"print this page once for each piece", "where two edges share a corner, it stands in both"},
		Steps: []string{finest(unit), begin},
		Form: &mark.Form{
			Blanks:  []string{"name of the piece", fmt.Sprintf("unit of the file (of the grid: %s)", unit)},
			Columns: []string{"edge", "point", "across", "up"},
		},
	}
}

// Work is what is done with a grid, in order.
func Work() []mark.Task {
	return []mark.Task{
		{Do: "See how a piece is read off", Keys: []string{guideKey}},
		{Do: "Lay the pattern on the grid and prick its points", Keys: []string{sheetKey}},
		{Do: "Write down where each of them lies", Keys: []string{tableKey}},
		{Do: "Type them into the file, make the sheets, and lay the pattern on them"},
	}
}
