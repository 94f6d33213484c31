package source

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// A rectangle is its four sides, which go round it from corner to corner.
func TestRectangle(t *testing.T) {
	spec, err := Read("pinafore.toml", []byte(`unit = "in"
[piece.band]
rectangle = ["2 1/4", "20.32 cm"]
fold = "left"
grain = "right"
[piece.band.edge.top]
hem = 1
turn = "1/4"
[piece.band.edge.left]
allowance = 0
marked = false
`), sketch.HasLetter)
	require.NoError(t, err)
	require.Empty(t, spec.Faults())
	edges := spec.Pieces[0].Edges
	require.Len(t, edges, 4)
	const across, up = 2.25 * 25.4, 8 * 25.4
	corners := map[string][2]plane.Point{
		"bottom": {{X: 0, Y: 0}, {X: across, Y: 0}},
		"right":  {{X: across, Y: 0}, {X: across, Y: up}},
		"top":    {{X: across, Y: up}, {X: 0, Y: up}},
		"left":   {{X: 0, Y: up}, {X: 0, Y: 0}},
	}
	for i, e := range edges {
		want, known := corners[e.Key]
		require.True(t, known, e.Key)
		for k := range want {
			assert.InDelta(t, 0, want[k].Distance(e.Points.V[k]), 1e-9, "%s, end %d", e.Key, k)
		}
		assert.Equal(t, e.Points.V[0], edges[(i+3)%4].Points.V[1], "each begins where the one before ends")
		assert.Equal(t, at("piece.band.rectangle", 3), e.Points.Place)
		assert.Equal(t, 3, e.Points.On(e.Place, 1).Line)
	}
	assert.Equal(t, at("piece.band.edge.top", 6), edges[2].Place)
	assert.InDelta(t, 25.4, edges[2].Hem.V, 1e-9)
	assert.InDelta(t, 6.35, edges[2].Turn.V, 1e-9)
	assert.Equal(t, at("piece.band.edge.right", 3), edges[1].Place, "a side the file says nothing of stands where the rectangle does")
	assert.True(t, edges[3].Allowance.Given())
	assert.True(t, edges[3].Marked.Given())
	assert.True(t, spec.Names().HasEdge("band", "right"))
}

func TestFaultsOfRectangles(t *testing.T) {
	const form = "\nhint: write how far it goes across, then up: rectangle = [\"2 1/4\", 8]"
	const cornered = " in a piece with \"rectangle\", whose edges are straight and run from corner to corner\nhint: leave it out, or leave rectangle out and give every edge its points"
	band := func(s string) string { return "[piece.band]\nrectangle = [2, 8]\n" + s }
	tests := []struct{ name, in, want string }{
		{"a number", "[piece.band]\nrectangle = 8", "f.toml:2: piece.band.rectangle: must be two lengths in brackets, but is 8" + form},
		{"one length", "[piece.band]\nrectangle = [8]", "f.toml:2: piece.band.rectangle: has 1 length, and needs two" + form},
		{"three lengths", "[piece.band]\nrectangle = [2,5, 8]", "f.toml:2: piece.band.rectangle: has 3 lengths, and needs two" + form},
		{"no width", "[piece.band]\nrectangle = [0, 8]", "f.toml:2: piece.band.rectangle: must be more than 0, but is 0"},
		{"negative height", "[piece.band]\nrectangle = [2, \"-8\"]", "f.toml:2: piece.band.rectangle: must not be negative, but is \"-8\"\nhint: take the minus sign away"},
		{"mistyped", "[piece.band]\nrectangel = [2, 8]", "f.toml:2: piece.band.rectangel: this key is not known\nhint: did you mean \"rectangle\"?"},
		{"points of a side", band("[piece.band.edge.top]\npoints = [[0, 8], [2, 8]]"), "f.toml:4: piece.band.edge.top.points: cannot stand" + cornered},
		{"smooth side", band("[piece.band.edge.top]\nsmooth = true"), "f.toml:4: piece.band.edge.top.smooth: cannot stand" + cornered},
		{"mistyped side", band("[piece.band.edge.botom]\nhem = 1"), "f.toml:3: piece.band.edge.botom: a rectangle has no such edge\nhint: did you mean \"bottom\"?"},
		{"another edge", band("[piece.band.edge.waist]\nhem = 1"), "f.toml:3: piece.band.edge.waist: a rectangle has no such edge\nhint: its edges are bottom, right, top and left"},
		{"hem and allowance of a side", band("[piece.band.edge.top]\nhem = 1\nallowance = 1"), "f.toml:5: piece.band.edge.top.allowance: cannot stand beside \"hem\"\nhint: a hem stands in place of a seam allowance: leave one of them out"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read("f.toml", []byte(tt.in), sketch.HasLetter)
			require.Error(t, err)
			assert.Equal(t, tt.want, err.Error())
		})
	}
}
