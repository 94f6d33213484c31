package sample

import (
	"fmt"
	"math"
	"math/rand/v2"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Edge is a mark of the outline or near it.
func Edge(role mark.Role, name string, points ...plane.Point) mark.Mark {
	return mark.Mark{Role: role, Name: name, Path: points}
}

// Quarter is a quarter of an ellipse round a centre, from an angle in degrees
// on, counter-clockwise or (negative turn) clockwise.
func Quarter(centre plane.Point, rx, ry, from, turn float64, steps int) plane.Path {
	var p plane.Path
	for i := range steps + 1 {
		a := (from + turn*float64(i)/float64(steps)) * math.Pi / 180
		p = append(p, centre.Add(plane.Point{X: rx * math.Cos(a), Y: ry * math.Sin(a)}))
	}
	return p
}

// OutlineOf chains the outline edges of a piece.
func OutlineOf(marks []mark.Mark) plane.Path {
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

// Rectangle is a piece of a width and height, with a seam line round.
func Rectangle(key, name string, w, h float64, notes ...string) mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	m := mark.Marking{Key: key, Name: name, Notes: notes, Outline: plane.Path{p(0, 0), p(w, 0), p(w, h), p(0, h), p(0, 0)}}
	m.Marks = []mark.Mark{
		Edge(mark.Cut, "lower edge", p(0, 0), p(w, 0)),
		Edge(mark.Cut, "", p(w, 0), p(w, h)),
		Edge(mark.Cut, "upper edge", p(w, h), p(0, h)),
		Edge(mark.Cut, "", p(0, h), p(0, 0)),
		Edge(mark.Stitch, "seam", p(6, 6), p(w-6, 6), p(w-6, h-6), p(6, h-6), p(6, 6)),
	}
	return m
}

// Ruled is a rectangle of nothing but its outline.
func Ruled(key, name string, w, h float64, notes ...string) mark.Marking {
	m := Rectangle(key, name, w, h, notes...)
	m.Marks = m.Marks[:4]
	for i := range m.Marks {
		m.Marks[i].Name = ""
	}
	return m
}

// Sail is a square piece of nothing but its outline.
func Sail(side float64) mark.Marking {
	m := Rectangle("sail", "Sail", side, side)
	m.Marks = m.Marks[:4]
	return m
}

// Tiny is a piece 3 mm wide.
func Tiny(key string, h float64) mark.Marking {
	m := Rectangle(key, "Inlay "+key, 3, h, "cut 12")
	m.Marks = m.Marks[:4]
	return m
}

// Wave is a piece whose outline has many points: w by h mm with wavy sides.
func Wave(key string, w, h float64, points int) mark.Marking {
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

// Flared is a large piece with slanting sides: a skirt panel.
func Flared(key string, top, bottom, h float64) mark.Marking {
	in := (bottom - top) / 2
	p := plane.Path{{}, {X: bottom}, {X: bottom - in, Y: h}, {X: in, Y: h}, {}}
	m := mark.Marking{Key: key, Name: "Panel " + key, Notes: []string{"cut 2"}, Outline: p}
	for i := 1; i < len(p); i++ {
		m.Marks = append(m.Marks, Edge(mark.Cut, "", p[i-1], p[i]))
	}
	return m
}

// Strip is a narrow piece: stitch lines at an allowance, run out to the cutting
// lines, and a grain line along its middle.
func Strip(key, name string, w, h, allowance float64, label string, notes ...string) mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	m := mark.Marking{Key: key, Name: name, Notes: notes, Outline: plane.Path{p(0, 0), p(w, 0), p(w, h), p(0, h), p(0, 0)}}
	a := allowance
	m.Marks = []mark.Mark{
		Edge(mark.Cut, "lower", p(0, 0), p(w, 0)),
		Edge(mark.Cut, "right", p(w, 0), p(w, h)),
		Edge(mark.Cut, "upper", p(w, h), p(0, h)),
		Edge(mark.Cut, "left", p(0, h), p(0, 0)),
		Edge(mark.Stitch, label, p(0, a), p(w, a)),
		Edge(mark.Stitch, label, p(w-a, 0), p(w-a, h)),
		Edge(mark.Stitch, label, p(w, h-a), p(0, h-a)),
		Edge(mark.Stitch, label, p(a, h), p(a, 0)),
	}
	if w > h {
		m.Marks = append(m.Marks, Edge(mark.Grain, "", p(w/4, h/2), p(w*3/4, h/2)))
	} else {
		m.Marks = append(m.Marks, Edge(mark.Grain, "", p(w/2, h/4), p(w/2, h*3/4)))
	}
	return m
}

// NarrowPieces are a tie, a tab, a neck strip and a strip that nothing can be
// written into.
func NarrowPieces() []mark.Marking {
	notes := []string{"cut 2"}
	return []mark.Marking{
		Strip("tie", "Tie", 30*Inch, Inch, 0.375*Inch, "stitch line, 3/8 in", notes...),
		Strip("tab", "Tab", 2*Inch, Inch, 0.25*Inch, "stitch line, 1/4 in", append(notes, "turn the end to a point")...),
		Strip("neck", "Neck strip", 1.25*Inch, 8*Inch, 0.25*Inch, "stitch line, 1/4 in", notes...),
		Strip("piping", "Piping", 8, 240, 3, "stitch line, 3 mm", notes...),
	}
}

// Bodice is a child's bodice front: half of it on the fold, neck and armhole
// curved, six tucks, a pleat at the underarm.
func Bodice() mark.Marking {
	p := func(x, y float64) plane.Point { return plane.Point{X: x * Inch, Y: y * Inch} }
	// From the shoulder down to the centre: clockwise round the opening.
	neck := Quarter(p(0, 12.4), 2.25*Inch, 2.6*Inch, 0, -90, 40)
	hole := Quarter(p(6.25, 11.2), 1.5*Inch, 3.7*Inch, 270, -80, 40)
	outline := []mark.Mark{
		Edge(mark.Cut, "hem", p(0, 0), p(6.5, 0)),
		Edge(mark.Cut, "side", p(6.5, 0), p(6.25, 7.5)),
		Edge(mark.Cut, "armhole", hole...),
		Edge(mark.Cut, "shoulder", hole[len(hole)-1], neck[0]),
		Edge(mark.Cut, "neck", neck...),
		Edge(mark.FoldEdge, "centre front, place on the fold", neck[len(neck)-1], p(0, 0)),
	}
	m := mark.Marking{
		Key: "front", Name: "Front",
		Notes:   []string{"cut 1 on the fold"},
		Outline: OutlineOf(outline), Marks: outline,
	}
	add := func(role mark.Role, name string, points ...plane.Point) {
		m.Marks = append(m.Marks, Edge(role, name, points...))
	}
	add(mark.Stitch, "neck", neck.Moved(p(0, -0.375))...)
	add(mark.Stitch, "armhole", hole[:len(hole)-4].Moved(p(-0.375, 0))...)
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
	add(mark.Waste, "", p(2, 4), p(4, 4), p(4, 4.1), p(2, 4.1), p(2, 4))
	add(mark.DrawHere, "", p(3, 3.8), p(3, 4))
	add(mark.Laid, "", p(2, 3.3), p(2.1, 3.4))
	for i, role := range []mark.Role{mark.RuledFine, mark.RuledHalf, mark.RuledWhole} {
		y := 3.2 - 0.1*float64(i)
		add(role, "", p(2, y), p(2.3, y))
	}
	return m
}

// Skirt is a skirt panel of 460 by 640 mm: a hem fold and three tucks across it.
func Skirt() mark.Marking {
	m := Rectangle("skirt", "Skirt panel", 460, 640, "18 months", "cut 2", "gathered at the upper edge to 11 1/2 in")
	p := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	m.Marks = append(m.Marks,
		Edge(mark.Fold, "hem fold", p(0, 60), p(460, 60)),
		Edge(mark.Centre, "centre", p(230, 0), p(230, 640)),
		Edge(mark.Grain, "grain", p(150, 200), p(150, 420)),
	)
	for i := range 3 {
		y := 100 + 25*float64(i)
		m.Marks = append(m.Marks,
			Edge(mark.TuckStitch, "", p(0, y-8), p(460, y-8)),
			Edge(mark.TuckFold, fmt.Sprintf("tuck %d", i+1), p(0, y), p(460, y)),
			Edge(mark.TuckStitch, "", p(0, y+8), p(460, y+8)))
	}
	return m
}

// MixedPieces are 50: some larger than a page, the others of all sizes that fit
// one.
func MixedPieces() []mark.Marking {
	r := rand.New(rand.NewPCG(7, 7))
	var all []mark.Marking
	for i := range 50 {
		key := fmt.Sprint(i)
		switch {
		case i%5 == 0:
			top := 100 + 200*r.Float64()
			all = append(all, Flared(key, top, top+200*r.Float64(), 300+300*r.Float64()))
		case i%5 == 1:
			all = append(all, Wave(key, 60+100*r.Float64(), 60+120*r.Float64(), 2000))
		default:
			all = append(all, Rectangle(key, "Piece "+key, 20+120*r.Float64(), 20+100*r.Float64(), "cut 2"))
		}
	}
	return all
}
