package drawing

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: elements are drawn in the order in which they stand, a use in its place,
// each with what holds for all that stands in its groups. The first that is too much ends it.

// walker draws one element after the other.
type walker struct {
	drawing  *Drawing
	file     fault.Place
	ids      map[string]*element // of all elements; of two with one id, the first
	faults   fault.List
	told     map[string]bool
	elements int // that there are
	legs     int // that may still be drawn
	points   int
	visits   int
	full     bool // too much was there: nothing more is drawn
}

// surroundings are what holds for all that stands in an element.
type surroundings struct {
	to     matrix // mm, y up
	in     view
	within *scope
	uses   []*element
	hidden bool
}

// movesOrHides is what a style sheet may say of where things are, or whether.
var movesOrHides = wording.FormOf(`(?i)(?:^|[^-\w])(?:transform\s*:\s*[^n\s]|display\s*:\s*none|visibility\s*:\s*(?:hidden|collapse))`)

// learn notes the ids of an element and of all in it.
func (w *walker) learn(e *element) {
	w.elements++
	if id := e.id(); id != "" && w.ids[id] == nil {
		w.ids[id], w.drawing.other[id] = e, e
	}
	if e.name == "style" && movesOrHides().Match(e.text) {
		w.report(e, &fault.Fault{Cause: "a style sheet moves or hides parts of the drawing, which is not read", Hint: saveHint})
	}
	for _, inner := range e.within {
		w.learn(inner)
	}
}

// report notes what is wrong with an element.
func (w *walker) report(e *element, err error) {
	at := w.file.On(e.line)
	at.Key = e.called()
	f := fault.At(at, err)
	if told := f.Error(); !w.told[told] { // an element may be used often
		w.told[told] = true
		w.faults = append(w.faults, f)
	}
}

// page draws all that is in a drawing, in its real size.
func (w *walker) page(root *element) {
	size, shown, err := pageSize(root)
	if err != nil {
		w.report(root, err)
		return
	}
	// Turned over, for a drawing counts downward.
	s := surroundings{to: matrix{a: unitMM, d: -unitMM, f: max(size.height, 0) * unitMM}, in: size}
	w.contents(root, s, shown)
}

// contents draws what is in an element that has a view of its own: s.in, of which a viewBox
// says what it shows.
func (w *walker) contents(e *element, s surroundings, box *viewBox) {
	if box != nil {
		fitted, err := box.into(s.in.width, s.in.height, e.attrs["preserveAspectRatio"])
		if err != nil {
			w.report(e, err)
			return
		}
		s.to, s.in = s.to.of(fitted), view{box.width, box.height}
	}
	if s, drawn := w.entered(e, s); drawn {
		w.all(e, s)
	}
}

func (w *walker) all(e *element, s surroundings) {
	for _, inner := range e.within {
		w.element(inner, s)
	}
}

// entered returns what holds inside an element; false where it is not displayed, or broken.
func (w *walker) entered(e *element, s surroundings) (surroundings, bool) {
	if e.property("display") == "none" {
		return s, false
	}
	if seen := e.property("visibility"); seen != "" && seen != "inherit" {
		s.hidden = seen != "visible"
	}
	if id := e.id(); id != "" {
		s.within = &scope{id, s.within}
	}
	if own, styled := e.style["transform"]; styled && own != "none" {
		w.report(e, &fault.Fault{Cause: "its transform stands in a style, which is not read", Hint: saveHint})
		return s, false
	}
	text := e.attrs["transform"]
	if e.name == "svg" || strings.TrimSpace(text) == "" {
		return s, true
	}
	if e.property("transform-origin") != "" {
		w.report(e, &fault.Fault{Cause: "transform-origin is not read", Hint: saveHint})
		return s, false
	}
	m, err := readTransform(strings.TrimSpace(text))
	if err != nil {
		w.report(e, err)
		return s, false
	}
	s.to = s.to.of(m)
	return s, true
}

// element draws an element and what is in it.
func (w *walker) element(e *element, s surroundings) {
	if w.visits -= 1 + e.bytes/bytesForVisit; w.visits < 0 || w.full {
		w.stop(e)
		return
	}
	switch e.name {
	case "g", "a":
		if s, drawn := w.entered(e, s); drawn {
			w.all(e, s)
		}
	case "switch":
		if s, drawn := w.entered(e, s); drawn {
			w.first(e, s)
		}
	case "svg":
		w.nested(e, e, s)
	case "use":
		w.use(e, s)
	case "path", "line", "polyline", "polygon", "rect", "circle", "ellipse":
		w.shape(e, s)
	}
}

// stop says once that there is too much.
func (w *walker) stop(e *element) {
	if !w.full {
		w.full = true
		w.report(e, tooMuch())
	}
}

