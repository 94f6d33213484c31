package garment

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
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
			piece, edge, ok := splitName(c.name, c.known)
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
			_, err := check(c.text)
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "linden.toml:", ""))
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
			s := theSeam(t, sketch.Sewn("0.5", sketch.Swap(`join = ["NAME", "front.top"]`, "NAME", c.joins),
				sketch.Piece(c.strip, sketch.Swap(sketch.Rect("10"), "top:", c.edge+":")), sketch.Piece("front", sketch.Rect("10"))))
			one := s.Sides[0].Courses[0]
			assert.Equal(t, strings.Trim(c.strip, `"`), one.Piece)
			assert.Equal(t, c.edge, one.Edge)
			assert.InDelta(t, 9, one.Length.MM/25.4, 1e-6)
		})
	}
}

// A name that could be a line of one piece and an edge of another is the edge.
func TestNameOfALineAndOfAnEdge(t *testing.T) {
	text := sketch.Sewn("0.5", `join = ["a.b.c", "a.top"]`,
		sketch.Piece("a", sketch.Rect("10")+"\n---\n\n[line.\"b.c\"]\nalong = \"top\"\ndistance = 2\n"), sketch.Piece(`"a.b"`, sketch.Swap(sketch.Rect("10"), "top:", "c:")))
	one := theSeam(t, text).Sides[0].Courses[0]
	assert.Equal(t, []string{"a.b", "c"}, []string{one.Piece, one.Edge})
}

// An edge comes once for each piece that is cut, and twice where half a piece is drawn,
// but for the fold in its middle.
func TestHowOftenAnEdgeComes(t *testing.T) {
	const rule = "\n---\n\n[line.rule]\npoints = [[2, 2], [7, 2]]\n[line.middle]\npoints = [[0, 2], [0, 6]]\n"
	for _, c := range []struct {
		name, head, edge string
		times            int
		title            string
		whole            float64 // inches
	}{
		{"cut once", "", "top", 1, "front, top", 9},
		{"cut twice", "cut = 2\n", "top", 2, "front, top (2 times)", 18},
		{"half a piece", "fold = \"left\"\n", "top", 2, "front, top (2 times)", 19},
		{"half a piece cut twice", "cut = 2\nfold = \"left\"\n", "top", 4, "front, top (4 times)", 38},
		{"a piece and its lining", "cut = 2\nlayers = 2\n", "top", 1, "front, top", 9},
		{"left and right, with linings", "cut = 4\nlayers = 2\n", "top", 2, "front, top (2 times)", 18},
		{"half a collar and its lining", "cut = 2\nlayers = 2\nfold = \"left\"\n", "top", 2, "front, top (2 times)", 19},
		{"the fold", "fold = \"left\"\n", "left", 1, "front, left", 7},
		{"the folds of two", "cut = 2\nfold = \"left\"\n", "left", 2, "front, left (2 times)", 14},
		{"a line on the fold", "fold = \"left\"\n", "middle", 1, "front, middle", 4},
		{"a line inside", "", "rule", 1, "front, rule", 5},
		{"a line inside half a piece", "fold = \"left\"\n", "rule", 2, "front, rule (2 times)", 10},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec, err := source.Read("f.toml", []byte("unit = \"in\"\nallowance = 0.5\n"+sketch.Front(c.head+sketch.Rect("10")+rule)), sketch.HasLetter)
			require.NoError(t, err)
			pattern, err := Check(spec)
			require.NoError(t, err)
			all := pattern.courses([]source.Text{source.Given("front." + c.edge)}, spec)
			require.Len(t, all, 1)
			assert.Equal(t, c.times, all[0].Times)
			assert.Equal(t, c.title, all[0].Title())
			assert.InDelta(t, c.whole, all[0].Whole().MM/25.4, 1e-6)
			assert.InDelta(t, c.whole, pattern.length(all).MM/25.4, 1e-6)
		})
	}
}

// A line along which something is sewn is as long as it is with the tucks in.
func TestLengthOfALineAcrossTucks(t *testing.T) {
	spec, err := source.Read("f.toml", []byte("unit = \"in\"\nallowance = 0.5\n"+sketch.Front(sketch.Rect("10")+"\n---\n\n[line.rule]\npoints = [[2, 2], [7, 2]]\n"+
		sketch.Rows(`tuck t left 1/4 2 3`))), sketch.HasLetter)
	require.NoError(t, err)
	pattern, err := Check(spec)
	require.NoError(t, err)
	assert.InDelta(t, 4, pattern.course("front.rule", spec).Length.MM/25.4, 1e-6, "5 in, less two tucks of 1/4 in")
}

// A line inside a piece counts between stitch lines, as an edge does: 10 in less 1/2 in on
// either side, and, where half a piece is drawn, less 1/2 in on one.
func TestLineFromSeamToSeam(t *testing.T) {
	for _, c := range []struct {
		name, head string
		want       float64
	}{
		{"across a piece", "", 9},
		{"across half a piece", "fold = \"left\"\n", 9.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec, err := source.Read("f.toml", []byte("unit = \"in\"\nallowance = 0.5\n"+sketch.Front(c.head+sketch.Rect("10")+"\n---\n\n[line.casing]\npoints = [[0, 3], [10, 3]]\n")), sketch.HasLetter)
			require.NoError(t, err)
			pattern, err := Check(spec)
			require.NoError(t, err)
			assert.InDelta(t, c.want, pattern.course("front.casing", spec).Length.MM/25.4, 1e-6)
		})
	}
}

// A tuck about the centre has its crease on the fold of the cloth, which is as long as it
// was: 8 in less 1/2 in at either end, however the piece is drawn.
func TestFoldUnderATuckAboutIt(t *testing.T) {
	for _, drawn := range []string{"flat", "finished"} {
		piece := sketched(t, "0.5", "fold = \"left\"\ndrawn = \""+drawn+"\"\n"+sketch.Rect("10")+"\n---\n"+sketch.Rows("tuck a left 1/4 2 0 | gap = 0.25"))
		assert.InDelta(t, 7, piece.Edges[piece.Edge("left")].FinishedLength/25.4, 1e-6, drawn)
	}
}

// One tube is not two: an edge is joined with itself only where there are two, linings not
// counted.
func TestEdgeJoinedWithItselfIsThereTwice(t *testing.T) {
	self := `join = ["front.top", "front.top"]`
	_, err := check(sketch.Sewn("0.5", self, sketch.Piece("front", "cut = 2\nlayers = 2\n"+sketch.Rect("10"))))
	assert.Error(t, err, "cut twice, one of them a lining")
	_, err = check(sketch.Sewn("0.5", self, sketch.Piece("front", "cut = 4\nlayers = 2\n"+sketch.Rect("10"))))
	assert.NoError(t, err, "left and right")
}
