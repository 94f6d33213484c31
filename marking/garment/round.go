package garment

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. What goes round the garment follows from its seams: from an edge,
// such as the hem, over the seam beside it to the edge that goes on there, until the way
// comes back to where it began, to a fold of the cloth, to an edge that is sewn to its own
// mirror image, or to one at which the garment opens. At folds and such seams the other half
// begins, which is its mirror image. Only an edge that is finished by itself, or that is called a
// centre or a placket, is where it opens; one that is to be sewn and joined to nothing is
// a seam that the file leaves out, and then nothing is known to go round.

// edgeOf is an edge of a piece.
type edgeOf struct {
	piece *piece.Piece
	edge  int
}

func (e edgeOf) drawn() piece.Edge { return e.piece.Edges[e.edge] }

// title names an edge in a sentence: "the side of Front".
func (e edgeOf) title() string { return "the " + e.drawn().Key + " of " + e.piece.Name }

// chord is the direction from the beginning of an edge to its end, the piece to its left.
func (e edgeOf) chord() plane.Point {
	path := e.drawn().Path
	return path[len(path)-1].Sub(path[0]).Unit()
}

// facesDown reports whether the piece lies above the edge as it is drawn: pieces are
// measured across and up.
func (e edgeOf) facesDown() bool { return e.chord().Left().Y > leastFacing }

// isRun reports whether a course runs along the edge.
func (e edgeOf) isRun(c Course) bool { return c.Piece == e.piece && c.edge == e.edge }

// further returns the edge beyond an edge, and how far the outline turns there, in radians:
// before it, or after it as the outline runs.
func (e edgeOf) further(way int) (next edgeOf, turn float64) {
	before, after := e.piece.Neighbours(e.edge)
	if way == 0 {
		return edgeOf{e.piece, before}, e.piece.Corners[before].Turn
	}
	return edgeOf{e.piece, after}, e.piece.Corners[e.edge].Turn
}

// leastFacing is how much of the direction from an edge into its piece, of length 1, is up
// where the edge faces down: it may slant by 45 degrees.
const leastFacing = 0.70

// calls reports whether a name has one of some words in it.
func calls(name string, words ...string) bool {
	name = strings.ToLower(name)
	return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(name, w) })
}

// called reports whether the edge has one of some words in its name.
func (e edgeOf) called(words ...string) bool { return calls(e.drawn().Key, words...) }

// opens reports whether a garment may open at the edge, which no seam joins.
func (e edgeOf) opens() bool {
	d := e.drawn()
	return !e.called("side", "shoulder", "armhole") &&
		(d.Hem > 0 || d.Allowance == 0 || e.called(openings...))
}

// openings are words for an edge at which a garment opens.
var openings = []string{"centre", "center", "placket", "opening"}

// sideKind is what is beside an edge that goes round.
type sideKind int

const (
	sideFold    sideKind = iota // the fold of the cloth
	sideMirror                  // a seam to its own mirror image
	sideSeam                    // a seam to the next piece
	sideOpening                 // the garment opens there
	sideLoose                   // nothing that is told; the round does not go on
)

// side is an edge beside one that goes round: up it the piece ends at every level.
type side struct {
	edge int
	kind sideKind
}

// panel is a piece that goes round, by the edge of it that does.
type panel struct {
	edgeOf
	sides [2]side // before the edge and after it, as the outline runs
}

// round is edges that follow each other over seams.
type round struct {
	panels []panel
	closed bool   // the way comes back to where it began
	broken string // why it does not go round; "" where it does
}

// seams are those of a garment, as they lead from piece to piece.
type seams []Seam

// joins reports whether a seam joins the edge.
func (all seams) joins(e edgeOf) bool { return len(all.at(e)) > 0 }

// isInSeams reports whether a seam joins any edge of a piece.
func (all seams) isInSeams(p *piece.Piece) bool {
	return slices.ContainsFunc(all, func(s Seam) bool {
		return slices.ContainsFunc(s.Sides[:], func(side SeamSide) bool {
			return slices.ContainsFunc(side.Courses, func(c Course) bool { return c.Piece == p })
		})
	})
}

