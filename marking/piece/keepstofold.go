package piece

// Rules of this file: what lies on the fold of the cloth lies on one side of it. Beyond the
// fold there is no cloth.

// keepsToFold reports whether a piece lies on one side of its fold; where it does not, the
// edge that runs past it farthest is noted.
func (p *Piece) keepsToFold(found *Findings) bool {
	fold := p.EdgeOnFold()
	if fold < 0 {
		return true
	}
	line := p.Edges[fold].Path
	out := line.StartDirection().Left()
	past, farthest := Straightness, -1
	for i, e := range p.Edges {
		for _, q := range e.Path {
			if by := -q.Sub(line[0]).Dot(out); by > past {
				past, farthest = by, i
			}
		}
	}
	if farthest < 0 {
		return true
	}
	hint := "draw the piece whole, without fold, or keep it to one side"
	if p.Edges[farthest].inside > 0 {
		hint = "give it allowance = 0, or draw the piece whole, without fold"
	}
	found.Add(p.Edges[farthest].Place, hint, "the cutting line of this edge runs %s past the fold %q, where there is no cloth", found.length(past), p.Edges[fold].Key)
	return false
}
