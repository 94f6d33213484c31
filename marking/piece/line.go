package piece

import (
	"fmt"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Line is a line a maker asked for: a placket fold, a centre line.
type Line struct {
	Key  string
	Role mark.Role
	Path plane.Path
	// Along is the number of the edge the line runs parallel to, or -1.
	Along    int
	Distance float64 // from that edge
	// FinishedLength is how long what lies between the stitch lines is, all that is seen
	// of it when it is sewn, with tucks and pleats in.
	FinishedLength float64
	Place          fault.Place
}

// Name is what is printed along the line. A stitch line says that it is one: its key may be
// that of something which is sewn to it.
func (l Line) Name() string {
	if l.Role == mark.Stitch && !strings.Contains(wording.InWords(l.Key), "stitch") {
		return l.Key + " stitch line"
	}
	return l.Key
}

// Line returns the line with that key, or nil.
func (p *Piece) Line(key string) *Line {
	for i := range p.Lines {
		if p.Lines[i].Key == key {
			return &p.Lines[i]
		}
	}
	return nil
}

// lineRoles says what each kind of line is drawn as.
var lineRoles = [...]mark.Role{source.FoldLine: mark.Fold, source.CentreLine: mark.Centre, source.PlacementLine: mark.Placement, source.StitchLine: mark.Stitch}

// checkLines works out the lines of a piece.
func checkLines(piece *Piece, ps source.PieceSpec, found *Findings) {
	for _, ls := range linesInOrder(ps.Lines, found) {
		line := Line{Key: ls.Key, Role: lineRoles[ls.Kind.V], Along: -1, Place: ls.Place}
		if piece.EdgeNumber(ls.Key) >= 0 {
			found.Add(ls.Place, "give the line a name of its own", "the line has the name of an edge")
			continue
		}
		switch {
		case piece.misses(ls, ps.Lines):
			continue
		case ls.Beside.Given():
			piece.besideLine(&line, ls, found)
		case ls.Along.Given():
			line.Along = found.findEdge(piece, ls.Along)
			if line.Along < 0 {
				continue
			}
			line.Distance = ls.Distance.V
			line.Path = parallelLine(piece, ls, line.Along, found)
		default:
			line.Path = pointsLine(piece, ls, found)
		}
		if line.Path.Length() < LeastLine {
			if line.Path != nil {
				found.Add(ls.Place, "", "the line has no length")
			}
			continue
		}
		piece.Lines = append(piece.Lines, line)
	}
}

// pointsLine returns the line through points, or notes why it is none and returns nil.
func pointsLine(piece *Piece, ls source.LineSpec, found *Findings) plane.Path {
	line := penStraight(ls.Points.V)
	switch {
	case ls.Smooth:
		line = plane.Curve(line, plane.Point{}, plane.Point{})
	case ls.Centre.Given():
		before := len(found.List)
		if found.checkArc(ls.Points, ls.Centre); len(found.List) > before {
			return nil
		}
		line = arcThrough(line, ls.Centre.V)
	}
	if line.Length() < LeastLine {
		return line
	}
	ends, ok := piece.findEnds(ls, found)
	if !ok || !piece.checkPoints(ls, found) {
		return nil
	}
	if ls.From.Given() || ls.To.Given() {
		if line = piece.runToEdges(line, ends, ls, found); line == nil {
			return nil
		}
	}
	line, out := piece.onPiece(line)
	if out > nearEdge {
		found.leavesPiece(ls, out)
		return nil
	}
	return line
}

// checkPoints looks whether the points of a line lie on the piece. Where it runs to an edge
// its points may lie beyond that.
func (p *Piece) checkPoints(ls source.LineSpec, found *Findings) bool {
	points := ls.Points.V
	first, last := 0, len(points)-1
	for ls.From.Given() && first < len(points) && p.outside(points[first]) > nearEdge {
		first++
	}
	for ls.To.Given() && last >= 0 && p.outside(points[last]) > nearEdge {
		last--
	}
	ok := true
	for i := first; i <= last; i++ {
		more := ""
		switch {
		case i == 0 && !ls.From.Given():
			more = fmt.Sprintf("; a line that is to begin at that edge has from = %q", p.edgeNear(points[i]))
		case i == len(points)-1 && !ls.To.Given():
			more = fmt.Sprintf("; a line that is to end at that edge has to = %q", p.edgeNear(points[i]))
		}
		ok = p.checkPlace(ls.Points, i, more, found) && ok
	}
	return ok
}

// parallelLine returns the line at a distance inside an edge, which ends at the
// corners as a stitch line does.
func parallelLine(piece *Piece, ls source.LineSpec, along int, found *Findings) plane.Path {
	in := inset{along, piece.Edges[along].inside + ls.Distance.V, "a distance", ls.Place, ls.Distance.V, ""}
	return piece.ruledLine(in, runOut*in.d, found)
}
