package piece

import (
	"cmp"
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: where the allowance of every edge that gives none is too wide for several
// pieces, that is one mistake, and not one at every edge. It is to blame where no edge of the
// piece has a wider one of its own, or a deeper hem.

// tooWide is that the usual allowance is too wide for a piece.
type tooWide struct {
	piece  string     // its name
	faults fault.List // that follow, each of one edge
}

// blameUsual notes what was found of the stitch lines of a piece where the usual allowance is to
// blame for it.
func (f *Findings) blameUsual(p *Piece, usual source.Length, found fault.List) {
	wider := func(e Edge) bool { return e.Allowance > usual.V }
	if usual.Given() && len(found) > 0 && !slices.ContainsFunc(p.Edges, wider) {
		f.tooWide = append(f.tooWide, tooWide{p.Name, slices.Clone(found)})
	}
}

// usualIn says, behind a hint, in which line the allowance stands that one of some edges has
// because it gives none; "" where none has, or where no line is known.
func usualIn(edges ...Edge) string {
	for _, e := range edges {
		if at := e.usual; at.Line > 0 && at.File == e.Place.File {
			return fmt.Sprintf("; the allowance in line %d is for every edge that gives none", at.Line)
		}
	}
	return ""
}

// mostEdgesTold is how many edges of a piece are named for which an allowance is too wide.
const mostEdgesTold = 4

// TellUsual tells once that the usual allowance is too wide, where it is for several pieces.
func (f *Findings) TellUsual(usual source.Length) {
	if len(f.tooWide) < 2 {
		return
	}
	var pieces []string
	for _, one := range f.tooWide {
		slices.SortStableFunc(one.faults, func(a, b *fault.Fault) int { return cmp.Compare(a.Place.Line, b.Place.Line) })
		var edges []string
		for _, at := range one.faults {
			if edge := at.Place.Last(); !slices.Contains(edges, edge) {
				edges = append(edges, edge)
			}
		}
		pieces = append(pieces, one.piece+" (at "+wording.Listed(wording.FirstOf(edges, mostEdgesTold), "and")+")")
		f.List = slices.DeleteFunc(f.List, func(at *fault.Fault) bool { return slices.Contains(one.faults, at) })
	}
	f.Add(usual.Place, "make it narrower, or give those edges allowances of their own",
		"%s is too wide an allowance for %s", f.Written(usual.V), wording.Listed(wording.Few(pieces), "and"))
}
