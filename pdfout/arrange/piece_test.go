package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/pdfout/sample"
)

func TestInside(t *testing.T) {
	path := sample.Quarter(plane.Point{}, 80, 50, 0, 360, 90)
	path[len(path)-1] = path[0]
	// A bay, so that a ray may cross more than twice.
	path = append(plane.Path{{X: 20, Y: 0}}, path...)
	path = append(path, plane.Point{X: 20, Y: 0})
	p := NewPiece(mark.Marking{Outline: path})
	rapid.Check(t, func(t *rapid.T) {
		q := plane.Point{X: rapid.Float64Range(-90, 90).Draw(t, "x"), Y: rapid.Float64Range(-60, 60).Draw(t, "y")}
		require.Equal(t, sketch.Within(q, path), p.Inside(q))
	})
	assert.False(t, NewPiece(mark.Marking{}).Inside(plane.Point{}), "no outline, no inside")
}

// The room of a piece that is turned is told without turning it.
func TestRoomOfWhatIsTurned(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := somePiece(t)
		for range rapid.IntRange(0, 3).Draw(t, "words") {
			at := plane.Point{X: rapid.Float64Range(0, 1200).Draw(t, "x"), Y: rapid.Float64Range(0, 1200).Draw(t, "y")}
			p.words = append(p.words, mark.Word{Role: mark.Grain, Text: "straight of the goods", At: at, Out: at})
		}
		if rapid.Bool().Draw(t, "with room for words") {
			p = p.withWords()
		}
		p.Foot, p.Aside = plane.Point{X: rapid.Float64Range(0, 900).Draw(t, "foot"), Y: 20}, rapid.Float64Range(0, 90).Draw(t, "aside")
		before := p.Room()
		require.Equal(t, p.QuarterTurned().Room(), p.turnedRoom())
		require.Equal(t, before, p.Room(), "the piece itself is not changed")
	})
}
