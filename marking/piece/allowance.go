package piece

import (
	"tuckmark/marking/source"
)

// Rules of this file. Every edge has its own allowance, or hem and turn, or that of the
// whole file; on the fold of the cloth there is none. Where the file draws the stitch
// lines, that makes the cutting line (cutoutline.go).

// takeAllowances settles the allowances of all edges, and where the cutting line lies. It
// returns false where there can be none.
func takeAllowances(piece *Piece, ps source.PieceSpec, allowance source.Length, found *Findings) bool {
	specs := map[string]source.EdgeSpec{}
	for _, es := range ps.Edges {
		specs[es.Key] = es
	}
	for i := range piece.Edges {
		e := &piece.Edges[i]
		e.Given = e.Path
		takeAllowance(e, specs[e.Key], allowance, found)
		if ps.DrawnTo.V == source.DrawnToStitching {
			e.inside = e.Allowance
		}
	}
	return ps.DrawnTo.V != source.DrawnToStitching || piece.cutOutside(found)
}

// leastDrawn is the least allowance, hem or turn that is not 0, in mm: a quarter of a dot of a good
// printer. The lines of less could not be told apart, on paper or by what works them out.
const leastDrawn = 0.01

// refuseThin refuses an allowance, a hem or a turn that is less than can be drawn, and reports whether
// it did.
func refuseThin(what string, given source.Length, found *Findings) bool {
	if given.V <= 0 || given.V >= leastDrawn {
		return false
	}
	found.Add(given.Place, "check the number and its unit, or write 0 where there is none", "%s of less than %g mm is less than can be drawn", what, leastDrawn)
	return true
}

// takeAllowance settles how far the line of an edge lies inside it.
func takeAllowance(e *Edge, es source.EdgeSpec, allowance source.Length, found *Findings) {
	switch {
	case e.OnFold && (es.Allowance.V > 0 || es.Hem.Given()):
		found.Add(es.Place, "leave its allowance and hem out; allowance = 0 takes away what it has of another piece",
			"the edge lies on the fold of the cloth, where nothing is sewn")
	case e.OnFold:
	case es.Hem.Given() && (refuseThin("a hem", es.Hem, found) || refuseThin("a turn", es.Turn, found)):
		return
	case es.Hem.Given():
		e.Hem, e.Turn = es.Hem.V, es.Turn.V
		e.Allowance = e.Hem + e.Turn
		if e.Turn > e.Hem {
			found.Add(es.Turn.Place, "the turn is folded under inside the hem; a hem turned twice alike has a turn as deep as itself",
				"a turn of %s is deeper than the hem of %s", found.Written(e.Turn), found.Written(e.Hem))
		}
	case es.Allowance.Given():
		allowance = es.Allowance
		fallthrough
	default:
		if refuseThin("an allowance", allowance, found) {
			return
		}
		e.Allowance = allowance.V
		if allowance.V > 0 && !es.Allowance.Given() {
			e.usual = allowance.Place
		}
	}
	sewn := e.Allowance > 0 && e.Hem == 0
	e.Marked = sewn && e.Given.Straightness() > Straightness
	if es.Marked.Given() {
		e.Marked = es.Marked.V
		if e.Marked && !sewn {
			hint := "leave it out, or give the edge an allowance"
			switch {
			case e.OnFold:
				hint = "leave it out: nothing is sewn on the fold of the cloth"
			case e.Hem > 0:
				hint = "leave it out: the fold of a hem has windows in a template as it is"
			}
			found.Add(es.Marked.Place, hint, "the edge has no stitch line that could be marked")
		}
	}
}
