package arrange

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// Names along the outline stand inside the piece, whatever way its edges run
// on the paper.
func TestNamesStandInside(t *testing.T) {
	set := Set{Title: "Linden pinafore", Unit: length.Inch, Pieces: []mark.Marking{sample.Skirt(), sample.Bodice()}}
	sheets := Arrange(set, paper.All()[0]).Sheets
	looked := 0
	for i := range sheets {
		s := &sheets[i]
		s.FindJoins(1)
		s.Letter()
		outline := s.Pieces[0].Outline.Path()
		all := slices.Clone(s.Labels)
		for _, name := range s.Captions {
			all = append(all, name.Label)
		}
		for _, l := range all {
			assert.True(t, sketch.Within(l.Room.Centre, outline), "%q of %v", l.Text, s.Pieces[0].Name)
			looked++
		}
	}
	assert.Greater(t, looked, 15)
}

// Lines have their names where there is room, with the role of each; the title is on one
// page, whole and upright.
func TestNamesOfLines(t *testing.T) {
	s := lettered(t, Set{Title: "Linden pinafore", Size: "18 months", Pieces: []mark.Marking{sample.Bodice()}, Unit: length.Inch})
	found := map[string]bool{}
	for _, c := range s.Captions {
		found[c.Text+"/"+c.Role.String()] = true
	}
	for _, want := range []string{
		"neck/cutting line", "armhole/cutting line", "shoulder/cutting line", "hem/cutting line",
		"centre front, place on the fold/place on the fold", "neck/stitch line", "hem/fold line",
		"bust line/centre line", "grain/grain line", "tucks end/end of tucks", "placement/placement line",
	} {
		assert.Contains(t, found, want)
	}
	// Six tucks 3/8 in apart with stitching between leave no room for a name.
	assert.NotContains(t, found, "tuck 3/tuck fold")
	titles := slices.DeleteFunc(slices.Clone(s.Labels), func(l text.Label) bool { return l.Text != "Front" })
	require.Len(t, titles, 1)
	assert.True(t, s.Whole(titles[0].Room.Bounds()))
	assert.Equal(t, 22.0, titles[0].Style.Size)
	assert.Equal(t, plane.Point{X: 1}, titles[0].U, "upright")
}
