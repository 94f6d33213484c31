package source

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// whole is a file with every key there is.
const whole = `title = "Sunday pinafore"
size = "18 months"
unit = "cm"
allowance = "3/8 in"

[cloth]
width = 112
see-through = true

[piece.front]
name = "Front, ⅛ in tucks"
cut = 2
fold = "centre front"
drawn = "flat"
grain = "placket"

[piece.front.edge."centre front"]
points = [[0, 0], [0, "12 ½"]]
allowance = 0

[piece.front.edge.neck]
points = [
  [0, "12 ½"], # at the centre
  ["-1/2", 13.25],
  ["−6", 14],
]
smooth = true

[piece.front.edge.hem]
points = [[6, 0], [0, 0]]
hem = 2
turn = "1/4 in"

[piece.front.tuck.yoke]
beside = "centre front"
side = "neck"
width = "1/8 in"
count = 6
first = "3/8 in"
spacing = "3/8 in"
press = "away"
below = "neck"
length = "2 1/8 in"
sewn = "twin needle"

[piece.front.tuck.growth]
beside = "hem"
width = 1
count = 1
first = 4
gap = 0
press = "toward"
sewn = "edge"

[piece.front.pleat.underarm]
edge = "armhole"
from = "side"
at = 0
depth = "3/8 in"
toward = "side"
length = "1 1/2 in"
count = 2
spacing = 3
run = "grain"

[piece.front.line.placket]
along = "centre front"
distance = "3/4 in"
kind = "fold"

[piece.front.line.lace]
points = [[0, 1], [1, 2]]
smooth = true
kind = "placement"

[piece.front.notch.sleeve]
edge = "armhole"
from = "shoulder"
at = 3

[piece.back]
grain = [[0, 0], [0, 5]]
[piece.back.edge.all]
points = [[0, 0], [1, 0]]
`

// at is a place in pinafore.toml.
func at(path string, line int) fault.Place {
	return fault.Place{File: "pinafore.toml", Key: path, Line: line}
}

