package piece

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: what is remarked of tucks and pleats that run along the edge of a
// hem, where the hem takes them in, or covers them, or their folds hang over the finished
// edge. hemremark.go has the arithmetic.

// hemFold is a fold that runs along the edge of a hem.
type hemFold struct {
	Fold
	near    float64 // from the cut edge to the first of its two lines, on the flat cloth
	from    float64 // from the fold of the hem to where the two meet, the hem flat; below 0 in the hem
	pressed bool    // the file says which way it lies
	outward bool    // it lies toward the cut edge
}

// far is how far from the cut edge its second line lies, on the flat cloth.
func (f hemFold) far() float64 { return f.near + 2*f.Width }

// foldsAlong remarks on tucks and pleats along the edge of a hem.
func (m *remarker) foldsAlong(e *Edge) {
	rows := m.hemRows(e)
	for n, r := range m.piece.FoldRows() {
		// In the hem; on its fold; under it; and over the finished edge without that.
		var in, on, under, over []hemFold
		for _, f := range rows[n] {
			switch {
			case f.from < 0 && (m.piece.DrawnFinished || f.far() <= e.Allowance+SamePoint):
				in = append(in, f)
			case f.from < 0:
				on = append(on, f)
			case f.from < e.Hem-SamePoint:
				under = append(under, f)
			case m.hangs(f) > 0:
				over = append(over, f)
			}
		}
		m.inHem(r, e, in)
		m.onHemFold(r, e, on)
		m.underHem(r, e, under)
		m.overHem(r, e, over)
	}
}

