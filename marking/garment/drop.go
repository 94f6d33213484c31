package garment

import (
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. How long the finished garment is, is measured where a round ends: along
// a fold, a seam at the centre or an opening, from the hem up to the edge at the top, which
// is the neck mostly, and over seams to the piece above; at a neck it ends, whether a collar
// is sewn on there or not, and where none of its pieces has a neck, at the waist likewise, as the length
// of a skirt is counted. It is known from stitch line to hem
// line with tucks in. A piece that has neck and hem both is measured from the shoulder as
// well: from where neck and shoulder meet straight down. Where the pieces above could be
// reached over pieces of several lengths, nothing is said. What hangs beyond the hem, as a ruffle
// does, is part of it, for that is where the garment ends.

// Drop is how long the finished garment is at one place.
type Drop struct {
	Piece  string        // at the top
	Along  string        // the edge of it that is measured, such as "centre front"; "" from the shoulder, straight down
	Top    string        // the edge from which it is measured; from the shoulder, the corner: "neck and shoulder"
	Bottom string        // that to which it is
	Hangs  Hanging       // what hangs from there
	Length length.Amount // with it
	Back   bool          // it lies at the back
	// FromWaist tells that the garment begins at the waist, and so does the length.
	FromWaist bool
	Fit       Fit

	middle bool // it lies at a fold or a centre
}

// drops returns the lengths of a garment above each of its hems.
func (m measurer) drops() []Drop {
	var all []Drop
	up := climber{m, map[foothold][]wayUp{}}
	seen := map[edgeOf]bool{}
	for i := range m.Pieces {
		for edge := range m.Pieces[i].Edges {
			e := edgeOf{&m.Pieces[i], edge}
			if seen[e] || m.levelOf(e) != AtHem {
				continue
			}
			r := m.follow(e)
			for _, p := range r.panels {
				seen[p.edgeOf] = true
			}
			if r.broken == "" {
				all = append(all, up.above(r)...)
			}
		}
	}
	at := func(d Drop) int {
		return slices.IndexFunc(m.Pieces, func(p piece.Piece) bool { return p.Name == d.Piece })
	}
	slices.SortStableFunc(all, func(a, b Drop) int { return at(a) - at(b) })
	return all
}

// above returns the lengths from a hem up.
func (m climber) above(r round) []Drop {
	var found []Drop
	var tops []edgeOf // of each
	apart := map[edgeOf]bool{}
	ends := r.ends()
	slices.SortStableFunc(ends, func(a, b panelSide) int { return int(a.kind - b.kind) })
	for _, end := range ends {
		i := 0
		if end.panel.sides[1].edge == end.edge {
			i = 1
		}
		for _, way := range m.upward(foothold{edgeOf{end.panel.piece, end.edge}, i, 0}) {
			hangs, _ := m.HangsFrom(end.panel.piece, end.panel.edge)
			d := Drop{
				Piece: way.top.piece.Name, Along: way.along.drawn().Key, Top: way.top.drawn().Key, Bottom: end.panel.drawn().Key, Hangs: hangs,
				Length: m.Unit.Amount(way.mm + hangs.Depth.MM), Back: calls(way.along.piece.Words()+" "+way.along.drawn().Key, "back"),
				FromWaist: m.beginsAt(way.top), middle: way.along.drawn().OnFold || way.along.called("centre", "center"),
			}
			switch k := slices.Index(tops, way.along); {
			case k < 0:
				found, tops = append(found, d), append(tops, way.along)
				if mm, far, ok := m.fromShoulder(end.panel, way, i); ok {
					d.Along, d.Top, d.Length, d.Back, d.middle = "", d.Top+" and "+far.drawn().Key, m.Unit.Amount(mm+hangs.Depth.MM), false, false
					found, tops = append(found, d), append(tops, edgeOf{})
				}
			case math.Abs(found[k].Length.MM-d.Length.MM) > m.Unit.Ruler():
				apart[way.along] = true
			}
		}
	}
	var all []Drop
	for k, d := range found {
		if !apart[tops[k]] {
			all = append(all, d)
		}
	}
	return all
}

// fromShoulder measures a panel from the far end of the edge at its top straight down, along the
// way up; ok is false where that edge is not on the panel's piece, or ends at no seam.
func (m measurer) fromShoulder(p panel, way wayUp, i int) (mm float64, far edgeOf, ok bool) {
	far, _ = way.top.further(i)
	if way.top.piece != p.piece || far.edge == p.edge || far.edge == p.sides[0].edge || far.edge == p.sides[1].edge || !m.joins(far) {
		return 0, far, false
	}
	top, along := way.top.drawn().Sewn, way.along.drawn().Sewn
	at := top[len(top)-1]
	if i == 0 {
		at = top[0]
	}
	down := along[len(along)-1].Sub(along[0]).Unit()
	if i == 1 {
		down = down.Mul(-1)
	}
	bounds := p.piece.Tree.Bounds()
	plumb := plane.NewTree(plane.Path{at, at.Add(down.Mul(bounds.Width() + bounds.Height()))})
	c := plane.Crossings(plumb, plane.NewTree(p.drawn().Sewn))
	if len(c) == 0 {
		return 0, far, false
	}
	// Tucks across the piece take as much there as they do along the way up.
	return c[0].A - (way.drawn - way.mm), far, true
}

// beginsAt reports whether an edge is the waist of a garment that begins there: no piece that
// seams join to it, over others too, reaches up to a neck, and none at all to a shoulder or
// an arm. A bonnet beside a petticoat has a neck of its own; a bodice whose seam at the waist
// is left out is not told from another garment.
func (m measurer) beginsAt(e edgeOf) bool {
	if m.levelOf(e) != AtWaist {
		return false
	}
	together := m.togetherWith(e.piece)
	for i := range m.Pieces {
		for edge := range m.Pieces[i].Edges {
			one := edgeOf{&m.Pieces[i], edge}
			if one.called("shoulder", "armhole", "sleeve", "raglan") || together[one.piece] && one.called("neck") {
				return false
			}
		}
	}
	return true
}

// wayUp is the way from a hem to the top of a garment.
type wayUp struct {
	along, top edgeOf // the last edge, and the one it ends at
	mm         float64
	drawn      float64 // as the pieces are drawn, in mm
}

// mostStoreys bounds over how many seams a length is followed up.
const mostStoreys = 20

// climber follows lengths up, each part of a way once, however many ways go over it.
type climber struct {
	measurer
	known map[foothold][]wayUp // the ways that have been followed
}

// foothold is where a way goes on: at an edge, the way round its outline, over so many seams.
type foothold struct {
	edgeOf
	way, storey int
}

// upward follows an edge up, and on over the seam at its upper end. Of the ways that end along
// one edge it returns as many as tellApart leaves.
func (m climber) upward(from foothold) []wayUp {
	ways, known := m.known[from]
	if !known {
		ways = tellApart(m.followed(from))
		m.known[from] = ways
	}
	return ways
}

// tellApart leaves, of the ways that end along one edge, the first, the shortest and the longest:
// whether all of them are as long as the first can be told by these.
func tellApart(ways []wayUp) []wayUp {
	var ends []edgeOf
	kept := map[edgeOf]*[3]wayUp{}
	for _, w := range ways {
		k := kept[w.along]
		if k == nil {
			k = &[3]wayUp{w, w, w}
			kept[w.along] = k
			ends = append(ends, w.along)
		}
		if w.mm < k[1].mm {
			k[1] = w
		}
		if w.mm > k[2].mm {
			k[2] = w
		}
	}
	var left []wayUp
	for _, e := range ends {
		left = append(left, kept[e][:]...)
	}
	return left
}

// followed follows every way from a foothold.
func (m climber) followed(from foothold) []wayUp {
	e := from.edgeOf
	mm, drawn := 0.0, 0.0
	along := e
	for range e.piece.Edges {
		mm += e.drawn().FinishedLength
		drawn += e.drawn().Sewn.Length()
		along = e
		next, turn := e.further(from.way)
		e = next
		if math.Abs(turn) >= goesOn {
			break
		}
	}
	joined := m.at(e)
	if len(joined) == 0 || from.storey == mostStoreys || e.called("neck") || m.beginsAt(e) {
		return []wayUp{{along, e, mm, drawn}}
	}
	var all []wayUp
	for _, s := range joined {
		if other, ok := s.other(); ok && other == e {
			continue
		}
		for _, c := range s.Sides[1-s.side].Courses {
			above := c.outlineEdge()
			before, after := above.piece.Neighbours(above.edge)
			for way, by := range []int{before, after} {
				side := edgeOf{above.piece, by}
				if kind, _, _ := m.over(above, by); kind == sideSeam || kind == sideLoose || !m.meets(s, e, along, side) {
					continue
				}
				for _, one := range m.upward(foothold{side, way, from.storey + 1}) {
					one.mm += mm
					one.drawn += drawn
					all = append(all, one)
				}
			}
		}
	}
	return all
}

// meets reports whether an edge below a seam and one above it may be at one end of it: not
// where the ends of the seam tell otherwise.
func (m measurer) meets(s seamAt, joined, below, above edgeOf) bool {
	if next, ok := s.beyond(below.drawn().Key); ok && joined.piece == below.piece {
		return next == above
	}
	return true
}
