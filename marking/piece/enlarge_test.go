package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// A draft at a share of its size, enlarged, is the piece of the draft at full size.
func TestEnlargedDrafts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draft := rapid.SampledFrom([]func(*rapid.T) string{sketch.Bodice, sketch.Sleeve, sketch.Gore, sketch.Collar}).Draw(t, "draft")
		text := sketch.Front(draft(t))
		spec, err := source.Read("f.toml", []byte(text), sketch.HasLetter)
		require.NoError(t, err)
		full, err := garment.Check(spec)
		if err != nil {
			t.Skip("a draft whose allowances leave nothing")
		}
		by := rapid.SampledFrom([]float64{4, 8, 1.5, 0.1}).Draw(t, "enlarge")
		small := *spec
		small.Pieces = []source.PieceSpec{spec.Pieces[0]}
		front := &small.Pieces[0]
		front.Enlarge = source.Given(by)
		front.Edges = append([]source.EdgeSpec{}, front.Edges...)
		for i := range front.Edges {
			points := &front.Edges[i].Points.V
			*points = append((*points)[:0:0], *points...)
			for k := range *points {
				(*points)[k] = (*points)[k].Mul(1 / by)
			}
		}
		enlarged, err := garment.Check(&small)
		require.NoError(t, err, text)
		for i, e := range full.Pieces[0].Edges {
			got := enlarged.Pieces[0].Edges[i]
			require.Equal(t, e.Key, got.Key)
			require.InDelta(t, e.Allowance, got.Allowance, 1e-9)
			require.InDelta(t, e.Path.Length(), got.Path.Length(), 1e-3, "%s of\n%s", e.Key, text)
			require.InDelta(t, e.Sewn.Length(), got.Sewn.Length(), 1e-3, "%s of\n%s", e.Key, text)
		}
	})
}

// Messages name places as the draft has them, and lengths at full size.
func TestPlacesOfAnEnlargedDraft(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"a gap", "enlarge = 4\nbottom: 0,0 1,0\nright: 1,0.25 1,1\nrest: 1,1 0,1 0,0",
			`pinafore.toml:5: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (1 in, 0 in) of the draft and, in line 8, (1 in, 1/4 in) of the draft are 1 in apart at full size
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"a point off the piece", "enlarge = 4\nbottom: 0,0 1,0\nrest: 1,0 1,1 0,1 0,0\n---\n\n[line.l]\npoints = [[0.5, 0.5], [1.5, 0.5]]",
			`pinafore.toml:12: piece.front.line.l.points: point 2, (1 1/2 in, 1/2 in) of the draft, lies outside the piece by 2 in
hint: is a number wrong? x comes first, then y; a line that is to end at that edge has to = "rest"`},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0\n" + sketch.Front(tt.text))
			require.Error(t, err)
			assert.Equal(t, tt.want, err.Error())
		})
	}
}
