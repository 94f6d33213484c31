package likeness

import (
	"image"
	"image/color"
	"testing"

	"github.com/stretchr/testify/assert"
)

// What a reader does not see is passed over, and what a maker would miss is not.
func TestMostApart(t *testing.T) {
	blank := func() *image.Gray {
		p := image.NewGray(image.Rect(0, 0, 120, 100))
		for i := range p.Pix {
			p.Pix[i] = 255
		}
		return p
	}
	fill := func(p *image.Gray, box image.Rectangle, grey uint8) *image.Gray {
		for y := box.Min.Y; y < box.Max.Y; y++ {
			for x := box.Min.X; x < box.Max.X; x++ {
				p.Pix[p.PixOffset(x, y)] = grey
			}
		}
		return p
	}
	line := fill(blank(), image.Rect(60, 10, 61, 90), 0)
	for _, c := range []struct {
		name string
		a, b *image.Gray
		like bool
	}{
		{"the same", line, line, true},
		{"a line half a dot aside", line, fill(blank(), image.Rect(60, 10, 62, 90), 128), true},
		{"a tint a little lighter", fill(blank(), image.Rect(20, 20, 80, 80), 230), fill(blank(), image.Rect(20, 20, 80, 80), 235), true},
		{"a line 2 mm aside", line, fill(blank(), image.Rect(65, 10, 66, 90), 0), false},
		{"a line that is missing", line, blank(), false},
		{"a fine line that is missing", fill(blank(), image.Rect(60, 10, 61, 90), 150), blank(), false},
		{"a word that is missing", fill(blank(), image.Rect(60, 50, 72, 54), 120), blank(), false},
	} {
		unlike, _ := mostApart(c.a, c.b)
		t.Logf("%s: %.1f", c.name, unlike)
		assert.Equal(t, c.like, unlike <= mostUnlike, "%s: %.1f", c.name, unlike)
	}
}

// Two pictures are compared from their own corners, and told apart where they are.
func TestMostApartWhere(t *testing.T) {
	a, b := image.NewGray(image.Rect(0, 0, 200, 100)), image.NewGray(image.Rect(50, 50, 250, 150))
	unlike, _ := mostApart(a, b)
	assert.Zero(t, unlike)
	for y := range 10 {
		for x := range 10 {
			b.SetGray(50+150+x, 50+30+y, color.Gray{Y: 255})
		}
	}
	_, at := mostApart(a, b)
	assert.InDelta(t, 154.5, float64(at.X), 2)
	assert.InDelta(t, 34.5, float64(at.Y), 2)
}
