package board_test

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/board"
)

func TestViewsSideBySide(t *testing.T) {
	views := example(t, "smock")
	b := board.SideBySide(views)
	var names []string
	for _, p := range b.Parts {
		names = append(names, p.Name)
	}
	assert.Equal(t, []string{"Front, as it stands", "Front, square", "", ""}, names)
	assert.Contains(t, b.Parts[3].Elements(), ">alike in all views: Back, Sleeve, Sleeve band</text>")
	assert.Equal(t, b.Parts[0].Box.Min.Y, b.Parts[1].Box.Min.Y, "in one row")
	assert.Greater(t, b.Parts[1].Box.Min.X, b.Parts[0].Box.Max.X, "one beside the other")
	for _, p := range b.Parts {
		assert.True(t, p.Box.Max.X <= b.Size.X && p.Box.Max.Y <= b.Size.Y, "%s lies on the board", p.Name)
		elementsOf(t, p.Elements())
	}
}

// A piece that a view does not have leaves its place free.
func TestColumnsAreThoseOfTheViews(t *testing.T) {
	views := example(t, "smock")
	views[0].Pieces = views[0].Pieces[1:]
	b := board.SideBySide(views)
	require.Equal(t, "Front, square", b.Parts[0].Name)
	assert.Equal(t, 1, b.Parts[0].Number)
	assert.Greater(t, b.Parts[0].Box.Min.X, b.Parts[1].Box.Min.X, "it stands in the second column")
}

func TestViewsLaidOver(t *testing.T) {
	views := example(t, "smock")
	b := board.LaidOver(views)
	require.Len(t, b.Parts, 3, "the front, the key, and what is alike")
	all := elementsOf(t, b.Parts[0].Elements())
	lines := map[string][]string{} // of each view the lines it has alone; "" for those of all
	strokes := map[string]string{}
	for _, e := range all {
		if e.attributes["data-line"] == "" {
			continue
		}
		view := ""
		for _, outer := range e.within {
			if outer.has("view") {
				view = outer.attributes["data-view"]
			}
		}
		lines[view] = append(lines[view], e.attributes["data-line"])
		pen := e.within[len(e.within)-1].attributes
		strokes[view] = pen["stroke"]
	}
	for _, view := range []string{"as it stands", "square"} {
		assert.Contains(t, lines[view], "neck", "%s has a neck of its own", view)
		assert.NotContains(t, lines[view], "side", "%s has the side that all have", view)
	}
	assert.Contains(t, lines[""], "side")
	assert.NotContains(t, lines[""], "neck")
	assert.Len(t, map[string]bool{strokes[""]: true, strokes["as it stands"]: true, strokes["square"]: true}, 3, "three colours: %v", strokes)
	key := b.Parts[1].Elements()
	for _, name := range []string{"alike in all", "as it stands", "square"} {
		assert.Contains(t, key, ">"+name+"</text>")
	}
}

// Views are told apart by rhythm alone, as in grey, and every colour is read on white (4.5 : 1, WCAG
// 2.2, 1.4.3).
func TestViewsAreToldApart(t *testing.T) {
	line := func(x float64) []mark.Pressed {
		path := plane.Path{{X: x, Y: 0}, {X: x, Y: 100}}
		return []mark.Pressed{{Key: "front", Name: "Front", Outline: plane.Path{{}, {X: 90}, {X: 90, Y: 100}, {}}, Marks: []mark.Mark{{Role: mark.Cut, Key: "side", Path: path}}}}
	}
	var views []board.View
	for i := range 6 {
		views = append(views, board.View{Name: fmt.Sprint("view ", i+1), Pieces: line(10 * float64(i))})
	}
	rhythms, colours := map[string]bool{}, map[string]bool{}
	for _, e := range elementsOf(t, board.LaidOver(views).Parts[0].Elements()) {
		if e.attributes["data-line"] != "side" {
			continue
		}
		pen := e.within[len(e.within)-1].attributes
		rhythms[pen["stroke-dasharray"]] = true
		colours[pen["stroke"]] = true
		var r, g, b int
		_, err := fmt.Sscanf(pen["stroke"], "#%02x%02x%02x", &r, &g, &b)
		require.NoError(t, err)
		contrast := 1.05 / (luminance(float64(r)/255, float64(g)/255, float64(b)/255) + 0.05)
		assert.GreaterOrEqual(t, contrast, 4.5, "%s on white", pen["stroke"])
	}
	assert.Len(t, rhythms, 6, "rhythms")
	for rhythm := range rhythms {
		period := 0.0
		for _, d := range strings.Fields(rhythm) {
			mm, err := strconv.ParseFloat(d, 64)
			require.NoError(t, err)
			period += mm
		}
		assert.LessOrEqual(t, period, 20.0, "%q is seen on a line as long as a child's shoulder seam", rhythm)
	}
	assert.Len(t, colours, 6, "colours")
}

// Where all pieces are alike in all views, they are shown.
func TestViewsThatAreAlike(t *testing.T) {
	one := example(t, "pinafore")[0]
	b := board.LaidOver([]board.View{one, {Name: "<other>", Pieces: one.Pieces}})
	require.Len(t, b.Parts, 4, "three pieces and the key")
	assert.NotContains(t, strings.Join([]string{b.Parts[0].Elements(), b.Parts[3].Elements()}, ""), "<other>")
	assert.Empty(t, board.LaidOver(nil).Parts)
	assert.Empty(t, board.SideBySide(nil).Parts)
}

// Four views of a wide piece stand two and two, not in one row that leaves half of a screen empty; of
// a high one all four stand in a row.
func TestViewsAreAboutAScreen(t *testing.T) {
	for _, c := range []struct {
		name       string
		wide, high float64
		rows       int
	}{{"yoke", 400, 200, 2}, {"skirt", 200, 800, 1}, {"band", 900, 60, 4}} {
		t.Run(c.name, func(t *testing.T) {
			var views []board.View
			for i := range 4 {
				outline := plane.Box{Max: plane.Point{X: c.wide + float64(i), Y: c.high}}.Outline()
				views = append(views, board.View{Name: fmt.Sprint("view ", i+1), Pieces: []mark.Pressed{
					{Key: "one", Name: "One", Outline: outline, Marks: []mark.Mark{{Role: mark.Cut, Key: "side", Path: outline}}},
				}})
			}
			rows := map[float64]int{}
			for _, p := range board.SideBySide(views).Parts {
				rows[p.Box.Min.Y]++
			}
			assert.Len(t, rows, c.rows)
			for y, n := range rows {
				assert.Equal(t, 4/c.rows, n, "in the row at %g", y)
			}
		})
	}
}