func TestReadTakesEveryKey(t *testing.T) {
	spec, err := Read("pinafore.toml", []byte(whole), sketch.HasLetter)
	require.NoError(t, err)
	assert.Equal(t, "pinafore.toml", spec.File)
	assert.Equal(t, GivenAt("Sunday pinafore", at("title", 1)), spec.Title)
	assert.Equal(t, GivenAt("18 months", at("size", 2)), spec.Size)
	assert.Equal(t, GivenAt(length.Centimetre, at("unit", 3)), spec.Unit)
	assert.InDelta(t, 9.525, spec.Allowance.V, 1e-9)
	assert.Equal(t, GivenAt(1120.0, at("cloth.width", 7)), spec.ClothWidth)
	assert.True(t, spec.SeeThrough.V)

	require.Len(t, spec.Pieces, 2)
	front := spec.Pieces[0]
	assert.Equal(t, "front", front.Key)
	assert.Equal(t, at("piece.front", 10), front.Place)
	assert.Equal(t, GivenAt("Front, ⅛ in tucks", at("piece.front.name", 11)), front.Name)
	assert.Equal(t, GivenAt(2, at("piece.front.cut", 12)), front.Cut)
	assert.Equal(t, GivenAt("centre front", at("piece.front.fold", 13)), front.Fold)
	assert.Equal(t, GivenAt("placket", at("piece.front.grain", 15)), front.GrainAlong)
	assert.False(t, front.GrainPoints.Given())

	require.Len(t, front.Edges, 3)
	assert.Equal(t, EdgeSpec{
		Key:   "centre front",
		Place: at(`piece.front.edge."centre front"`, 17),
		Points: Points{
			Value: GivenAt([]plane.Point{{X: 0, Y: 0}, {X: 0, Y: 125}}, at(`piece.front.edge."centre front".points`, 18)),
			lines: []int{18, 18},
		},
		Allowance: GivenAt(0.0, at(`piece.front.edge."centre front".allowance`, 19)),
	}, front.Edges[0])
	assert.Equal(t, EdgeSpec{
		Key:   "neck",
		Place: at("piece.front.edge.neck", 21),
		Points: Points{
			Value: GivenAt([]plane.Point{{X: 0, Y: 125}, {X: -5, Y: 132.5}, {X: -60, Y: 140}}, at("piece.front.edge.neck.points", 22)),
			lines: []int{23, 24, 25},
		},
		Smooth: true,
	}, front.Edges[1])
	assert.Equal(t, GivenAt(20.0, at("piece.front.edge.hem.hem", 31)), front.Edges[2].Hem)
	assert.InDelta(t, 6.35, front.Edges[2].Turn.V, 1e-9)

	require.Len(t, front.Tucks, 2)
	yoke, growth := front.Tucks[0], front.Tucks[1]
	assert.Equal(t, "yoke", yoke.Key)
	assert.Equal(t, "centre front", yoke.Beside.V)
	assert.Equal(t, "neck", yoke.Side.V)
	assert.InDelta(t, 3.175, yoke.Width.V, 1e-9)
	assert.Equal(t, 6, yoke.Count.V)
	assert.InDelta(t, 9.525, yoke.First.V, 1e-9)
	assert.InDelta(t, 9.525, yoke.Spacing.V, 1e-9)
	assert.False(t, yoke.Gap.Given())
	assert.Equal(t, PressedAway, yoke.Press.V)
	assert.Equal(t, "neck", yoke.End.Below.V)
	assert.InDelta(t, 53.975, yoke.End.Length.V, 1e-9)
	assert.Equal(t, GivenAt(TwinNeedle, at("piece.front.tuck.yoke.sewn", 44)), yoke.Sewn)
	assert.Equal(t, GivenAt(0.0, at("piece.front.tuck.growth.gap", 51)), growth.Gap)
	assert.True(t, growth.Gap.Given())
	assert.Equal(t, PressedToward, growth.Press.V)
	assert.Equal(t, EdgeStitched, growth.Sewn.V)

	require.Len(t, front.EdgePleats, 1)
	pleat := front.EdgePleats[0]
	assert.Equal(t, []string{"underarm", "armhole", "side", "side"},
		[]string{pleat.Key, pleat.Edge.V, pleat.From.V, pleat.Toward.V})
	assert.Equal(t, RunGrain, pleat.Run.V)
	assert.Equal(t, GivenAt(0.0, at("piece.front.pleat.underarm.at", 58)), pleat.At)
	assert.InDelta(t, 9.525, pleat.Depth.V, 1e-9)
	assert.InDelta(t, 38.1, pleat.Length.V, 1e-9)
	assert.Equal(t, 2, pleat.Count.V)
	assert.Equal(t, 30.0, pleat.Spacing.V)

	require.Len(t, front.Lines, 2)
	assert.Equal(t, "centre front", front.Lines[0].Along.V)
	assert.InDelta(t, 19.05, front.Lines[0].Distance.V, 1e-9)
	assert.Equal(t, FoldLine, front.Lines[0].Kind.V)
	assert.Equal(t, []plane.Point{{X: 0, Y: 10}, {X: 10, Y: 20}}, front.Lines[1].Points.V)
	assert.True(t, front.Lines[1].Smooth)
	assert.Equal(t, NotchSpec{
		Key:   "sleeve",
		Place: at("piece.front.notch.sleeve", 76),
		Edge:  GivenAt("armhole", at("piece.front.notch.sleeve.edge", 77)),
		From:  GivenAt("shoulder", at("piece.front.notch.sleeve.from", 78)),
		At:    GivenAt(30.0, at("piece.front.notch.sleeve.at", 79)),
	}, front.Notches[0])

	assert.Equal(t, []plane.Point{{X: 0, Y: 0}, {X: 0, Y: 50}}, spec.Pieces[1].GrainPoints.V)
}

func TestReadIsTheSameHoweverTheFileIsSaved(t *testing.T) {
	want, err := Read("a.toml", []byte(whole), sketch.HasLetter)
	require.NoError(t, err)
	for name, text := range map[string]string{
		"byte order mark":   "\ufeff" + whole,
		"windows line ends": strings.ReplaceAll(whole, "\n", "\r\n"),
		"both":              "\ufeff" + strings.ReplaceAll(whole, "\n", "\r\n"),
		"no last line end":  strings.TrimSuffix(whole, "\n"),
	} {
		t.Run(name, func(t *testing.T) {
			got, err := Read("a.toml", []byte(text), sketch.HasLetter)
			require.NoError(t, err)
			assert.Equal(t, want, got)
		})
	}
}

func TestReadKeepsTheOrderOfTheFile(t *testing.T) {
	var b strings.Builder
	names := strings.Fields("sleeve front yoke back collar pocket a9 a10 zip band facing cuff skirt top")
	for _, n := range names {
		fmt.Fprintf(&b, "[piece.%s]\n[piece.%s.edge.z]\npoints=[[0,0],[1,1]]\n[piece.%s.edge.a]\npoints=[[0,0],[1,1]]\n", n, n, n)
	}
	spec, err := Read("a.toml", []byte(b.String()), sketch.HasLetter)
	require.NoError(t, err)
	var got []string
	for _, p := range spec.Pieces {
		got = append(got, p.Key)
		assert.Equal(t, "z", p.Edges[0].Key)
		assert.Equal(t, "a", p.Edges[1].Key)
	}
	assert.Equal(t, names, got)
	assert.Equal(t, length.Inch, spec.Unit.V, "a file that names no unit is in inches")
}

