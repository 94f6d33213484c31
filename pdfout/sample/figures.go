package sample

import (
	"fmt"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Oblong is a shape of a picture: a rectangle with its lower left corner at a
// place.
func Oblong(name string, x, y, w, h float64) mark.Shape {
	return mark.Shape{Name: name, Outline: plane.Path{{X: x, Y: y}, {X: x + w, Y: y}, {X: x + w, Y: y + h}, {X: x, Y: y + h}, {X: x, Y: y}}}
}

// Cells makes rows of cells.
func Cells(rows ...[]string) []mark.Row {
	var all []mark.Row
	for _, r := range rows {
		all = append(all, mark.Row{Cells: r})
	}
	return all
}

// totalled is rows with one more under them, which is their total.
func totalled(rows []mark.Row, cells ...string) []mark.Row {
	return append(rows, mark.Row{Cells: cells, Total: true})
}

// DressFigures are the figures of a whole dress, with everything a report may
// have.
func DressFigures() *mark.Report {
	cloth := &mark.Picture{
		Caption: "The pieces as they may lie on cloth 44 in wide, the folded edge at the left. This picture is small and not to be measured.",
		Width:   44 * Inch, Height: 74 * Inch,
		Bands: []mark.Band{
			{From: 0, To: 46 * Inch, Width: 22 * Inch, Text: "cloth folded lengthwise"},
			{From: 46 * Inch, To: 74 * Inch, Width: 44 * Inch, Text: "cloth laid single from here on, to the end"},
		},
	}
	at := func(p plane.Path, x, y float64) plane.Path { return p.Moved(plane.Point{X: x * Inch, Y: y * Inch}) }
	front := Bodice().Outline
	cloth.Shapes = []mark.Shape{
		Oblong("Skirt panel", 2, 2, 18.2*Inch, 25*Inch),
		{Name: "Front", Outline: at(front, 0, 28)},
		{Name: "Back", Outline: at(front, 8, 28)},
		Oblong("Neck facing", 15.5*Inch, 28*Inch, 5*Inch, 3*Inch),
		Oblong("Pocket", 15.5*Inch, 32*Inch, 4.5*Inch, 5*Inch),
		Oblong("Placket", 15.5*Inch, 38*Inch, 6*Inch, 1.25*Inch),
		Oblong("Tie that goes twice round the waist", 0.5*Inch, 47*Inch, 1.25*Inch, 26*Inch),
		Oblong("Tie that goes twice round the waist", 2.25*Inch, 47*Inch, 1.25*Inch, 26*Inch),
		Oblong("Sleeve", 5*Inch, 47*Inch, 12*Inch, 9*Inch),
		Oblong("Sleeve", 5*Inch, 57*Inch, 12*Inch, 9*Inch),
		Oblong("Sleeve band", 5*Inch, 67*Inch, 7*Inch, 1.5*Inch),
		Oblong("Sleeve band", 13*Inch, 67*Inch, 7*Inch, 1.5*Inch),
		Oblong("Loop", 18*Inch, 48*Inch, 0.5*Inch, 2*Inch),
		Oblong("Stay", 18*Inch, 52*Inch, 0.25*Inch, 0.5*Inch),
	}
	return &mark.Report{
		Title: "Sunday pinafore, size 18 months",
		Notes: []string{
			"Lengths are printed to the nearest 1/16 in. Numbers in a column add up as they are printed.",
			"What a tuck takes up was reckoned; sew the sample before you cut, and write what it takes up into the file.",
		},
		Sections: []mark.Section{
			{
				Title: "Pieces to cut",
				Tables: []mark.Table{{
					Heads: []string{"piece", "how many", "width flat", "length flat", "width sewn", "length sewn"},
					Rows: Cells(
						[]string{"Front, on the fold", "1", "17 11/16 in", "14 3/4 in", "13 in", "14 in"},
						[]string{"Back", "2", "9 1/4 in", "14 3/4 in", "6 1/2 in", "14 in"},
						[]string{"Skirt panel with five growth tucks above a hem that can be let down twice", "2", "18 1/8 in", "25 3/16 in", "18 1/8 in", "20 in"},
						[]string{"Sleeve", "2", "12 in", "9 in", "7 in", "8 1/4 in"},
						[]string{"Tie that goes twice round the waist", "2", "1 1/4 in", "26 in", "less than 1/16 in", "25 1/2 in"},
					),
					Lines: []mark.Sentence{{Text: "The front is cut after it is tucked: cut a block of 19 in by 16 in first.", Warning: true}},
				}},
			},
			{
				Title: "Tucks and pleats",
				Tables: []mark.Table{
					{
						Title: "Front: six tucks at either side of the centre",
						Heads: []string{"", "fold to fold", "width of a tuck", "takes up each", "all"},
						Rows: totalled(Cells(
							[]string{"tucks 1 to 6", "3/8 in", "1/8 in", "1/4 in", "1 1/2 in"},
							[]string{"tucks 7 to 12", "3/8 in", "1/8 in", "1/4 in", "1 1/2 in"},
							[]string{"inverted pleat", "", "3/4 in", "1 1/2 in", "1 1/2 in"},
						), "taken up in all", "", "", "", "4 1/2 in"),
						Lines: []mark.Sentence{
							{Text: "takes up in the cloth you sew with, all tucks together:", Blank: true},
							{Text: "Two tucks lie 1/16 in nearer to the armhole than their own width, so that the seam would catch the edge of the last tuck; move the set toward the centre by at least 1/8 in, or leave out tuck 6.", Warning: true},
						},
					},
					{
						Title: "Skirt panel: growth tucks",
						Heads: []string{"", "from the lower edge"},
						Rows:  Cells([]string{"tuck 1", "4 1/4 in"}, []string{"tuck 2", "6 1/4 in"}, []string{"tuck 3", "8 1/4 in"}),
					},
				},
				Lines: []mark.Sentence{{Blank: true}, {Text: "Measured by, and when:", Blank: true}},
			},
			{
				Title: "Cloth",
				Tables: []mark.Table{{
					Heads: []string{"", "cloth 36 in wide", "cloth 44 in wide", "cloth 54 in wide"},
					Rows: totalled(Cells(
						[]string{"folded", "52 in", "46 in", "40 1/2 in"},
						[]string{"single", "31 1/4 in", "28 in", "26 in"},
					), "to buy", "83 1/4 in", "74 in", "66 1/2 in"),
				}},
				Lines:   []mark.Sentence{{Text: "Add what the cloth shrinks when it is washed: 5 in for each 100 in, by a guess; wash it first and measure."}},
				Picture: cloth,
			},
		},
	}
}

// ColumnFigures are figures of which every table fits a column, with a picture.
func ColumnFigures() *mark.Report {
	dress := DressFigures()
	r := &mark.Report{Title: dress.Title, Notes: dress.Notes}
	edges := mark.Section{Title: "Edges"}
	for _, name := range []string{"Front, half of it", "Back, both", "Neck facing strip, cut along the grain of the cloth", "Sleeve, both", "Sleeve band, both", "Pocket, both", "Collar", "Cuff"} {
		edges.Tables = append(edges.Tables, mark.Table{
			Title: name, Heads: []string{"", "cut", "sewn", "allowance"},
			Rows: Cells(
				[]string{"hem", "9", "8 7/16", "hem 2, turn 1/4"},
				[]string{"side", "11 3/16", "8 1/2", "3/8"},
				[]string{"the armhole, from the side to the shoulder", "6 13/16", "6", "3/8"},
				[]string{"shoulder", "2 1/8", "1 3/16", "3/8"},
			),
			Lines: []mark.Sentence{{Text: "sewn: with the tucks and pleats in"}, {Text: "The seam is 1/8 in too long.", Warning: true}},
		})
	}
	seams := mark.Section{Title: "Seams", Tables: []mark.Table{{
		Title: "side", Heads: []string{"", "cut", "sewn"},
		Rows: totalled(Cells([]string{"Front, side", "11 3/16", "8 1/2"}, []string{"Back, side", "11 3/16", "8 9/16"}), "difference", "0", "1/16"),
	}}, Lines: []mark.Sentence{{Text: "Sewn, they match within 1/16 in, and that is as near as a ruler shows it."}}}
	cloth := dress.Sections[2]
	cloth.Tables = nil
	lay := *cloth.Picture
	lay.Shapes = slices.DeleteFunc(slices.Clone(lay.Shapes), func(s mark.Shape) bool { return !slices.Contains([]string{"Front", "Back", "Pocket"}, s.Name) })
	cloth.Picture = &lay
	settings := mark.Section{Title: "Settings to keep", Lines: []mark.Sentence{{Text: "stitch length:", Blank: true}, {Text: "needle:", Blank: true}}}
	r.Sections = []mark.Section{edges, seams, cloth, settings}
	return r
}

// ScrapFigures are ColumnFigures with a picture of many small things.
func ScrapFigures() *mark.Report {
	r := ColumnFigures()
	cloth := *r.Sections[2].Picture
	cloth.Shapes = nil
	for i := range 40 {
		x, y := float64(i%4)*5.5*Inch, float64(i/4)*4.5*Inch
		cloth.Shapes = append(cloth.Shapes, Oblong(fmt.Sprint("Flap no. ", i+1), x, y, 5*Inch, 1.3*Inch))
	}
	r.Sections[2].Picture = &cloth
	return r
}

// LongFigures are more than a page holds, in every part of a report.
func LongFigures() *mark.Report {
	r := DressFigures()
	long := mark.Section{Title: "Marks along the seams"}
	for k := range 4 {
		t := mark.Table{Title: fmt.Sprintf("Seam no. %d", k+1), Heads: []string{"mark", "from the start", "from the end"}}
		for i := range 20 + 23*k {
			t.Rows = append(t.Rows, Cells([]string{fmt.Sprintf("mark %d.%d", k+1, i+1), fmt.Sprintf("%d 3/16 in", i+1), fmt.Sprintf("%d 1/2 in", 90-i)})...)
		}
		t.Rows = totalled(t.Rows, "in all", "91 11/16 in", "91 11/16 in")
		long.Tables = append(long.Tables, t)
	}
	r.Sections = append(r.Sections, long)
	return r
}

// WideTable is a table too wide for a column of any paper.
func WideTable() mark.Table {
	return mark.Table{Rows: Cells(slices.Concat([]string{"Skirt"}, slices.Repeat([]string{"17 11/16 in"}, 8)))}
}

// Cautions are some sentences to be heeded.
func Cautions() []string {
	return []string{
		"Try the marker on a scrap of the same cloth, and take it out with cold water, before any iron comes near it.",
		"Cords and ribbons at a child's neck, hood, waist or hem can catch, and nightwear and robes can burn: follow the safety rules where you live.",
		"Count your pins in, and count them out again.",
	}
}
