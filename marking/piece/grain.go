package piece

import (
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. The grain line is drawn where the file puts it. Where the file
// only names an edge or a line to follow, or says nothing, it is put where it crosses no
// other line and stands clear of those beside it: never in an allowance, where it would be
// taken for a seam, nor on a stitch line. In a tiny piece it is short; where there is no room
// for a short one there is none.

const (
	longestGrain = 200.0 // mm; a longer grain line is no easier to lay a ruler to
	grainShare   = 0.6   // of the cloth it lies on, from end to end
	grainClear   = 30.0  // mm to the nearest other line, beyond which more is no better
	grainPlaces  = 40    // how many places across the piece are tried
	leastGrain   = 10.0  // mm; no ruler is laid to a shorter one
	grainAway    = 1.5   // mm, at least, to a stitch line and to an allowance
)

// GrainKey is what the grain line is known by in its piece.
const GrainKey = "grain"

// Grain is which way the threads of the cloth run on a piece.
type Grain struct {
	Direction plane.Point // of length 1
	Given     bool        // the file says it
	Drawn     bool        // the file draws a line of it, which is among the marks
	Along     string      // the edge or the line that the file names; "" for none
	// Guess says how it was taken where neither the file says it nor a fold: "along centre
	// back"; "" otherwise.
	Guess string
}

// checkGrain finds the grain of a piece as it is drawn.
func checkGrain(piece *Piece, ps source.PieceSpec, found *Findings) {
	piece.grain = piece.likelyGrain(ringOf(piece.Edges, piece.Outline))
	switch {
	case ps.GrainAlong.Given():
		piece.grain.Given, piece.grain.Guess, piece.grain.Along = true, "", ps.GrainAlong.V
		// A grain line has no side, so it does not matter where cloth lies.
		if b, ok := findStraight(piece, ps.GrainAlong, found); ok {
			piece.grain.Direction = b.Along
		}
	case ps.GrainPoints.Given():
		ends := ps.GrainPoints.V
		piece.grainLine = plane.Path{ends[0], ends[1]}
		piece.grain = Grain{Direction: ends[1].Sub(ends[0]).Unit(), Given: true, Drawn: true}
		if ends[0].Distance(ends[1]) <= SamePoint {
			found.Add(ps.GrainPoints.Place, "", "the two points of the grain line are the same")
			return
		}
		from, to := piece.checkPlace(ps.GrainPoints, 0, "", found), piece.checkPlace(ps.GrainPoints, 1, "", found)
		on, out := piece.onPiece(piece.grainLine)
		if from && to && out > nearEdge {
			found.Add(ps.GrainPoints.Place, "draw it where the piece has no gap", "the grain line leaves the piece between its points, by %s", found.length(out))
		}
		if out <= nearEdge {
			piece.grainLine = plane.Path{on[0], on[len(on)-1]}
		}
		if from && to && piece.grainLine.Length() <= SamePoint {
			found.Add(ps.GrainPoints.Place, "draw it on the piece", "nothing of the grain line lies on the piece between its points")
		}
	}
}

// PlaceGrain puts the grain line where there is room, beside the other marks, and where no
// place of it is taken; nil where there is no room.
func PlaceGrain(outline *plane.Tree, grain plane.Point, marks []mark.Mark, taken func(q plane.Point) bool) plane.Path {
	var trees, stitched []*plane.Tree
	for _, m := range marks {
		tree := plane.NewTree(m.Path)
		trees = append(trees, tree)
		if m.Role == mark.Stitch {
			stitched = append(stitched, tree)
		}
	}
	b := Frame{Along: grain, Out: grain.Left()}
	us, _ := b.Extent(outline.Path())
	var best plane.Path
	bestScore := math.Inf(-1)
	for k := range grainPlaces {
		u := us.From + (us.To-us.From)*(float64(k)+0.5)/grainPlaces
		for _, chord := range b.Chords(outline, u) {
			for _, s := range []Stretch{chord, b.widestBetween(u, chord, stitched), b.widestBetween(u, chord, trees)} {
				long := min(longestGrain, (s.To-s.From)*grainShare)
				middle := (s.From + s.To) / 2
				line := b.Lengthwise(u, Stretch{middle - long/2, middle + long/2})
				// No line has a better score than it is long.
				if long < leastGrain || line.Length() < bestScore || !isClear(line, stitched, taken) {
					continue
				}
				if score := grainScore(line, trees); score > bestScore {
					best, bestScore = line, score
				}
			}
		}
	}
	return best
}

// placesAlong returns places along a grain line, from end to end.
func placesAlong(line plane.Path) plane.Path {
	const parts = 16
	all := make(plane.Path, parts+1)
	for k := range all {
		all[k] = line[0].Toward(line[1], float64(k)/parts)
	}
	return all
}

// isClear reports whether a grain line lies on no stitch line and in no allowance.
func isClear(line plane.Path, stitched []*plane.Tree, taken func(q plane.Point) bool) bool {
	tree := plane.NewTree(line)
	if slices.ContainsFunc(stitched, func(s *plane.Tree) bool { return len(plane.Crossings(tree, s)) > 0 }) {
		return false
	}
	return !slices.ContainsFunc(placesAlong(line), func(q plane.Point) bool {
		return taken(q) || slices.ContainsFunc(stitched, func(s *plane.Tree) bool { return s.Nearer(q, grainAway) })
	})
}

// InAllowance returns a function that reports whether a place of the flat piece lies in the
// allowance of an edge, or within 1.5 mm of one; on either half of a piece that is printed
// whole.
func (p *Piece) InAllowance() func(q plane.Point) bool {
	type band struct {
		edge *plane.Tree
		wide float64 // in mm
	}
	var bands []band
	for _, run := range p.Flat.Outline.Runs() {
		if wide := p.Edges[run.Edge].Allowance; wide > 0 {
			bands = append(bands, band{plane.NewTree(run.Path), wide + grainAway})
		}
	}
	in := func(q plane.Point) bool {
		return slices.ContainsFunc(bands, func(b band) bool { return b.edge.Nearer(q, b.wide) })
	}
	axis := p.EdgeOnFold()
	if axis < 0 || !p.Whole {
		return in
	}
	fold := p.Edges[axis].Path
	return func(q plane.Point) bool {
		return in(q) || in(q.Mirrored(fold[0], Inward(fold)))
	}
}

// widestBetween returns the longest part of a chord, u out, between lines that cross it: all
// of it where none does. Where hundreds do, to look at every part would take too long.
func (f Frame) widestBetween(u float64, chord Stretch, others []*plane.Tree) Stretch {
	tree := plane.NewTree(f.Lengthwise(u, chord))
	vs := []float64{chord.From, chord.To}
	for _, o := range others {
		for _, c := range plane.Crossings(tree, o) {
			vs = append(vs, f.V(c.At))
		}
	}
	slices.Sort(vs)
	widest := Stretch{vs[0], vs[1]}
	for i := 2; i < len(vs); i++ {
		if vs[i]-vs[i-1] > widest.To-widest.From {
			widest = Stretch{vs[i-1], vs[i]}
		}
	}
	return widest
}

// grainScore says how good a place for the grain line is: its length, as far
// as nothing crosses it or runs close beside it.
func grainScore(line plane.Path, others []*plane.Tree) float64 {
	clear, crossed := grainClear, 0.0
	tree, along := plane.NewTree(line), placesAlong(line)
	for _, o := range others {
		if len(plane.Crossings(tree, o)) > 0 {
			crossed++
		}
		for _, q := range along {
			clear = o.Distance(q, clear)
		}
	}
	return line.Length() * clear / grainClear / (1 + 10*crossed)
}
