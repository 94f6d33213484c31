package piece

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. The grain line is drawn where the file puts it. A file
// that only names an edge or a line to follow, or says nothing, gets one
// parallel to that: to the fold, or else to the longest straight edge. It is
// put where it crosses no other line and stands clear of those beside it.

const (
	longestGrain = 200.0 // mm; a longer grain line is no easier to lay a ruler to
	grainShare   = 0.6   // of the cloth it lies on, from end to end
	grainClear   = 30.0  // mm to the nearest other line, beyond which more is no better
	grainPlaces  = 40    // how many places across the piece are tried
)

// checkGrain finds the direction of the grain.
func checkGrain(piece *Piece, ps source.PieceSpec, found *Findings) {
	piece.GrainDirection, piece.GrainAlong = piece.likelyGrain(piece.laidOut(nil).Outline.Runs())
	piece.GrainGiven = ps.GrainAlong.Given() || ps.GrainPoints.Given()
	switch {
	case ps.GrainAlong.Given():
		// A grain line has no side, so it does not matter where cloth lies.
		if b, ok := findStraight(piece, ps.GrainAlong, found); ok {
			piece.GrainDirection = b.Along
		}
	case ps.GrainPoints.Given():
		ends := ps.GrainPoints.V
		piece.GrainLine = plane.Path{ends[0], ends[1]}
		piece.GrainDirection = ends[1].Sub(ends[0]).Unit()
		if ends[0].Distance(ends[1]) <= SamePoint {
			found.Add(ps.GrainPoints.Place, "", "the two points of the grain line are the same")
			return
		}
		if piece.checkPlaces(ps.GrainPoints, found) && !piece.Keeps(piece.GrainLine) {
			found.Add(ps.GrainPoints.Place, "draw it where the piece has no gap", "the grain line leaves the piece between its points")
		}
	}
}

// likelyGrain returns the direction of the grain where the file says nothing, and the
// edge it follows: the fold, or else the longest edge that is straight; upward, and no
// edge, where none is.
func (p *Piece) likelyGrain(edges []EdgeRun) (grain plane.Point, along string) {
	grain, longest := plane.Point{X: 0, Y: 1}, 0.0
	for _, e := range edges {
		last := len(e.Path) - 1
		l := e.Path[0].Distance(e.Path[last])
		if p.Edges[e.Edge].OnFold {
			l = math.Inf(1)
		}
		if l > longest && e.Path.Straightness() <= Straightness {
			longest, grain, along = l, e.Path[last].Sub(e.Path[0]).Unit(), p.Edges[e.Edge].Key
		}
	}
	return grain, along
}

// flatGrain finds the likely grain of a piece again once it is flat: an edge that
// is straight when the piece is finished may not be so before.
func flatGrain(piece *Piece, ps source.PieceSpec) {
	if piece.DrawnFinished && !ps.GrainAlong.Given() && !ps.GrainPoints.Given() {
		piece.GrainDirection, piece.GrainAlong = piece.likelyGrain(piece.Flat.Outline.Runs())
	}
}

// PlaceGrain puts the grain line where there is room, beside the other marks.
func PlaceGrain(outline *plane.Tree, grain plane.Point, marks []mark.Mark) plane.Path {
	var trees []*plane.Tree
	for _, m := range marks {
		trees = append(trees, plane.NewTree(m.Path))
	}
	b := Frame{Along: grain, Out: grain.Left()}
	us, _ := b.Extent(outline.Path())
	var best plane.Path
	bestScore := math.Inf(-1)
	for k := range grainPlaces {
		u := us.From + (us.To-us.From)*(float64(k)+0.5)/grainPlaces
		for _, s := range b.Chords(outline, u) {
			long := math.Min(longestGrain, (s.To-s.From)*grainShare)
			middle := (s.From + s.To) / 2
			line := b.Lengthwise(u, Stretch{middle - long/2, middle + long/2})
			if score := grainScore(line, trees); score > bestScore {
				best, bestScore = line, score
			}
		}
	}
	return best
}

// grainScore says how good a place for the grain line is: its length, as far
// as nothing crosses it or runs close beside it.
func grainScore(line plane.Path, others []*plane.Tree) float64 {
	clear, crossed := grainClear, 0.0
	tree := plane.NewTree(line)
	for _, o := range others {
		if len(plane.Crossings(tree, o)) > 0 {
			crossed++
		}
		for k := 0; k <= 8; k++ {
			clear = o.Distance(line[0].Toward(line[1], float64(k)/8), clear)
		}
	}
	return line.Length() * clear / grainClear / (1 + 10*crossed)
}
