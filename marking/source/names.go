package source

import (
	"slices"

	"tuckmark/marking/fault"
)

// Rules of this file: names are looked up in the file as it is written, so that a piece
// with a mistake of its own is not reported as missing too.

// Piece returns what a file says of the piece of that key; nil where it has none.
func (s *Spec) Piece(key string) *PieceSpec {
	for i := range s.Pieces {
		if s.Pieces[i].Key == key {
			return &s.Pieces[i]
		}
	}
	return nil
}

// HasEdge reports whether a file has an edge of that name.
func (s *Spec) HasEdge(piece, edge string) bool {
	ps := s.Piece(piece)
	return ps != nil && slices.ContainsFunc(ps.Edges, func(e EdgeSpec) bool { return e.Key == edge })
}

// HasCourse reports whether a file has an edge or a line of that name.
func (s *Spec) HasCourse(piece, course string) bool {
	ps := s.Piece(piece)
	return s.HasEdge(piece, course) ||
		ps != nil && slices.ContainsFunc(ps.Lines, func(l LineSpec) bool { return l.Key == course })
}

// CheckPieceNames returns what Read would find wrong with pieces of these names, without
// places. printable is as for Read.
func CheckPieceNames(names []string, printable func(rune) bool) fault.List {
	if err := refuseMany(len(names)); err != nil {
		return fault.List{fault.At(fault.Place{}, err)}
	}
	var all fault.List
	times := map[string]int{}
	for _, name := range names {
		at := fault.Place{Key: "piece"}.Under(name)
		if err := checkKey(name, printable); err != nil {
			all = append(all, fault.At(at, err))
		}
		if times[name]++; times[name] == 2 {
			all = append(all, &fault.Fault{Place: at, Cause: "is given twice", Hint: "give each a name of its own"})
		}
	}
	return all
}

// CheckPrinted returns why Read would refuse a title or a size; nil where it would not.
func CheckPrinted(text string, printable func(rune) bool) error {
	return checkLetters(text, printable)
}
