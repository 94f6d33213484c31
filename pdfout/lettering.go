package pdfout

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: text on a sheet is set where it touches no line and no
// other text. The check squares come first, since every page must have one;
// then the pieces' titles (title.go); then the names of lines, along them, read
// from below or from the right. The name of a line that would be smaller than
// can be read is left out instead.

// letter finds the places for the check squares and all text of the sheet.
func (s *sheet) letter(unit marking.Unit) {
	f := s.field
	s.takeHeads()
	// The room kept beside a piece is for its title, not for the square.
	for _, p := range s.pieces {
		if p.foot != (plane.Point{}) {
			s.title(p, f)
		}
	}
	if len(s.squares) == 0 {
		places := squares{squareSize(unit), s.paper, map[plane.Box][]plane.Point{}}
		for _, c := range s.cells {
			s.squares = append(s.squares, places.find(s, f, c))
		}
	}
	for _, p := range s.pieces {
		if p.foot == (plane.Point{}) {
			s.title(p, f)
		}
	}
	s.captionLines()
}

// takeHeads takes the room of all arrow heads.
func (s *sheet) takeHeads() {
	for _, p := range s.pieces {
		for _, l := range p.lines {
			for _, h := range l.arrowHeads() {
				s.field.take(roomOfHead(h))
			}
		}
	}
}

// caption is the name of a line, which stands along it, with the role of the line.
type caption struct {
	role marking.Role
	label
}

// arrowHeads returns the heads of a line.
func (l line) arrowHeads() []arrowHead { return headsOf(penOf(l.role), l.clip.Path()) }

// roomOfHead is what an arrow head takes up.
func roomOfHead(h arrowHead) slab {
	return newSlab(h.tip.Sub(h.u.Mul(h.length/2)), plane.Point{X: h.length / 2, Y: h.width / 2}, h.u)
}

// takeText puts text on the sheet and takes its room: of a line to write on,
// the height of handwriting over it as well.
func (s *sheet) takeText(text Lines, at plane.Point) {
	var moved Lines
	moved.with(text, at)
	for _, l := range moved.labels {
		l = l.measured()
		s.field.take(l.room)
		s.labels = append(s.labels, l)
	}
	for _, r := range moved.rules {
		s.field.take(upright(plane.Box{Min: r[0], Max: r[1].Add(plane.Point{Y: writeStep})}))
		s.rules = append(s.rules, r)
	}
}

// captionLines writes the names of lines along them where there is room left.
func (s *sheet) captionLines() {
	for _, p := range s.pieces {
		// Short lines first: a long one has many more places for its name.
		byLength := slices.SortedStableFunc(slices.Values(p.lines), func(a, b line) int {
			return cmp.Compare(a.clip.Length(), b.clip.Length())
		})
		for _, l := range byLength {
			if c, ok := l.caption(s.field, p, s); ok {
				s.field.take(c.room)
				s.captions = append(s.captions, caption{l.role, c})
			}
		}
	}
}

const (
	// captionAway is how far a name stays from its line, in mm.
	captionAway = 0.9
	// captionRoom is how far it stays from everything else, in mm.
	captionRoom = 0.6
	// captionPlaces is how many places along a line a name tries.
	captionPlaces = 24
	// straight is how far a line may stray from under its name, in mm.
	straight = 0.6
	// tilt lets nearly upright names lean a little past upright, in
	// radians, so that they all read from the right.
	tilt = 0.05
)

// caption finds the place for the name of a line, if it has a name: smaller and on
// one page rather than larger and cut where two pages meet.
func (l line) caption(f *field, p piece, on *sheet) (label, bool) {
	if l.name == "" {
		return label{}, false
	}
	for _, fits := range []func(plane.Box) bool{on.whole, on.shown} {
		for _, size := range []float64{6.5, 5.75, 5} {
			for _, c := range l.captionPlaces(size) {
				if fits(c.room.bounds()) && p.inside(c.room.centre) && f.free(c.room.grown(captionRoom)) {
					return c, true
				}
			}
		}
	}
	return label{}, false
}

// captionPlaces returns where the name may stand along its line, best first:
// from the middle of the line outward, over the line before under it. The name
// of a line that bounds the piece stands inside. The name of a line too short
// for it stands across its end.
func (l line) captionPlaces(size float64) []label {
	style := plain(size).in(penOf(l.role).colour)
	w := style.width(l.name)
	length := l.clip.Length()
	up, down := style.up(), style.down()
	set := func(centre, reads plane.Point) label {
		return label{
			text: l.name, style: style, u: reads,
			at:   centre.Add(reads.Left().Mul((down - up) / 2)).Sub(reads.Mul(w / 2)),
			room: newSlab(centre, plane.Point{X: w / 2, Y: (up + down) / 2}, reads),
		}
	}
	if w > length {
		end := l.clip.Path().EndDirection()
		centre := l.clip.At(length).Add(end.Mul(captionAway + (up+down)/2))
		return []label{set(centre, readable(end.Left()))}
	}
	var found []label
	for k := range captionPlaces {
		start := (length-w)/2 + stepFromMiddle(k)*(length-w)/captionPlaces
		a, b := l.clip.At(start), l.clip.At(start+w)
		u := b.Sub(a).Unit()
		if b.Distance(a) < w-straight || !l.staysBy(start, w, a, u) {
			continue
		}
		reads := readable(u)
		for _, side := range []plane.Point{reads.Left(), reads.Left().Mul(-1)} {
			if bounding(l.role) && side.Dot(u.Left()) < 0 {
				continue
			}
			centre := a.Toward(b, 0.5).Add(side.Mul(captionAway + (up+down)/2))
			found = append(found, set(centre, reads))
		}
	}
	return found
}

// readable turns the direction of a text so that it reads from below or from
// the right.
func readable(u plane.Point) plane.Point {
	if angle := math.Atan2(u.Y, u.X); angle > math.Pi/2+tilt || angle <= -math.Pi/2+tilt {
		return u.Mul(-1)
	}
	return u
}

// staysBy reports whether the line stays near the straight from a along u for
// the w mm from start.
func (l line) staysBy(start, w float64, a, u plane.Point) bool {
	const looks = 8
	for i := 1; i < looks; i++ {
		if math.Abs(l.clip.At(start+w*float64(i)/looks).Sub(a).Cross(u)) > straight {
			return false
		}
	}
	return true
}
