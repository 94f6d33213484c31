package marking

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file: what a teacher would point at before the cloth is touched.
// Nothing here is a mistake, and the sheets are made all the same. Every warning
// has its numbers.

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
	// sameWay bounds how far the cosine of the angle between two directions may
	// lie below 1 for rows to lie on one side of one line.
	sameWay = 0.001
)

// warnings collects what is said of one piece.
type warnings struct {
	piece *Piece
	sewn  []*plane.Tree // of each edge, the part of its line that is sewn
	unit  Unit
	list  []Remark
}

func (w *warnings) say(at Place, text string, args ...any) {
	w.list = append(w.list, Remark{Place: at, Text: fmt.Sprintf(text, args...)})
}

// remarks returns what is to be said of a piece that could be made.
func (p *Piece) remarks(unit Unit) []Remark {
	w := &warnings{piece: p, unit: unit}
	for _, e := range p.Edges {
		w.sewn = append(w.sewn, plane.NewTree(e.Sewn))
	}
	for i := range p.Tucks {
		t := &p.Tucks[i]
		w.fine(t)
		w.gap(t)
		w.tops(t.row)
		w.ends(t)
		w.hem(t)
		w.field(t)
	}
	for i := range p.Pleatings {
		w.tops(p.Pleatings[i].row)
		w.creases(&p.Pleatings[i])
	}
	if p.Block != nil && p.Block.Measure != nil {
		w.say(p.Block.Measure.place, "%s", strings.Join(p.Block.measured(p, unit), "; "))
	}
	return w.list
}

// fine warns of tucks that are too narrow, and of lines too close to be drawn.
func (w *warnings) fine(t *Tuck) {
	if !t.Twin && t.Width < narrowestTuck-sameLength {
		w.say(t.row.place, "tucks of %s are narrower than %s, and hard to keep even; a twin needle or a corded foot makes them easier",
			w.unit.Names(t.Width), w.unit.Names(narrowestTuck))
	}
	closest, which, rather := t.Width, "fold line and stitching", "mark the fold lines only"
	switch between := t.Space - 2*t.Width; {
	case t.Twin && t.Count < 2:
		return
	case t.Twin:
		closest, which, rather = t.Space, "fold lines", "mark every other one"
	case t.Count > 1 && between < closest && between > samePoint:
		closest, which = between, "stitching lines of neighbouring tucks"
	}
	if closest < finestLines-sameLength {
		w.say(t.row.place, "%s lie %s apart, finer than a marking pen draws; %s", which, w.unit.Names(closest), rather)
	}
}

// gap warns of tucks that cover the next stitching.
func (w *warnings) gap(t *Tuck) {
	if t.Count > 1 && t.Gap <= -leastCover+sameLength {
		length := w.unit.Names
		if t.Sampled {
			length = w.unit.Print // what a sample took is no number that somebody chose
		}
		w.say(t.row.place, "the gap is below nought: each tuck covers the next stitching by %s; with gap = 0 in place of spacing they just touch, and their fold lines lie %s apart",
			length(-t.Gap), length(t.Takes+t.Width))
	}
}

