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
	words := text.Shorten(p.Name, captionStyle(b.Caption), p.Box.Width())
	return captionText(words, b.Caption, -captionUnder*b.Caption)
}

// captionStyle is the style of letters of a size in mm.
func captionStyle(letters float64) ink.Style { return ink.Plain(letters / paper.Pt) }

// captionText writes words on the board itself, not on paper, with their foot so far down.
func captionText(words string, letters, down float64) string {
	return fmt.Sprintf(`<text class="caption" y="%s" font-size="%s" fill="currentColor">%s</text>`+"\n",
		number(down), number(letters), html.EscapeString(words))
}

// number writes mm to 0.01.
func number(mm float64) string { return strconv.FormatFloat(math.Round(mm*100)/100+0, 'f', -1, 64) }
