package made

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// BibFile describes a tucked bib, with a trim.
const BibFile = `title = "Bib"
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

// BibSpec is what BibFile describes, made without a file; it is another at each call.
func BibSpec() *source.Spec {
	bib := fault.Place{Key: "piece.bib"}
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
	yoke, band, lace := bib.Under("tuck").Under("yoke"), bib.Under("line").Under("band"), fault.Place{Key: "trim.lace"}
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
