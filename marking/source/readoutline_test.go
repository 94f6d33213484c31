package source

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// folderOf is a folder with these files: a name, and what stands in it.
func folderOf(files ...string) fstest.MapFS {
	folder := fstest.MapFS{}
	for i := 0; i+1 < len(files); i += 2 {
		folder[files[i]] = &fstest.MapFile{Data: []byte(files[i+1])}
	}
	return folder
}

// bib is a drawing of 5 by 6 in with a round neck; its path begins at the right of the hem.
const bib = `<svg width="10in" height="10in" viewBox="0 0 10 10">
<g id="bib"><path d="M6 9H1V4L2 3C2 5 5 5 5 3L6 4z"/>
<path id="bib.centre-fold" d="M3.5 9V4"/></g></svg>`

// onBib is a piece from that drawing.
const onBib = `[piece.bib.outline]
from = "bib.svg"
part = "bib"
edges = ["left", "left shoulder", "neck", "right shoulder", "right", "hem"]
`

func TestOutline(t *testing.T) {
	spec, err := Reader{Printable: sketch.HasLetter, Folder: folderOf("bib.svg", bib)}.Read("f.toml", []byte(`title = "Bib"
`+strings.Replace(onBib, `edges`, `lines = ["centre fold"]
edges`, 1)+`
[piece.bib.edge.hem]
hem = 1
turn = "1/4"
[piece.bib.edge."left shoulder"]
marked = true
[piece.bib.line."centre fold"]
kind = "fold"
`))
	require.NoError(t, err)
	piece := spec.Pieces[0]
	inch := func(x, y float64) plane.Point { return plane.Point{X: x * 25.4, Y: y * 25.4} }
	corners := []plane.Point{inch(0, 0), inch(0, 5), inch(1, 6), inch(4, 6), inch(5, 5), inch(5, 0)}
	require.Len(t, piece.Edges, 6)
	assert.True(t, piece.FromDrawing)
	for i, e := range piece.Edges {
		p := e.Points.V
		assert.InDelta(t, 0, p[0].Distance(corners[i]), 0.01, e.Key)
		assert.InDelta(t, 0, p[len(p)-1].Distance(corners[(i+1)%6]), 0.01, e.Key)
		assert.Equal(t, 2, e.Points.On(e.Place, 1).Line, e.Key)
		assert.False(t, e.Smooth, e.Key)
	}
	neck := plane.Path(piece.Edges[2].Points.V)
	assert.InDelta(t, 4.5*25.4, neck.Bounds().Min.Y, 0.01, "a cubic comes three quarters of the way to its control points: derived")
	assert.Equal(t, "f.toml:2: piece.bib.edge.neck", piece.Edges[2].Place.Before("")[:29])
	assert.Equal(t, 25.4, piece.Edges[5].Hem.V)
	assert.Equal(t, 8, piece.Edges[5].Place.Line)
	assert.True(t, piece.Edges[1].Marked.V)
	require.Len(t, piece.Lines, 1)
	assert.InDelta(t, 0, piece.Lines[0].Points.V[0].Distance(inch(2.5, 0)), 0.01)
	assert.InDelta(t, 0, piece.Lines[0].Points.V[1].Distance(inch(2.5, 5)), 0.01)
}

