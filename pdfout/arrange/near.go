package arrange

import (
	"cmp"
	"math"
	"slices"
	"sync"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a text that belongs to a place stands upright near it, on its own
// side of it if it can; where it stands further off than leaderFrom, a leader runs from it
// to the place. It is whole on the page of that place and touches no line and no other text,
// and nor does its leader, but for the line it ends at. Where there is no such place at all,
// the leader crosses lines; then, sooner than left out, the text crosses the fewest.

const (
	// nearAway is how far a text stays from what it belongs to, in mm, and nearRoom from
	// everything else.
	nearAway = 0.9
	nearRoom = 0.8
	// leaderFrom is how far off a text has a leader, in mm, and leaderGap what is kept
	// free between the two.
	leaderFrom = 2.4
	leaderGap  = 0.5
	// leaderRoom is half of what a leader keeps free on its way, in mm; it may begin within
	// leaderFree of the line that it points to.
	leaderRoom = 0.3
	leaderFree = 0.5
	// leaderHead is the length of its arrow head, in mm.
	leaderHead = 1.6
	// turnWeight is how many mm further off are as bad as standing on the other side.
	turnWeight = 16.0
	// mostUnder bounds how many lines under a leader or a text are counted.
	mostUnder = 40
)

// Anchor is a place that a text belongs to.
type Anchor struct {
	At plane.Point
	// Out, of length 1, is the side of the place on which the text rather stands.
	Out plane.Point
}

// way is how a text may stand by its place: so many mm off, by so much turned from its side.
type way struct{ away, turn float64 }

// ways are those that are tried, the best first.
var ways = sync.OnceValue(func() []way {
	const directions = 16
	var all []way
	for _, away := range []float64{nearAway, 2, 3.5, 5, 7, 9, 12, 15, 19, 24, 30, 38, 48, 60, 80, 110, 150} {
		for k := range directions {
			all = append(all, way{away, stepFromMiddle(k) * 2 * math.Pi / directions})
		}
	}
	cost := func(w way) float64 { return w.away + turnWeight*math.Abs(w.turn)/math.Pi }
	slices.SortStableFunc(all, func(a, b way) int { return cmp.Compare(cost(a), cost(b)) })
	return all
})

// turned returns u turned by an angle to the left.
func turned(u plane.Point, angle float64) plane.Point {
	return u.Mul(math.Cos(angle)).Add(u.Left().Mul(math.Sin(angle)))
}

// by returns the room of a block that stands by a place in some way.
func (w way) by(a Anchor, b Inscription) text.Slab {
	u := turned(a.Out, w.turn)
	half := plane.Point{X: b.Width / 2, Y: b.Height / 2}
	// The ray from the middle of the block back to the place leaves the block here.
	inside := math.Inf(1)
	if x := math.Abs(u.X); x > 0 {
		inside = min(inside, half.X/x)
	}
	if y := math.Abs(u.Y); y > 0 {
		inside = min(inside, half.Y/y)
	}
	return text.Level(a.At.Add(u.Mul(w.away+inside)), half)
}

// leader returns the way from the room of a text to the place it belongs to; nil where it
// stands right by it.
func leader(room text.Slab, to plane.Point) plane.Path {
	b := room.Bounds()
	from := plane.Point{X: min(max(to.X, b.Min.X), b.Max.X), Y: min(max(to.Y, b.Min.Y), b.Max.Y)}
	if from.Distance(to) <= leaderFrom {
		return nil
	}
	return plane.Path{from.Add(to.Sub(from).Unit().Mul(leaderGap)), to}
}

// strip is the room of a straight line from a to b, half mm to either side of it.
func strip(a, b plane.Point, half float64) text.Slab {
	return text.Slab{Centre: a.Toward(b, 0.5), Half: plane.Point{X: a.Distance(b) / 2, Y: half}, U: b.Sub(a).Unit()}
}

// under counts what lies under a leader short of its end: lines, and texts, which count as
// mostUnder each.
func (s *Sheet) under(l plane.Path) int {
	if len(l) == 0 {
		return 0
	}
	end := l[1].Sub(l[1].Sub(l[0]).Unit().Mul(leaderFree))
	room := strip(l[0], end, leaderRoom)
	return min(mostUnder-1, s.Field.Crossings(room, mostUnder)) + mostUnder*s.Field.texts(room, 1)
}

// nearPlace is a place for a text near what it belongs to.
type nearPlace struct {
	Inscription
	room   text.Slab
	leader plane.Path
	bad    int // what lies under the text, and under the leader
}

// clear reports whether the text touches nothing; its leader may cross lines.
func (p nearPlace) clear() bool { return p.bad < mostUnder }

// nearest finds the best place for a text by one of some places it may belong to, at least
// some mm off. There is none where all of these are on no page.
func (s *Sheet) nearest(t Inscription, least float64, anchors []Anchor) (nearPlace, bool) {
	best := nearPlace{bad: math.MaxInt}
	for _, w := range ways() {
		if w.away < least {
			continue
		}
		for _, a := range anchors {
			room := w.by(a, t)
			box := room.Bounds()
			if !s.Whole(box) || s.Grid.cellAt(a.At) != s.Grid.cellAt(box.Centre()) {
				continue
			}
			p := nearPlace{t, room, leader(room, a.At), 0}
			if s.Field.texts(text.Level(a.At, plane.Point{}), 1) > 0 {
				p.leader = nil // it would point at another text
			}
			if !s.Field.Free(room.Grown(nearRoom)) {
				if best.clear() {
					continue
				}
				p.bad = mostUnder * (1 + s.Field.Crossings(room, mostUnder) + mostUnder*s.Field.texts(room, 1))
			}
			if p.bad < best.bad {
				p.bad += s.under(p.leader)
			}
			if p.bad < best.bad {
				best = p
			}
			if best.bad == 0 {
				return best, true
			}
		}
	}
	return best, best.bad < math.MaxInt
}

// putNear puts a text at a place that was found for it, with its leader.
func (s *Sheet) putNear(p nearPlace) {
	s.put(PlacedInscription{p.Inscription, p.room.Centre, text.Across()})
	s.lead(p.leader)
}

// Near puts a text at the best place by one of some places that it may belong to, and
// reports whether there is any.
func (s *Sheet) Near(t Inscription, anchors ...Anchor) bool {
	at, ok := s.nearest(t, nearAway, anchors)
	if ok {
		s.putNear(at)
	}
	return ok
}

// lead draws a leader, with a small head at its end.
func (s *Sheet) lead(l plane.Path) {
	if l == nil {
		return
	}
	s.thin(l)
	long := min(leaderHead, l.Length()/2)
	s.Heads = append(s.Heads, ink.Head(l[1], l.EndDirection(), long, long*2/3))
}

// thin puts a straight line on the sheet that is no line of a piece.
func (s *Sheet) thin(l plane.Path) {
	s.Field.Take(strip(l[0], l[1], leaderRoom))
	s.Thin = append(s.Thin, l)
}
