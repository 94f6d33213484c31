package garment

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file: it leads from what a file says of seams, trims, ruffles and
// bindings to their figures, once all pieces have been worked out, and says of them
// what a teacher would point at.

// checkNamesAlong looks whether everything beside the pieces names edges that are
// there, also where a piece has mistakes of its own.
func checkNamesAlong(spec *source.Spec, found *piece.Findings) bool {
	before := len(found.List)
	for _, s := range spec.Seams {
		checkEdgeNames(slices.Concat(s.Sides[0], s.Sides[1]), spec, edgesOnly, found)
		for _, side := range s.Sides {
			checkOnce(side, found)
		}
		checkJoined(s, spec, found)
	}
	along := func(names []source.Text) {
		checkEdgeNames(names, spec, edgesAndLines, found)
		checkOnce(names, found)
	}
	for _, s := range spec.Trims {
		along(s.Along)
	}
	for _, s := range spec.Ruffles {
		along(s.Along)
	}
	for _, s := range spec.Bindings {
		along(s.Along)
	}
	return len(found.List) == before
}

// checkOnce looks whether an edge is named twice, and tells it once.
func checkOnce(names []source.Text, found *piece.Findings) {
	times := map[string]int{}
	for _, name := range names {
		if times[name.V]++; times[name.V] == 2 {
			found.Add(name.Place, "name it once; an edge counts for every piece that is cut", "%q is named twice", name.V)
		}
	}
}

// checkJoined looks whether the edges of a seam can be sewn: none of them lies on the
// fold of the cloth, and one that is joined with itself is there twice. What names
// nothing is told elsewhere.
func checkJoined(s source.SeamSpec, spec *source.Spec, found *piece.Findings) {
	named := func(side []source.Text, name source.Text) bool {
		return slices.ContainsFunc(side, func(t source.Text) bool { return t.V == name.V })
	}
	for i, side := range s.Sides {
		for _, name := range side {
			piece, edge, known := splitName(name.V, spec.HasEdge)
			if !known || i == 1 && named(s.Sides[0], name) {
				continue
			}
			switch ps := spec.Piece(piece); {
			case ps.Fold.V == edge:
				found.Add(name.Place, "name another edge; for a seam there, leave fold out of the piece and write cut = 2",
					"%q lies on the fold of the cloth, where nothing is sewn", name.V)
			case !ps.Fold.Given() && max(1, ps.Cut.V)/max(1, ps.Layers.V) < 2 && named(s.Sides[1], name) && i == 0:
				found.Add(name.Place, "name the edge that it is sewn to, or write cut = 2 for the piece",
					"%q is joined with itself, but there is only one of it", name.V)
			}
		}
	}
}

// checkGarment works out the figures of what joins the pieces and is sewn to them.
func (p *Pattern) checkGarment(spec *source.Spec, found *piece.Findings) {
	cuts := map[*piece.Piece][]cutEdge{}
	if len(spec.Seams) > 0 {
		for i := range p.Pieces {
			cuts[&p.Pieces[i]] = cutEdges(&p.Pieces[i])
		}
	}
	for _, s := range spec.Seams {
		if seam, ok := p.newSeam(s, spec, cuts, found); ok {
			p.Seams = append(p.Seams, seam)
		}
	}
	for _, s := range spec.Trims {
		p.Trims = append(p.Trims, p.newTrim(s, spec))
	}
	for _, s := range spec.Ruffles {
		if r, ok := p.newRuffle(s, spec, found); ok {
			p.Ruffles = append(p.Ruffles, r)
		}
	}
	for _, s := range spec.Bindings {
		if b, ok := p.newBinding(s, spec, found); ok {
			p.Bindings = append(p.Bindings, b)
		}
	}
}

// remarkGarment notes what does not match, and what is out of the common.
func (p *Pattern) remarkGarment() {
	say := func(at fault.Place, text string, args ...any) {
		p.Remarks = append(p.Remarks, piece.Remark{Place: at, Text: fmt.Sprintf(text, args...), InTable: true})
	}
	for _, s := range p.Seams {
		if text := s.Mismatch(length.Amount.String); text != "" {
			say(s.place, "%s", text)
		}
		if text := s.AllowancesDiffer(p.Unit.Names); text != "" {
			say(s.place, "%s", text)
		}
	}
	for _, t := range p.Trims {
		if len(t.Corners) > 0 && t.Width == 0 {
			say(t.place, "the line has corners, and no width is given: what they take is not reckoned in")
		}
	}
	for _, r := range p.Ruffles {
		if !r.Full() {
			say(r.place, "%s", r.FullnessWarning())
		}
	}
}

// FullnessWarning says what is wrong with a fullness that hangs badly.
func (r Ruffle) FullnessWarning() string {
	if r.Fullness == 1 {
		return "a ruffle no longer than its edge hangs flat; " + length.Factor(LeastFull) + " times its edge is the least that hangs in folds"
	}
	if r.Fullness < LeastFull {
		return fmt.Sprintf("%s times its edge is scant for a ruffle; %s is the least that hangs in folds", length.Factor(r.Fullness), length.Factor(LeastFull))
	}
	return fmt.Sprintf("%s times its edge is much for a ruffle; %s is the most that draws up well", length.Factor(r.Fullness), length.Factor(mostFull))
}
