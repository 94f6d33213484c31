package marking

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: what of a pattern is laid on the cloth. A tucked piece takes the
// block it is cut from, a ruffle its strips, a binding its square. All other pieces
// are laid as they are flat. Lace and ribbon are no cloth.

// Cloth is what a pattern takes of the cloth, whose width is known.
type Cloth struct {
	Lay Lay
	Buy Purchase
}

// clothOf lays everything of a pattern that is cut on the cloth; nil where the width of
// the cloth is not known.
func clothOf(p *Pattern) *Cloth {
	if p.ClothWidth == 0 {
		return nil
	}
	lay := layOut(layItems(p), p.ClothWidth)
	return &Cloth{Lay: lay, Buy: p.Unit.buy(lay.Length)}
}

// widerThanCloth notes which pieces are too wide for the cloth.
func widerThanCloth(p *Pattern) []Remark {
	if p.ClothWidth == 0 {
		return nil
	}
	var remarks []Remark
	names := tooWide(layItems(p), p.ClothWidth)
	for _, piece := range p.Pieces {
		if slices.Contains(names, piece.Name) {
			remarks = append(remarks, Remark{piece.place, "the piece is wider than the cloth, which is " +
				p.Unit.Names(p.ClothWidth) + " between the selvages: it would have to be joined; it is not reckoned in", true})
		}
	}
	return remarks
}

// layItems lists what is cut from the cloth: what is torn, and then the pieces as they are
// flat. A piece that is a rectangle is laid among the pieces.
func layItems(p *Pattern) []layItem {
	var items []layItem
	torn, _ := cutList(p)
	for _, c := range torn {
		if c.What != TornRectangle {
			items = append(items, layItem{
				name: c.kind(), outline: rectangle(c.Across.MM, c.Along.MM), grain: plane.Point{Y: 1}, count: c.Count, torn: true,
			})
		}
	}
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		if piece.Block != nil {
			continue
		}
		outline, whole := piece.tornWhole()
		item := layItem{name: piece.Name, outline: outline, grain: piece.grainDirection, count: piece.Cut}
		if axis := piece.foldEdge(); axis >= 0 && !whole {
			edge := piece.flatEdge(axis)
			item.fold = plane.Path{edge[0], edge[len(edge)-1]}
		}
		items = append(items, item)
	}
	return items
}

// rectangle returns the outline of a rectangle, counter-clockwise.
func rectangle(width, height float64) plane.Path {
	return plane.Path{{}, {X: width}, {X: width, Y: height}, {Y: height}, {}}
}
