package source

import (
	"fmt"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: a point is a pair of numbers, or a step from the point before it
// (step.go). Each is checked by itself; a faulty one is reported and counts as given.

const (
	pointsForm = `[[0, 0], [3, "4 1/2"]]`
	pointsHint = "a point is [x, y], and points are listed as " + pointsForm
)

// points reads a list of at least two points.
func (t *fileTable) points(key string) Points {
	v, ok := t.values[key]
	if !ok {
		return Points{}
	}
	where := t.spot.child(key)
	p := Points{Value: GivenAt([]plane.Point(nil), t.at(key))}
	elements, ok := v.([]any)
	if !ok {
		t.report(p.Place, "must be a list of points, but is "+asGiven(v), pointsHint)
		return p
	}
	t.note(p.Place, refuseFew(len(elements)))
	p.V = make([]plane.Point, 0, len(elements))
	p.lines = make([]int, 0, len(elements))
	for i, e := range elements {
		if t.faults.Full() {
			break
		}
		at := p.Place.On(where.element(i).lineOf())
		var q plane.Point
		var others []Other
		written, isText := e.(string)
		switch pair, isPair := e.([]any); {
		case isPair:
			q = t.point(at, i+1, pair)
			others = t.others(q, pair)
		case isText && isStep(written):
			q, others = t.stepped(at, p, written)
		default:
			// Most likely the inner brackets were left out, and every other
			// element would be reported too.
			t.report(at, fmt.Sprintf("point %d must be two numbers in brackets, but is %s", i+1, asGiven(e)), pointsHint)
			return p
		}
		if others != nil {
			if p.others == nil {
				p.others = map[int][]Other{}
			}
			p.others[i] = others
		}
		p.V = append(p.V, q)
		p.lines = append(p.lines, at.Line)
	}
	return p
}

// refuseFew refuses fewer points than two.
func refuseFew(n int) error {
	if n < 2 {
		return &fault.Fault{Cause: fmt.Sprintf("has %s, and needs at least two", wording.Counted(n, "point")), Hint: pointsHint}
	}
	return nil
}

// point reads the two coordinates of the nth point, counted from 1.
func (r *fileReader) point(at fault.Place, nth int, pair []any) plane.Point {
	if len(pair) != 2 {
		r.report(at, fmt.Sprintf("point %d has %s, and needs two", nth, wording.Counted(len(pair), "number")), pairHint(pair))
		return plane.Point{}
	}
	x, errX := r.measure(pair[0], anywhere)
	y, errY := r.measure(pair[1], anywhere)
	r.noteUnspaced(at, pair[0], errX)
	r.noteUnspaced(at, pair[1], errY)
	for _, err := range []error{errX, errY} {
		if err != nil {
			r.note(at, ofNth("point", nth, err))
		}
	}
	return plane.Point{X: x, Y: y}
}

// pairHint advises whoever wrote as a point what has not two numbers.
func pairHint(pair []any) string {
	switch len(pair) {
	case 1:
		s, _ := pair[0].(string)
		if x, y, both := strings.Cut(s, ","); both {
			return fmt.Sprintf("put each number in quotes by itself: [%s, %s]", wording.Quoted(strings.TrimSpace(x)), wording.Quoted(strings.TrimSpace(y)))
		}
	case 3, 4:
		return "a decimal is written with a point, not with a comma: [1.5, 3]"
	}
	return pointsHint
}

// ofNth says of which of several points, or of other things, something is wrong, counted
// from 1.
func ofNth(what string, nth int, err error) error {
	f := fault.At(fault.Place{}, err)
	f.Cause = fmt.Sprintf("%s %d: %s", what, nth, f.Cause)
	return f
}

const (
	centreForm = "write centre = [0, 0]: the middle of the circle"
	arcEnds    = "an arc has its two ends, and a third point on it where they alone do not tell which way round it runs"
)

// centre reads the middle of the circle that an edge or a line runs round.
func (t *fileTable) centre() Point { return t.pair("centre", "number", centreForm, anywhere) }

// pair reads two lengths in brackets, across and up. A message calls each what.
func (t *fileTable) pair(key, what, hint string, allowed span) Point {
	return value(t, key, func(v any) (plane.Point, error) {
		pair, isPair := v.([]any)
		switch {
		case !isPair:
			return plane.Point{}, &fault.Fault{Cause: fmt.Sprintf("must be two %ss in brackets, but is %s", what, asGiven(v)), Hint: hint}
		case len(pair) != 2:
			return plane.Point{}, &fault.Fault{Cause: fmt.Sprintf("has %s, and needs two", wording.Counted(len(pair), what)), Hint: hint}
		}
		var both [2]float64
		for i, one := range pair {
			mm, err := t.measure(one, allowed)
			if err != nil {
				return plane.Point{}, err
			}
			t.noteUnspaced(t.at(key), one, nil)
			both[i] = mm
		}
		return plane.Point{X: both[0], Y: both[1]}, nil
	})
}

// arc looks at what stands beside the centre of an arc.
func (t *fileTable) arc(points Points, centre Point) {
	if t.values["smooth"] == true {
		t.refuseBeside("smooth", "centre", "an arc is round by itself: leave smooth out")
	}
	if centre.Given() {
		t.note(centre.Place, refuseArc(len(points.V)))
	}
}

// refuseArc refuses an arc of so many points.
func refuseArc(n int) error {
	if n > 3 {
		return &fault.Fault{Cause: fmt.Sprintf("has %s beside it", wording.Counted(n, "point")), Hint: arcEnds}
	}
	return nil
}
