package piece

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. A pleat is cloth folded at its fold line and laid to its
// placement line, 2 depths away; it takes those 2 depths up and, lying flat,
// covers one depth more, so that touching pleats use three times their
// finished width (Hapgood, School Needlework, about 1892). Places along an edge
// are measured on the edge as it is drawn, and so is the length of its lines, which run
// out to the cutting line. The two lines of a pleat are parallel, square
// to the edge midway between them (or along the grain), so that it is equally
// deep all the way.

// EdgePleat is one pleat in an edge.
type EdgePleat struct {
	Key   string
	Depth float64
	Edge  int     // that it lies in
	From  string  // the key of the neighbour of that edge at whose corner At starts
	At    float64 // of the fold line, along the edge from that corner
	Place fault.Place

	fold, placement plane.Path // as the piece is drawn
	arrow           plane.Path // from fold to placement
	patch           plane.Path // the cloth it takes up, a closed path
}

// TakeUp returns how much cloth the pleat takes, in mm.
func (p EdgePleat) TakeUp() float64 { return 2 * p.Depth }

// Fold returns the fold line of the pleat, from the cut edge into the piece.
func (p EdgePleat) Fold() plane.Path { return p.fold }

// Placement returns the line that the fold line is laid to, from the cut edge into the piece.
func (p EdgePleat) Placement() plane.Path { return p.placement }

// takenFrom returns how much of a line along its edge the pleat takes, the line
// lying no farther inside than the given distance. Cloth is taken between the two
// lines of the pleat; a line that begins or ends between them is folded in part.
func (p EdgePleat) takenFrom(line plane.Path, inside float64) float64 {
	in, mouth := p.fold[1].Sub(p.fold[0]).Unit(), p.placement[0].Sub(p.fold[0])
	across := in.Left()
	width := mouth.Dot(across)
	if width < 0 {
		across, width = across.Mul(-1), -width
	}
	// The line lies as far beyond the mouth as the slant of the edge has it, or one
	// take-up more or less where the edge bends: what lies farther between the lines
	// of the pleat is another part of the edge.
	least := min(0, mouth.Dot(in)) - p.TakeUp()
	most := max(0, mouth.Dot(in)) + inside*mouth.Length()/width + p.TakeUp()
	sum := 0.0
	for i := 1; i < len(line); i++ {
		a, b := line[i-1].Sub(p.fold[0]), line[i].Sub(p.fold[0])
		from, to := sharesBetween(a.Dot(across), b.Dot(across), width)
		if middle := a.Toward(b, (from+to)/2).Dot(in); from < to && middle > least && middle < most {
			sum += a.Distance(b) * (to - from)
		}
	}
	return sum
}

// sharesBetween returns the shares of the way from u to v between which it lies between 0
// and width. A way that stays on one of the two lies beside them.
func sharesBetween(u, v, width float64) (from, to float64) {
	if math.Abs(v-u) < Rounding {
		if u > Rounding && u < width-Rounding {
			return 0, 1
		}
		return 0, 0
	}
	from, to = -u/(v-u), (width-u)/(v-u)
	return max(0, min(from, to)), min(1, max(from, to))
}

// leastSlant bounds the sine of the angle between an edge and the lines of a
// pleat in it (15 degrees): flatter ones would run along the edge.
const leastSlant = 0.26

// checkEdgePleats works out the pleats of a piece.
func checkEdgePleats(piece *Piece, ps source.PieceSpec, found *Findings) {
	for _, s := range ps.EdgePleats {
		walk, ok := findWalk(piece, s.Edge, s.From, found)
		if !ok {
			continue
		}
		toward := 1.0 // along the walk
		switch i := found.findEdge(piece, s.Toward); {
		case i < 0:
			continue
		case i == walk.from:
			toward = -1
		case i != walk.to:
			found.Add(s.Toward.Place, fmt.Sprintf("toward is %q or %q", piece.Edges[walk.from].Key, piece.Edges[walk.to].Key),
				"a pleat in %q cannot be folded toward %q, which is not next to it", s.Edge.V, s.Toward.V)
			continue
		}
		layPleats(piece, s, walk, toward, found)
	}
}

func layPleats(piece *Piece, s source.EdgePleatSpec, w walk, toward float64, found *Findings) {
	count := 1
	if s.Count.Given() {
		count = s.Count.V
	}
	if count > 1 && s.Spacing.V < 2*s.Depth.V-SamePoint {
		found.Add(s.Place, "pleats that just touch have their fold lines three depths apart",
			"the pleats overlap: their fold lines lie %s apart, and each takes up %s",
			found.Written(s.Spacing.V), found.Written(2*s.Depth.V))
		return
	}
	for k := range count {
		p := EdgePleat{Key: s.Key, Depth: s.Depth.V, At: s.At.V + float64(k)*s.Spacing.V, Place: s.Place, Edge: w.edge, From: s.From.V}
		if !layPleat(piece, &p, s, w, toward, found) {
			return
		}
		piece.EdgePleats = append(piece.EdgePleats, p)
	}
}

// layPleat draws the lines of one pleat.
func layPleat(piece *Piece, p *EdgePleat, s source.EdgePleatSpec, w walk, toward float64, found *Findings) bool {
	length := w.path.Length()
	fold, _ := w.path.At(p.At)
	// How far a place is from the fold line, square to the lines.
	away := func(q plane.Point) float64 { return q.Distance(fold) }
	if s.Run.V == source.RunGrain {
		away = func(q plane.Point) float64 { return math.Abs(piece.grain.Direction.Cross(q.Sub(fold))) }
		if _, along := w.path.At(p.At); math.Abs(piece.grain.Direction.Cross(along)) < leastSlant {
			found.Add(s.Run.Place, "leave run out: the pleat then runs square to its edge",
				"a pleat cannot run along the grain here: %q runs along it too", s.Edge.V)
			return false
		}
	}
	place, placed := firstAt(w.path, p.At, toward, p.TakeUp(), away)
	if p.At > length || !placed {
		found.Add(s.Place, "move the pleat, or turn it the other way",
			"the pleat leaves %q: its fold line lies %s and its placement line %s from %q, and the edge is %s long",
			s.Edge.V, found.length(p.At), found.length(p.At+toward*p.TakeUp()), s.From.V, found.length(length))
		return false
	}
	placement, _ := w.path.At(place)
	in := placement.Sub(fold).Mul(toward * w.inward).Unit().Left()
	if s.Run.V == source.RunGrain {
		in = piece.grain.Direction.Mul(math.Copysign(1, piece.grain.Direction.Dot(in)))
	}
	p.fold = plane.Path{piece.cutBeside(w.edge, fold, in), fold.Add(in.Mul(s.Length.V))}
	p.placement = plane.Path{piece.cutBeside(w.edge, placement, in), placement.Add(in.Mul(s.Length.V))}
	p.arrow = Arrow(p.fold, placement.Sub(fold))
	p.patch = plane.Path{p.fold[0], p.fold[1], p.placement[1], p.placement[0], p.fold[0]}
	for _, line := range []plane.Path{p.fold, p.placement} {
		if !piece.keeps(line) {
			_, out := piece.toEdge(line)
			found.Add(s.Length.Place, "make the pleat shorter",
				"the pleat leaves the piece by %s: its lines are %s long", found.length(out), found.Written(s.Length.V))
			return false
		}
	}
	return true
}
