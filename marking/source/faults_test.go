package source

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// madeSpec is a Spec with something of every kind, made without a file.
func madeSpec() *Spec {
	points := func(all ...plane.Point) Points { return Points{Value: Given(all)} }
	return &Spec{
		Title: Given("Bib"), Unit: Given(length.Millimetre), Allowance: Given(6.0), ClothWidth: Given(900.0), SeeThrough: Given(false),
		Pieces: []PieceSpec{{
			Key: "bib", Cut: Given(2), Layers: Given(2), Fold: Given("centre"), Print: Given(PrintWhole),
			Transfer: Given([]Transfer{Trace, Template}), GrainPoints: points(plane.Point{X: 9}, plane.Point{X: 9, Y: 9}),
			Edges: []EdgeSpec{
				{Key: "centre", Points: points(plane.Point{}, plane.Point{Y: 150})},
				{Key: "hem", Points: points(plane.Point{Y: 150}, plane.Point{X: 100}, plane.Point{}), Hem: Given(12.0), Turn: Given(6.0), Marked: Given(true)},
			},
			Tucks: []TuckSpec{{
				Key: "yoke", Beside: Given("centre"), Width: Given(3.0), Count: Given(2), First: Given(9.0),
				End:    EndSpec{Below: Given("hem"), Length: Given(50.0), Shape: Given(EndStepped), Step: Given(-1.0)},
				Sample: &SampleSpec{Tucks: Given(10), Flat: Given(150.0), Sewn: Given(90.0)},
			}},
			PleatRows: []PleatRowSpec{{Key: "box", Beside: Given("centre"), Depth: Given(10.0), First: Given(60.0), Kind: Given(BoxPleat)}},
			EdgePleats: []EdgePleatSpec{{
				Key: "ease", Edge: Given("hem"), From: Given("centre"), At: Given(0.0), Depth: Given(5.0), Toward: Given("centre"), Length: Given(20.0),
			}},
			Lines:   []LineSpec{{Key: "band", Along: Given("hem"), Distance: Given(20.0)}},
			Notches: []NotchSpec{{Key: "middle", Edge: Given("hem"), From: Given("centre"), At: Given(0.0)}},
			Block:   &BlockSpec{Ends: Given(0.0)},
		}},
		Seams:    []SeamSpec{{Key: "shoulder", Sides: [2][]Text{{Given("bib.hem")}, {Given("bib.hem")}}}},
		Trims:    []TrimSpec{{Key: "lace", Along: []Text{Given("bib.hem")}, Fullness: Given(1.5), Joins: Given(1)}},
		Ruffles:  []RuffleSpec{{Key: "frill", Along: []Text{Given("bib.hem")}, Fullness: Given(2.0), Depth: Given(30.0)}},
		Bindings: []BindingSpec{{Key: "edge", Along: []Text{Given("bib.hem")}, Width: Given(6.0)}},
		Sewing:   SewingSpec{Needle: Given("70")},
		Fit:      FitSpec{Chest: Given(508.0), Waist: Given(500.0), Length: Given(550.0)},
	}
}

func TestFaultsOfAWholeSpec(t *testing.T) {
	assert.Empty(t, madeSpec().Faults())
}

