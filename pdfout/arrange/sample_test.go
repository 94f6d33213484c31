package arrange

import (
	"fmt"
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// The pieces of these tests are drawn here by hand, in mm: shapes as a child's
// clothes have them, with every role on some piece.

const inch = 25.4

// edge is a mark of the outline or near it.
func edge(role mark.Role, name string, points ...plane.Point) mark.Mark {
	return mark.Mark{Role: role, Name: name, Path: points}
}

// quarter is a quarter of an ellipse round a centre, from an angle in degrees
// on, counter-clockwise or (negative turn) clockwise.
func quarter(centre plane.Point, rx, ry, from, turn float64, steps int) plane.Path {
	var p plane.Path
	for i := range steps + 1 {
		a := (from + turn*float64(i)/float64(steps)) * math.Pi / 180
		p = append(p, centre.Add(plane.Point{X: rx * math.Cos(a), Y: ry * math.Sin(a)}))
	}
	return p
}

// outlineOf chains the outline edges of a piece.
func outlineOf(marks []mark.Mark) plane.Path {
	var p plane.Path
	for _, m := range marks {
		for _, q := range m.Path {
			if len(p) == 0 || p[len(p)-1] != q {
				p = append(p, q)
			}
		}
	}
	return p
}

// shrunk is a path moved inward by d, as a rough stitch line.
func shrunk(p plane.Path, step plane.Point) plane.Path {
	q := make(plane.Path, len(p))
	for i := range p {
		q[i] = p[i].Add(step)
	}
	return q
}

// bodice is a child's bodice front: half of it on the fold, neck and armhole
// curved, six tucks, a pleat at the underarm.
func bodice() mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x * inch, Y: y * inch} }
	// From the shoulder down to the centre: clockwise round the opening.
	neck := quarter(p(0, 12.4), 2.25*inch, 2.6*inch, 0, -90, 40)
	hole := quarter(p(6.25, 11.2), 1.5*inch, 3.7*inch, 270, -80, 40)
	outline := []mark.Mark{
		edge(mark.Cut, "hem", p(0, 0), p(6.5, 0)),
		edge(mark.Cut, "side", p(6.5, 0), p(6.25, 7.5)),
		edge(mark.Cut, "armhole", hole...),
		edge(mark.Cut, "shoulder", hole[len(hole)-1], neck[0]),
		edge(mark.Cut, "neck", neck...),
		edge(mark.FoldEdge, "centre front, place on the fold", neck[len(neck)-1], p(0, 0)),
	}
	m := mark.Marking{
		Key: "front", Name: "Front",
		Notes:   []string{"Linden pinafore, 18 months", "cut 1 on the fold"},
		Outline: outlineOf(outline), Marks: outline,
	}
	add := func(role mark.Role, name string, points ...plane.Point) {
		m.Marks = append(m.Marks, edge(role, name, points...))
	}
	add(mark.Stitch, "neck", shrunk(neck, p(0, -0.375))...)
	add(mark.Stitch, "armhole", shrunk(hole[:len(hole)-4], p(-0.375, 0))...)
	add(mark.Stitch, "side", p(6.1, 0), p(5.87, 7.5))
	add(mark.Fold, "hem", p(0, 2.25), p(6.4, 2.25))
	add(mark.Fold, "turn", p(0, 0.25), p(6.48, 0.25))
	for i := range 6 {
		x := 0.375 * float64(i+1)
		add(mark.TuckFold, fmt.Sprintf("tuck %d", i+1), p(x, 6.5), p(x, 9))
		add(mark.TuckStitch, "", p(x-0.125, 6.5), p(x-0.125, 9))
		add(mark.TuckStitch, "", p(x+0.125, 6.5), p(x+0.125, 9))
	}
	add(mark.TuckEnd, "tucks end", p(0, 6.5), p(2.5, 6.5))
	add(mark.PleatFold, "pleat fold", p(5.3, 0), p(5.3, 6))
	add(mark.Placement, "placement", p(4.55, 0), p(4.55, 6))
	add(mark.Arrow, "", p(5.2, 5), p(4.65, 5))
	add(mark.Notch, "", p(6.15, 4), p(6.65, 4.02))
	add(mark.Centre, "bust line", p(0.1, 5.8), p(4.3, 5.8))
	add(mark.Grain, "grain", p(3.4, 3), p(3.4, 8))
	add(mark.BlockEdge, "torn edge", p(6.5, 0), p(6.5, 14))
	add(mark.Cross, "", p(0, 3.8), p(0.3, 4.1))
	add(mark.Cross, "", p(0, 4.1), p(0.3, 3.8))
	add(mark.Match, "", p(6, 0), p(6, 0.3))
	add(mark.Window, "", p(2, 4), p(4, 4), p(4, 4.1), p(2, 4.1), p(2, 4))
	return m
}