// hemRows returns the folds along the edge of a hem, row by row, those nearest the edge
// first.
func (m *remarker) hemRows(e *Edge) [][]hemFold {
	rows := make([][]hemFold, len(m.piece.TuckRows)+len(m.piece.PleatRows))
	type one struct {
		hemFold
		row int
	}
	var all []one
	edge := plane.NewTree(e.Path)
	way := e.Given[len(e.Given)-1].Sub(e.Given[0]).Unit()
	for n, r := range m.piece.FoldRows() {
		if math.Abs(r.Base.Along.Dot(way)) < runsAlong {
			continue
		}
		for _, f := range r.Folds {
			lies := r.Base.Out
			if f.Toward {
				lies = lies.Mul(-1)
			}
			near := m.awayFrom(edge, r, f)
			if !math.IsInf(near, 1) {
				all = append(all, one{hemFold{Fold: f, near: near, pressed: r.Pressed, outward: lies.Dot(way.Left()) < 0}, n})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b one) int { return cmp.Compare(a.near, b.near) })
	taken := 0.0 // by those nearer the edge
	for k := range all {
		f := &all[k].hemFold
		if m.piece.DrawnFinished {
			f.from = snapped(f.near - e.Allowance)
			f.near += taken
			taken += 2 * f.Width
		} else {
			f.from = snapped(f.near - e.Allowance - taken)
			if f.near > e.Allowance-SamePoint {
				taken += 2 * f.Width
			}
		}
		rows[all[k].row] = append(rows[all[k].row], *f)
	}
	return rows
}

// awayFrom returns how far from an edge the lines of a fold lie that it is stitched
// at, or laid to; as the piece is drawn. It is infinite where they run into the edge.
func (m *remarker) awayFrom(edge *plane.Tree, r FoldRow, f Fold) float64 {
	lines := []float64{f.Near, f.Far()}
	if m.piece.DrawnFinished {
		lines = []float64{f.Stitching}
	}
	least := math.Inf(1)
	for _, u := range lines {
		for _, s := range m.piece.stretches(r, f, u) {
			line := plane.NewTree(r.Base.Lengthwise(u, s))
			if len(plane.Crossings(line, edge)) > 0 || edge.Nearer(line.At(0), SamePoint) || edge.Nearer(line.At(line.Length()), SamePoint) {
				return math.Inf(1) // it runs into the edge
			}
			// Two paths that do not cross are nearest at a point of one of them.
			for _, q := range line.Path() {
				least = edge.Distance(q, least)
			}
			for _, q := range edge.Path() {
				least = line.Distance(q, least)
			}
		}
	}
	return least
}

// stretches returns where a line of a fold lies on the piece, as that is drawn.
func (p *Piece) stretches(r FoldRow, f Fold, u float64) []Stretch {
	chords := r.Base.Chords(p.Tree, u)
	if f.End.Given {
		chords, _ = f.End.UpTo(chords)
	}
	return chords
}

// hangs returns by how much the fold of a tuck or pleat hangs over the finished edge of
// its hem, in mm; 0 where it does not, or only by the thickness of the cloth.
func (m *remarker) hangs(f hemFold) float64 {
	short := f.from // of the finished edge
	if f.from < 0 {
		// It lies in the hem, and its second line is the one beside the fold of that.
		short = -f.from
		if !m.piece.DrawnFinished {
			short -= 2 * f.Width
		}
	}
	toward := f.outward == (f.from >= 0)
	if hangs := f.Width - short; hangs >= leastCover && (toward || !f.pressed) {
		return hangs
	}
	return 0
}

// hanging says by how much the fold of some hangs over the finished edge that hangs most;
// "" where none does.
func (m *remarker) hanging(r FoldRow, folds []hemFold) string {
	most := slices.MaxFunc(folds, func(a, b hemFold) int { return cmp.Compare(m.hangs(a), m.hangs(b)) })
	hangs := m.hangs(most)
	whose := "its fold"
	if len(folds) > 1 {
		whose = "the fold of " + r.name(most.Fold)
	}
	switch {
	case hangs == 0:
		return ""
	case most.pressed:
		return fmt.Sprintf("; %s hangs %s over the finished edge", whose, m.unit.OnRuler(hangs))
	}
	return fmt.Sprintf("; pressed toward the finished edge, %s hangs %s over it", whose, m.unit.OnRuler(hangs))
}

// some names folds of a row, with the verb that goes with them: "tucks 1 to 3 of 6 lie".
func (r FoldRow) some(folds []hemFold) string {
	first, last := folds[0].Number, folds[0].Number
	for _, f := range folds {
		first, last = min(first, f.Number), max(last, f.Number)
	}
	if first == last {
		return r.name(folds[0].Fold) + " lies"
	}
	return fmt.Sprintf("%ss %d to %d of %d lie", r.Makes, first+1, last+1, r.Count)
}

// first names the line that is measured of the first of some folds: "its stitching is".
func (r FoldRow) first(folds []hemFold) string {
	whose := "its "
	if len(folds) > 1 {
		whose = "the nearest "
	}
	return whose + r.stitchingName() + " is"
}

// fromCutEdge says where the two lines of the first of some folds lie on the flat cloth.
func (m *remarker) fromCutEdge(r FoldRow, folds []hemFold) string {
	lines := [...]string{"stitching is", "lines are"}[r.Makes]
	whose := "its " + lines
	if len(folds) > 1 {
		whose = "of the nearest, the " + lines
	}
	return fmt.Sprintf("%s %s and %s from the cut edge", whose, m.unit.OnRuler(folds[0].near), m.unit.OnRuler(folds[0].far()))
}

// fromFold says how far from the fold of a hem the first of some folds is stitched.
func (m *remarker) fromFold(r FoldRow, folds []hemFold) string {
	if folds[0].from < SamePoint {
		return r.first(folds) + " on the fold of the hem"
	}
	return fmt.Sprintf("%s %s from the fold of the hem", r.first(folds), m.unit.OnRuler(folds[0].from))
}

// inHem says that folds of a row lie in a hem.
func (m *remarker) inHem(r FoldRow, e *Edge, folds []hemFold) {
	if len(folds) > 0 {
		m.say(r.Place, "%s in the hem of %q: %s, and %s%s", r.some(folds), e.Key, m.fromCutEdge(r, folds), m.takes(e), m.hanging(r, folds))
	}
}

// onHemFold says that a fold of a row takes up the fold of a hem.
func (m *remarker) onHemFold(r FoldRow, e *Edge, folds []hemFold) {
	if len(folds) > 0 {
		m.say(r.Place, "%s across the fold of the hem of %q: %s, and %s", r.some(folds), e.Key, m.fromCutEdge(r, folds), m.takes(e))
	}
}

// underHem says that folds of a row lie where a hem is folded back.
func (m *remarker) underHem(r FoldRow, e *Edge, folds []hemFold) {
	if len(folds) > 0 {
		m.say(r.Place, "%s where the hem of %q is folded back: finished, %s, and that is %s deep; sewn before the hem, the stitching is covered by it inside; sewn after, it goes through both layers%s",
			r.some(folds), e.Key, m.fromFold(r, folds), m.unit.OnRuler(e.Hem), m.hanging(r, folds))
	}
}

// overHem says that folds of a row hang over a finished edge.
func (m *remarker) overHem(r FoldRow, e *Edge, folds []hemFold) {
	if len(folds) > 0 {
		m.say(r.Place, "%s close to the finished edge of %q: finished, %s, and the %s is %s wide%s",
			r.some(folds), e.Key, m.fromFold(r, folds), r.Makes, m.unit.OnRuler(folds[0].Width), m.hanging(r, folds))
	}
}
