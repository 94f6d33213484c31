package drawing

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file: curves are followed after all transforms, in mm, so that a drawing made
// larger is as true as another.

const (
	// flatness bounds, in mm, how far the straight parts lie from their curve. With
	// samePlace it keeps a line within 0.01 mm of what was drawn.
	flatness = 0.006
	// samePlace bounds, in mm, how far from the point before a point may lie and be left out.
	samePlace = 0.003
	// gentle bounds, in radians (4 degrees), how much one straight part of a curve turns, so
	// that none of its points is taken for a corner.
	gentle = 4 * math.Pi / 180
	// closing bounds, in mm, how far apart the ends of a line may lie that is closed: less
	// than the width of a pencil line.
	closing = 0.05
	// mostHalvings bounds how often a curve is halved. A curve as long as may be needs
	// fewer; one that comes to a point never gets straight enough there.
	mostHalvings = 14
)

// Line is a line of a drawing, drawn without lifting the pen, in mm, y up.
type Line struct {
	Path plane.Path // its curves followed within 0.01 mm
	legs []drawn
}

// drawn is a leg of a line as it came out.
type drawn struct {
	at            int         // the point of the path that it begins at
	along         float64     // how far along the path that is, in mm
	long          float64     // how long it is
	leave, arrive plane.Point // its direction at both ends
	curve         bool
}

// flattened follows a stroke; nil where it has no length. It draws at most so many points, or
// returns false.
func flattened(s stroke, most int) (*Line, bool) {
	l := &Line{}
	for _, g := range s.legs {
		if !l.draw(g, most) {
			return nil, false
		}
	}
	if len(l.Path) < 2 {
		return nil, true
	}
	first, last := l.Path[0], l.Path[len(l.Path)-1]
	if gap := first.Distance(last); s.closed || gap <= closing && l.Path.Length() > 10*closing {
		l.draw(straight(last, first), most)
		l.Path[len(l.Path)-1] = first
	}
	l.measure()
	return l, true
}

// draw appends a leg. One that has hardly a length is left out.
func (l *Line) draw(g leg, most int) bool {
	if len(l.Path) == 0 {
		l.Path = plane.Path{g.a}
	}
	g.a = l.Path[len(l.Path)-1]
	if longest(g) <= samePlace {
		return true
	}
	from := len(l.Path) - 1
	l.legs = append(l.legs, drawn{at: from, leave: direction(g.a, g.b, g.c, g.d), arrive: direction(g.d, g.c, g.b, g.a).Mul(-1), curve: g.curve})
	if g.curve {
		l.Path = follow(l.Path, g.a, g.b, g.c, g.d, 0)
	}
	// The end of a leg stays; what was drawn close before it goes.
	for n := len(l.Path) - 1; n > from && l.Path[n].Distance(g.d) <= samePlace; n-- {
		l.Path = l.Path[:n]
	}
	l.Path = append(l.Path, g.d)
	return len(l.Path) <= most
}

// longest bounds the length of a leg.
func longest(g leg) float64 {
	if !g.curve {
		return g.a.Distance(g.d)
	}
	return g.a.Distance(g.b) + g.b.Distance(g.c) + g.c.Distance(g.d)
}

// direction returns the direction in which a line sets out whose points are these.
func direction(a plane.Point, more ...plane.Point) plane.Point {
	for _, b := range more {
		if b.Distance(a) > samePlace/10 {
			return b.Sub(a).Unit()
		}
	}
	return plane.Point{}
}

// follow appends a cubic without its first point, halved until each part is straight enough.
// A part strays from its chord by no more than an eighth of its greatest second derivative.
func follow(p plane.Path, a, b, c, d plane.Point, halvings int) plane.Path {
	ab, bc, cd := b.Sub(a), c.Sub(b), d.Sub(c)
	strays := 0.75 * max(bc.Sub(ab).Length(), cd.Sub(bc).Length())
	short := ab.Length()+bc.Length()+cd.Length() <= samePlace
	if short || halvings == mostHalvings || strays <= flatness && turn(ab, bc)+turn(bc, cd) <= gentle {
		if p[len(p)-1].Distance(d) > samePlace {
			p = append(p, d)
		}
		return p
	}
	x, y, z := a.Toward(b, 0.5), b.Toward(c, 0.5), c.Toward(d, 0.5)
	xy, yz := x.Toward(y, 0.5), y.Toward(z, 0.5)
	middle := xy.Toward(yz, 0.5)
	p = follow(p, a, x, xy, middle, halvings+1)
	return follow(p, middle, yz, z, d, halvings+1)
}

// turn returns by how much, in radians, one step turns from another; 0 where one is none.
func turn(a, b plane.Point) float64 {
	return math.Abs(math.Atan2(a.Cross(b), a.Dot(b)))
}

// measure notes where each leg begins and how long it is.
func (l *Line) measure() {
	along := 0.0
	for i := range l.legs {
		end := len(l.Path) - 1
		if i+1 < len(l.legs) {
			end = l.legs[i+1].at
		}
		l.legs[i].along = along
		l.legs[i].long = l.Path[l.legs[i].at : end+1].Length()
		along += l.legs[i].long
	}
}
