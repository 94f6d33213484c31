package source

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// Points are enlarged; lengths are not, nor is the piece as the file has it changed.
func TestFullSize(t *testing.T) {
	spec, err := Read("f.toml", []byte(`unit = "mm"
[piece.front]
enlarge = "1 1/2"
grain = [[2, 2], [2, 4]]
[piece.front.edge.all]
points = [[0, 0], "up 20", [40, "21/2"]]
allowance = 10
[piece.front.line.l]
points = [[2, 2], "right 8"]
[piece.front.line.m]
along = "all"
distance = 6
[piece.band]
enlarge = 4
rectangle = [10, 20]
`), sketch.HasLetter)
	require.NoError(t, err)
	require.Empty(t, spec.Faults())
	assert.Equal(t, 1.5, spec.Pieces[0].Enlarge.V)
	full := spec.Pieces[0].FullSize()
	assert.Equal(t, []plane.Point{{X: 3, Y: 3}, {X: 3, Y: 6}}, full.GrainPoints.V)
	assert.Equal(t, []plane.Point{{X: 0, Y: 0}, {X: 0, Y: 30}, {X: 60, Y: 15.75}}, full.Edges[0].Points.V)
	assert.Equal(t, []Other{{V: plane.Point{X: 60, Y: 3.75}, By: `"2 1/2" for 21/2`}}, full.Edges[0].Points.Others(2))
	assert.Equal(t, 10.0, full.Edges[0].Allowance.V)
	assert.Equal(t, []plane.Point{{X: 3, Y: 3}, {X: 15, Y: 3}}, full.Lines[0].Points.V)
	assert.Equal(t, 6.0, full.Lines[1].Distance.V)
	assert.Equal(t, full, full.FullSize(), "it is enlarged once")
	assert.Equal(t, plane.Point{X: 0, Y: 20}, spec.Pieces[0].Edges[0].Points.V[1])
	assert.Equal(t, []plane.Point{{X: 40, Y: 0}, {X: 40, Y: 80}}, spec.Pieces[1].FullSize().Edges[1].Points.V)
}

func TestFaultsOfEnlarging(t *testing.T) {
	const hint = "\nhint: it is a number such as 4 or \"1 1/2\": how many times as large as its points the piece is"
	for _, tt := range []struct{ name, enlarge, want string }{
		{"nothing", "0", "must be from 0.01 to 100, but is 0" + hint},
		{"less than nothing", "-4", "must be from 0.01 to 100, but is -4" + hint},
		{"too many times", "101", "must be from 0.01 to 100, but is 101" + hint},
		{"no number", "nan", "must be from 0.01 to 100, but is nan" + hint},
		{"a percentage", "\"400 %\"", "\"400 %\" is not a number" + hint},
		{"true", "true", "must be a number, but is true" + hint},
		{"beyond all cloth", "100", "the piece, enlarged so, is more than 100 m" + hint},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read("f.toml", []byte("unit = \"mm\"\n[piece.front]\nenlarge = "+tt.enlarge+"\n[piece.front.edge.all]\npoints = [[0, 0], [1001, 0]]\n"), sketch.HasLetter)
			require.Error(t, err)
			assert.Equal(t, "f.toml:3: piece.front.enlarge: "+tt.want, err.Error())
		})
	}
	made := &Spec{Pieces: []PieceSpec{{
		Key: "front", Enlarge: Given(200.0),
		Edges: []EdgeSpec{{Key: "all", Points: Points{Value: Given([]plane.Point{{}, {X: 1000}})}}},
	}}}
	assert.Equal(t, "piece.front.enlarge: must be from 0.01 to 100, but is 200"+hint+"\npiece.front.enlarge: the piece, enlarged so, is more than 100 m"+hint, made.Faults().Error())
}
