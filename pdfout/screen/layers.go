package screen

import (
	"html"
	"html/template"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/board"
	"tuckmark/pdfout/ink"
)

// Rules of this file: every role that occurs in a picture is a layer, by the name that the line
// key has for it, and so are what shows how pages cut a sheet, and each of the views that are laid
// over each other.

// layer is what can be shown or hidden together.
type layer struct {
	Role   string // as the picture has it, or gridLayer, or viewLayer with the name of a view
	Name   string
	Sample template.HTML // elements: a piece of such a line, in a box of sampleWide by sampleHigh
}

// ID is the layer's name in an id, in which no space may be.
func (l layer) ID() string { return strings.ReplaceAll(l.Role, " ", "-") }

// The size of a sample, and how far along it the letter of its line stands, in mm.
const (
	sampleWide   = 20.0
	sampleHigh   = 5.0
	sampleLetter = 15.5
)

// gridLayer is the class of what shows how pages cut a sheet.
const gridLayer = "grid"

// viewLayer stands before the name of a view.
const viewLayer = "view "

// viewLayers are the views in a picture of views that are laid over each other.
func viewLayers(elements template.HTML, views []View) []layer {
	var all []layer
	for i, v := range views {
		if strings.Contains(string(elements), `data-view="`+html.EscapeString(v.Title)+`"`) {
			all = append(all, layer{viewLayer + v.Title, v.Title, lineSample(board.ViewPen(i, mark.Cut))})
		}
	}
	return all
}

// layers are the layers of a picture, in the order of the line key, with samples.
func layers(elements template.HTML, sample func(mark.Role) template.HTML) []layer {
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

// sample is a mark of a role, as it is drawn on the sheets, with the letter of its line.
func sample(role mark.Role) template.HTML {
	p := ink.NewPicture("sample", plane.Point{X: sampleWide, Y: sampleHigh})
	ink.DrawMark(p, mark.Mark{Role: role, Path: samplePath(role)})
	if letter := ink.PenOf(role).Letter(); letter != "" {
		ink.DrawLetter(p, ink.LineNumber(role), letter, plane.Point{X: sampleLetter, Y: sampleHigh / 2}, plane.Point{X: 1})
	}
	return template.HTML(p.Elements())
}

// sharedSample is a line of a role as all views have it: in the colours of views there is none.
func sharedSample(role mark.Role) template.HTML { return lineSample(board.SharedPen(role)) }

// lineSample is a line of a pen.
func lineSample(pen ink.Pen) template.HTML {
	p := ink.NewPicture("sample", plane.Point{X: sampleWide, Y: sampleHigh})
	ink.DrawLines(p, pen, samplePath(mark.Cut))
	return template.HTML(p.Elements())
}

// samplePath is along the middle of the sample; what is a short mark across a line stands
// upright there, and what is an area is as long and as high as the sample lets it.
func samplePath(role mark.Role) plane.Path {
	const inset = 0.5
	box := plane.Box{Min: plane.Point{X: inset, Y: inset}, Max: plane.Point{X: sampleWide - inset, Y: sampleHigh - inset}}
	middle := box.Centre()
	switch role {
	case mark.Notch, mark.Cross, mark.Match:
		return plane.Path{{X: middle.X, Y: box.Min.Y}, {X: middle.X, Y: box.Max.Y}}
	case mark.Waste:
		return box.Outline()
	case mark.Prick:
		var places plane.Path
		for i := range 5 {
			places = append(places, plane.Point{X: box.Min.X + (float64(i)+0.5)/5*box.Width(), Y: middle.Y})
		}
		return places
	}
	return plane.Path{{X: box.Min.X, Y: middle.Y}, {X: box.Max.X, Y: middle.Y}}
}
