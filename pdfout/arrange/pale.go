package arrange

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: pale words lie across a piece, under all of its lines, as large as
// they find room within its outline; every page that shows some of the piece shows them
// whole. A page with no more than a corner of it has them beside that.

// pale writes the pale words of all pieces.
func (s *Sheet) pale() {
	for _, p := range s.Pieces {
		if len(p.pale) == 0 {
			continue
		}
		for _, c := range s.Cells {
			page := s.Grid.within(c, s.Grid.WindowOf(c), s.Grid.Overlap/2+besideTrim)
			if p.reaches(page) {
				s.Pale = append(s.Pale, s.paleOn(p, page)...)
			}
		}
	}
}

// reaches reports whether some of the piece shows in a box: a line, or its inside.
func (p Piece) reaches(page plane.Box) bool {
	for _, l := range p.Lines {
		if l.Bounds().Meets(page) && len(l.Clip(page)) > 0 {
			return true
		}
	}
	return p.Inside(page.Centre())
}

// paleSteps is how many places across and up pale words are tried at.
const paleSteps = 12

// paleOn sets the pale words on a page: free of all text if they can in any of their styles,
// else under it.
func (s *Sheet) paleOn(p Piece, page plane.Box) []text.Label {
	box := plane.Box{
		Min: plane.Point{X: math.Max(page.Min.X, p.Bounds.Min.X), Y: math.Max(page.Min.Y, p.Bounds.Min.Y)},
		Max: plane.Point{X: math.Min(page.Max.X, p.Bounds.Max.X), Y: math.Min(page.Max.Y, p.Bounds.Max.Y)},
	}
	styles := ink.PaleWords()
	clear := len(styles)
	var b Inscription
	for i, style := range append(styles, styles...) {
		b = InLines(p.pale, style)
		best, found := plane.Point{}, false
		for x := 0.5; x < paleSteps; x++ {
			for y := 0.5; y < paleSteps; y++ {
				at := box.Min.Add(plane.Point{X: box.Width() * x / paleSteps, Y: box.Height() * y / paleSteps})
				if nearer := !found || at.Distance(box.Centre()) < best.Distance(box.Centre()); nearer && p.holds(b.Around(at, text.Across()), page) &&
					(i >= clear || !s.Field.meetsPlaced(b.Around(at, text.Across()))) {
					best, found = at, true
				}
			}
		}
		if found {
			return b.Placed(best, text.Across())
		}
	}
	// The smallest, on the page, and as near to the piece as that allows.
	half := plane.Point{X: b.Width / 2, Y: b.Height / 2}
	at := box.Centre()
	at.X = math.Max(page.Min.X+half.X, math.Min(page.Max.X-half.X, at.X))
	at.Y = math.Max(page.Min.Y+half.Y, math.Min(page.Max.Y-half.Y, at.Y))
	return b.Placed(at, text.Across())
}

// holds reports whether a room lies in the piece's outline, and on a page.
func (p Piece) holds(room text.Slab, page plane.Box) bool {
	b := room.Bounds()
	if !page.Holds(b.Min) || !page.Holds(b.Max) || !p.Inside(room.Centre) {
		return false
	}
	path, clear := p.Outline.Path(), true
	p.Outline.Within(b, func(i int) bool {
		clear = !room.MeetsSegment(path[i], path[i+1])
		return clear
	})
	return clear
}
