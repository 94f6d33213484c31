package lay

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file: a thing as it lies on the cloth, one way, and where. What of it is
// turned over or end for end is another face of it.

// pose is a thing as it lies one way on the cloth.
type pose struct {
	name          string
	path          plane.Path // with what runs along the cloth upward
	width, length float64    // across and along the cloth, mm
	onFold        bool       // the path is half of it, to the right of its fold
	// faces are laid in turn: as it is, and turned over where that matters. Each is seen
	// as it stands and end for end. What is torn has none: it is not laid by them.
	faces [][2]*profile
}

// newPose turns an outline so that a direction, of length 1, runs along the cloth.
func newPose(name string, outline plane.Path, along plane.Point) *pose {
	turned := make(plane.Path, len(outline))
	for k, q := range outline {
		turned[k] = plane.Point{X: -q.Dot(along.Left()), Y: q.Dot(along)}
	}
	box := turned.Bounds()
	return &pose{name: name, path: turned, width: box.Width(), length: box.Height()}
}

// see makes so many faces, 1 or 2.
func (p *pose) see(cloth *band, faces int) {
	for over := range faces {
		p.faces = append(p.faces, [2]*profile{cloth.profileOf(p.turned(over, 0)), cloth.profileOf(p.turned(over, 1))})
	}
}

// turned returns the path turned over, if over is 1, and end for end, if end is 1.
// What lies on the fold and is turned end for end comes to lie on the other side of
// it, and there it looks as though it were turned upside down.
func (p *pose) turned(over, end int) plane.Path {
	x, y := plane.Point{X: 1}, plane.Point{Y: 1}
	path := p.path
	if over == 1 {
		path = path.Mirrored(plane.Point{}, x)
	}
	if end == 1 {
		path = path.Mirrored(plane.Point{}, y)
		if !p.onFold {
			path = path.Mirrored(plane.Point{}, x)
		}
	}
	return path
}

// place is where a thing lies on the cloth.
type place struct {
	pose      *pose
	over, end int         // 1 where it is turned over, or end for end
	at        plane.Point // the lower left corner of its box
	upper     bool        // it is cut out of the upper layer only
}

// lowest returns where the kth of a thing lies lowest, and of its two ends the one
// that lies lower; false where there is no room for it.
func (p *pose) lowest(cloth *band, k int) (lowest place, ok bool) {
	look := cloth.lowest
	if p.onFold {
		look = cloth.lowestAtLeft
	}
	lowest = place{pose: p, over: k % len(p.faces), at: plane.Point{Y: math.Inf(1)}}
	for end, profile := range p.faces[lowest.over] {
		if at, lower := look(profile, lowest.at.Y); lower {
			lowest.at, lowest.end, ok = at, end, true
		}
	}
	return lowest, ok
}

// profile is the thing as the band it is put into sees it.
func (l place) profile() *profile { return l.pose.faces[l.over][l.end] }

// outline returns the thing where it lies.
func (l place) outline() plane.Path {
	path := l.pose.turned(l.over, l.end)
	return path.Moved(l.at.Sub(path.Bounds().Min))
}
