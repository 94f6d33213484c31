package source

import (
	"tuckmark/marking/fault"
)

// Rules of this file: names are looked up in the file as it is written, so that a piece
// with a mistake of its own is not reported as missing too.

// Names are the pieces of a Spec, and their edges and lines, to be looked up: each look takes as
// long in a large garment as in a small one.
type Names struct {
	pieces map[string]*PieceSpec
	kinds  map[courseName]kinds
}

// courseName names an edge or a line of a piece.
type courseName struct{ piece, course string }

// kinds is what a name may stand for: an edge, a line, or both.
type kinds struct{ edge, line bool }

// Names returns the names of the pieces, edges and lines that a Spec has now. Of pieces of one key
// the first counts.
func (s *Spec) Names() Names {
	n := Names{map[string]*PieceSpec{}, map[courseName]kinds{}}
	for i := range s.Pieces {
		one := &s.Pieces[i]
		if n.pieces[one.Key] != nil {
			continue
		}
		n.pieces[one.Key] = one
		for _, e := range one.Edges {
			n.kinds[courseName{one.Key, e.Key}] = kinds{edge: true}
		}
		for _, l := range one.Lines {
			name := courseName{one.Key, l.Key}
			n.kinds[name] = kinds{edge: n.kinds[name].edge, line: true}
		}
	}
	return n
}

// Piece returns what a file says of the piece of that key; nil where it has none.
func (n Names) Piece(key string) *PieceSpec { return n.pieces[key] }

// HasEdge reports whether a file has an edge of that name.
func (n Names) HasEdge(piece, edge string) bool { return n.kinds[courseName{piece, edge}].edge }

// HasCourse reports whether a file has an edge or a line of that name.
func (n Names) HasCourse(piece, course string) bool {
	return n.kinds[courseName{piece, course}] != kinds{}
}

// CheckPieceNames returns what Read would find wrong with pieces of these names, without
// places. printable is as for Read.
func CheckPieceNames(names []string, printable func(rune) bool) fault.List {
	if err := refuseMany("piece", len(names)); err != nil {
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
