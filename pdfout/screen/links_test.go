package screen

import (
	"fmt"
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout"
	"tuckmark/pdfout/board"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sets"
)

// links are the addresses in a row of choices, and of which of them is said that it is chosen.
func linksIn(all []*element, row string) (texts []string, chosen []string) {
	for _, e := range all {
		if e.name == "a" && strings.HasPrefix(e.attributes["id"], row+"-") {
			texts = append(texts, e.text)
			if e.attributes["aria-current"] == "page" {
				chosen = append(chosen, e.text)
			}
		}
	}
	return texts, chosen
}

func TestRowsOfChoices(t *testing.T) {
	one, several := sceneOf(t, ""), sceneOf(t, "", "round")
	for _, c := range []struct {
		scene  *Scene
		choice Choice
		row    string
		texts  []string
		chosen []string
	}{
		{one, Choice{}, "shows", []string{"Sheets", "Pages", "Folded", "Figures"}, []string{"Sheets"}},
		{one, Choice{Show: Views}, "shows", []string{"Sheets", "Pages", "Folded", "Figures"}, []string{"Sheets"}},
		{one, Choice{}, "views", nil, nil},
		{several, Choice{Show: Figures}, "shows", []string{"Sheets", "Pages", "Folded", "Views", "Figures"}, []string{"Figures"}},
		{several, Choice{}, "views", []string{"view ", "view round"}, []string{"view "}},
		{several, Choice{View: "round"}, "views", []string{"view ", "view round"}, []string{"view round"}},
		{several, Choice{View: "gone"}, "views", []string{"view ", "view round"}, []string{"view "}},
		{several, Choice{Show: Views}, "views", nil, nil},
		{several, Choice{Show: Views, Lay: Overlay}, "ways", []string{"Side by side", "Laid over each other"}, []string{"Laid over each other"}},
		{one, Choice{Show: Folded, Lay: Overlay}, "ways", []string{"Whole", "Half on the fold"}, []string{"Whole"}},
		{one, Choice{Show: Folded, Lay: Half}, "ways", []string{"Whole", "Half on the fold"}, []string{"Half on the fold"}},
		{one, Choice{Show: Sheets}, "ways", nil, nil},
		{several, Choice{Show: Figures}, "views", []string{"view ", "view round", "Side by side"}, []string{"view "}},
		{several, Choice{Show: Figures, View: "round", Lay: Beside}, "views", []string{"view ", "view round", "Side by side"}, []string{"Side by side"}},
		{one, Choice{Show: Figures, Lay: Beside}, "views", nil, nil},
		{one, Choice{Show: Figures}, "units", []string{"Inches", "Inches and millimetres"}, []string{"Inches"}},
		{several, Choice{Show: Figures, Lay: Beside, Units: AllUnits}, "units", []string{"Inches", "Inches and millimetres"}, []string{"Inches and millimetres"}},
		{one, Choice{Show: Sheets, Units: AllUnits}, "units", nil, nil},
	} {
		texts, chosen := linksIn(elements(t, written(t, "page", c.scene, c.choice)), c.row)
		assert.Equal(t, c.texts, texts, "%s of %+v", c.row, c.choice)
		assert.Equal(t, c.chosen, chosen, "chosen in %s of %+v", c.row, c.choice)
	}
}

// Every link of a page leads to a page on which that link is the chosen one of its row.
func TestEveryLinkLeadsToWhatItSays(t *testing.T) {
	scene := sceneOf(t, "", nasty, "a&b=c")
	for show := range showCount {
		for _, e := range elements(t, written(t, "page", scene, Choice{Show: show, View: nasty})) {
			to, isLink := e.attributes["href"]
			if e.name != "a" || !isLink || !strings.HasPrefix(to, "./") {
				continue
			}
			at, err := url.Parse(to)
			require.NoError(t, err)
			there := elements(t, written(t, "page", scene, ChoiceOf(at.Query())))
			row, _, _ := strings.Cut(e.attributes["id"], "-")
			_, chosen := linksIn(there, row)
			assert.Equal(t, []string{e.text}, chosen, "behind the link %q to %s", e.text, to)
		}
	}
}

// More pages than one picture has stand in several, each a hundred at the most, and a row of links
// leads to all of them; what lies beyond the last is the first.
func TestMorePagesThanOnePictureHas(t *testing.T) {
	on, err := paper.Find("letter")
	require.NoError(t, err)
	book, err := pdfout.Plan(sets.ManySkirts(12), on)
	require.NoError(t, err)
	n := len(book.Pages())
	require.Greater(t, n, 100)
	require.Less(t, n, 200)
	scene := sceneOf(t, "")
	scene.Views[0].Book = func() (*pdfout.Book, error) { return book, nil }
	last := fmt.Sprintf("101 to %d", n)
	for _, c := range []struct {
		lot, pages int
		chosen     string
	}{{0, 100, "1 to 100"}, {1, n - 100, last}, {2, 100, "1 to 100"}} {
		page := written(t, "page", scene, Choice{Show: Pages, Lot: c.lot})
		all := elements(t, page)
		texts, chosen := linksIn(all, "lots")
		assert.Equal(t, []string{"1 to 100", last}, texts)
		assert.Equal(t, []string{c.chosen}, chosen, "lot %d", c.lot)
		assert.Equal(t, c.pages, strings.Count(page, `class="part"`), "pages in lot %d", c.lot)
		ofParts, _ := linksIn(all, "parts")
		assert.Len(t, ofParts, c.pages+1, "links to the pages of lot %d, and to all of it", c.lot)
	}
	first, err := scene.board(Choice{Show: Pages}, &scene.Views[0])
	require.NoError(t, err)
	beyond, err := scene.board(Choice{Show: Pages, Lot: 5000, Part: 3}, &scene.Views[0])
	require.NoError(t, err)
	assert.Same(t, first, beyond, "one that is not there is kept as the first")
	texts, _ := linksIn(elements(t, written(t, "page", sceneOf(t, ""), Choice{Show: Pages})), "lots")
	assert.Empty(t, texts, "where one picture has all")
}

// The last lot may be of one.
func TestSpanOfALot(t *testing.T) {
	assert.Equal(t, "101 to 103", spanOf(board.Board{Parts: []board.Part{{Number: 101, Name: "a"}, {Number: 103, Name: "b"}, {Number: 104}}}))
	assert.Equal(t, "101", spanOf(board.Board{Parts: []board.Part{{Number: 101, Name: "a"}}}))
}

// Every part that has a name can be looked at alone, also one that is of no piece; a key cannot.
func TestLinksToParts(t *testing.T) {
	of := []board.Part{{Name: "Front", Keys: []string{"front"}}, {Name: "Notes and steps"}, {}}
	var texts, to []string
	for _, l := range parts(of, Choice{}).Links {
		texts, to = append(texts, l.Text), append(to, l.To)
	}
	assert.Equal(t, []string{"All", "Front", "Notes and steps"}, texts)
	assert.Equal(t, []string{"./", "./?part=1", "./?part=2"}, to)
}
