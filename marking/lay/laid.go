package lay

import (
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file: what of a pattern is laid on the cloth. A tucked piece takes the
// block it is cut from, a ruffle its strips, a binding its square. All other pieces
// are laid as they are flat. Lace and ribbon are no cloth.

// Lay is what a pattern takes of its cloth, in a plain lay: a stretch of it, laid from
// its end on.
type Lay struct {
	Width   float64  // between its selvages, mm
	Length  float64  // that the lay takes along it, mm; 0 where nothing is laid
	Parts   []Part   // one after another, from the end of the cloth; none is empty
	Repeats int      // how often it is the lay of one garment, one behind the other; 0 where it is one lay for all
	TooWide []string // names of what is wider than the cloth, and so is not laid; each once
}

// Part is a stretch of cloth that lies one way; the one after it lies the other.
type Part struct {
	Folded   bool    // lengthwise, selvage on selvage: two layers, half as wide
	From, To float64 // along the cloth, mm; each part begins where the one before it ends
	Placed   []Placed
}

// Placed is one thing as it lies on the cloth. On folded cloth it stands for two
// layers, or lies on the fold, or is cut out of the upper layer alone.
type Placed struct {
	Name string
	// Outline is closed and runs counter-clockwise, in mm; x across the cloth from the
	// fold, or from the left selvage on single cloth, y along it from the end of the
	// whole lay.
	Outline plane.Path
	OnFold  bool // the outline is half of the piece, and the other half the layer below
	// Upper is set for an odd one on folded cloth, which is cut out of the upper layer
	// only: what lies under it stays whole. Never with OnFold.
	Upper bool
}

// ShareUsed is how much of the cloth of a lay is cut out or torn off, between 0 and 1, both
// layers counted where it is folded; the rest is left over. It is 0 where nothing is laid.
func (l *Lay) ShareUsed() float64 {
	used := 0.0
	for _, part := range l.Parts {
		for _, one := range part.Placed {
			area := one.Outline.Area()
			if part.Folded && !one.Upper { // out of both layers, or on the fold
				area *= 2
			}
			used += area
		}
	}
	if l.Length == 0 {
		return 0
	}
	return used / (l.Width * l.Length)
}

// Of lays everything of a pattern that is cut on the cloth, of all garments that are made at
// once; nil where the width of
// the cloth is not known.
func Of(p *garment.Pattern) *Lay {
	if p.ClothWidth == 0 {
		return nil
	}
	lay := layOut(itemsOf(p), p.ClothWidth)
	if n := p.Garments(); n > 1 {
		// One garment after another is as plain, and now and then shorter.
		each := layOut(itemsOf(p.ForGarments(1)), p.ClothWidth).repeated(n)
		if each.Length < lay.Length-piece.SamePoint {
			lay = each
		}
	}
	return &lay
}

// repeated returns the same lay so many times, one behind the other, with room for the
// scissors between.
func (l Lay) repeated(n int) Lay {
	whole := Lay{Width: l.Width, Repeats: n, TooWide: l.TooWide}
	for k := range n {
		step := plane.Point{Y: whole.Length}
		if k > 0 {
			step.Y += scissorsRoom
		}
		for _, part := range l.Parts {
			if m := len(whole.Parts); m == 0 || whole.Parts[m-1].Folded != part.Folded {
				whole.Parts = append(whole.Parts, Part{Folded: part.Folded, From: whole.Length})
			}
			last := &whole.Parts[len(whole.Parts)-1]
			for _, one := range part.Placed {
				one.Outline = one.Outline.Moved(step)
				last.Placed = append(last.Placed, one)
			}
			last.To = step.Y + part.To
			whole.Length = last.To
		}
	}
	return whole
}

// Remarks says which pieces are too wide for the cloth; nothing where its width is not
// known.
func Remarks(p *garment.Pattern) []piece.Remark {
	if p.ClothWidth == 0 {
		return nil
	}
	var remarks []piece.Remark
	names := tooWide(itemsOf(p), p.ClothWidth)
	for _, one := range p.Pieces {
		if slices.Contains(names, one.Name) {
			remarks = append(remarks, piece.Remark{Place: one.Place, Text: "the piece is wider than the cloth, which is " +
				p.Unit.AsWritten(p.ClothWidth) + " between the selvages: it would have to be joined; it is not reckoned in", InTable: true})
		}
	}
	return remarks
}

// itemsOf lists what is cut from the cloth: what is torn, squares for bias strips, and then
// the pieces as they are flat. What is a rectangle, but not torn across the cloth, is laid
// among the pieces.
func itemsOf(p *garment.Pattern) []item {
	var items []item
	torn, cut := Cuttings(p)
	for _, c := range slices.Concat(torn, cut) {
		if c.What != TornRectangle && c.What != CutPiece {
			size := plane.Box{Max: plane.Point{X: c.Across.MM, Y: c.Along.MM}}
			items = append(items, item{name: c.kind(), outline: size.Outline(), grain: plane.Point{Y: 1}, count: c.Count, garments: 1, torn: c.What != BiasSquare})
		}
	}
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		if piece.Block != nil {
			continue
		}
		outline, whole := piece.TornWhole()
		item := item{name: piece.Name, outline: outline, grain: piece.Flat.Grain.Direction, count: piece.Cut, garments: p.Garments()}
		if axis := piece.EdgeOnFold(); axis >= 0 && !whole {
			edge := piece.FlatEdge(axis)
			item.fold = plane.Path{edge[0], edge[len(edge)-1]}
		}
		items = append(items, item)
	}
	return items
}
