package marking

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// bibFile describes a tucked bib; bibSpec makes the same without a file.
const bibFile = `title = "Bib"
unit = "mm"

[piece.bib]
cut = 1
fold = "centre"
drawn = "finished"
transfer = "template"

[piece.bib.edge.centre]
points = [[0, 0], [0, 150]]

[piece.bib.edge.neck]
points = [[0, 150], [25, 153], [50, 175]]
smooth = true
allowance = 6

[piece.bib.edge.side]
points = [[50, 175], [100, 150], [100, 0]]
allowance = 6

[piece.bib.edge.hem]
points = [[100, 0], [0, 0]]
hem = 12

[piece.bib.tuck.yoke]
beside = "centre"
width = 3
count = 2
first = 9
press = "away"
below = "neck"
length = 50
end = "follow"

[piece.bib.line.band]
points = [[25, 25], [75, 25]]
kind = "placement"

[trim.lace]
along = ["bib.neck"]
kind = "lace"
`

func bibSpec() *Spec {
	bib := Place{Path: "piece.bib"}
	points := func(at Place, points ...plane.Point) Points {
		return Points{Value: GivenAt(points, at.Under("points"))}
	}
	edge := func(key string, drawn ...plane.Point) EdgeSpec {
		at := bib.Under("edge").Under(key)
		return EdgeSpec{Key: key, Place: at, Points: points(at, drawn...)}
	}
	centre := edge("centre", plane.Point{}, plane.Point{Y: 150})
	neck := edge("neck", plane.Point{Y: 150}, plane.Point{X: 25, Y: 153}, plane.Point{X: 50, Y: 175})
	neck.Smooth, neck.Allowance = true, Given(6.0)
	side := edge("side", plane.Point{X: 50, Y: 175}, plane.Point{X: 100, Y: 150}, plane.Point{X: 100})
	side.Allowance = Given(6.0)
	hem := edge("hem", plane.Point{X: 100}, plane.Point{})
	hem.Hem = Given(12.0)
	yoke, band, lace := bib.Under("tuck").Under("yoke"), bib.Under("line").Under("band"), Place{Path: "trim.lace"}
	return &Spec{
		Title: Given("Bib"), Unit: Given(Millimetre),
		Pieces: []PieceSpec{{
			Key: "bib", Place: bib, Cut: Given(1), Fold: GivenAt("centre", bib.Under("fold")),
			Drawn: Given(Finished), Transfer: Given([]Transfer{Template}),
			Edges: []EdgeSpec{centre, neck, side, hem},
			Tucks: []TuckSpec{{
				Key: "yoke", Place: yoke, Beside: GivenAt("centre", yoke.Under("beside")),
				Width: Given(3.0), Count: Given(2), First: Given(9.0), Press: Given(PressedAway),
				End: EndSpec{Below: GivenAt("neck", yoke.Under("below")), Length: Given(50.0), End: Given(Follow)},
			}},
			Lines: []LineSpec{{
				Key: "band", Place: band, Kind: Given(PlacementLine),
				Points: points(band, plane.Point{X: 25, Y: 25}, plane.Point{X: 75, Y: 25}),
			}},
		}},
		Trims: []TrimSpec{{
			Key: "lace", Place: lace, Kind: Given(Lace), Along: []Text{GivenAt("bib.neck", lace.Under("along"))},
		}},
	}
}

// A pattern that is made without a file is the one that a file describes.
func TestSpecWithoutAFile(t *testing.T) {
	made, err := Check(bibSpec())
	require.NoError(t, err)
	spec, err := Read("bib.toml", []byte(bibFile), hasLetter)
	require.NoError(t, err)
	read, err := Check(spec)
	require.NoError(t, err)

	require.Len(t, MarkingsOf(made), 2)
	assert.Equal(t, MarkingsOf(read), MarkingsOf(made))
	require.Len(t, made.Remarks, len(read.Remarks))
	for i, r := range read.Remarks {
		r.File, r.Line = "", 0
		assert.Equal(t, r, made.Remarks[i])
		read.Remarks[i] = r
	}
	assert.Equal(t, ReportOf(read, OwnUnit), ReportOf(made, OwnUnit))
	assert.Equal(t, string(FiguresOf(read).JSON()), string(FiguresOf(made).JSON()))
}

// What is said of a pattern without a file has the dotted place, and no line.
func TestSpecWithoutAFileIsSpokenOf(t *testing.T) {
	spec := bibSpec()
	spec.Unit, spec.Pieces[0].Tucks[0].Width = Value[Unit]{}, Given(1.0)
	pattern, err := Check(spec)
	require.NoError(t, err)
	var remarks []string
	for _, r := range pattern.Remarks {
		remarks = append(remarks, r.String())
	}
	assert.Equal(t, []string{
		`no unit is given, so bare numbers were taken for inches; unit = "in", "cm" or "mm" says it`,
		"piece.bib.tuck.yoke: tucks of 1 mm are narrower than 1/16 in, and hard to keep even; a twin needle or a corded foot makes them easier",
		"piece.bib.tuck.yoke: fold line and stitching lie 1 mm apart, finer than a marking pen draws; mark the fold lines only",
		`piece.bib.tuck.yoke: the tucked width is narrower than "neck": finished, the tucks reach 3/8 in from "centre", and "neck" reaches 1 15/16 in; the rest of it is plain`,
	}, remarks)

	for _, c := range []struct {
		name   string
		change func(*PieceSpec)
		want   string
	}{
		{"an edge that is not there", func(p *PieceSpec) { p.Fold.V = "center" },
			"piece.bib.fold: there is no edge \"center\" in this piece\nhint: did you mean \"centre\"?"},
		{"two points that are one", func(p *PieceSpec) { p.Edges[2].Points.V[1] = p.Edges[2].Points.V[0] },
			"piece.bib.edge.side: points 1 and 2 are the same\nhint: take one of them out"},
		{"an open corner", func(p *PieceSpec) { p.Edges[3].Points.V[0].X += 5 },
			`piece.bib.edge.side: the outline is open between "side" and "hem": their ends at (100 mm, 0 mm) and (105 mm, 0 mm) are 5 mm apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"tucks beside nothing", func(p *PieceSpec) { p.Tucks[0].Beside.V = "middle" },
			"piece.bib.tuck.yoke.beside: there is no edge or line \"middle\" in this piece\nhint: there is \"hem\", \"side\", \"neck\", \"centre\", \"band\""},
		{"a line off the piece", func(p *PieceSpec) { p.Lines[0].Points.V[1].X = 500 },
			"piece.bib.line.band.points: point 2, (500 mm, 25 mm), lies outside the piece\nhint: is a number wrong? x comes first, then y"},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec := bibSpec()
			c.change(&spec.Pieces[0])
			_, err := Check(spec)
			assert.EqualError(t, err, c.want)
		})
	}
}
