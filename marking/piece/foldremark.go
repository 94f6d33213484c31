package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: what is remarked of tucks and pleats by themselves: how fine they
// are, where they begin and where they end.

const (
	// narrowestTuck is the width below which tucks are hardly ever sewn, in
	// mm: 1/16 in (Woolman, A Sewing Course for Teachers, about 1893).
	narrowestTuck = 25.4 / 16
	// finestLines is how close two lines may lie, in mm, and still be drawn
	// as two: the point of a marking pen is half to one millimetre wide
	// (common practice).
	finestLines = 1.5
	// clearOfPleat is how far the end line of tucks stays from the lines of
	// a pleat in an edge, in mm: half an inch (common practice).
	clearOfPleat = 25.4 / 2
	// leastCover is how much of a tuck may lie on the next stitching, in mm,
	// before it is worth a word: the thickness of cloth and thread, by which
	// a sample differs from the drawing.
	leastCover = 25.4 / 64
)

// fine warns of tucks that are too narrow, and of lines too close to be drawn.
func (m *remarker) fine(t *TuckRow) {
	if !t.Twin && t.Width < narrowestTuck-length.Rounding {
		m.say(t.Place, "tucks of %s are narrower than %s, and hard to keep even; a twin needle or a corded foot makes them easier",
			m.unit.AsWritten(t.Width), m.unit.AsWritten(narrowestTuck))
	}
	closest, which, rather := t.Width, "fold line and stitching", "mark the fold lines only"
	switch between := t.nearest() - 2*t.Width; {
	case t.Twin && t.Count < 2:
		return
	case t.Twin:
		closest, which, rather = t.nearest(), "fold lines", "mark every other one"
	case t.Count > 1 && between < closest && between > SamePoint:
		closest, which = between, "stitching lines of neighbouring tucks"
	}
	if closest < finestLines-length.Rounding {
		m.say(t.Place, "%s lie %s apart, finer than a marking pen draws; %s", which, m.unit.AsWritten(closest), rather)
	}
}

// covers reports whether each tuck covers the next stitching by so much that it is worth a word.
func (t TuckRow) covers() bool { return t.Gap <= -leastCover+length.Rounding }

// gap warns of tucks that cover the next stitching.
func (m *remarker) gap(t *TuckRow) {
	if t.Together() > 1 && t.covers() {
		covers, apart := -t.Gap, t.Takes+t.Width
		say := m.unit.AsWritten
		if t.Sampled || !length.IsPlain(covers) || !length.IsPlain(apart) {
			say = m.unit.OnRuler // what a sample took, or widths in two units make, is no number that somebody chose
		}
		m.say(t.Place, "the gap is below nought: each tuck covers the next stitching by %s; with no gap in place of the spacing they just touch, and their fold lines lie %s apart",
			say(covers), say(apart))
	}
}

// top is the number of the edge at whose stitch line a fold begins when the piece is
// sewn, -1 where it begins at none, as between two lines. What lies beyond is seam allowance.
func (m *remarker) top(r FoldRow, f Fold) int {
	b := r.Base
	u := m.piece.stitchingDrawn(f)
	chords := b.Chords(m.piece.Tree, u)
	low := b.Along.Y < 0 || b.Along.Y == 0 && b.Along.X > 0 // the top lies at less v
	if f.End.Free {
		return -1
	}
	if f.End.Given {
		chords, _ = f.End.UpTo(chords)
		low = f.End.down > 0
	}
	if len(chords) == 0 {
		return -1
	}
	from, to := chords[len(chords)-1].From, chords[len(chords)-1].To
	if low {
		from, to = chords[0].To, chords[0].From
	}
	if !f.End.Given {
		from = (from + to) / 2
	}
	up := plane.Path{b.At(u, from), b.At(u, to)}
	rising := up.StartDirection()
	nearest, edge := math.Inf(1), -1
	for i, e := range m.piece.Edges {
		for _, c := range plane.Crossings(plane.NewTree(up), m.sewn[i]) {
			// The garment lies to the left of every stitch line: from below a hem
			// the fold comes into it first.
			_, along := e.Sewn.At(c.B)
			if c.A < nearest && along.Cross(rising) < 0 {
				nearest, edge = c.A, i
			}
		}
	}
	return edge
}

