package figures

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
)

// The parts of a lay become bands of its picture, one where the other ends, as it is
// printed as well; folded cloth is half as wide, and everything lies on its band.
func TestLayPicture(t *testing.T) {
	for _, c := range []struct {
		name  string
		items string
		unit  length.Unit
		words Wording
		width float64 // of the cloth, in inches
		want  []string
	}{
		{
			"single cloth alone", "strip: 0,0 8,0 8,1.25 0,1.25 | torn", length.Inch, OwnUnit, 44,
			[]string{"single: 0 to 1 1/4 in"},
		},
		{
			"folded cloth alone", "front: 0,0 10,0 10,10 0,10 | fold 0,10 0,0", length.Inch, OwnUnit, 44,
			[]string{"folded lengthwise, fold at the left: 0 to 10 in"},
		},
		{
			"what is torn, and then folded", "block: 0,0 17.75,0 17.75,15 0,15 | torn\nback: 0,0 8,0 8,15.2 0,15.2 | cut 2", length.Inch, OwnUnit, 45,
			[]string{"single: 0 to 15 in", "folded lengthwise, fold at the left: 15 to 30 1/4 in"},
		},
		{
			"in centimetres", "block: 0,0 17.75,0 17.75,15 0,15 | torn\nback: 0,0 8,0 8,15.2 0,15.2 | cut 2", length.Centimetre, OwnUnit, 45,
			[]string{"single: 0 to 38.1 cm", "folded lengthwise, fold at the left: 38.1 to 76.8 cm"},
		},
		{
			"in both", "block: 0,0 17.75,0 17.75,15 0,15 | torn\nback: 0,0 8,0 8,15.2 0,15.2 | cut 2", length.Inch, AllUnits, 45,
			[]string{"single: 0 (0) to 15 in (381 mm)", "folded lengthwise, fold at the left: 15 (381) to 30 1/4 in (768 mm)"},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := lay.Out(toCut(t, c.items), c.width*length.Inch.MM())
			p := &garment.Pattern{Unit: c.unit, ClothWidth: l.Width}
			pic := clothSection(p, &lay.Cloth{Lay: l, Buy: c.unit.Buy(l.Length)}, c.words).Picture
			require.NotNil(t, pic)
			var texts []string
			end := 0.0
			for i, b := range pic.Bands {
				texts = append(texts, b.Text)
				assert.Equal(t, end, b.From, "band %d begins where the one before it ends", i)
				end = b.To
				width := l.Width
				if l.Parts[i].Folded {
					width /= 2
				}
				assert.Equal(t, width, b.Width, "width of band %d", i)
				for _, one := range l.Parts[i].Pieces {
					box := one.Outline.Bounds()
					assert.True(t, box.Min.X >= -piece.SamePoint && box.Max.X <= b.Width+piece.SamePoint &&
						box.Min.Y >= b.From-piece.SamePoint && box.Max.Y <= b.To+piece.SamePoint, "%s lies on band %d", one.Name, i)
				}
			}
			assert.Equal(t, pic.Height, end, "the last ends where the picture does")
			assert.Equal(t, c.want, texts)
		})
	}
}
