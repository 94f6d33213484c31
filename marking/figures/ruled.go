package figures

import (
	"math"
	"slices"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
)

// Rules of this file. How far apart fold lines are ruled stands in one line of the work only
// where it is one number, or two of tucks in groups. Else each has its place in a table.

const (
	toNextFold  = " from fold to fold"
	toNextGroup = " from group to group"
)

// ruled says how far apart the fold lines of a block are ruled, or where the only one is;
// "" where that is not one number, or two of tucks in groups. What no ruler has is ruled by the
// ticks of the printed tuck ruler: rounded, it would come out short by more with every fold.
func ruled(p *piece.Piece, unit length.Unit) string {
	var spaces []string
	for _, r := range p.Block.Group.Rows {
		folds := r.Folds
		if len(folds) < 2 {
			spaces = append(spaces, unit.Amount(folds[0].At).String()+" from "+r.Base.Name)
		}
		for k := 1; k < len(folds); k++ {
			space := folds[k].At - folds[k-1].At
			if math.Abs(unit.Amount(space).Steps*unit.Ruler()-space) > length.Rounding {
				return "by the tuck ruler"
			}
			to := toNextFold
			if r.PerGroup > 1 && folds[k].Number%r.PerGroup == 0 {
				to = toNextGroup
			}
			if told := unit.Amount(space).String() + to; !slices.Contains(spaces, told) {
				spaces = append(spaces, told)
			}
		}
	}
	if grouped := p.Block.Group.Rows[0].PerGroup > 1; len(spaces) == 1 || grouped && len(spaces) == 2 {
		return strings.Join(spaces, ", ")
	}
	return ""
}

// foldedApart says how far apart the fold lines of twin-needle tucks lie; "" where that is more
// than two numbers.
func foldedApart(t piece.TuckRow, unit length.Unit) string {
	within := unit.AsWritten(t.Space) + toNextFold
	switch {
	case t.PerGroup == 0:
		return within
	case !t.Even():
		return ""
	case t.PerGroup == 1:
		return unit.AsWritten(t.Apart(0)) + toNextFold
	}
	return within + ", " + unit.AsWritten(t.Apart(0)) + toNextGroup
}
