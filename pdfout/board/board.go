package board

import (
	"fmt"
	"html"
	"html/template"
	"math"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: a board is written with no style of its own, for a page whose policy
// forbids that. A style sheet goes by these:
//
//	g.part[data-part][data-name]  a part; what is drawn in it is in mm, true to size
//	text.caption                  its name, over it, in the colour of the page's text
//	text.caption[data-most]       it may have letters of another size, in mm: so large at most
//	.paper, g.grid, .blank        see sheets.go
//	g[data-role] and so on        see ink/picture.go

// Board is what lies side by side. Places are in mm from the upper left corner, y down.
type Board struct {
	Size    plane.Point
	Caption float64 // size of the letters over the parts, in mm
	Parts   []Part
}

// Part is one thing on a board.
type Part struct {
	Number int      // among those of the board, from 1; of a page its own
	Name   string   // what it is called, over it; "" for a key, which is not looked at alone
	Keys   []string // of the markings whose lines are on it
	Box    plane.Box
	// Elements are what is drawn, as SVG elements in mm from the upper left corner of the box:
	// drawn when they are first asked for.
	Elements func() string
}

// Elements are the elements of the board, to stand in an SVG in a page of HTML.
func (b Board) Elements() template.HTML {
	var out strings.Builder
	for _, p := range b.Parts {
		fmt.Fprintf(&out, `<g class="part" data-part="%d" data-name="%s" transform="translate(%s %s)">`+"\n",
			p.Number, html.EscapeString(p.Name), number(p.Box.Min.X), number(p.Box.Min.Y))
		out.WriteString(b.caption(p))
		out.WriteString(p.Elements())
		out.WriteString("</g>\n")
	}
	return template.HTML(out.String()) // all texts in it are escaped
}

// caption writes the name of a part over it, shortened to the part's width.
func (b Board) caption(p Part) string {
	if p.Name == "" {
		return ""
	}
	style := captionStyle(b.Caption)
	words := text.Shorten(p.Name, style, p.Box.Width())
	most := b.Caption * min(captionGrows, p.Box.Width()/style.Width(words))
	return captionText(words, b.Caption, -captionUnder*b.Caption, "data-most", number(most))
}

// Looked is what is looked at who chooses the part at a place among those of the board: the part, with
// its caption, however large that is.
func (b Board) Looked(part int) plane.Box {
	box := b.Parts[part].Box
	if b.Parts[part].Name != "" {
		box.Min.Y -= captionRoom * captionGrows * b.Caption
	}
	return box
}

// captionStyle is the style of letters of a size in mm.
func captionStyle(letters float64) ink.Style { return ink.Plain(letters / paper.Pt) }

// captionText writes words on the board itself, not on paper, with their foot so far down, in an
// element with further attributes: a name and a value of each.
func captionText(words string, letters, down float64, attributes ...string) string {
	var more strings.Builder
	for i := 0; i+1 < len(attributes); i += 2 {
		fmt.Fprintf(&more, ` %s="%s"`, attributes[i], html.EscapeString(attributes[i+1]))
	}
	return fmt.Sprintf(`<text class="caption" y="%s" font-size="%s"%s fill="currentColor">%s</text>`+"\n",
		number(down), number(letters), more.String(), html.EscapeString(words))
}

// number writes mm to 0.01.
func number(mm float64) string { return strconv.FormatFloat(math.Round(mm*100)/100+0, 'f', -1, 64) }
