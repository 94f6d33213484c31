package arrange

import (
	"fmt"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: what is to be known of a piece, and what is done with it step by step,
// stands left-aligned in one panel of one of a few fixed widths, under a thin rule: with the
// sign of the piece over it where both have room inside; else in the piece by itself; else
// under or beside it, for which room is kept; else on a page of its own, right after those
// of the piece. By a piece that has its sign inside it has a short rule alone, since the
// name would stand there twice, and anywhere on a page that shows no other; further off it says
// whose it is. It is never set smaller,
// and never in a hem.

const (
	// panelGap is kept free over and under the rule, in mm, and itemGap between two notes
	// or steps.
	panelGap = 1.6
	itemGap  = 1.0
	// shortRule is the length of the rule over a panel without a heading, in mm.
	shortRule = 20.0
	// stepIndent is how far the words of a step stand from its number's left, in mm.
	stepIndent = 5.5
	// besideAway is how far what stands beside a piece is from it, in mm, and besideRoom
	// how far from everything else.
	besideAway = 1.5
	besideRoom = 1.0
	// besideSteps is how many places it tries along each side of the piece.
	besideSteps = 33
	// pageSteps is how many places it tries across and up a page.
	pageSteps = 40
)

// The widths of panels, in mm. The usual one is tried first, but for a piece that is
// narrower than that.
const (
	narrowPanel = 55.0
	usualPanel  = 80.0
	widePanel   = 120.0
)

func (p Piece) panelWidths() []float64 {
	if p.Bounds.Width() < usualPanel {
		return []float64{narrowPanel, usualPanel, widePanel}
	}
	return []float64{usualPanel, narrowPanel, widePanel}
}

// panel sets the notes and the steps of the piece under a heading.
func (p Piece) panel(heading Inscription, width float64) Inscription {
	t := heading
	t.Labels = append([]text.Label(nil), t.Labels...)
	t.Space(panelGap)
	t.RuleOff(plane.Point{Y: -t.Height}, width)
	return p.toldUnder(t, width)
}

// barePanel is the panel under a short rule, for a piece that has its sign by it.
func (p Piece) barePanel(width float64) Inscription {
	var t Inscription
	t.RuleOff(plane.Point{}, shortRule)
	return p.toldUnder(t, width)
}

// toldUnder sets the notes and the steps of the piece under what there is.
func (p Piece) toldUnder(t Inscription, width float64) Inscription {
	t.Width = width
	gap := panelGap
	for _, note := range p.Notes {
		t.add(Wrapped(note, ink.Text(), width), gap)
		gap = itemGap
	}
	if p.sketch != nil {
		t.add(sketched(*p.sketch), panelGap)
	}
	for i, step := range p.Steps {
		number := InLines([]string{fmt.Sprintf("%d.", i+1)}, ink.StrongText())
		words := Wrapped(step, ink.Text(), width-stepIndent)
		number.With(words.Lines, plane.Point{X: stepIndent})
		number.Height = words.Height
		t.add(number, gap)
		gap = itemGap
	}
	return t
}

// ownPanel is a panel that stands away from the sign.
func (p Piece) ownPanel(width float64) Inscription {
	heading := Wrapped(p.Name, ink.Heading(), width)
	if line := p.partLine(); line != "" {
		heading.add(Wrapped(line, ink.Text(), width), cutGap)
	}
	return p.panel(heading, width)
}

// told reports whether the piece has anything for a panel.
func (p Piece) told() bool { return len(p.Notes)+len(p.Steps) > 0 }

// remainder is what has no room inside a piece: the sign where it is not signed, and the
// panel where that is not panelled.
type remainder struct {
	Piece
	signed, panelled bool
}

// by is what of the sign and the panel is to stand by the piece, for some width of the panel.
func (r remainder) by(width float64) []Inscription {
	if r.signed && !r.panelled {
		return []Inscription{r.barePanel(width)}
	}
	return r.off(width)
}

// off is the same further off.
func (r remainder) off(width float64) []Inscription {
	switch {
	case !r.panelled && !r.signed:
		return []Inscription{r.panel(r.sign(ink.StrongText(), width), width)}
	case !r.panelled:
		return []Inscription{r.ownPanel(width)}
	case !r.signed:
		return []Inscription{r.besideSign()}
	}
	return nil
}

// inside puts the sign and the panel into the piece, as far as they have room there, and
// returns what has none.
func (s *Sheet) inside(p Piece) remainder {
	if p.told() {
		for _, style := range ink.Names() {
			for _, width := range p.panelWidths() {
				sign := p.sign(style, width)
				if !p.suits(sign, style, text.Across()) {
					continue
				}
				if at, ok := p.Roomiest(s.Field, closest, p.panel(sign, width), text.Across(), signRoom, s.Whole); ok {
					s.put(at)
					return remainder{p, true, true}
				}
			}
		}
	}
	signed := s.signInside(p)
	if !signed {
		s.numberInside(p)
	}
	return remainder{p, signed, !p.told() || signed && s.panelInside(p)}
}

// panelInside puts the panel alone into the piece, and reports whether it has room there.
func (s *Sheet) panelInside(p Piece) bool {
	for _, width := range p.panelWidths() {
		if at, ok := p.Roomiest(s.Field, closest, p.barePanel(width), text.Across(), narrowRoom, s.Whole); ok {
			s.put(at)
			return true
		}
	}
	return false
}

// kept returns the ways in which room is kept on its page for the words of a piece, its sign
// and its panel, as far as it goes on a page with that; the best first, and of ruled paper as it
// is. There are several where its outline goes beyond its lines: so may its sign and its panel.
func (p Piece) kept(window plane.Point) []Piece {
	if p.Kind.Ruled() {
		return []Piece{p}
	}
	if words := p.withWords(); words.Fits(window) {
		p = words
	}
	ways := p.keptWithin(p.Bounds.Grown(largestPanel), window)
	if len(ways) == 0 || ways[0].around != p.around {
		ways = append(ways, p.keptWithin(p.Bounds, window)...)
	} else {
		ways = ways[:1]
	}
	if len(ways) == 0 {
		return []Piece{p}
	}
	var of []Piece // those that may go where none before does
	for _, q := range ways {
		if !slices.ContainsFunc(of, func(o Piece) bool { return o.Room().X <= q.Room().X && o.Room().Y <= q.Room().Y }) {
			of = append(of, q)
		}
	}
	return of
}

// keptWithin returns the ways to keep that room that go on a page, the best first: the sign and
// the panel lie within a box as far as they are inside the piece, and else under it or beside it.
func (p Piece) keptWithin(within plane.Box, window plane.Point) []Piece {
	rest, told := p.alone(within)
	p = p.holding(told)
	var under, beside []Piece
	for _, width := range p.panelWidths() {
		for _, t := range rest.by(width) {
			q := p
			q.Foot = plane.Point{X: t.Width + 2*besideRoom, Y: t.Height + besideAway + besideRoom}
			under = append(under, q)
			q.Foot, q.Aside = plane.Point{}, t.Width+besideAway+besideRoom
			if t.Height <= p.Bounds.Height() {
				beside = append(beside, q)
			}
		}
	}
	if len(under) == 0 {
		under = []Piece{p}
	}
	return slices.DeleteFunc(append(under, beside...), func(q Piece) bool { return !q.Fits(window) })
}

// alone returns what of its sign and its panel has no place inside a piece and within a box, and
// the box round what has.
func (p Piece) alone(within plane.Box) (remainder, plane.Box) {
	around := p.Bounds.Grown(largestPanel)
	s := NewSheet([]Piece{p}, Grid{Rows: 1, Columns: 1, Window: plane.Point{X: around.Width(), Y: around.Height()}, origin: around.Min}, []Cell{{}})
	s.TakeHeads()
	s.words()
	for _, beyond := range without([]plane.Box{around}, within) {
		s.Field.Take(text.Upright(beyond))
	}
	words := len(s.Labels)
	rest, told := s.inside(p), plane.EmptyBox()
	for _, l := range s.Labels[words:] {
		told = told.Union(l.Room.Bounds())
	}
	return rest, told
}

// largestPanel is more than any panel needs round its piece, in mm.
const largestPanel = 300.0

// sign and panel of a piece are put on the sheet. What has no room on it is kept in Apart.
func (s *Sheet) tell(p Piece) {
	rest := s.inside(p)
	further := rest.off
	if len(s.Pieces) == 1 {
		further = rest.by // it is of no other
	}
	for _, way := range []struct {
		find func(Piece, Inscription) (plane.Point, bool)
		set  func(width float64) []Inscription
	}{{s.atFoot, rest.by}, {s.beside, rest.by}, {s.onPages, further}} {
		for _, width := range p.panelWidths() {
			left := way.set(width)
			if len(left) == 0 {
				return
			}
			if at, ok := way.find(p, left[0]); ok {
				if !rest.signed {
					on, _ := p.Outline.Nearest(at)
					s.lead(leader(left[0].Around(at, text.Across()), on))
				}
				return
			}
		}
	}
	for _, t := range rest.off(usualPanel) {
		s.Apart = append(s.Apart, Panel{p.Name, t})
	}
}

// atFoot puts an inscription where room is kept for it, which begins where the piece does.
func (s *Sheet) atFoot(p Piece, t Inscription) (plane.Point, bool) {
	if p.Foot == (plane.Point{}) {
		return plane.Point{}, false
	}
	return s.outside(s.Pieces, t, plane.Point{
		X: p.Bounds.Min.X - p.around.min.X + t.Width/2,
		Y: p.Bounds.Min.Y - p.around.min.Y - besideAway - t.Height/2,
	})
}

// outside puts an inscription at a place if it is free there, and outside of some pieces; it
// returns the place.
func (s *Sheet) outside(pieces []Piece, t Inscription, at plane.Point) (plane.Point, bool) {
	room := t.Around(at, text.Across())
	box := room.Bounds()
	if !s.Whole(box) || !s.Field.Free(room.Grown(besideRoom)) {
		return at, false
	}
	for _, q := range append(box.Outline(), at) {
		if slices.ContainsFunc(pieces, func(p Piece) bool { return p.Inside(q) }) {
			return at, false
		}
	}
	s.put(PlacedInscription{t, at, text.Across()})
	return at, true
}

// beside puts an inscription under a piece, over it, or at a side of it, rather near its
// middle; never into another piece.
func (s *Sheet) beside(p Piece, t Inscription) (plane.Point, bool) {
	middle := p.Bounds.Centre()
	away := plane.Point{X: (p.Bounds.Width()+t.Width)/2 + besideAway, Y: (p.Bounds.Height()+t.Height)/2 + besideAway}
	for k := range besideSteps {
		share := stepFromMiddle(k) / (besideSteps - 1)
		along := plane.Point{X: share * p.Bounds.Width(), Y: share * p.Bounds.Height()}
		for _, step := range []plane.Point{{X: along.X, Y: -away.Y}, {X: along.X, Y: away.Y}, {X: away.X, Y: along.Y}, {X: -away.X, Y: along.Y}} {
			if at, ok := s.outside(s.Pieces, t, middle.Add(step)); ok {
				return at, true
			}
		}
	}
	return plane.Point{}, false
}

// onPages puts an inscription anywhere on the pages of the sheet, outside of all pieces: rather
// on those that show its own. Where it has no room so, it may lie in its own, whose outline goes
// beyond its lines.
func (s *Sheet) onPages(p Piece, t Inscription) (plane.Point, bool) {
	others := slices.DeleteFunc(slices.Clone(s.Pieces), func(q Piece) bool { return q.Key == p.Key })
	for _, pieces := range [][]Piece{s.Pieces, others} {
		if at, ok := s.onPagesOutside(pieces, p, t); ok {
			return at, true
		}
	}
	return plane.Point{}, false
}

// onPagesOutside does so outside of some pieces.
func (s *Sheet) onPagesOutside(pieces []Piece, p Piece, t Inscription) (plane.Point, bool) {
	for _, own := range []bool{true, false} {
		for _, c := range s.Cells {
			core := s.Grid.CoreOf(c)
			if core.Meets(p.Bounds) != own {
				continue
			}
			middles := s.clearAt(core.Centre()) // where it is whole on the page; asked first, there may be many
			half := plane.Point{X: t.Width/2 - roundingOff, Y: t.Height/2 - roundingOff}
			middles.Min, middles.Max = middles.Min.Add(half), middles.Max.Sub(half)
			for y := range pageSteps {
				for x := range pageSteps {
					at := plane.Point{X: core.Min.X + core.Width()*(float64(x)+0.5)/pageSteps, Y: core.Max.Y - core.Height()*(float64(y)+0.5)/pageSteps}
					if !middles.Holds(at) || !s.look() {
						continue
					}
					if at, ok := s.outside(pieces, t, at); ok {
						return at, true
					}
				}
			}
		}
	}
	return plane.Point{}, false
}
