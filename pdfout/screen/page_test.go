package screen

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/pdfout"
)

// element is one element of a page, with the text in it.
type element struct {
	name       string
	attributes map[string]string
	text       string
}

// written is the page that shows a choice, or another template of it.
func written(t *testing.T, template string, scene *Scene, c Choice) string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, templates().ExecuteTemplate(&out, template, newPage(scene, c)))
	return out.String()
}

// elements reads a page: every element must be closed where it may not be left open.
func elements(t *testing.T, page string) []*element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(page))
	d.Strict, d.AutoClose, d.Entity = false, xml.HTMLAutoClose, xml.HTMLEntity
	var all, open []*element
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		require.NoError(t, err, "the page is whole")
		switch token := token.(type) {
		case xml.StartElement:
			e := &element{name: token.Name.Local, attributes: map[string]string{}}
			for _, a := range token.Attr {
				e.attributes[a.Name.Local] = a.Value
			}
			all, open = append(all, e), append(open, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			for _, e := range open {
				e.text += string(token)
			}
		}
	}
	assert.Empty(t, open, "elements that are not closed")
	return all
}

// byID finds an element.
func byID(t *testing.T, all []*element, id string) *element {
	t.Helper()
	i := slices.IndexFunc(all, func(e *element) bool { return e.attributes["id"] == id })
	require.GreaterOrEqual(t, i, 0, "an element with the id %s", id)
	return all[i]
}

// regionIDs are the ids of the regions of a page.
func regionIDs(all []*element) []string {
	var ids []string
	for _, e := range all {
		if slices.Contains(strings.Fields(e.attributes["class"]), "live") {
			ids = append(ids, e.attributes["id"])
		}
	}
	return ids
}

// scenes are scenes of every kind.
func scenes(t *testing.T) map[string]*Scene {
	wrong := sceneOf(t, "", "round")
	wrong.Mistakes = []Mistake{mistaken(), mistaken()}
	named := sceneOf(t, "", nasty, "a&b=c")
	named.Title, named.File = nasty, nasty
	refused := sceneOf(t, "")
	refused.Views[0].Book = func() (*pdfout.Book, error) { return nil, errors.New("too large for " + nasty) }
	return map[string]*Scene{
		"nothing": {}, "first mistakes": {File: "plum.toml", Mistakes: []Mistake{mistaken()}},
		"one view": sceneOf(t, ""), "views": sceneOf(t, "", "round", "square"),
		"mistakes later": wrong, "nasty names": named, "refused": refused,
	}
}

// What the policy of the server forbids is not on the page, ids are there once, and every region
// stands on the page, and is sent again, once.
func TestEveryPageIsSound(t *testing.T) {
	for name, scene := range scenes(t) {
		for show := range showCount {
			for _, view := range []string{"", nasty, "gone"} {
				c := Choice{Show: show, View: view}
				page := written(t, "page", scene, c)
				all := elements(t, page)
				ids := map[string]bool{}
				for _, e := range all {
					for attribute := range e.attributes {
						assert.False(t, attribute == "style" || strings.HasPrefix(attribute, "on"), "%s, %v: %s of %s", name, c, attribute, e.name)
					}
					if id := e.attributes["id"]; id != "" {
						assert.False(t, ids[id], "%s, %v: the id %s is there twice", name, c, id)
						assert.False(t, strings.ContainsAny(id, " \t\n\f\r"), "%s, %v: the id %q has a space, which HTML forbids", name, c, id)
						ids[id] = true
					}
					assert.NotContains(t, []string{"style", "iframe", "object", "embed", "base"}, e.name)
					if e.name == "script" {
						assert.Equal(t, "/look.js", e.attributes["src"])
						assert.Empty(t, e.text, "script in the page")
					}
				}
				assert.NotContains(t, page, nasty, "%s, %v: a name that is not escaped", name, c)
				assert.NotContains(t, page, "ZgotmplZ", "%s, %v: what the template refuses to write", name, c)
				assert.ElementsMatch(t, regionIDs(all), regionIDs(elements(t, written(t, "now", scene, c))), "%s, %v: regions on the page, and those that are sent", name, c)
			}
		}
	}
}

// What is sent of a region is what stands on the page, so that the script sees it is the same.
func TestWhatIsSentIsWhatStandsThere(t *testing.T) {
	for name, scene := range scenes(t) {
		page, sent := written(t, "page", scene, Choice{}), written(t, "now", scene, Choice{})
		for _, region := range []string{"head", "facts", "banner", "parts", "wrong", "layers", "lines"} {
			one := written(t, region, scene, Choice{})
			assert.Contains(t, page, one, "%s: %s on the page", name, region)
			assert.Contains(t, sent, one, "%s: %s as it is sent", name, region)
		}
	}
}

