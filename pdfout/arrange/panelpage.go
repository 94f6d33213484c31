package arrange

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: panels that have no room on the pages of their sheet share pages right
// after those; paper that has everything on one page grows by them at its top. One that is higher than a page goes on, between two of its lines, over as
// many as it needs, each part headed by the name of its piece. No line of it is lost.

// Panel is text about a piece that has no room on the pages that show it.
type Panel struct {
	Of string // the name of the piece
	Inscription
}

// PanelPages are pages with the panels that have no room on those of the sheet.
func (s *Sheet) PanelPages() []Sheet {
	page := PageOf(s.Paper)
	packed, parts := s.packApart(page.Window)
	var all []Sheet
	for _, k := range packed {
		one := NewSheet(nil, page, []Cell{{}})
		one.Paper = s.Paper
		one.putParts(k, parts, plane.Point{})
		all = append(all, one)
	}
	return all
}

// GrowForPanels makes the one page of a sheet higher, at its top, by as much as the panels need
// that have no room on it, and puts them there. Those that would make it higher than some mm
// stay in Apart.
func (s *Sheet) GrowForPanels(highest float64) {
	window := plane.Point{X: s.Grid.Window.X, Y: highest - s.Grid.Window.Y}
	if len(s.Apart) == 0 || window.Y <= 0 {
		return
	}
	packed, parts := s.packApart(window)
	if len(packed) > 1 {
		return
	}
	used := packed[0].Used()
	low := s.Grid.Window.Y
	s.Grid.Window.Y += used.Height()
	s.Paper = s.Paper.Around(s.Grid.Window)
	s.putParts(packed[0], parts, plane.Point{Y: low - used.Min.Y})
	s.Apart = nil
}

// packApart packs the panels that have no room on the sheet into windows of a size, in as many
// parts as that takes.
func (s *Sheet) packApart(window plane.Point) ([]Packing, []Panel) {
	var parts []Panel
	for _, t := range s.Apart {
		for _, part := range t.parts(window.Y - 2*signRoom) {
			parts = append(parts, Panel{t.Of, part})
		}
	}
	var packed []Packing
	for i, t := range parts {
		p := Parcel{Number: i, Size: plane.Point{X: t.Width + 2*signRoom, Y: t.Height + 2*signRoom}}
		put := false
		for k := range packed {
			if put = packed[k].Put(p); put {
				break
			}
		}
		if !put {
			next := EmptyPage(window)
			next.Put(p)
			packed = append(packed, next)
		}
	}
	return packed, parts
}

// putParts puts packed parts of panels on the sheet, moved by a step.
func (s *Sheet) putParts(packed Packing, parts []Panel, step plane.Point) {
	for _, p := range packed.Parcels {
		t := parts[p.Number]
		s.put(PlacedInscription{t.Inscription, p.Room.Centre().Add(step), text.Across()})
		if !slices.Contains(s.Tells, t.Of) {
			s.Tells = append(s.Tells, t.Of)
		}
	}
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
	var feet []float64
	for _, l := range t.Labels {
		if foot := l.Style.Down() - l.At.Y; foot <= most+lineSlack && foot > 0 {
			feet = append(feet, foot)
		}
	}
	slices.Sort(feet)
	for _, foot := range slices.Backward(feet) {
		if !t.crosses(foot) {
			return foot
		}
	}
	return 0
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
	lower.Labels = make([]text.Label, 0, len(t.Labels)) // most are, and long panels are cut many times
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
