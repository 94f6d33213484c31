package screen

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
)

// Views that are laid over each other are layers too, each with a sample in its own colour; lines of
// one kind have no colour there, since every view draws them in its own.
func TestViewsLaidOverAreLayers(t *testing.T) {
	scene := sceneOf(t, "", "a", "bbb", "<c>&")
	p := newPage(scene, Choice{Show: Views, Lay: Overlay})
	require.NotNil(t, p.Picture)
	layers := p.Picture.Layers
	require.Len(t, layers, 5, "four views and the cutting line")
	colourOf := func(l layer) string {
		_, after, _ := strings.Cut(string(l.Sample), `stroke="`)
		colour, _, _ := strings.Cut(after, `"`)
		return colour
	}
	colours := map[string]bool{}
	for i, v := range scene.Views {
		assert.Equal(t, "view "+v.Title, layers[i].Role)
		assert.Equal(t, v.Title, layers[i].Name)
		colour := colourOf(layers[i])
		colours[colour] = true
		assert.Contains(t, string(p.Picture.Elements), `stroke="`+colour+`"`, "the picture has the colour of %s", v.Title)
	}
	assert.Len(t, colours, 4)
	line := layers[4]
	assert.Equal(t, mark.Cut.String(), line.Role)
	r, g, b := colourOf(line)[1:3], colourOf(line)[3:5], colourOf(line)[5:7]
	assert.True(t, r == g && g == b, "the cutting line has no colour: %s", colourOf(line))

	for _, l := range newPage(scene, Choice{Show: Views}).Picture.Layers {
		assert.NotContains(t, l.Role, "view", "side by side each is a part")
	}
}
