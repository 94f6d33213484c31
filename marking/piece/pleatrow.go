package piece

import (
	"fmt"

	"tuckmark/marking/mark"
	"tuckmark/marking/source"
)

// Rules of this file (d is the depth of a pleat; g the cloth that shows between
// one pleat and the next):
//
//   - A knife pleat is folded at its fold line and laid to its placement line,
//     2d away. Touching pleats use three times their finished width (Hapgood,
//     School Needlework, about 1892), so fold lines lie 3d + g apart.
//   - A box pleat is two knife pleats turned from each other (Hapgood), an
//     inverted one two turned toward each other whose folds meet. Each takes up
//     4d and, where pleats touch, covers 2d: their middles lie 6d + g apart.
//   - A pleat lies under the cloth beside it, a tuck on it; the cloth is folded
//     alike. Only what is drawn differs.

// PleatRow is a row of pleats across a whole piece.
type PleatRow struct {
	FoldRow
	Kind  source.PleatKind
	Depth float64
	first float64      // from the base to the first fold line, or to the middle of the first box, flat
	space float64      // from pleat to pleat, flat
	gap   float64      // of cloth that shows between two pleats
	Press source.Press // of knife pleats
}

// newPleatRow reads a row of pleats off its part of the file, with its folds as
// they lie beside its base.
func newPleatRow(piece *Piece, ps source.PleatRowSpec, found *Findings) (PleatRow, bool) {
	p := PleatRow{
		FoldRow: FoldRow{Makes: PleatFolds, Pressed: true, Key: ps.Key, Place: ps.Place, Count: 1, ends: ps.End},
		Kind:    ps.Kind.V, Depth: ps.Depth.V,
		first: ps.First.V, gap: ps.Gap.V, Press: ps.Press.V,
	}
	if ps.Count.Given() {
		p.Count = ps.Count.V
	}
	if p.Kind == source.KnifePleat && p.Press == source.Unpressed {
		p.Press = source.PressedAway
	}
	touching := 6 * p.Depth
	if p.Kind == source.KnifePleat {
		touching = 3 * p.Depth
	}
	p.space = touching + p.gap
	if ps.Spacing.Given() {
		p.space = ps.Spacing.V
		p.gap = p.space - touching
	}
	var ok bool
	if p.Base, ok = findBase(piece, ps.Beside, ps.Side, found); !ok {
		return p, false
	}
	for k := range p.Count {
		p.Folds = append(p.Folds, p.foldsOf(k)...)
	}
	// Of a box or inverted pleat on the centre of a piece on the fold, one fold
	// belongs to this half.
	if i := p.Base.Edge; p.first < SamePoint && p.Kind != source.KnifePleat && i >= 0 && piece.Edges[i].OnFold {
		p.Folds, p.halved = p.Folds[1:], true
		press := source.PressedToward
		if p.Kind == source.BoxPleat {
			press = source.PressedAway
		}
		p.Folds[0].Lines = p.fold(0, p.Folds[0].At, press).Lines
	}
	return p, p.fits(piece, found)
}

// foldsOf returns the folds of pleat k.
func (p PleatRow) foldsOf(k int) []Fold {
	at, d := p.first+float64(k)*p.space, p.Depth
	switch p.Kind {
	case source.BoxPleat:
		return []Fold{p.fold(k, at-d, source.PressedToward), p.fold(k, at+d, source.PressedAway)}
	case source.InvertedPleat:
		near, far := p.fold(k, at-2*d, source.PressedAway), p.fold(k, at+2*d, source.PressedToward)
		far.Lines = far.Lines[:1] // both are laid to the one line
		return []Fold{near, far}
	}
	return []Fold{p.fold(k, at, p.Press)}
}

// fold returns a fold of pleat k at its fold line. Laid away from the base, it has
// its flap under the cloth before it.
func (p PleatRow) fold(k int, at float64, press source.Press) Fold {
	f := Fold{Number: k, At: at, Near: at, Width: p.Depth, Toward: true}
	placement := at + 2*p.Depth
	if press != source.PressedAway {
		placement = at - 2*p.Depth
		f.Near, f.Toward = placement, false
	}
	f.Near = snapped(f.Near)
	f.endLine = Stretch{f.Near, f.Far()}
	f.Lines = []FoldLine{{Role: mark.PleatFold, U: at}, {Role: mark.Placement, U: placement}}
	return f
}

// fits looks whether the cloth can be folded as the row asks for: within the
// row, and against the base.
func (p PleatRow) fits(piece *Piece, found *Findings) bool {
	folds, base := p.Folds, p.Base
	takes := 4 * p.Depth
	if p.Kind == source.KnifePleat {
		takes = 2 * p.Depth
	}
	for i := 1; i < len(folds); i++ {
		if folds[i].Near < folds[i-1].Far()-SamePoint {
			found.Add(p.Place, fmt.Sprintf("pleats that just touch lie %s apart", found.Written(p.space-p.gap)),
				"the pleats overlap: they lie %s apart, and each takes up %s",
				found.Written(p.space), found.Written(takes))
			return false
		}
	}
	if (base.Edge >= 0 || piece.DrawnFinished) && folds[0].Near < -SamePoint {
		hint := fmt.Sprintf("give first at least %s", found.Written(p.first-folds[0].Near))
		if base.Edge < 0 {
			hint += ", or measure it from an edge"
		}
		found.Add(p.Place, hint,
			"the first pleat crosses %q: it takes up the cloth from %s before it", base.Name, found.length(-folds[0].Near))
		return false
	}
	return true
}
