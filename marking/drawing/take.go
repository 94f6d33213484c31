package drawing

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: the outline of a piece is one closed line, divided at its corners, or
// its edges are lines of their own, each with the edge's name as its id. The edges of a closed
// line are counted clockwise, as the piece lies in the drawing, from the corner that is nearest
// the lower left: so nobody needs to know how it was drawn.

// Ask is what a piece takes of a drawing.
type Ask struct {
	Part   string      // the id of what has the outline in it; "" for the whole drawing
	Piece  string      // the key of the piece, which may stand before a name: front.neck
	Edges  []string    // the names of its edges
	Lines  []string    // the names of other lines it takes
	Corner float64     // how many degrees make a corner
	Unit   length.Unit // in which messages give places
}

// Taken is what a piece took, in the order it was asked for. All of it is measured from the
// lower left corner of the outline.
type Taken struct{ Edges, Lines []plane.Path }

// Take finds what a piece asks for. The fault has no place where it is not the drawing's own.
func (d *Drawing) Take(a Ask) (Taken, *fault.Fault) {
	shapes, f := d.part(a.Part)
	if f != nil {
		return Taken{}, f
	}
	lines, f := a.named(shapes, a.Lines)
	if f != nil {
		return Taken{}, f
	}
	var edges []plane.Path
	if slices.ContainsFunc(a.Edges, func(name string) bool { return len(a.all(shapes, name)) > 0 }) {
		edges, f = a.named(shapes, a.Edges)
	} else {
		var ids []string
		for _, name := range a.Lines {
			ids = append(ids, a.idsFor(name)...)
		}
		shapes = slices.DeleteFunc(slices.Clone(shapes), func(s Shape) bool { return slices.Contains(ids, s.plain) })
		edges, f = a.divided(shapes)
	}
	if f != nil {
		return Taken{}, f
	}
	box := plane.EmptyBox()
	for _, e := range edges {
		box = box.Union(e.Bounds())
	}
	home := box.Min.Mul(-1)
	for _, all := range [][]plane.Path{edges, lines} {
		for i := range all {
			all[i] = meant(all[i].Moved(home))
		}
	}
	return Taken{edges, lines}, nil
}

// tracing bounds, in mm, how far a straight line that was traced in short steps may stray from
// the one through its ends: its points by 0.1 mm, its ends as well, and these by half a step
// more, for a corner is seldom one of the points. It is less than 1/32 in.
const tracing = 0.7

// meant returns a line that was traced in short steps along a straight one as that: cloth
// folds along no other. Any other line is as it was drawn.
func meant(p plane.Path) plane.Path {
	if float64(len(p)) < p.Length()*fewSteps/sturdy {
		return p
	}
	if straight := p.WithoutRoughness(tracing); len(straight) == 2 {
		return straight
	}
	return p
}

// own is the fault of a shape, at its place.
func (s Shape) own(cause, hint string) *fault.Fault {
	return &fault.Fault{Place: s.Place, Cause: cause, Hint: hint}
}

// part returns the shapes of a part; "" is the whole drawing.
func (d *Drawing) part(id string) ([]Shape, *fault.Fault) {
	shapes := d.Shapes
	if id != "" {
		shapes = d.Under(id)
	}
	if len(shapes) > 0 {
		return shapes, nil
	}
	at := fault.Place{File: d.File}
	e := d.other[id]
	switch {
	case id == "":
		return nil, &fault.Fault{Place: at, Cause: "nothing is drawn in it", Hint: "draw the outline of the piece as a path"}
	case e == nil:
		var known []string
		for name := range d.other {
			known = append(known, name)
		}
		slices.Sort(known)
		hint := "give the outline this id in the drawing program"
		if near := wording.Nearest(id, known); near != "" {
			hint = wording.DidYouMean(near)
		} else if len(known) > 0 {
			hint = "known there are " + wording.Listed(wording.QuotedFew(known), "and")
		}
		return nil, &fault.Fault{Place: at, Cause: "nothing has the id " + wording.Quoted(id), Hint: hint}
	}
	at = at.On(e.line)
	at.Key = e.called()
	switch e.name {
	case "text", "tspan", "image", "foreignObject":
		return nil, &fault.Fault{Place: at, Cause: "it has no line in it", Hint: "draw the outline of the piece as a path"}
	}
	return nil, &fault.Fault{Place: at, Cause: "no line of it is drawn", Hint: "is it hidden, or kept in defs to be used elsewhere?"}
}

// plain is a name as an id and a name in the file are compared: an id has no spaces.
func plain(name string) string {
	return strings.ToLower(strings.Map(func(c rune) rune {
		if c == '-' || c == '_' {
			return ' '
		}
		return c
	}, name))
}

