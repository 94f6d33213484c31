package source

import (
	"slices"
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
