package arrange

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
)

// A panel that is higher than a page goes on over several: every note stands on one of them,
// once, in its order, and each page names the piece.
func TestAPanelHigherThanAPage(t *testing.T) {
	t.Parallel()
	for name, notes := range map[string][]string{
		"many notes": func() []string {
			var notes []string
			for i := range 60 {
				notes = append(notes, fmt.Sprintf("note no. %d says what is to be known of the tie, and is longer than one line", i+1))
			}
			return notes
		}(),
		"one long note": {strings.Repeat("turn it over and press it. ", 500)},
	} {
		t.Run(name, func(t *testing.T) {
			m := sample.Rectangle("tie", "Tie", 760, 25, notes...)
			m.Sketch = &mark.Sketch{Width: 40, Height: 50, Lines: []plane.Path{{{}, {Y: 50}}}}
			s := lettered(t, Set{Pieces: []mark.Marking{m}})
			require.NotEmpty(t, s.Apart)
			pages := s.PanelPages()
			require.Greater(t, len(pages), 1)
			var read []string
			for i := range pages {
				page := &pages[i]
				require.NotEmpty(t, page.Labels)
				heading := page.Labels[0].Text
				assert.True(t, heading == "Tie" || heading == "Tie, continued", heading)
				window := page.Grid.WindowOf(page.Cells[0])
				for _, l := range page.Labels {
					assert.True(t, page.Whole(l.Room.Bounds()), l.Text)
					if l.Style.Size == 9 {
						read = append(read, l.Text)
					}
				}
				for _, r := range page.Thin {
					assert.True(t, window.Holds(r[0]) && window.Holds(r[1]))
				}
				for a := range page.Labels {
					for b := range a {
						assert.False(t, page.Labels[a].Room.Grown(-0.1).Meets(page.Labels[b].Room.Grown(-0.1)), "%q on %q", page.Labels[a].Text, page.Labels[b].Text)
					}
				}
			}
			assert.Equal(t, strings.Fields(strings.Join(notes, " ")), strings.Fields(strings.Join(read, " ")))
		})
	}
}
