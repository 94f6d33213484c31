package folded

import (
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. A piece on the fold of the cloth is opened out before it is folded, for
// layers of one half may lie over the centre; what is shown of it is cut off the whole. Only
// where its folds run at a slant to the fold of the cloth, one half is folded by itself. A piece
// that is drawn flat is folded with all its lines; one that is drawn finished has them
// as they lie then.

// work is a piece that is being folded.
type work struct {
	*piece.Piece
	groups []piece.FlatGroup
	halves mark.Halves // that are shown
	whole  bool        // both halves of it are folded
	slant  bool        // it could not be opened out
	bare   bool        // its folds are left out: they are too many
	axis   axis        // of a piece on the fold
}

func newWork(p *piece.Piece, halves mark.Halves) *work {
	w := &work{Piece: p, groups: p.Folded, halves: halves}
	if !p.OnFold {
		w.halves = mark.OneHalf
		return w
	}
	e := p.Edges[p.EdgeOnFold()].Path
	w.axis = axis{e[0], piece.Inward(e)}
	w.slant = slices.ContainsFunc(w.groups, func(g piece.FlatGroup) bool {
		return !g.OnAxis && math.Abs(g.Out.Dot(w.axis.in)) > piece.SquareWithin
	})
	if w.slant {
		w.halves = mark.OneHalf
	}
	w.whole = !w.slant
	return w
}

// noShape reports whether the piece has folds and no one finished shape.
func (w *work) noShape() bool { return len(w.Folded) == 0 && len(w.FoldRows()) > 0 }

// leaveUnfolded has the piece shown as it is drawn, without its folds.
func (w *work) leaveUnfolded() { w.groups, w.bare = nil, true }

// opened returns an outline of half the piece as it is shown.
func (w *work) opened(half plane.Path) plane.Path {
	if w.halves == mark.BothHalves {
		return piece.WholeOutline(half, w.axis.origin, w.axis.in)
	}
	return half
}

// openedMarks returns lines of half the piece as they are shown.
func (w *work) openedMarks(half []mark.Mark) []mark.Mark {
	if w.halves == mark.BothHalves {
		return piece.WholeMarks(half, w.axis.origin, w.axis.in)
	}
	return half
}

// drawnIn returns a line of the piece as it is drawn, with the folds in.
func (w *work) drawnIn(p plane.Path) plane.Path {
	if w.DrawnFinished {
		return p
	}
	for _, g := range w.groups {
		p = g.Folding.DrawnInPath(p)
	}
	return p
}

// outline is where the folded cloth ends, as it is shown.
func (w *work) outline() plane.Path { return w.opened(w.drawnIn(w.Outline)) }

// sewn is the ring of all that is sewn, as it is shown.
func (w *work) sewn() plane.Path { return w.opened(w.drawnIn(w.Seams())) }

// frame is a frame along the folds.
func (w *work) frame() piece.Frame {
	if len(w.groups) > 0 {
		return w.groups[0].Frame
	}
	return piece.Frame{Out: plane.Point{X: 1}, Along: plane.Point{Y: 1}}
}

// begin returns the cloth before it is folded.
func (w *work) begin() cloth {
	var c cloth
	for _, path := range w.flatOutlines() {
		c.parts = append(c.parts, part{path: path})
	}
	if w.DrawnFinished {
		return c
	}
	marks := w.shownMarks(slices.Concat(w.edges(w.Flat.Outline), w.Flat.Marks))
	if w.whole {
		marks = piece.WholeMarks(marks, w.axis.origin, w.axis.in)
	}
	for _, m := range marks {
		c.lines = append(c.lines, line{Mark: m})
	}
	w.layPleats(&c)
	return c
}

// finish adds to the folded cloth of a piece that is drawn finished what its folds do not
// move.
func (w *work) finish(c cloth) cloth {
	if w.DrawnFinished {
		w.layPleats(&c)
	}
	return c
}

// flatOutlines returns the cloth before it is folded, both halves of it. That of a piece which is
// cut from a tucked block is what the cut leaves of the block, and may be in parts.
func (w *work) flatOutlines() []plane.Path {
	outline := w.Flat.Outline.Path
	if w.bare {
		outline = w.Outline
	}
	if w.whole {
		outline = piece.WholeOutline(outline, w.axis.origin, w.axis.in)
	}
	if w.Block == nil || w.bare {
		return []plane.Path{outline}
	}
	folding := *w.groups[0].Folding
	folding.Over(outline)
	var all []plane.Path
	for _, s := range folding.Unfolded(outline) {
		all = append(all, s.Path)
	}
	return all
}

// edges are the cut edges of half the piece, as an outline of it has them, but for that on the
// fold.
func (w *work) edges(outline piece.Ring) []mark.Mark {
	var marks []mark.Mark
	for _, run := range outline.Runs() {
		if e := w.Edges[run.Edge]; !e.OnFold {
			marks = append(marks, mark.Mark{Role: mark.Cut, Key: e.Key, Path: run.Path})
		}
	}
	return marks
}

// onTop are the lines that lie on the folded piece whatever its folds are.
func (w *work) onTop() []mark.Mark {
	var marks []mark.Mark
	if w.DrawnFinished {
		marks = w.openedMarks(w.shownMarks(slices.Concat(w.edges(w.AsDrawn.Outline), w.AsDrawn.Marks)))
	}
	return append(marks, w.centre(w.drawnIn)...)
}

// centre is the edge on the fold of the cloth, as a line of the piece laid by lies; none where
// that is not on the fold.
func (w *work) centre(laid func(plane.Path) plane.Path) []mark.Mark {
	if !w.OnFold {
		return nil
	}
	e, role := w.Edges[w.EdgeOnFold()], mark.FoldEdge
	if w.halves == mark.BothHalves {
		role = mark.Centre
	}
	return []mark.Mark{{Role: role, Key: e.Key, Path: laid(e.Path)}}
}

// shownMarks returns those of some lines of the piece that are sewn, folded or looked at when it is
// made; not those that only help to make it, nor those of pleats in its edges.
func (w *work) shownMarks(marks []mark.Mark) []mark.Mark {
	ofPleat := func(m mark.Mark) bool {
		return slices.ContainsFunc(w.EdgePleats, func(p piece.EdgePleat) bool { return m.Key == mark.KeyWith(p.Key, m.Role) })
	}
	return slices.DeleteFunc(slices.Clone(marks), func(m mark.Mark) bool {
		switch m.Role {
		case mark.Notch, mark.Grain, mark.Arrow:
			return true
		}
		return ofPleat(m)
	})
}

// flat is the piece before it is folded, as it is shown, or its block.
func (w *work) flat() mark.Opened {
	if w.Block != nil {
		return w.block()
	}
	marks := slices.Concat(w.edges(w.Flat.Outline), w.Flat.Marks, w.FoldMarks())
	o := mark.Opened{Outline: w.opened(w.Flat.Outline.Path), Marks: w.openedMarks(marks)}
	if seams := w.flatSeams(); seams != nil {
		o.Sewn = w.opened(seams)
	}
	o.Marks = append(o.Marks, w.centre(func(plane.Path) plane.Path { return w.flatAxis() })...)
	return o
}

// flatSeams is the ring of all that is sewn on half the flat piece; nil where it lies there in
// parts.
func (w *work) flatSeams() plane.Path {
	ring := w.Seams()
	if !w.DrawnFinished {
		return ring
	}
	for _, g := range slices.Backward(w.Folded) {
		if g.OnAxis {
			ring = piece.WholeOutline(ring, w.axis.origin, w.axis.in)
		}
		folding := *g.Folding
		folding.Over(ring)
		strands := slices.DeleteFunc(folding.Unfolded(ring), func(s plane.Strand) bool { return math.Abs(s.Path.Area()) < piece.LeastArea })
		if len(strands) != 1 {
			return nil
		}
		if ring = strands[0].Path; g.OnAxis {
			ring = ring.Side(w.axis.origin, w.axis.in)
		}
	}
	return ring
}

// flatAxis is the edge on the fold of the cloth on the flat piece.
func (w *work) flatAxis() plane.Path {
	for _, run := range w.Flat.Outline.Runs() {
		if w.Edges[run.Edge].OnFold {
			return run.Path
		}
	}
	return nil
}