func TestFaults(t *testing.T) {
	const (
		general = "a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\""
		points  = "a point is [x, y], and points are listed as [[0, 0], [3, \"4 1/2\"]]"
		join    = "write join = [\"front.shoulder\", \"back.shoulder\"]; a side of several edges is a list of its own: join = [\"sleeve.cap\", [\"front.armhole\", \"back.armhole\"]]"
		along   = "write along = [\"front.neck\", \"back.neck\"]: piece and edge"
	)
	for _, c := range []struct {
		name   string
		change func(s *Spec, p *PieceSpec)
		want   string
	}{
		{"no piece", func(s *Spec, p *PieceSpec) { s.Pieces = nil }, "no piece is described"},
		{"a unit that is none", func(s *Spec, p *PieceSpec) { s.Unit.V = 7 }, "unit: 7 is none of the choices\nhint: known here are \"in\", \"cm\" or \"mm\""},
		{"cloth narrower than nothing", func(s *Spec, p *PieceSpec) { s.ClothWidth.V = -900 }, "cloth.width: must not be negative, but is -900 mm\nhint: take the minus sign away"},
		{"an allowance that is no number", func(s *Spec, p *PieceSpec) { s.Allowance.V = math.NaN() },
			"allowance: nan mm is not a length\nhint: " + general},
		{"a title of two lines", func(s *Spec, p *PieceSpec) { s.Title.V = "Bib\nfor Ann" },
			"title: has a character that cannot be printed (U+000A)\nhint: write the text on one line, without tabs"},
		{"a file and a place", func(s *Spec, p *PieceSpec) {
			s.File, s.ClothWidth, s.Allowance.V = "bib.toml", GivenAt(0.0, fault.Place{File: "bib.toml", Key: "cloth.width", Line: 3}), -1
		}, "bib.toml: allowance: must not be negative, but is -1 mm\nhint: take the minus sign away\nbib.toml:3: cloth.width: must be more than 0, but is 0 mm"},

		{"pleats from line to line", func(s *Spec, p *PieceSpec) {
			p.PleatRows[0].End = EndSpec{From: Given("centre"), To: Given("hem")}
		}, "piece.bib.pleat.box: only tucks run from one line to another"},
		{"a key with a no-break space", func(s *Spec, p *PieceSpec) { p.Key = "the\u00a0bib" },
			"piece.\"the\\u00a0bib\": the name has a no-break space (U+00A0) behind \"the\"\nhint: take it out, and type what is meant with the space bar"},
		{"a name with a no-break space", func(s *Spec, p *PieceSpec) { p.Fold.V = "centre\u00a0" },
			"piece.bib.fold: the name has a no-break space (U+00A0) behind \"centre\"\nhint: take it out, and type what is meant with the space bar"},
		{"two pieces with one key", func(s *Spec, p *PieceSpec) { s.Pieces = append(s.Pieces, *p) },
			"piece.bib: another piece has the same key\nhint: give each a key of its own"},
		{"a piece without a key", func(s *Spec, p *PieceSpec) { p.Key = "" },
			"piece.\"\": the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"none cut", func(s *Spec, p *PieceSpec) { p.Cut.V = 0 }, "piece.bib.cut: must be from 1 to 99, but is 0"},
		{"no layer", func(s *Spec, p *PieceSpec) { p.Layers.V = 0 }, "piece.bib.layers: must be from 1 to 99, but is 0"},
		{"a word that is not given", func(s *Spec, p *PieceSpec) { p.Fold = Text{V: "centre"} },
			"piece.bib.fold: is set, but not given\nhint: source.Given makes a value that counts"},
		{"a way onto the cloth that is none", func(s *Spec, p *PieceSpec) { p.Transfer.V = []Transfer{Trace, 9, Trace} },
			"piece.bib.transfer: 9 is none of the choices\nhint: known here are \"trace\", \"template\", \"mirror\" or \"prick\"\npiece.bib.transfer: \"trace\" is named twice"},
		{"no way onto the cloth", func(s *Spec, p *PieceSpec) { p.Transfer.V = nil }, "piece.bib.transfer: names no way to bring lines onto cloth"},
		{"a grain of one point", func(s *Spec, p *PieceSpec) { p.GrainPoints.V = p.GrainPoints.V[:1] }, "piece.bib.grain: has 1 point, and needs at least two\nhint: " + points},
		{"a grain of three", func(s *Spec, p *PieceSpec) { p.GrainPoints.V = append(p.GrainPoints.V, plane.Point{}) },
			"piece.bib.grain: has 3 points, and needs two"},

		{"no edge", func(s *Spec, p *PieceSpec) { p.Edges = nil }, "piece.bib: no edge is described"},
		{"two edges with one key", func(s *Spec, p *PieceSpec) { p.Edges[1].Key = "centre" },
			"piece.bib.edge.centre: another edge has the same key\nhint: give each a key of its own"},
		{"an edge without points", func(s *Spec, p *PieceSpec) { p.Edges[0].Points = Points{} }, "piece.bib.edge.centre: \"points\" is missing"},
		{"an edge of one point", func(s *Spec, p *PieceSpec) { p.Edges[0].Points.V = p.Edges[0].Points.V[:1] },
			"piece.bib.edge.centre.points: has 1 point, and needs at least two\nhint: " + points},
		{"points that are not given", func(s *Spec, p *PieceSpec) {
			p.Edges[0].Points = Points{Value: Value[[]plane.Point]{V: p.Edges[0].Points.V}}
		},
			"piece.bib.edge.centre.points: is set, but not given\nhint: source.Given makes a value that counts"},
		{"a point that is no place", func(s *Spec, p *PieceSpec) { p.Edges[1].Points.V[1] = plane.Point{X: math.NaN(), Y: math.Inf(1)} },
			"piece.bib.edge.hem.points: point 2: nan mm is not a length\nhint: " + general +
				"\npiece.bib.edge.hem.points: point 2: inf mm is more than 100 m\nhint: check the number and its unit"},
		{"a hem and an allowance", func(s *Spec, p *PieceSpec) { p.Edges[1].Allowance = Given(6.0) }, "piece.bib.edge.hem.allowance: cannot stand beside \"hem\""},
		{"a turn without a hem", func(s *Spec, p *PieceSpec) { p.Edges[1].Hem = Length{} }, "piece.bib.edge.hem.turn: has no meaning without \"hem\""},

		{"tucks without a count", func(s *Spec, p *PieceSpec) { p.Tucks[0].Count = Count{} }, "piece.bib.tuck.yoke: \"count\" is missing"},
		{"more tucks than are drawn", func(s *Spec, p *PieceSpec) { p.Tucks[0].Count.V = 501 }, "piece.bib.tuck.yoke.count: must be from 1 to 500, but is 501"},
		{"tucks from somewhere to nowhere", func(s *Spec, p *PieceSpec) { p.Tucks[0].End = EndSpec{From: Given("hem")} }, "piece.bib.tuck.yoke.from: has no meaning without \"to\""},
		{"tucks to somewhere from nowhere", func(s *Spec, p *PieceSpec) { p.Tucks[0].End = EndSpec{To: Given("hem")} }, "piece.bib.tuck.yoke.to: has no meaning without \"from\""},
		{"tucks below an edge and between lines", func(s *Spec, p *PieceSpec) { p.Tucks[0].End.From, p.Tucks[0].End.To = Given("hem"), Given("band") },
			"piece.bib.tuck.yoke.below: cannot stand beside \"from\""},
		{"groups without a between", func(s *Spec, p *PieceSpec) { p.Tucks[0].Groups = Given(3) }, "piece.bib.tuck.yoke.groups: has no meaning without \"between\""},
		{"a between without groups", func(s *Spec, p *PieceSpec) { p.Tucks[0].Between = Given(3.0) }, "piece.bib.tuck.yoke.between: has no meaning without \"groups\""},
		{"one group", func(s *Spec, p *PieceSpec) { p.Tucks[0].Groups, p.Tucks[0].Between = Given(1), Given(3.0) }, "piece.bib.tuck.yoke.groups: is 1, which makes no groups"},
		{"between and betweens", func(s *Spec, p *PieceSpec) {
			p.Tucks[0].Groups, p.Tucks[0].Between, p.Tucks[0].Betweens = Given(2), Given(3.0), Given([]float64{3})
		}, "piece.bib.tuck.yoke.between: cannot stand beside \"betweens\""},
		{"betweens of other groups", func(s *Spec, p *PieceSpec) { p.Tucks[0].Groups, p.Tucks[0].Betweens = Given(3), Given([]float64{3}) },
			"piece.bib.tuck.yoke.betweens: has 1, and 3 groups have 2 between them"},
		{"no betweens", func(s *Spec, p *PieceSpec) { p.Tucks[0].Betweens = Given([]float64{}) }, "piece.bib.tuck.yoke.betweens: has no length in it"},
		{"betweens that are not given", func(s *Spec, p *PieceSpec) { p.Tucks[0].Betweens.V = []float64{3} },
			"piece.bib.tuck.yoke.betweens: is set, but not given\nhint: source.Given makes a value that counts"},
		{"betweens that are no lengths", func(s *Spec, p *PieceSpec) { p.Tucks[0].Betweens = Given([]float64{-3, math.NaN()}) },
			"piece.bib.tuck.yoke.betweens: length 1: must not be negative, but is -3 mm\nhint: take the minus sign away\n" +
				"piece.bib.tuck.yoke.betweens: length 2: nan mm is not a length\nhint: " + general},
		{"more tucks in groups than are drawn", func(s *Spec, p *PieceSpec) { p.Tucks[0].Groups, p.Tucks[0].Between = Given(300), Given(3.0) },
			"piece.bib.tuck.yoke: 300 groups of 2 are 600 tucks, and a set has at most 500"},
		{"tucks that end nowhere", func(s *Spec, p *PieceSpec) { p.Tucks[0].End.Length = Length{} }, "piece.bib.tuck.yoke.below: has no meaning without \"length\""},
		{"steps without a step", func(s *Spec, p *PieceSpec) { p.Tucks[0].End.Step = Length{} }, "piece.bib.tuck.yoke: \"step\" is missing"},
		{"a step without steps", func(s *Spec, p *PieceSpec) { p.Tucks[0].End.Shape.V = EndLevel },
			"piece.bib.tuck.yoke.step: has no meaning without end = \"stepped\""},
		{"a sample without tucks", func(s *Spec, p *PieceSpec) { p.Tucks[0].Sample.Tucks.V = 0 }, "piece.bib.tuck.yoke.sample.tucks: must be from 1 to 500, but is 0"},
		{"two pleats with one key", func(s *Spec, p *PieceSpec) { p.EdgePleats[0].Key = "box" },
			"piece.bib.pleat.box: another pleat has the same key\nhint: give each a key of its own"},
		{"box pleats that are pressed", func(s *Spec, p *PieceSpec) { p.PleatRows[0].Press = Given(PressedAway) },
			"piece.bib.pleat.box.press: cannot stand beside \"kind\""},
		{"pleats without a depth", func(s *Spec, p *PieceSpec) { p.PleatRows[0].Depth.V = 0 }, "piece.bib.pleat.box.depth: must be more than 0, but is 0 mm"},
		{"two pleats in an edge at one place", func(s *Spec, p *PieceSpec) { p.EdgePleats[0].Count = Given(2) }, "piece.bib.pleat.ease: \"spacing\" is missing"},
		{"a line nowhere", func(s *Spec, p *PieceSpec) { p.Lines[0] = LineSpec{Key: "band"} }, "piece.bib.line.band: where the line runs is missing"},
		{"a line without points", func(s *Spec, p *PieceSpec) {
			p.Lines[0] = LineSpec{Key: "band", Points: Points{Value: Given([]plane.Point{})}}
		},
			"piece.bib.line.band.points: has no point, and needs at least two\nhint: " + points},
		{"a line along an edge that runs to another", func(s *Spec, p *PieceSpec) { p.Lines[0].From, p.Lines[0].To = Given("centre"), Given("hem") },
			"piece.bib.line.band.from: has no meaning without \"points\"\npiece.bib.line.band.to: has no meaning without \"points\""},
		{"a line of a kind that is none", func(s *Spec, p *PieceSpec) { p.Lines[0].Kind = Given(LineKind(-1)) },
			"piece.bib.line.band.kind: -1 is none of the choices\nhint: known here are \"fold\", \"centre\", \"placement\" or \"stitch\""},
		{"a notch nowhere", func(s *Spec, p *PieceSpec) { p.Notches[0].At = Length{} }, "piece.bib.notch.middle: \"at\" is missing"},
		{"a block less than nothing", func(s *Spec, p *PieceSpec) { p.Block.Ends.V = -1 }, "piece.bib.block.ends: must not be negative, but is -1 mm\nhint: take the minus sign away"},

		{"a seam with an empty side", func(s *Spec, p *PieceSpec) { s.Seams[0].Sides[1] = nil }, "seam.shoulder.join: side 2 names no edge\nhint: " + join},
		{"one name of two that meet", func(s *Spec, p *PieceSpec) { s.Seams[0].Meet[1] = Given("hem") }, "seam.shoulder.meet: names an edge beside one side alone"},
		{"a name that is empty", func(s *Spec, p *PieceSpec) { s.Seams[0].Meet = [2]Text{Given("hem"), Given("")} },
			"seam.shoulder.meet: the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"a gathered seam with ease", func(s *Spec, p *PieceSpec) { s.Seams[0].Gathered, s.Seams[0].Ease = true, Given(9.0) }, ""},
		{"a gathered seam within something", func(s *Spec, p *PieceSpec) { s.Seams[0].Gathered, s.Seams[0].Within = true, Given(9.0) },
			"seam.shoulder.within: cannot stand beside \"gathered\""},
		{"a trim along nothing", func(s *Spec, p *PieceSpec) { s.Trims[0].Along = nil }, "trim.lace.along: names no edge\nhint: " + along},
		{"a trim along too much", func(s *Spec, p *PieceSpec) { s.Trims[0].Along = slices.Repeat(s.Trims[0].Along, 101) },
			"trim.lace.along: names 101 edges; at most 100 are measured\nhint: divide it"},
		{"a trim along an edge without a name", func(s *Spec, p *PieceSpec) { s.Trims[0].Along[0].V = "" },
			"trim.lace.along: the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"a ruffle without fullness", func(s *Spec, p *PieceSpec) { s.Ruffles[0].Fullness = Factor{} }, "ruffle.frill: \"fullness\" is missing"},
		{"a ruffle that shrinks", func(s *Spec, p *PieceSpec) { s.Ruffles[0].Fullness.V = math.NaN() },
			"ruffle.frill.fullness: must be from 1 to 20, but is nan\nhint: it is a number such as 2 or \"1 1/2\": how many times as long as the edge"},
		{"a binding that never joins", func(s *Spec, p *PieceSpec) { s.Bindings[0].Joins = Given(0) }, "binding.edge.joins: must be from 1 to 500, but is 0"},
		{"a child of no girth", func(s *Spec, p *PieceSpec) { s.Fit.Chest.V = 0 }, "fit.chest: must be more than 0, but is 0 mm"},
		{"a needle of too many letters", func(s *Spec, p *PieceSpec) { s.Sewing.Needle.V = strings.Repeat("7", 201) },
			"sewing.needle: the text has 201 letters\nhint: a text has at most 200 letters"},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec := madeSpec()
			c.change(spec, &spec.Pieces[0])
			assert.EqualError(t, spec.Faults().Sorted(), c.want)
		})
	}
	assert.EqualError(t, (*Spec)(nil).Faults(), "no piece is described")
}
