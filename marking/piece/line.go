package piece

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Line is a line a maker asked for: a placket fold, a centre line.
type Line struct {
	Key  string
	Role mark.Role
	Path plane.Path
	// Along is the number of the edge the line runs parallel to, or -1.
	Along int
	// FinishedLength is how long what lies between the stitch lines is, all that is seen
	// of it when it is sewn, with tucks and pleats in.
	FinishedLength float64

	place fault.Place
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
	for _, ls := range ps.Lines {
		line := Line{Key: ls.Key, Role: lineRoles[ls.Kind.V], Along: -1, place: ls.Place}
		if piece.EdgeNumber(ls.Key) >= 0 {
			found.Add(ls.Place, "give the line a name of its own", "the line has the name of an edge")
			continue
		}
		if ls.Along.Given() {
			line.Along = found.findEdge(piece, ls.Along)
			if line.Along < 0 {
				continue
			}
			line.Path = parallelLine(piece, ls, line.Along, found)
		} else {
			line.Path = ls.Points.V
			if ls.Smooth {
				line.Path = plane.Curve(ls.Points.V, plane.Point{}, plane.Point{})
			}
			if piece.checkPlaces(ls.Points, found) && !piece.keeps(line.Path) {
				found.Add(ls.Place, "let it run round the gap, or make it two lines", "the line leaves the piece between its points")
			}
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

// checkPlaces looks whether each of the points of a line lies on the piece.
func (p *Piece) checkPlaces(points source.Points, found *Findings) bool {
	ok := true
	for i, q := range points.V {
		if !p.Tree.Holds(q) && !p.Tree.Nearer(q, cornerTolerance) {
			found.Add(points.Place.On(points.Line(i)), "is a number wrong? x comes first, then y",
				"point %d, %s, lies outside the piece", i+1, found.point(q))
			ok = false
		}
	}
	return ok
}

// parallelLine returns the line at a distance inside an edge, which ends at the
// corners as a stitch line does.
func parallelLine(piece *Piece, ls source.LineSpec, along int, found *Findings) plane.Path {
	in := inset{along, ls.Distance.V, "a distance", ls.Place}
	return piece.ruledLine(in, runOut*in.d, found)
}