// togetherWith returns a piece and all that seams join to it, over others too.
func (all seams) togetherWith(p *piece.Piece) map[*piece.Piece]bool {
	together := map[*piece.Piece]bool{p: true}
	for grown := 0; grown < len(together); {
		grown = len(together)
		for _, s := range all {
			courses := s.Courses()
			if slices.ContainsFunc(courses, func(c Course) bool { return together[c.Piece] }) {
				for _, c := range courses {
					together[c.Piece] = true
				}
			}
		}
	}
	return together
}

// at returns the seams that join an edge, and on which side of each it is.
func (all seams) at(e edgeOf) (found []seamAt) {
	for i := range all {
		for side, s := range all[i].Sides {
			if slices.ContainsFunc(s.Courses, e.isRun) {
				found = append(found, seamAt{&all[i], side})
			}
		}
	}
	return found
}

// joinedTo returns the pieces to which seams join an edge.
func (all seams) joinedTo(e edgeOf) (found []*piece.Piece) {
	for _, s := range all.at(e) {
		for _, c := range s.Sides[1-s.side].Courses {
			found = append(found, c.Piece)
		}
	}
	return found
}

// seamAt is a seam, and one side of it.
type seamAt struct {
	*Seam
	side int
}

// other is the only edge on the other side of the seam; ok is false where there are more on
// either side.
func (s seamAt) other() (e edgeOf, ok bool) {
	a, b := s.Sides[s.side].Courses, s.Sides[1-s.side].Courses
	if len(a) != 1 || len(b) != 1 {
		return edgeOf{}, false
	}
	return b[0].outlineEdge(), true
}

// beyond returns the edge that meets the one of that key over the seam; ok is false where
// nothing tells which does.
func (s seamAt) beyond(key string) (e edgeOf, ok bool) {
	other, ok := s.other()
	if !ok || s.Undecided() {
		return edgeOf{}, false
	}
	for _, end := range s.Ends {
		if end.Neighbours[s.side] == key {
			n := other.piece.EdgeNumber(end.Neighbours[1-s.side])
			return edgeOf{other.piece, n}, n >= 0
		}
	}
	return edgeOf{}, false
}

// over leads from an edge over its neighbour by. Where that is a seam to another piece, next
// goes on there, and from is the edge of the seam beside it.
func (all seams) over(e edgeOf, by int) (kind sideKind, next edgeOf, from int) {
	beside := edgeOf{e.piece, by}
	if beside.drawn().OnFold {
		return sideFold, edgeOf{}, 0
	}
	joined := all.at(beside)
	for _, s := range joined {
		other, ok := s.other()
		if ok && other == beside {
			return sideMirror, edgeOf{}, 0
		}
		if next, ok := s.beyond(e.drawn().Key); ok {
			return sideSeam, next, other.edge
		}
	}
	if len(joined) == 0 && beside.opens() {
		return sideOpening, edgeOf{}, 0
	}
	return sideLoose, edgeOf{}, 0
}

// mostPanels bounds how many pieces a round is followed over.
const mostPanels = 1000

// follow goes round from an edge, one way and then the other.
func (all seams) follow(first edgeOf) round {
	before, after := first.piece.Neighbours(first.edge)
	if before == after {
		return round{broken: first.title() + " has one edge beside it only"}
	}
	r := round{panels: []panel{{edgeOf: first, sides: [2]side{{edge: before}, {edge: after}}}}}
	if r = all.onward(r, 1); !r.closed {
		slices.Reverse(r.panels)
		r = all.onward(r, 0)
		slices.Reverse(r.panels)
	}
	if r.broken == "" {
		r.broken = r.count(all, first)
	}
	return r
}

