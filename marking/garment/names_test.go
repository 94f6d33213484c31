package garment_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A name is parted at the point before which a piece stands and behind which an edge of
// it; either may have points of its own.
func TestSplitName(t *testing.T) {
	known := func(names ...string) func(piece, edge string) bool {
		return func(piece, edge string) bool {
			for _, n := range names {
				if n == piece+"|"+edge {
					return true
				}
			}
			return false
		}
	}
	for _, c := range []struct {
		name        string
		known       func(piece, edge string) bool
		piece, edge string
		ok          bool
	}{
		{"front.neck", known("front|neck"), "front", "neck", true},
		{"front.centre back", known("front|centre back"), "front", "centre back", true},
		{"neck strip.v1.top", known("neck strip.v1|top"), "neck strip.v1", "top", true},
		{"front.neck.left", known("front|neck.left"), "front", "neck.left", true},
		{"a.b.c", known("a|b.c", "a.b|c"), "a", "b.c", true},
		{".neck", known("|neck"), "", "neck", true},
		{"front.neck", known(), "front", "neck", false},
		{"a.b.c", known(), "a", "b.c", false},
		{"neck", known("neck|"), "neck", "", false},
		{"", known(), "", "", false},
		{"front.", known(), "front", "", false},
		{"étole.col", known("étole|col"), "étole", "col", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, edge, ok := garment.SplitName(c.name, c.known)
			assert.Equal(t, c.ok, ok)
			assert.Equal(t, []string{c.piece, c.edge}, []string{piece, edge})
		})
	}
}

