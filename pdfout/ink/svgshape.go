package ink

import (
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file: how shapes, pens and texts are written in an SVG. Numbers are in mm, to
// 0.001 and no finer, in pictures to 0.01; y is counted down from the upper edge of the page.

// svgShape is what is stroked or filled at once, in mm on the page, y up.
type svgShape struct {
	paths []plane.Path
	rings []svgRing
}

// svgRing is a circle.
type svgRing struct {
	centre plane.Point
	radius float64
}

// bounds is the smallest box about the shape.
func (s svgShape) bounds() plane.Box {
	all := plane.EmptyBox()
	for _, p := range s.paths {
		all = all.Union(p.Bounds())
	}
	for _, r := range s.rings {
		all = all.Union(plane.Box{Min: r.centre, Max: r.centre}.Grown(r.radius))
	}
	return all
}

// d is the shape as the d of a path, on a page of a height.
func (s svgShape) d(height float64) string {
	var d strings.Builder
	write := func(command string, p plane.Point) {
		d.WriteString(command + svgNumber(p.X) + " " + svgNumber(height-p.Y))
	}
	for _, p := range s.paths {
		closed := isClosed(p)
		if closed {
			p = p[:len(p)-1]
		}
		for i, q := range p {
			write([...]string{"M", "L", " "}[min(i, 2)], q)
		}
		if closed {
			d.WriteString("Z")
		}
	}
	for _, r := range s.rings {
		arc := "A" + svgNumber(r.radius) + " " + svgNumber(r.radius) + " 0 0 1 "
		left, right := r.centre.Sub(plane.Point{X: r.radius}), r.centre.Add(plane.Point{X: r.radius})
		write("M", left)
		write(arc, right)
		write(arc, left)
		d.WriteString("Z")
	}
	return d.String()
}

// steps is d to 0.01 mm, counted from point to point and written as short as can be.
func (s svgShape) steps(height float64) string {
	var d []byte
	var at [2]int // where the last point is
	to := func(command byte, p plane.Point) {
		x, y := svgHundredths(p.X), svgHundredths(height-p.Y)
		if command == 'M' {
			at = [2]int{}
		}
		if command != 0 {
			d = append(d, command)
		}
		d = appendHundredths(d, x-at[0])
		d = appendHundredths(d, y-at[1])
		at = [2]int{x, y}
	}
	for _, p := range s.paths {
		closed := isClosed(p)
		if closed {
			p = p[:len(p)-1]
		}
		for i, q := range p {
			to([...]byte{'M', 'l', 0}[min(i, 2)], q)
		}
		if closed {
			d = append(d, 'z')
		}
	}
	for _, r := range s.rings {
		to('M', r.centre.Sub(plane.Point{X: r.radius}))
		radius := svgHundredths(r.radius)
		for _, across := range []int{2 * radius, -2 * radius} {
			d = append(d, 'a')
			for _, v := range []int{radius, radius, 0, 0, 100, across, 0} {
				d = appendHundredths(d, v)
			}
		}
		d = append(d, 'z')
	}
	return string(d)
}

// hundred is how finely places in a picture are written: 0.01 mm.
const hundred = 100

// svgHundredths is a length in hundredths of a mm.
func svgHundredths(mm float64) int { return int(math.Round(mm * hundred)) }

// appendHundredths writes a number of hundredths behind others, with a space before it where it
// would be one number with the one before.
func appendHundredths(d []byte, v int) []byte {
	if v < 0 {
		d, v = append(d, '-'), -v
	} else if last := d[len(d)-1]; last >= '0' && last <= '9' {
		d = append(d, ' ')
	}
	whole, rest := v/hundred, v%hundred
	if whole > 0 || rest == 0 {
		d = strconv.AppendInt(d, int64(whole), 10)
	}
	if rest > 0 {
		d = append(d, '.', byte('0'+rest/10))
		if rest%10 > 0 {
			d = append(d, byte('0'+rest%10))
		}
	}
	return d
}

// isClosed reports whether a path holds something and comes back to its beginning.
func isClosed(p plane.Path) bool { return len(p) > 3 && p[0] == p[len(p)-1] }

// svgNumber writes a number to 0.001, without noughts at its end.
func svgNumber(v float64) string {
	// A nought is added since some noughts are negative.
	return strconv.FormatFloat(math.Round(v*thousand)/thousand+0, 'f', -1, 64)
}

// svgNumbers writes some, one after another.
func svgNumbers(all []float64) string {
	var words []string
	for _, v := range all {
		words = append(words, svgNumber(v))
	}
	return strings.Join(words, " ")
}

// svgStroke is the attributes of a pen.
func svgStroke(p Pen) string {
	attributes := []string{"stroke", p.Colour.svg(), "stroke-width", svgNumber(p.Width)}
	if p.period() > 0 {
		attributes = append(attributes, "stroke-dasharray", svgNumbers(p.Dashes()))
	}
	if p.Round() {
		attributes = append(attributes, "stroke-linecap", "round")
	}
	return svgAttributes(attributes...)
}

// svgPhase is the attribute of dashes that begin some mm into their pattern.
func svgPhase(mm float64) string {
	if mm == 0 {
		return ""
	}
	return svgAttributes("stroke-dashoffset", svgNumber(mm))
}

// svg writes a colour.
func (c Colour) svg() string {
	byteOf := func(v float64) int { return int(math.Round(v * 255)) }
	return fmt.Sprintf("#%02x%02x%02x", byteOf(c[0]), byteOf(c[1]), byteOf(c[2]))
}

// svgElement is the beginning of an element with names and values of attributes, not yet
// closed.
func svgElement(name string, attributes ...string) string {
	return "<" + name + svgAttributes(attributes...)
}

// svgAttributes writes names and values of attributes, with a space before each.
func svgAttributes(all ...string) string {
	var b strings.Builder
	for i := 0; i+1 < len(all); i += 2 {
		b.WriteString(" " + all[i] + `="` + svgEscaped(all[i+1]) + `"`)
	}
	return b.String()
}

// svgEscaped is a text as it stands in an element or an attribute.
func svgEscaped(text string) string {
	if !strings.ContainsFunc(text, func(r rune) bool { return r < ' ' || r > '~' || strings.ContainsRune(`<>&"'`, r) }) {
		return text
	}
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(text)) // a builder takes all that is written to it
	return b.String()
}
