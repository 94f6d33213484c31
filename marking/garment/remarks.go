package garment

import (
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: of a pattern without mistakes it says what a teacher would point
// at: what may have been left out, what does not match, and what is out of the common.

// unspaced asks about fractions in which a space may be missing, about each once.
func unspaced(spec *source.Spec) []piece.Remark {
	places := map[string]int{}
	for _, u := range spec.Unspaced {
		places[u.V.Written]++
	}
	var all []piece.Remark
	for _, u := range spec.Unspaced {
		switch n := places[u.V.Written]; n {
		case 0: // asked about
		case 1:
			all = append(all, piece.Remark{Place: u.Place, Text: u.V.String()})
		default:
			all = append(all, piece.Remark{Place: u.Place, Text: u.V.String() + ", here and in " + wording.Counted(n-1, "other place")})
		}
		delete(places, u.V.Written)
	}
	return all
}

// remarks returns what is said of a pattern, its pieces and what joins them.
func remarks(p *Pattern, spec *source.Spec) []piece.Remark {
	all := append(omissions(p, spec), unspaced(spec)...)
	outOfSize := sizes(p)
	if len(outOfSize) == 0 {
		outOfSize = outOfChildren(p, spec)
	}
	all = append(all, outOfSize...)
	for i := range p.Pieces {
		one := &p.Pieces[i]
		all = append(all, p.noFold(one)...)
		all = append(all, one.Remarks(p.Unit)...)
		all = append(all, one.StepRemarks(p.Unit, func(edge int) bool { return p.likelySewn(one, edge) })...)
	}
	all = append(all, p.noTurn()...)
	say := func(at fault.Place, text string) {
		if text != "" {
			all = append(all, piece.Remark{Place: at, Text: text, InTable: true})
		}
	}
	for _, s := range p.Seams {
		say(s.place, joinTexts("; ", s.Mismatch(length.Amount.String), s.Advice(length.Amount.String)))
		if bare := p.noAllowance(s); bare != "" {
			all = append(all, piece.Remark{Place: s.place, Text: bare})
		} else {
			say(s.place, s.AllowancesDiffer(length.Amount.String))
		}
		say(s.place, s.EaseAndGathers(length.Amount.String))
		say(s.place, s.FullnessWarning())
		say(s.place, s.NotchesTurned(length.Amount.String))
		text, write := s.MeetUndecided()
		say(s.place, joinTexts("; ", text, write))
	}
	for _, t := range p.Trims {
		if turns := t.LeftOut(); turns != "" {
			say(t.place, "the line has "+turns+", and no width is given: what they take is not reckoned in")
		}
		say(t.place, t.NoRoom(length.Amount.String))
		if over := t.overTucks(length.Amount.String); over != "" {
			all = append(all, piece.Remark{Place: t.place, Text: over})
		}
	}
	for _, r := range p.Ruffles {
		say(r.place, r.FullnessWarning())
		if deep := r.tooDeep(length.Amount.String); deep != "" {
			all = append(all, piece.Remark{Place: r.place, Text: deep})
		}
	}
	all = append(all, p.linings()...)
	return append(all, p.Measures.remarks()...)
}

// joinTexts joins those of some texts that say something.
func joinTexts(by string, texts ...string) string {
	return strings.Join(slices.DeleteFunc(texts, func(text string) bool { return text == "" }), by)
}

// likelySewn reports whether an edge is sewn to another: a seam of the file joins it, or it is
// straight, as side and shoulder are in a file without seams. A curved edge is a neck, say,
// that is trued when it is finished.
func (p *Pattern) likelySewn(of *piece.Piece, edge int) bool {
	return seams(p.Seams).joins(edgeOf{of, edge}) || of.Edges[edge].Given.Straightness() <= piece.Straightness
}
