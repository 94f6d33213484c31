package marking

import (
	"math"

	"tuckmark/marking/plane"
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
func checkGrain(piece *Piece, ps PieceSpec, found *findings) {
	piece.grain = plane.Point{X: 0, Y: 1}
	longest := 0.0
	for _, e := range piece.Edges {
		l := e.Path[0].Distance(e.Path[len(e.Path)-1])
		if e.OnFold {
			l = math.Inf(1)
		}
		if l > longest && e.Path.Straightness() <= straightness {
			longest, piece.grain = l, e.Path[len(e.Path)-1].Sub(e.Path[0]).Unit()
		}
	}
	switch {
	case ps.GrainAlong.Given():
		// A grain line has no side, so it does not matter where cloth lies.
		if b, ok := findStraight(piece, ps.GrainAlong, found); ok {
			piece.grain = b.along
		}
	case ps.GrainPoints.Given():
		ends := ps.GrainPoints.List
		piece.Grain = plane.Path{ends[0], ends[1]}
		piece.grain = ends[1].Sub(ends[0]).Unit()
		if ends[0].Distance(ends[1]) <= samePoint {
			found.add(ps.GrainPoints.Place, "", "the two points of the grain line are the same")
			return
		}
		if piece.checkPlaces(ps.GrainPoints, found) && !piece.keeps(piece.Grain) {
			found.add(ps.GrainPoints.Place, "draw it where the piece has no gap", "the grain line leaves the piece between its points")
		}
	}
}

// placeGrain puts the grain line where there is room, beside the other marks.
func placeGrain(piece *Piece, marks []Mark) plane.Path {
	if piece.Grain != nil {
		return piece.Grain
	}
	var trees []*plane.Tree
	for _, m := range marks {
		trees = append(trees, plane.NewTree(m.Path))
	}
	b := base{along: piece.grain, out: piece.grain.Left()}
	us, _ := b.extent(piece.Outline)
	var best plane.Path
	bestScore := math.Inf(-1)
	for k := range grainPlaces {
		u := us.from + (us.to-us.from)*(float64(k)+0.5)/grainPlaces
		for _, s := range b.chords(piece, u) {
			long := math.Min(longestGrain, (s.to-s.from)*grainShare)
			middle := (s.from + s.to) / 2
			line := plane.Path{b.at(u, middle-long/2), b.at(u, middle+long/2)}
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
