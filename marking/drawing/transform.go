package drawing

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: the list of transforms is read by the grammar of CSS Transforms 1,
// section 8, "The SVG transform attribute", where numbers have no units.

// matrix takes a place x, y to ax + cy + e, bx + dy + f.
type matrix struct{ a, b, c, d, e, f float64 }

var unmoved = matrix{a: 1, d: 1}

func moved(x, y float64) matrix { return matrix{a: 1, d: 1, e: x, f: y} }

func scaled(x, y float64) matrix { return matrix{a: x, d: y} }

// of returns what comes of the inner one first, and of m then.
func (m matrix) of(inner matrix) matrix {
	return matrix{
		m.a*inner.a + m.c*inner.b, m.b*inner.a + m.d*inner.b,
		m.a*inner.c + m.c*inner.d, m.b*inner.c + m.d*inner.d,
		m.a*inner.e + m.c*inner.f + m.e, m.b*inner.e + m.d*inner.f + m.f,
	}
}

func (m matrix) place(p plane.Point) plane.Point {
	return plane.Point{X: m.a*p.X + m.c*p.Y + m.e, Y: m.b*p.X + m.d*p.Y + m.f}
}

func (m matrix) leg(l leg) leg {
	return leg{m.place(l.a), m.place(l.b), m.place(l.c), m.place(l.d), l.curve}
}

// flat reports whether all that is drawn becomes one line, or one point.
func (m matrix) flat() bool { return m.a*m.d-m.b*m.c == 0 }

// transforms are how many numbers each may have.
var transforms = map[string][]int{
	"matrix": {6}, "translate": {1, 2}, "scale": {1, 2}, "rotate": {1, 3}, "skewX": {1}, "skewY": {1},
}

// readTransform reads a list of transforms, the last of which is done first.
func readTransform(text string) (matrix, error) {
	if text == "none" {
		return unmoved, nil
	}
	all, w := unmoved, &written{text: text}
	w.space()
	for !w.done() {
		from := w.at
		for !w.done() && (w.text[w.at]|0x20 >= 'a' && w.text[w.at]|0x20 <= 'z') {
			w.at++
		}
		name := w.text[from:w.at]
		counts, known := transforms[name]
		if !known {
			w.at = from
			return all, &fault.Fault{Cause: fmt.Sprintf("its transform has %s, which is none", w.next()), Hint: "known are matrix, translate, scale, rotate, skewX and skewY"}
		}
		one, err := readBracket(w, name)
		if err != nil {
			return all, err
		}
		fits := false
		for _, n := range counts {
			fits = fits || n == len(one)
		}
		if !fits {
			return all, &fault.Fault{Cause: fmt.Sprintf("its transform %s has %s", name, wording.Counted(len(one), "number")), Hint: saveHint}
		}
		all = all.of(transform(name, one))
		w.comma()
	}
	return all, nil
}

// readBracket reads the numbers of one transform, in their brackets; at most six.
func readBracket(w *written, name string) ([]float64, error) {
	broken := func() error {
		return &fault.Fault{Cause: fmt.Sprintf("its transform %s breaks off at %s", name, w.next()), Hint: "numbers stand in brackets, without units: rotate(30)"}
	}
	w.space()
	if w.done() || w.text[w.at] != '(' {
		return nil, broken()
	}
	w.at++
	var all []float64
	for w.space(); ; w.comma() {
		if !w.done() && w.text[w.at] == ')' {
			w.at++
			return all, nil
		}
		n, ok := w.number()
		if !ok || len(all) == 6 {
			return nil, broken()
		}
		all = append(all, n)
	}
}

// transform returns one transform by its name.
func transform(name string, n []float64) matrix {
	switch name {
	case "matrix":
		return matrix{n[0], n[1], n[2], n[3], n[4], n[5]}
	case "translate":
		return moved(n[0], append(n, 0)[1])
	case "scale":
		return scaled(n[0], append(n, n[0])[1])
	case "skewX":
		return matrix{a: 1, c: math.Tan(n[0] * math.Pi / 180), d: 1}
	case "skewY":
		return matrix{a: 1, b: math.Tan(n[0] * math.Pi / 180), d: 1}
	}
	sin, cos := sincosDegrees(n[0])
	turned := matrix{a: cos, b: sin, c: -sin, d: cos}
	if len(n) == 3 {
		return moved(n[1], n[2]).of(turned).of(moved(-n[1], -n[2]))
	}
	return turned
}

// sincosDegrees has quarter turns without a rounding.
func sincosDegrees(degrees float64) (sin, cos float64) {
	degrees = math.Mod(degrees, 360)
	switch degrees {
	case 90, -270:
		return 1, 0
	case 180, -180:
		return 0, -1
	case 270, -90:
		return -1, 0
	}
	return math.Sincos(degrees * math.Pi / 180)
}
