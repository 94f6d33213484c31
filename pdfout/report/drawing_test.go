package report

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// A picture by itself stays in its room, whatever it is of; and every name of a shape, and what
// is said of every band, is in it once or is handed back to be set under it.
func TestDrawingsStayInTheirRoom(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := pictureOf(t)
		const wide, high = 240.0, 200.0
		d, err := DrawingOf(*p, wide, high)
		require.NoError(t, err)
		on := seen.Paper(t, "300x300mm")
		var c seen.Canvas
		c.NewPage(on)
		d.Draw(&c, plane.Point{X: 30, Y: 280})
		// Texts over a picture that lies take what is kept free for them.
		room := plane.Box{Min: plane.Point{X: 30, Y: 280 - d.Height()}, Max: plane.Point{X: 30 + wide, Y: 280}}.Grown(0.2)
		assert.LessOrEqual(t, d.Height(), high)
		words := map[string]bool{}
		page := c.Pages()[0]
		for _, said := range page.Texts {
			b := said.Box()
			assert.True(t, room.Holds(b.Min) && room.Holds(b.Max), "%q at %v", said.Text, b)
			words[said.Text] = true
		}
		for _, path := range page.Paths {
			for _, part := range path.Parts {
				b := part.Bounds()
				assert.True(t, room.Holds(b.Min) && room.Holds(b.Max), "a line at %v", b)
			}
		}
		named := map[string]bool{}
		for _, s := range d.Signed {
			assert.False(t, named[s.Name], "%q is told twice", s.Name)
			named[s.Name] = true
			assert.True(t, words[s.Sign], "the sign %q of %q is not in the picture", s.Sign, s.Name)
		}
	})
}

// The picture of a whole dress has room for all that is said of its bands.
func TestDrawingOfTheDress(t *testing.T) {
	d, err := DrawingOf(*sample.DressFigures().Sections[2].Picture, 240, 200)
	require.NoError(t, err)
	assert.Empty(t, d.Unsaid)
	assert.Empty(t, d.Left)
}

// What is no picture, and what no letter is there for, is refused and not drawn.
func TestDrawingsThatAreRefused(t *testing.T) {
	_, err := DrawingOf(mark.Picture{Height: 10}, 200, 200)
	assert.EqualError(t, err, "the figures have a picture that leads nowhere on paper")
	_, err = DrawingOf(mark.Picture{Width: 10, Height: 10, Caption: "\U0001F9F5"}, 200, 200)
	assert.ErrorContains(t, err, "a text of the figures")
}
