package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// besides is a piece with a slanted top and a neck, its lines written as in a file.
const besides = "centre: 0,0 0,8\nneck: 0,8 2,8 2,10\ntop: 2,10 6,8\nside: 6,8 6,0\nhem: 6,0 0,0\n---\n\n"

func TestLinesBesideOthers(t *testing.T) {
	for _, c := range []struct {
		name, lines string
		key         string
		from, to    [2]float64 // in inches
	}{
		{"from edge to edge", "[line.l]\nbeside = \"centre\"\nat = 1", "l", [2]float64{1, 0}, [2]float64{1, 8}},
		{"to a slanted edge", "[line.l]\nbeside = \"side\"\nat = \"2 cm\"", "l", [2]float64{6 - 2/2.54, 0}, [2]float64{6 - 2/2.54, 8 + 1/2.54}},
		{"from the neck for a length", "[line.l]\nbeside = \"centre\"\nat = 1\nfrom = \"neck\"\nlength = 3", "l", [2]float64{1, 5}, [2]float64{1, 8}},
		{"from the hem for a length", "[line.l]\nbeside = \"centre\"\nat = 1\nfrom = \"hem\"\nlength = 3", "l", [2]float64{1, 0}, [2]float64{1, 3}},
		{"beside a line that stands later", "[line.l]\nbeside = \"m\"\nat = 1\nside = \"top\"\n\n[line.m]\nbeside = \"hem\"\nat = 2", "l", [2]float64{0, 3}, [2]float64{6, 3}},
		{"beside a line, on its far side by itself", "[line.l]\nbeside = \"m\"\nat = 1\n\n[line.m]\nbeside = \"hem\"\nat = 2", "l", [2]float64{0, 3}, [2]float64{6, 3}},
		{"on the other side of a line", "[line.l]\nbeside = \"m\"\nat = 1\nside = \"hem\"\n\n[line.m]\nbeside = \"hem\"\nat = 2", "l", [2]float64{0, 1}, [2]float64{6, 1}},
		{"between two lines", "[line.l]\nbeside = \"centre\"\nat = 1\nfrom = \"low\"\nto = \"high\"\n\n[line.low]\nbeside = \"hem\"\nat = 2\n\n[line.high]\nbeside = \"low\"\nat = 3", "l", [2]float64{1, 2}, [2]float64{1, 5}},
		{"between a line and an edge", "[line.l]\nbeside = \"centre\"\nat = 3\nfrom = \"top\"\nto = \"low\"\n\n[line.low]\nbeside = \"hem\"\nat = 2", "l", [2]float64{3, 2}, [2]float64{3, 9.5}},
		{"from one edge alone", "[line.l]\nbeside = \"centre\"\nat = 3\nfrom = \"top\"", "l", [2]float64{3, 0}, [2]float64{3, 9.5}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := sketched(t, "0.25", besides+c.lines)
			path := append(plane.Path{}, p.Line(c.key).Path...)
			require.Len(t, path, 2)
			if path[0].X+path[0].Y > path[1].X+path[1].Y {
				path = path.Reversed()
			}
			for i, want := range [...][2]float64{c.from, c.to} {
				assert.InDelta(t, want[0]*25.4, path[i].X, 0.01)
				assert.InDelta(t, want[1]*25.4, path[i].Y, 0.01)
			}
		})
	}
}

func TestFaultsOfLinesBesideOthers(t *testing.T) {
	for _, c := range []struct{ name, lines, want string }{
		{"in a circle", "[line.l]\nbeside = \"m\"\nat = 1\n\n[line.m]\nbeside = \"l\"\nat = 2", "19: piece.front.line.l: the line is measured from itself, or from a line that is measured from it\nhint: measure one of them from an edge"},
		{"beside itself", "[line.l]\nbeside = \"l\"\nat = 1", "19: piece.front.line.l: the line is measured from itself, or from a line that is measured from it\nhint: measure one of them from an edge"},
		{"beside nothing", "[line.l]\nbeside = \"hen\"\nat = 1", "20: piece.front.line.l.beside: there is no edge or line \"hen\" in this piece\nhint: did you mean \"hem\"?"},
		{"beside a bent edge", "[line.l]\nbeside = \"neck\"\nat = 1", "20: piece.front.line.l.beside: \"neck\" is not straight: it bends by 1 7/16 in, and cloth folds along a straight line only\nhint: name a straight edge, or a straight line of the piece"},
		{"no side", "[line.l]\nbeside = \"m\"\nat = 1\n\n[line.m]\npoints = [[1, 1], [1, 5]]", "20: piece.front.line.l.beside: \"m\" has cloth on both sides, and nothing says on which of them the line lies\nhint: add side = \"...\" with the name of an edge on that side"},
		{"beyond the piece", "[line.l]\nbeside = \"centre\"\nat = 7", "21: piece.front.line.l.at: the line has no cloth: the piece has none 7 in from \"centre\"\nhint: make it less"},
		{"too long", "[line.l]\nbeside = \"centre\"\nat = 1\nfrom = \"neck\"\nlength = 9", "23: piece.front.line.l.length: the line leaves the piece: it is 9 in long, and there is less cloth from \"neck\"\nhint: make it shorter, or leave length out: then it runs to the other edge"},
		{"past an edge", "[line.l]\nbeside = \"centre\"\nat = 1\nfrom = \"side\"", "22: piece.front.line.l.from: the line does not meet \"side\"\nhint: name an edge or a line that it crosses"},
		{"from a line alone", "[line.l]\nbeside = \"centre\"\nat = 1\nfrom = \"m\"\n\n[line.m]\nbeside = \"hem\"\nat = 2", "22: piece.front.line.l.from: nothing of the line lies on the piece between its ends\nhint: with from or to alone a line has one end at an edge; from and to together may name lines as well"},
		{"of a line with a mistake of its own", "[line.l]\nbeside = \"m\"\nat = 1\n\n[line.m]\nbeside = \"hem\"\nat = 20", "25: piece.front.line.m.at: the line has no cloth: the piece has none 20 in from \"hem\"\nhint: make it less"},
		{"without a distance", "[line.l]\nbeside = \"hem\"", "19: piece.front.line.l: \"at\" is missing\nhint: it is how far from that edge or line it lies: at = \"5/8\""},
		{"beside and along", "[line.l]\nbeside = \"hem\"\nat = 1\nalong = \"hem\"", "22: piece.front.line.l.along: cannot stand beside \"beside\"\nhint: give the edge it runs along and its distance from it, or what it lies beside and at what distance, or give its points"},
		{"a length to an edge", "[line.l]\nbeside = \"centre\"\nat = 1\nfrom = \"neck\"\nto = \"hem\"\nlength = 2", "24: piece.front.line.l.length: cannot stand beside \"to\"\nhint: a line of a length begins at the edge that from names: leave length out where it runs to another"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0.25\n" + sketch.Front(besides+c.lines))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
	const gap = "left: 0,8 0,0\nbottom: 0,0 10,0\nright: 10,0 10,8\ntop: 10,8 5,2 0,8\n---\n\n[line.l]\nbeside = \"bottom\"\nat = 4"
	_, err := made.Pattern("allowance = 0.25\n" + sketch.Front(gap))
	require.Error(t, err)
	assert.Equal(t, "pinafore.toml:16: piece.front.line.l: the line crosses the piece in 2 parts\nhint: say where it runs: add from and to", err.Error())
	one := sketched(t, "0.25", gap+"\nfrom = \"left\"").Line("l").Path
	assert.InDelta(t, 25.4*10/3, one.Length(), 0.01, "from one side to the gap")
}
