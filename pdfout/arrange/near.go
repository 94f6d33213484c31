package arrange

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"sync"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a text that belongs to a place stands upright near it, on its own
// side of it if it can; where it stands further off than leaderFrom, a leader no longer than
// leaderLongest runs from it to the place. It is whole on the page of that place, touches no
// line and no other text, and is nearer to its own piece than to any other; its leader
// touches no text, and rather crosses no line. Where it has no such place, in lines of no
// width, a number stands there, and the key of the piece says what for (key.go).

const (
	// nearAway is how far a text stays from what it belongs to, in mm, and nearRoom from
	// everything else.
	nearAway = 0.9
	nearRoom = 0.8
	// leaderFrom is how far off a text has a leader, in mm, leaderLongest how long that is at
	// most, and leaderGap what is kept free between the two.
	leaderFrom    = 2.4
	leaderLongest = 30.0
	leaderGap     = 0.5
	// leaderRoom is half of what a leader keeps free on its way, in mm; it may begin within
	// leaderFree of the line that it points to.
	leaderRoom = 0.3
	leaderFree = 0.5
	// leaderHead is the length of its arrow head, in mm.
	leaderHead = 1.6
	// turnWeight is how many mm further off are as bad as standing on the other side, and
	// crossWeight how many are as bad as a line that the leader crosses, and lineWeight as
	// one more line of text. Here cutWeight is more than all of them for what would be cut off.
	turnWeight  = 16.0
	crossWeight = 12.0
	lineWeight  = 4.0
	cutWeight   = 200.0
	// mostUnder bounds how many lines under a leader are counted.
	mostUnder = 10
)

// Anchor is a place that a text belongs to.
type Anchor struct {
	At plane.Point
	// Out, of length 1, is the side of the place on which the text rather stands.
	Out plane.Point
	// Within is set where the text rather stands within its piece: outside it is cut off.
	Within bool
	// Opposed is set where another anchor has the other side of the same place.
	Opposed bool
}

// way is how a text may stand by its place: so many mm off, by so much turned from its side.
type way struct {
	away, turn float64
	to         plane.Point // the direction across, turned like that
}

// turned is a way that is turned by an angle to the left.
func turned(away, turn float64) way {
	return way{away, turn, plane.Point{X: math.Cos(turn), Y: math.Sin(turn)}}
}

// cost is how much worse a way is than standing right by the place, in mm.
func (w way) cost() float64 { return w.away + turnWeight*math.Abs(w.turn)/math.Pi }

// ways are those that are tried, the best first.
var ways = sync.OnceValue(func() []way {
	const directions = 16 // an even number: each has its opposite among them, which an Opposed anchor counts on
	var all []way
	for _, away := range []float64{nearAway, 2, 3.5, 5, 7, 9, 12, 15, 19, 24, leaderLongest} {
		for k := range directions {
			all = append(all, turned(away, stepFromMiddle(k)*2*math.Pi/directions))
		}
	}
	slices.SortStableFunc(all, func(a, b way) int { return cmp.Compare(a.cost(), b.cost()) })
	return all
})

