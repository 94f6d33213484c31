package piece

import (
	"fmt"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: which lines of a piece are marks, in what role, and what each is
// called.

// drawnMarks lists the lines of the piece as it is drawn, all but its edges and
// its tucks and the pleats across it.
func (p *Piece) drawnMarks(unit length.Unit) []mark.Mark {
	var marks []mark.Mark
	add := func(role mark.Role, name string, path plane.Path) {
		marks = append(marks, mark.Mark{Role: role, Name: name, Path: path})
	}
	for _, e := range p.Edges {
		switch {
		case e.Hem > 0:
			if e.TurnLine != nil {
				add(mark.Fold, "turn in "+unit.AsWritten(e.Turn), e.TurnLine)
			}
			add(mark.Fold, "hem "+unit.AsWritten(e.Hem), e.Line)
		case e.Allowance > 0:
			add(mark.Stitch, "stitch line, "+unit.AsWritten(e.Allowance), e.Line)
		}
	}
	for _, l := range p.Lines {
		add(l.Role, l.Key, l.Path)
	}
	for _, pleat := range p.EdgePleats {
		add(mark.PleatFold, pleat.Key, pleat.fold)
		add(mark.Placement, "", pleat.placement)
		add(mark.Arrow, "", pleat.arrow)
	}
	for _, n := range p.notches {
		add(mark.Notch, n.key, n.path)
	}
	if p.grainLine != nil {
		add(mark.Grain, "", p.grainLine)
	}
	return marks
}

// FoldMarks lists the lines of the tucks of a piece, and of the pleats across it, on the
// flat cloth.
func (p *Piece) FoldMarks() []mark.Mark {
	var marks []mark.Mark
	add := func(role mark.Role, name string, path plane.Path) {
		marks = append(marks, mark.Mark{Role: role, Name: name, Path: path})
	}
	for _, r := range p.FoldRows() {
		for _, f := range r.Folds {
			for _, line := range f.Lines {
				for _, part := range line.Flat {
					add(line.Role, "", part)
				}
			}
			if crease := f.crease().Flat; r.Makes == PleatFolds && len(crease) > 0 {
				add(mark.Arrow, "", Arrow(crease[0], r.Base.Out.Mul(f.Placement()-f.At)))
			}
		}
		if r.FlatEnd != nil {
			add(mark.TuckEnd, fmt.Sprintf("the %s %ss end here", r.Key, r.Makes), r.FlatEnd)
		}
	}
	return marks
}