// top is the number of the edge at whose stitch line a fold begins when the piece is
// sewn, -1 where it begins at none. What lies beyond is seam allowance.
func (w *warnings) top(r row, f fold) int {
	b := r.base
	u := w.drawn(f)
	chords := b.chords(w.piece.tree, u)
	low := b.along.Y < 0 || b.along.Y == 0 && b.along.X > 0 // the top lies at less v
	if f.end.given {
		chords, _ = f.end.upTo(chords)
		low = f.end.down > 0
	}
	if len(chords) == 0 {
		return -1
	}
	from, to := chords[len(chords)-1].from, chords[len(chords)-1].to
	if low {
		from, to = chords[0].to, chords[0].from
	}
	if !f.end.given {
		from = (from + to) / 2
	}
	up := plane.Path{b.at(u, from), b.at(u, to)}
	rising := up.StartDirection()
	nearest, edge := math.Inf(1), -1
	for i, e := range w.piece.Edges {
		for _, c := range plane.Crossings(plane.NewTree(up), w.sewn[i]) {
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
func (w *warnings) tops(r row) {
	own := w.piece.edge(r.ends.Below.V)
	if own < 0 && math.Abs(r.base.along.X) > math.Abs(r.base.along.Y) {
		return // they run across the piece, from edge to edge, and have no top
	}
	strays := map[int][]int{} // tucks by the edge at which they begin
	var order []int
	for _, f := range r.folds {
		edge := w.top(r, f)
		if edge < 0 {
			continue
		}
		if own < 0 {
			own = edge // rows from edge to edge begin where their first does
		}
		if edge == own {
			continue
		}
		if n := len(strays[edge]); n == 0 {
			order = append(order, edge)
		} else if strays[edge][n-1] == f.number {
			continue
		}
		strays[edge] = append(strays[edge], f.number)
	}
	for _, edge := range order {
		numbers := strays[edge]
		which := fmt.Sprintf("%s %d", r.kind, numbers[0]+1)
		verb := "runs"
		if n := len(numbers); n > 1 {
			which = fmt.Sprintf("%ss %d to %d", r.kind, numbers[0]+1, numbers[n-1]+1)
			verb = "run"
		}
		first := r.folds[slices.IndexFunc(r.folds, func(f fold) bool { return f.number == numbers[0] })]
		instead := "instead of"
		if !r.ends.Below.Given() {
			instead = "where the first runs into"
		}
		w.say(r.place, "%s of %d %s into %q "+instead+" %q: finished, %s lies %s from %q",
			which, r.count, verb, w.piece.Edges[edge].Key, w.piece.Edges[own].Key, nearestOf(r, numbers), w.unit.Print(first.stitching), r.base.name)
	}
}

// nearestOf names what is measured of the nearest of some folds.
func nearestOf(r row, numbers []int) string {
	name := "fold"
	if r.kind == tuckFolds {
		name = "stitching"
	}
	if len(numbers) > 1 {
		return "the first " + name
	}
	return "its " + name
}

// drawn returns how far from the base of its row a fold lies as the piece is drawn.
func (w *warnings) drawn(f fold) float64 {
	if w.piece.Finished {
		return f.stitching
	}
	return f.at
}

// ends warns of tucks that end above the stitch line they hang from, or close to a
// pleat.
func (w *warnings) ends(t *Tuck) {
	r := t.row
	own := w.piece.edge(r.ends.Below.V)
	if own < 0 {
		return
	}
	line := w.piece.Edges[own].Line
	b := r.base
	bounds := w.piece.tree.Bounds()
	reach := bounds.Width() + bounds.Height() // past the piece, from anywhere on it
	for _, f := range r.folds {
		u, v := w.drawn(f), f.end.v
		beside := plane.NewTree(plane.Path{b.at(u, v), b.at(u, v+f.end.down*reach)})
		if c := plane.Crossings(beside, plane.NewTree(line)); len(c) > 0 && c[0].A > samePoint {
			w.say(r.ends.place(), "%s ends %s above the stitch line of %q, within the seam allowance: make it longer",
				r.name(f), w.unit.Print(c[0].A), r.ends.Below.V)
			break
		}
	}
	if t.End == nil {
		return
	}
	end := plane.NewTree(t.End)
	for i, p := range w.piece.Pleats {
		patch := w.piece.flat.patches[i]
		pleat := plane.NewTree(patch)
		// Two paths that do not cross are nearest at a point of one of them.
		nearest := math.Inf(1)
		for _, q := range t.End {
			nearest = pleat.Distance(q, nearest)
		}
		for _, q := range patch {
			nearest = end.Distance(q, nearest)
		}
		if nearest < clearOfPleat-samePoint {
			w.say(r.ends.Length.Place, "the tucks end %s from the pleat %q; %s or more keeps the two apart",
				w.unit.Print(nearest), p.Key, w.unit.Print(clearOfPleat))
		}
	}
}

// hem warns of tucks that lie in a hem, or end in one.
func (w *warnings) hem(t *Tuck) {
	r := t.row
	if i := r.base.edge; i >= 0 && w.piece.Edges[i].Hem > 0 {
		if e, near := w.piece.Edges[i], t.First-t.Width; near < e.Allowance-samePoint {
			w.say(r.place, "the first tuck lies in the hem: its stitching comes within %s of the cut edge, and hem and turn take %s",
				w.unit.Print(near), w.unit.Print(e.Allowance))
		}
	}
	for _, e := range w.piece.Edges {
		if e.Hem == 0 || e.Key == r.ends.Below.V {
			continue
		}
		edge := plane.NewTree(e.Path)
		for _, f := range r.folds {
			if !f.end.given {
				continue
			}
			if away := edge.Distance(r.base.at(w.drawn(f), f.end.v), e.Allowance); away < e.Allowance-samePoint {
				w.say(r.ends.place(), "%s ends in the hem, %s from the cut edge of %q", r.name(f), w.unit.Print(away), e.Key)
				break
			}
		}
	}
}

// creases warns of pleats so close that their folds all lie on one line.
func (w *warnings) creases(p *Pleating) {
	if covered := 2 * p.Depth; p.Kind == KnifePleat && p.Count > 1 && p.Space < covered+leastCover {
		w.say(p.row.place, "the pleats lie on each other: laid, their folds fall on one line; with gap = 0 each shows %s of cloth", w.unit.Names(p.Depth))
	}
}

// place is where the file says how the folds end.
func (e EndSpec) place() Place {
	if e.Step.Given() {
		return e.Step.Place
	}
	return e.Length.Place
}

// field warns of a field of tucks that ends before the neck does, from which they
// hang, though one more tuck would have room. A straight edge is no neck: there a few
// tucks in the middle are what is meant.
func (w *warnings) field(t *Tuck) {
	own := w.piece.edge(t.row.ends.Below.V)
	if own < 0 || t.Count < 2 || w.piece.Edges[own].Path.Straightness() <= straightness {
		return
	}
	b, edge := t.row.base, 0.0
	for _, q := range w.piece.Edges[own].Path {
		edge = math.Max(edge, b.u(q))
	}
	taken, ok := w.takenUp(t)
	if !ok {
		return
	}
	reach := t.row.folds[len(t.row.folds)-1].reach().to
	if !w.piece.Finished {
		edge -= taken // the tucks lie below the edge, and take that much of it
	}
	if pitch := t.Space - t.Takes; edge-reach > math.Max(pitch, t.Width)+samePoint {
		w.say(t.row.place, "the tucked width is narrower than %q: finished, the tucks reach %s from %q, and %q reaches %s; the rest of it is plain",
			t.row.ends.Below.V, w.unit.Print(reach), b.name, t.row.ends.Below.V, w.unit.Print(edge))
	}
}

// takenUp returns how much cloth is taken up from the base of a set of tucks to its
// last one; ok is false where another row lies beyond that, and it is not this set
// that ends the field.
func (w *warnings) takenUp(t *Tuck) (taken float64, ok bool) {
	last := t.row.folds[len(t.row.folds)-1]
	for _, r := range w.piece.rows() {
		if r.base.out.Dot(t.row.base.out) < 1-sameWay || math.Abs(t.row.base.u(r.base.origin)) > samePoint {
			continue // beside another line, or on its other side
		}
		if r.folds[len(r.folds)-1].near > last.near+samePoint {
			return 0, false
		}
		taken += r.takeUp()
	}
	return taken, true
}
