package board

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/plane"
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
<text class="caption" y="-2" font-size="4" fill="currentColor">Front &amp; &#34;back&#34;</text>
<path/>
</g>
`, string(b.Elements()))
}

func TestNothingIsAnEmptyBoard(t *testing.T) {
	assert.Empty(t, flow(nil).Parts)
}
