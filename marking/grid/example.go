package grid

import (
	"fmt"
	"strconv"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: the example is half a small bodice front, on the fold. The drawing and the
// lines of the file come of the same points.

// edge is an edge of the example.
type edge struct {
	name   string
	points []plane.Point // in whole inches or tens of millimetres, in the order in which they are read
	smooth bool
	start  plane.Point // in which it sets out, where it begins square to the fold; else zero
	out    plane.Point // the side on which its name stands
}

// fold is the edge of the example that lies on the fold.
const fold = "centre front"

// example are the edges of the piece, from its lower left corner up the fold and round.
func example(unit length.Unit) []edge {
	in := unit == length.Inch
	at := func(x, y, tensX, tensY float64) plane.Point {
		if in {
			return plane.Point{X: x, Y: y}
		}
		return plane.Point{X: tensX, Y: tensY}
	}
	centre, neck, shoulder := at(0, 3.5, 0, 8.9), at(1.25, 4.5, 3.2, 11.4), at(2.375, 4.125, 6, 10.5)
	underarm, waist := at(3.25, 2.25, 8.3, 5.7), at(3.375, 0, 8.6, 0)
	up, right, left, down := plane.Point{Y: 1}, plane.Point{X: 1}, plane.Point{X: -1}, plane.Point{Y: -1}
	return []edge{
		{name: fold, points: []plane.Point{{}, centre}, out: right},
		{name: "neck", points: []plane.Point{centre, at(0.75, 3.75, 1.9, 9.5), neck}, smooth: true, start: right, out: right.Add(down)},
		{name: "shoulder", points: []plane.Point{neck, shoulder}, out: down},
		{name: "armhole", points: []plane.Point{shoulder, at(2.25, 3.25, 5.7, 8.2), at(2.625, 2.5, 6.7, 6.4), underarm}, smooth: true, out: left},
		{name: "side", points: []plane.Point{underarm, waist}, out: left},
		{name: "waist", points: []plane.Point{waist, {}}, out: up},
	}
}

// path is the edge as it is drawn, in mm.
func (e edge) path(unit length.Unit) plane.Path {
	var p plane.Path
	for _, q := range e.points {
		p = append(p, q.Mul(step(unit)))
	}
	if e.smooth {
		return plane.Curve(p, e.start, plane.Point{})
	}
	return p
}

// Listing is the example as it is typed into a file, line by line; each edge with the numbers of
// its points behind it.
func Listing(unit length.Unit) []string {
	lines := []string{
		fmt.Sprintf("unit = %q", unit),
		"allowance = " + typed(unit.Either(9.525, 10), unit),
		"[piece.front]",
		fmt.Sprintf("fold = %q", fold),
	}
	first := 1
	edges := example(unit)
	for i, e := range edges {
		name := e.name
		if strings.Contains(name, " ") {
			name = strconv.Quote(name)
		}
		last := first + len(e.points) - 1
		numbers := make([]string, 0, len(e.points))
		for n := first; n <= last; n++ {
			if n == last && i == len(edges)-1 {
				n = 1
				last = 1
			}
			numbers = append(numbers, strconv.Itoa(n))
		}
		first = last
		lines = append(lines, fmt.Sprintf("[piece.front.edge.%s]   # %s", name, strings.Join(numbers, ", ")))
		lines = append(lines, pointLines(e.points, unit)...)
		if e.smooth {
			lines = append(lines, "smooth = true")
		}
	}
	return lines
}

// pairsOfLine is how many points stand on a line of the listing.
const pairsOfLine = 2

// pointLines are the points of an edge as they are typed.
func pointLines(points []plane.Point, unit length.Unit) []string {
	var pairs, lines []string
	for _, q := range points {
		q = q.Mul(step(unit))
		pairs = append(pairs, fmt.Sprintf("[%s, %s]", typed(q.X, unit), typed(q.Y, unit)))
	}
	for i := 0; i < len(pairs); i += pairsOfLine {
		line := strings.Join(pairs[i:min(i+pairsOfLine, len(pairs))], ", ")
		if i == 0 {
			line = "points = [" + line
		} else {
			line = "    " + line
		}
		if i+pairsOfLine < len(pairs) {
			line += ","
		} else {
			line += "]"
		}
		lines = append(lines, line)
	}
	return lines
}

// typed is a length as it is typed: in quotes where it is no plain number.
func typed(mm float64, unit length.Unit) string {
	words := length.Bare(unit.AsWritten(mm))
	if strings.Contains(words, "/") {
		return strconv.Quote(words)
	}
	return words
}

// draw adds the example to a marking, with the names of its edges and the numbers of its points.
func draw(m *mark.Marking, unit length.Unit) {
	n := 1
	for _, e := range example(unit) {
		role := mark.Cut
		if e.name == fold {
			role = mark.FoldEdge
		}
		path := e.path(unit)
		m.Add(role, "", path)
		middle, _ := path.At(path.Length() / 2)
		m.Words = append(m.Words, mark.Word{Role: role, Text: e.name, At: middle, Out: e.out})
		points := make(plane.Path, len(e.points))
		for i, q := range e.points {
			points[i] = q.Mul(step(unit))
		}
		m.Add(mark.Prick, "", points)
		for i, at := range points[:len(points)-1] {
			m.Words = append(m.Words, mark.Word{Role: mark.Prick, Text: strconv.Itoa(n), Calls: true, At: at, Out: beside(e.points[i])})
			n++
		}
	}
}

// beside is the side of a point on which its number stands: outside of the piece, where the
// drawing goes on there.
func beside(q plane.Point) plane.Point {
	switch {
	case q.Y == 0:
		return plane.Point{X: 1, Y: 1}
	case q.X == 0:
		return plane.Point{X: 1, Y: 2}
	}
	return q.Sub(plane.Point{X: q.X / 2, Y: q.Y * 2 / 3})
}