func TestOutlineMistakes(t *testing.T) {
	for _, c := range []struct{ name, file, want string }{
		{"no drawing named", "[piece.bib.outline]\nedges = [\"a\", \"b\"]",
			"dress/f.toml:1: piece.bib.outline: \"from\" is missing\nhint: it names the drawing, in the folder of this file: from = \"front.svg\""},
		{"no edges named", "[piece.bib.outline]\nfrom = \"bib.svg\"",
			"dress/f.toml:1: piece.bib.outline: \"edges\" is missing\nhint: it names the edges in order, clockwise from the corner at the lower left: edges = [\"centre front\", \"neck\", \"shoulder\", \"side\", \"hem\"]"},
		{"edges that are no list", "[piece.bib.outline]\nfrom = \"bib.svg\"\nedges = \"neck\"",
			"dress/f.toml:3: piece.bib.outline.edges: must be a list of names, but is \"neck\"\nhint: it names the edges in order, clockwise from the corner at the lower left: edges = [\"centre front\", \"neck\", \"shoulder\", \"side\", \"hem\"]"},
		{"an edge that is no text", "[piece.bib.outline]\nfrom = \"bib.svg\"\nedges = [1, \"\", \"a\", \"a\"]",
			"dress/f.toml:3: piece.bib.outline.edges: name 1 must be text in quotes, but is 1\nhint: it names the edges in order, clockwise from the corner at the lower left: edges = [\"centre front\", \"neck\", \"shoulder\", \"side\", \"hem\"]\ndress/f.toml:3: piece.bib.outline.edges: the name or text is empty\nhint: write at least one letter, or leave the line out\ndress/f.toml:3: piece.bib.outline.edges: \"a\" is named twice\nhint: give each a name of its own"},
		{"no table", "[piece.bib]\noutline = \"bib.svg\"",
			"dress/f.toml:2: piece.bib.outline: must be a table, but is \"bib.svg\"\nhint: write [piece.bib.outline] on a line of its own, and what belongs to it below"},
		{"a key that is not known", strings.Replace(onBib, "part", "parts", 1),
			"dress/f.toml:3: piece.bib.outline.parts: this key is not known\nhint: did you mean \"part\"?"},
		{"a corner of none", onBib + "corner = 0",
			"dress/f.toml:5: piece.bib.outline.corner: must be from 1 to 170, but is 0\nhint: it is by how many degrees the outline turns at a corner at least: corner = 30"},
		{"a corner that is no number", onBib + "corner = \"sharp\"",
			"dress/f.toml:5: piece.bib.outline.corner: \"sharp\" is not a number\nhint: it is by how many degrees the outline turns at a corner at least: corner = 30"},
		{"no such file", strings.Replace(onBib, "bib.svg", "bob.svg", 1),
			"dress/f.toml:2: piece.bib.outline.from: there is no file \"bob.svg\"\nhint: did you mean \"bib.svg\"?"},
		{"a file outside", strings.Replace(onBib, "bib.svg", "../bib.svg", 1),
			"dress/f.toml:2: piece.bib.outline.from: \"../bib.svg\" does not lie in the folder of this file\nhint: it stands in the folder of this file, or in one below that"},
		{"a file from the root", strings.Replace(onBib, "bib.svg", "/bib.svg", 1),
			"dress/f.toml:2: piece.bib.outline.from: \"/bib.svg\" does not lie in the folder of this file\nhint: it stands in the folder of this file, or in one below that"},
		{"a file in the way of a network", strings.Replace(onBib, "bib.svg", "http://example.org/bib.svg", 1),
			"dress/f.toml:2: piece.bib.outline.from: \"http://example.org/bib.svg\" is no name of a file here\nhint: write it without a drive, folders with / between: \"dresses/front.svg\""},
		{"a folder", strings.Replace(onBib, "bib.svg", "sub", 1),
			"dress/f.toml:2: piece.bib.outline.from: the file \"sub\" cannot be read\nhint: it stands in the folder of this file, or in one below that"},
		{"a broken drawing", strings.Replace(onBib, "bib.svg", "broken.svg", 1),
			"dress/f.toml:2: piece.bib.outline.from: dress/broken.svg:2: the drawing breaks off here\nhint: open it in the drawing program and save it once more as plain SVG"},
		{"a drawing with two mistakes", strings.Replace(onBib, "bib.svg", "wrong.svg", 1),
			"dress/f.toml:2: piece.bib.outline.from: dress/wrong.svg:2: path: letter 1 of its d: a path begins with M, not with \"L1\"\nhint: open it in the drawing program and save it once more as plain SVG\ndress/f.toml:2: piece.bib.outline.from: dress/wrong.svg:3: use: it does not say what is used\nhint: open it in the drawing program and save it once more as plain SVG"},
		{"no such part", strings.Replace(onBib, `part = "bib"`, `part = "bob"`, 1),
			"dress/f.toml:1: piece.bib.outline: dress/bib.svg: nothing has the id \"bob\"\nhint: did you mean \"bib\"?"},
		{"a name too few", strings.Replace(onBib, `, "hem"`, ``, 1),
			"dress/f.toml:1: piece.bib.outline: the outline has 6 corners, but edges has 5 names: clockwise from the lower left, it turns by 90 degrees at (0 in, 0 in), by 45 at (0 in, 5 in), by 135 at (1 in, 6 in), by 135 at (4 in, 6 in), by 45 at (5 in, 5 in) and by 90 at (5 in, 0 in); no name is left for the edge from (5 in, 0 in) to (0 in, 0 in)\nhint: what turns by 20 degrees or more is a corner; name the edges in order, clockwise from the lower left, or give each edge a line of its own in the drawing, with its name as the id"},
		{"a name too many", strings.Replace(onBib, `"hem"`, `"hem", "lace"`, 1),
			"dress/f.toml:1: piece.bib.outline: the outline has 6 corners, but edges has 7 names: clockwise from the lower left, it turns by 90 degrees at (0 in, 0 in), by 45 at (0 in, 5 in), by 135 at (1 in, 6 in), by 135 at (4 in, 6 in), by 45 at (5 in, 5 in) and by 90 at (5 in, 0 in); no edge is left for \"lace\"\nhint: what turns by 20 degrees or more is a corner; name the edges in order, clockwise from the lower left, or give each edge a line of its own in the drawing, with its name as the id"},
		{"points beside it", onBib + "[piece.bib.edge.hem]\npoints = [[0, 0], [1, 1]]\nsmooth = true",
			"dress/f.toml:6: piece.bib.edge.hem.points: cannot stand in a piece with \"outline\", whose edges run as they are drawn\nhint: leave it out, or leave the outline out and give every edge its points\ndress/f.toml:7: piece.bib.edge.hem.smooth: cannot stand in a piece with \"outline\", whose edges run as they are drawn\nhint: leave it out, or leave the outline out and give every edge its points"},
		{"an edge that is none", onBib + "[piece.bib.edge.hme]\nhem = 1\n[piece.bib.edge.waist]\nhem = 1",
			"dress/f.toml:5: piece.bib.edge.hme: the outline has no such edge\nhint: did you mean \"hem\"?\ndress/f.toml:7: piece.bib.edge.waist: the outline has no such edge\nhint: its edges are left, left shoulder, neck, right shoulder, right and hem"},
		{"a line with points beside it", strings.Replace(onBib, "edges", "lines = [\"centre fold\"]\nedges", 1) + "[piece.bib.line.\"centre fold\"]\npoints = [[0, 0], [1, 1]]",
			"dress/f.toml:7: piece.bib.line.\"centre fold\".points: this key is not known\nhint: known here are from, to, kind; `tuckmark help line` explains them"},
		{"a line that is not drawn", strings.Replace(onBib, "edges", "lines = [\"dart\"]\nedges", 1),
			"dress/f.toml:1: piece.bib.outline: no line of the drawing has the name \"dart\"\nhint: the ids of its lines are \"bib.centre-fold\"; a - or _ in an id stands for a space"},
		{"a rectangle as well", "[piece.bib]\nrectangle = [1, 2]\n" + onBib,
			"dress/f.toml:2: piece.bib.rectangle: cannot stand beside \"outline\"\nhint: an outline that is drawn has edges of its own: leave one of them out"},
		{"two pieces of a broken drawing", strings.ReplaceAll("[piece.bib.outline]\nfrom = \"bib.svg\"\nedges = [\"a\", \"b\"]\n[piece.bob.outline]\nfrom = \"bib.svg\"\nedges = [\"a\", \"b\"]\n", "bib.svg", "broken.svg"),
			"dress/f.toml:2: piece.bib.outline.from: dress/broken.svg:2: the drawing breaks off here\nhint: open it in the drawing program and save it once more as plain SVG"},
	} {
		t.Run(c.name, func(t *testing.T) {
			folder := folderOf("bib.svg", bib, "sub/bib.svg", bib, "broken.svg", "<svg>\n<g>", "wrong.svg", "<svg>\n<path d=\"L1 1\"/>\n<use/></svg>")
			_, err := Reader{Printable: sketch.HasLetter, Folder: folder}.Read("dress/f.toml", []byte(c.file))
			require.Error(t, err)
			assert.Equal(t, c.want, err.Error())
		})
	}
}

