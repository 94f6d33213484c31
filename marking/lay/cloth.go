package lay

import (
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file: what of a pattern is laid on the cloth. A tucked piece takes the
// block it is cut from, a ruffle its strips, a binding its square. All other pieces
// are laid as they are flat. Lace and ribbon are no cloth.

// Cloth is what a pattern takes of the cloth, whose width is known.
type Cloth struct {
	Lay Lay
	Buy length.Purchase
}

// ClothOf lays everything of a pattern that is cut on the cloth; nil where the width of
// the cloth is not known.
func ClothOf(p *garment.Pattern) *Cloth {
	if p.ClothWidth == 0 {
		return nil
	}
	lay := Out(itemsOf(p), p.ClothWidth)
	return &Cloth{Lay: lay, Buy: p.Unit.Buy(lay.Length)}
}

// WiderThanCloth notes which pieces are too wide for the cloth.
func WiderThanCloth(p *garment.Pattern) []piece.Remark {
	if p.ClothWidth == 0 {
		return nil
	}
	var remarks []piece.Remark
	names := tooWide(itemsOf(p), p.ClothWidth)
	for _, pc := range p.Pieces {
		if slices.Contains(names, pc.Name) {
			remarks = append(remarks, piece.Remark{Place: pc.Place, Text: "the piece is wider than the cloth, which is " +
				p.Unit.Names(p.ClothWidth) + " between the selvages: it would have to be joined; it is not reckoned in", InTable: true})
		}
	}
	return remarks
}

// itemsOf lists what is cut from the cloth: what is torn, and then the pieces as they are
// flat. A piece that is a rectangle is laid among the pieces.
func itemsOf(p *garment.Pattern) []Item {
	var items []Item
	torn, _ := CutList(p)
	for _, c := range torn {
		if c.What != TornRectangle {
			items = append(items, Item{
				Name: c.kind(), Outline: Rectangle(c.Across.MM, c.Along.MM), Grain: plane.Point{Y: 1}, Count: c.Count, Torn: true,
			})
		}
	}
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		if piece.Block != nil {
			continue
		}
		outline, whole := piece.TornWhole()
		item := Item{Name: piece.Name, Outline: outline, Grain: piece.GrainDirection, Count: piece.Cut}
		if axis := piece.EdgeOnFold(); axis >= 0 && !whole {
			edge := piece.FlatEdge(axis)
			item.Fold = plane.Path{edge[0], edge[len(edge)-1]}
		}
		items = append(items, item)
	}
	return items
}

// Rectangle returns the outline of a rectangle, counter-clockwise.
func Rectangle(width, height float64) plane.Path {
	return plane.Path{{}, {X: width}, {X: width, Y: height}, {Y: height}, {}}
}
