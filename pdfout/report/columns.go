package report

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: the figures fill the columns of a page from top to bottom, the
// left one first, and a column ends where a page would: the same bands stay
// together, and the same come again. What is too wide for a column stands across the
// page, at the foot of the page on which its turn comes, or at the head of the next.
// Nothing is moved forward for that: what comes after it goes on in the columns. Where
// narrower gaps save a page they are taken. The columns of the last page end at about
// one height, and where that page would have little on it those before it end sooner.

const (
	overShare    = 1.0 / 3     // the most of the first page that title and notes take over its columns
	acrossShare  = 0.8         // the most of a page that what stands across it takes
	littleShare  = 0.27        // of a page: the last one has more than this on it
	evenStep     = 3.0         // how much sooner pages end, at a time, for the last to have more, in mm
	columnsApart = text.Gutter // between two columns of a page, in mm
)

// narrowerGaps are what gaps may be narrowed to, in shares of what they are, widest
// first.
func narrowerGaps() []float64 { return []float64{0.9, 0.8, 0.7} }

// fits reports whether a report can be set in columns of this width without leaving
// out anything that the whole width would have room for.
func (s setter) fits(r mark.Report) bool {
	for _, section := range r.Sections {
		if len(text.WrapMeasures(section.Title, ink.Heading(), s.width)) > headingLines {
			return false
		}
		among := gridOf(s.width).of(section.Tables)
		for _, t := range section.Tables {
			title := t.Title
			if title == "" {
				title = section.Title
			}
			style := titleStyle()
			if len(text.WrapMeasures(title, style, s.width-style.Width(continued))) > headingLines {
				return false
			}
			if !among.holds(t) {
				return false
			}
		}
	}
	return true
}

// columnPages breaks bands into the columns of pages.
type columnPages struct {
	room  plane.Box // of a page
	count int       // of its columns
	gaps  float64   // what is left free over a band, in shares of what it asks for
}

// paged breaks bands into pages, under what stands over the columns of the first one. It
// takes time proportional to the number of bands.
func (s setter) paged(over, bands []band) []Page {
	if s.count == 1 {
		over, bands = nil, append(over, bands...)
	}
	set := columnPages{s.page, s.count, 1}
	pages := set.pages(over, bands)
	for _, gaps := range narrowerGaps() {
		narrow := columnPages{s.page, s.count, gaps}
		if tight := narrow.pages(over, bands); len(tight) < len(pages) {
			set, pages = narrow, tight
			break
		}
	}
	for len(pages) > 1 && s.littleOn(pages[len(pages)-1]) && set.room.Height() > s.page.Height()/2 {
		set.room.Min.Y += evenStep
		sooner := set.pages(over, bands)
		if len(sooner) > len(pages) {
			break
		}
		pages = sooner
	}
	return pages
}

// littleOn reports whether the columns of a page reach down little.
func (s setter) littleOn(p Page) bool {
	deep := map[float64]float64{}
	for _, b := range p {
		deep[b.at.X] = max(deep[b.at.X], s.page.Max.Y-b.at.Y+b.Height)
	}
	sum := 0.0
	for _, d := range deep {
		sum += d
	}
	return sum < littleShare*float64(s.count)*s.page.Height()
}

// pages breaks bands into pages. What stands across a page comes in its order, and
// so at the foot of a page only where nothing waits for the head of one.
func (c columnPages) pages(over, bands []band) []Page {
	var pages []Page
	var waiting [][]band
	if len(over) > 0 {
		waiting = append(waiting, over)
	}
	for len(bands)+len(waiting) > 0 {
		area := c.room
		var page Page
		if len(waiting) > 0 {
			page = c.stacked(page, waiting[0], plane.Point{X: area.Min.X, Y: area.Max.Y})
			area.Max.Y -= c.height(waiting[0]) + c.gaps*sectionAbove
			waiting = waiting[1:]
		}
		set := c.fill(bands, area)
		if len(set.across) > 0 && len(waiting) == 0 {
			if withFoot, ok := c.fillOver(set.across[0], bands, area); ok {
				set = withFoot
			}
		}
		if set.taken == len(bands) && len(set.across)+len(waiting) == 0 {
			set = c.fillEvenly(bands, area, set)
		}
		pages = append(pages, append(page, set.placed...))
		waiting = append(waiting, set.across...)
		bands = bands[set.taken:]
	}
	return pages
}

