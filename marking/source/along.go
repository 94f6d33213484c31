package source

import (
	"slices"
)

// Piece returns what a file says of the piece of that key; nil where it has none.
func (s *Spec) Piece(key string) *PieceSpec {
	if s.byKey == nil {
		s.byKey = map[string]*PieceSpec{}
		for i := range s.Pieces {
			s.byKey[s.Pieces[i].Key] = &s.Pieces[i]
		}
	}
	return s.byKey[key]
}

// HasEdge reports whether a file has an edge of that name. It looks at the file as it
// is written, so that a piece with a mistake of its own is not reported as missing too.
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
