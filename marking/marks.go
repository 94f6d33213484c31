package marking

import "tuckmark/marking/plane"

// Rules of this file: which lines of a piece are marks, in what role, and what each is
// called.

// drawnMarks lists the lines of the piece as it is drawn, all but its edges and
// its tucks and the pleats across it.
func (p *Piece) drawnMarks(unit Unit) []Mark {
	var marks []Mark
	add := func(role Role, name string, path plane.Path) {
		marks = append(marks, Mark{role, name, path})
	}
	for _, e := range p.Edges {
		switch {
		case e.Hem > 0:
			if e.TurnLine != nil {
				add(Fold, "turn in "+unit.Names(e.Turn), e.TurnLine)
			}
			add(Fold, "hem "+unit.Names(e.Hem), e.Line)
		case e.Allowance > 0:
			add(Stitch, "stitch line, "+unit.Names(e.Allowance), e.Line)
		}
	}
	for _, l := range p.Lines {
		add(l.Role, l.Key, l.Path)
	}
	for _, pleat := range p.Pleats {
		add(PleatFold, pleat.Key, pleat.Fold)
		add(Placement, "", pleat.Placement)
		add(Arrow, "", pleat.Arrow)
	}
	for _, n := range p.Notches {
		add(Notch, n.Key, n.Path)
	}
	if p.GrainLine != nil {
		add(Grain, "", p.GrainLine)
	}
	return marks
}

// foldMarks lists the lines of the tucks of a piece, and of the pleats across it,
// on the flat cloth.
func (p *Piece) foldMarks() []Mark {
	var marks []Mark
	add := func(role Role, name string, paths ...plane.Path) {
		for _, path := range paths {
			if path != nil {
				marks = append(marks, Mark{role, name, path})
			}
		}
	}
	for _, t := range p.Tucks {
		for _, one := range t.Each {
			add(TuckFold, "", one.Fold...)
			add(TuckStitch, "", one.Sewn...)
		}
		add(TuckEnd, "the "+t.Key+" tucks end here", t.End)
	}
	for _, pleats := range p.Pleatings {
		for _, one := range pleats.Each {
			add(PleatFold, "", one.Fold...)
			add(Placement, "", one.Placement...)
			add(Arrow, "", one.Arrow)
		}
		add(TuckEnd, "the "+pleats.Key+" pleats end here", pleats.End)
	}
	return marks
}
