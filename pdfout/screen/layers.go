package screen

import (
	"html/template"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: every role that occurs in a picture is a layer, by the name that the line
// key has for it, and so is what shows how pages cut a sheet.

// layer is what can be shown or hidden together.
type layer struct {
	ID, Name string
	Sample   template.HTML // elements: a piece of such a line, in a box of sampleWide by sampleHigh
}

// The size of a sample, in mm.
const (
	sampleWide = 20.0
	sampleHigh = 5.0
)

// gridLayer is the class of what shows how pages cut a sheet.
const gridLayer = "grid"

// layers are the layers of a picture, in the order of the line key.
func layers(elements template.HTML) []layer {
	var all []layer
	if strings.Contains(string(elements), `class="`+gridLayer+`"`) {
		all = append(all, layer{gridLayer, "edges of pages", `<path class="page-edge" d="M0 2.5H20"/>`})
	}
	for _, role := range mark.Roles() {
		if strings.Contains(string(elements), `data-role="`+role.String()+`"`) {
			all = append(all, layer{role.String(), role.String(), sample(role)})
		}
	}
	return all
}

// sample is a piece of the line of a role.
func sample(role mark.Role) template.HTML {
	p := ink.NewPicture("sample", plane.Point{X: sampleWide, Y: sampleHigh})
	pen := ink.PenOf(role)
	p.Pen(pen)
	p.Path(plane.Path{{X: 0.5, Y: sampleHigh / 2}, {X: sampleWide - 0.5, Y: sampleHigh / 2}})
	p.Stroke()
	return template.HTML(p.Elements())
}
