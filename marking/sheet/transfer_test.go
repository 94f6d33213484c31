package sheet

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

const plainBack = `allowance = "3/8"
CLOTH
[piece.back]
name = "Back"
CUT
[piece.back.edge.neck]
points = [[0, 10], [2, 9], [4, 10]]
smooth = true
[piece.back.edge.rest]
points = [[4, 10], [4, 0], [0, 0], [0, 10]]
`

// Which sheets a piece has, by what is said of the cloth, of the piece, and on the
// command line.
func TestSheetsOfATransfer(t *testing.T) {
	for _, c := range []struct {
		name, cloth, cut string
		asked            string // on the command line
		want             []string
	}{
		{"nothing said", "", "", "", []string{"Back"}},
		{"sheer", "[cloth]\nsee-through = true", "", "", []string{"Back"}},
		{"opaque", "[cloth]\nsee-through = false", "", "", []string{"Back", "Back: template"}},
		{"of the piece", "[cloth]\nsee-through = true", "transfer = \"prick\"", "", []string{"Back: to be pricked"}},
		{"several", "", "transfer = [\"mirror\", \"trace\"]", "", []string{"Back", "Back: mirrored"}},
		{"asked for", "[cloth]\nsee-through = false", "transfer = \"prick\"", "template", []string{"Back: template"}},
		{"all", "", "", "prick, mirror,template,trace", []string{"Back", "Back: template", "Back: mirrored", "Back: to be pricked"}},
		{"two mirrored", "", "cut = 2", "mirror", []string{"Back: mirrored 1 of 2", "Back: mirrored 2 of 2"}},
		{"left and right", "", "cut = 2\nprint = \"left and right\"", "trace,prick", []string{"Back: as drawn", "Back: turned over", "Back: to be pricked: as drawn", "Back: to be pricked: turned over"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, sketch.Swap(plainBack, "CLOTH", c.cloth, "CUT", c.cut))
			if c.asked != "" {
				ways, err := source.ParseTransfers(c.asked)
				require.NoError(t, err)
				pattern = Transferred(pattern, ways)
			}
			var names []string
			for _, m := range Of(pattern) {
				names = append(names, m.Name)
			}
			assert.Equal(t, c.want, names)
		})
	}
	// A block keeps its ruler once, and its cutting sheet as it is: that is laid on
	// the tucked cloth, right side up.
	ways, err := source.ParseTransfers("mirror,prick")
	require.NoError(t, err)
	var names []string
	for _, m := range Of(Transferred(made.Example(t, "shirt.toml"), ways)) {
		if m.Form == nil {
			names = append(names, m.Name)
		}
	}
	assert.Equal(t, []string{"Front: tuck sheet: mirrored", "Front: tuck ruler", "Front: cutting sheet", "Front: tuck sheet: to be pricked",
		"Back: mirrored 1 of 2", "Back: mirrored 2 of 2", "Back: to be pricked"}, names)
}

func TestMistakesInTransfers(t *testing.T) {
	for _, c := range []struct{ name, cut, want string }{
		{"no way", `transfer = "carbon"`, "pinafore.toml:5: piece.back.transfer: \"carbon\" is no way to bring lines onto cloth\nhint: write trace, template, mirror or prick; more than one where more than one is wanted"},
		{"one of a list", `transfer = ["trace", "carbon"]`, "pinafore.toml:5: piece.back.transfer: \"carbon\" is no way to bring lines onto cloth\nhint: write trace, template, mirror or prick; more than one where more than one is wanted"},
		{"no text", `transfer = true`, "pinafore.toml:5: piece.back.transfer: must be text in quotes, or a list of such, but is true\nhint: write transfer = \"template\", or transfer = [\"trace\", \"template\"]"},
		{"an empty list", `transfer = []`, "pinafore.toml:5: piece.back.transfer: must be text in quotes, or a list of such, but is a list\nhint: write transfer = \"template\", or transfer = [\"trace\", \"template\"]"},
		{"a number in a list", `transfer = ["trace", 3]`, "pinafore.toml:5: piece.back.transfer: must hold nothing but text in quotes, but has 3\nhint: write transfer = [\"trace\", \"template\"]"},
		{"two that are none", `transfer = ["x", "y"]`, "pinafore.toml:5: piece.back.transfer: \"x\" or \"y\" is no way to bring lines onto cloth\nhint: write trace, template, mirror or prick; more than one where more than one is wanted"},
		{"layers are no pair", "cut = 2\nlayers = 2\nprint = \"left and right\"", "pinafore.toml:7: piece.back.print: only one is cut, so there is no left and right of it\nhint: give it cut = 2 (or 4, of which 2 are layers of one), or leave the line out"},
		{"a pair of one", `print = "left and right"`, "pinafore.toml:5: piece.back.print: only one is cut, so there is no left and right of it\nhint: give it cut = 2 (or 4, of which 2 are layers of one), or leave the line out"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(sketch.Swap(plainBack, "CLOTH", "", "CUT", c.cut))
			assert.EqualError(t, err, c.want)
		})
	}
	_, err := made.Pattern("[piece.front]\n[piece.front.edge.a]\npoints = [[0, 0], [4, 0]]\nallowance = 0\nmarked = true\n[piece.front.edge.b]\npoints = [[4, 0], [4, 4], [0, 0]]\n")
	assert.EqualError(t, err, "pinafore.toml:5: piece.front.edge.a.marked: the edge has no stitch line that could be marked\nhint: leave it out, or give the edge an allowance")
	_, err = made.Pattern("[piece.front]\n[piece.front.edge.a]\npoints = [[0, 0], [4, 0]]\nhem = 1\nmarked = true\n[piece.front.edge.b]\npoints = [[4, 0], [4, 4], [0, 0]]\n")
	assert.EqualError(t, err, "pinafore.toml:5: piece.front.edge.a.marked: the edge has no stitch line that could be marked\nhint: leave it out: the fold of a hem has windows in a template as it is")
	p := &garment.Pattern{}
	_, err = Dotted(p, 1)
	assert.EqualError(t, err, "these dots are too close together or too far apart\nhint: they may be from 2 mm to 50 mm apart; 1/4 in serves most cloth")
	dotted, err := Dotted(p, 5)
	require.NoError(t, err)
	assert.Equal(t, dotting{5, 5, enough()}, dottingOf(dotted))
	assert.InDelta(t, 6.35, dottingOf(p).bent, 1e-9, "1/4 in")
	assert.True(t, math.IsInf(dottingOf(p).straight, 1), "straight lines are ruled")
}