// rectangle is a piece of a width and height, with a seam line round.
func rectangle(key, name string, w, h float64, notes ...string) mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	m := mark.Marking{Key: key, Name: name, Notes: notes, Outline: plane.Path{p(0, 0), p(w, 0), p(w, h), p(0, h), p(0, 0)}}
	m.Marks = []mark.Mark{
		edge(mark.Cut, "lower edge", p(0, 0), p(w, 0)),
		edge(mark.Cut, "", p(w, 0), p(w, h)),
		edge(mark.Cut, "upper edge", p(w, h), p(0, h)),
		edge(mark.Cut, "", p(0, h), p(0, 0)),
		edge(mark.Stitch, "seam", p(6, 6), p(w-6, 6), p(w-6, h-6), p(6, h-6), p(6, 6)),
	}
	return m
}

// wave is a piece whose outline has many points: w by h mm with wavy sides.
func wave(key string, w, h float64, points int) mark.Marking {
	var path plane.Path
	per := points / 4
	side := func(a, b plane.Point, waves float64) {
		u := b.Sub(a)
		for i := range per {
			t := float64(i) / float64(per)
			path = append(path, a.Toward(b, t).Add(u.Unit().Left().Mul(8*math.Sin(2*math.Pi*waves*t))))
		}
	}
	side(plane.Point{}, plane.Point{X: w}, w/100)
	side(plane.Point{X: w}, plane.Point{X: w, Y: h}, h/100)
	side(plane.Point{X: w, Y: h}, plane.Point{Y: h}, w/100)
	side(plane.Point{Y: h}, plane.Point{}, h/100)
	path = append(path, path[0])
	return mark.Marking{Key: key, Name: "Wave " + key, Notes: []string{"cut 1"}, Outline: path,
		Marks: []mark.Mark{{Role: mark.Cut, Name: "scallops", Path: path}}}
}

func skirt() mark.Marking {
	m := rectangle("skirt", "Skirt panel", 460, 640, "18 months", "cut 2", "gathered at the upper edge to 11 1/2 in")
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	m.Marks = append(m.Marks,
		edge(mark.Fold, "hem fold", p(0, 60), p(460, 60)),
		edge(mark.Centre, "centre", p(230, 0), p(230, 640)),
		edge(mark.Grain, "grain", p(150, 200), p(150, 420)),
	)
	for i := range 3 {
		y := 100 + 25*float64(i)
		m.Marks = append(m.Marks,
			edge(mark.TuckStitch, "", p(0, y-8), p(460, y-8)),
			edge(mark.TuckFold, fmt.Sprintf("tuck %d", i+1), p(0, y), p(460, y)),
			edge(mark.TuckStitch, "", p(0, y+8), p(460, y+8)))
	}
	return m
}

func large() Set {
	return Set{Title: "Linden pinafore", Size: "18 months", Unit: length.Inch, Pieces: []mark.Marking{skirt(), bodice()}}
}

