package board

import (
	"slices"
	"strconv"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: a piece with its folds in lies beside the same piece flat, both to one
// scale. Cloth is a thin wash, and every layer adds one, so that folds are the darker the more
// layers lie there; what is turned in when the garment is made up is paler. Free edges of
// flaps are unbroken, with a shadow on what they lie on. Pieces without folds are left out, where
// others have some. A key of the shades lies behind them.
//
//	.paper         under a part
//	g.cloth        its layers, each a path; all of one fill and opacity
//	path.turned    what lies outside of all that is sewn: the colour of the paper, half covering
//	g.shades       the key of what is under it, in which are layers too
//	g.shadow       beside free edges
//	g.fullness     soft lines where cloth is let go
//	g[data-role]   the lines, as on sheets: data-piece, data-line

// Lines of what is looked at, not laid on cloth, in mm: what the cloth ends at, and the free edge
// and the stitching of a flap, which are fine, so that from afar its shade is seen between them.
const (
	edgeWide = 0.4
	flapWide = 0.25
)

// Folded are pieces with their folds in, each beside the flat one.
func Folded(pieces []mark.Pressed) Board {
	shown := withFolds(pieces)
	var pairs []pair
	for i, p := range shown {
		one := pair{prefix: "folded-" + strconv.Itoa(i+1), name: p.Name, key: p.Key, sides: []side{pressedSide(p)}, shades: shadesOf(p), notes: p.Notes}
		if len(p.Counts) > 1 {
			one.name += ", folded" + beside(p)
			one.sides = append(one.sides, flatSide(p))
		}
		pairs = append(pairs, one)
	}
	letters := lettersOn(pairs)
	var parts []Part
	for _, p := range pairs {
		parts = append(parts, p.part(letters))
	}
	return flow(append(parts, shadeKey(shown, letters)...))
}

// beside says what lies beside a piece with its folds in: the piece flat, or the block it is cut from.
func beside(p mark.Pressed) string {
	if slices.ContainsFunc(p.Flat.Marks, func(m mark.Mark) bool { return m.Role == mark.BlockEdge }) {
		return ", and the block it is cut from"
	}
	return " and flat"
}

// withFolds returns those of some pieces that have folds, or whose notes say something of them; all,
// where none has.
func withFolds(pieces []mark.Pressed) []mark.Pressed {
	plain := func(p mark.Pressed) bool { return len(p.Counts) < 2 && len(p.Notes) == 0 }
	if some := slices.DeleteFunc(slices.Clone(pieces), plain); len(some) > 0 {
		return some
	}
	return pieces
}

// pressedSide draws a piece with its folds in.
func pressedSide(p mark.Pressed) side {
	bounds := p.Outline.Bounds()
	var layers []plane.Path
	for _, l := range p.Layers {
		bounds = bounds.Union(l.Path.Bounds())
		layers = append(layers, l.Path)
	}
	return side{bounds, func(on surface) string {
		return on.cloth(layers) + on.turned(p.Outline, p.Sewn) + on.shadows(p.Shadows) + on.fullness(p.Fullness)
	}, []lineSet{{draw: func(d *ink.Picture) { drawRoles(d, p.Key, topmost(p.Marks), pressedPen) }}}}
}

// flatSide draws it flat.
func flatSide(p mark.Pressed) side {
	return side{p.Flat.Outline.Bounds(), func(on surface) string {
		return on.cloth([]plane.Path{p.Flat.Outline}) + on.turned(p.Flat.Outline, p.Flat.Sewn)
	}, []lineSet{{draw: func(d *ink.Picture) { drawRoles(d, p.Key, p.Flat.Marks, flatPen) }}}}
}

// pressedPen is the pen of a role where folds are in: creases are edges there.
func pressedPen(role mark.Role) ink.Pen {
	switch role {
	case mark.Cut:
		return ink.LinePen(edgeWide, ink.Black())
	case mark.TuckFold, mark.PleatFold:
		return ink.LinePen(flapWide, ink.PenOf(role).Colour)
	case mark.TuckStitch:
		return ink.PenOf(role).In(flapWide, ink.PenOf(role).Colour)
	}
	return flatPen(role)
}

// flatPen is that where the piece is flat: as on sheets, but for the cut edge.
func flatPen(role mark.Role) ink.Pen {
	if role == mark.Cut {
		return ink.LinePen(edgeWide, ink.Black())
	}
	return ink.PenOf(role)
}

// drawRoles draws the lines of a piece role by role.
func drawRoles(d *ink.Picture, piece string, marks []mark.Mark, penOf func(mark.Role) ink.Pen) {
	for _, role := range mark.Roles() {
		begun := false
		for _, m := range marks {
			if m.Role != role {
				continue
			}
			if !begun {
				d.Layer(role)
				d.Pen(penOf(role))
				begun = true
			}
			d.Mark(piece, m.Called())
			ink.StrokeEach(d, m.Path)
			d.EndMark()
		}
		if begun {
			d.EndLayer()
		}
	}
}
