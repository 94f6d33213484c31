package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/source"
)

// Whatever is drawn of a file that is looked at is told, in each of its views, with lines of the
// others on the sheets too; and what is told stands in a file that was read.
func TestLookTellsWhatItDraws(t *testing.T) {
	for _, file := range examples(t) {
		for name, p := range map[string]printing{
			"as it is": {times: 1},
			"with all": {times: 1, gauges: true, allViews: true, transfers: []source.Transfer{source.Trace, source.Template, source.Mirror, source.Prick}},
		} {
			l := &looking{printing: p, in: file}
			require.NoError(t, l.begin())
			require.Empty(t, l.scene.Mistakes)
			require.Len(t, l.scene.Views, len(l.good))
			for i, view := range l.scene.Views {
				told := map[mark.At]mark.Told{}
				for _, one := range view.Told() {
					told[one.At] = one
					for _, place := range one.Places {
						assert.Contains(t, l.files(), place.File, "%s, %s: %v", file, name, one.At)
					}
				}
				for _, m := range l.good[i].set().Pieces {
					for _, line := range m.Marks {
						if called := line.Called(); called != "" && m.Form == nil {
							assert.Contains(t, told, mark.At{Piece: m.Key, Line: called}, "%s, %s: a %s", file, name, line.Role)
						}
					}
				}
				for _, remark := range view.Remarks() {
					for _, at := range remark.At {
						assert.Contains(t, told, at, "%s, %s: %s", file, name, remark.Text)
					}
				}
			}
		}
	}
}
