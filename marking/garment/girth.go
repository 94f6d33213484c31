package garment

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. How far it is round the finished garment is known at the level of edges
// that go round it, such as the hem, and under the arms: on the line across each piece from
// where its side seam ends at the armhole, or at a gusset, or turns out into a sleeve. A chest is measured
// there (common practice). Everything is measured between stitch lines, with tucks and pleats as
// they lie at that level; a gathered skirt by its own width. Where the garment opens it is measured to
// the line at which it is closed: a centre line beside the opening, else the finished edge.

// Level is where it is measured round a garment.
type Level int

// The levels.
const (
	AtChest Level = iota // under the arms
	AtWaist              // only where the file calls an edge or a seam so
	AtHem
)

// String names the level.
func (l Level) String() string { return [...]string{"chest", "waist", "hem"}[l] }

// Girth is how far it is round the finished garment at a level.
type Girth struct {
	Level Level
	Parts []GirthPart
	Round length.Amount // all of them together
	Opens Opening       // the zero Opening where it opens nowhere
	// Gathered tells that what goes round is drawn up to what it is sewn to, and Round is
	// the length of that.
	Gathered bool
	Fit      Fit
}

// GirthPart is what one piece has of the way round.
type GirthPart struct {
	Piece string // its name
	Edge  string // that goes round; "" where it is measured across the piece
	Each  length.Amount
	Times int
	// HeldIn tells that folds which end near the level, within piece.NearFoldEnd, are
	// counted in as they lie.
	HeldIn bool
}

// Whole returns the length of all of them together.
func (g GirthPart) Whole() length.Amount { return g.Each.Times(g.Times) }

const (
	// turnsOut is the cosine of the angle (45 degrees) from upward beyond which a seam at
	// the side no longer runs along the body, but out into a sleeve.
	turnsOut = math.Sqrt2 / 2
	// goesOn bounds how far the outline turns, in radians (30 degrees), where one edge
	// goes on up a side as another.
	goesOn = 30 * math.Pi / 180
	// mostSlant bounds the sine of the angle (10 degrees) between the hem of a piece and
	// the line across it from one arm to the other.
	mostSlant = 0.174
	// mostHollow bounds how far an armhole may reach down beside the end of the side seam,
	// in mm: 2 in; what goes deeper is no armhole.
	mostHollow = 2 * 25.4
)

// measurer works out how large the finished garment is.
type measurer struct {
	*Pattern
	seams
}

// girths returns what is known of a pattern at every level, and why there is nothing at the
// others.
func (m measurer) girths() (all []Girth, missing reasons) {
	seen := map[edgeOf]bool{}
	for i := range m.Pieces {
		for edge := range m.Pieces[i].Edges {
			e := edgeOf{&m.Pieces[i], edge}
			level, under := m.levelOf(e), e.facesDown()
			if seen[e] || level < 0 && !under {
				continue
			}
			r := m.follow(e)
			for _, p := range r.panels {
				seen[p.edgeOf] = true
			}
			if r.broken != "" {
				if len(m.Seams) == 0 || m.isInSeams(e.piece) { // an apron by itself is on nobody's way round
					missing.note(level, r.broken)
					if under {
						missing.note(AtChest, r.noChest(m.Seams))
					}
				}
				continue
			}
			if level >= 0 {
				all = append(all, m.along(r, level))
			}
			if under {
				if g, why, ok := m.underArms(r); ok {
					all = append(all, g)
				} else {
					missing.note(AtChest, why)
				}
			}
		}
	}
	all = withoutDrawnUp(all)
	for _, g := range all {
		m.inOrder(g.Parts)
	}
	slices.SortStableFunc(all, func(a, b Girth) int { return int(a.Level - b.Level) })
	return all, missing
}

