package screen

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/report"
)

// Rules of this file: how things lie on the cloth is the picture that the figures have on paper,
// drawn in a room of its own. What has no room in it is said under it, and all of it is
// told in words as well, to those who do not see it.

// The room for the picture, in mm. It is shown as wide as the page has room for, and never
// smaller than this, where its letters have the size that they have on paper.
const (
	layWide = 210.0
	layHigh = 200.0
)

// layEdge is what is kept free round the picture, in mm, for lines on its very edge.
const layEdge = 0.5

// lay is a picture of how things lie.
type lay struct {
	ID       string
	Title    string // that it is called by where it is told
	Told     string // all of it in words
	ViewBox  string
	Elements template.HTML // of SVG; "" where it cannot be drawn
	Caption  string
	Under    []string // what is said under it
	Signed   []report.Signed
}

// newLay draws a picture.
func newLay(id string, p mark.Picture) *lay {
	l := &lay{ID: id, Title: strings.TrimSuffix("How it lies: "+p.Caption, ": "), Told: toldOf(p), Caption: unbroken(p.Caption)}
	drawn, err := report.DrawingOf(p, layWide, layHigh)
	if err != nil {
		l.Under = []string{"this cannot be drawn: " + fault.At(fault.Place{}, err).Cause, l.Told}
		return l
	}
	size := plane.Point{X: layWide + 2*layEdge, Y: drawn.Height() + 2*layEdge}
	picture := ink.NewPicture(id, size)
	drawn.Draw(picture, plane.Point{X: layEdge, Y: size.Y - layEdge})
	l.ViewBox = fmt.Sprintf("0 0 %.1f %.1f", size.X, size.Y)
	l.Elements = template.HTML(picture.Elements()) // all texts in it are escaped
	l.Under, l.Signed = drawn.Unsaid, drawn.Signed
	if drawn.Left != "" {
		l.Under = append(l.Under, drawn.Left)
	}
	for i := range l.Under {
		l.Under[i] = unbroken(l.Under[i])
	}
	return l
}

// toldOf tells a picture in words: what is said of its bands, and what lies there.
func toldOf(p mark.Picture) string {
	var said, names []string
	count := map[string]int{}
	for _, b := range p.Bands {
		if b.Text != "" {
			said = append(said, b.Text+".")
		}
	}
	for _, shape := range p.Shapes {
		if shape.Name != "" && !slices.Contains(names, shape.Name) {
			names = append(names, shape.Name)
		}
		count[shape.Name]++
	}
	for i, name := range names {
		if n := count[name]; n > 1 {
			names[i] = fmt.Sprintf("%s (%d times)", name, n)
		}
	}
	if len(names) > 0 {
		said = append(said, "On it lie: "+wording.Listed(names, "and")+".")
	}
	return strings.Join(said, " ")
}
