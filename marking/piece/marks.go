package piece

import (
	"fmt"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: which lines of a piece are marks, in what role, and what each is
// called.

// drawnMarks lists the lines of the piece as it is drawn, all but its edges and
// its tucks and the pleats across it.
func (p *Piece) drawnMarks(unit length.Unit) []mark.Mark {
	var marks []mark.Mark
	add := func(role mark.Role, name, key string, path plane.Path) {
		marks = append(marks, mark.Mark{Role: role, Name: name, Key: key, Path: path})
	}
	for _, e := range p.Edges {
		switch {
		case e.Hem > 0:
			turn, fold := e.FoldNames()
			if e.TurnLine != nil {
				add(mark.Fold, turn, turn, e.TurnLine)
			}
			add(mark.Fold, fold, fold, e.Line)
		case e.Allowance > 0:
			add(mark.Stitch, e.Key+" stitch line, "+unit.AsWritten(e.Allowance), mark.KeyWith(e.Key, mark.Stitch), e.Line)
		}
	}
	for _, l := range p.Lines {
		add(l.Role, l.Name(), l.Key, l.Path)
	}
	for _, pleat := range p.EdgePleats {
		add(mark.PleatFold, foldHere, mark.KeyWith(pleat.Key, mark.PleatFold), pleat.fold)
		add(mark.Placement, layHere, mark.KeyWith(pleat.Key, mark.Placement), pleat.placement)
		add(mark.Arrow, "", mark.KeyWith(pleat.Key, mark.Arrow), pleat.arrow)
	}
	for _, n := range p.Notches {
		add(mark.Notch, n.Key, mark.KeyWith(n.Key, mark.Notch), n.path)
	}
	if p.grainLine != nil {
		add(mark.Grain, "", GrainKey, p.grainLine)
	}
	return marks
}

// FoldMarks lists the lines of the tucks of a piece, and of the pleats across it, on the
// flat cloth.
func (p *Piece) FoldMarks() []mark.Mark {
	var marks []mark.Mark
	add := func(role mark.Role, name, key string, path plane.Path) {
		marks = append(marks, mark.Mark{Role: role, Name: name, Key: key, Path: path})
	}
	for _, r := range p.FoldRows() {
		for _, f := range r.Folds {
			for _, line := range f.Lines {
				marks = append(marks, mark.Mark{Role: line.Role, Name: r.LineName(f, line), Key: r.FoldKey(f, line.Role)}.InParts(line.Flat)...)
			}
			if crease := f.crease().Flat; r.Makes == PleatFolds && len(crease) > 0 {
				add(mark.Arrow, "", r.FoldKey(f, mark.Arrow), Arrow(crease[0], r.Base.Out.Mul(f.Placement()-f.At)))
			}
		}
		for i, end := range r.FlatEnds {
			add(mark.TuckEnd, r.EndNames()[i], r.EndKeys()[i], end)
		}
	}
	return marks
}

// What stands along the two lines of a pleat.
const (
	foldHere = "fold here"
	layHere  = "lay to here"
)

// FoldNames returns what the two folds of a hem are called, of another edge by its name.
func (e Edge) FoldNames() (turn, fold string) {
	if wording.InWords(e.Key) == "hem" {
		return "turn", "hem fold"
	}
	return e.Key + " turn", e.Key + " fold"
}

// FoldKey is what a line of a fold is known by: the row, the number of the tuck or pleat in
// it, and the role, "yoke 3 tuck fold".
func (r FoldRow) FoldKey(f Fold, role mark.Role) string {
	return mark.KeyWith(fmt.Sprintf("%s %d", r.Key, f.Number+1), role)
}

// EndKeys are what the lines are known by along which a row ends, and begins where it is free.
func (r FoldRow) EndKeys() [2]string {
	return [2]string{mark.KeyWith(r.Key, mark.TuckEnd), mark.KeyWith(r.Key+" begin", mark.TuckEnd)}
}

// EndNames are what the lines are called along which a row ends, and begins where it is free.
func (r FoldRow) EndNames() [2]string {
	return [2]string{r.Does("end") + " here, " + r.Hangs().Open(), r.Does("begin") + " here, " + r.Hangs().OpenBefore()}
}

// LineName is what is printed along a line of a fold, "" for most: they have numbers. The
// first fold of a row of pleats says what is done at its lines; that of a row from edge to
// edge, which no end line names, what the row is.
func (r FoldRow) LineName(f Fold, l FoldLine) string {
	if f.At != r.Folds[0].At {
		return ""
	}
	row := ""
	if !f.End.Given {
		row = r.Called()
	}
	switch {
	case l.Role == mark.Placement:
		return layHere
	case l.Role == mark.PleatFold && row == "":
		return foldHere
	case l.Role == mark.PleatFold:
		return row + ": " + foldHere
	case l.Role == mark.TuckFold:
		return row
	}
	return ""
}
