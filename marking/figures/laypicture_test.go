package figures

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/lay"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
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
			[]string{"single: 0 (0) to 15 in (381 mm)", "folded lengthwise, fold at the left: 15 (381) to 30 1/4 in (768 mm)"}, []string{"block", "sleeve"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			cloth := &lay.Cloth{Width: 1100, Length: c.parts[len(c.parts)-1].To, Parts: c.parts}
			pic := layPicture(cloth, writer{c.unit, c.units})
			assert.Equal(t, []float64{1100, cloth.Length}, []float64{pic.Width, pic.Height})
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