// The shortest piece there can be, to put a mistake into.
const small = "[piece.front.edge.all]\npoints = [[0, 0], [1, 0]]\n"

func TestReadSaysWhatIsWrong(t *testing.T) {
	const general = "\nhint: a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\""
	const points = "\nhint: a point is [x, y], and points are listed as [[0, 0], [3, \"4 1/2\"]]"
	const empty = "\nhint: describe each piece under a line such as [piece.front], and each of its edges under [piece.front.edge.neck]"
	const inPiece = "\nhint: what is folded back at an edge is the hem of that edge (hem, turn); what lies or is cut within the piece is a line: write "
	const space = "\nhint: take it out, and type what is meant with the space bar"
	const comma = "\nhint: a decimal is written with a point, not with a comma: [1.5, 3]"
	const either = "\nhint: give the edge it runs along and its distance from it, or what it lies beside and at what distance, or give its points"
	const together = "\nhint: tucks are stitched to \"length\" below the edge that \"below\" names; leave both out to have them run from edge to edge"
	tuck := func(s string) string {
		return small + "[piece.front.tuck.yoke]\nbeside=\"all\"\nwidth=1\ncount=2\nfirst=1\n" + s
	}
	pleat := func(s string) string {
		return small + "[piece.front.pleat.p]\nedge=\"all\"\nfrom=\"all\"\nat=1\ndepth=1\ntoward=\"all\"\nlength=1\n" + s
	}
	line := func(s string) string { return small + "[piece.front.line.l]\n" + s }
	edge := func(s string) string { return "[piece.front.edge.all]\n" + s }
	tests := []struct{ name, in, want string }{
		{"empty file", "", "f.toml: the file is empty" + empty},
		{"only blanks", " \n\t\r\n", "f.toml: the file is empty" + empty},
		{"only a byte order mark", "\ufeff", "f.toml: the file is empty" + empty},
		{"only a remark", "# to do\n", "f.toml: no piece is described" + empty},
		{"no piece", "title = \"x\"\n", "f.toml: no piece is described" + empty},
		{"no piece in the table", "[piece]\n", "f.toml: no piece is described" + empty},

		{"mistyped key", "titel = \"x\"\n" + small, "f.toml:1: titel: this key is not known\nhint: did you mean \"title\"?"},
		{"unknown key", "colour = \"x\"\n" + small, "f.toml:1: colour: this key is not known\nhint: known here are title, size, unit, allowance, sleepwear, cloth, piece, seam, trim, ruffle, binding, sewing, fit, like, without, view; `tuckmark help` explains them"},
		{"mistyped table", "[peice.front]\n", "f.toml:1: peice: this key is not known\nhint: did you mean \"piece\"?"},
		{"mistyped key in cloth", "[cloth]\nsee_through = true\n" + small, "f.toml:2: cloth.see_through: this key is not known\nhint: did you mean \"see-through\"?"},
		{"mistyped table in a piece", "[piece.front]\n[piece.front.egde.all]\npoints = 3", "f.toml:2: piece.front.egde: this key is not known\nhint: did you mean \"edge\"?"},
		{"mistyped key that is needed", small + "[piece.front.notch.n]\nedge = \"all\"\nform = \"all\"\nat = 1", "f.toml:5: piece.front.notch.n.form: this key is not known\nhint: did you mean \"from\"?"},
		{"unknown key of a pleat", pleat("press = 1"), "f.toml:10: piece.front.pleat.p.press: this key is not known\nhint: known here are edge, from, at, depth, toward, length, count, spacing, run; `tuckmark help pleat` explains them"},

		{"a placket", small + "[piece.front.placket]\nlength = 4", "f.toml:3: piece.front.placket: this key is not known" + inPiece + "[piece.front.line.placket] and its points below it"},
		{"a slash, as a number", small + "[piece.front]\nslash = 4", "f.toml:4: piece.front.slash: this key is not known" + inPiece + "[piece.front.line.slash] and its points below it"},
		{"a cut line", small + "[piece.front.\"Cut line\"]", "f.toml:3: piece.front.\"Cut line\": this key is not known" + inPiece + "[piece.front.line.\"Cut line\"] and its points below it"},
		{"buttonholes", small + "[piece.front.buttonholes]", "f.toml:3: piece.front.buttonholes: this key is not known" + inPiece + "[piece.front.line.buttonholes] and its points below it"},
		{"a placket of an edge", edge("points = [[0, 0], [1, 0]]\nplacket = 1"), "f.toml:3: piece.front.edge.all.placket: this key is not known\nhint: what is folded back at this edge is its hem: hem = 1, and turn for what is turned in"},
		{"a fold of an edge", edge("points = [[0, 0], [1, 0]]\nfold = true"), "f.toml:3: piece.front.edge.all.fold: this key is not known\nhint: the edge that lies on the fold of the cloth is named in its piece, above the edges: fold = \"centre front\""},
		{"a mistyped cut", small + "[piece.front]\ncuts = 2", "f.toml:4: piece.front.cuts: this key is not known\nhint: did you mean \"cut\"?"},
		{"a mistyped fold", small + "[piece.front]\nfolds = \"all\"", "f.toml:4: piece.front.folds: this key is not known\nhint: did you mean \"fold\"?"},
		{"a fold line", small + "[piece.front.\"fold line\"]", "f.toml:3: piece.front.\"fold line\": this key is not known" + inPiece + "[piece.front.line.\"fold line\"] and its points below it"},
		{"a hem of a piece", small + "[piece.front]\nhem = 1", "f.toml:4: piece.front.hem: this key is not known\nhint: it belongs to an edge of the piece, under [piece.front.edge.NAME]"},
		{"an allowance of a piece", small + "[piece.front]\nseam-allowance = 1", "f.toml:4: piece.front.seam-allowance: this key is not known\nhint: it belongs to an edge of the piece, under [piece.front.edge.NAME]"},
		{"a seam allowance", "seam_allowance = 1\n" + small, "f.toml:1: seam_allowance: this key is not known\nhint: it is called allowance here: allowance = \"3/8\""},
		{"a placket of the garment", "placket = 1\n" + small, "f.toml:1: placket: this key is not known\nhint: known here are title, size, unit, allowance, sleepwear, cloth, piece, seam, trim, ruffle, binding, sewing, fit, like, without, view; `tuckmark help` explains them"},
		{"a mistyped line", small + "[piece.front.lines.x]", "f.toml:3: piece.front.lines: this key is not known\nhint: did you mean \"line\"?"},

		{"no-break space in a reference", small + "[piece.front]\nfold = \"centre\u00a0front\"", "f.toml:4: piece.front.fold: the name has a no-break space (U+00A0) behind \"centre\"" + space},
		{"no-break space in a key", "[piece.front.edge.\"\u00a0all\"]\npoints = [[0, 0], [1, 0]]", "f.toml:1: piece.front.edge.\"\\u00a0all\": the name has a no-break space (U+00A0) at its beginning" + space},
		{"no-break space in a seam", small + "[seam.s]\njoin = [\"front.all\", \"front.a\u2009b\"]", "f.toml:4: seam.s.join: the name has a space of another kind (U+2009) behind \"front.a\"" + space},
		{"no-break space in what meets", small + "[seam.s]\njoin = [\"front.all\", \"front.all\"]\nmeet = [\"hem\", \"hem\u00a0edge\"]", "f.toml:5: seam.s.meet: the name has a no-break space (U+00A0) behind \"hem\"" + space},
		{"soft hyphen in a reference", small + "[trim.t]\nalong = \"front.a\u00adll\"", "f.toml:4: trim.t.along: the name has a sign that cannot be seen (U+00AD) behind \"front.a\"" + space},

		{"a point in quotes", edge("points = [[0, 0], [\"4 1/8, 0\"]]"), "f.toml:2: piece.front.edge.all.points: point 2 has 1 number, and needs two\nhint: put each number in quotes by itself: [\"4 1/8\", \"0\"]"},

		{"unknown unit", "unit = \"inch\"\n" + small, "f.toml:1: unit: \"inch\" is not known here\nhint: write \"in\", \"cm\" or \"mm\""},
		{"unit is no text", "unit = 1\n" + small, "f.toml:1: unit: must be text in quotes, but is 1\nhint: write \"in\", \"cm\" or \"mm\""},
		{"title is no text", "title = 3\n" + small, "f.toml:1: title: must be text in quotes, but is 3\nhint: write title = \"...\""},
		{"title is a date", "title = 2024-05-01\n" + small, "f.toml:1: title: must be text in quotes, but is a date or a time\nhint: write title = \"...\""},
		{"title is empty", "title = \" \"\n" + small, "f.toml:1: title: the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"title is too long", "title = \"" + strings.Repeat("é", 201) + "\"\n" + small, "f.toml:1: title: the text has 201 letters\nhint: a text has at most 200 letters"},
		{"letter the font has not", small + "[piece.front]\nname = \"⅓ of a front\"", "f.toml:4: piece.front.name: the sheets' font has no \"⅓\" (U+2153)\nhint: write it with other letters"},
		{"letter the font has not in a key", "[piece.\"✂\".edge.all]\npoints = [[0, 0], [1, 0]]", "f.toml:1: piece.\"✂\": the sheets' font has no \"✂\" (U+2702)\nhint: write it with other letters"},
		{"two lines", "title = \"a\\nb\"\n" + small, "f.toml:1: title: has a character that cannot be printed (U+000A)\nhint: write the text on one line, without tabs"},
		{"control character in a key", small + "[piece.front.line.\"a\\u001bb\"]\npoints = [[0, 0], [1, 0]]", "f.toml:3: piece.front.line.\"a\\x1bb\": has a character that cannot be printed (U+001B)\nhint: write the text on one line, without tabs"},
		{"empty key", "[piece.\"\".edge.all]\npoints = [[0, 0], [1, 0]]", "f.toml:1: piece.\"\": the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"empty reference", small + "[piece.front]\nfold = \"\"", "f.toml:4: piece.front.fold: the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"long key", small + "[piece.front.line." + strings.Repeat("a", 201) + "]", "f.toml:3: a name here has 201 letters\nhint: a name has at most 200 letters"},

		{"pieces in a list", "[[piece]]\nname = \"x\"", "f.toml:1: piece: written as a list, in two pairs of brackets\nhint: write [piece.NAME] on a line of its own, with a name for each"},
		{"edges in a list", "[[piece.front.edge]]\npoints = []", "f.toml:1: piece.front.edge: written as a list, in two pairs of brackets\nhint: write [piece.front.edge.NAME] on a line of its own, with a name for each"},
		{"cloth in a list", "[[cloth]]\n" + small, "f.toml:1: cloth: written as a list, in two pairs of brackets\nhint: write [cloth] on a line of its own, and what belongs to it below"},
		{"cloth is no table", "cloth = 44\n" + small, "f.toml:1: cloth: must be a table, but is 44\nhint: write [cloth] on a line of its own, and what belongs to it below"},
		{"piece without a name of its own", "[piece]\ncut = 2", "f.toml:2: piece.cut: must be a table, but is 2\nhint: write [piece.NAME] on a line of its own, with a name for each"},
		{"edge without a name of its own", "[piece.front.edge]\npoints = [[0, 0], [1, 1]]", "f.toml:2: piece.front.edge.points: must be a table, but is a list\nhint: write [piece.front.edge.NAME] on a line of its own, with a name for each"},
		{"piece without edges", "\n[piece.front]\ncut = 1", "f.toml:2: piece.front: no edge is described\nhint: write [piece.front.edge.neck], or another name, and its points below it"},
		{"mistyped piece in a header", small + "[piece.frnot.tuck.growth]\nbeside = \"all\"\nwidth = 1\ncount = 1\nfirst = 1", "f.toml:3: piece.frnot: no edge is described\nhint: did you mean \"front\"? Otherwise write [piece.frnot.edge.neck], or another name, and its points below it"},
		{"another piece without edges", small + "[piece.back]\ncut = 1", "f.toml:3: piece.back: no edge is described\nhint: write [piece.back.edge.neck], or another name, and its points below it"},

		{"see-through in quotes", "[cloth]\nsee-through = \"true\"\n" + small, "f.toml:2: cloth.see-through: must be true or false, but is \"true\"\nhint: write see-through = true without quotes"},
		{"cloth of no width", "[cloth]\nwidth = 0\n" + small, "f.toml:2: cloth.width: must be more than 0, but is 0"},
		{"negative allowance", "allowance = \"-3/8\"\n" + small, "f.toml:1: allowance: must not be negative, but is \"-3/8\"\nhint: take the minus sign away"},
		{"negative number", "allowance = -0.5\n" + small, "f.toml:1: allowance: must not be negative, but is -0.5\nhint: take the minus sign away"},
		{"not a number", "allowance = nan\n" + small, "f.toml:1: allowance: nan is not a length" + general},
		{"infinite", "allowance = inf\n" + small, "f.toml:1: allowance: inf is more than 100 m\nhint: check the number and its unit"},
		{"infinite below zero", "allowance = -inf\n" + small, "f.toml:1: allowance: -inf is more than 100 m\nhint: check the number and its unit"},
		{"too long", "unit = \"mm\"\nallowance = 100_001\n" + small, "f.toml:2: allowance: 100001 is more than 100 m\nhint: check the number and its unit"},
		{"very much too long", "allowance = 1e300\n" + small, "f.toml:1: allowance: 1e+300 is more than 100 m\nhint: check the number and its unit"},
		{"length is a list", "allowance = [1, 5]\n" + small, "f.toml:1: allowance: must be a length, but is a list" + general},
		{"length is no length", "allowance = \"wide\"\n" + small, "f.toml:1: allowance: \"wide\" is not a length" + general},
		{"decimal comma in quotes", "allowance = \"0,5\"\n" + small, "f.toml:1: allowance: \"0,5\" is written with a comma\nhint: write a decimal with a point: \"0.5\""},
		{"hem of no depth", edge("points = [[0, 0], [1, 0]]\nhem = \"0 in\""), "f.toml:3: piece.front.edge.all.hem: must be more than 0, but is \"0 in\""},

		{"cut nothing", small + "[piece.front]\ncut = 0", "f.toml:4: piece.front.cut: must be from 1 to 99, but is 0"},
		{"cut too many", small + "[piece.front]\ncut = 100", "f.toml:4: piece.front.cut: must be from 1 to 99, but is 100"},
		{"cut in quotes", small + "[piece.front]\ncut = \"2\"", "f.toml:4: piece.front.cut: must be a whole number, but is \"2\"\nhint: write a number such as cut = 2, without quotes and without a point"},
		{"cut one and a half", small + "[piece.front]\ncut = 1.5", "f.toml:4: piece.front.cut: must be a whole number, but is 1.5\nhint: write a number such as cut = 2, without quotes and without a point"},
		{"drawn otherwise", small + "[piece.front]\ndrawn = \"folded\"", "f.toml:4: piece.front.drawn: \"folded\" is not known here\nhint: write \"flat\" or \"finished\""},
		{"drawn to another line", small + "[piece.front]\ndrawn-to = \"seam\"", "f.toml:4: piece.front.drawn-to: \"seam\" is not known here\nhint: write \"cutting\" or \"stitching\""},
		{"drawn to, misspelt", small + "[piece.front]\ndrawn_to = \"stitching\"", "f.toml:4: piece.front.drawn_to: this key is not known\nhint: did you mean \"drawn-to\"?"},
		{"grain is a number", small + "[piece.front]\ngrain = 3", "f.toml:4: piece.front.grain: must be a name or two points, but is 3\nhint: write grain = \"centre front\", or grain = [[0, 0], [0, 5]]"},
		{"grain of one point", small + "[piece.front]\ngrain = [[0, 0]]", "f.toml:4: piece.front.grain: has 1 point, and needs at least two" + points},
		{"grain of three points", small + "[piece.front]\ngrain = [[0, 0], [0, 1], [1, 2]]", "f.toml:4: piece.front.grain: has 3 points, and needs two\nhint: a grain line is straight: give its two ends"},

		{"edge without points", edge("smooth = true"), "f.toml:1: piece.front.edge.all: \"points\" is missing" + points},
		{"no points", edge("points = []"), "f.toml:2: piece.front.edge.all.points: has no point, and needs at least two" + points},
		{"one point", edge("points = [[0, 0]]"), "f.toml:2: piece.front.edge.all.points: has 1 point, and needs at least two" + points},
		{"points are a number", edge("points = 3"), "f.toml:2: piece.front.edge.all.points: must be a list of points, but is 3" + points},
		{"points in two pairs of brackets", "[[piece.front.edge.all.points]]\nx = 1", "f.toml:1: piece.front.edge.all.points: must be a list of points, but is a list of tables" + points},
		{"points without inner brackets", edge("points = [\n0, 0,\n1, 1]"), "f.toml:3: piece.front.edge.all.points: point 1 must be two numbers in brackets, but is 0" + points},
		{"points as tables", edge("points = [{x = 1, y = 2}, {x = 2, y = 3}]"), "f.toml:2: piece.front.edge.all.points: point 1 must be two numbers in brackets, but is a table" + points},
		{"decimal comma in a point", edge("points = [[0, 0],\n[1,5, 3]]"), "f.toml:3: piece.front.edge.all.points: point 2 has 3 numbers, and needs two" + comma},
		{"two decimal commas in a point", edge("points = [[0, 0],\n[1,5, 3,5]]"), "f.toml:3: piece.front.edge.all.points: point 2 has 4 numbers, and needs two" + comma},
		{"half a point", edge("points = [[0], [1, 1]]"), "f.toml:2: piece.front.edge.all.points: point 1 has 1 number, and needs two" + points},
		{"empty point", edge("points = [[1, 1], []]"), "f.toml:2: piece.front.edge.all.points: point 2 has no number, and needs two" + points},
		{"both coordinates wrong", edge("points = [[0, 0],\n[\"3/0\", nan]]"), "f.toml:3: piece.front.edge.all.points: point 2: \"3/0\" has 0 under the stroke\nhint: a fraction divides by the number under its stroke, as in \"3/8\"\n" +
			"f.toml:3: piece.front.edge.all.points: point 2: nan is not a length" + general},
		{"hem and allowance", edge("points = [[0, 0], [1, 0]]\nhem = 2\nallowance = 0"), "f.toml:4: piece.front.edge.all.allowance: cannot stand beside \"hem\"\nhint: a hem stands in place of a seam allowance: leave one of them out"},
		{"turn without hem", edge("points = [[0, 0], [1, 0]]\nturn = 1"), "f.toml:3: piece.front.edge.all.turn: has no meaning without \"hem\"\nhint: turn is what is folded under at the edge of a hem: give the depth of the hem too"},

		{"empty tuck", small + "[piece.front.tuck.yoke]", "f.toml:3: piece.front.tuck.yoke: \"beside\" is missing\nhint: it names the edge or line that the tucks run along: beside = \"centre front\"\n" +
			"f.toml:3: piece.front.tuck.yoke: \"width\" is missing\nhint: it is measured from the fold to the stitching: width = \"1/8\"\n" +
			"f.toml:3: piece.front.tuck.yoke: \"count\" is missing\nhint: it says how many tucks there are: count = 6\n" +
			"f.toml:3: piece.front.tuck.yoke: \"first\" is missing\nhint: it is measured from the edge or line to the first fold: first = \"3/8\""},
		{"spacing and gap", tuck("spacing = 3\ngap = 0"), "f.toml:9: piece.front.tuck.yoke.gap: cannot stand beside \"spacing\"\nhint: spacing is from fold to fold, gap is what shows between two tucks: leave one of them out"},
		{"below without length", tuck("below = \"all\""), "f.toml:8: piece.front.tuck.yoke.below: has no meaning without \"length\"" + together},
		{"length without below", tuck("length = 3"), "f.toml:8: piece.front.tuck.yoke.length: has no meaning without \"below\"" + together},
		{"pressed elsewhere", tuck("press = \"up\""), "f.toml:8: piece.front.tuck.yoke.press: \"up\" is not known here\nhint: write \"away\" or \"toward\""},
		{"sewn otherwise", tuck("sewn = \"twin\""), "f.toml:8: piece.front.tuck.yoke.sewn: \"twin\" is not known here\nhint: write \"twin needle\" or \"edge\""},
		{"too many tucks", strings.Replace(tuck(""), "count=2", "count=501", 1), "f.toml:6: piece.front.tuck.yoke.count: must be from 1 to 500, but is 501"},
		{"tuck of no width", strings.Replace(tuck(""), "width=1", "width=0.0", 1), "f.toml:5: piece.front.tuck.yoke.width: must be more than 0, but is 0"},

		{"empty pleat", small + "[piece.front.pleat.p]", "f.toml:3: piece.front.pleat.p: \"edge\" is missing\nhint: it names the edge that is pleated: edge = \"armhole\"; a pleat across the whole piece has beside = \"centre front\" instead\n" +
			"f.toml:3: piece.front.pleat.p: \"from\" is missing\nhint: it names the edge at whose corner measuring starts: from = \"side\"\n" +
			"f.toml:3: piece.front.pleat.p: \"at\" is missing\nhint: it is measured along the edge to the fold line: at = 1\n" +
			"f.toml:3: piece.front.pleat.p: \"depth\" is missing\nhint: it is half the way from the fold line to the placement line: depth = \"3/8\"\n" +
			"f.toml:3: piece.front.pleat.p: \"toward\" is missing\nhint: it names the edge that the fold is laid toward: toward = \"side\"\n" +
			"f.toml:3: piece.front.pleat.p: \"length\" is missing\nhint: it says how long the lines are: length = \"1 1/2\""},
		{"two pleats without spacing", pleat("count = 2"), "f.toml:3: piece.front.pleat.p: \"spacing\" is missing\nhint: it is measured from fold line to fold line: spacing = \"1 1/2\""},
		{"pleat runs elsewhere", pleat("run = \"bias\""), "f.toml:10: piece.front.pleat.p.run: \"bias\" is not known here\nhint: write \"square\" or \"grain\""},

		{"empty line", line(""), "f.toml:3: piece.front.line.l: where the line runs is missing" + either},
		{"along without distance", line("along = \"all\""), "f.toml:4: piece.front.line.l.along: has no meaning without \"distance\"" + either},
		{"distance without along", line("distance = 1"), "f.toml:4: piece.front.line.l.distance: has no meaning without \"along\"" + either},
		{"along and points", line("along = \"all\"\ndistance = 1\npoints = [[0, 0], [1, 1]]"), "f.toml:4: piece.front.line.l.along: cannot stand beside \"points\"" + either + "\nf.toml:5: piece.front.line.l.distance: cannot stand beside \"points\"" + either},
		{"along an edge, and to another", line("along = \"all\"\ndistance = 1\nto = \"all\""), "f.toml:6: piece.front.line.l.to: has no meaning without \"points\"\nhint: from and to name the edges that a line through points runs from and to; one along an edge runs from cutting line to cutting line anyway"},
		{"from no name", line("points = [[1, 1], [2, 2]]\nfrom = 3"), "f.toml:5: piece.front.line.l.from: must be text in quotes, but is 3\nhint: write from = \"...\""},
		{"smooth along an edge", line("along = \"all\"\ndistance = 1\nsmooth = true"), "f.toml:6: piece.front.line.l.smooth: has no meaning without \"points\"\nhint: smooth draws a curve through points; a line along an edge is as that edge is"},
		{"line of another kind", line("points = [[0, 0], [1, 1]]\nkind = \"center\""), "f.toml:5: piece.front.line.l.kind: \"center\" is not known here\nhint: write \"fold\", \"centre\", \"placement\" or \"stitch\""},
		{"distance of nothing", line("along = \"all\"\ndistance = \"0\""), "f.toml:5: piece.front.line.l.distance: must be more than 0, but is \"0\""},
		{"empty notch", small + "[piece.front.notch.n]", "f.toml:3: piece.front.notch.n: \"edge\" is missing\nhint: it names the edge that is notched: edge = \"armhole\"\n" +
			"f.toml:3: piece.front.notch.n: \"from\" is missing\nhint: it names the edge at whose corner measuring starts: from = \"shoulder\"\n" +
			"f.toml:3: piece.front.notch.n: \"at\" is missing\nhint: it is measured along the edge to the notch: at = 3"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			spec, err := Read("f.toml", []byte(tt.in), sketch.HasLetter)
			require.Error(t, err)
			assert.Nil(t, spec)
			assert.IsType(t, fault.List{}, err)
			assert.Equal(t, tt.want, err.Error())
		})
	}
}