// strip is a narrow piece: stitch lines at an allowance, run out to the cutting
// lines, and a grain line along its middle.
func strip(key, name string, w, h, allowance float64, label string, notes ...string) mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	m := mark.Marking{Key: key, Name: name, Notes: notes, Outline: plane.Path{p(0, 0), p(w, 0), p(w, h), p(0, h), p(0, 0)}}
	a := allowance
	m.Marks = []mark.Mark{
		edge(mark.Cut, "lower", p(0, 0), p(w, 0)),
		edge(mark.Cut, "right", p(w, 0), p(w, h)),
		edge(mark.Cut, "upper", p(w, h), p(0, h)),
		edge(mark.Cut, "left", p(0, h), p(0, 0)),
		edge(mark.Stitch, label, p(0, a), p(w, a)),
		edge(mark.Stitch, label, p(w-a, 0), p(w-a, h)),
		edge(mark.Stitch, label, p(w, h-a), p(0, h-a)),
		edge(mark.Stitch, label, p(a, h), p(a, 0)),
	}
	if w > h {
		m.Marks = append(m.Marks, edge(mark.Grain, "", p(w/4, h/2), p(w*3/4, h/2)))
	} else {
		m.Marks = append(m.Marks, edge(mark.Grain, "", p(w/2, h/4), p(w/2, h*3/4)))
	}
	return m
}

// narrowPieces are a tie, a tab, a neck strip and a strip that nothing can be
// written into.
func narrowPieces() Set {
	notes := []string{"Linden pinafore", "size 18 months", "cut 2"}
	s := Set{Title: notes[0], Size: "18 months", Pieces: []mark.Marking{
		strip("tie", "Tie", 30*inch, inch, 0.375*inch, "stitch line, 3/8 in", notes...),
		strip("tab", "Tab", 2*inch, inch, 0.25*inch, "stitch line, 1/4 in", append(notes, "turn the end to a point")...),
		strip("neck", "Neck strip", 1.25*inch, 8*inch, 0.25*inch, "stitch line, 1/4 in", notes...),
		strip("piping", "Piping", 8, 240, 3, "stitch line, 3 mm", notes...),
	}}
	return s
}

// sampleSheet is a strip to be sewn and measured before anything is marked: ten
// tucks 1/2 in apart, between two lines that lie 6 in apart.
func sampleSheet() mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x * inch, Y: y * inch} }
	m := ruled("sample", "Tuck sample", 6.5*inch, 3*inch, "cut 1 along the cutting line", "Linden pinafore")
	add := func(role mark.Role, name string, x float64) {
		m.Marks = append(m.Marks, edge(role, name, p(x, 0), p(x, 3)))
	}
	add(mark.Placement, "measure from here", 0.25)
	add(mark.Placement, "to here", 6.25)
	for i := range 10 {
		x := 1 + 0.5*float64(i)
		add(mark.TuckFold, fmt.Sprintf("tuck %d", i+1), x)
		add(mark.TuckStitch, "", x-0.125)
		add(mark.TuckStitch, "", x+0.125)
	}
	m.Form = &mark.Form{
		Steps: []string{
			"Cut a strip of the cloth that the garment is made of, along the cutting line, with the grain as the garment has it.",
			"Rule every line of the strip on it. Measure between the two placement lines: it must be 6 in.",
			"Fold on each tuck fold and stitch on the stitching beside it, with the needle, the thread and the stitch length that the garment will have.",
			"Press all tucks to one side, as they will lie.",
			"Measure between the two placement lines again, to 1/16 in, and write it down.",
			"Do the sum. What one tuck takes up is written into the file in place of what was reckoned.",
		},
		Blanks: []string{"needle", "thread", "stitch length", "tension", "needle position", "date and cloth"},
		Sum: []string{
			"flat, between the two lines: 6 in",
			"sewn, between the same lines: ____",
			"(flat less sewn) over 10 tucks: ( 6 in - ____ ) / 10 = ____ for each tuck",
		},
	}
	return m
}

// ruled is a rectangle of nothing but its outline.
func ruled(key, name string, w, h float64, notes ...string) mark.Marking {
	m := rectangle(key, name, w, h, notes...)
	m.Marks = m.Marks[:4]
	for i := range m.Marks {
		m.Marks[i].Name = ""
	}
	return m
}
