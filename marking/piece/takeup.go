package piece

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
)

// Rules of this file. A fold, of a tuck or of a pleat, takes up a patch of the
// cloth. Patches may touch; they never overlap, for cloth folds only once. Folds
// that run across each other are another matter: one is stitched after the
// other.

// across bounds the sine of the angle between folds that run beside each other
// (45 degrees); steeper ones run across.
const across = 0.71

// mostTakeUps is the most folds of one piece: each is held against each other.
const mostTakeUps = 2000

// takeUp is the patch of cloth that one fold takes.
type takeUp struct {
	corners [4]plane.Point // of a convex patch, in order
	bounds  plane.Box
	along   plane.Point // the direction of the fold, of length 1
	group   string      // folds of one group have been held against each other
	name    string      // as a message about it begins
	of      string      // as a message about another one names it
	place   fault.Place
}

func newTakeUp(a, b, c, d plane.Point) takeUp {
	t := takeUp{corners: [4]plane.Point{a, b, c, d}, along: b.Sub(a).Unit()}
	t.bounds = plane.Path(t.corners[:]).Bounds()
	return t
}

// takeUps lists the patches of all folds of a piece, but not of the rows of one that
// is drawn finished: they have been looked at when it was unfolded.
func (p *Piece) takeUps() []takeUp {
	var all []takeUp
	if !p.DrawnFinished {
		for _, r := range p.FoldRows() {
			for _, f := range r.Folds {
				all = append(all, foldTakeUps(r, f)...)
			}
		}
	}
	for _, pleat := range p.EdgePleats {
		u := newTakeUp(pleat.fold[0], pleat.fold[1], pleat.placement[1], pleat.placement[0])
		u.group, u.place = "pleat "+pleat.Key, pleat.Place
		u.name, u.of = "the pleat", fmt.Sprintf("the pleat %q", pleat.Key)
		all = append(all, u)
	}
	return all
}

// foldTakeUps lists the patches of a fold of a row: one along each part of its crease.
func foldTakeUps(r FoldRow, f Fold) []takeUp {
	var all []takeUp
	for _, line := range f.crease().Flat {
		from, to := r.Base.V(line[0]), r.Base.V(line[len(line)-1])
		u := newTakeUp(r.Base.At(f.Near, from), r.Base.At(f.Near, to), r.Base.At(f.Far(), to), r.Base.At(f.Far(), from))
		u.group, u.place = r.Makes.String()+" "+r.Key, r.Place
		u.name, u.of = fmt.Sprintf("%s %d", r.Makes, f.Number+1), fmt.Sprintf("%s %d of %q", r.Makes, f.Number+1, r.Key)
		all = append(all, u)
	}
	return all
}

// checkTakeUps looks for cloth that two folds take up, and tells it once for
// two sets.
func checkTakeUps(piece *Piece, found *Findings) {
	all := piece.takeUps()
	if len(all) > mostTakeUps {
		found.Add(all[len(all)-1].place, "make it two pieces", "the piece has %d tucks and pleats; at most %d are worked out", len(all), mostTakeUps)
		return
	}
	told := map[[2]string]bool{}
	for i, later := range all {
		for _, earlier := range all[:i] {
			pair := [2]string{earlier.group, later.group}
			if earlier.group == later.group || told[pair] || !overlap(earlier, later) {
				continue
			}
			told[pair] = true
			found.Add(later.place, "move one of the two, or make it smaller",
				"%s takes up cloth that %s takes up already", later.name, earlier.of)
		}
	}
}

// overlap reports whether two patches lie on each other for more than rounding.
// Two convex shapes are apart when a line along one of their sides has them on
// different sides (separating axes, as commonly taught).
func overlap(a, b takeUp) bool {
	if !a.bounds.Meets(b.bounds) || math.Abs(a.along.Cross(b.along)) > across {
		return false
	}
	for _, shape := range [2]takeUp{a, b} {
		for k := range shape.corners {
			normal := shape.corners[(k+1)%4].Sub(shape.corners[k]).Left().Unit()
			aFrom, aTo := shadow(a, normal)
			bFrom, bTo := shadow(b, normal)
			if min(aTo, bTo)-max(aFrom, bFrom) < LeastLine {
				return false
			}
		}
	}
	return true
}

// shadow returns the stretch of a direction over which a patch lies.
func shadow(t takeUp, direction plane.Point) (from, to float64) {
	from, to = math.Inf(1), math.Inf(-1)
	for _, c := range t.corners {
		v := c.Dot(direction)
		from, to = min(from, v), max(to, v)
	}
	return from, to
}