// noChest says why a round that is broken has no girth under the arms. A yoke ends at its
// armholes: they are no seam that was left out, and below them it has no sides.
func (r round) noChest(all seams) string {
	for _, end := range r.ends() {
		if e := end.at(); end.kind == sideLoose && e.called("armhole") && !all.joins(e) {
			return fmt.Sprintf("%s ends at its armhole, and the chest is measured where a side seam runs up to one; where the dress hangs from a yoke, leave chest out of [fit]", e.piece.Name)
		}
	}
	return r.broken
}

// inOrder puts what pieces have of a round in the order of the file.
func (m measurer) inOrder(parts []GirthPart) {
	at := func(g GirthPart) int {
		return slices.IndexFunc(m.Pieces, func(p piece.Piece) bool { return p.Name == g.Piece })
	}
	slices.SortStableFunc(parts, func(a, b GirthPart) int { return at(a) - at(b) })
}

// reasons are why nothing is known of a level.
type reasons [AtHem + 1]string

// note adds the reason of a level that has none yet; nothing below the first level.
func (r *reasons) note(level Level, why string) {
	if level >= 0 && r[level] == "" {
		r[level] = why
	}
}

// levelOf is the level at which an edge goes round, if it does: a waist is called so, and a hem
// is sewn to nothing. It is below 0 where the edge has none.
func (m measurer) levelOf(e edgeOf) Level {
	joined := m.at(e)
	switch {
	case e.drawn().OnFold:
		return -1
	case e.called("waist"), slices.ContainsFunc(joined, func(s seamAt) bool { return calls(s.Key, "waist") }):
		return AtWaist
	case len(joined) > 0 || e.called("neck", "armhole", "side", "shoulder", "centre", "center"):
		return -1
	case e.called("hem"), e.drawn().Hem > 0 && e.facesDown(), e.called("foot", "bottom", "lower") && e.facesDown():
		return AtHem
	}
	return -1
}

// along measures a round along its edges. One that is gathered is as long as what it is
// drawn up to.
func (m measurer) along(r round, level Level) Girth {
	g := m.newGirth(level, r)
	drawnUp := length.Amount{Unit: m.Unit}
	told := map[*Seam]bool{}
	for _, p := range r.panels {
		times := p.piece.SideTimes()
		g.Parts = append(g.Parts, GirthPart{Piece: p.piece.Name, Edge: p.drawn().Key, Each: m.Unit.Amount(p.finished()), Times: times})
		to, gathered := m.gatheredTo(p.edgeOf, told)
		g.Gathered = g.Gathered || gathered
		if !gathered {
			to = g.Parts[len(g.Parts)-1].Whole()
		}
		drawnUp = drawnUp.Plus(to)
	}
	if g.Gathered {
		g.Round = drawnUp
	} else {
		g.Round = g.together()
	}
	return g
}

// gatheredTo returns the length of what an edge is drawn up to, nothing for a seam that has
// been told; gathered is false where it is not.
func (m measurer) gatheredTo(e edgeOf, told map[*Seam]bool) (to length.Amount, gathered bool) {
	to.Unit = m.Unit
	for _, s := range m.at(e) {
		longer, shorter := s.Longer(s.Difference)
		if !s.Gathered || longer.Sewn.MM != s.Sides[s.side].Sewn.MM {
			continue
		}
		gathered = true
		for _, c := range s.Sides[s.side].Courses {
			if c.Piece == e.piece && c.edge == e.edge && !told[s.Seam] {
				to, told[s.Seam] = to.Plus(shorter.Sewn.Times(e.piece.SideTimes()/c.Times)), true
			}
		}
	}
	return to, gathered
}

// withoutDrawnUp leaves out what is gathered at a level where what it is gathered to is
// measured as well.
func withoutDrawnUp(all []Girth) []Girth {
	return slices.DeleteFunc(slices.Clone(all), func(g Girth) bool {
		return g.Gathered && slices.ContainsFunc(all, func(o Girth) bool { return o.Level == g.Level && !o.Gathered })
	})
}

