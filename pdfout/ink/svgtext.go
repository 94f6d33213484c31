package ink

import (
	"fmt"
	"math"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a text in an SVG stands in text elements, for programs that know its font
// and for those that have another: it is as long as planned in both.

// svgFonts are the family that texts are set in, and what stands in for it.
const svgFonts = "Go, Arial, Helvetica, sans-serif"

// Text writes a line of text. Programs that can let it have the length it is planned with,
// whatever font they set it in.
func (s *svgDrawing) Text(at, u plane.Point, style Style, text string) {
	if text == "" {
		return
	}
	on := s.at(at)
	x, y, size := on.X, s.size.Y-on.Y, style.Size*paper.Pt
	face := faces()[style.Weight]
	parts, ems := face.partsOf(text)
	along, up := u.Mul(ems*size), u.Left().Mul(size)
	bounds := plane.Box{Min: on, Max: on}.With(on.Add(along)).With(on.Add(up)).With(on.Add(along).Add(up))
	attributes := []string{"x", svgNumber(x), "y", svgNumber(y), "font-size", svgNumber(size), "fill", style.Colour.svg()}
	if style.Weight == Bold {
		attributes = append(attributes, "font-weight", "bold")
	}
	if u != (plane.Point{X: 1}) {
		turn := math.Round(math.Atan2(-u.Y, u.X)*180/math.Pi*1e4) / 1e4
		attributes = append(attributes, "transform", fmt.Sprintf("rotate(%v %s %s)", turn+0, svgNumber(x), svgNumber(y)))
	}
	if len(parts) == 1 {
		attributes = append(attributes, "textLength", svgNumber(ems*size), "lengthAdjust", "spacingAndGlyphs")
		s.put(svgElement("text", attributes...) + s.clipped(bounds) + ">" + svgEscaped(text) + "</text>")
		return
	}
	whole := svgElement("text", append(attributes, "xml:space", "preserve")...) + s.clipped(bounds) + ">"
	var before part
	end := 0.0
	for _, p := range parts {
		// By steps from where the part before ends: in another font they must not meet.
		whole += svgElement("tspan", "dx", svgNumber((p.right-end)*size), "dy", svgNumber((before.up-p.up)*size), "font-size", svgNumber(p.size*size)) +
			">" + svgEscaped(p.text) + "</tspan>"
		before, end = p, p.right+p.size*face.ems(p.text)
	}
	s.put(whole + "</text>")
}
