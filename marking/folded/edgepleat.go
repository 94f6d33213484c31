package folded

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file. A pleat in an edge is short: folded, it draws the edge in, and the cloth
// below it is no longer flat. So it is laid over on the piece as that lies, and the edge is drawn as it
// is cut. Its crease lies on the placement line. Beside that, on the side of its fold line, the
// cloth lies three times; where the pleat ends it is let go.

// laidPleat is a pleat in an edge as it lies folded.
type laidPleat struct {
	flap   plane.Path  // where cloth lies three times, closed
	crease plane.Path  // the flap lies to its left
	end    plane.Point // where that ends, on the piece
	width  float64
	key    string
}

// laidPleats returns the pleats in the edges of half a piece.
func (w *work) laidPleats() []laidPleat {
	var all []laidPleat
	for _, p := range w.EdgePleats {
		fold, placement := p.Fold(), p.Placement()
		crease, across := placement, fold[1].Sub(placement[1]).Mul(0.5)
		if crease[1].Sub(crease[0]).Cross(across) < 0 {
			crease = crease.Reversed()
		}
		// The edge may bend outward between the two lines.
		out := placement[0].Sub(placement[1]).Unit().Mul(2 * p.Depth)
		flap := plane.Path{placement[0].Add(out), placement[1], placement[1].Add(across), placement[0].Add(out).Add(across)}
		if across.Cross(out) < 0 {
			slices.Reverse(flap)
		}
		all = append(all, laidPleat{convexPart(w.Outline, flap), crease, placement[1], p.Depth, p.Key})
	}
	return all
}

// layPleats adds the pleats in the edges to the cloth: they lie clear of its folds, and under it.
func (w *work) layPleats(c *cloth) {
	lowest, top := 0, 0
	for _, p := range c.parts {
		lowest, top = min(lowest, p.level), max(top, p.level)
	}
	var pleats cloth
	for _, p := range w.laidPleats() {
		pleats.parts = append(pleats.parts, part{p.flap, true, lowest - 1}, part{p.flap, false, lowest - 2})
		key := mark.KeyWith(p.key, mark.PleatFold)
		pleats.lines = append(pleats.lines, line{mark.Mark{Role: mark.PleatFold, Key: key, Path: p.crease}, top, edge, p.width})
		into := p.crease[1].Sub(p.crease[0]).Unit()
		if p.end == p.crease[0] {
			into = into.Mul(-1)
		}
		for _, path := range softLines(p.end, into, p.width/2, softMost) {
			pleats.lines = append(pleats.lines, line{mark.Mark{Path: path}, top, fullness, p.width})
		}
	}
	if w.whole {
		image := pleats.mirrored(w.axis)
		pleats = cloth{append(pleats.parts, image.parts...), append(pleats.lines, image.lines...)}
	}
	c.parts = append(c.parts, pleats.parts...)
	c.lines = append(c.lines, pleats.lines...)
}

// pleatPlaces returns a place in the flap of every pleat in an edge.
func (w *work) pleatPlaces() []plane.Point {
	var all []plane.Point
	for _, p := range w.laidPleats() {
		all = append(all, w.drawnIn(plane.Path{p.flap.Bounds().Centre()})...)
	}
	return all
}