func TestThePartThatIsLookedAt(t *testing.T) {
	scene := sceneOf(t, "")
	all := byID(t, elements(t, written(t, "page", scene, Choice{Show: Pages})), "board").attributes["viewBox"]
	one := byID(t, elements(t, written(t, "page", scene, Choice{Show: Pages, Part: 1})), "board").attributes["viewBox"]
	assert.NotEqual(t, all, one, "what is seen of all pages, and of the first")
	gone := byID(t, elements(t, written(t, "page", scene, Choice{Show: Pages, Part: 99})), "board").attributes["viewBox"]
	assert.Equal(t, all, gone, "what is seen where there is no such page")
}

// lines are how often a line of a piece is drawn in the picture.
func lines(t *testing.T, scene *Scene, c Choice, piece, line string) int {
	t.Helper()
	n := 0
	for _, e := range elements(t, written(t, "page", scene, c)) {
		if e.name == "path" && e.attributes["data-piece"] == piece && e.attributes["data-line"] == line {
			n++
		}
	}
	return n
}

// Each choice has a picture of its own: pieces that are folded are asked for whole or half, and
// all views are in that of the views, whichever is looked at otherwise.
func TestEachChoiceHasItsPicture(t *testing.T) {
	scene := sceneOf(t, "", "round")
	whole := elements(t, written(t, "page", scene, Choice{Show: Folded}))
	half := elements(t, written(t, "page", scene, Choice{Show: Folded, Lay: Half}))
	wide := func(all []*element) string { return byID(t, all, "facts").attributes["data-wide"] }
	assert.NotEqual(t, wide(whole), wide(half), "how wide the piece is whole, and half")
	assert.Equal(t, 1, lines(t, scene, Choice{Show: Folded, View: "round"}, "front", "hem"), "a view, folded")
	assert.Equal(t, 2, lines(t, scene, Choice{Show: Views, View: "round"}, "front", "hem"), "two views side by side")
	assert.Equal(t, 2, lines(t, scene, Choice{Show: Views, Lay: Overlay}, "front", "hem"), "two views laid over each other")
}

// A way to lay things that what is shown does not have is the usual, and no other picture.
func TestWaysThatAreNotThere(t *testing.T) {
	for _, c := range []struct{ asked, settled Choice }{
		{Choice{Lay: Half}, Choice{}},
		{Choice{Show: Pages, Lay: Overlay}, Choice{Show: Pages}},
		{Choice{Show: Folded, Lay: Overlay}, Choice{Show: Folded}},
		{Choice{Show: Folded, Lay: Half}, Choice{Show: Folded, Lay: Half}},
		{Choice{Show: Views, Lay: Half}, Choice{Show: Views}},
		{Choice{Show: Figures, Lay: Beside}, Choice{Show: Figures, Lay: Beside}},
		{Choice{Show: Figures, Lay: Half}, Choice{Show: Figures}},
		{Choice{Show: Pages, Units: AllUnits}, Choice{Show: Pages}},
		{Choice{View: "gone"}, Choice{}},
	} {
		assert.Equal(t, c.settled, newPage(sceneOf(t, "", "round"), c.asked).Choice, "%+v", c.asked)
	}
	assert.Equal(t, Choice{Show: Figures}, newPage(sceneOf(t, ""), Choice{Show: Figures, Lay: Beside}).Choice)
	assert.Equal(t, Choice{}, newPage(sceneOf(t, ""), Choice{Show: Views, Lay: Overlay}).Choice)
}

func TestMistakesStandBesideThePictureOfBefore(t *testing.T) {
	scene := sceneOf(t, "")
	scene.Mistakes = []Mistake{mistaken(), mistaken()}
	all := elements(t, written(t, "page", scene, Choice{}))
	assert.Equal(t, "2 mistakes in Plum smock, size 2: Sheets", byID(t, all, "facts").attributes["data-title"])
	assert.Equal(t, "2 mistakes. The last good picture stays.", byID(t, all, "facts").attributes["data-said"])
	assert.Contains(t, byID(t, all, "banner").text, "2 mistakes in the file: this is the last good picture.")
	assert.Contains(t, byID(t, all, "stage").attributes["class"], "before")
	figures := elements(t, written(t, "page", scene, Choice{Show: Figures}))
	assert.Equal(t, "2 mistakes. The last good figures stay.", byID(t, figures, "facts").attributes["data-said"])
	assert.Contains(t, byID(t, figures, "banner").text, "2 mistakes in the file: these are the last good figures.")
	wrong := byID(t, all, "wrong").text
	for _, words := range []string{"2 mistakes", "plum.toml:3", "there is no unit " + nasty, "in, cm or mm", "1 remark", "the neck is tight"} {
		assert.Contains(t, wrong, words)
	}
	lines := byID(t, all, "excerpt-1").text
	assert.Equal(t, "1 title = \"Plum\"\n2 \n3 unit = \"<b>ell\"\n4 size = 2\n", lines, "the line and its neighbours")
	marked := slices.IndexFunc(all, func(e *element) bool { return e.name == "mark" })
	require.GreaterOrEqual(t, marked, 0, "where to look in the line")
	assert.Equal(t, `unit = "<b>ell"`, all[marked].text)
	assert.NotEmpty(t, byID(t, all, "drawing").text, "the picture stays")
}

