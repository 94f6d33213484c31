package board

import "slices"

// Rules of this file: no more is on one board than can be told apart there, and than a browser is
// sent in one piece. Where there is more, it lies on several boards. Keys are on each of them.

// most is how many parts are on one board, without keys: as pages, about a megabyte.
const most = 100

// Lots are the boards, in the order of their parts, on which those of a board in rows lie: that
// board alone where it has no more than one can have.
func (b Board) Lots() []Board {
	isKey := func(p Part) bool { return p.Name == "" }
	keys := slices.DeleteFunc(slices.Clone(b.Parts), func(p Part) bool { return !isKey(p) })
	named := slices.DeleteFunc(slices.Clone(b.Parts), isKey)
	if len(named) <= most {
		return []Board{b}
	}
	var all []Board
	for lot := range slices.Chunk(named, most) {
		all = append(all, flow(slices.Concat(lot, keys)))
	}
	return all
}

// Span is the numbers of the first part and of the last one that is no key; 0 of an empty board.
func (b Board) Span() (first, last int) {
	for _, p := range b.Parts {
		if p.Name == "" {
			continue
		}
		if first == 0 {
			first = p.Number
		}
		last = p.Number
	}
	return first, last
}
