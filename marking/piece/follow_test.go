package piece_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// bodice is half a front in mm, whose neck is drawn anew.
const bodice = `
unit = "mm"
[piece.front]
[piece.front.edge.centre]
points = [[0, 0], [0, 100]]
[piece.front.edge.neck]
points = [[0, 100], [30, 120]]
[piece.front.edge.shoulder]
points = [[30, 120], [60, 110]]
[piece.front.edge.side]
points = [[60, 110], [70, 50], [60, 0]]
smooth = true
[piece.front.edge.hem]
points = [[60, 0], [0, 0]]
[piece.back]
like = "front"
`

// drawnAnew is the back of the bodice with more lines of its own.
func drawnAnew(t *testing.T, more string) (*piece.Piece, error) {
	t.Helper()
	spec, err := source.Read("f.toml", []byte(bodice+more), sketch.HasLetter)
	require.NoError(t, err)
	pattern, err := garment.Check(spec)
	if err != nil {
		return nil, err
	}
	return &pattern.Pieces[1], nil
}

// The edges beside one that is drawn anew are cut off where it ends on them, or run on to it.
func TestEdgesFollowOneThatIsDrawnAnew(t *testing.T) {
	for _, c := range []struct{ name, more, want string }{
		{"deeper", "[piece.back.edge.neck]\npoints = [[0, 80], [30, 120]]", "centre 80 neck 50 shoulder 31.6"},
		{"higher: the centre runs on", "[piece.back.edge.neck]\npoints = [[0, 112], [30, 120]]", "centre 112 neck 31 shoulder 31.6"},
		{"wider, on the shoulder", "[piece.back.edge.neck]\npoints = [[0, 100], [45, 115]]", "centre 100 neck 47.4 shoulder 15.8"},
		{"wider, a millimetre off the shoulder", "[piece.back.edge.neck]\npoints = [[0, 100], [45, 116]]", "centre 100 neck 47.8 shoulder 16.2"},
		{"narrower: the shoulder runs on", "[piece.back.edge.neck]\npoints = [[0, 100], [24, 122]]", "centre 100 neck 32.6 shoulder 37.9"},
		{"both ends", "[piece.back.edge.neck]\npoints = [[0, 60], [45, 60], [45, 115]]", "centre 60 neck 100 shoulder 15.8"},
		{"with the points the other way", "[piece.back.edge.neck]\npoints = [[45, 115], [0, 60]]", "centre 60 neck 71.1 shoulder 15.8"},
		{"the centre drawn anew too", "[piece.back.edge.neck]\npoints = [[5, 80], [30, 120]]\n[piece.back.edge.centre]\npoints = [[0, 0], [5, 80]]", "centre 80.2 neck 47.2 shoulder 31.6"},
		{"nothing moves", "[piece.back.edge.neck]\npoints = [[0, 100], [10, 90], [30, 120]]", "centre 100 neck 50.2 shoulder 31.6"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, err := drawnAnew(t, c.more)
			require.NoError(t, err)
			var told []string
			for _, key := range []string{"centre", "neck", "shoulder"} {
				length := p.Edges[p.EdgeNumber(key)].Path.Length()
				told = append(told, fmt.Sprintf("%s %v", key, math.Round(length*10)/10))
			}
			assert.Equal(t, c.want, strings.Join(told, " "))
		})
	}
}

// A curve that is cut off keeps its course.
func TestACurveThatIsCutOffKeepsItsCourse(t *testing.T) {
	whole, err := drawnAnew(t, "")
	require.NoError(t, err)
	side := whole.Edges[whole.EdgeNumber("side")].Path
	at, _ := side.At(side.Length() * 0.2)
	if side[0].Y < side[len(side)-1].Y {
		at, _ = side.At(side.Length() * 0.8)
	}
	p, err := drawnAnew(t, fmt.Sprintf("[piece.back.edge.shoulder]\npoints = [[30, 120], [%v, %v]]", at.X, at.Y))
	require.NoError(t, err)
	cut := p.Edges[p.EdgeNumber("side")].Path
	assert.InDelta(t, side.Length()*0.8, cut.Length(), 0.1)
	for _, q := range cut {
		_, _, off := side.Nearest(q)
		assert.LessOrEqual(t, off, 0.05, "at %v", q)
	}
}

// An arc is cut off on its circle. It does not run on: what is drawn anew beyond its end is not
// moved to it.
func TestArcsThatFollow(t *testing.T) {
	for name, points := range map[string]string{"of two points": "[[0, 100], [30, 130]]", "of three points": "[[0, 100], [18, 106], [30, 130]]"} {
		t.Run(name, func(t *testing.T) {
			round := strings.NewReplacer("[[0, 100], [30, 120]]", points+"\ncentre = [0, 130]", "[[30, 120], ", "[[30, 130], ").Replace(bodice)
			drawn := func(shoulder string) (*garment.Pattern, error) {
				spec, err := source.Read("f.toml", []byte(round+"[piece.back.edge.shoulder]\npoints = "+shoulder), sketch.HasLetter)
				require.NoError(t, err)
				return garment.Check(spec)
			}
			_, err := drawn("[[30, 136], [60, 110]]")
			require.Error(t, err)
			assert.Contains(t, err.Error(), `the outline is open between "neck" and "shoulder": their ends at (30 mm, 130 mm) and, in line 19, (30 mm, 136 mm) are 6 mm apart`)

			pattern, err := drawn("[[24, 112], [60, 110]]")
			require.NoError(t, err)
			back := pattern.Pieces[1]
			neck := back.Edges[back.EdgeNumber("neck")].Path
			assert.InDelta(t, 30*math.Atan2(24, 18), neck.Length(), 0.02, "so far round the circle")
		})
	}
}

// One that ends on none of them leaves the outline open, by how much is told.
func TestNoEdgeFollowsOneThatEndsElsewhere(t *testing.T) {
	_, err := drawnAnew(t, "[piece.back.edge.neck]\npoints = [[5, 90], [30, 120]]")
	assert.EqualError(t, err, "f.toml:5: piece.back.edge.centre: the outline is open between \"centre\" and \"neck\": their ends at (0 mm, 100 mm) and, in line 18, (5 mm, 90 mm) are 11 mm apart\n"+
		"hint: let the edge that is drawn anew end on the one beside it, or where that points to, and it follows; or draw that one anew too")
}

// One that ends beyond the far end of the edge beside it leaves nothing of that edge, which does
// not follow then.
func TestNoEdgeFollowsBeyondItsFarEnd(t *testing.T) {
	_, err := drawnAnew(t, "[piece.back.edge.neck]\npoints = [[0, 100], [80, 100]]")
	assert.ErrorContains(t, err, `the outline is open between "neck" and "shoulder"`)
}

// Without an edge that is drawn anew nothing follows: a gap may be a slip.
func TestAGapInAFileIsNotClosed(t *testing.T) {
	spec, err := source.Read("f.toml", []byte(strings.Replace(bodice, "[[0, 100], [30", "[[0, 90], [30", 1)), sketch.HasLetter)
	require.NoError(t, err)
	_, err = garment.Check(spec)
	require.Error(t, err)
	assert.Contains(t, err.Error(), "f.toml:5: piece.front.edge.centre: the outline is open between \"centre\" and \"neck\"")
}
