package ink

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file: what all that is written as SVG keeps while it is drawn: where things
// fall on the page, in mm, y still up, what pen and ink are taken up, and what is laid out.

// svgDrawing is what is drawn of a page so far, but for what is written of it.
type svgDrawing struct {
	put    func(element string)           // takes what is no line of a piece
	pathOf func(svgShape, float64) string // writes a shape, on a page of a height
	prefix string                         // of all ids that are made here
	size   plane.Point                    // of the page, in mm
	clips  []plane.Box                    // on the page, that hide part of something
	origin plane.Point                    // where (0, 0) falls on the page, in mm
	scale  float64                        // mm on the page to a mm drawn
	now    svgState
	saved  []svgState
	shape  svgShape // what is laid out
}

// svgState is what Save keeps and Restore brings back.
type svgState struct {
	pen   Pen
	phase float64 // of its dashes, in mm
	ink   Colour
	clip  plane.Box // on the page
	shift plane.Point
}

// begin begins a page of a size in mm.
func (s *svgDrawing) begin(size plane.Point) {
	s.size = size
	everywhere := plane.Point{X: math.Inf(1), Y: math.Inf(1)}
	s.now = svgState{clip: plane.Box{Min: everywhere.Mul(-1), Max: everywhere}}
	s.Place(plane.Point{}, 1)
}

// clipNumber is the place of the clip there is among those that hide part of something.
func (s *svgDrawing) clipNumber() int {
	n := slices.Index(s.clips, s.now.clip)
	if n < 0 {
		n, s.clips = len(s.clips), append(s.clips, s.now.clip)
	}
	return n
}

// Place says where (0, 0) of what is drawn from now on falls on the page, in mm, and how many
// mm on the page a mm drawn is.
func (s *svgDrawing) Place(origin plane.Point, scale float64) { s.origin, s.scale = origin, scale }

// Save keeps pen, ink, clip and shift.
func (s *svgDrawing) Save() { s.saved = append(s.saved, s.now) }

// Restore brings back what was saved last.
func (s *svgDrawing) Restore() {
	s.now, s.saved = s.saved[len(s.saved)-1], s.saved[:len(s.saved)-1]
}

// Shift moves all that follows, in mm on the page.
func (s *svgDrawing) Shift(to plane.Point) { s.now.shift = s.now.shift.Add(to) }

// Clip lets what follows show in a box alone, and in the clip there is.
func (s *svgDrawing) Clip(b plane.Box) {
	c := &s.now.clip
	low, high := s.at(b.Min), s.at(b.Max)
	c.Min = plane.Point{X: max(c.Min.X, low.X), Y: max(c.Min.Y, low.Y)}
	c.Max = plane.Point{X: min(c.Max.X, high.X), Y: min(c.Max.Y, high.Y)}
}

// Pen takes up a pen, whose dashes begin with the line.
func (s *svgDrawing) Pen(p Pen) { s.now.pen, s.now.phase = p, 0 }

// Dashes takes the dashes of a pen from some mm into them.
func (s *svgDrawing) Dashes(_ Pen, phase float64) { s.now.phase = phase }

// Ink takes what is filled with.
func (s *svgDrawing) Ink(c Colour) { s.now.ink = c }

// at is the place on the page, y up, of a place that is drawn.
func (s *svgDrawing) at(p plane.Point) plane.Point {
	return p.Mul(s.scale).Add(s.origin).Add(s.now.shift)
}

// Path lays out a line; one that comes back to its beginning is closed.
func (s *svgDrawing) Path(p plane.Path) {
	on := make(plane.Path, len(p))
	for i, q := range p {
		on[i] = s.at(q)
	}
	s.shape.paths = append(s.shape.paths, on)
}

// Box lays out a rectangle.
func (s *svgDrawing) Box(b plane.Box) { s.Path(b.Outline()) }

// Circle lays out a circle.
func (s *svgDrawing) Circle(centre plane.Point, radius float64) {
	s.shape.rings = append(s.shape.rings, svgRing{s.at(centre), radius * s.scale})
}

// takeShape takes what is laid out.
func (s *svgDrawing) takeShape() svgShape {
	shape := s.shape
	s.shape = svgShape{}
	return shape
}

// Fill fills what is laid out.
func (s *svgDrawing) Fill() { s.fill() }

// Between fills what lies between two boxes, one in the other.
func (s *svgDrawing) Between(outer, inner plane.Box) {
	s.Box(outer)
	s.Box(inner)
	s.fill("fill-rule", "evenodd")
}

// fill fills what is laid out, with more attributes.
func (s *svgDrawing) fill(more ...string) {
	shape := s.takeShape()
	s.put(svgElement("path", "d", s.pathOf(shape, s.size.Y), "fill", s.now.ink.svg()) + svgAttributes(more...) + s.clipped(shape.bounds()) + "/>")
}

// clipped is the attribute that clips what has some bounds on the page; "" where all shows.
func (s *svgDrawing) clipped(bounds plane.Box) string {
	clip := s.now.clip
	if bounds.Empty() || clip.Holds(bounds.Min) && clip.Holds(bounds.Max) {
		return ""
	}
	n := s.clipNumber()
	return fmt.Sprintf(` clip-path="url(#%s)"`, s.clipID(n))
}

// clipID is the id of a clip.
func (s *svgDrawing) clipID(n int) string { return s.prefix + "clip-" + strconv.Itoa(n+1) }

// clipPaths are the clips that hide part of something, each in a line.
func (s *svgDrawing) clipPaths() string {
	var all strings.Builder
	for i, c := range s.clips {
		box := svgShape{paths: []plane.Path{c.Outline()}}
		fmt.Fprintf(&all, "%s>%s/></clipPath>\n", svgElement("clipPath", "id", s.clipID(i)), svgElement("path", "d", s.pathOf(box, s.size.Y)))
	}
	return all.String()
}
