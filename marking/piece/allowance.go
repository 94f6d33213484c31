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

// takeAllowance settles how far the line of an edge lies inside it.
func takeAllowance(e *Edge, es source.EdgeSpec, allowance source.Length, found *Findings) {
	switch {
	case e.OnFold && (es.Allowance.V > 0 || es.Hem.Given()):
		found.Add(es.Place, "leave its allowance and hem out; allowance = 0 takes away what it has of another piece",
			"the edge lies on the fold of the cloth, where nothing is sewn")
	case e.OnFold:
	case es.Hem.Given():
		e.Hem, e.Turn = es.Hem.V, es.Turn.V
		e.Allowance = e.Hem + e.Turn
		if e.Turn > e.Hem {
			found.Add(es.Turn.Place, "the turn is folded under inside the hem; a hem turned twice alike has a turn as deep as itself",
				"a turn of %s is deeper than the hem of %s", found.Written(e.Turn), found.Written(e.Hem))
		}
	case es.Allowance.Given():
		e.Allowance = es.Allowance.V
	default:
		e.Allowance = allowance.V
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
