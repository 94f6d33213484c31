package sample

import (
	"fmt"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// TuckSample is a strip to be sewn and measured before anything is marked: ten
// tucks 1/2 in apart, between two lines that lie 6 in apart.
func TuckSample() mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x * Inch, Y: y * Inch} }
	m := Ruled("sample", "Tuck sample", 6.5*Inch, 3*Inch, "cut 1 along the cutting line", "Sunday pinafore")
	add := func(role mark.Role, name string, x float64) {
		m.Marks = append(m.Marks, Edge(role, name, p(x, 0), p(x, 3)))
	}
	add(mark.Placement, "measure from here", 0.25)
	add(mark.Placement, "to here", 6.25)
	for i := range 10 {
		x := 1 + 0.5*float64(i)
		add(mark.TuckFold, fmt.Sprintf("tuck %d", i+1), x)
		add(mark.TuckStitch, "", x-0.125)
		add(mark.TuckStitch, "", x+0.125)
	}
	m.Steps = []string{
		"Cut a strip of the cloth that the garment is made of, along the cutting line, with the grain as the garment has it.",
		"Rule every line of the strip on it. Measure between the two placement lines: it must be 6 in.",
		"Fold on each tuck fold and stitch on the stitching beside it, with the needle, the thread and the stitch length that the garment will have.",
		"Press all tucks to one side, as they will lie.",
		"Measure between the two placement lines again, to 1/16 in, and write it down.",
		"Do the sum. What one tuck takes up is written into the file in place of what was reckoned.",
	}
	m.Form = &mark.Form{
		Blanks: []string{"needle", "thread", "stitch length", "tension", "needle position", "date and cloth"},
		Sum: []string{
			"flat, between the two lines: 6 in",
			"sewn, between the same lines: ____",
			"(flat less sewn) over 10 tucks: ( 6 in - ____ ) / 10 = ____ for each tuck",
		},
	}
	return m
}

// LongNotes are as long as notes become.
func LongNotes() []string {
	return []string{
		"20 tucks of 1/8 in, with 1/20 in between one and the next",
		"lay the upper edge of the sheet on the raw edge of the cloth",
		"the piece is cut after the tucks are sewn and well pressed",
		"stitch from the level end line up, and the next one down",
		"takes up 5 in across: 11 in of cloth become 6 in of tucks",
		"press from the wrong side, over a folded towel, and let dry",
	}
}

// TuckSheet is a plain rectangle full of lines 1/8 in apart, of a height in inches.
func TuckSheet(height float64, notes ...string) mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x * Inch, Y: y * Inch} }
	m := Ruled("tucks", "Tuck sheet", 7*Inch, height*Inch, notes...)
	const end = 0.5
	for i := range 20 {
		x := 0.5 + 0.3*float64(i)
		for k, role := range []mark.Role{mark.TuckStitch, mark.TuckFold, mark.TuckStitch} {
			at := x + 0.125*float64(k)
			m.Marks = append(m.Marks, Edge(role, "", p(at, end), p(at, height-0.5)))
		}
	}
	m.Marks = append(m.Marks, Edge(mark.TuckEnd, "tucks end here", p(0.5, end), p(6.5, end)))
	return m
}

// TuckRuler is a thin strip full of ticks.
func TuckRuler(notes ...string) mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x * Inch, Y: y * Inch} }
	m := Ruled("ruler", "Tuck ruler", 6*Inch, 1.25*Inch, notes...)
	for i := 1; i < 48; i++ {
		length := 0.25
		if i%8 == 0 {
			length = 0.5
		}
		x := float64(i) / 8
		m.Marks = append(m.Marks, Edge(mark.TuckFold, "", p(x, 1.25), p(x, 1.25-length)))
	}
	return m
}
