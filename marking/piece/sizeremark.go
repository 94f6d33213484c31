package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: what is remarked of allowances and hems that are more than their
// piece can have, or any: a unit is likely the wrong one, or a seam's word stands where a
// hem's was meant.

// widestSeam is the most that a seam is given, in mm: 2 in, where it is to be let out by
// years (common practice; 1/4 to 1 in is usual).
const widestSeam = 25.4 * 2

// Size returns how large the whole piece is as it is drawn, both halves of it: along the
// fold and across, or where it does not lie on one, up and across; in mm.
func (p *Piece) Size() (across, along float64) {
	axis := p.EdgeOnFold()
	if axis < 0 {
		bounds := p.Tree.Bounds()
		return bounds.Width(), bounds.Height()
	}
	e := p.Edges[axis].Path
	in := Inward(e)
	us, vs := Frame{e[0], in, in.Left()}.Extent(p.Outline)
	return 2 * us.To, vs.To - vs.From
}

// tinyPiece is how large a piece is, in mm, that is hardly cut of cloth: 1 in, both ways.
const tinyPiece = 25.4

// AskRealSize asks after the size of a drawing, which the unit of the file does not change.
const AskRealSize = "is the drawing saved in its real size, width and height in mm or in?"

// tiny asks after the unit where a piece, or the half of it that is drawn, is hardly cut of
// cloth; nothing of others. It goes on behind a hint.
func (p *Piece) tiny(found *Findings) string {
	var outline plane.Path
	for _, e := range p.Edges {
		outline = append(outline, e.Path...)
	}
	wide, high := outline.Bounds().Width(), outline.Bounds().Height()
	if max(wide, high) > tinyPiece {
		return ""
	}
	ask := "is the unit right?"
	if p.FromDrawing {
		ask = AskRealSize
	}
	return fmt.Sprintf("; or %s all that is drawn of this piece is %s by %s", ask, found.length(wide), found.length(high))
}

// tooLarge remarks on allowances and hems that are too large for the piece.
func (m *remarker) tooLarge() {
	var wide []float64 // allowances
	for _, e := range m.piece.Edges {
		if e.Hem == 0 && e.Allowance > widestSeam+SamePoint && !slices.Contains(wide, e.Allowance) {
			wide = append(wide, e.Allowance)
		}
	}
	for _, w := range wide {
		m.wideSeams(w)
	}
	for i := range m.piece.Edges {
		if m.piece.Edges[i].Hem > 0 {
			m.deepHem(i)
		}
	}
}

// wideSeams says which edges have an allowance that is wider than any seam.
func (m *remarker) wideSeams(wide float64) {
	const mostNamed = 3
	var edges []Edge
	var names []string
	for _, e := range m.piece.Edges {
		if e.Hem == 0 && e.Allowance == wide {
			edges, names = append(edges, e), append(names, wording.Quoted(e.Key))
		}
	}
	if n := len(names); n > mostNamed {
		names = append(names[:mostNamed-1], fmt.Sprintf("%d more", n-mostNamed+1))
	}
	has := "has an allowance"
	if len(names) > 1 {
		has = "have allowances"
	}
	m.say(edges[0].Place, "%s %s of %s, and a seam takes %s at most; is the unit right, or was hem meant?",
		wording.Listed(names, "and"), has, m.unit.AsWritten(wide), m.unit.AsWritten(m.unit.Either(widestSeam, 50)))
}

// deepHem says that a hem, folded back, reaches past the other side of its piece. One that
// does not come to the fold of the cloth may reach over it, onto the other half.
func (m *remarker) deepHem(i int) {
	e := m.piece.Edges[i]
	whole := slices.Clone(m.piece.Outline)
	before, after := m.piece.Neighbours(i)
	if axis := m.piece.EdgeOnFold(); axis >= 0 && axis != before && axis != after {
		fold := m.piece.Edges[axis].Path
		whole = append(whole, whole.Mirrored(fold[0], Inward(fold))...)
	}
	edge := plane.NewTree(e.Path)
	far := 0.0
	for _, q := range whole {
		far = max(far, edge.Distance(q, math.Inf(1)))
	}
	if reach := e.Allowance + e.Hem; reach > far+SamePoint {
		m.say(e.Place, "the hem is deeper than there is room for: folded back, it reaches %s from the cut edge, and the piece ends at %s",
			m.unit.OnRuler(reach), m.unit.OnRuler(far))
	}
}