func TestMistakesBeforeThereIsAPicture(t *testing.T) {
	all := elements(t, written(t, "page", &Scene{File: "plum.toml", Mistakes: []Mistake{mistaken()}}, Choice{}))
	assert.Equal(t, "plum.toml", strings.TrimSpace(byID(t, all, "head").text))
	assert.Contains(t, byID(t, all, "banner").text, "1 mistake in the file: there is no picture yet.")
	assert.Empty(t, byID(t, all, "drawing").text)
	assert.Equal(t, "1 mistake. There is no picture yet.", byID(t, all, "facts").attributes["data-said"])
	for _, e := range all {
		assert.NotEqual(t, "print", e.attributes["id"], "there is nothing to print")
	}
}

func TestWhatCannotBeDrawnIsSaid(t *testing.T) {
	scene := scenes(t)["refused"]
	all := elements(t, written(t, "page", scene, Choice{}))
	assert.Contains(t, byID(t, all, "banner").text, "too large for "+nasty)
	assert.Contains(t, byID(t, elements(t, written(t, "page", scene, Choice{Show: Figures})), "figures").text, "6 15/16 in", "the figures are there all the same")
}

func TestWhatIsToldOfALine(t *testing.T) {
	scene := sceneOf(t, "")
	all := elements(t, written(t, "page", scene, Choice{}))
	lines := byID(t, all, "lines").text
	for _, words := range []string{"Front " + nasty, "neck, cutting line", "sewn 6\u00a015/16\u00a0in", "! Look at this: gap 0\u00a0in", "plum.toml:12, plum.toml:31"} {
		assert.Contains(t, lines, words)
	}
	line := scene.Views[0].Told()[1].At
	for _, attribute := range []string{"data-line", "data-at-line"} {
		i := slices.IndexFunc(all, func(e *element) bool { return e.name != "path" && e.attributes[attribute] == line.Line })
		assert.GreaterOrEqual(t, i, 0, "%s with the name of the line in the picture", attribute)
	}
	drawn := slices.ContainsFunc(all, func(e *element) bool {
		return e.name == "path" && e.attributes["data-piece"] == line.Piece && e.attributes["data-line"] == line.Line
	})
	assert.True(t, drawn, "the line itself is in the picture, by the name it is told by")
}

// The layers are those of the roles that occur, each with a sample, and the edges of pages where
// a sheet has more than one.
func TestLayersOfAPicture(t *testing.T) {
	scene := sceneOf(t, "")
	var named []string
	for _, e := range elements(t, written(t, "page", scene, Choice{})) {
		if name, is := e.attributes["data-layer"]; is {
			named = append(named, name)
		}
	}
	var roles []string
	for _, e := range elements(t, written(t, "page", scene, Choice{})) {
		if role := e.attributes["data-role"]; role != "" && !slices.Contains(roles, role) {
			roles = append(roles, role)
		}
	}
	assert.NotEmpty(t, roles)
	assert.ElementsMatch(t, roles, slices.DeleteFunc(slices.Clone(named), func(n string) bool { return n == gridLayer }))
	for _, role := range mark.Roles() {
		assert.Contains(t, string(sample(role)), "<path", "a sample of %s", role)
	}
}

func TestTheStateLine(t *testing.T) {
	scene := sceneOf(t, "")
	assert.Equal(t, "The picture is as saved at 11:42:07.", byID(t, elements(t, written(t, "page", scene, Choice{})), "facts").attributes["data-said"])
	assert.Equal(t, "as saved at 11:42:07", byID(t, elements(t, written(t, "page", scene, Choice{})), "state").text)
	assert.NotContains(t, byID(t, elements(t, written(t, "page", &Scene{File: "plum.toml", Unit: length.Inch}, Choice{})), "head").text, "as saved", "where it is not known")
}
