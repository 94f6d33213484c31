package arrange

import (
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
// further apart than a hand is wide. Where a line begins, its number stands before it, outside
// the ruled part, if the page has room there. Numbers stand upright, those of lines that run up
// in one row, those of level ones in one column, short of where lines cross. The middle of a
// number is on its own line, always: what stands in its way it passes along the line, and where
// there is no room it is left out. One that a join runs through is on both pages.

const (
	// numberShare is how far from one crossing to the next a number stands in its line: where
	// it runs up, between two lines of eighths. In steps of numberStep it goes to either side
	// where something stands there.
	numberShare = 7.0 / 16
	numberStep  = 1.0 / 16
	// numberShort is how far a number stays from crossings and from what is written, in mm,
	// numberUnder how far one in a line that runs up stays from level ones, for the numbers of
	// these, and numberBefore how far before the beginning of its line a number stands.
	numberShort  = 0.5
	numberUnder  = 2.0
	numberBefore = 1.3
	// numberEvery is the least from one number of a line to the next, in mm, numberMost what
	// is not passed where there is room, and numberLast the least from the one before to the
	// last.
	numberEvery = 45.0
	numberMost  = 55.0
	numberLast  = 15.0
	// ruledAway is how far a word stays from its place, in mm.
	ruledAway = 1.6
	// numberJoin is kept free between a number and a join that its line crosses, in mm.
	numberJoin = 0.6
)

// isRuled reports whether the sheet is ruled paper.
func (s *Sheet) isRuled() bool {
	return slices.ContainsFunc(s.Pieces, func(p Piece) bool { return p.Kind.Ruled() })
}

// wholeLines are those that have numbers.
func (p Piece) wholeLines() []Line {
	return slices.DeleteFunc(slices.Clone(p.Lines), func(l Line) bool { return l.Role != mark.RuledWhole })
}

// runsUp reports whether a ruled line does; else it is level.
func (l Line) runsUp() bool { return l.Bounds().Height() > l.Bounds().Width() }

// Numbered returns ruled paper with room for the numbers before its lines, to the left of it
// and below, where it takes no more pages with that; else the piece as it is.
func (p Piece) Numbered(page Grid) Piece {
	if !p.Kind.Ruled() {
		return p
	}
	all := p.Bounds
	for _, l := range p.wholeLines() {
		all = all.Union(numberOf(l, numberPlaces(l, nil)[0][0]).Room.Bounds())
	}
	q := p
	if q.around.min.X = p.Bounds.Min.X - all.Min.X; windowsFor(q.Room().X, page.Window.X, page.Overlap) == windowsFor(p.Room().X, page.Window.X, page.Overlap) {
		p = q
	}
	q = p
	if q.around.min.Y = p.Bounds.Min.Y - all.Min.Y; windowsFor(q.Room().Y, page.Window.Y, page.Overlap) == windowsFor(p.Room().Y, page.Window.Y, page.Overlap) {
		p = q
	}
	return p
}

// numberLines writes the words of ruled paper by their places, and then the numbers of its whole
// lines into them.
func (s *Sheet) numberLines() {
	for _, p := range s.Pieces {
		for _, w := range p.words {
			room := turned(ruledAway, 0).by(Anchor{At: w.At, Out: w.Out.Unit()}, wordOf(w))
			s.letter(LineLetter{w.Role, w.Text, styleOf(w), room.Centre, text.Across(), room})
		}
		whole := p.wholeLines()
		for _, l := range whole {
			places := numberPlaces(l, whole)
			for _, c := range s.Cells {
				s.numberLine(p, l, places, c)
			}
		}
	}
}

// letter puts a letter on the sheet.
func (s *Sheet) letter(l LineLetter) {
	s.Field.Take(l.Room)
	s.Letters = append(s.Letters, l)
}

// numberOf is the number of a line with its middle at a place of it.
func numberOf(l Line, at plane.Point) LineLetter {
	style := ink.LineNumber(l.Role)
	return LineLetter{l.Role, l.Name, style, at, text.Across(), text.Level(at, ink.LetterHalf(style, l.Name))}
}

// numberPlaces are where the number of a line may stand: before it, and behind each crossing
// with one of others. Of each of these the places come first that it rather has.
func numberPlaces(l Line, others []Line) [][]plane.Point {
	from, along := l.Path()[0], l.Path().StartDirection()
	half := numberOf(l, from).Room.Bounds().Max.Sub(from).Dot(plane.Point{X: math.Abs(along.X), Y: math.Abs(along.Y)})
	short := numberShort
	if l.runsUp() {
		short = numberUnder
	}
	places := [][]plane.Point{{from.Sub(along.Mul(numberBefore + half))}}
	var crossings []float64
	for _, o := range others {
		if math.Abs(o.Path().StartDirection().Dot(along)) < 0.5 {
			crossings = append(crossings, o.Path()[0].Sub(from).Dot(along))
		}
	}
	slices.Sort(crossings)
	for i := 1; i < len(crossings); i++ {
		step := crossings[i] - crossings[i-1]
		var behind []plane.Point
		for try := range int(2 / numberStep) {
			if at := step * (numberShare + stepFromMiddle(try)*numberStep); min(at, step-at) >= half+short {
				behind = append(behind, from.Add(along.Mul(crossings[i-1]+at)))
			}
		}
		places = append(places, behind)
	}
	return places
}

// numberLine writes the number of a line at some of the places for it that are on the page of a
// cell: at the first and the last that are free, and between them in even rows, or where these are taken.
func (s *Sheet) numberLine(p Piece, l Line, places [][]plane.Point, c Cell) {
	places = slices.DeleteFunc(slices.Clone(places), func(tries []plane.Point) bool {
		return !slices.ContainsFunc(tries, s.Grid.CoreOf(c).Holds)
	})
	type number struct {
		LineLetter
		even bool
	}
	var free []number
	for i, tries := range places {
		row := func(i int) float64 { return math.Floor(places[0][0].Distance(places[i][0]) / numberEvery) }
		if at := slices.IndexFunc(tries, func(at plane.Point) bool { return s.numberFits(p, l, at, c) }); at >= 0 {
			free = append(free, number{numberOf(l, tries[at]), i == 0 || row(i) > row(i-1)})
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

// numberFits reports whether the number of a line may stand at a place of it, on the page of a cell:
// short of the joins that the line crosses, clear of what is written, and of lines that are none
// of the ruled ones.
func (s *Sheet) numberFits(p Piece, l Line, at plane.Point, c Cell) bool {
	room := numberOf(l, at).Room
	page := s.Grid.WindowOf(c)
	clear := s.Grid.within(c, page, s.Grid.Overlap/2+numberJoin)
	if l.runsUp() {
		clear.Min.X, clear.Max.X = page.Min.X, page.Max.X
	} else {
		clear.Min.Y, clear.Max.Y = page.Min.Y, page.Max.Y
	}
	b := room.Bounds()
	return s.Grid.CoreOf(c).Holds(at) && clear.Holds(b.Min) && clear.Holds(b.Max) && !s.Field.meetsPlaced(room.Grown(numberShort)) && !p.isDrawnIn(room)
}

// isDrawnIn reports whether a line that is none of ruled paper runs through a room.
func (p Piece) isDrawnIn(room text.Slab) bool {
	return slices.ContainsFunc(p.Lines, func(l Line) bool { return !l.Role.OnRuledPaper() && segmentsIn(l.Tree, room) > 0 })
}
