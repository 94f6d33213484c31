package arrange

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: the names of lines stand along them, read from below or from the
// right. The name of a line that would be smaller than can be read is left out instead.

// Caption is the name of a line, which stands along it, with the role of that line.
type Caption struct {
	Role mark.Role
	text.Label
}

// CaptionLines writes the names of lines along them where there is room left.
func (s *Sheet) CaptionLines() {
	for _, p := range s.Pieces {
		// Short lines first: a long one has many more places for its name.
		byLength := slices.SortedStableFunc(slices.Values(p.Lines), func(a, b Line) int {
			return cmp.Compare(a.Length(), b.Length())
		})
		for _, l := range byLength {
			if c, ok := l.caption(s.Field, p, s); ok {
				s.Field.Take(c.Room)
				s.Captions = append(s.Captions, Caption{l.Role, c})
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
func (l Line) caption(f *Field, p Piece, on *Sheet) (text.Label, bool) {
	if l.Name == "" {
		return text.Label{}, false
	}
	for _, fits := range []func(plane.Box) bool{on.Whole, on.shown} {
		for _, size := range []float64{6.5, 5.75, 5} {
			for _, c := range l.captionPlaces(size) {
				if fits(c.Room.Bounds()) && p.Inside(c.Room.Centre) && f.Free(c.Room.Grown(captionRoom)) {
					return c, true
				}
			}
		}
	}
	return text.Label{}, false
}

// captionPlaces returns where the name may stand along its line, best first:
// from the middle of the line outward, over the line before under it. The name
// of a line that bounds the piece stands inside. The name of a line too short
// for it stands across its end.
func (l Line) captionPlaces(size float64) []text.Label {
	style := ink.Plain(size).In(ink.PenOf(l.Role).Colour)
	w := style.Width(l.Name)
	length := l.Length()
	up, down := style.Up(), style.Down()
	set := func(centre, reads plane.Point) text.Label {
		return text.Label{
			Text: l.Name, Style: style, U: reads,
			At:   centre.Add(reads.Left().Mul((down - up) / 2)).Sub(reads.Mul(w / 2)),
			Room: text.Slab{Centre: centre, Half: plane.Point{X: w / 2, Y: (up + down) / 2}, U: reads},
		}
	}
	if w > length {
		end := l.Path().EndDirection()
		centre := l.At(length).Add(end.Mul(captionAway + (up+down)/2))
		return []text.Label{set(centre, readable(end.Left()))}
	}
	var found []text.Label
	for k := range captionPlaces {
		start := (length-w)/2 + stepFromMiddle(k)*(length-w)/captionPlaces
		a, b := l.At(start), l.At(start+w)
		u := b.Sub(a).Unit()
		if b.Distance(a) < w-straight || !l.staysBy(start, w, a, u) {
			continue
		}
		reads := readable(u)
		for _, side := range []plane.Point{reads.Left(), reads.Left().Mul(-1)} {
			if ink.Bounding(l.Role) && side.Dot(u.Left()) < 0 {
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
func (l Line) staysBy(start, w float64, a, u plane.Point) bool {
	const looks = 8
	for i := 1; i < looks; i++ {
		if math.Abs(l.At(start+w*float64(i)/looks).Sub(a).Cross(u)) > straight {
			return false
		}
	}
	return true
}

// stepFromMiddle counts 0, 1, -1, 2, -2, ...
func stepFromMiddle(k int) float64 {
	step := float64((k + 1) / 2)
	if k%2 == 0 {
		return -step
	}
	return step
}
