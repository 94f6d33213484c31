package piece

import (
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: which lines of a piece are marks, in what role, and what each is
// called.

// DrawnMarks lists the lines of the piece as it is drawn, all but its edges and
// its tucks and the pleats across it.
func (p *Piece) DrawnMarks(unit length.Unit) []mark.Mark {
	var marks []mark.Mark
	add := func(role mark.Role, name string, path plane.Path) {
		marks = append(marks, mark.Mark{Role: role, Name: name, Path: path})
	}
	for _, e := range p.Edges {
		switch {
		case e.Hem > 0:
			if e.TurnLine != nil {
				add(mark.Fold, "turn in "+unit.Names(e.Turn), e.TurnLine)
			}
			add(mark.Fold, "hem "+unit.Names(e.Hem), e.Line)
		case e.Allowance > 0:
			add(mark.Stitch, "stitch line, "+unit.Names(e.Allowance), e.Line)
		}
	}
	for _, l := range p.Lines {
		add(l.Role, l.Key, l.Path)
	}
	for _, pleat := range p.EdgePleats {
		add(mark.PleatFold, pleat.Key, pleat.Fold)
		add(mark.Placement, "", pleat.Placement)
		add(mark.Arrow, "", pleat.Arrow)
	}
	for _, n := range p.Notches {
		add(mark.Notch, n.Key, n.Path)
	}
	if p.GrainLine != nil {
		add(mark.Grain, "", p.GrainLine)
	}
	return marks
}

// FoldMarks lists the lines of the tucks of a piece, and of the pleats across it,
// on the flat cloth.
func (p *Piece) FoldMarks() []mark.Mark {
	var marks []mark.Mark
	add := func(role mark.Role, name string, paths ...plane.Path) {
		for _, path := range paths {
			if path != nil {
				marks = append(marks, mark.Mark{Role: role, Name: name, Path: path})
			}
		}
	}
	for _, t := range p.TuckRows {
		for _, one := range t.Each {
			add(mark.TuckFold, "", one.Fold...)
			add(mark.TuckStitch, "", one.Sewn...)
		}
		add(mark.TuckEnd, "the "+t.Key+" tucks end here", t.End)
	}
	for _, pleats := range p.PleatRows {
		for _, one := range pleats.Each {
			add(mark.PleatFold, "", one.Fold...)
			add(mark.Placement, "", one.Placement...)
			add(mark.Arrow, "", one.Arrow)
		}
		add(mark.TuckEnd, "the "+pleats.Key+" pleats end here", pleats.End)
	}
	return marks
}
