package arrange

import "tuckmark/pdfout/ink"

// Rules of this file: what has no room by its place stands in a key of its piece. A number in
// the key stands by that place as well, and none stands there that is not in the key. What
// has not even room for a number is told in the key without one, and that it has no room.

// key is what the numbers by the places of a piece stand for.
type key struct {
	numbers int // that stand by places
	lines   []string
}

// keyOf returns the key of a piece, for more to be written into it.
func (s *Sheet) keyOf(p Piece) *key {
	if s.keys == nil {
		s.keys = map[string]*key{}
	}
	if s.keys[p.Key] == nil {
		s.keys[p.Key] = &key{}
	}
	return s.keys[p.Key]
}

// tellKeys writes the keys of all pieces that have one. One without room on the pages of its
// piece is kept in Apart.
func (s *Sheet) tellKeys() {
	for _, p := range s.Pieces {
		k := s.keys[p.Key]
		if k == nil {
			continue
		}
		t := Wrapped(p.Name+": key", ink.Heading(), usualPanel)
		for _, line := range k.lines {
			t.add(Wrapped(line, ink.Text(), usualPanel), itemGap)
		}
		if _, ok := s.beside(p, t); ok {
			continue
		}
		if _, ok := s.onPages(p, t); !ok {
			s.Apart = append(s.Apart, Panel{p.Name, t})
		}
	}
}