// by returns the room of a text that stands by a place in some way.
func (w way) by(a Anchor, t Inscription) text.Slab {
	u := a.Out.Mul(w.to.X).Add(a.Out.Left().Mul(w.to.Y))
	half := plane.Point{X: t.Width / 2, Y: t.Height / 2}
	// The ray from the middle of the text back to the place leaves the text here.
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

// onItsWay is the room of a leader short of its end, where others may end as well.
func onItsWay(l plane.Path) text.Slab {
	return strip(l[0], l[1].Sub(l[1].Sub(l[0]).Unit().Mul(leaderFree)), leaderRoom)
}

// under counts the lines under a leader short of its end, and reports whether there is no text.
func (s *Sheet) under(l plane.Path) (int, bool) {
	if len(l) == 0 {
		return 0, true
	}
	room := onItsWay(l)
	return s.Field.Crossings(room, mostUnder), !s.Field.meetsPlaced(room)
}

// nearPlace is a place for a text near what it belongs to.
type nearPlace struct {
	Inscription
	room   text.Slab
	leader plane.Path
	cost   float64 // of the way it stands, and of what its leader crosses, in mm
}

// nearest finds the best place for a text of a piece by one of some places it may belong to,
// at least some mm off, that costs less than a limit. There is none where no text has room, and
// none with a leader to a place under another text: it would point at that.
func (s *Sheet) nearest(p Piece, t Inscription, least float64, anchors []Anchor, limit float64) (nearPlace, bool) {
	if s.Looks == 0 {
		return nearPlace{}, false
	}
	covered, pages := make([]bool, len(anchors)), make([]plane.Box, len(anchors))
	for i, a := range anchors {
		covered[i] = s.Field.meetsPlaced(text.Level(a.At, plane.Point{}))
		pages[i] = s.clearAt(a.At)
	}
	best := nearPlace{cost: limit}
	for _, w := range ways() {
		if w.cost() >= best.cost || s.Looks == 0 {
			break
		}
		if w.away < least {
			continue
		}
		for i, a := range anchors {
			if a.Opposed && math.Abs(w.turn) > math.Pi/2 {
				continue // it stands there at less cost by the other one
			}
			room := w.by(a, t)
			if !s.hasRoom(p, room, nearRoom, pages[i]) {
				continue
			}
			to := leader(room, a.At)
			if to != nil && covered[i] {
				continue
			}
			lines, clear := s.under(to)
			cost := w.cost() + crossWeight*float64(lines)
			if a.Within && !p.Inside(room.Centre) {
				cost += cutWeight
			}
			if clear && cost < best.cost {
				best = nearPlace{t, room, to, cost}
			}
		}
	}
	return best, best.cost < limit
}

// hasRoom reports whether a text of a piece may stand in a room: in what is clear of a page,
// free of all else and by so many mm beside it, and nowhere that it would be taken for another's.
func (s *Sheet) hasRoom(p Piece, room text.Slab, beside float64, clear plane.Box) bool {
	box := room.Bounds()
	return s.look() && clear.Holds(box.Min) && clear.Holds(box.Max) &&
		s.Field.Free(room.Grown(beside)) && s.belongs(p, append(box.Outline(), box.Centre())...)
}

// belongs reports whether what reaches over some places is taken to belong to a piece: it is
// inside of it, or in none and nearer to it than to any other.
func (s *Sheet) belongs(p Piece, over ...plane.Point) bool {
	if p.Inside(over[0]) {
		return true
	}
	away := func(q Piece, limit float64) float64 {
		for _, at := range over {
			limit = q.Outline.Distance(at, limit)
		}
		return limit
	}
	own := away(p, besideLongest)
	return !slices.ContainsFunc(s.Pieces, func(q Piece) bool {
		return q.Key != p.Key && (q.Inside(over[0]) || away(q, own) < own)
	})
}

// besideLongest bounds how far from a piece it is asked what stands beside it, in mm.
const besideLongest = 100.0

// putNear puts a text at a place that was found for it, with its leader.
func (s *Sheet) putNear(p nearPlace) {
	s.put(PlacedInscription{p.Inscription, p.room.Centre, text.Across()})
	s.lead(p.leader)
}

// near puts words of a piece by one of some places that they may belong to, at least some mm
// off: in lines of the width that has the best place; else a number that stands for them,
// which the key explains; else they are in the key alone.
func (s *Sheet) near(p Piece, words string, style ink.Style, least float64, anchors []Anchor) {
	best := nearPlace{cost: math.Inf(1)}
	var last Inscription
	for _, width := range nearWidths() {
		t := Wrapped(words, style, width)
		if t.Broken || slices.Equal(t.Labels, last.Labels) { // in the same lines it stands no better
			continue
		}
		last = t
		lines := lineWeight * float64(len(t.Labels))
		// What costs as much as the best so far, but for rounding, is looked at as well.
		at, ok := s.nearest(p, t, least, anchors, best.cost-lines+roundingOff)
		at.cost += lines
		if ok && at.cost < best.cost {
			best = at
		}
	}
	if !math.IsInf(best.cost, 1) {
		s.putNear(best)
		return
	}
	key := s.keyOf(p)
	number := fmt.Sprintf("(%d)", key.numbers+1)
	at, ok := s.nearest(p, InLines([]string{number}, style), least, anchors, math.Inf(1))
	if !ok {
		key.lines = append(key.lines, words+", which has no room there")
		return
	}
	s.putNear(at)
	key.numbers++
	key.lines = append(key.lines, number+" "+words)
}

// nearWidths are the widths that words near a place are set in, in mm.
func nearWidths() []float64 { return []float64{math.Inf(1), 62, 44, 32, 20} }

// lead draws a leader, with a small head at its end.
func (s *Sheet) lead(l plane.Path) {
	if l == nil {
		return
	}
	s.Field.Take(onItsWay(l))
	s.Thin = append(s.Thin, l)
	long := min(leaderHead, l.Length()/2)
	s.Heads = append(s.Heads, ink.Head(l[1], l.EndDirection(), long, long*2/3))
}

// thin puts a straight line on the sheet that is no line of a piece.
func (s *Sheet) thin(l plane.Path) {
	s.Field.Take(strip(l[0], l[1], leaderRoom))
	s.Thin = append(s.Thin, l)
}
