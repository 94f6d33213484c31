package folded

import (
	"math"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. Where a fold ends on the piece, what it took is let go: the cloth is
// fuller there than the picture, which is as wide as where all is sewn. Three soft lines hint
// at that, as cloth falls from under a tuck.

// How the soft lines run, as shares of the width of the flap: how long the middle one and those
// beside it are, how far these lie from it where they begin and end, and where they begin, from the
// end of the stitching.
const (
	softLong   = 7.0
	softShort  = 4.5
	softNear   = 0.12
	softFar    = 0.4
	softBegins = 0.3
)

// softMost bounds how long they are, in mm.
const softMost = 30

// softShare bounds how far they run, as a share of the way to the edge of the cloth.
const softShare = 0.85

// softLines returns the lines of a flap of a width which is let go at a place, where the cloth goes
// on for room: along is the direction in which it does, of length 1.
func softLines(at, along plane.Point, width, room float64) []plane.Path {
	var all []plane.Path
	for side := -1.0; side <= 1; side++ {
		long := softShort
		if side == 0 {
			long = softLong
		}
		place := func(share, far float64) plane.Point {
			return at.Add(along.Left().Mul(side * share * width)).Add(along.Mul(far))
		}
		begin, end := min(softBegins*width, room/4), min(long*width, long/softLong*softMost, room*softShare)
		middle := (2*softNear + softFar) / 3 // they bend
		all = append(all, plane.Path{place(softNear, begin), place(middle, (2*begin+end)/3), place(softFar, end)})
	}
	return all
}

// softBeyond returns soft lines on a part, at its level, where fold k ends on it, folded.
func softBeyond(g piece.FlatGroup, k int, p part, level int) []line {
	f, one := g.Folding, g.Folding.Folds()[k]
	if k > 0 && f.Seam(k)-f.Seam(k-1) < piece.SamePoint {
		return nil // the folds of an inverted pleat meet: one of the two is enough
	}
	var lines []line
	for _, end := range []struct{ v, way float64 }{{one.From, -1}, {one.To, 1}} {
		room := 0.0
		for _, chord := range f.Chords(p.path, one.At+one.Width) {
			from, to := f.V(chord[0])-end.v, f.V(chord[1])-end.v
			if from < 0 && to > 0 {
				room = max(end.way*from, end.way*to)
			}
		}
		if math.IsInf(end.v, 0) || room < one.Width {
			continue
		}
		at := f.At(f.Seam(k), end.v)
		along := f.At(f.Seam(k), end.v+end.way).Sub(at)
		for _, path := range softLines(at, along, one.Width, room) {
			lines = append(lines, line{mark.Mark{Path: path}, level, fullness, one.Width})
		}
	}
	return lines
}
