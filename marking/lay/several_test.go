package lay

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Of several garments everything is cut as often, and nothing is shared.
func TestCuttingsOfSeveralGarments(t *testing.T) {
	for _, p := range []string{"nightgown.toml", "pinafore.toml", "shirt.toml"} {
		one := made.Example(t, p)
		torn, cut := Cuttings(one)
		tornOfTen, cutOfTen := Cuttings(one.ForGarments(10))
		for _, c := range [][2][]Cutting{{torn, tornOfTen}, {cut, cutOfTen}} {
			require.Len(t, c[1], len(c[0]), p)
			for k := range c[0] {
				want := c[0][k]
				want.Count *= 10
				assert.Equal(t, want, c[1][k], p)
			}
		}
	}
}

// Pieces 10 in square are cut from cloth 44 in wide, four beside each other with 1/8 in
// between: two of one garment take 10 in of it, 20 take five rows, 50 in and four times 1/8
// (derived).
func TestLayOfSeveralGarments(t *testing.T) {
	square := "cut = 2\ngrain = \"left\"\nbottom: 0,0 10,0\nright: 10,0 10,10\ntop: 10,10 5,10 0,10\nleft: 0,10 0,0\n"
	p := made.Of(t, "allowance = 0\n[cloth]\nwidth = 44\n"+sketch.Piece("square", square))
	assert.InDelta(t, 10, Of(p).Length/25.4, 1e-6)
	ten := Of(p.ForGarments(10))
	assert.InDelta(t, 50.5, ten.Length/25.4, 1e-6)
	assert.Zero(t, ten.Repeats, "laid together")
}

// Laid together, several garments never take more than one behind the other with 1/8 in
// between, and whatever is cut lies on the cloth.
func TestSeveralGarmentsTakeNoMoreThanEachByItself(t *testing.T) {
	for _, name := range []string{"nightgown.toml", "pinafore.toml", "shirt.toml", "underwaist.toml"} {
		one := made.Example(t, name)
		single := Of(one)
		for _, n := range []int{2, 3, 7} {
			t.Run(fmt.Sprint(name, " ", n), func(t *testing.T) {
				laid := Of(one.ForGarments(n))
				assert.LessOrEqual(t, laid.Length, float64(n)*single.Length+float64(n-1)*25.4/8+0.001)
				assert.InDelta(t, float64(n)*cut(single), cut(laid), 1, "all that is cut of one, so many times, in mm² of cloth")
				end := 0.0
				for k, part := range laid.Parts {
					assert.InDelta(t, end, part.From, 1e-6)
					assert.False(t, k > 0 && laid.Parts[k-1].Folded == part.Folded, "a part lies the other way than the one before")
					for _, one := range part.Placed {
						box := one.Outline.Bounds()
						assert.True(t, box.Min.Y > part.From-1e-6 && box.Max.Y < part.To+1e-6, "%s lies on its part", one.Name)
					}
					end = part.To
				}
				assert.InDelta(t, laid.Length, end, 1e-6)
			})
		}
	}
}

// A fly that is cut once for a garment lies as it is drawn for every one of four, or end
// for end.
func TestWhatIsCutOnceIsNotTurnedOverForAnother(t *testing.T) {
	p := made.Of(t, "allowance = 0\n[cloth]\nwidth = 18\n"+sketch.Piece("fly", "cut = 1\ngrain = \"left\"\nbottom: 0,0 8,0\nright: 8,0 8,4\ntop: 8,4 0,9\nleft: 0,9 0,0\n"))
	drawn := p.Pieces[0].Flat.Outline.Path
	laid := layOut(itemsOf(p.ForGarments(4)), p.ClothWidth)
	count := 0
	for _, part := range laid.Parts {
		assert.False(t, part.Folded, "a left and a right are cut at once")
		for _, one := range part.Placed {
			assert.True(t, liesAs(one.Outline, drawn, 1, 1) || liesAs(one.Outline, drawn, -1, -1), "it is turned over")
			count++
		}
	}
	assert.Equal(t, 4, count)
}

// cut is how much of the cloth is cut out, in mm².
func cut(l *Lay) float64 { return l.ShareUsed() * l.Width * l.Length }

// One garment behind the other is room for the scissors longer, each time; parts that lie
// alike are one.
func TestOneLayBehindTheOther(t *testing.T) {
	p := made.Of(t, "allowance = 0\n[cloth]\nwidth = 21\n"+sketch.Piece("front", "fold = \"left\"\ncut = 1\nbottom: 0,0 10,0\nright: 10,0 10,8\ntop: 10,8 5,8 0,8\nleft: 0,8 0,0\n"))
	one := Of(p)
	thrice := one.repeated(3)
	assert.InDelta(t, 3*one.Length+2*25.4/8, thrice.Length, 1e-6)
	assert.Len(t, thrice.Parts, 1)
	assert.Len(t, thrice.Parts[0].Placed, 3)
	assert.Equal(t, 3, thrice.Repeats)
	assert.InDelta(t, one.Length+25.4/8, thrice.Parts[0].Placed[1].Outline.Bounds().Min.Y, 1e-6)
}