// fillEvenly fills an area that has room for all bands no lower than its columns must
// reach; set is how they are filled one after the other.
func (c columnPages) fillEvenly(bands []band, area plane.Box, set filledArea) filledArea {
	for even := area; even.Height() > evenStep; {
		even.Min.Y += evenStep
		higher := c.fill(bands, even)
		if higher.taken < len(bands) {
			break
		}
		set = higher
	}
	return set
}

// fillOver fills an area, and sets what stands across the page under its columns. It
// reports whether the columns still come to that then.
func (c columnPages) fillOver(foot []band, bands []band, area plane.Box) (filledArea, bool) {
	gap := c.gaps * sectionAbove
	area.Min.Y += c.height(foot) + gap
	if area.Min.Y > area.Max.Y {
		return filledArea{}, false
	}
	set := c.fill(bands, area)
	if len(set.across) == 0 {
		return filledArea{}, false
	}
	set.across = set.across[1:]
	if len(set.placed) > 0 {
		set.low -= gap
	}
	set.placed = c.stacked(set.placed, foot, plane.Point{X: area.Min.X, Y: set.low})
	return set, true
}

// filledArea is what has been set into the columns of an area.
type filledArea struct {
	placed []placedBand
	low    float64  // the lowest that any of them reaches, in mm
	across [][]band // what stands across the page, of the bands that were taken
	taken  int      // how many of the bands
}

// fill sets as many bands into the columns of an area as go into it. On a page that
// has nothing else each column takes some, so that there is an end to it.
func (c columnPages) fill(bands []band, area plane.Box) filledArea {
	f := filledArea{low: area.Max.Y}
	for k := range c.count {
		c.fillColumn(&f, bands, area, area.Min.X+float64(k)*(columnWidth(area.Width(), c.count)+columnsApart))
	}
	return f
}

// columnWidth is how wide each of some columns is in a width, in mm.
func columnWidth(width float64, count int) float64 {
	return (width+columnsApart)/float64(count) - columnsApart
}

// fillColumn sets the next bands into the column of an area that begins at x.
func (c columnPages) fillColumn(f *filledArea, bands []band, area plane.Box, x float64) {
	y := area.Max.Y
	for first := true; f.taken < len(bands); {
		rest := bands[f.taken:]
		if rest[0].across != nil {
			f.across = append(f.across, rest[0].across)
			f.taken++
			continue
		}
		n := together(rest)
		next, above := rest[:n], c.gaps*rest[0].above
		if first {
			above = 0
			if again := rest[0].again; len(again) > 0 {
				next = slices.Concat(again, next)
			}
		}
		room := y - area.Min.Y
		height := c.height(next)
		full := above+height > room
		if full && (!first || area != c.room) {
			return
		}
		f.placed = c.stacked(f.placed, next, plane.Point{X: x, Y: y - above})
		y -= above + height
		f.low = min(f.low, y)
		f.taken += n
		first = false
	}
}

// together is how many bands stay together, from the first on.
func together(bands []band) int {
	n := 1
	for n < len(bands) && bands[n-1].keep {
		n++
	}
	return n
}

// heightOf is how high bands are, one under the other, in mm.
func heightOf(bands []band) float64 { return columnPages{gaps: 1}.height(bands) }

// height is how high bands are, one under the other, in mm.
func (c columnPages) height(bands []band) float64 {
	sum := 0.0
	for i := range bands {
		if i > 0 {
			sum += c.gaps * bands[i].above
		}
		sum += bands[i].Height
	}
	return sum
}

// stacked adds bands to a page, one under the other, the first with its upper left
// corner at a place.
func (c columnPages) stacked(page []placedBand, bands []band, at plane.Point) []placedBand {
	for i := range bands {
		b := &bands[i]
		if i > 0 {
			at.Y -= c.gaps * b.above
		}
		page = append(page, placedBand{b, at})
		at.Y -= b.Height
	}
	return page
}