func TestReadReportsSeveralMistakesInTheOrderOfTheirLines(t *testing.T) {
	_, err := Read("pinafore.toml", []byte(`[piece.front]
name = "Front ✂"
cut = 0

[piece.front.edge."centre front"]
points = [
  [0, 0],
  ["1,5", 12],
  [3],
]
smoth = true

[piece.front.tuck.yoke]
beside = "centre front"
width = "1-1/8"
count = "6"

[cloth]
width = -1
`), sketch.HasLetter)
	require.Error(t, err)
	assert.Equal(t, `pinafore.toml:2: piece.front.name: the sheets' font has no "✂" (U+2702)
hint: write it with other letters
pinafore.toml:3: piece.front.cut: must be from 1 to 99, but is 0
pinafore.toml:8: piece.front.edge."centre front".points: point 2: "1,5" is written with a comma
hint: write a decimal with a point: "1.5"
pinafore.toml:9: piece.front.edge."centre front".points: point 3 has 1 number, and needs two
hint: a point is [x, y], and points are listed as [[0, 0], [3, "4 1/2"]]
pinafore.toml:11: piece.front.edge."centre front".smoth: this key is not known
hint: did you mean "smooth"?
pinafore.toml:13: piece.front.tuck.yoke: "first" is missing
hint: it is measured from the edge or line to the first fold: first = "3/8"
pinafore.toml:15: piece.front.tuck.yoke.width: "1-1/8" joins a whole number and a fraction with a hyphen
hint: write them with a space: "1 1/8"
pinafore.toml:16: piece.front.tuck.yoke.count: must be a whole number, but is "6"
hint: write a number such as count = 6, without quotes and without a point
pinafore.toml:19: cloth.width: must not be negative, but is -1
hint: take the minus sign away`, err.Error())
}

func TestReadListsTheFirstHundredMistakes(t *testing.T) {
	text := "[piece.front.edge.all]\npoints = [\n" + strings.Repeat("[1],\n", 250) + "]\n"
	_, err := Read("f.toml", []byte(text), sketch.HasLetter)
	require.Error(t, err)
	lines := strings.Split(err.Error(), "\n")
	assert.Len(t, lines, 2*101)
	assert.Equal(t, "f.toml:3: piece.front.edge.all.points: point 1 has 1 number, and needs two", lines[0])
	assert.Equal(t, "f.toml: there are more mistakes: 150", lines[200])
	assert.Equal(t, "hint: put the first ones right and try again", lines[201])
}

func TestReadUnit(t *testing.T) {
	for _, u := range []length.Unit{length.Inch, length.Centimetre, length.Millimetre} {
		got, err := ReadUnit(u.String())
		require.NoError(t, err)
		assert.Equal(t, u, got)
	}
	_, err := ReadUnit("ft")
	assert.EqualError(t, err, "\"ft\" is not known here\nhint: write \"in\", \"cm\" or \"mm\"")
}
