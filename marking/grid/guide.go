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
		"Read each point to " + finest(unit) + ": first across, along the lower edge, then up. Write it on the next page.",
		"Give every edge a name, and its points in their order. A corner belongs to both its edges: write it down in both, the same each time.",
		"Under the points of a curve write smooth = true. Straight edges need their two corners and no more.",
		"Read the cut edge: the outline has seam allowances and hems in it, and allowance says how wide they are. Of a pattern without them read the stitch line, and write drawn-to = \"stitching\" in the piece.",
		"Make the sheets, lay the pattern on them, and mend the points that are off.",
	}
	return m
}

// finest is the step that is read off the grid, in words.
func finest(unit length.Unit) string {
	if unit == length.Inch {
		return "1/8 in"
	}
	return "1 mm"
}

// curveStep is how far apart points of a curve are read, in words.
func curveStep(unit length.Unit) string {
	if unit == length.Inch {
		return "inch"
	}
	return unit.AsWritten(25)
}

// table is the page that points are written on.
func table(unit length.Unit) mark.Marking {
	return mark.Marking{
		Key: tableKey, Kind: mark.Grid, Name: "Points of a piece",
		Notes: []string{"print this page once for each piece", "where two edges share a corner, it stands in both"},
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
