package drawing

import (
	"math"
	"slices"
	"sort"

	"tuckmark/marking/plane"
)

// Rules of this file: a corner is where a line changes its direction by so many degrees at one
// place. A curve has none inside, and where it meets another its own direction counts. Of a
// line of many short straight steps, as tracing gives, no step tells a direction: there it is
// that of a chord over several steps, and of what looks like corners close together the
// sharpest is the one.

const (
	// sturdy is how long a chord is that tells the direction of a line of short steps, in mm.
	// A rounding of 12 mm or more, in steps, is no corner of 20 degrees over it, and steps
	// that stray by 0.1 mm turn it by 6 degrees at most.
	sturdy = 4.0
	// fewSteps is how many legs within a sturdy chord are still drawn as they are meant.
	fewSteps = 3
	// leastStep bounds, in mm, what is passed over where a direction is asked for.
	leastStep = closing
)

// Corner is a place where the direction of a line changes.
type Corner struct {
	At      int // the point of the path
	Place   plane.Point
	Degrees float64 // by how much it turns, either way: a square corner by 90
	along   float64 // how far along the path
	reach   float64 // a sharper one so near is the corner, and not this
}

// Corners returns the corners of a line that turn by at least so many degrees, in the order of
// the line. The ends of one that is not closed are none.
func (l *Line) Corners(degrees float64) []Corner {
	var all []Corner
	for i, g := range l.legs {
		if i == 0 && !l.Path.Closed() {
			continue
		}
		leave, nearAfter := l.direction(i, 1)
		arrive, nearBefore := l.direction(l.around(i-1), -1)
		turned := turn(arrive, leave) * 180 / math.Pi
		if turned >= degrees {
			all = append(all, Corner{g.at, l.Path[g.at], turned, g.along, max(nearAfter, nearBefore)})
		}
	}
	return l.sharpest(all)
}

func (l *Line) around(leg int) int { return (leg + len(l.legs)) % len(l.legs) }

// length is that of the whole line.
func (l *Line) length() float64 {
	last := l.legs[len(l.legs)-1]
	return last.along + last.long
}

// direction returns the direction in which the line runs from the beginning of a leg on, or by
// its end where by is below 0; and how far a corner may be misplaced by how it was found.
func (l *Line) direction(leg, by int) (plane.Point, float64) {
	passed, reach := 0.0, 0.0
	first := leg
	for range l.legs {
		g := l.legs[leg]
		if passed += g.long; passed > leastStep || l.atEnd(leg, by) {
			break
		}
		leg, reach = l.around(leg+by), leastStep
	}
	g := l.legs[leg]
	own := g.leave
	if by < 0 {
		own = g.arrive
	}
	if g.curve || g.long >= sturdy || !l.stepsAlong(leg, by) {
		return own, reach
	}
	from := l.legs[first].along
	if by < 0 {
		from += l.legs[first].long
	}
	chord := l.placeAt(from + sturdy*float64(by)).Sub(l.placeAt(from)).Mul(float64(by))
	if chord.Length() < sturdy/2 {
		return own, reach // turned back on itself: no chord is one
	}
	return chord.Unit(), sturdy
}

// atEnd reports whether an open line ends behind a leg.
func (l *Line) atEnd(leg, by int) bool {
	return !l.Path.Closed() && (by > 0 && leg == len(l.legs)-1 || by < 0 && leg == 0)
}

// stepsAlong reports whether from a leg on there are more than a few short straight steps
// within a sturdy chord.
func (l *Line) stepsAlong(leg, by int) bool {
	passed := 0.0
	for range fewSteps {
		g := l.legs[leg]
		if passed += g.long; g.curve || passed >= sturdy {
			return false
		}
		if l.atEnd(leg, by) {
			return false
		}
		leg = l.around(leg + by)
	}
	return true
}

// placeAt returns the place so far along the line; of a closed one it goes round.
func (l *Line) placeAt(along float64) plane.Point {
	if whole := l.length(); l.Path.Closed() {
		along = math.Mod(along+whole, whole)
	}
	i := max(0, sort.Search(len(l.legs), func(i int) bool { return l.legs[i].along > along })-1)
	end := len(l.Path)
	if i+1 < len(l.legs) {
		end = l.legs[i+1].at + 1
	}
	place, _ := l.Path[l.legs[i].at:end].At(along - l.legs[i].along)
	return place
}

// sharpest leaves out corners that have a sharper one within their reach.
func (l *Line) sharpest(all []Corner) []Corner {
	whole, n := l.length(), len(all)
	keep := make([]bool, n)
	for i, c := range all {
		keep[i] = true
		for _, by := range []int{1, -1} {
			for k := 1; k < n && keep[i]; k++ {
				o := all[(i+by*k%n+n)%n]
				away := math.Abs(o.along - c.along)
				if l.Path.Closed() {
					away = min(away, whole-away)
				}
				if away > c.reach {
					break
				}
				keep[i] = c.Degrees > o.Degrees || c.Degrees == o.Degrees && c.At < o.At
			}
		}
	}
	i := -1
	return slices.DeleteFunc(all, func(Corner) bool { i++; return !keep[i] })
}
