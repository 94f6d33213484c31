package seen

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// Rules of this file: the elements of a picture are read with no more than what SVG says of
// them, as far as pictures are made of it: any other command of a path fails the test. A group
// hands its attributes down.

// PictureLine is a line of a piece in a picture, with what it is known by.
type PictureLine struct {
	Piece, Line string
	Path        Path
}

// Picture is what is seen of a picture.
type Picture struct {
	Page
	Lines []PictureLine // of pieces, which are among the paths of the page as well
	IDs   []string
	Names map[string]bool // of all attributes
}

// ReadPicture reads the elements of a picture of a size in mm. Places are in mm from its lower
// left corner.
func ReadPicture(t require.TestingT, elements string, size plane.Point) Picture {
	p := Picture{Page: Page{Width: size.X, Height: size.Y}, Names: map[string]bool{}}
	var groups []map[string]string // the attributes that hold there
	var text *Text
	for d := xml.NewDecoder(strings.NewReader("<svg>" + elements + "</svg>")); ; {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return p
		}
		require.NoError(t, err)
		switch token := token.(type) {
		case xml.StartElement:
			held := map[string]string{}
			if len(groups) > 0 {
				held = groups[len(groups)-1]
			}
			held = p.element(token, held)
			groups = append(groups, held)
			switch token.Name.Local {
			case "path":
				if _, clip := held["clip"]; !clip {
					p.path(t, held)
				}
			case "text":
				text = new(Text)
				*text = p.text(t, held)
			case "svg", "g", "tspan", "clipPath":
			default:
				require.Fail(t, "an element that no picture has", token.Name.Local)
			}
		case xml.CharData:
			if text != nil {
				text.Text += string(token)
			}
		case xml.EndElement:
			groups = groups[:len(groups)-1]
			if token.Name.Local == "text" {
				p.Texts, text = append(p.Texts, *text), nil
			}
		}
	}
}

// element is what an element and those about it say.
func (p *Picture) element(e xml.StartElement, about map[string]string) map[string]string {
	held := map[string]string{}
	for name, value := range about {
		if name != "transform" {
			held[name] = value
		}
	}
	for _, a := range e.Attr {
		held[a.Name.Local] = a.Value
		p.Names[a.Name.Local] = true
		if a.Name.Local == "id" {
			p.IDs = append(p.IDs, a.Value)
		}
	}
	if e.Name.Local == "clipPath" {
		held["clip"] = ""
	}
	return held
}

// path takes up a path.
func (p *Picture) path(t require.TestingT, held map[string]string) {
	q := Path{Layer: held["data-role"], Width: numberOf(t, held["stroke-width"]), Round: held["stroke-linecap"] == "round", Phase: numberOf(t, held["stroke-dashoffset"])}
	for _, d := range strings.Fields(held["stroke-dasharray"]) {
		q.Dashes = append(q.Dashes, numberOf(t, d))
	}
	switch {
	case held["fill"] == "none":
		q.Stroke = colourOf(t, held["stroke"])
	case held["fill-rule"] == "evenodd":
		q.Painted, q.Fill = Framed, colourOf(t, held["fill"])
	default:
		q.Painted, q.Fill = Filled, colourOf(t, held["fill"])
	}
	q.Parts, q.Curves = p.parts(t, held["d"])
	p.Paths = append(p.Paths, q)
	if line, ok := held["data-line"]; ok {
		p.Lines = append(p.Lines, PictureLine{held["data-piece"], line, q})
	}
}

// command is a command of a path and its numbers.
var (
	command = regexp.MustCompile(`([Mlhvaz])([^A-Za-z]*)`)
	numbers = regexp.MustCompile(`-?(\d+\.?\d*|\.\d+)`)
)

// parts are the parts of a path; of a ring, four places and the first one again, as the other
// readers here have them.
func (p *Picture) parts(t require.TestingT, d string) (all []plane.Path, curves int) {
	require.Empty(t, strings.TrimSpace(command.ReplaceAllString(d, "")), "commands that no picture has: %s", d)
	var at plane.Point
	for _, c := range command.FindAllStringSubmatch(d, -1) {
		var v []float64
		for _, n := range numbers.FindAllString(c[2], -1) {
			v = append(v, numberOf(t, n))
		}
		if c[1] == "M" {
			all, at = append(all, nil), plane.Point{}
		}
		last := &all[len(all)-1]
		switch c[1] {
		case "M", "l":
			for i := 0; i+1 < len(v); i += 2 {
				at = at.Add(plane.Point{X: v[i], Y: v[i+1]})
				*last = append(*last, plane.Point{X: at.X, Y: p.Height - at.Y})
			}
		case "h", "v":
			require.Len(t, v, 1)
			step := plane.Point{X: v[0]}
			if c[1] == "v" {
				step = plane.Point{Y: v[0]}
			}
			at = at.Add(step)
			*last = append(*last, plane.Point{X: at.X, Y: p.Height - at.Y})
		case "a":
			require.Len(t, v, 7)
			require.Zero(t, v[6])
			to := at.Add(plane.Point{X: v[5]})
			middle := plane.Point{X: (at.X + to.X) / 2, Y: p.Height - at.Y}
			require.InDelta(t, 2*v[0], math.Abs(v[5]), 0.011)
			*last = append(*last, middle.Add(plane.Point{Y: math.Copysign(v[0], v[5])}), plane.Point{X: to.X, Y: middle.Y})
			at, curves = to, curves+2
		case "z":
			if first := (*last)[0]; curves == 0 {
				*last = append(*last, first)
			}
		}
	}
	return all, curves
}

// text begins a text.
func (p *Picture) text(t require.TestingT, held map[string]string) Text {
	r := Text{At: plane.Point{X: numberOf(t, held["x"]), Y: p.Height - numberOf(t, held["y"])}, U: plane.Point{X: 1}, Size: numberOf(t, held["font-size"]) / paper.Pt,
		Bold: held["font-weight"] == "bold", Layer: held["data-role"], Colour: colourOf(t, held["fill"])}
	if turn := held["transform"]; turn != "" {
		var degrees, x, y float64
		_, err := fmt.Sscanf(turn, "rotate(%g %g %g)", &degrees, &x, &y)
		require.NoError(t, err)
		require.Equal(t, []float64{numberOf(t, held["x"]), numberOf(t, held["y"])}, []float64{x, y}, "turned about its beginning")
		sin, cos := math.Sincos(-degrees * math.Pi / 180)
		r.U = plane.Point{X: cos, Y: sin}
	}
	return r
}

// numberOf reads a number; 0 where there is none.
func numberOf(t require.TestingT, words string) float64 {
	if words == "" {
		return 0
	}
	v, err := strconv.ParseFloat(words, 64)
	require.NoError(t, err)
	return v
}

// colourOf reads a colour; that of the page around is black.
func colourOf(t require.TestingT, words string) ink.Colour {
	if words == "currentColor" {
		return ink.Black()
	}
	var r, g, b int
	_, err := fmt.Sscanf(words, "#%02x%02x%02x", &r, &g, &b)
	require.NoError(t, err, words)
	return ink.Colour{float64(r) / 255, float64(g) / 255, float64(b) / 255}
}
