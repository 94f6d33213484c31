package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// For a class all that is torn, cut and bought comes as often; what is told of a piece stays
// that of one. Lace along 10 in with 1/2 in for its join is 10 1/2 in, and 105 in for ten,
// which is 2.92 yd: 3 yd. A ruffle of 2 x 10 in comes out of one strip, 43 1/2 in of which
// count; for ten there are ten, and they share none (derived).
func TestFiguresForSeveralGarments(t *testing.T) {
	text := "title = \"Bib\"\nsize = \"2\"\nunit = \"in\"\nallowance = 0\n[cloth]\nwidth = 44\n" +
		sketch.Piece("front", "cut = 2\ngrain = \"left\"\n"+sketch.Swap(sketch.Rect("10"), "top: 10,8 0,8", "top: 10,8 5,8.5 0,8")) +
		"[trim.lace]\nalong = \"front.bottom\"\n[ruffle.frill]\nalong = \"front.bottom\"\nfullness = 2\ndepth = 3\n[binding.edge]\nalong = \"front.left\"\nwidth = \"1/4\"\n"
	one := made.Of(t, strings.Replace(text, "cut = 2", "cut = 1", 1))
	ten := one.ForGarments(10)
	assert.Equal(t, "Bib, size 2", Report(one, OwnUnit).Title)
	r := Report(ten, OwnUnit)
	assert.Equal(t, "Bib, size 2, for 10", r.Title)
	assert.Equal(t, "What is torn and cut, the cloth and what is to be bought are for 10 garments. All else is of one.", r.Notes[len(r.Notes)-1])
	assert.Len(t, r.Notes, len(Report(one, OwnUnit).Notes)+1)

	assert.Contains(t, printedSection(ten, "Tear and cut first"), "  front                            10           10     8 1/2\n")
	trims := printedSection(ten, "Trims, ruffles and bindings")
	for _, want := range []string{
		"  to cut                                10 1/2\n  for 10 garments, cut it 10 times, in all 105 in\n  buy 3 yd\n",
		"  for 10 garments, tear 10 strips\n",
		"  for 10 garments, 10 such squares\n",
	} {
		assert.Contains(t, trims, want)
	}
	assert.NotContains(t, printedSection(one, "Trims, ruffles and bindings"), "garments")
	assert.Equal(t, printedSection(one, "Edges"), printedSection(ten, "Edges"))

	of, all := asData(t, one), asData(t, ten)
	assert.Equal(t, 1.0, of["garments"])
	assert.Equal(t, 10.0, all["garments"])
	lace := all["trims"].([]any)[0].(map[string]any)
	assert.Equal(t, map[string]any{"mm": 266.7, "printed": "10 1/2 in"}, lace["total"])
	assert.Equal(t, map[string]any{"mm": 2667.0, "printed": "105 in"}, lace["total_of_all"])
	assert.Equal(t, "3 yd", lace["buy"].(map[string]any)["printed"])
	assert.Equal(t, of["pieces"], all["pieces"])
}

// A lay that would be a narrow stripe is not drawn; that of a garment behind the other is told as
// such.
func TestLaysOfSeveralGarments(t *testing.T) {
	section := func(example string, n int) (text string, drawn bool) {
		for _, s := range Report(made.Example(t, example).ForGarments(n), OwnUnit).Sections {
			if s.Title == "Cloth to buy" {
				for _, l := range s.Lines {
					text += l.Text + "\n"
				}
				drawn = s.Picture != nil
			}
		}
		require.NotEmpty(t, text)
		return text, drawn
	}
	text, drawn := section("nightgown.toml", 10)
	assert.Contains(t, text, "It is the lay of one garment, 10 times, one behind the other.\n")
	assert.True(t, drawn)
	text, drawn = section("shirt.toml", 100)
	assert.NotContains(t, text, "one behind the other")
	assert.Contains(t, text, "The lay for 100 is too long to be drawn here; that for fewer garments shows how it goes.\n")
	assert.False(t, drawn)
}