// first draws the first of several that asks for nothing special.
func (w *walker) first(e *element, s surroundings) {
	for _, inner := range e.within {
		if _, asks := inner.attrs["requiredExtensions"]; !asks {
			w.element(inner, s)
			return
		}
	}
}

// nested draws an svg, or a symbol, in a view of its own. sized says how large that is.
func (w *walker) nested(e, sized *element, s surroundings) {
	r := &reader{e: sized, in: s.in}
	size := func(name string, whole float64) float64 {
		for _, from := range []*element{sized, e} {
			if v := from.property(name); v != "" && v != "auto" {
				r.e = from
				return r.size(name, whole)
			}
		}
		return whole
	}
	x, y := 0.0, 0.0
	if sized == e {
		x, y = r.across("x"), r.up("y")
	}
	in := view{size("width", s.in.width), size("height", s.in.height)}
	box, err := readViewBox(e.attrs["viewBox"])
	if err == nil {
		err = r.err
	}
	if err == nil && box != nil && (in.width < 0 || in.height < 0) {
		err = &fault.Fault{Cause: "its viewBox has no size to be fitted into", Hint: "give it a width and a height"}
	}
	if err != nil {
		w.report(e, err)
		return
	}
	if in.width == 0 || in.height == 0 {
		return // not drawn, says SVG 2
	}
	s.to, s.in = s.to.of(moved(x, y)), in
	w.contents(e, s, box)
}

// use draws once more what has an id in the drawing.
func (w *walker) use(e *element, s surroundings) {
	s, drawn := w.entered(e, s)
	if !drawn {
		return
	}
	href, ok := e.attrs["href"]
	if !ok {
		href = e.attrs["xlink:href"]
	}
	id, inner := strings.CutPrefix(strings.TrimSpace(href), "#")
	target := w.ids[id]
	var err *fault.Fault
	switch {
	case href == "":
		err = &fault.Fault{Cause: "it does not say what is used", Hint: saveHint}
	case !inner:
		err = &fault.Fault{Cause: "it uses what is in another file: " + wording.Quoted(href), Hint: "bring it into this drawing"}
	case target == nil:
		err = &fault.Fault{Cause: fmt.Sprintf("it uses %s, which is not there", wording.Quoted(id)), Hint: saveHint}
	case slices.Contains(s.uses, target):
		err = &fault.Fault{Cause: fmt.Sprintf("it uses %s, which it is a part of", wording.Quoted(id)), Hint: "take it out"}
	case len(s.uses) == mostUses:
		err = &fault.Fault{Cause: fmt.Sprintf("more than %d uses stand in each other", mostUses), Hint: "draw it plainly"}
	}
	r := &reader{e: e, in: s.in}
	x, y := r.across("x"), r.up("y")
	if err == nil && r.err != nil {
		err = fault.At(fault.Place{}, r.err)
	}
	if err != nil {
		w.report(e, err)
		return
	}
	s.to = s.to.of(moved(x, y))
	s.uses = append(slices.Clip(s.uses), target)
	switch target.name {
	case "svg", "symbol":
		w.nested(target, e, s)
	default:
		w.element(target, s)
	}
}

// shape draws a path or a basic shape.
func (w *walker) shape(e *element, s surroundings) {
	within := s.within
	s, drawn := w.entered(e, s)
	if !drawn || s.hidden {
		return
	}
	strokes, err := strokesOf(e, s.in, w.legs)
	if err != nil {
		w.report(e, err)
		return
	}
	if s.to.flat() && len(strokes) > 0 {
		w.report(e, &fault.Fault{Cause: "its transform leaves nothing of it", Hint: "a scale of 0 makes everything one line"})
		return
	}
	at := w.file.On(e.line)
	at.Key = e.called()
	for _, one := range strokes {
		for i, g := range one.legs {
			if one.legs[i] = s.to.leg(g); !near(one.legs[i]) {
				w.report(e, &fault.Fault{Cause: "it reaches more than 100 m from the corner of the drawing", Hint: "is the size of the drawing the right one?"})
				return
			}
		}
		line, fits := flattened(one, w.points)
		if w.legs -= len(one.legs); w.legs < 0 || !fits {
			w.stop(e)
			return
		}
		if line != nil {
			w.points -= len(line.Path)
			w.drawing.Shapes = append(w.drawing.Shapes, Shape{ID: e.id(), Place: at, Line: *line, plain: plain(e.id()), within: within})
		}
	}
}

// near reports whether all of a leg lies where something may lie.
func near(g leg) bool {
	for _, p := range []plane.Point{g.a, g.b, g.c, g.d} {
		if !(p.X >= -farthest && p.X <= farthest && p.Y >= -farthest && p.Y <= farthest) {
			return false
		}
	}
	return true
}