// tops warns of folds that begin at another edge than the rest: under the armhole,
// or in the shoulder seam.
func (m *remarker) tops(r FoldRow) {
	own, hung := -1, m.piece.hung(r.ends)
	if hung != nil {
		own = hung[0]
	}
	if own < 0 && math.Abs(r.Base.Along.X) > math.Abs(r.Base.Along.Y) {
		return // they run across the piece, from edge to edge, and have no top
	}
	strays := map[int][]int{} // tucks by the edge at which they begin
	var order []int
	for _, f := range r.Folds {
		edge := m.top(r, f)
		if edge < 0 {
			continue
		}
		if own < 0 {
			own = edge // rows from edge to edge begin where their first does
		}
		if edge == own || slices.Contains(hung, edge) {
			continue
		}
		if n := len(strays[edge]); n == 0 {
			order = append(order, edge)
		} else if strays[edge][n-1] == f.Number {
			continue
		}
		strays[edge] = append(strays[edge], f.Number)
	}
	for _, edge := range order {
		numbers := strays[edge]
		which := fmt.Sprintf("%s %d", r.Makes, numbers[0]+1)
		verb := "runs"
		if n := len(numbers); n > 1 {
			which = fmt.Sprintf("%ss %d to %d", r.Makes, numbers[0]+1, numbers[n-1]+1)
			verb = "run"
		}
		first := r.Folds[slices.IndexFunc(r.Folds, func(f Fold) bool { return f.Number == numbers[0] })]
		instead, hangs := "instead of", m.piece.namesHung(r.ends)
		if hung == nil {
			instead, hangs = "where the first runs into", wording.Quoted(m.piece.Edges[own].Key)
		}
		m.say(r.Place, "%s of %d %s into %q "+instead+" %s: finished, %s lies %s from %q",
			which, r.Count, verb, m.piece.Edges[edge].Key, hangs, nearestOf(r, numbers), m.unit.OnRuler(first.Stitching), r.Base.Name)
		last := &m.list[len(m.list)-1]
		for _, n := range numbers {
			last.Folds = append(last.Folds, n+1)
		}
	}
}

// nearestOf names what is measured of the nearest of some folds.
func nearestOf(r FoldRow, numbers []int) string {
	name := "fold"
	if r.Makes == TuckFolds {
		name = "stitching"
	}
	if len(numbers) > 1 {
		return fmt.Sprintf("the %s of %s %d", name, r.Makes, numbers[0]+1)
	}
	return "its " + name
}

// ends warns of tucks that end above the stitch line they hang from, or close to a
// pleat.
func (m *remarker) ends(t *TuckRow) {
	if hung := m.piece.hung(t.ends); hung != nil {
		m.endsAbove(t.FoldRow, hung)
	}
	m.endsNearPleats(t.FoldRow)
}

// endsAbove warns of folds that end above the stitch line of the edges they hang from.
func (m *remarker) endsAbove(r FoldRow, hung []int) {
	line := m.piece.stitchLineOf(hung)
	b := r.Base
	bounds := m.piece.Tree.Bounds()
	reach := bounds.Width() + bounds.Height() // past the piece, from anywhere on it
	for _, f := range r.Folds {
		u, v := m.piece.stitchingDrawn(f), f.End.V
		beside := plane.NewTree(plane.Path{b.At(u, v), b.At(u, v+f.End.down*reach)})
		if c := plane.Crossings(beside, plane.NewTree(line)); len(c) > 0 && c[0].A > m.shown() {
			m.say(r.ends.Place(), "%s ends %s above the stitch line of %s, within the seam allowance: make it longer",
				r.name(f), m.unit.OnRuler(c[0].A), m.piece.namesHung(r.ends))
			break
		}
	}
}

// endsNearPleats warns of tucks that end close to a pleat in an edge.
func (m *remarker) endsNearPleats(r FoldRow) {
	place := r.ends.Length.Place
	if r.ends.To.Given() {
		place = r.ends.To.Place
	}
	for i, p := range m.piece.EdgePleats {
		patch := m.piece.Flat.patches[i]
		pleat := plane.NewTree(patch)
		// Two paths that do not cross are nearest at a point of one of them.
		nearest := math.Inf(1)
		for _, line := range r.FlatEnds {
			for _, q := range line {
				nearest = pleat.Distance(q, nearest)
			}
			end := plane.NewTree(line)
			for _, q := range patch {
				nearest = end.Distance(q, nearest)
			}
		}
		if nearest < clearOfPleat-m.shown() {
			m.say(place, "the tucks end %s from the pleat %q; %s or more keeps the two apart",
				m.unit.OnRuler(nearest), p.Key, m.unit.OnRuler(clearOfPleat))
		}
	}
}

// creases warns of pleats so close that their folds all lie on one line.
func (m *remarker) creases(p *PleatRow) {
	if covered := 2 * p.Depth; p.Kind == source.KnifePleat && p.Count > 1 && p.space < covered+leastCover {
		m.say(p.Place, "the pleats lie on each other: laid, their folds fall on one line; with no gap each shows %s of cloth", m.unit.AsWritten(p.Depth))
	}
}
