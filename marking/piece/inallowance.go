package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. The last tuck of a row may lie so near the edge beside which it runs
// that the seam there takes it in: where all of its stitching lies past the stitch line of that
// edge; or it is pressed toward that edge, and all of its fold lies past it, so that the seam is
// sewn through the flap. A tuck stitched on that very line comes out of the seam. A tuck that runs into a seam lies in it with its end alone,
// and one beside a hem is told there. Seams lie in the folds of pleats on purpose.

// besideWithin bounds how slantingly an edge runs past a fold, as the cosine of the angle
// between the two, so that the fold lies beside the edge, across the way from it, and does not
// run into it: half a right angle.
const besideWithin = math.Sqrt2 / 2

// leastSeamed is how far past a stitch line a tuck lies, in mm, before it is worth a word: half
// of the least step of a ruler, 1/16 in.
const leastSeamed = 25.4 / 32

// seamed is a tuck of which a seam takes something in.
type seamed struct {
	edge     int
	stitched bool    // its stitching lies in there, else only its fold
	past     float64 // how far past the stitch line, in mm
}

// seamedIn returns the edge whose seam takes in a tuck of a row; ok is false where none does.
func (p *Piece) seamedIn(r FoldRow, f Fold) (in seamed, ok bool) {
	lines := []float64{f.Near, f.Far()}
	if p.DrawnFinished {
		lines = []float64{f.Stitching, f.Stitching}
	}
	flap, from := lines[1]+f.Width, lines[1]
	if f.Toward {
		flap, from = lines[0]-f.Width, lines[0]
	}
	for _, u := range lines {
		if edge, past, ok := p.pastSeam(r, f, u, u); ok {
			return seamed{edge, true, past}, true
		}
	}
	if !r.Pressed {
		return in, false
	}
	if edge, past, ok := p.pastSeam(r, f, from, flap); ok {
		return seamed{edge, false, past}, true
	}
	return in, false
}

// pastSeam returns the edge in whose allowance the whole line at u lies, and how far past the
// stitch line; ok is false where it lies in none. The line is as long as the cloth at over.
func (p *Piece) pastSeam(r FoldRow, f Fold, over, u float64) (edge int, past float64, ok bool) {
	var line plane.Path
	cloth := p.stretches(r, f, over)
	for _, beside := range []float64{over - besideRim, over + besideRim} {
		if len(cloth) == 0 { // along the very rim of the piece
			cloth = p.stretches(r, f, beside)
		}
	}
	for _, s := range cloth {
		one := r.Base.Lengthwise(u, s)
		if len(InsideStretches(p.seams, plane.NewTree(one))) > 0 {
			return 0, 0, false
		}
		if line == nil || one.Length() > line.Length() {
			line = one
		}
	}
	if line == nil {
		return 0, 0, false
	}
	middle, along := line.At(line.Length() / 2)
	past = math.Inf(1)
	var way plane.Point
	for i := range p.Edges {
		if _, far, away := p.Edges[i].Sewn.Nearest(middle); away < past {
			edge, past = i, away
			_, way = p.Edges[i].Sewn.At(far)
		}
	}
	e := p.Edges[edge]
	return edge, past, past > leastSeamed && e.Allowance > 0 && e.Hem == 0 && math.Abs(way.Dot(along)) > besideWithin
}

// clearOfSeams returns how many of the first k folds of a row no seam takes in behind the last
// of them.
func (p *Piece) clearOfSeams(r FoldRow, k int) int {
	if r.Makes != TuckFolds {
		return k
	}
	for n := k; n > 0; n-- {
		if _, in := p.seamedIn(r, r.Folds[n-1]); !in {
			return n
		}
	}
	return k
}

// inSeams warns of tucks that the seam of an edge takes in.
func (m *remarker) inSeams(r FoldRow) {
	var kinds []seamed // of each edge one for stitching and one for folds, as the first has it
	folds := map[int][]Fold{}
	for _, f := range r.Folds {
		in, ok := m.piece.seamedIn(r, f)
		if !ok {
			continue
		}
		kind := slices.IndexFunc(kinds, func(k seamed) bool { return k.edge == in.edge && k.stitched == in.stitched })
		if kind < 0 {
			kind, kinds = len(kinds), append(kinds, in)
		}
		folds[kind] = append(folds[kind], f)
	}
	for i, kind := range kinds {
		m.inSeam(r, kind, folds[i])
	}
}

// inSeam warns of some tucks of a row that one seam takes in.
func (m *remarker) inSeam(r FoldRow, kind seamed, folds []Fold) {
	var numbers []int
	for _, f := range folds {
		numbers = append(numbers, f.Number)
	}
	which, takes := r.name(folds[0])+" is", "it"
	if n := len(folds); n > 1 {
		which, takes = fmt.Sprintf("%ss %d to %d of %d are", r.Makes, numbers[0]+1, numbers[n-1]+1, r.Count), "them"
	}
	lies := m.unit.OnRuler(kind.past) + " past the stitch line of that edge"
	stitching := fmt.Sprintf("finished, %s lies %s from %q", nearestOf(r, numbers), m.unit.OnRuler(folds[0].Stitching), r.Base.Name)
	if edge := m.piece.Edges[kind.edge].Key; kind.stitched {
		m.say(r.Place, "%s stitched in the allowance of %q: %s, %s, and the seam takes %s in", which, edge, stitching, lies, takes)
	} else {
		m.say(r.Place, "%s caught in the seam of %q: %s, and its fold %s", which, edge, stitching, lies)
	}
	last := &m.list[len(m.list)-1]
	for _, n := range numbers {
		last.Folds = append(last.Folds, n+1)
	}
}
