package arrange

import (
	"cmp"
	"iter"
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: every name of a line is on the sheet, in LeastType, whole on one page
// and free of all lines. It stands along its line, read from below or from the right, at
// least twice as far from any other line as from its own, so that it can be taken for the
// name of no other; that of an edge stands outside of the piece where the allowance is too
// narrow. Where there is no such place it stands near the line (near.go).

// Caption is the name of a line, which stands along it, with the role of that line.
type Caption struct {
	Role mark.Role
	text.Label
}

const (
	// captionAway is how far a name stays from its line, in mm, and captionRoom from
	// everything else, and from all other lines beside it.
	captionAway = 0.9
	captionRoom = 1.8
	// captionLeast is how near a bent line may come to its name, in mm: a circle that is
	// pricked on it touches no letter.
	captionLeast = 0.75
	// captionEnds is what is kept free before and behind it, in mm.
	captionEnds = 0.9
	// roomy is what a name rather has beside it, in mm.
	roomy = 4.0
	// captionPlaces is how many places along a line a name tries.
	captionPlaces = 24
	// captionAnchors is how many places of its line a leader may lead to, and captionOff
	// how far off the name stands then at least, in mm.
	captionAnchors = 7
	captionOff     = 3.5
	// straight is how far a line may stray from under its name, in mm.
	straight = 0.6
	// tilt lets nearly upright names lean a little past upright, in
	// radians, so that they all read from the right.
	tilt = 0.35
)

// captionLines writes the names of lines. A name that lines of one role share stands once
// at least.
func (s *Sheet) captionLines() {
	for _, p := range s.Pieces {
		// Short lines first: a long one has many more places for its name.
		byLength := slices.SortedStableFunc(slices.Values(p.Lines), func(a, b Line) int {
			return cmp.Compare(a.Length(), b.Length())
		})
		said := map[Caption]bool{} // by role and text alone
		var rest []Line
		for _, l := range byLength {
			if l.Name == "" {
				continue
			}
			if s.captionAlong(p, l) {
				said[nameOf(l)] = true
			} else {
				rest = append(rest, l)
			}
		}
		for _, l := range rest {
			if !said[nameOf(l)] {
				s.near(p, l.Name, ink.LineName(l.Role), captionOff, l.anchors(p))
			}
			said[nameOf(l)] = true
		}
	}
}

// nameOf tells the names of lines apart.
func nameOf(l Line) Caption { return Caption{l.Role, text.Label{Text: l.Name}} }

// captionAlong puts the name of a line along it, and reports whether there is a place.
func (s *Sheet) captionAlong(p Piece, l Line) bool {
	rooms := []float64{roomy, captionRoom}
	cutOut := p.Kind.CutOut()
	if cutOut { // what stands outside is cut off: rather close beside a line
		rooms = []float64{captionRoom}
	}
	for _, beside := range rooms {
		for c := range l.captionPlaces() {
			if !s.look() {
				return false
			}
			if cutOut && !p.Inside(c.Room.Centre) {
				continue
			}
			if s.Whole(c.Room.Bounds()) && s.inOrAt(p, l, c.Room) && s.Field.Free(c.roomBeside(beside)) && s.Field.Free(c.Room.Grown(captionLeast)) {
				s.Field.Take(c.Room)
				s.Captions = append(s.Captions, Caption{l.Role, c.Label})
				return true
			}
		}
	}
	return false
}

// inOrAt reports whether a place is one for the name of a line: in its piece, or beside it
// for a line that bounds it.
func (s *Sheet) inOrAt(p Piece, l Line, room text.Slab) bool {
	return p.Inside(room.Centre) || ink.Bounding(l.Role) && !s.insideAny(room.Centre)
}

// placedCaption is a name along its line, and the side of the line on which it stands.
type placedCaption struct {
	text.Label
	side plane.Point
}

// roomBeside is what a name needs free: its own room, what is kept free at its ends, and so
// many mm on the side away from its line.
func (c placedCaption) roomBeside(beside float64) text.Slab {
	room := c.Room
	room.Centre = room.Centre.Add(c.side.Mul((beside - captionAway/2) / 2))
	room.Half = room.Half.Add(plane.Point{X: captionEnds, Y: (beside + captionAway/2) / 2})
	return room
}

// captionPlaces are where the name may stand along its line, best first: from the middle of the
// line outward, over the line before under it, and that of a line that bounds the piece inside
// before outside. Most names have room at one of the first.
func (l Line) captionPlaces() iter.Seq[placedCaption] {
	style := ink.LineName(l.Role)
	half := style.Half(l.Name)
	w, length := 2*half.X, l.Length()
	return func(yield func(placedCaption) bool) {
		var outside []placedCaption
		for k := range captionPlaces {
			start := (length-w)/2 + stepFromMiddle(k)*(length-w)/captionPlaces
			if w > length || !l.staysWithin(start, start+w, straight) {
				continue
			}
			a, b := l.At(start), l.At(start+w)
			u := b.Sub(a).Unit()
			reads := readable(u)
			for _, side := range []plane.Point{reads.Left(), reads.Left().Mul(-1)} {
				centre := a.Toward(b, 0.5).Add(side.Mul(captionAway + half.Y + ink.PenOf(l.Role).Ring()))
				c := placedCaption{text.Label{
					Text: l.Name, Style: style, U: reads,
					At: centre.Sub(reads.Mul(half.X)).Sub(reads.Left().Mul(style.Middle())),
				}.MeasuredAs(half), side}
				if ink.Bounding(l.Role) && side.Dot(u.Left()) < 0 {
					outside = append(outside, c)
				} else if !yield(c) {
					return
				}
			}
		}
		for _, c := range outside {
			if !yield(c) {
				return
			}
		}
	}
}

// anchors are the places of a line of a piece that its name may stand near, on either side.
func (l Line) anchors(p Piece) []Anchor {
	var all []Anchor
	for k := range captionAnchors {
		along := l.Length() * (0.5 + stepFromMiddle(k)/(captionAnchors+1))
		at := l.At(along)
		side := l.At(math.Min(l.Length(), along+straight)).Sub(l.At(math.Max(0, along-straight))).Unit().Left()
		all = append(all,
			Anchor{At: at, Out: side, Within: p.Kind.CutOut(), Opposed: true},
			Anchor{At: at, Out: side.Mul(-1), Within: p.Kind.CutOut(), Opposed: true})
	}
	return all
}

// readable turns the direction of a text so that it reads from below or from
// the right.
func readable(u plane.Point) plane.Point {
	if angle := math.Atan2(u.Y, u.X); angle > math.Pi/2+tilt || angle <= -math.Pi/2+tilt {
		return u.Mul(-1)
	}
	return u
}

// stepFromMiddle counts 0, 1, -1, 2, -2, ...
func stepFromMiddle(k int) float64 {
	step := float64((k + 1) / 2)
	if k%2 == 0 {
		return -step
	}
	return step
}
