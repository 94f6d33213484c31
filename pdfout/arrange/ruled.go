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

// Rules of this file: on ruled paper whatever is written stands on its lines, on a ground of
// its own, and touches nothing else that is written. Every whole line has its number in it on
// every page that shows some of it: at either end of what the page shows, and between these no
// further apart than a hand is wide. Numbers stand upright, those of lines that run up in one
// row, those of level ones in one column, short of where lines cross. Where a join leaves no room
// in the line, its number stands against it.

const (
	// numberShare is how far from one crossing to the next a number stands in its line: where
	// it runs up, between two lines of eighths.
	numberShare = 7.0 / 16
	// numberEvery is the least from one number of a line to the next, in mm, numberMost what
	// is not passed where there is room, and numberLast the least from the one before to the
	// last.
	numberEvery = 45.0
	numberMost  = 55.0
	numberLast  = 15.0
	// ruledAway is how far a word stays from its place, in mm.
	ruledAway = 1.6
	// numberAside is kept free between a line and a number that stands against it, in mm.
	numberAside = 0.4
	// numberJoin is kept free between a number and a join, in mm.
	numberJoin = 0.3
)

// isRuled reports whether the sheet is ruled paper.
func (s *Sheet) isRuled() bool {
	return slices.ContainsFunc(s.Pieces, func(p Piece) bool { return p.Kind.Ruled() })
}

// numberLines writes the words of ruled paper by their places, and then the numbers of its whole
// lines into them.
func (s *Sheet) numberLines() {
	for _, p := range s.Pieces {
		for _, w := range p.words {
			room := way{away: ruledAway}.by(Anchor{At: w.At, Out: w.Out.Unit()}, wordOf(w))
			s.letter(LineLetter{w.Role, w.Text, styleOf(w), room.Centre, text.Across(), room})
		}
		var whole []Line
		for _, l := range p.Lines {
			if l.Role == mark.RuledWhole {
				whole = append(whole, l)
			}
		}
		for _, c := range s.Cells {
			core := s.Grid.CoreOf(c)
			// Those beside a join first: they have the least room.
			slices.SortStableFunc(whole, func(a, b Line) int { return cmp.Compare(within(core, a), within(core, b)) })
			for _, l := range whole {
				s.numberLine(p, l, numberPlaces(l, whole), c)
			}
		}
	}
}

// within is how far from the nearest side of a box along it a line lies that runs up or level,
// in mm; below 0 outside.
func within(box plane.Box, l Line) float64 {
	at, along := l.Path()[0], l.Path().StartDirection()
	if math.Abs(along.Y) > math.Abs(along.X) {
		return min(at.X-box.Min.X, box.Max.X-at.X)
	}
	return min(at.Y-box.Min.Y, box.Max.Y-at.Y)
}

// letter puts a letter on the sheet.
func (s *Sheet) letter(l LineLetter) {
	s.Field.Take(l.Room)
	s.Letters = append(s.Letters, l)
}

// numberPlaces are where the number of a line may stand, behind each crossing with one of others.
func numberPlaces(l Line, others []Line) []plane.Point {
	along := l.Path().StartDirection()
	var crossings []float64
	for _, o := range others {
		if math.Abs(o.Path().StartDirection().Dot(along)) < 0.5 {
			crossings = append(crossings, o.Path()[0].Sub(l.Path()[0]).Dot(along))
		}
	}
	slices.Sort(crossings)
	var places []plane.Point
	for i := 1; i < len(crossings); i++ {
		places = append(places, l.Path()[0].Add(along.Mul(crossings[i-1]+numberShare*(crossings[i]-crossings[i-1]))))
	}
	return places
}

// numberLine writes the number of a line at some of the places for it that are on the page of a
// cell: at the first and the last that are free, and between them in even rows, or where these are taken.
func (s *Sheet) numberLine(p Piece, l Line, places []plane.Point, c Cell) {
	core := s.Grid.CoreOf(c)
	places = slices.DeleteFunc(slices.Clone(places), func(at plane.Point) bool { return !core.Holds(at) })
	type number struct {
		LineLetter
		even bool
	}
	var free []number
	for i, at := range places {
		if n, ok := s.numberAt(p, l, at, c); ok {
			row := places[0].Distance(at) / numberEvery
			free = append(free, number{n, i == 0 || math.Floor(row) > math.Floor(places[0].Distance(places[i-1])/numberEvery)})
		}
	}
	var before plane.Point
	for i, n := range free {
		away := before.Distance(n.At)
		if i == 0 || away >= numberMost || (n.even || i == len(free)-1) && away >= numberLast {
			s.letter(n.LineLetter)
			before = n.At
		}
	}
}

// numberAt is the number of a line at a place of it, in it or against it, if it may stand there:
// clear of what is written, and of lines that are none of the ruled ones.
func (s *Sheet) numberAt(p Piece, l Line, at plane.Point, c Cell) (LineLetter, bool) {
	style := ink.LineNumber(l.Role)
	half := ink.LetterHalf(style, l.Name)
	clear := s.Grid.within(c, s.Grid.WindowOf(c), s.Grid.Overlap/2+numberJoin)
	square := l.Path().StartDirection().Left()
	aside := square.Mul(math.Abs(square.X)*half.X + math.Abs(square.Y)*half.Y + numberAside)
	for _, step := range []plane.Point{{}, aside, aside.Mul(-1)} {
		room := text.Level(at.Add(step), half)
		if b := room.Bounds(); clear.Holds(b.Min) && clear.Holds(b.Max) && !s.Field.meetsPlaced(room) && !p.isDrawnIn(room) {
			return LineLetter{l.Role, l.Name, style, room.Centre, text.Across(), room}, true
		}
	}
	return LineLetter{}, false
}

// isDrawnIn reports whether a line that is none of ruled paper runs through a room.
func (p Piece) isDrawnIn(room text.Slab) bool {
	return slices.ContainsFunc(p.Lines, func(l Line) bool { return !l.Role.OnRuledPaper() && segmentsIn(l.Tree, room) > 0 })
}
