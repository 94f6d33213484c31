package ink

import (
	"tuckmark/marking/plane"
)

// Rules of this file: filled shapes are heads at the ends of lines and flags beside them.
//
// The tip of a head is the end of the line itself. A head is never longer than a third of
// its line, and keeps its shape when it is shorter than usual, so that no head reaches
// past its own line or meets the one at the other end.
//
// A flag makes a thin mark seen, and never lies on it: what is measured is the thin line,
// from its one end to the other. It stands to the left of its line, and is no longer than
// a share of that.

const (
	headLength = 3.0 // of a head on a line long enough for it, in mm
	headWidth  = 2.0
	// headShare is the most of its line that a head may take.
	headShare = 1.0 / 3

	flagAway   = 0.35 // from the middle of a line to its flag, in mm
	flagLength = 3.0  // of a pennant on a line long enough for it, in mm
	flagWidth  = 1.5
	// flagShare is the most of its line that a pennant may take, bothShare that of each of
	// two, and barShare what a bar takes: both leave the end at the edge bare.
	flagShare = 0.6
	bothShare = 0.4
	barShare  = 0.6
)

// ends says which ends of a line carry a head.
type ends int

const (
	noHeads ends = iota
	endHead
	bothHeads
)

// flag says what stands beside a line.
type flag int

const (
	noFlag   flag = iota
	pennant       // a triangle at its end
	pennants      // one at each end
	bar           // a bold bar toward its end
)

// Solid is a filled shape at a line.
type Solid struct {
	Shape plane.Path  // its first point is where it belongs: the tip of a head
	U     plane.Point // the direction it points in, of length 1
}

// SolidsOf returns the heads and flags that a pen gives a path.
func SolidsOf(p Pen, path plane.Path) []Solid {
	if len(path) < 2 || path.Length() == 0 {
		return nil
	}
	first, start := path[0], path.StartDirection().Mul(-1)
	last, end := path[len(path)-1], path.EndDirection()
	var all []Solid
	if p.ends == bothHeads {
		all = append(all, headOf(first, start, path.Length()))
	}
	if p.ends != noHeads {
		all = append(all, headOf(last, end, path.Length()))
	}
	switch p.flag {
	case pennants:
		all = append(all, pennantAt(first, start, bothShare*path.Length()), pennantAt(last, end, bothShare*path.Length()))
	case pennant:
		all = append(all, pennantAt(last, end, flagShare*path.Length()))
	case bar:
		near, far := end.Left().Mul(flagAway), end.Left().Mul(flagAway+boldLine)
		back := last.Sub(end.Mul(barShare * path.Length()))
		all = append(all, Solid{plane.Path{last.Add(near), last.Add(far), back.Add(far), back.Add(near)}, end})
	}
	return all
}

// headOf is the head at the end of a line of some length.
func headOf(tip, u plane.Point, line float64) Solid {
	length := min(headLength, headShare*line)
	return Head(tip, u, length, headWidth*length/headLength)
}

// Head is a head with its tip at a place, pointing along u, of length 1; it is so long and
// so wide, in mm.
func Head(tip, u plane.Point, length, width float64) Solid {
	back, half := tip.Sub(u.Mul(length)), u.Left().Mul(width/2)
	return Solid{plane.Path{tip, back.Add(half), back.Sub(half)}, u}
}

// pennantAt is the pennant at the end of a line, no longer than most mm.
func pennantAt(end, u plane.Point, most float64) Solid {
	length := min(flagLength, most)
	near := end.Add(u.Left().Mul(flagAway))
	middle := near.Sub(u.Mul(length / 2)).Add(u.Left().Mul(flagWidth * length / flagLength))
	return Solid{plane.Path{near, middle, near.Sub(u.Mul(length))}, u}
}

// DrawSolids fills heads and flags with the ink taken up.
func DrawSolids(d Canvas, solids ...Solid) {
	for _, s := range solids {
		d.Path(s.Shape)
		d.Fill()
	}
}
