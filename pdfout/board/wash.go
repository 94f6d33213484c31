package board

import (
	"fmt"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file: cloth is a thin wash, and every layer adds one, so that it is the darker the
// more layers lie there.

// The washes. One layer of cloth is as dark as lets seven be told from five.
const (
	clothFill     = "#2b5183"
	clothOpacity  = "0.17"
	turnedOpacity = "0.5"
	shadowFill    = "#0b1626"
	shadowOpacity = "0.16"
	paperFill     = "#ffffff"
)

// surface is where a drawing comes to lie on its part: y is turned over.
type surface struct{ left, top float64 }

// path is a path on the surface as part of the d of one.
func (s surface) path(p plane.Path) string {
	var d strings.Builder
	closed := p.Closed()
	if closed {
		p = p[:len(p)-1]
	}
	for i, q := range p {
		d.WriteString([...]string{"M", "L", " "}[min(i, 2)])
		d.WriteString(number(q.X + s.left))
		d.WriteByte(' ')
		d.WriteString(number(s.top - q.Y))
	}
	if closed {
		d.WriteByte('z')
	}
	return d.String()
}

// paths are some, each as an element.
func (s surface) paths(all []plane.Path) string {
	var out strings.Builder
	for _, p := range all {
		out.WriteString(`<path d="` + s.path(p) + "\"/>\n")
	}
	return out.String()
}

// cloth washes layers. Where one ends beside another no pixel has half of both, which would be
// a pale line.
func (s surface) cloth(layers []plane.Path) string {
	return fmt.Sprintf(`<g class="cloth" fill="%s" fill-opacity="%s" shape-rendering="crispEdges">`+"\n%s</g>\n", clothFill, clothOpacity, s.paths(layers))
}

// turned makes paler what lies outside of the seams.
func (s surface) turned(outline, sewn plane.Path) string {
	if len(sewn) == 0 {
		return ""
	}
	return fmt.Sprintf(`<path class="turned" d="%s%s" fill="%s" fill-opacity="%s" fill-rule="evenodd"/>`+"\n", s.path(outline), s.path(sewn), paperFill, turnedOpacity)
}

// shadows are the shadows of flaps.
func (s surface) shadows(all []plane.Path) string {
	if len(all) == 0 {
		return ""
	}
	return fmt.Sprintf(`<g class="shadow" fill="%s" fill-opacity="%s">`+"\n%s</g>\n", shadowFill, shadowOpacity, s.paths(all))
}

// fullness are the soft lines.
func (s surface) fullness(all []plane.Path) string {
	if len(all) == 0 {
		return ""
	}
	return fmt.Sprintf(`<g class="fullness fine" fill="none" stroke="%s" stroke-opacity="0.7" stroke-width="0.3" stroke-linecap="round">`+"\n%s</g>\n", clothFill, s.paths(all))
}

// paperBox is white paper under a part.
func paperBox(size plane.Point) string {
	return fmt.Sprintf(`<path class="paper" d="M0 0h%sv%sh-%sz" fill="%s"/>`+"\n", number(size.X), number(size.Y), number(size.X), paperFill)
}
