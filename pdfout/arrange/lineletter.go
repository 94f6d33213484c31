package arrange

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: letters stand in long lines at even distances. A letter and its gap lie
// where the line is straight, on one page and clear of its joins, away from the line's ends
// and corners, and where no other line and no text is near; where there is no such place it
// is left out.

const (
	// letterEvery is about how far letters of a line stand apart, in mm: one on every page
	// at least, and letterLeast the shortest line that has one.
	letterEvery = 110.0
	letterLeast = 50.0
	// letterAside is by how much a letter may stand off its even place, in mm, and
	// letterTry from one place that is tried to the next.
	letterAside = 24.0
	letterTry   = 4.0
	// letterRoom is what is kept free beside a letter, in mm, and letterEnd along its line.
	letterRoom = 1.0
	letterEnd  = 3.0
	// letterBend bounds how far a line strays from the straight in a letter's gap, in mm.
	letterBend = 0.25
)

// LineLetter is a letter, or a number, in its line.
type LineLetter struct {
	Role  mark.Role // of the line
	Text  string
	Style ink.Style
	At    plane.Point // its middle, on the line
	U     plane.Point // the direction it reads in, of length 1
	Room  text.Slab
}

// letterLines finds the places of all letters in lines.
func (s *Sheet) letterLines() {
	for _, p := range s.Pieces {
		for _, l := range p.Lines {
			if ink.PenOf(l.Role).Letter() == "" || l.Length() < letterLeast {
				continue
			}
			n := math.Ceil(l.Length()/letterEvery - 0.5)
			for k := range int(max(1, n)) {
				even := (float64(k) + 0.5) * l.Length() / max(1, n)
				for try := range int(2*letterAside/letterTry) + 1 {
					if letter, ok := s.letterAt(l, even+stepFromMiddle(try)*letterTry); ok {
						s.Field.Take(letter.Room)
						s.Letters = append(s.Letters, letter)
						break
					}
				}
			}
		}
	}
}

// letterAt is the letter of a line so many mm along it, if it may stand there.
func (s *Sheet) letterAt(l Line, along float64) (LineLetter, bool) {
	letter, style := ink.PenOf(l.Role).Letter(), ink.LineNumber(l.Role)
	half := ink.LetterHalf(style, letter)
	reach := half.X + letterEnd
	if along < reach || along > l.Length()-reach || !s.look() {
		return LineLetter{}, false
	}
	from, at, to := l.At(along-reach), l.At(along), l.At(along+reach)
	u := to.Sub(from).Unit()
	room := text.Slab{Centre: at, Half: half, U: readable(u)}
	near := room
	near.Half = plane.Point{X: reach, Y: half.Y + letterRoom}
	own := segmentsIn(l.Tree, near)
	free := l.staysWithin(along-reach, along+reach, letterBend) && s.Whole(room.Bounds()) &&
		!s.Field.meetsPlaced(near) && s.Field.Crossings(near, own+1) == own
	return LineLetter{l.Role, letter, style, at, readable(u), room}, free
}

// staysWithin reports whether a line between two places of it strays from the straight by
// no more than some mm.
func (l Line) staysWithin(from, to, most float64) bool {
	const looks = 8
	a, b := l.At(from), l.At(to)
	u := b.Sub(a).Unit()
	if to-from-b.Distance(a) > most {
		return false
	}
	for i := 1; i < looks; i++ {
		if math.Abs(l.At(from+(to-from)*float64(i)/looks).Sub(a).Cross(u)) > most {
			return false
		}
	}
	return true
}
