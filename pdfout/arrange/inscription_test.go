package arrange

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// In every width of a panel no line of the notes ends inside a number with its fraction: a 5
// at the end of a line is read for a length of its own.
func TestPanelsKeepNumbersWhole(t *testing.T) {
	p := NewPiece(mark.Marking{Name: "Yoke", Notes: []string{"field: 12 tucks, each 1/8 in wide", "the field tucks end, first to last: 5 3/8, 5 3/8, 5 5/16, 5 1/4 in"}})
	torn := regexp.MustCompile(`(^|[^/\d])\d+$`)
	for limit := 30.0; limit < 150; limit++ {
		var lines []string
		for _, l := range p.ownPanel(limit).Labels {
			lines = append(lines, l.Text)
			assert.LessOrEqual(t, l.At.X+l.Style.Width(l.Text), limit, l.Text)
		}
		for i, line := range lines[:len(lines)-1] {
			if next := lines[i+1]; torn.MatchString(line) && regexp.MustCompile(`^\d+/`).MatchString(next) {
				t.Errorf("in %.0f mm: %q is torn from %q", limit, line, next)
			}
		}
		assert.Contains(t, strings.Join(lines, " "), "5 3/8, 5 3/8, 5 5/16, 5 1/4 in", "nothing is lost")
	}
}

// Where an inscription has the most room is looked for with few questions: it is the place that
// asking every place for every room finds.
func TestRoomiestOfAllPlaces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		within := func(low, high float64, what string) float64 { return rapid.Float64Range(low, high).Draw(t, what) }
		w, h := within(30, 160, "width"), within(30, 160, "height")
		m := sample.Ruled("p", "P", w, h)
		fold := within(0, h, "fold")
		m.Marks = append(m.Marks, sample.Edge(mark.Fold, "hem", plane.Point{Y: fold}, plane.Point{X: w, Y: fold}))
		p := NewPiece(m)
		f := NewField([]Piece{p})
		for range rapid.IntRange(0, 6).Draw(t, "taken") {
			f.Take(text.Level(plane.Point{X: within(0, w, "x"), Y: within(0, h, "y")}, plane.Point{X: within(0, 20, "across"), Y: within(0, 20, "up")}))
		}
		one, least := Inscription{Lines: text.Lines{Height: within(1, 20, "high")}, Width: within(1, 60, "wide")}, within(0.5, 3, "least")
		fits := func(b plane.Box) bool { return b.Min.X > w/10 }
		u := rapid.SampledFrom([]plane.Point{text.Across(), text.Up()}).Draw(t, "u")
		got, found := p.Roomiest(f, 2, one, u, least, fits)

		room := func(at plane.Point) float64 { // that a place has; 0 where it has too little
			has := 0.0
			for _, more := range []float64{least, 2, 3, 4.5, 6, 12, 20, 30, 45} {
				if s := one.Around(at, u); more >= least && p.Inside(at) && !p.hemmed(at) && fits(s.Bounds()) && f.Free(s.Grown(more)) {
					has = more
				}
			}
			return has
		}
		var places []plane.Point
		steps := plane.Point{X: max(2, p.Bounds.Width()/48), Y: max(2, p.Bounds.Height()/48)}
		for i := -24.0; i <= 24; i++ {
			for k := -24.0; k <= 24; k++ {
				if at := p.Bounds.Centre().Add(plane.Point{X: i * steps.X, Y: k * steps.Y}); p.Bounds.Holds(at) {
					places = append(places, at)
				}
			}
		}
		most := 0.0
		for _, at := range places {
			most = max(most, room(at))
		}
		require.Equal(t, most > 0, found)
		if !found {
			return
		}
		require.Equal(t, most, room(got.Middle), "the room at %v", got.Middle)
		for _, at := range places {
			if room(at) == most {
				require.LessOrEqual(t, got.Middle.Distance(p.Bounds.Centre()), at.Distance(p.Bounds.Centre()), "%v is as roomy", at)
			}
		}
	})
}
