package marking

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The parts of a lay become bands of its picture, one where the other ends, as it is
// printed as well; folded cloth is half as wide, and everything lies on its band.
func TestLayPicture(t *testing.T) {
	for _, c := range []struct {
		name  string
		items string
		unit  Unit
		words Wording
		width float64 // of the cloth, in inches
		want  []string
	}{
		{
			"single cloth alone", "strip: 0,0 8,0 8,1.25 0,1.25 | torn", Inch, OwnUnit, 44,
			[]string{"single: 0 to 1 1/4 in"},
		},
		{
			"folded cloth alone", "front: 0,0 10,0 10,10 0,10 | fold 0,10 0,0", Inch, OwnUnit, 44,
			[]string{"folded lengthwise, fold at the left: 0 to 10 in"},
		},
		{
			"what is torn, and then folded", "block: 0,0 17.75,0 17.75,15 0,15 | torn\nback: 0,0 8,0 8,15.2 0,15.2 | cut 2", Inch, OwnUnit, 45,
			[]string{"single: 0 to 15 in", "folded lengthwise, fold at the left: 15 to 30 1/4 in"},
		},
		{
			"in centimetres", "block: 0,0 17.75,0 17.75,15 0,15 | torn\nback: 0,0 8,0 8,15.2 0,15.2 | cut 2", Centimetre, OwnUnit, 45,
			[]string{"single: 0 to 38.1 cm", "folded lengthwise, fold at the left: 38.1 to 76.8 cm"},
		},
		{
			"in both", "block: 0,0 17.75,0 17.75,15 0,15 | torn\nback: 0,0 8,0 8,15.2 0,15.2 | cut 2", Inch, AllUnits, 45,
			[]string{"single: 0 (0) to 15 in (381 mm)", "folded lengthwise, fold at the left: 15 (381) to 30 1/4 in (768 mm)"},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			lay := layOut(toCut(t, c.items), c.width*Inch.MM())
			p := &Pattern{Unit: c.unit, ClothWidth: lay.Width}
			pic := clothSection(p, &Cloth{Lay: lay, Buy: c.unit.buy(lay.Length)}, c.words).Picture
			require.NotNil(t, pic)
			var texts []string
			end := 0.0
			for i, b := range pic.Bands {
				texts = append(texts, b.Text)
				assert.Equal(t, end, b.From, "band %d begins where the one before it ends", i)
				end = b.To
				width := lay.Width
				if lay.Parts[i].Folded {
					width /= 2
				}
				assert.Equal(t, width, b.Width, "width of band %d", i)
				for _, one := range lay.Parts[i].Pieces {
					box := one.Outline.Bounds()
					assert.True(t, box.Min.X >= -samePoint && box.Max.X <= b.Width+samePoint &&
						box.Min.Y >= b.From-samePoint && box.Max.Y <= b.To+samePoint, "%s lies on band %d", one.Name, i)
				}
			}
			assert.Equal(t, pic.Height, end, "the last ends where the picture does")
			assert.Equal(t, c.want, texts)
		})
	}
}
