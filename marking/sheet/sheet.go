package sheet

import (
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Of returns the markings of every piece, in the order of the file, as many as the ways
// in which its lines come onto the cloth ask for. Pieces that are alike have theirs
// together. In front of them come the samples to be sewn first.
func Of(p *garment.Pattern) []mark.Marking {
	all := samples(p)
	dots := dottingOf(p)
	for i := range p.Pieces {
		all = append(all, sheetsOf(&p.Pieces[i], p, dots)...)
	}
	return onceEach(all)
}

// pieceSheets is what the sheets of a piece are made of, whichever way its lines come
// onto the cloth.
type pieceSheets struct {
	piece *piece.Piece
	ways  []source.Transfer // that are wanted
	// flat is the sheet for the flat cloth: the marking sheet of the piece, or the tuck
	// sheet of its block.
	flat mark.Marking
	// after is what is done once the cloth is marked by it.
	after []string
	// ruler and cutting are the other sheets of a piece that is cut from a tucked block,
	// the same for every way: a tool, until it is tucked, and what is laid on the tucked cloth,
	// right side up. By that its other lines are dotted, where they come through no template.
	ruler, cutting []mark.Marking
	template       *template // nil where none is asked for, or it is of no use
	dots           dotting   // how far apart they are pricked
}

// sheetsOf returns the sheets of a piece, each once, in the order of the ways in which
// its lines come onto the cloth.
func sheetsOf(p *piece.Piece, pattern *garment.Pattern, dots dotting) []mark.Marking {
	ways := waysOf(p, pattern)
	s := pieceSheets{piece: p, ways: ways, dots: dots}
	if slices.Contains(ways, source.Template) {
		if t := templateOf(p, ways, pattern.Unit); t.useful {
			s.template = t
		}
	}
	if p.Block == nil {
		s.flat = markingSheet(p, pattern, s.template)
	} else {
		s.flat, s.after = tuckSheet(p, pattern), blockSteps(p, pattern.Unit)
		if !p.IsTucked() {
			s.ruler = []mark.Marking{tuckRuler(p, pattern)}
		}
		cutting := cuttingSheet(p, pattern, s.template)
		if s.template == nil && areDotted(askedFor(p, pattern)) {
			cutting = dots.onTucked(cutting)
		}
		s.cutting = s.printed(cutting)
	}
	var all []mark.Marking
	for _, way := range ways {
		for _, m := range transfers[way](s) {
			if !slices.ContainsFunc(all, func(have mark.Marking) bool { return have.Key == m.Key }) {
				all = append(all, m)
			}
		}
	}
	if s.template == nil && areTemplateAlone(ways) {
		all = append(all, s.plain()...)
	}
	return all
}

// waysOf are the ways in which the lines of a piece come onto the cloth. One that is cut from a
// block is never marked by its template alone: it has the sheets of its block too. Onto one that is
// tucked already no line is brought but round the cutting sheet, and along a template.
func waysOf(p *piece.Piece, pattern *garment.Pattern) []source.Transfer {
	ways := askedFor(p, pattern)
	if p.IsTucked() {
		ways = slices.DeleteFunc(slices.Clone(ways), func(way source.Transfer) bool { return way != source.Template })
	}
	if p.Block != nil && areTemplateAlone(ways) {
		return append([]source.Transfer{source.Trace}, ways...)
	}
	return ways
}

// askedFor are the ways that a piece asks for, or else the pattern.
func askedFor(p *piece.Piece, pattern *garment.Pattern) []source.Transfer {
	if len(p.Transfers) > 0 {
		return p.Transfers
	}
	return pattern.Transfers
}

// areDotted reports whether the lines of a piece are brought onto cloth that nothing is traced
// through: those on a block that is tucked are dotted then.
func areDotted(ways []source.Transfer) bool {
	return slices.Contains(ways, source.Prick) || slices.Contains(ways, source.Mirror)
}

// areTemplateAlone reports whether a piece that is marked in these ways has no other sheet than its
// template.
func areTemplateAlone(ways []source.Transfer) bool {
	return !slices.ContainsFunc(ways, func(way source.Transfer) bool { return way != source.Template })
}

// printed returns a marking as it is drawn and, where the file asks for left and right,
// turned over as well.
func (s pieceSheets) printed(m mark.Marking) []mark.Marking {
	if s.piece.Pair {
		return asPair(s.piece, m)
	}
	return []mark.Marking{m}
}

// withBlock returns the sheets of one way for the flat cloth, with what is done once it is
// marked, and the others of a tucked block.
func (s pieceSheets) withBlock(flat []mark.Marking) []mark.Marking {
	for i := range flat {
		flat[i] = flat[i].With(s.after...)
	}
	return slices.Concat(flat, s.ruler, s.cutting)
}
