package pdfout

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: what stands in front goes on one page where it has room there, or on
// the two halves of a large one; else the first has what is measured and looked at, and the
// second how to work. Pieces, steps or pictures for which there is no room go on on pages of
// their own.

// shape is how a page, or a half of one, is held.
type shape int

const (
	upright shape = iota
	lying
)

// shapeOf is the shape of a box.
func shapeOf(box plane.Box) shape {
	if box.Width() > box.Height() {
		return lying
	}
	return upright
}

// frontPage is a page in front as planned: its block lies as it is on the page.
type frontPage struct {
	block
	pictures []picture
	foot     float64 // how high the lowest of it stands
	beside   float64 // how high the foot of what stands beside the check square is
}

// emptyFront is a page in front with nothing in a box yet.
func emptyFront(box plane.Box) frontPage { return frontPage{foot: box.Max.Y, beside: box.Max.Y} }

// clipped returns the page for things to be added to it: the page itself stays as it is.
func (p frontPage) clipped() frontPage {
	p.Labels, p.Rules, p.drawn = slices.Clip(p.Labels), slices.Clip(p.Rules), slices.Clip(p.drawn)
	return p
}

// What is kept of a page in front for its parts.
const (
	// leastDrawing is how large the largest small drawing must be for everything in
	// front to stand on one page, in mm, and leastPage how wide a page in the pictures.
	leastDrawing = 18.0
	leastPage    = 12.0
	// workShare is how much of a lying page the order of work takes.
	workShare = 0.58
	// halfWidth and halfHeight are the least that half a page is wide and high.
	halfWidth, halfHeight = 170.0, 160.0
)

// workTitle heads the pages in front but the first.
const workTitle = "How to work"

// picturesHeading stands over the pictures of the pages.
const picturesHeading = "How the pages lie"

// layFront lays the pages in front.
func (b *book) layFront() []frontPage {
	inside := b.insideRules()
	if shapeOf(inside) == upright {
		if p, ok := b.onOne(inside, func(left plane.Box) plane.Box { return left }); ok {
			return []frontPage{p}
		}
	}
	if first, second, ok := halvesOf(inside); ok {
		if p, ok := b.onOne(first, func(plane.Box) plane.Box { return second }); ok {
			return []frontPage{p}
		}
	}
	p, left, notes := b.measuringPage(inside, asHigh)
	rows, scale := b.miniatures(left)
	// More notes stand there where the drawings are no smaller for it.
	if q, beside, others := b.measuringPage(inside, allTheWay); len(others) < len(notes) {
		if narrow, same := b.miniatures(beside); same == scale {
			p, left, notes, rows = q, beside, others, narrow
		}
	}
	pages := []frontPage{p}
	for rows, _ = pages[0].stack(rows, left, rowGap); len(rows) > 0; {
		next := emptyFront(b.leaf.UnderHeader())
		rows, _ = next.stack(rows, b.leaf.UnderHeader(), rowGap)
		pages = append(pages, next)
	}
	return append(pages, b.workPages(notes)...)
}

// onOne lays everything in front on one page: what is measured in a box, with the largest
// drawings for which there is room, and how to work in a box that what they leave of it is
// turned into. It reports whether there is room.
func (b *book) onOne(box plane.Box, further func(left plane.Box) plane.Box) (frontPage, bool) {
	all := b.made()
	type begun struct {
		page  frontPage
		left  plane.Box
		notes []note
	}
	var pages []begun
	for _, down := range []besideSquare{asHigh, allTheWay} {
		p, left, notes := b.measuringPage(box, down)
		pages = append(pages, begun{p, left, notes})
	}
	for _, scale := range scales() {
		if largest(all, scale) < leastDrawing && scale > scales()[0] {
			break
		}
		for _, begun := range pages {
			p, left, notes := begun.page.clipped(), begun.left, begun.notes
			rows := b.headedRows(all, scale, left.Width())
			if widest(all, scale) > left.Width() || stacked(rows, rowGap) > left.Height() {
				continue
			}
			if len(rows) > 0 {
				_, left = p.stack(rows, left, rowGap)
				left.Max.Y -= betweenBlocks
			}
			if shapeOf(box) == upright {
				left.Max = plane.Point{X: box.Max.X, Y: min(left.Max.Y, p.beside-betweenBlocks)}
			}
			if b.finish(&p, further(left), shapeOf(box), notes) {
				return p, true
			}
		}
	}
	return frontPage{}, false
}

// finish lays how to work in a box, on a page that has all else, and reports whether there
// is room.
func (b *book) finish(p *frontPage, box plane.Box, as shape, notes []note) bool {
	left, ok := b.compose(p, box, as, notes)
	if !ok {
		return false
	}
	pictures, ok := b.picturesIn(underPicturesHeading(left), leastPage)
	p.putPictures(pictures, left)
	return ok
}

// workPages are the pages with the order of work, the notes and the pictures.
func (b *book) workPages(notes []note) []frontPage {
	box := b.leaf.UnderHeader()
	p := emptyFront(box)
	left, ok := b.compose(&p, box, shapeOf(box), notes)
	pages := []frontPage{p}
	if !ok {
		pages, left = b.onMany(box, notes)
	} else if len(p.Labels)+len(p.drawn)+len(b.joinedSheets()) == 0 {
		return nil // it is all on the first page
	}
	for i, pictures := range b.layPictures(underPicturesHeading(left), underPicturesHeading(box)) {
		if i > 0 {
			pages, left = append(pages, emptyFront(box)), box
		}
		pages[len(pages)-1].putPictures(pictures, left)
	}
	return pages
}

