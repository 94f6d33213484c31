package sheet

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
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
// ruler of a tucked block. A piece that has nothing to be drawn along or through has no
// template.

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

// Dotted returns the pattern with lines pricked no farther apart than mm. The error
// is a *Fault without a place.
func Dotted(p *garment.Pattern, mm float64) (*garment.Pattern, error) {
	if !(mm >= leastDots && mm <= mostDots) {
		return nil, &fault.Fault{Cause: "these dots are too close together or too far apart",
			Hint: fmt.Sprintf("they may be from %.0f mm to %.0f mm apart; 1/4 in serves most cloth", leastDots, mostDots)}
	}
	other := *p
	other.Dots = mm
	return &other, nil
}

// transferBy says whether a template comes with the sheet that a piece is cut by, which
// then has the same match marks.
type transferBy int

const (
	withoutTemplate transferBy = iota
	withTemplate
)

// sheetsOf returns the sheets of a piece, for every way in which its lines come onto
// the cloth.
func sheetsOf(p *piece.Piece, pattern *garment.Pattern) []mark.Marking {
	ways := transfersOf(p, pattern)
	by := withoutTemplate
	var template mark.Marking
	if slices.Contains(ways, source.Template) {
		if m, useful := templateSheet(p, pattern); useful {
			template, by = m, withTemplate
		}
	}
	sheets := patternSheets(p, pattern, by)
	var all []mark.Marking
	add := func(m mark.Marking) {
		if p.Pair {
			all = append(all, asPair(m)...)
		} else {
			all = append(all, m)
		}
	}
	for _, way := range ways {
		if way == source.Template && by == withTemplate {
			add(template)
		}
		for _, s := range sheets {
			switch {
			case way == source.Template && !s.tool:
			case s.tool: // it serves whichever way the cloth is marked
				all = append(all, s.Marking)
			case way == source.Mirror && !s.onTucked && (p.Pair || !p.OnFold && p.Cut/p.Layers > 1):
				all = append(all, forWrongSides(s.Marking)...)
			case way == source.Mirror && !s.onTucked:
				all = append(all, forWrongSide(s.Marking))
			case way == source.Prick && !s.onTucked:
				add(pricked(s.Marking, dotsApart(pattern), otherHalf(p)...))
			default:
				add(s.Marking)
			}
		}
	}
	return withoutRepeats(all)
}

// patternSheet is a sheet by which a piece is marked or cut.
type patternSheet struct {
	mark.Marking
	tool     bool // it is a ruler, the same for all ways
	onTucked bool // it is laid on the tucked cloth, and cut by
}

// patternSheets returns the sheets by which a piece is marked and cut.
func patternSheets(p *piece.Piece, pattern *garment.Pattern, by transferBy) []patternSheet {
	if p.Block == nil {
		return []patternSheet{{Marking: markingSheet(p, pattern, by)}}
	}
	return []patternSheet{
		{Marking: tuckSheet(p, pattern)},
		{Marking: tuckRuler(p, pattern), tool: true},
		{Marking: cuttingSheet(p, pattern, by), onTucked: true},
	}
}

// withoutRepeats returns the markings without those of which there is one of the same
// key already: a tool comes once.
func withoutRepeats(all []mark.Marking) []mark.Marking {
	seen := map[string]bool{}
	return slices.DeleteFunc(all, func(m mark.Marking) bool {
		was := seen[m.Key]
		seen[m.Key] = true
		return was
	})
}

// dotsApart is how far apart dots are pricked, in mm.
func dotsApart(pattern *garment.Pattern) float64 {
	if pattern.Dots > 0 {
		return pattern.Dots
	}
	return usualDots
}

// transfersOf returns how the lines of a piece come onto the cloth.
func transfersOf(p *piece.Piece, pattern *garment.Pattern) []source.Transfer {
	if len(p.Transfers) > 0 {
		return p.Transfers
	}
	return pattern.Transfers
}
