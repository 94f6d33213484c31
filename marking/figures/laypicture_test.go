package figures

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/lay"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// inchPart is a stretch of cloth of which both ends are given in inches, with one thing on
// it.
func inchPart(from, to float64, one lay.Placed) lay.Part {
	box := plane.Box{Min: plane.Point{Y: from}, Max: plane.Point{X: 8, Y: to}}
	for _, q := range box.Outline() {
		one.Outline = append(one.Outline, q.Mul(25.4))
	}
	return lay.Part{From: from * 25.4, To: to * 25.4, Placed: []lay.Placed{one}}
}

// folded is the same on folded cloth.
func folded(part lay.Part) lay.Part {
	part.Folded = true
	return part
}

// The parts of a lay become bands of its picture, one where the other ends, as it is
// printed as well; folded cloth is half as wide. What lies on them is named by how.
func TestLayPicture(t *testing.T) {
	block, sleeve := lay.Placed{Name: "block"}, lay.Placed{Name: "sleeve"}
	front, cuff := lay.Placed{Name: "front", OnFold: true}, lay.Placed{Name: "cuff", Upper: true}
	two := []lay.Part{inchPart(0, 15, block), folded(inchPart(15, 30.2, sleeve))}
	for _, c := range []struct {
		name  string
		parts []lay.Part
		unit  length.Unit
		units Units
		bands []string
		names []string
	}{
		{"single cloth alone", []lay.Part{inchPart(0, 1.25, block)}, length.Inch, OwnUnit, []string{"single: 0 to 1 1/4 in"}, []string{"block"}},
		{"folded cloth alone", []lay.Part{folded(inchPart(0, 10, front))}, length.Inch, OwnUnit,
			[]string{"folded lengthwise, fold at the left: 0 to 10 in"}, []string{"front, on the fold"}},
		{"out of the upper layer", []lay.Part{folded(inchPart(0, 10, cuff))}, length.Inch, OwnUnit,
			[]string{"folded lengthwise, fold at the left: 0 to 10 in"}, []string{"cuff, upper layer only"}},
		{"single, and then folded", two, length.Inch, OwnUnit,
			[]string{"single: 0 to 15 in", "folded lengthwise, fold at the left: 15 to 30 1/4 in"}, []string{"block", "sleeve"}},
		{"in centimetres", two, length.Centimetre, OwnUnit,
			[]string{"single: 0 to 38.1 cm", "folded lengthwise, fold at the left: 38.1 to 76.8 cm"}, []string{"block", "sleeve"}},
		{"in both", two, length.Inch, AllUnits,
			[]string{"single: 0 (0) to 15 in (381 mm)", "folded lengthwise, fold at the left: 15 (381) to 30 1/4 in (767 mm)"}, []string{"block", "sleeve"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			laid := &lay.Lay{Width: 1100, Length: c.parts[len(c.parts)-1].To, Parts: c.parts}
			pic := layPicture(laid, writer{unit: c.unit, units: c.units})
			assert.Equal(t, []float64{1100, laid.Length}, []float64{pic.Width, pic.Height})
			var bands, names []string
			for i, b := range pic.Bands {
				bands = append(bands, b.Text)
				assert.Equal(t, []float64{c.parts[i].From, c.parts[i].To}, []float64{b.From, b.To}, "band %d", i)
				width := 1100.0
				if c.parts[i].Folded {
					width = 550
				}
				assert.Equal(t, width, b.Width, "width of band %d", i)
				assert.Equal(t, c.parts[i].Placed[0].Outline, pic.Shapes[i].Outline)
				names = append(names, pic.Shapes[i].Name)
			}
			assert.Equal(t, c.bands, bands)
			assert.Equal(t, c.names, names)
		})
	}
}

// What is too wide is told before anything is bought. The skirt is 40 in along the cloth
// and 10 in across it, the front 10 in and 5 in: 40 × 10 and (10 + 9) / 2 × 5 of 44 × 40
// square inches.
func TestClothToBuy(t *testing.T) {
	const front, skirt = "centre: 0,0 0,10\ntop: 0,10 5,10\nside: 5,10 5,1\nhem: 5,1 0,0\n", "a: 0,0 40,0\nb: 40,0 40,10 0,10 0,0\n"
	for _, c := range []struct {
		name, beside string
		units        Units
		want         []string
	}{
		{"wide enough", "[cloth]\nwidth = 44\n", OwnUnit, []string{"buy 1 1/8 yd of cloth that is 44 in between the selvages: laid out, the pieces take 40 in, and fill 25 % of that"}},
		{"in both units", "[cloth]\nwidth = 44\n", AllUnits, []string{"buy 1 1/8 yd (1.05 m) of cloth that is 44 in (1118 mm) between the selvages: laid out, the pieces take 40 in (1016 mm), and fill 25 % of that"}},
		{"too narrow for one", "[cloth]\nwidth = 8\n", OwnUnit, []string{"! skirt is wider than the cloth and is not reckoned in",
			"! the rest takes 10 in of cloth that is 8 in between the selvages, which is not enough for the whole"}},
		{"too narrow for all", "[cloth]\nwidth = 4\n", OwnUnit, []string{"! front is wider than the cloth and is not reckoned in", "! skirt is wider than the cloth and is not reckoned in"}},
		{"of no known width", "", OwnUnit, []string{"the width of the cloth is not given, so how much to buy is not reckoned", "in the file: with [cloth] and, say, width = \"44 in\" this says how much to buy"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "allowance = 0\n"+c.beside+sketch.Front(front)+sketch.Piece("skirt", skirt))
			laid := lay.Of(p)
			told := toldOf(clothSection(p, laid, writer{unit: p.Unit, units: c.units}).Lines)
			if laid != nil && laid.Length > 0 {
				assert.Contains(t, told[len(told)-1], "This is no promise of the least cloth. It has nothing to spare for shrinking")
				told = told[:len(told)-1]
			}
			assert.Equal(t, c.want, told)
		})
	}
}