// finished is how long the edge of a panel is when it is sewn and the garment is closed.
func (p panel) finished() float64 {
	e := p.drawn()
	line, cut := e.Sewn, false
	for i, s := range p.sides {
		closing := p.closing(s)
		if s.kind != sideOpening || closing == nil {
			continue
		}
		from, to := 0.0, line.Length()
		if c := plane.Crossings(plane.NewTree(line), plane.NewTree(ruledOn(closing.Path, line.Length()))); len(c) > 0 {
			if i == 0 {
				from = c[len(c)-1].A
			} else {
				to = c[0].A
			}
			cut = true
		}
		line = line.Between(from, to)
	}
	if !cut {
		return e.FinishedLength
	}
	return p.piece.FinishedAlong(p.edge, line)
}

// ruledOn returns a straight line, so much longer at either end.
func ruledOn(p plane.Path, more float64) plane.Path {
	a, b := p[0], p[len(p)-1]
	along := b.Sub(a).Unit().Mul(more)
	return plane.Path{a.Sub(along), b.Add(along)}
}

// closing is the centre line by which the panel is closed where it opens; nil where the file
// gives none.
func (p panel) closing(s side) *piece.Line {
	if s.kind != sideOpening {
		return nil
	}
	return p.piece.CentreBeside(s.edge)
}

// newGirth begins what is measured along a round.
func (m measurer) newGirth(level Level, r round) Girth {
	g := Girth{Level: level, Round: length.Amount{Unit: m.Unit}}
	for _, s := range r.ends() {
		if s.kind == sideOpening {
			g.Opens = s.at().opening()
		}
	}
	return g
}

// together returns the length of all parts.
func (g Girth) together() length.Amount {
	total := length.Amount{Unit: g.Round.Unit}
	for _, p := range g.Parts {
		total = total.Plus(p.Whole())
	}
	return total
}

// underArms measures across the pieces that stand on a round, under the arms; or says why it
// cannot.
func (m measurer) underArms(r round) (g Girth, why string, ok bool) {
	g = m.newGirth(AtChest, r)
	var all []crossing
	down := 0.0
	for _, p := range r.panels {
		c, arms := m.crossing(p)
		if !arms {
			return g, "no seam at a side of " + p.piece.Name + " runs up to an armhole or a sleeve", false
		}
		all, down = append(all, c), max(down, c.hollow())
	}
	for i, p := range r.panels {
		mm, inside, held := 0.0, false, false
		if line := all[i].line(down); line != nil && down <= mostHollow {
			mm, inside = p.piece.Across(line)
			held = p.piece.HeldIn(line)
		}
		if !inside {
			return g, fmt.Sprintf("there is no level line across %s from where its side seam ends under the arm", p.piece.Name), false
		}
		g.Parts = append(g.Parts, GirthPart{Piece: p.piece.Name, Each: m.Unit.Amount(mm), Times: p.piece.SideTimes(), HeldIn: held})
	}
	g.Round = g.together()
	return g, "", true
}

// crossing is the way across a panel under the arm: from an arm to the other arm, or to the
// line at the other side, to which it runs square.
type crossing struct {
	up   plane.Point
	arms []rise // one or two
	to   plane.Path
}

// crossing returns the way across a panel; arms is false where neither of its sides ends
// under an arm.
func (m measurer) crossing(p panel) (c crossing, arms bool) {
	c.up = p.chord().Left()
	for i, s := range p.sides {
		if r := m.rise(p, i, s); r.arm {
			c.arms = append(c.arms, r)
		} else {
			c.to = r.path
		}
	}
	if len(c.arms) == 1 {
		c.up = c.to[len(c.to)-1].Sub(c.to[0]).Unit()
	}
	return c, len(c.arms) > 0
}

// hollow is how far below the end of a side seam, along it, the armhole is lowest, in mm.
func (c crossing) hollow() float64 {
	down := 0.0
	for _, r := range c.arms {
		lowest := r.top().Dot(c.up)
		for _, q := range r.armhole {
			lowest = min(lowest, q.Dot(c.up))
		}
		fromTop := r.path.Reversed()
		walked := 0.0
		for k := 1; k < len(fromTop); k++ {
			a, b := fromTop[k-1].Dot(c.up), fromTop[k].Dot(c.up)
			long := fromTop[k].Distance(fromTop[k-1])
			if b <= lowest {
				if a > b {
					long *= min(1, (a-lowest)/(a-b))
				}
				down = max(down, walked+long)
				break
			}
			walked += long
		}
	}
	return down
}

