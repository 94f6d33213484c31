package board

import (
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: under every piece with folds stands in small what its shades mean, so that it
// is there too when the piece is looked at alone. It wraps as words do.

// The key under a piece, in sizes of its letters: how wide and high a shade is, what is free between a
// shade and its words and behind these, and from one row to the next.
const (
	shadeWide  = 2.2
	shadeHigh  = 1.3
	shadeApart = 0.4
	shadeAfter = 1.2
	shadeStep  = 1.9
)

// shade is one of a key under a piece: so many layers, of which the right half lies outside of the
// seams; or words alone, of none.
type shade struct {
	layers int
	turned bool
	words  string
	at     plane.Point // its left end and the middle of its row, down from the first row's top
}

// shadesOf are those of a piece; none of one without folds.
func shadesOf(p mark.Pressed) []shade {
	if len(p.Counts) < 2 {
		return nil
	}
	all := []shade{{words: keyTitle + ":"}}
	for _, n := range slices.Sorted(slices.Values(p.Counts)) {
		all = append(all, shade{layers: n, words: strconv.Itoa(n)})
	}
	if len(p.Sewn) > 0 {
		all = append(all, shade{layers: 1, turned: true, words: turnedName})
	}
	return all
}

// long is how long a shade is with its words, in mm.
func (s shade) long(letters float64) float64 {
	wide := captionStyle(letters).Width(s.words)
	if s.layers > 0 {
		wide += (shadeWide + shadeApart) * letters
	}
	return wide
}

// wrapped places shades in rows no wider than a width, or than the widest of them, and returns how wide
// and high they are.
func wrapped(shades []shade, letters, width float64) (size plane.Point) {
	at := plane.Point{Y: shadeStep / 2 * letters}
	for i := range shades {
		s := &shades[i]
		if at.X > 0 && at.X+s.long(letters) > width {
			at = plane.Point{Y: at.Y + shadeStep*letters}
		}
		s.at = at
		size.X = max(size.X, at.X+s.long(letters))
		at.X += s.long(letters) + shadeAfter*letters
		size.Y = at.Y + shadeStep/2*letters
	}
	return size
}

// drawShades writes them on a picture whose upper left one stands at a place, up from its lower edge;
// it returns their washes.
func drawShades(d *ink.Picture, shades []shade, letters float64, at plane.Point) string {
	style, on := captionStyle(letters), surface{0, d.Size().Y}
	var out strings.Builder
	for _, s := range shades {
		left := plane.Point{X: at.X + s.at.X, Y: at.Y - s.at.Y}
		if s.layers > 0 {
			box := plane.Box{Min: left.Sub(plane.Point{Y: shadeHigh / 2 * letters}), Max: left.Add(plane.Point{X: shadeWide * letters, Y: shadeHigh / 2 * letters})}
			out.WriteString(on.cloth(slices.Repeat([]plane.Path{box.Outline()}, s.layers)))
			if s.turned {
				out.WriteString(on.turned(box.Outline(), plane.Box{Min: box.Min, Max: plane.Point{X: box.Centre().X, Y: box.Max.Y}}.Outline()))
			}
			left.X += (shadeWide + shadeApart) * letters
		}
		ink.Write(d, left.Sub(plane.Point{Y: style.Middle()}), style, s.words)
	}
	return "<g class=\"shades\">\n" + out.String() + "</g>\n"
}
