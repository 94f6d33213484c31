package drawing

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: the basic shapes are drawn as SVG 2 has it in chapter 10, each from the
// place and the way round that are given there.

// strokesOf draws a path or a basic shape, in the units of its view; at most so many legs.
func strokesOf(e *element, in view, most int) ([]stroke, error) {
	if _, own := e.style["d"]; own {
		return nil, &fault.Fault{Cause: "its d stands in a style", Hint: saveHint}
	}
	switch e.name {
	case "path":
		return readPath(e.attrs["d"], most)
	case "polyline", "polygon":
		return polyline(e, most)
	}
	r := &reader{e: e, in: in}
	switch e.name {
	case "line":
		a, d := plane.Point{X: r.across("x1"), Y: r.up("y1")}, plane.Point{X: r.across("x2"), Y: r.up("y2")}
		return []stroke{{legs: []leg{straight(a, d)}}}, r.err
	case "rect":
		return rectangle(r)
	case "circle":
		radius := r.size("r", r.in.diagonal())
		return round(r, radius, radius)
	}
	rx, ry := r.radii()
	return round(r, rx, ry)
}

// diagonal is what shares are taken of that run neither across nor up.
func (v view) diagonal() float64 {
	if v.width < 0 || v.height < 0 {
		return -1
	}
	return math.Hypot(v.width, v.height) / math.Sqrt2
}

// reader reads the lengths of a shape; of the mistakes the first counts.
type reader struct {
	e   *element
	in  view
	err error
}

func (r *reader) length(name string, whole float64) float64 {
	text := r.e.property(name)
	if text == "" || text == "auto" {
		return 0
	}
	n, err := readLength(text, whole)
	if err != nil && r.err == nil {
		f := fault.At(fault.Place{}, err)
		f.Cause = name + ": " + f.Cause
		r.err = f
	}
	return n
}

func (r *reader) across(name string) float64 { return r.length(name, r.in.width) }

func (r *reader) up(name string) float64 { return r.length(name, r.in.height) }

// size reads what cannot be below 0.
func (r *reader) size(name string, whole float64) float64 {
	n := r.length(name, whole)
	if n < 0 && r.err == nil {
		r.err = &fault.Fault{Cause: fmt.Sprintf("%s: %s is below 0", name, wording.Quoted(r.e.property(name))), Hint: saveHint}
	}
	return n
}

// radii reads both radii; one that is not given is as the other.
func (r *reader) radii() (rx, ry float64) {
	given := func(name string) bool { v := r.e.property(name); return v != "" && v != "auto" }
	rx, ry = r.size("rx", r.in.width), r.size("ry", r.in.height)
	switch {
	case !given("rx"):
		rx = ry
	case !given("ry"):
		ry = rx
	}
	return rx, ry
}

// round draws a circle or an ellipse. Without a radius it is not drawn.
func round(r *reader, rx, ry float64) ([]stroke, error) {
	centre := plane.Point{X: r.across("cx"), Y: r.up("cy")}
	if rx == 0 || ry == 0 || r.err != nil {
		return nil, r.err
	}
	return []stroke{ellipse(centre, rx, ry)}, nil
}

// rectangle draws a rectangle, its corners round where it has radii, from behind the corner at
// the left of its top. Without a width or a height it is not drawn.
func rectangle(r *reader) ([]stroke, error) {
	x, y := r.across("x"), r.up("y")
	w, h := r.size("width", r.in.width), r.size("height", r.in.height)
	rx, ry := r.radii()
	if w == 0 || h == 0 || r.err != nil {
		return nil, r.err
	}
	rx, ry = min(rx, w/2), min(ry, h/2)
	if rx == 0 || ry == 0 {
		rx, ry = 0, 0
	}
	var legs []leg
	side := func(ax, ay, dx, dy float64) {
		if a, d := (plane.Point{X: ax, Y: ay}), (plane.Point{X: dx, Y: dy}); a != d {
			legs = append(legs, straight(a, d))
		}
	}
	corner := func(toX, toY float64) {
		if from, to := legs[len(legs)-1].d, (plane.Point{X: toX, Y: toY}); rx > 0 {
			legs = append(legs, arc(from, to, rx, ry, 0, shorterArc, risingAngles)...)
		}
	}
	if rx == w/2 { // no straight part on top to begin with
		legs = []leg{straight(plane.Point{X: x + rx, Y: y}, plane.Point{X: x + rx, Y: y})}
	}
	side(x+rx, y, x+w-rx, y)
	corner(x+w, y+ry)
	side(x+w, y+ry, x+w, y+h-ry)
	corner(x+w-rx, y+h)
	side(x+w-rx, y+h, x+rx, y+h)
	corner(x, y+h-ry)
	side(x, y+h-ry, x, y+ry)
	corner(x+rx, y)
	return []stroke{{legs, true}}, nil
}

// polyline draws straight lines from point to point, and back to the first one of a polygon.
func polyline(e *element, most int) ([]stroke, error) {
	n, err := numbers(e.attrs["points"])
	if err == nil && len(n)%2 == 1 {
		err = &fault.Fault{Cause: "the last point has one number"}
	}
	if err != nil {
		return nil, &fault.Fault{Cause: "its points: " + fault.At(fault.Place{}, err).Cause, Hint: saveHint}
	}
	if len(n)/2 > most {
		return nil, tooMuch()
	}
	var legs []leg
	for i := 2; i < len(n); i += 2 {
		legs = append(legs, straight(plane.Point{X: n[i-2], Y: n[i-1]}, plane.Point{X: n[i], Y: n[i+1]}))
	}
	if len(legs) == 0 {
		return nil, nil
	}
	return []stroke{{legs, e.name == "polygon"}}, nil
}
