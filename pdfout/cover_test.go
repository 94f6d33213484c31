package pdfout

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/figures"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// The cautions of a set stand under their heading on the first page; without any there
// is no heading.
func TestCautionsOnTheFirstPage(t *testing.T) {
	for _, name := range paper.Names() {
		t.Run(name, func(t *testing.T) {
			set := sets.Few()
			d, s := drawn(t, set, name)
			said := ""
			for _, p := range d.Pages[:s.Front] {
				said += seen.Squeezed(strings.Join(p.Words(), ""))
			}
			assert.Contains(t, said, seen.Squeezed("Take care"))
			for _, text := range figures.Cautions(set.Pieces) {
				assert.Contains(t, said, seen.Squeezed(text))
			}
		})
	}
	p := seen.Paper(t, "letter")
	b, err := plan(sets.Few(), p)
	require.NoError(t, err)
	for _, p := range b.front {
		for _, l := range p.Labels {
			assert.NotEqual(t, "Take care", l.Text)
		}
	}
}

// A line of the key whose pen has arrow heads is drawn with them, at the ends and in
// the colour that they have on the sheets.
func TestHeadsInTheKey(t *testing.T) {
	d, _ := drawn(t, sets.Few(), "letter")
	first := d.Pages[0]
	for role, heads := range map[mark.Role]int{mark.Arrow: 1, mark.Grain: 2, mark.Cut: 0, mark.Stitch: 0} {
		t.Run(role.String(), func(t *testing.T) {
			var name seen.Text
			for _, r := range first.Texts {
				if r.Text == role.String() {
					name = r
				}
			}
			require.NotEmpty(t, name.Text, "not in the key")
			var line plane.Path
			var tips []plane.Point
			for _, q := range first.Paths {
				if len(q.Parts) != 1 || math.Abs(q.Parts[0][0].Y-name.At.Y) > 2 || q.Parts[0][0].X >= name.At.X {
					continue
				}
				switch {
				case q.Painted == seen.Stroked && len(q.Parts[0]) == 2:
					line = q.Parts[0]
				case q.Painted == seen.Filled && len(q.Parts[0]) == 3:
					tips = append(tips, q.Parts[0][0])
					assert.Equal(t, ink.PenOf(role).Colour, q.Fill)
				}
			}
			require.Len(t, line, 2, "no sample")
			require.Len(t, tips, heads)
			if heads > 0 {
				assert.Contains(t, tips, line[1])
			}
			if heads > 1 {
				assert.Contains(t, tips, line[0])
			}
		})
	}
}