// line returns the line across, so far down the side seam from its end, in mm; nil where
// there is none.
func (c crossing) line(down float64) plane.Path {
	var ends plane.Path
	for _, r := range c.arms {
		at, _ := r.path.At(r.path.Length() - down)
		ends = append(ends, at)
	}
	switch {
	case len(ends) == 1 && len(c.to) < 2: // the other side leans out at once
		return nil
	case len(ends) == 1:
		return levelFrom(ends[0], c.to)
	}
	if math.Abs(ends.StartDirection().Dot(c.up)) > mostSlant {
		return nil
	}
	return ends
}

// levelFrom returns the line from a place to a line, square to that; nil where it does not
// meet it.
func levelFrom(at plane.Point, to plane.Path) plane.Path {
	along := to[len(to)-1].Sub(to[0]).Unit()
	reach := to.Length() + at.Distance(to[0])
	square := along.Left().Mul(reach)
	var nearest plane.Path
	for _, c := range plane.Crossings(plane.NewTree(plane.Path{at.Sub(square), at.Add(square)}), plane.NewTree(to)) {
		if long := c.At.Distance(at); long >= piece.LeastSeam && (nearest == nil || long < nearest.Length()) {
			nearest = plane.Path{at, c.At}
		}
	}
	return nearest
}

// rise is the way up a side of a panel.
type rise struct {
	path    plane.Path // upward
	arm     bool       // it ends under an arm
	armhole plane.Path // what goes on there, as it is sewn
}

func (r rise) top() plane.Point { return r.path[len(r.path)-1] }

// rise goes up a side of a panel: along a fold, an opening or the seam, as long as that goes
// on and runs along the body.
func (m measurer) rise(p panel, i int, s side) rise {
	if line := p.closing(s); line != nil {
		return rise{path: line.Path}
	}
	up, e, r := p.chord().Left(), edgeOf{p.piece, s.edge}, rise{}
	for range p.piece.Edges {
		path := e.drawn().Sewn
		if e.drawn().OnFold || s.kind == sideOpening {
			path = e.drawn().Line
		}
		if i == 0 { // the outline comes down to the panel's edge
			path = path.Reversed()
		}
		for k, q := range path {
			sewn := s.kind == sideSeam || s.kind == sideMirror
			if sewn && k > 0 && q.Distance(path[k-1]) > piece.SamePoint && q.Sub(path[k-1]).Unit().Dot(up) < turnsOut {
				r.arm = len(r.path) > 1
				return r
			}
			r.path = append(r.path, q)
		}
		next, turn := e.further(i)
		if math.Abs(turn) >= goesOn || m.setIn(e, next) {
			if (s.kind == sideSeam || s.kind == sideMirror) && m.underArm(next) {
				r.arm, r.armhole = true, next.drawn().Sewn
			}
			return r
		}
		e = next
	}
	return r
}

// setIn reports whether the seam of a side ends where the outline goes on beyond it, for
// another piece is set in there, as a gusset is, than it joins.
func (m measurer) setIn(below, above edgeOf) bool {
	joined := m.joinedTo(below)
	return len(joined) > 0 && m.joins(above) &&
		!slices.ContainsFunc(m.joinedTo(above), func(p *piece.Piece) bool { return slices.Contains(joined, p) })
}

// underArm reports whether an edge, above the seam of a side, is at an arm.
func (m measurer) underArm(e edgeOf) bool {
	if e.called("arm", "sleeve", "raglan", "scye") || m.loops(e) {
		return true
	}
	return slices.ContainsFunc(m.joinedTo(e), func(p *piece.Piece) bool { return calls(p.Words(), "sleeve", "gusset") })
}