// A drawing is looked for beside the file that names it, also where that is one that another is
// like; and a link that leads out of the folder is not followed.
func TestWhereDrawingsAreLookedFor(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) {
		require.NoError(t, os.MkdirAll(filepath.Dir(filepath.Join(dir, name)), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	write("bib.svg", bib)
	write("dresses/basic/bib.svg", bib)
	write("dresses/basic/basic.toml", onBib)
	require.NoError(t, os.Symlink("../bib.svg", filepath.Join(dir, "dresses", "out.svg")))
	require.NoError(t, os.Symlink("..", filepath.Join(dir, "dresses", "up")))
	root, err := os.OpenRoot(filepath.Join(dir, "dresses"))
	require.NoError(t, err)
	defer root.Close()
	rd := Reader{Printable: sketch.HasLetter, Folder: root.FS()}

	spec, err := rd.Read("dresses/f.toml", []byte("like = \"basic/basic.toml\"\n"))
	require.NoError(t, err)
	assert.Equal(t, "dresses/basic/basic.toml:1: piece.bib.edge.left: x", spec.Pieces[0].Edges[0].Place.Before("x"))
	for _, name := range []string{"out.svg", "up/bib.svg"} {
		_, err := rd.Read("dresses/f.toml", []byte(strings.Replace(onBib, "bib.svg", name, 1)))
		assert.EqualError(t, err, "dresses/f.toml:2: piece.bib.outline.from: the file \""+name+"\" cannot be read\nhint: it stands in the folder of this file, or in one below that")
	}
}