// idsFor are the ids that stand for a name, as plain writes them.
func (a Ask) idsFor(name string) []string {
	name = plain(name)
	return []string{name, plain(a.Part) + "." + name, plain(a.Piece) + "." + name}
}

// all returns the shapes that have a name.
func (a Ask) all(shapes []Shape, name string) []Shape {
	var all []Shape
	ids := a.idsFor(name)
	for _, s := range shapes {
		if s.ID != "" && slices.Contains(ids, s.plain) {
			all = append(all, s)
		}
	}
	return all
}

// named returns the lines that have these names, each one line.
func (a Ask) named(shapes []Shape, names []string) ([]plane.Path, *fault.Fault) {
	var paths []plane.Path
	var missing []string
	for _, name := range names {
		switch all := a.all(shapes, name); {
		case len(all) == 0:
			missing = append(missing, name)
		case len(all) > 1:
			return nil, all[1].own(fmt.Sprintf("another line has the name %s, in line %d", wording.Quoted(name), all[0].Place.Line), "give each line an id of its own")
		default:
			paths = append(paths, all[0].Path)
		}
	}
	if len(missing) == 0 {
		return paths, nil
	}
	var ids []string
	for _, s := range shapes {
		if s.ID != "" && !slices.Contains(ids, s.ID) {
			ids = append(ids, s.ID)
		}
	}
	return nil, &fault.Fault{
		Cause: fmt.Sprintf("no line of the drawing has the name %s", wording.Listed(wording.QuotedFew(missing), "or")),
		Hint:  fmt.Sprintf("the ids of its lines are %s; a - or _ in an id stands for a space", wording.Listed(wording.QuotedFew(ids), "and")),
	}
}

// divided returns the edges of the one outline among these shapes.
func (a Ask) divided(shapes []Shape) ([]plane.Path, *fault.Fault) {
	outline, f := a.outline(shapes)
	if f != nil {
		return nil, f
	}
	corners := outline.ordered(a.Corner)
	if len(corners) != len(a.Edges) || len(corners) < 2 {
		return nil, a.misfit(outline, corners)
	}
	var edges []plane.Path
	for i, c := range corners {
		edges = append(edges, outline.between(c.At, corners[(i+1)%len(corners)].At))
	}
	return edges, nil
}

// outline returns the one closed line; of several, that whose own id is the part.
func (a Ask) outline(shapes []Shape) (Shape, *fault.Fault) {
	var closed, own []Shape
	for _, s := range shapes {
		if s.Path.Closed() {
			closed = append(closed, s)
			if s.ID == a.Part && a.Part != "" {
				own = append(own, s)
			}
		}
	}
	if len(own) == 1 {
		closed = own
	}
	switch {
	case len(closed) == 1:
		return closed[0], nil
	case len(closed) > 1:
		var names []string
		for _, s := range closed {
			names = append(names, fmt.Sprintf("%s in line %d", s.Place.Key, s.Place.Line))
		}
		return Shape{}, &fault.Fault{
			Cause: fmt.Sprintf("there are %d outlines: %s", len(closed), wording.Listed(wording.Few(names), "and")),
			Hint:  "name the id of one: part = \"...\"",
		}
	}
	longest := slices.MaxFunc(shapes, func(a, b Shape) int { return cmp.Compare(a.length(), b.length()) })
	ends := longest.Path[len(longest.Path)-1].Distance(longest.Path[0])
	return Shape{}, longest.own(
		fmt.Sprintf("the outline is open: its ends are %s apart", a.Unit.OnRuler(ends)),
		"close it in the drawing program, or give each edge a line of its own, with the name of the edge as its id")
}

// ordered returns the corners clockwise, from the one that is nearest the lower left.
func (s Shape) ordered(degrees float64) []Corner {
	corners := s.Corners(degrees)
	if len(corners) == 0 {
		return nil
	}
	if s.Path.Area() > 0 {
		slices.Reverse(corners)
	}
	corner := s.Path.Bounds().Min
	first := 0
	for i, c := range corners {
		away, best := c.Place.Distance(corner), corners[first].Place.Distance(corner)
		if away < best-leastStep || away < best+leastStep && c.Place.Y < corners[first].Place.Y {
			first = i
		}
	}
	return append(slices.Clone(corners[first:]), corners[:first]...)
}

// between returns the part of an outline from one of its points to another, clockwise.
func (s Shape) between(from, to int) plane.Path {
	ring, n := s.Path, len(s.Path)-1
	step := 1
	if ring.Area() > 0 {
		step = n - 1
	}
	part := plane.Path{ring[from]}
	for i := (from + step) % n; i != to; i = (i + step) % n {
		part = append(part, ring[i])
	}
	return append(part, ring[to])
}
