package piece

import (
	"fmt"
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: what is measured on a piece, and written at a place of it. A fold is
// measured from the cut edge, and its words say what lies between; so is a line parallel to an
// edge. Several lines run together, so each is measured by its name. A pleat in an edge has its name once, at the ends of its two lines.

// Where along an edge it is measured to its lines, as shares of it: apart from one another,
// and from both corners.
const (
	measuredAtHem  = 0.4
	measuredAtTurn = 0.6
	measuredAtLine = 0.5
)

// drawnMeasures returns the dimensions of the piece as it is drawn.
func (p *Piece) drawnMeasures(unit length.Unit) []mark.Dimension {
	var all []mark.Dimension
	for _, e := range p.Edges {
		if e.Hem == 0 {
			continue
		}
		turn, fold := e.FoldNames()
		whole := fmt.Sprintf("%s: %s from the cut edge", fold, unit.AsWritten(e.Hem+e.Turn))
		if e.TurnLine != nil {
			all = measured(all, e.Path, measuredAtTurn, e.TurnLine, e.Turn, turn+": "+unit.AsWritten(e.Turn))
			whole += fmt.Sprintf(", hem %s and turn %s", unit.AsWritten(e.Hem), unit.AsWritten(e.Turn))
		}
		all = measured(all, e.Path, measuredAtHem, e.Line, e.Hem+e.Turn, whole)
	}
	for _, l := range p.Lines {
		if l.Along >= 0 {
			e := p.Edges[l.Along]
			all = measured(all, e.Given, measuredAtLine, l.Path, l.Distance, l.Name()+": "+unit.AsWritten(l.Distance)+" from the "+e.GivenName())
		}
	}
	return all
}

// GivenName is what the line is called that the file draws of an edge: "cut edge", or "hem fold".
func (e Edge) GivenName() string {
	switch {
	case e.inside == 0:
		return "cut edge"
	case e.Hem > 0:
		_, fold := e.FoldNames()
		return fold
	}
	return e.Key + " stitch line"
}

// AlongName is what the line is called, of an edge that is named beside it, that is measured along.
func (e Edge) AlongName() string {
	switch {
	case e.inside == 0:
		return "edge"
	case e.Hem > 0:
		return "fold"
	}
	return "stitch line"
}

// measured adds the distance from an edge to a line, some share of the way along, to others;
// unless the line is not as far away there, as where it ends short of that.
func measured(all []mark.Dimension, edge plane.Path, share float64, line plane.Path, distance float64, text string) []mark.Dimension {
	from, _ := edge.At(share * edge.Length())
	to, _, away := line.Nearest(from)
	if math.Abs(away-distance) > Straightness {
		return all
	}
	return append(all, mark.Dimension{From: from, To: to, Text: text})
}

// drawnWords returns what is written at places of the piece as it is drawn.
func (p *Piece) drawnWords(unit length.Unit) []mark.Word {
	var all []mark.Word
	for _, pleat := range p.EdgePleats {
		all = append(all, mark.Word{
			Role: mark.PleatFold, Text: fmt.Sprintf("%s pleat, %s deep", pleat.Key, unit.AsWritten(pleat.Depth)),
			At: pleat.fold[0].Toward(pleat.fold[1], 0.9), Out: pleat.fold[0].Sub(pleat.placement[0]).Unit(),
		})
	}
	return all
}

// keepWith returns words and dimensions where the cloth at their places comes to lie.
func keepWith(words []mark.Word, dimensions []mark.Dimension, to func(plane.Point) plane.Point) ([]mark.Word, []mark.Dimension) {
	var movedWords []mark.Word
	for _, w := range words {
		step := to(w.At).Sub(w.At)
		movedWords = append(movedWords, w.Placed(func(q plane.Point) plane.Point { return q.Add(step) }))
	}
	var moved []mark.Dimension
	for _, d := range dimensions {
		step := to(d.From).Sub(d.From)
		moved = append(moved, d.Placed(func(q plane.Point) plane.Point { return q.Add(step) }))
	}
	return movedWords, moved
}
