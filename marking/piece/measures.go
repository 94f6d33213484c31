package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: what is measured on a piece, and written at a place of it. A fold is
// measured from the cut edge, and its words say what lies between; so is a line parallel to an
// edge. Several lines run together, so each is measured by its name. A pleat in an edge has its name once, at the ends of its two lines.
//
// A number beside an arrow is what a ruler shows there. Where folds lie between the two lines the
// flat cloth is longer than the finished piece: there the flat distance is told, and the
// finished one behind it. It is measured where no fold lies between, if there is such a place.

// Where along an edge it is measured to its lines, as shares of it: apart from one another,
// and from both corners. Where it can not be measured there, it is at the next of so many steps.
const (
	measuredAtHem  = 0.4
	measuredAtTurn = 0.6
	measuredAtLine = 0.5
	measuredSteps  = 20
)

// Measure is how far a line lies from the edge that it is parallel to.
type Measure struct {
	Line   string  // what is measured to, as its mark is named
	Edge   int     // the number of the edge that is measured from
	Drawn  float64 // in mm, on the piece as it is drawn
	from   string  // "from the cut edge", "" where that is plain
	parts  string  // "hem 2 in and turn 1/4 in", or ""
	places []span  // where it may be measured on the shape, the best first; at least one
}

// span is the way from an edge to a line, square to it.
type span struct{ from, to plane.Point }

func (s span) length() float64 { return s.from.Distance(s.to) }

// best is where it is measured: where it is as drawn, if there is such a place.
func (m Measure) best() span {
	if i := slices.IndexFunc(m.places, func(s span) bool { return math.Abs(s.length()-m.Drawn) <= Straightness }); i >= 0 {
		return m.places[i]
	}
	return m.places[0]
}

// Flat returns how far the line lies from the edge on the shape, in mm; changed tells that it is
// another distance than on the piece as it is drawn, for folds lie between.
func (m Measure) Flat() (mm float64, changed bool) {
	mm = m.best().length()
	return mm, math.Abs(mm-m.Drawn) > Straightness
}

// Dimension returns the distance as it is drawn and told.
func (m Measure) Dimension(unit length.Unit) mark.Dimension {
	s, told, finished := m.best(), unit.AsWritten(m.Drawn), ""
	if mm, changed := m.Flat(); changed {
		told, finished = unit.OnRuler(mm), "finished "+told
	}
	if m.from != "" {
		told += " " + m.from
	}
	text := m.Line + ": " + told
	for _, more := range []string{finished, m.parts} {
		if more != "" {
			text += ", " + more
		}
	}
	return mark.Dimension{From: s.from, To: s.to, Text: text}
}

// Dimensions returns what is measured on the shape.
func (s *Shape) Dimensions(unit length.Unit) []mark.Dimension {
	var all []mark.Dimension
	for _, m := range s.Measures {
		all = append(all, m.Dimension(unit))
	}
	return all
}

// drawnMeasures returns what is measured on the piece as it is drawn.
func (p *Piece) drawnMeasures(unit length.Unit) []Measure {
	var all []Measure
	add := func(m Measure, edge plane.Path, share float64, line plane.Path) {
		if m.places = measuredAt(edge, share, line, m.Drawn); len(m.places) > 0 {
			all = append(all, m)
		}
	}
	for i, e := range p.Edges {
		if e.Hem == 0 {
			continue
		}
		turn, fold := e.FoldNames()
		whole := Measure{Line: fold, Edge: i, Drawn: e.Hem + e.Turn, from: "from the cut edge"}
		if e.TurnLine != nil {
			add(Measure{Line: turn, Edge: i, Drawn: e.Turn}, e.Path, measuredAtTurn, e.TurnLine)
			whole.parts = fmt.Sprintf("hem %s and turn %s", unit.AsWritten(e.Hem), unit.AsWritten(e.Turn))
		}
		add(whole, e.Path, measuredAtHem, e.Line)
	}
	for _, l := range p.Lines {
		if l.Along >= 0 {
			add(Measure{Line: l.Name(), Edge: l.Along, Drawn: l.Distance, from: "from " + p.MeasuredFrom(l.Along)}, p.Edges[l.Along].Given, measuredAtLine, l.Path)
		}
	}
	return all
}

// MeasuredFrom says what a line is measured from that is parallel to an edge: "the cut edge",
// and of an edge on the fold of the cloth "the fold", or its name where the cloth lies open.
func (p *Piece) MeasuredFrom(edge int) string {
	switch e := p.Edges[edge]; {
	case !e.OnFold:
		return "the " + e.GivenName()
	case p.LiesFolded():
		return "the fold"
	default:
		return e.Key
	}
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

// measuredAt returns where along an edge a line can be measured that lies at a distance from it,
// the nearest to a share of the way first; none where the line is nowhere as far away, as where it
// ends short of that.
func measuredAt(edge plane.Path, share float64, line plane.Path, distance float64) []span {
	var all []span
	for k := range 2 * measuredSteps {
		step := float64((k+1)/2) / measuredSteps // there and back: 0, 1, -1, 2, ...
		if k%2 == 0 {
			step = -step
		}
		if at := share + step; at > 0 && at < 1 {
			from, _ := edge.At(at * edge.Length())
			if to, _, away := line.Nearest(from); math.Abs(away-distance) <= Straightness {
				all = append(all, span{from, to})
			}
		}
	}
	return all
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

// unfoldWords returns words where the cloth at their places comes to lie.
func unfoldWords(words []mark.Word, f FlatGroup) []mark.Word {
	var moved []mark.Word
	for _, w := range words {
		step := f.Folding.Flat(w.At).Sub(w.At)
		moved = append(moved, w.Placed(func(q plane.Point) plane.Point { return q.Add(step) }))
	}
	return moved
}

// unfoldMeasures returns what is measured where the cloth at its places comes to lie, without what
// does not run straight from the edge to the line there.
func unfoldMeasures(measures []Measure, f FlatGroup) []Measure {
	var all []Measure
	for _, m := range measures {
		var places []span
		for _, s := range m.places {
			flat := span{f.flatPlace(s.from), f.flatPlace(s.to)}
			along, turned := s.to.Sub(s.from).Unit(), flat.to.Sub(flat.from)
			if math.Abs(along.Cross(turned)) <= Straightness && along.Dot(turned) > 0 {
				places = append(places, flat)
			}
		}
		if m.places = places; len(places) > 0 {
			all = append(all, m)
		}
	}
	return all
}

// flatPlace returns where a place lies on the flat cloth, that of the fold of the cloth on it.
func (f FlatGroup) flatPlace(p plane.Point) plane.Point {
	if f.OnAxis && math.Abs(f.U(p)) < SamePoint {
		return p
	}
	return f.Folding.Flat(p)
}
