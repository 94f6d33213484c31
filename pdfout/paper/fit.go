package paper

import (
	"math"
)

// Rules of this file: "fit to page" makes a page larger or smaller, both ways
// alike, until all of it is on the paper that is in the printer. Its scale is the
// lesser of the two ratios of the sides. Some printers fit a page into what they can
// print, which is all but 1/4 in at every side (common practice), even on paper of
// the page's own size.

const (
	// unprintableEdge is what many printers leave free at every side, in mm: 1/4 in.
	unprintableEdge = 6.35
	// readOff bounds how far the scale of a side that was measured may lie from one
	// that is recognised: 1/32 in on 4 in, which is half of the finest step of most
	// rulers.
	readOff = 1.0 / 32 / 4
	// noticed is the least by which a scale differs from 1 to be spoken of.
	noticed = 0.001
)

// Fit is what "fit to page" makes of sheets.
type Fit struct {
	Scale float64 // 1 where nothing changes
	// On names the paper they come out on: "A4 paper".
	On string
	// Inside tells that they are fitted into what a printer can print of it.
	Inside bool
}

// fitted is the scale of a page on paper of a size, which is turned as the page is.
func (p Paper) fitted(width, height float64) float64 {
	short, long := min(width, height), max(width, height)
	return min(short/min(p.Width, p.Height), long/max(p.Width, p.Height))
}

// fits returns what "fit to page" makes of sheets for the paper on its own size and
// on those that homes have; none of a roll or a single page, whose size hangs on what is
// on it.
func (p Paper) fits() []Fit {
	if p.WhollyOnOne() {
		return nil
	}
	var all []Fit
	add := func(on Paper, edge float64) {
		f := Fit{p.fitted(on.Width-2*edge, on.Height-2*edge), on.ShortTitle(), edge > 0}
		if math.Abs(f.Scale-1) >= noticed {
			all = append(all, f)
		}
	}
	for _, on := range All() {
		if on.Name != p.Name && on.Name != eitherName {
			add(on, 0)
		}
	}
	add(p, unprintableEdge)
	return all
}

// OtherFit returns what "fit to page" makes of sheets for the paper on the other of
// letter and A4 paper, of paper that is neither on the smaller of the two, and
// whether that differs from 100 %.
func (p Paper) OtherFit() (Fit, bool) {
	if p.WhollyOnOne() {
		return Fit{}, false
	}
	var least Fit
	for _, on := range All() {
		if on.Name == p.Name || on.Name != "letter" && on.Name != "a4" {
			continue
		}
		if f := p.fitted(on.Width, on.Height); least.On == "" || f < least.Scale {
			least = Fit{Scale: f, On: on.ShortTitle()}
		}
	}
	return least, math.Abs(least.Scale-1) >= noticed
}

// Recognised returns what may have made sheets for the paper come out at a scale:
// every fit that gives it, as far as a ruler can tell. There is none where across
// and down differ, since a fit makes both alike.
func (p Paper) Recognised(s Scale) []Fit {
	s = s.OrTrue()
	var all []Fit
	for _, f := range p.fits() {
		if math.Abs(s.Across-f.Scale) <= readOff && math.Abs(s.Down-f.Scale) <= readOff {
			all = append(all, f)
		}
	}
	return all
}