// compose lays the order of work and the notes in a box, and returns what is left under
// them; ok is false where they have no room. On a page that is wider than high the notes
// stand beside the work.
func (b *book) compose(p *frontPage, box plane.Box, as shape, notes []note) (left plane.Box, ok bool) {
	first, second := box, box
	first.Max.X = box.Centre().X - text.Gutter/2
	second.Min.X = first.Max.X + text.Gutter
	notes = slices.DeleteFunc(slices.Clone(notes), func(n note) bool { return b.noteBlock(n, first.Width()).Height == 0 })
	work := box
	if as == lying && len(notes) > 0 {
		first.Max.X = box.Min.X + workShare*box.Width()
		second.Min.X = first.Max.X + text.Gutter
		work = first
	}
	if steps := b.workBlocks(work.Width()); len(steps) > 0 {
		rest, under := p.stack(steps, work, 0)
		if len(rest) > 0 {
			return box, false
		}
		first.Max.Y = under.Max.Y - betweenBlocks
	}
	if work == box {
		second.Max.Y = first.Max.Y
		if len(notes) == 1 {
			first.Max.X = box.Max.X
		}
	}
	for _, n := range notes {
		column := &first
		if second.Max.Y > first.Max.Y {
			column = &second
		}
		one := b.noteBlock(n, column.Width())
		rest, under := p.stack([]block{one}, *column, 0)
		if len(rest) > 0 {
			return box, false
		}
		column.Max.Y = under.Max.Y - betweenBlocks
	}
	if work != box && first.Max.Y > second.Max.Y {
		return first, true
	}
	box.Max.Y = min(first.Max.Y, second.Max.Y)
	return box, true
}

// onMany lays the order of work and the notes one under the other on as many pages as they
// need, and returns what is left of the last.
func (b *book) onMany(box plane.Box, notes []note) (pages []frontPage, left plane.Box) {
	blocks := b.workBlocks(box.Width())
	for _, n := range notes {
		if one := b.noteBlock(n, box.Width()); one.Height > 0 {
			var apart block
			apart.Space(betweenBlocks)
			apart.under(one)
			blocks = append(blocks, apart)
		}
	}
	for len(blocks) > 0 {
		next := emptyFront(box)
		blocks, left = next.stack(blocks, box, 0)
		pages = append(pages, next)
	}
	return pages, left
}

// stack puts blocks one under the other in a box, some mm apart, as many as have room; on a
// page with nothing on it one at least, of one higher than the box as much as has room. It returns the others, and what is left of the box.
func (p *frontPage) stack(blocks []block, box plane.Box, apart float64) ([]block, plane.Box) {
	for i, one := range blocks {
		if i > 0 {
			box.Max.Y -= apart
		}
		var rest []block
		if one.Height > box.Height() {
			if len(p.Labels)+len(p.drawn) > 0 {
				return blocks[i:], box
			}
			var further block
			if one, further = one.split(box.Height()); further.Height > 0 {
				rest = slices.Insert(slices.Clone(blocks[i+1:]), 0, further)
			}
		}
		p.with(one, plane.Point{X: box.Min.X, Y: box.Max.Y})
		box.Max.Y -= one.Height
		p.foot = min(p.foot, box.Max.Y)
		if len(rest) > 0 {
			return rest, box
		}
	}
	return nil, box
}

// stacked is how high blocks are one under the other, some mm apart, in mm.
func stacked(blocks []block, apart float64) float64 {
	high := 0.0
	for i, one := range blocks {
		if i > 0 {
			high += apart
		}
		high += one.Height
	}
	return high
}

// underPicturesHeading is what is left of a box under the heading of the pictures.
func underPicturesHeading(box plane.Box) plane.Box {
	box.Max.Y -= underHeading(picturesHeading, box.Width()).Height
	return box
}

// putPictures puts pictures on the page, and their heading over them at the top of a box.
func (p *frontPage) putPictures(pictures []picture, box plane.Box) {
	if len(pictures) == 0 {
		return
	}
	p.with(underHeading(picturesHeading, box.Width()), plane.Point{X: box.Min.X, Y: box.Max.Y})
	p.pictures = pictures
	for _, one := range pictures {
		p.foot = min(p.foot, one.corner.Y-one.height())
	}
}

// halvesOf returns the two halves of a box that has room for two pages, the upper or the
// left one first.
func halvesOf(box plane.Box) (first, second plane.Box, ok bool) {
	first, second = box, box
	if shapeOf(box) == lying {
		first.Max.X = box.Centre().X - text.Gutter
		second.Min.X = box.Centre().X + text.Gutter
	} else {
		first.Min.Y = box.Centre().Y + text.Gutter/2
		second.Max.Y = box.Centre().Y - text.Gutter/2
	}
	return first, second, first.Width() >= halfWidth && first.Height() >= halfHeight
}

// drawFront draws a page in front, whose number says where it is.
func (b *book) drawFront(d ink.Canvas, i int, number string) {
	p := b.front[i]
	if i > 0 {
		b.drawFrontHeader(d, workTitle+": "+b.fullTitle(), number)
	}
	p.draw(d)
	for _, one := range p.pictures {
		one.draw(d)
	}
}
