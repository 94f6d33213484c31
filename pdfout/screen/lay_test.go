package screen

import (
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/figures"
	"tuckmark/marking/mark"
	samples "tuckmark/pdfout/sample"
	"tuckmark/pdfout/sets"
)

// layOf is the picture of some figures on the page, and the element it stands in.
func layOf(t *testing.T, r mark.Report) (svg, figure *node) {
	all := nodesOf(t, htmlOf(t, r)).all("figure")
	require.Len(t, all, 1, "one picture of how things lie")
	require.Len(t, all[0].all("svg"), 1)
	return all[0].all("svg")[0], all[0]
}

// Every lay of the examples is drawn, with each piece and what is said of each part of the cloth
// told in words to who does not see it.
func TestLaysOfTheExamples(t *testing.T) {
	drawn := 0
	for name, p := range sets.Patterns(t, "../../examples") {
		r := figures.Report(p, figures.OwnUnit)
		for _, s := range r.Sections {
			if s.Picture == nil {
				continue
			}
			drawn++
			svg, figure := layOf(t, r)
			assert.Equal(t, "img", svg.attrs["role"], name)
			assert.Contains(t, svg.all("title")[0].said(), s.Picture.Caption, name)
			assert.Equal(t, svg.all("title")[0].attrs["id"], svg.attrs["aria-labelledby"])
			assert.Equal(t, svg.all("desc")[0].attrs["id"], svg.attrs["aria-describedby"])
			told := svg.all("desc")[0].said()
			for _, shape := range s.Picture.Shapes {
				assert.Contains(t, told, shape.Name, name)
			}
			for _, b := range s.Picture.Bands {
				assert.Contains(t, told, b.Text, name)
			}
			assert.Contains(t, figure.said(), s.Picture.Caption, name)
			assert.GreaterOrEqual(t, len(svg.all("path")), len(s.Picture.Shapes), name)
		}
	}
	assert.Equal(t, 5, drawn)
}

// The names of a picture's shapes are in it, or under it with their signs.
func TestNamesOfShapesAreSeen(t *testing.T) {
	r := *samples.DressFigures()
	svg, figure := layOf(t, r)
	var inside strings.Builder
	for _, text := range svg.all("text") {
		inside.WriteString(text.said() + " ")
	}
	for _, shape := range r.Sections[2].Picture.Shapes {
		for _, word := range strings.Fields(shape.Name) {
			assert.Contains(t, inside.String()+figure.all("figcaption")[0].said(), word)
		}
	}
}

// Where the page is narrow the picture keeps a least width, by which no letter is smaller than
// the least size of the sheets, 9 pt (12 px at 96 px to the inch, the CSS reference pixel).
func TestLettersOfALayStayLegible(t *testing.T) {
	style, err := os.ReadFile("figures.css")
	require.NoError(t, err)
	found := regexp.MustCompile(`svg\.lay \{[^}]*min-width: ([0-9.]+)rem`).FindSubmatch(style)
	require.NotNil(t, found)
	rem, err := strconv.ParseFloat(string(found[1]), 64)
	require.NoError(t, err)
	svg, _ := layOf(t, *samples.DressFigures())
	box := strings.Fields(svg.attrs["viewBox"])
	require.Len(t, box, 4)
	wide, err := strconv.ParseFloat(box[2], 64)
	require.NoError(t, err)
	smallest := math.Inf(1)
	for _, text := range svg.all("text") {
		size, err := strconv.ParseFloat(text.attrs["font-size"], 64)
		require.NoError(t, err)
		smallest = min(smallest, size)
	}
	assert.GreaterOrEqual(t, smallest*16*rem/wide, 11.9, "px of the smallest letters")
}

// What cannot be drawn is told in words, and why.
func TestLaysThatCannotBeDrawn(t *testing.T) {
	p := *samples.DressFigures().Sections[2].Picture
	p.Height = math.Inf(1)
	l := newLay("lay-1", p)
	assert.Empty(t, l.Elements)
	assert.Equal(t, "this cannot be drawn: the figures have a picture that leads nowhere on paper", l.Under[0])
	assert.Contains(t, l.Under[1], "Sleeve (2 times)")
}
