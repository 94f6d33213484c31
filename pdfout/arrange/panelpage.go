package arrange

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: panels that have no room by their pieces share pages right after those
// of the sheet. One that is higher than a page goes on, between two of its lines, over as
// many as it needs, each part headed by the name of its piece. No line of it is lost.

// Panel is text about a piece that has no room on the pages that show it.
type Panel struct {
	Of string // the name of the piece
	Inscription
}

// PanelPages are pages with the panels that have no room on those of the sheet.
func (s *Sheet) PanelPages() []Sheet {
	page := PageOf(s.Paper)
	var parts []Inscription
	for _, t := range s.Apart {
		parts = append(parts, t.parts(page.Window.Y-2*signRoom)...)
	}
	var packed []Packing
	for i, t := range parts {
		p := Parcel{Number: i, Size: plane.Point{X: t.Width + 2*signRoom, Y: t.Height + 2*signRoom}}
		if !slices.ContainsFunc(packed, func(k Packing) bool { return len(k.places(p)) > 0 }) {
			packed = append(packed, EmptyPage(page.Window))
		}
		for k := range packed {
			if packed[k].Put(p) {
				break
			}
		}
	}
	var all []Sheet
	for _, k := range packed {
		one := NewSheet(nil, page, []Cell{{}})
		one.Paper = s.Paper
		for _, p := range k.Parcels {
			one.put(PlacedInscription{parts[p.Number], p.Room.Centre(), text.Across()})
		}
		all = append(all, one)
	}
	return all
}

// parts returns the panel in as many parts as it takes for none to be higher than some mm.
func (p Panel) parts(most float64) []Inscription {
	var all []Inscription
	rest := p.Inscription
	for rest.Height > most {
		cut := rest.lastGap(most)
		if cut == 0 || len(all) > 0 && cut <= p.goesOn().Height {
			break // there is no gap, or none but under its heading
		}
		upper, lower := rest.cutAt(cut)
		all = append(all, upper)
		rest = p.goesOn()
		rest.add(lower, panelGap)
	}
	return append(all, rest)
}

// goesOn is the heading of all parts but the first.
func (p Panel) goesOn() Inscription {
	return Wrapped(p.Of+", continued", ink.Heading(), usualPanel)
}

// lastGap is how far down, in mm and at most as much as is given, an inscription can be cut so
// that no line of text and none that is drawn is cut through; zero where it cannot be.
func (t Inscription) lastGap(most float64) float64 {
	best := 0.0
	for _, l := range t.Labels {
		if foot := l.Style.Down() - l.At.Y; foot <= most+lineSlack && foot > best && !t.crosses(foot) {
			best = foot
		}
	}
	return best
}

// lineSlack is how much two lines of text may overlap where one is set under the other, in
// mm: less than shows, and more than rounding.
const lineSlack = 0.01

// crosses reports whether a cut across, so many mm down, goes through anything.
func (t Inscription) crosses(down float64) bool {
	return slices.ContainsFunc(t.Labels, func(l text.Label) bool {
		return -l.At.Y-l.Style.Up() < down-lineSlack && l.Style.Down()-l.At.Y > down+lineSlack
	}) || slices.ContainsFunc(t.Rules, func(r plane.Path) bool {
		return min(-r[0].Y, -r[1].Y) < down-lineSlack && max(-r[0].Y, -r[1].Y) > down+lineSlack
	})
}

// cutAt returns what of an inscription is over a cut, so many mm down, and what is under it.
func (t Inscription) cutAt(down float64) (upper, lower Inscription) {
	upper.Height, upper.Width, lower.Width = down, t.Width, t.Width
	top := t.Height // of what is under the cut
	for _, l := range t.Labels {
		if l.Style.Down()-l.At.Y > down+lineSlack {
			top = min(top, -l.At.Y-l.Style.Up())
		}
	}
	for _, r := range t.Rules {
		if max(-r[0].Y, -r[1].Y) > down+lineSlack {
			top = min(top, -r[0].Y, -r[1].Y)
		}
	}
	step := plane.Point{Y: top}
	for _, l := range t.Labels {
		if l.Style.Down()-l.At.Y <= down+lineSlack {
			upper.Labels = append(upper.Labels, l)
			continue
		}
		l.At = l.At.Add(step)
		lower.Labels = append(lower.Labels, l)
	}
	for _, r := range t.Rules {
		if max(-r[0].Y, -r[1].Y) <= down+lineSlack {
			upper.Rules = append(upper.Rules, r)
			continue
		}
		lower.Rules = append(lower.Rules, plane.Path{r[0].Add(step), r[1].Add(step)})
	}
	lower.Height = t.Height - top
	return upper, lower
}
