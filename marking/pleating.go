package marking

import (
	"fmt"

	"tuckmark/marking/plane"
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

// Pleating is a row of pleats across a whole piece.
type Pleating struct {
	Key   string
	Kind  PleatKind
	Depth float64
	Count int
	First float64 // from the base to the first fold line, or to the middle of the first box, flat
	Space float64 // from pleat to pleat, flat
	Gap   float64 // of cloth that shows between two pleats
	Press Press   // of knife pleats
	Each  []PleatLines
	End   plane.Path // where the pressing ends; nil for pleats from edge to edge

	row row
}

// PleatLines are the lines of one fold on the flat cloth.
type PleatLines struct {
	Fold      []plane.Path
	Placement []plane.Path
	Arrow     plane.Path // from fold to placement
}

// TakeUp returns how much cloth the whole row takes, in mm.
func (p Pleating) TakeUp() float64 { return p.row.takeUp() }

// newPleating reads a row of pleats off its part of the file, with its folds as
// they lie beside its base.
func newPleating(piece *Piece, ps PleatingSpec, found *findings) (Pleating, bool) {
	p := Pleating{
		Key: ps.Key, Kind: ps.Kind.V, Depth: ps.Depth.V, Count: 1,
		First: ps.First.V, Gap: ps.Gap.V, Press: ps.Press.V,
	}
	if ps.Count.Given() {
		p.Count = ps.Count.V
	}
	if p.Kind == KnifePleat && p.Press == Unpressed {
		p.Press = PressedAway
	}
	touching := 6 * p.Depth
	if p.Kind == KnifePleat {
		touching = 3 * p.Depth
	}
	p.Space = touching + p.Gap
	if ps.Spacing.Given() {
		p.Space = ps.Spacing.V
		p.Gap = p.Space - touching
	}
	p.row = row{kind: pleatFolds, key: p.Key, place: ps.Place, count: p.Count, ends: ps.End}
	var ok bool
	if p.row.base, ok = findBase(piece, ps.Beside, ps.Side, found); !ok {
		return p, false
	}
	for k := range p.Count {
		p.row.folds = append(p.row.folds, p.foldsOf(k)...)
	}
	// Of a box or inverted pleat on the centre of a piece on the fold, one fold
	// belongs to this half.
	if i := p.row.base.edge; p.First < samePoint && p.Kind != KnifePleat && i >= 0 && piece.Edges[i].OnFold {
		p.row.folds, p.row.halved = p.row.folds[1:], true
		press := PressedToward
		if p.Kind == BoxPleat {
			press = PressedAway
		}
		p.row.folds[0].lines = p.fold(0, p.row.folds[0].at, press).lines
	}
	return p, p.fits(piece, found)
}

// foldsOf returns the folds of pleat k.
func (p Pleating) foldsOf(k int) []fold {
	at, d := p.First+float64(k)*p.Space, p.Depth
	switch p.Kind {
	case BoxPleat:
		return []fold{p.fold(k, at-d, PressedToward), p.fold(k, at+d, PressedAway)}
	case InvertedPleat:
		near, far := p.fold(k, at-2*d, PressedAway), p.fold(k, at+2*d, PressedToward)
		far.lines = far.lines[:1] // both are laid to the one line
		return []fold{near, far}
	}
	return []fold{p.fold(k, at, p.Press)}
}

// fold returns a fold of pleat k at its fold line. Laid away from the base, it has
// its flap under the cloth before it.
func (p Pleating) fold(k int, at float64, press Press) fold {
	f := fold{number: k, at: at, near: at, width: p.Depth, toward: true}
	placement := at + 2*p.Depth
	if press != PressedAway {
		placement = at - 2*p.Depth
		f.near, f.toward = placement, false
	}
	f.near = snapped(f.near)
	f.endLine = stretch{f.near, f.far()}
	f.lines = []foldLine{{role: PleatFold, u: at}, {role: Placement, u: placement}}
	return f
}

// fits looks whether the cloth can be folded as the row asks for: within the
// row, and against the base.
func (p Pleating) fits(piece *Piece, found *findings) bool {
	folds, base := p.row.folds, p.row.base
	takes := 4 * p.Depth
	if p.Kind == KnifePleat {
		takes = 2 * p.Depth
	}
	for i := 1; i < len(folds); i++ {
		if folds[i].near < folds[i-1].far()-samePoint {
			found.add(p.row.place, fmt.Sprintf("pleats that just touch lie %s apart", found.given(p.Space-p.Gap)),
				"the pleats overlap: they lie %s apart, and each takes up %s",
				found.given(p.Space), found.given(takes))
			return false
		}
	}
	if (base.edge >= 0 || piece.Finished) && folds[0].near < -samePoint {
		hint := fmt.Sprintf("give first at least %s", found.given(p.First-folds[0].near))
		if base.edge < 0 {
			hint += ", or measure it from an edge"
		}
		found.add(p.row.place, hint,
			"the first pleat crosses %q: it takes up the cloth from %s before it", base.name, found.mm(-folds[0].near))
		return false
	}
	return true
}

// with returns the pleats as they were laid, and which way each fold is laid.
func (p Pleating) with(laid laidRow) Pleating {
	p.row, p.End = laid.row, laid.end
	for k, f := range laid.row.folds {
		one := PleatLines{Fold: laid.paths(k, PleatFold), Placement: laid.paths(k, Placement)}
		if len(one.Fold) > 0 {
			from := one.Fold[0][0].Toward(one.Fold[0][1], arrowDown)
			one.Arrow = plane.Path{from, from.Add(laid.row.base.out.Mul(f.placement() - f.at))}
		}
		p.Each = append(p.Each, one)
	}
	return p
}
