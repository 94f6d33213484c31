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
	add := func(role mark.Role, name string, path plane.Path) {
		marks = append(marks, mark.Mark{Role: role, Name: name, Path: path})
	}
	for _, e := range p.Edges {
		switch {
		case e.Hem > 0:
			turn, fold := e.FoldNames()
			if e.TurnLine != nil {
				add(mark.Fold, turn, e.TurnLine)
			}
			add(mark.Fold, fold, e.Line)
		case e.Allowance > 0:
			add(mark.Stitch, e.Key+" stitch line, "+unit.AsWritten(e.Allowance), e.Line)
		}
	}
	for _, l := range p.Lines {
		add(l.Role, l.Name(), l.Path)
	}
	for _, pleat := range p.EdgePleats {
		add(mark.PleatFold, foldHere, pleat.fold)
		add(mark.Placement, layHere, pleat.placement)
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
				marks = append(marks, mark.Mark{Role: line.Role, Name: r.LineName(f, line)}.InParts(line.Flat)...)
			}
			if crease := f.crease().Flat; r.Makes == PleatFolds && len(crease) > 0 {
				add(mark.Arrow, "", Arrow(crease[0], r.Base.Out.Mul(f.Placement()-f.At)))
			}
		}
		if r.FlatEnd != nil {
			add(mark.TuckEnd, r.EndName(), r.FlatEnd)
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

// EndName is what the line is called along which a row ends.
func (r FoldRow) EndName() string {
	return fmt.Sprintf("%s %ss end here, %s", r.Key, r.Makes, r.Hangs().Open())
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
		row = fmt.Sprintf("%s %ss", r.Key, r.Makes)
		if r.InAll() == 1 {
			row = fmt.Sprintf("%s %s", r.Key, r.Makes)
		}
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
