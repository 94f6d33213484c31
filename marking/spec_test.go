package marking_test

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/fault"
	"tuckmark/marking/figures"
	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
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

func bibSpec() *source.Spec {
	bib := fault.Place{Path: "piece.bib"}
	points := func(at fault.Place, points ...plane.Point) source.Points {
		return source.Points{Value: source.GivenAt(points, at.Under("points"))}
	}
	edge := func(key string, drawn ...plane.Point) source.EdgeSpec {
		at := bib.Under("edge").Under(key)
		return source.EdgeSpec{Key: key, Place: at, Points: points(at, drawn...)}
	}
	centre := edge("centre", plane.Point{}, plane.Point{Y: 150})
	neck := edge("neck", plane.Point{Y: 150}, plane.Point{X: 25, Y: 153}, plane.Point{X: 50, Y: 175})
	neck.Smooth, neck.Allowance = true, source.Given(6.0)
	side := edge("side", plane.Point{X: 50, Y: 175}, plane.Point{X: 100, Y: 150}, plane.Point{X: 100})
	side.Allowance = source.Given(6.0)
	hem := edge("hem", plane.Point{X: 100}, plane.Point{})
	hem.Hem = source.Given(12.0)
	yoke, band, lace := bib.Under("tuck").Under("yoke"), bib.Under("line").Under("band"), fault.Place{Path: "trim.lace"}
	return &source.Spec{
		Title: source.Given("Bib"), Unit: source.Given(length.Millimetre),
		Pieces: []source.PieceSpec{{
			Key: "bib", Place: bib, Cut: source.Given(1), Fold: source.GivenAt("centre", bib.Under("fold")),
			Drawn: source.Given(source.DrawnFinished), Transfer: source.Given([]source.Transfer{source.Template}),
			Edges: []source.EdgeSpec{centre, neck, side, hem},
			Tucks: []source.TuckSpec{{
				Key: "yoke", Place: yoke, Beside: source.GivenAt("centre", yoke.Under("beside")),
				Width: source.Given(3.0), Count: source.Given(2), First: source.Given(9.0), Press: source.Given(source.PressedAway),
				End: source.EndSpec{Below: source.GivenAt("neck", yoke.Under("below")), Length: source.Given(50.0), Shape: source.Given(source.EndFollow)},
			}},
			Lines: []source.LineSpec{{
				Key: "band", Place: band, Kind: source.Given(source.PlacementLine),
				Points: points(band, plane.Point{X: 25, Y: 25}, plane.Point{X: 75, Y: 25}),
			}},
		}},
		Trims: []source.TrimSpec{{
			Key: "lace", Place: lace, Kind: source.Given(source.Lace), Along: []source.Text{source.GivenAt("bib.neck", lace.Under("along"))},
		}},
	}
}

// printed is the PDF of a pattern with its figures.
func printed(t *testing.T, p *garment.Pattern) []byte {
	t.Helper()
	a4, err := paper.Find("a4")
	require.NoError(t, err)
	told := figures.Report(p, figures.OwnUnit)
	var pdf bytes.Buffer
	summary, err := pdfout.Draw(&pdf, arrange.Set{Title: p.Title, Unit: p.Unit, Pieces: sheet.Of(p), Report: &told}, a4)
	require.NoError(t, err)
	assert.NotEmpty(t, summary.Sheets)
	assert.Positive(t, summary.Figures, "pages of figures")
	assert.Empty(t, summary.Left)
	return pdf.Bytes()
}

// A pattern that is made without a file is the one that a file describes, and is drawn and
// printed as that is, to the byte.
func TestSpecWithoutAFile(t *testing.T) {
	made, err := marking.Check(bibSpec())
	require.NoError(t, err)
	spec, err := source.Read("bib.toml", []byte(bibFile), sketch.HasLetter)
	require.NoError(t, err)
	read, err := marking.Check(spec)
	require.NoError(t, err)

	require.Len(t, sheet.Of(made), 2)
	assert.Equal(t, sheet.Of(read), sheet.Of(made))
	require.Len(t, made.Remarks, len(read.Remarks))
	for i, r := range read.Remarks {
		r.File, r.Line = "", 0
		assert.Equal(t, r, made.Remarks[i])
		read.Remarks[i] = r
	}
	assert.Equal(t, figures.Report(read, figures.OwnUnit), figures.Report(made, figures.OwnUnit))
	assert.Equal(t, string(figures.JSON(read)), string(figures.JSON(made)))
	assert.True(t, bytes.Equal(printed(t, read), printed(t, made)), "the PDFs differ")
}

// What is said of a pattern without a file has the dotted place, and no line.
func TestSpecWithoutAFileIsSpokenOf(t *testing.T) {
	spec := bibSpec()
	spec.Unit, spec.Pieces[0].Tucks[0].Width = source.Value[length.Unit]{}, source.Given(1.0)
	pattern, err := marking.Check(spec)
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
		change func(*source.PieceSpec)
		want   string
	}{
		{"an edge that is not there", func(p *source.PieceSpec) { p.Fold.V = "center" },
			"piece.bib.fold: there is no edge \"center\" in this piece\nhint: did you mean \"centre\"?"},
		{"two points that are one", func(p *source.PieceSpec) { p.Edges[2].Points.V[1] = p.Edges[2].Points.V[0] },
			"piece.bib.edge.side: points 1 and 2 are the same\nhint: take one of them out"},
		{"an open corner", func(p *source.PieceSpec) { p.Edges[3].Points.V[0].X += 5 },
			`piece.bib.edge.side: the outline is open between "side" and "hem": their ends at (100 mm, 0 mm) and (105 mm, 0 mm) are 5 mm apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"tucks beside nothing", func(p *source.PieceSpec) { p.Tucks[0].Beside.V = "middle" },
			"piece.bib.tuck.yoke.beside: there is no edge or line \"middle\" in this piece\nhint: there is \"hem\", \"side\", \"neck\", \"centre\", \"band\""},
		{"a line off the piece", func(p *source.PieceSpec) { p.Lines[0].Points.V[1].X = 500 },
			"piece.bib.line.band.points: point 2, (500 mm, 25 mm), lies outside the piece\nhint: is a number wrong? x comes first, then y"},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec := bibSpec()
			c.change(&spec.Pieces[0])
			_, err := marking.Check(spec)
			assert.EqualError(t, err, c.want)
		})
	}
}
