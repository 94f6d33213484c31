package report

import (
	"fmt"
	"math"

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
