package source

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
)

// madeSpec is a square with a tuck, made without a file.
func madeSpec() *Spec {
	at := fault.Place{Path: "piece.p"}
	corners := []plane.Point{{}, {X: 100}, {X: 100, Y: 100}, {Y: 100}, {}}
	p := PieceSpec{Key: "p", Place: at}
	for i, key := range []string{"bottom", "right", "top", "left"} {
		p.Edges = append(p.Edges, EdgeSpec{Key: key, Place: at.Under("edge").Under(key), Points: Points{Value: Given(corners[i : i+2])}})
	}
	p.Tucks = []TuckSpec{{Key: "t", Place: at.Under("tuck").Under("t"), Beside: Given("left"),
		Width: Given(3.0), Count: Given(2), First: Given(20.0), Spacing: Given(10.0)}}
	return &Spec{Pieces: []PieceSpec{p}}
}

// What no file could have brought is told in the words in which a file's mistake is.
func TestFaultsOfASpec(t *testing.T) {
	const points = "\nhint: a point is [x, y], and points are listed as [[0, 0], [3, \"4 1/2\"]]"
	along := "\nhint: write along = [\"front.neck\", \"back.neck\"]: piece and edge"
	for _, c := range []struct {
		name  string
		alter func(s *Spec, p *PieceSpec)
		want  string
	}{
		{"nothing", func(*Spec, *PieceSpec) {}, ""},
		{"no piece", func(s *Spec, _ *PieceSpec) { s.Pieces = nil }, "no piece is described"},
		{"no edge", func(_ *Spec, p *PieceSpec) { p.Edges = nil }, "piece.p: no edge is described"},
		{"an edge without points", func(_ *Spec, p *PieceSpec) { p.Edges[1].Points = Points{} }, "piece.p.edge.right.points: has no point, and needs at least two" + points},
		{"an edge of one point, which has a place", func(_ *Spec, p *PieceSpec) {
			p.Edges[1].Points = Points{Value: GivenAt([]plane.Point{{}}, fault.Place{Path: "the right edge"})}
		}, "the right edge: has 1 point, and needs at least two" + points},
		{"a point that is none", func(_ *Spec, p *PieceSpec) { p.Edges[0].Points.V = []plane.Point{{}, {X: 100, Y: math.NaN()}} },
			"piece.p.edge.bottom.points: point 2: nan mm is not a length\nhint: a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\""},
		{"a line that runs nowhere", func(_ *Spec, p *PieceSpec) { p.Lines = []LineSpec{{Key: "l", Place: p.Place.Under("line").Under("l")}} },
			"piece.p.line.l.points: has no point, and needs at least two" + points},
		{"a line at no distance", func(_ *Spec, p *PieceSpec) {
			p.Lines = []LineSpec{{Key: "l", Place: p.Place.Under("line").Under("l"), Along: Given("top")}}
		}, "piece.p.line.l.distance: must be more than 0, but is 0 mm"},
		{"a grain of one point", func(_ *Spec, p *PieceSpec) { p.GrainPoints.Value = Given([]plane.Point{{}}) },
			"piece.p.grain: has 1 point, and needs at least two" + points},
		{"tucks without a width, backwards, and no choice at all", func(_ *Spec, p *PieceSpec) {
			p.Tucks[0].Width, p.Tucks[0].First, p.Tucks[0].Press = Length{}, Given(-1.0), Given(Press(9))
		}, "piece.p.tuck.t.width: must be more than 0, but is 0 mm\npiece.p.tuck.t.first: must not be negative, but is -1 mm\npiece.p.tuck.t.press: choice 9 is none of away and toward"},
		{"layers of 0", func(_ *Spec, p *PieceSpec) { p.Layers = Given(0) }, "piece.p.layers: must be from 1 to 99, but is 0"},
		{"a unit there is not", func(s *Spec, _ *PieceSpec) { s.Unit.V = 7 }, "unit: choice 7 is none of in, cm and mm"},
		{"a length that was not given but is there", func(s *Spec, _ *PieceSpec) { s.Allowance.V = math.Inf(1) },
			"allowance: inf mm is more than 100 m\nhint: check the number and its unit"},
		{"a ruffle along nothing", func(s *Spec, _ *PieceSpec) {
			s.Ruffles = []RuffleSpec{{Key: "r", Place: fault.Place{Path: "ruffle.r"}, Fullness: Given(2.0), Depth: Given(50.0)}}
		}, "ruffle.r.along: names no edge" + along},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec := madeSpec()
			c.alter(spec, &spec.Pieces[0])
			assert.Equal(t, c.want, spec.Faults().Error())
		})
	}
}