// Whatever a file may write has its sheets: of a plain back at least one.
func TestEveryTransferHasSheets(t *testing.T) {
	_, err := source.ParseTransfers("")
	require.Error(t, err)
	_, names, found := strings.Cut(err.Error(), "hint: write ")
	require.True(t, found, "the hint names every way: %s", err)
	names, _, _ = strings.Cut(names, ";")
	names = strings.ReplaceAll(names, " or ", ", ")
	require.Contains(t, names, ", ")
	for _, name := range strings.Split(names, ", ") {
		ways, err := source.ParseTransfers(name)
		require.NoError(t, err)
		pattern := made.Of(t, sketch.Swap(plainBack, "CLOTH", "", "CUT", ""))
		assert.NotEmpty(t, Of(Transferred(pattern, ways)), name)
	}
}

// A piece for which there is nothing to draw along or through keeps a sheet to be cut by.
func TestPlainSheetInsteadOfATemplate(t *testing.T) {
	const strip = "[piece.strip]\nname = \"Strip\"\ncut = 2\nrectangle = [10, 2]\n"
	const block = "[piece.strip]\nname = \"Strip\"\ndrawn = \"finished\"\nfold = \"left\"\n[piece.strip.edge.left]\npoints = [[0, 0], [0, 6]]\n" +
		"[piece.strip.edge.top]\npoints = [[0, 6], [5, 6]]\n[piece.strip.edge.right]\npoints = [[5, 6], [5, 0]]\n[piece.strip.edge.foot]\npoints = [[5, 0], [0, 0]]\n" +
		"[piece.strip.tuck.rows]\nbeside = \"left\"\ncount = 4\nwidth = \"1/8\"\ngap = \"1/8\"\nfirst = 1\n[piece.strip.block]\n"
	for _, c := range []struct {
		name, file, asked string
		want              []string
		told              bool
	}{
		{"alone", strip, "template", []string{"Strip"}, true},
		{"with a sheet", strip, "trace,template", []string{"Strip"}, false},
		{"with another", strip, "template,mirror", []string{"Strip: mirrored 1 of 2", "Strip: mirrored 2 of 2"}, false},
		{"left and right", strip + "print = \"left and right\"\n", "template", []string{"Strip: as drawn", "Strip: turned over"}, true},
		{"two alike", strip + strings.ReplaceAll(strings.ReplaceAll(strip, "strip", "band"), "Strip", "Band"), "template", []string{"Strip and Band"}, true},
		{"of a tucked block", block, "template", []string{"Strip: sample of the rows tucks", "Strip: tuck sheet", "Strip: tuck ruler", "Strip: cutting sheet"}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			ways, err := source.ParseTransfers(c.asked)
			require.NoError(t, err)
			var names []string
			told := false
			for _, m := range Of(Transferred(made.Of(t, "allowance = \"3/8\"\n"+c.file), ways)) {
				names, told = append(names, m.Name), told || InsteadOfTemplate(m)
			}
			assert.Equal(t, c.want, names)
			assert.Equal(t, c.told, told, "that it has no template is told")
		})
	}
}
