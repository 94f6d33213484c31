package drawing

import (
	"fmt"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
)

// Rules of this file: path data is read by the grammar of SVG 2, section 9.3, whole. What
// breaks it is refused, though a browser draws as far as the mistake: half an outline is no
// outline. Every curve becomes cubic ones, which a transform leaves cubic.

// leg is one drawn part of a line, straight or a cubic curve from a to d.
type leg struct {
	a, b, c, d plane.Point // of a straight one, b is a and c is d
	curve      bool
}

// stroke is a line that is drawn without lifting the pen.
type stroke struct {
	legs   []leg
	closed bool // drawn back to its beginning by a Z
}

func straight(a, d plane.Point) leg { return leg{a: a, b: a, c: d, d: d} }

func cubic(a, b, c, d plane.Point) leg { return leg{a, b, c, d, true} }

// quadratic is the curve with one control point, as a cubic.
func quadratic(a, q, d plane.Point) leg { return cubic(a, a.Toward(q, 2.0/3), d.Toward(q, 2.0/3), d) }

// arguments is how many numbers each command of a path takes, in its capital letter.
var arguments = map[byte]int{'M': 2, 'L': 2, 'H': 1, 'V': 1, 'C': 6, 'S': 4, 'Q': 4, 'T': 2, 'A': 7, 'Z': 0}

// pen draws the commands of a path.
type pen struct {
	strokes     []stroke
	at          plane.Point
	start       plane.Point // of the stroke
	afterCubic  plane.Point // the last control point, mirrored; only just behind a C or S
	afterSquare plane.Point // the same behind a Q or T
	open        bool        // a stroke has been begun
	left        int         // legs that may still be drawn
}

// readPath draws the data of a path. At most so many legs are drawn.
func readPath(data string, most int) ([]stroke, error) {
	w := &written{text: data}
	p := &pen{left: most}
	w.space()
	for command := byte(0); !w.done(); w.space() {
		before := command
		command = w.text[w.at]
		many, known := arguments[command&^0x20]
		letter := command|0x20 >= 'a' && command|0x20 <= 'z'
		switch {
		case !letter || !known:
			return nil, refusePath(w, fmt.Sprintf("%s is no command of a path", w.next()))
		case before == 0 && command&^0x20 != 'M':
			return nil, refusePath(w, "a path begins with M, not with "+w.next())
		}
		w.at++
		w.space()
		for draws := command; ; draws = repeated(draws) {
			args, err := readArguments(w, command, many)
			if err != nil {
				return nil, err
			}
			if !p.draw(draws, args) {
				return nil, tooMuch()
			}
			if mark := w.at; many == 0 || !w.comma() && !startsNumber(w) {
				break
			} else if !startsNumber(w) {
				w.at = mark
				return nil, refusePath(w, "a number is wanted behind the comma")
			}
		}
	}
	return p.strokes, nil
}

// repeated returns what a command draws that is repeated without its letter: more pairs behind an
// M are lines.
func repeated(command byte) byte {
	switch command {
	case 'M':
		return 'L'
	case 'm':
		return 'l'
	}
	return command
}

// startsNumber reports whether what comes next may be a number.
func startsNumber(w *written) bool {
	return !w.done() && strings.IndexByte("+-.0123456789", w.text[w.at]) >= 0
}

// readArguments reads the numbers of one drawing of a command.
func readArguments(w *written, command byte, many int) (args [7]float64, err error) {
	for i := range many {
		if i > 0 {
			w.comma()
		}
		ok := false
		if flag := false; command&^0x20 == 'A' && (i == 3 || i == 4) {
			if flag, ok = w.flag(); flag {
				args[i] = 1
			}
			if !ok {
				return args, refusePath(w, fmt.Sprintf("an arc wants a 0 or a 1, but there is %s", w.next()))
			}
		} else if args[i], ok = w.number(); !ok {
			return args, refusePath(w, fmt.Sprintf("%c wants %d numbers; number %d is %s", command, many, i+1, w.next()))
		}
	}
	return args, nil
}

// refusePath says what is wrong with the data of a path, and where.
func refusePath(w *written, cause string) error {
	return &fault.Fault{Cause: fmt.Sprintf("letter %d of its d: %s", w.at+1, cause), Hint: saveHint}
}

// draw draws a command once. It returns false when there were too many legs.
func (p *pen) draw(command byte, n [7]float64) bool {
	origin := plane.Point{}
	if command >= 'a' {
		origin = p.at
	}
	to := func(i int) plane.Point { return origin.Add(plane.Point{X: n[i], Y: n[i+1]}) }
	from := p.at
	cubicControl, squareControl := p.afterCubic, p.afterSquare
	if big := command &^ 0x20; big != 'M' && big != 'Z' && !p.open {
		p.begin(p.at) // behind a Z the pen is at the beginning of what was closed
	}
	p.afterCubic, p.afterSquare = plane.Point{}, plane.Point{}
	var legs []leg
	switch command &^ 0x20 {
	case 'M':
		p.begin(to(0))
		return true
	case 'L':
		legs = []leg{straight(from, to(0))}
	case 'H':
		legs = []leg{straight(from, plane.Point{X: origin.X + n[0], Y: from.Y})}
	case 'V':
		legs = []leg{straight(from, plane.Point{X: from.X, Y: origin.Y + n[0]})}
	case 'C':
		legs = []leg{cubic(from, to(0), to(2), to(4))}
		p.afterCubic = to(4).Sub(to(2))
	case 'S':
		legs = []leg{cubic(from, from.Add(cubicControl), to(0), to(2))}
		p.afterCubic = to(2).Sub(to(0))
	case 'Q':
		legs = []leg{quadratic(from, to(0), to(2))}
		p.afterSquare = to(2).Sub(to(0))
	case 'T':
		control := from.Add(squareControl)
		legs = []leg{quadratic(from, control, to(0))}
		p.afterSquare = to(0).Sub(control)
	case 'A':
		legs = arc(from, to(5), n[0], n[1], n[2], arcLength(n[3]), arcSense(n[4]))
	case 'Z':
		if p.open {
			p.strokes[len(p.strokes)-1].closed, p.open = true, false
		}
		p.at = p.start
		return true
	}
	if p.left -= len(legs); p.left < 0 {
		return false
	}
	last := &p.strokes[len(p.strokes)-1]
	last.legs = append(last.legs, legs...)
	p.at = legs[len(legs)-1].d
	return true
}

// begin puts the pen down at a place.
func (p *pen) begin(at plane.Point) {
	if n := len(p.strokes); n > 0 && len(p.strokes[n-1].legs) == 0 {
		p.strokes = p.strokes[:n-1] // moved on without drawing
	}
	p.strokes = append(p.strokes, stroke{})
	p.at, p.start, p.open = at, at, true
}
