package sheet

import (
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file. Sheer cloth lies over the sheet and is traced. Every other
// cloth has a template of paper, along whose edges and in whose windows it is marked;
// a mirrored sheet, laid on the wrong side with tracing paper and gone over with a
// wheel; or a pricked sheet, through whose holes it is dotted. What the command line
// asks for goes before what a piece asks for, and that before what the cloth asks
// for. What is no pattern of a piece stays as it is: a sample to be sewn, and the
// ruler of a tucked block. A piece that is cut by its template alone is marked by it before that,
// and cut with the allowance beyond it; one from a tucked block never is, since the block has lines
// and crosses that no template has. A piece that has nothing to be drawn along or through has no
// template; where that is the only way asked for, it has its plain sheet, which says so.

// transfers has for every way the sheets with which it brings the lines of a piece onto
// the cloth. A way is added as a row here, with a name in marking/source/transfer.go and a
// file of this room that makes its sheet.
var transfers = [...]func(pieceSheets) []mark.Marking{
	source.Trace:    pieceSheets.traced,
	source.Template: pieceSheets.templates,
	source.Mirror:   func(s pieceSheets) []mark.Marking { return s.withBlock(forWrongSide(s.piece, s.flat)) },
	source.Prick: func(s pieceSheets) []mark.Marking {
		return s.withBlock(s.printed(pricked(s.flat, s.dots, s.turned()...)))
	},
}

// traced returns the sheet over which sheer cloth is laid. Through what lies folded the lines of
// the one half show on the other; beside a template the sheet is for cutting, and nothing need show.
// A block is never folded, and nothing is traced onto one that is tucked.
func (s pieceSheets) traced() []mark.Marking {
	m := s.flat
	switch {
	case s.piece.IsTucked():
	case s.piece.LiesFolded():
		if isOfHalf(s.piece) && !slices.Contains(s.ways, source.Template) {
			m = m.With(throughFolded)
		}
	default:
		m = m.With(s.turned()...)
	}
	return s.withBlock(s.printed(m))
}

// turned is the note on the sheet for the flat cloth that it is turned over; none where it has both
// halves, or another has the second.
func (s pieceSheets) turned() []string {
	if s.piece.OnFold && !isOfHalf(s.piece) {
		return nil
	}
	return otherHalf(s.piece)
}

// throughFolded is the step by which both halves of a piece on the fold are traced (common practice).
const throughFolded = "trace the upper layer; turn the folded cloth over, and trace the lines that show through onto the other half"

// templates returns the template of the piece.
func (s pieceSheets) templates() []mark.Marking {
	if s.template == nil {
		return nil
	}
	return s.printed(s.template.Marking)
}

// plain returns what a piece is cut by that was to have a template alone, and has none.
func (s pieceSheets) plain() []mark.Marking {
	sheets := s.printed(s.flat)
	for i := range sheets {
		sheets[i] = sheets[i].With(noTemplate)
	}
	return sheets
}

// noTemplate is the step on the plain sheet of a piece without a template.
const noTemplate = "cut the piece by this sheet: it has nothing to be drawn along or through, and so no template"

// InsteadOfTemplate reports whether a marking is the plain sheet of a piece that was to have
// a template, and has none.
func InsteadOfTemplate(m mark.Marking) bool { return slices.Contains(m.Steps, noTemplate) }

// HasPricked reports whether the lines of a piece of the pattern come onto the cloth through
// dots that are pricked.
func HasPricked(p *garment.Pattern) bool {
	return slices.ContainsFunc(p.Pieces, func(one piece.Piece) bool { return slices.Contains(waysOf(&one, p), source.Prick) })
}

// Transferred returns the pattern with every piece transferred in the ways given,
// whatever the file says.
func Transferred(p *garment.Pattern, ways []source.Transfer) *garment.Pattern {
	other := *p
	other.Pieces = slices.Clone(p.Pieces)
	for i := range other.Pieces {
		other.Pieces[i].Transfers = ways
	}
	return &other
}
