package board

import (
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/text"
)

// oblong is a part of a size that draws nothing.
func oblong(name string, wide, high float64) Part {
	return Part{Name: name, Box: plane.Box{Max: plane.Point{X: wide, Y: high}}, Elements: func() string { return "<path/>\n" }}
}

func TestBoardIsWritten(t *testing.T) {
	b := Board{Size: plane.Point{X: 120, Y: 90.5}, Caption: 4, Parts: []Part{oblong(`Front & "back"`, 100, 50)}}
	b.Parts[0].Number = 2
	b.Parts[0].Box = plane.Box{Min: plane.Point{X: 8, Y: 12.5}, Max: plane.Point{X: 108, Y: 62.5}}
	assert.Equal(t, `<g class="part" data-part="2" data-name="Front &amp; &#34;back&#34;" transform="translate(8 12.5)">
<text class="caption" y="-2" font-size="4" data-most="6.4" fill="currentColor">Front &amp; &#34;back&#34;</text>
<path/>
</g>
`, string(b.Elements()))
}

func TestNothingIsAnEmptyBoard(t *testing.T) {
	assert.Empty(t, flow(nil).Parts)
}

// A caption may be written larger as far as it stays over its part, and is in sight with it.
func TestCaptionsHaveRoom(t *testing.T) {
	b := flow([]Part{oblong("A", 200, 300), oblong("A name that is nearly as wide as its part", 90, 300), oblong("", 90, 90)})
	most := regexp.MustCompile(`data-most="([^"]+)"`)
	for i, p := range b.Parts[:2] {
		found := most.FindStringSubmatch(b.caption(p))
		require.NotNil(t, found)
		mm, err := strconv.ParseFloat(found[1], 64)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, mm, b.Caption)
		assert.LessOrEqual(t, captionStyle(mm).Width(text.Shorten(p.Name, captionStyle(b.Caption), p.Box.Width())), p.Box.Width()+0.2, p.Name)
		looked := b.Looked(i)
		assert.Greater(t, p.Box.Min.Y-looked.Min.Y, mm*1.2, "half a letter under it, and its capitals, are in sight")
		assert.GreaterOrEqual(t, looked.Min.Y, 0.0, "no other row is")
	}
	assert.Equal(t, b.Parts[2].Box, b.Looked(2), "a key has no caption")
}