func TestMistakesInNamesOfEdges(t *testing.T) {
	rule := sketch.Rect("10") + "\n---\n\n[line.rule]\nalong = \"top\"\ndistance = 2\n"
	two := func(seam string) string { return sketch.Joined("0.5", sketch.Rect("10"), sketch.Rect("10"), seam) }
	dotted := func(seam string) string {
		return sketch.Sewn("0.5", seam, sketch.Piece(`"neck strip.v1"`, sketch.Rect("10")), sketch.Piece("front", sketch.Swap(sketch.Rect("10"), "top:", "top.left:")))
	}
	for _, c := range []struct{ name, text, want string }{
		{"no point", two(`join = ["top", "back.top"]`), `32: seam.s.join: "top" does not say which edge of which piece
hint: write the piece, a dot, and the edge: "front.neck"`},
		{"the piece alone", two(`join = ["front.top", "back"]`), `32: seam.s.join: "back" does not say which edge of which piece
hint: write the piece, a dot, and the edge: "front.neck"`},
		{"no edge behind the point", two(`join = ["front.top", "back."]`), `32: seam.s.join: there is no edge "" in the piece "back"
hint: there is "bottom", "right", "top", "left"`},
		{"a misspelt piece", two(`join = ["front.top", "bakc.top"]`), `32: seam.s.join: there is no piece "bakc"
hint: did you mean "back"?`},
		{"a piece that is not there", two(`join = ["front.top", "sleeve.top"]`), `32: seam.s.join: there is no piece "sleeve"
hint: there is "front", "back"`},
		{"a misspelt edge", two(`join = ["front.tpo", "back.top"]`), `32: seam.s.join: there is no edge "tpo" in the piece "front"
hint: did you mean "top"?`},
		{"an edge in capitals", two(`join = ["front.Top", "back.top"]`), `32: seam.s.join: there is no edge "Top" in the piece "front"
hint: did you mean "top"?`},
		{"an edge that is not there", two(`join = ["front.shoulder", "back.top"]`), `32: seam.s.join: there is no edge "shoulder" in the piece "front"
hint: there is "bottom", "right", "top", "left"`},
		{"layers that do not come out even", sketch.Joined("0.5", "cut = 3\nlayers = 2\n"+sketch.Rect("10"), sketch.Rect("10"), sketch.Tops), `5: piece.front.layers: 3 are cut, which do not come out even in layers of 2
hint: a piece with a lining of the same shape is cut = 2, or 4 for left and right, with layers = 2`},
		{"a line, which is not sewn to anything", sketch.Joined("0.5", rule, sketch.Rect("10"), `join = ["front.rule", "back.top"]`), `36: seam.s.join: "rule" is a line inside the piece "front", and only edges are joined
hint: name the edges that are sewn together`},
		{"the same joined twice", two(`join = ["front.top", ["back.top", "back.left"]]` + "\n[seam.t]\n" + `join = [["back.left", "back.top"], "front.top"]`), `34: seam.t.join: the same is joined as in seam "s"
hint: leave one of them out; a seam counts for every piece that is cut`},
		{"an edge named twice", two(`join = ["front.top", ["back.top", "back.left", "back.top"]]`), `32: seam.s.join: "back.top" is named twice
hint: name it once; an edge counts for every piece that is cut`},
		{"an edge named three times is told once", two(`join = [["front.top", "front.top", "front.top"], "back.top"]`), `32: seam.s.join: "front.top" is named twice
hint: name it once; an edge counts for every piece that is cut`},
		{"two edges named twice", two(`join = ["front.top", ["back.top", "back.left", "back.top", "back.left"]]`), `32: seam.s.join: "back.top" is named twice
hint: name it once; an edge counts for every piece that is cut
32: seam.s.join: "back.left" is named twice
hint: name it once; an edge counts for every piece that is cut`},
		{"both sides wrong, and another seam", two("join = [\"top\", \"bakc.top\"]\n[seam.t]\njoin = [\"front.lfet\", \"back.left\"]"), `32: seam.s.join: "top" does not say which edge of which piece
hint: write the piece, a dot, and the edge: "front.neck"
32: seam.s.join: there is no piece "bakc"
hint: did you mean "back"?
34: seam.t.join: there is no edge "lfet" in the piece "front"
hint: did you mean "left"?`},
		{"a misspelt edge of a piece with a point in its name", dotted(`join = ["neck strip.v1.tpo", "front.right"]`), `32: seam.s.join: there is no edge "tpo" in the piece "neck strip.v1"
hint: did you mean "top"?`},
		{"a misspelt edge with a point in its name", dotted(`join = ["neck strip.v1.top", "front.top.lfet"]`), `32: seam.s.join: there is no edge "top.lfet" in the piece "front"
hint: did you mean "top.left"?`},
		{"a misspelt piece with a point in its name", dotted(`join = ["neck strip.v2.top", "front.right"]`), `32: seam.s.join: there is no piece "neck strip"
hint: there is "neck strip.v1", "front"`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(c.text)
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}

// Names with points in them are found, whichever of their points parts them.
func TestNamesWithPoints(t *testing.T) {
	for _, c := range []struct{ name, strip, edge, joins string }{
		{"in the piece", `"neck strip.v1"`, "top", "neck strip.v1.top"},
		{"in the edge", "strip", "top.left", "strip.top.left"},
		{"in both", `"neck.strip"`, "top.left", "neck.strip.top.left"},
		{"at the end", `"strip."`, "top", "strip..top"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := made.Seam(t, sketch.Sewn("0.5", sketch.Swap(`join = ["NAME", "front.top"]`, "NAME", c.joins),
				sketch.Piece(c.strip, sketch.Swap(sketch.Rect("10"), "top:", c.edge+":")), sketch.Piece("front", sketch.Rect("10"))))
			one := s.Sides[0].Courses[0]
			assert.Equal(t, strings.Trim(c.strip, `"`), one.Piece.Key)
			assert.Equal(t, c.edge, one.Key)
			assert.InDelta(t, 9, one.Length.MM/25.4, 1e-6)
		})
	}
}

// A name that could be a line of one piece and an edge of another is the edge.
func TestNameOfALineAndOfAnEdge(t *testing.T) {
	text := sketch.Sewn("0.5", `join = ["a.b.c", "a.top"]`,
		sketch.Piece("a", sketch.Rect("10")+"\n---\n\n[line.\"b.c\"]\nalong = \"top\"\ndistance = 2\n"), sketch.Piece(`"a.b"`, sketch.Swap(sketch.Rect("10"), "top:", "c:")))
	one := made.Seam(t, text).Sides[0].Courses[0]
	assert.Equal(t, []string{"a.b", "c"}, []string{one.Piece.Key, one.Key})
}

// One tube is not two: an edge is joined with itself only where there are two, linings not
// counted.
func TestEdgeJoinedWithItselfIsThereTwice(t *testing.T) {
	self := `join = ["front.top", "front.top"]`
	_, err := made.Pattern(sketch.Sewn("0.5", self, sketch.Piece("front", "cut = 2\nlayers = 2\n"+sketch.Rect("10"))))
	assert.Error(t, err, "cut twice, one of them a lining")
	_, err = made.Pattern(sketch.Sewn("0.5", self, sketch.Piece("front", "cut = 4\nlayers = 2\n"+sketch.Rect("10"))))
	assert.NoError(t, err, "left and right")
}