// onward goes on from the last panel of a round by one of its two sides.
func (all seams) onward(r round, way int) round {
	for range mostPanels {
		last := &r.panels[len(r.panels)-1]
		out := &last.sides[way]
		kind, next, from := all.over(last.edgeOf, out.edge)
		out.kind = kind
		if kind == sideLoose && r.broken == "" {
			r.broken = all.looseEnd(edgeOf{last.piece, out.edge})
		}
		if kind != sideSeam {
			return r
		}
		before, after := next.piece.Neighbours(next.edge)
		p := panel{edgeOf: next, sides: [2]side{{edge: before}, {edge: after}}}
		in := 0 // the side over which it is come upon
		if after == from {
			in = 1
		}
		p.sides[in].kind = sideSeam
		if first := &r.panels[0]; first.edgeOf == next {
			first.sides[in].kind, r.closed = sideSeam, true
			return r
		}
		r.panels = append(r.panels, p)
		way = 1 - in
	}
	r.broken = "its pieces are too many to be followed"
	return r
}

// looseEnd says why a way round ends at an edge.
func (all seams) looseEnd(e edgeOf) string {
	for _, s := range all.at(e) {
		if s.Undecided() {
			return fmt.Sprintf("nothing tells which ends of the seam %q come together; meet = says it", s.Key)
		}
	}
	if all.joins(e) {
		return e.title() + " is sewn to several edges at once, or not as often as there are of them, so that no one piece goes on there"
	}
	return "no seam joins " + e.title()
}

// ends returns the two sides at which a round ends that is not closed; those of the first
// panel and of the last may be of one.
func (r round) ends() []panelSide {
	var ends []panelSide
	for _, p := range r.panels {
		for _, s := range p.sides {
			if s.kind != sideSeam {
				ends = append(ends, panelSide{p, s})
			}
		}
	}
	return ends
}

// panelSide is one side of a panel.
type panelSide struct {
	panel panel
	side
}

func (s panelSide) at() edgeOf { return edgeOf{s.panel.piece, s.edge} }

// count says why what was followed does not go once round the garment: it comes several times, as
// a sleeve does, or in halves that nothing holds together; "" where it does go round.
func (r round) count(all seams, first edgeOf) string {
	n, ends := r.panels[0].piece.SideTimes(), r.ends()
	if r.closed {
		if n > 1 {
			return fmt.Sprintf("%s goes round %d times", first.title(), n)
		}
		return ""
	}
	of := map[sideKind]int{}
	for _, e := range ends {
		of[e.kind]++
		// A bib or an apron hangs in front; by itself only a centre at the back makes it go
		// round.
		if e.kind == sideOpening && len(r.panels) == 1 && !e.at().called(openings...) {
			return "no seam joins " + e.at().title()
		}
	}
	once := 2 // a half and its mirror image
	switch {
	case of[sideOpening] == 2:
		once = 1
	case of[sideMirror] > 0 && of[sideOpening] == 0 && n > 2 && !r.hangsFromLoop(all):
		once = n // panels that are alike, sewn side to side
	}
	if n != once {
		return fmt.Sprintf("%s comes %d times", first.title(), n)
	}
	return ""
}

// hangsFromLoop reports whether a piece of a round is a sleeve, or a leg: it is called so, or
// it is sewn to what goes round more than once.
func (r round) hangsFromLoop(all seams) bool {
	for _, p := range r.panels {
		if calls(p.piece.Words(), onLimbs...) {
			return true
		}
		for edge := range p.piece.Edges {
			for _, s := range all.at(edgeOf{p.piece, edge}) {
				for _, c := range s.Sides[1-s.side].Courses {
					e := c.outlineEdge()
					if e.piece != p.piece && all.loops(e) {
						return true
					}
				}
			}
		}
	}
	return false
}

// loops reports whether the way from an edge comes back to it, and does so for more than
// one: an armhole.
func (all seams) loops(e edgeOf) bool {
	before, after := e.piece.Neighbours(e.edge)
	if before == after {
		return false
	}
	r := all.onward(round{panels: []panel{{edgeOf: e, sides: [2]side{{edge: before}, {edge: after}}}}}, 1)
	return r.closed && e.piece.SideTimes() > 1
}
