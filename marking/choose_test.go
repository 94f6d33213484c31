package marking

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
)

func TestChoose(t *testing.T) {
	p := &garment.Pattern{Title: "T", Pieces: []piece.Piece{{Key: "front", Name: "Front"}, {Key: "back", Name: "Lower back"}, {Key: "left sleeve", Name: "Left sleeve"}}}
	for _, c := range []struct {
		name  string
		names []string
		want  []string
	}{
		{"one", []string{"back"}, []string{"back"}},
		{"in the order of the file", []string{"left sleeve", "front"}, []string{"front", "left sleeve"}},
		{"spaces and capitals", []string{" Front ", "LEFT SLEEVE"}, []string{"front", "left sleeve"}},
		{"by the name on the sheet", []string{"lower back"}, []string{"back"}},
		{"twice", []string{"back", "back"}, []string{"back"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			only, err := Choose(p, c.names)
			require.NoError(t, err)
			var got []string
			for _, piece := range only.Pieces {
				got = append(got, piece.Key)
			}
			assert.Equal(t, c.want, got)
			assert.Equal(t, "T", only.Title)
			assert.Len(t, p.Pieces, 3, "the pattern itself keeps all")
		})
	}
	for _, c := range []struct {
		name  string
		names []string
		want  string
	}{
		{"misspelt", []string{"frnt"}, "no piece is called \"frnt\"\nhint: did you mean \"front\"?"},
		{"none", []string{""}, "no piece is called \"\"\nhint: the pieces are front, back, left sleeve"},
		{"several", []string{"collar", "front", "cuff"}, "no piece is called \"collar\", or \"cuff\"\nhint: the pieces are front, back, left sleeve"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Choose(p, c.names)
			assert.EqualError(t, err, c.want)
		})
	}
}
