package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

func TestOutlineIsChained(t *testing.T) {
	square := "0,0 4,0 4,3 0,3"
	for _, c := range []struct{ name, text string }{
		{"in order", "a: 0,0 4,0\nb: 4,0 4,3\nc: 4,3 0,3\nd: 0,3 0,0"},
		{"in any order", "a: 0,0 4,0\nc: 4,3 0,3\nd: 0,3 0,0\nb: 4,0 4,3"},
		{"in any direction", "a: 0,0 4,0\nc: 0,3 4,3\nd: 0,3 0,0\nb: 4,3 4,0"},
		{"clockwise", "a: 4,0 0,0\nd: 0,0 0,3\nc: 0,3 4,3\nb: 4,3 4,0"},
		{"two edges", "a: 0,0 4,0 4,3\nb: 0,0 0,3 4,3"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, _ := made.Front(t, "0", c.text)
			assert.InDelta(t, 12*25.4*25.4, piece.Outline.Area(), 1e-6, "the area, counter-clockwise")
			for _, corner := range strings.Fields(square) {
				assert.Contains(t, sketch.Inches(piece.Outline), corner)
			}
			for i, e := range piece.Edges {
				_, after := piece.Neighbours(i)
				assert.Equal(t, e.Path[len(e.Path)-1], piece.Edges[after].Path[0],
					"%s ends where %s begins", e.Key, piece.Edges[after].Key)
			}
		})
	}
}

func TestUnitsStandSideBySide(t *testing.T) {
	pattern := made.Of(t, `unit = "cm"
[piece.strip]
[piece.strip.edge.long]
points = [[0, 0], ["4 in", "0 mm"]]
[piece.strip.edge.rest]
points = [["101.6 mm", 0], ["10.16", "1"], ["0", '3/8"'], [0, 0]]`)
	got := pattern.Pieces[0].Outline.Bounds().Max
	assert.InDelta(t, 101.6, got.X, 1e-9, "4 in, 101.6 mm and 10.16 cm are one")
	assert.InDelta(t, 10, got.Y, 1e-9)
}

// A neck that reaches the fold nearly square to it is drawn square to it, so
// that it opens without a point; one that does not keeps its direction.
func TestSmoothEdgeMeetsTheFoldSquare(t *testing.T) {
	for _, c := range []struct {
		name, second string
		square       bool
	}{
		{"nearly square", "1.5,10.1", true},
		{"a V neck", "1.5,11.2", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, _ := made.Front(t, "0", "fold = \"cf\"\ncf: 0,0 0,10\nneck: 0,10 "+c.second+" 3,12 | smooth = true\nrest: 3,12 6,12 6,0 0,0")
			neck := piece.Edges[piece.EdgeNumber("neck")].Path
			arrives := neck.EndDirection() // counter-clockwise: from the shoulder to the fold
			assert.Equal(t, c.square, arrives.Y > -0.03 && arrives.Y < 0.03, "it arrives at %v", arrives)
		})
	}
}

// The full-size draft of a child's underwaist: McGlauflin, Handicraft for
// Girls, 1910, p. 53; the lengths are derived from its corner points.
func TestUnderwaistDraft(t *testing.T) {
	pattern := made.Example(t, "underwaist.toml")
	front, back := pattern.Pieces[0], pattern.Pieces[1]
	for _, c := range []struct {
		name  string
		piece piece.Piece
		edge  string
		want  float64 // inches, as cut
	}{
		{"side seam, front", front, "side", 5.0249},
		{"side seam, back", back, "side", 5.0249},
		{"shoulder, front", front, "shoulder", 2.6926},
		{"shoulder, back", back, "shoulder", 2.5739},
	} {
		t.Run(c.name, func(t *testing.T) {
			e := c.piece.Edges[c.piece.EdgeNumber(c.edge)]
			assert.InDelta(t, c.want, e.Path.Length()/25.4, 0.00005)
		})
	}
	difference := front.Edges[front.EdgeNumber("shoulder")].Path.Length() - back.Edges[back.EdgeNumber("shoulder")].Path.Length()
	assert.InDelta(t, 0.119, difference/25.4, 0.0005, "the front shoulder is longer")
	assert.InDelta(t, 1, back.Edges[back.EdgeNumber("centre back")].Line[0].X/25.4, 0.0005, "the draft's hem line lies at x = 1")
}
