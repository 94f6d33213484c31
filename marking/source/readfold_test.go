package source

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
)

// folded is a file with every key of tucks, of pleats across a piece and of a block.
const folded = `unit = "cm"
[piece.front]
fold = "all"
drawn = "finished"
print = "whole"
[piece.front.edge.all]
points = [[0, 0], [1, 0]]
[piece.front.tuck.t]
beside = "all"
side = "neck"
width = 0.5
count = 3
first = 2
gap = "1 mm"
press = "toward"
below = "neck"
length = 5
end = "stepped"
step = -0.5
sewn = "edge"
sample = {tucks = 10, flat = "6 in", sewn = "3 9/16 in"}
[piece.front.pleat.p]
beside = "all"
side = "hem"
kind = "knife"
depth = 2
count = 4
first = 0
spacing = 7
press = "away"
below = "waist"
length = 8
end = "follow"
[piece.front.block]
ends = 0
sides = 1.5
measured = "16 1/4 in"
`

func TestReadTakesEveryKeyOfFolds(t *testing.T) {
	spec, err := Read("pinafore.toml", []byte(folded), sketch.HasLetter)
	require.NoError(t, err)
	front := spec.Pieces[0]
	assert.Equal(t, GivenAt(DrawnFinished, at("piece.front.drawn", 4)), front.Drawn)
	assert.Equal(t, GivenAt(PrintWhole, at("piece.front.print", 5)), front.Print)

	tuck := front.Tucks[0]
	assert.Equal(t, at("piece.front.tuck.t", 8), tuck.Place)
	assert.Equal(t, GivenAt(PressedToward, at("piece.front.tuck.t.press", 15)), tuck.Press)
	assert.Equal(t, GivenAt(1.0, at("piece.front.tuck.t.gap", 14)), tuck.Gap)
	assert.Equal(t, EndSpec{
		Below:  GivenAt("neck", at("piece.front.tuck.t.below", 16)),
		Length: GivenAt(50.0, at("piece.front.tuck.t.length", 17)),
		Shape:  GivenAt(EndStepped, at("piece.front.tuck.t.end", 18)),
		Step:   GivenAt(-5.0, at("piece.front.tuck.t.step", 19)),
	}, tuck.End)
	require.NotNil(t, tuck.Sample)
	assert.Equal(t, at("piece.front.tuck.t.sample", 21), tuck.Sample.Place)
	assert.Equal(t, GivenAt(10, at("piece.front.tuck.t.sample.tucks", 21)), tuck.Sample.Tucks)
	assert.InDelta(t, 152.4, tuck.Sample.Flat.V, 1e-9)
	assert.InDelta(t, 90.4875, tuck.Sample.Sewn.V, 1e-9)
	assert.Equal(t, at("piece.front.tuck.t.sample.sewn", 21), tuck.Sample.Sewn.Place)

	assert.Empty(t, front.EdgePleats, "a pleat beside a line runs across the piece")
	require.Len(t, front.PleatRows, 1)
	pleat := front.PleatRows[0]
	assert.Equal(t, []string{"p", "all", "hem", "waist"},
		[]string{pleat.Key, pleat.Beside.V, pleat.Side.V, pleat.End.Below.V})
	assert.Equal(t, KnifePleat, pleat.Kind.V)
	assert.Equal(t, PressedAway, pleat.Press.V)
	assert.Equal(t, EndFollow, pleat.End.Shape.V)
	assert.Equal(t, GivenAt(20.0, at("piece.front.pleat.p.depth", 26)), pleat.Depth)
	assert.Equal(t, GivenAt(4, at("piece.front.pleat.p.count", 27)), pleat.Count)
	assert.Equal(t, GivenAt(0.0, at("piece.front.pleat.p.first", 28)), pleat.First)
	assert.Equal(t, 70.0, pleat.Spacing.V)
	assert.Equal(t, 80.0, pleat.End.Length.V)

	require.NotNil(t, front.Block)
	assert.Equal(t, at("piece.front.block", 34), front.Block.Place)
	assert.Equal(t, GivenAt(0.0, at("piece.front.block.ends", 35)), front.Block.Ends)
	assert.Equal(t, GivenAt(15.0, at("piece.front.block.sides", 36)), front.Block.Sides)
	assert.InDelta(t, 412.75, front.Block.Measured.V, 1e-9)
}

// A sample and a block may be written in either of the two ways that TOML has for a
// table.
func TestReadTakesASampleWrittenEitherWay(t *testing.T) {
	head := small + "[piece.front.tuck.t]\nbeside = \"all\"\nwidth = 1\ncount = 2\nfirst = 1\n"
	for name, text := range map[string]string{
		"on one line":    head + "sample = {tucks = 10, flat = 6, sewn = \"3 9/16\"}\n",
		"table":          head + "[piece.front.tuck.t.sample]\ntucks = 10\nflat = 6\nsewn = \"3 9/16\"\n",
		"key by key":     head + "sample.tucks = 10\nsample.flat = 6\nsample.sewn = \"3 9/16\"\n",
		"in other order": head + "sample = {sewn = \"3 9/16\", flat = 6, tucks = 10}\n",
	} {
		t.Run(name, func(t *testing.T) {
			spec, err := Read("f.toml", []byte(text), sketch.HasLetter)
			require.NoError(t, err)
			sample := spec.Pieces[0].Tucks[0].Sample
			require.NotNil(t, sample)
			assert.Equal(t, 10, sample.Tucks.V)
			assert.InDelta(t, 152.4, sample.Flat.V, 1e-9)
			assert.InDelta(t, 90.4875, sample.Sewn.V, 1e-9)
			assert.Equal(t, 8, sample.Place.Line)
		})
	}
	spec, err := Read("pinafore.toml", []byte(small+"[piece.front]\nblock = {ends = 1}\n"), sketch.HasLetter)
	require.NoError(t, err)
	assert.Equal(t, GivenAt(25.4, at("piece.front.block.ends", 4)), spec.Pieces[0].Block.Ends)
	spec, err = Read("pinafore.toml", []byte(small+"[piece.front.block]\n"), sketch.HasLetter)
	require.NoError(t, err)
	assert.Equal(t, &BlockSpec{Place: at("piece.front.block", 3)}, spec.Pieces[0].Block)
}

func TestReadTakesTucksBetweenLines(t *testing.T) {
	spec, err := Read("pinafore.toml", []byte(small+"[piece.front.tuck.t]\nbeside = \"all\"\nwidth = 1\ncount = 2\nfirst = 1\nfrom = \"yoke\"\nto = \"waist\"\n"), sketch.HasLetter)
	require.NoError(t, err)
	end := spec.Pieces[0].Tucks[0].End
	assert.Equal(t, EndSpec{From: GivenAt("yoke", at("piece.front.tuck.t.from", 8)), To: GivenAt("waist", at("piece.front.tuck.t.to", 9))}, end)
	assert.Equal(t, end.To.Place, end.Place())
	assert.True(t, end.Given())
}

func TestReadTakesTucksInGroups(t *testing.T) {
	read := func(rest string) TuckSpec {
		spec, err := Read("pinafore.toml", []byte(small+"[piece.front.tuck.t]\nbeside = \"all\"\nwidth = 1\ncount = 2\nfirst = 1\n"+rest), sketch.HasLetter)
		require.NoError(t, err)
		return spec.Pieces[0].Tucks[0]
	}
	even := read("groups = 3\nbetween = \"1 cm\"\n")
	assert.Equal(t, GivenAt(3, at("piece.front.tuck.t.groups", 8)), even.Groups)
	assert.Equal(t, GivenAt(10.0, at("piece.front.tuck.t.between", 9)), even.Between)
	uneven := read("betweens = [\"1 cm\", 0, 2]\n")
	assert.Equal(t, GivenAt([]float64{10, 0, 50.8}, at("piece.front.tuck.t.betweens", 8)), uneven.Betweens)
	assert.False(t, uneven.Groups.Given(), "they tell how many groups there are")
}

func TestReadSaysWhatIsWrongWithFolds(t *testing.T) {
	const form = "\nhint: write sample = {tucks = 10, flat = \"6\", sewn = \"3 9/16\"}: how many were sewn, and how far apart two marks lay before and after"
	const length = "\nhint: a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\""
	const together = "\nhint: pleats are pressed to \"length\" below the edge that \"below\" names; leave both out to have them run from edge to edge"
	const either = "\nhint: a pleat lies in one edge (edge, from, at, toward), or across the whole piece (beside, first, press): choose one"
	const between = "\nhint: from = \"yoke line\" and to = \"waist line\" have tucks stitched from one line to the other, free on both sides; each may be an edge"
	const inGroups = "\nhint: tucks in groups have groups = 7 and between = \"3/4\", what shows between two groups once they are sewn; or betweens = [\"3/4\", \"1/2\"], what shows behind each group but the last"
	tuck := func(s string) string {
		return small + "[piece.front.tuck.t]\nbeside = \"all\"\nwidth = 1\ncount = 2\nfirst = 1\n" + s
	}
	ends := func(s string) string { return tuck("below = \"all\"\nlength = 2\n" + s) }
	pleat := func(s string) string {
		return small + "[piece.front.pleat.p]\nbeside = \"all\"\ndepth = 1\nfirst = 1\n" + s
	}
	for _, c := range []struct{ name, in, want string }{
		{"sample is a number", tuck("sample = 3"), "f.toml:8: piece.front.tuck.t.sample: must be a table, but is 3" + form},
		{"sample is text", tuck("sample = \"10 tucks\""), "f.toml:8: piece.front.tuck.t.sample: must be a table, but is \"10 tucks\"" + form},
		{"sample in a list", tuck("sample = [{tucks = 1, flat = 2, sewn = 1}]"), "f.toml:8: piece.front.tuck.t.sample: must be a table, but is a list" + form},
		{"samples in a list of tables", tuck("[[piece.front.tuck.t.sample]]\ntucks = 1"), "f.toml:8: piece.front.tuck.t.sample: written as a list, in two pairs of brackets" + form},
		{"empty sample", tuck("sample = {}"), "f.toml:8: piece.front.tuck.t.sample: \"tucks\" is missing" + form +
			"\nf.toml:8: piece.front.tuck.t.sample: \"flat\" is missing" + form +
			"\nf.toml:8: piece.front.tuck.t.sample: \"sewn\" is missing" + form},
		{"sample without what it measured", tuck("sample = {tucks = 10, flat = 6}"), "f.toml:8: piece.front.tuck.t.sample: \"sewn\" is missing" + form},
		{"mistyped key of a sample", tuck("sample = {tucks = 10, flat = 6, sown = 3}"), "f.toml:8: piece.front.tuck.t.sample.sown: this key is not known\nhint: did you mean \"sewn\"?"},
		{"unknown key of a sample", tuck("sample = {tucks = 10, flat = 6, sewn = 3, needle = 60}"), "f.toml:8: piece.front.tuck.t.sample.needle: this key is not known\nhint: known here are tucks, flat, sewn; `tuckmark help sample` explains them"},
		{"sample of no tucks", tuck("sample = {tucks = 0, flat = 6, sewn = 3}"), "f.toml:8: piece.front.tuck.t.sample.tucks: must be from 1 to 500, but is 0"},
		{"tucks of a sample in quotes", tuck("sample = {tucks = \"10\", flat = 6, sewn = 3}"), "f.toml:8: piece.front.tuck.t.sample.tucks: must be a whole number, but is \"10\"\nhint: write a number such as tucks = 10, without quotes and without a point"},
		{"sample that is still blank", tuck("sample = {tucks = 10, flat = 6, sewn = \"____\"}"), "f.toml:8: piece.front.tuck.t.sample.sewn: \"____\" is not a length" + length},
		{"sample of no length", tuck("sample = {tucks = 10, flat = 0, sewn = -1}"), "f.toml:8: piece.front.tuck.t.sample.flat: must be more than 0, but is 0" +
			"\nf.toml:8: piece.front.tuck.t.sample.sewn: must not be negative, but is -1\nhint: take the minus sign away"},
		{"sample further down", tuck("press = \"away\"\n\n# sewn on Monday\nsample.tucks = 10\nsample.flat = 6\nsample.sewn = \"3,5\""), "f.toml:13: piece.front.tuck.t.sample.sewn: \"3,5\" is written with a comma\nhint: write a decimal with a point: \"3.5\""},

		{"end without below", tuck("end = \"level\""), "f.toml:8: piece.front.tuck.t.end: has no meaning without \"below\"\nhint: end is the shape of the end line of folds that do not run from edge to edge"},
		{"end of another kind", ends("end = \"curved\""), "f.toml:10: piece.front.tuck.t.end: \"curved\" is not known here\nhint: write \"level\", \"follow\" or \"stepped\""},
		{"stepped without step", ends("end = \"stepped\""), "f.toml:3: piece.front.tuck.t: \"step\" is missing\nhint: it says how much longer each is than the one before, or, below 0, how much shorter: step = \"1/4\""},
		{"step of level tucks", ends("end = \"level\"\nstep = 1"), "f.toml:11: piece.front.tuck.t.step: has no meaning without end = \"stepped\"\nhint: a step makes each fold longer or shorter than the one before"},
		{"step alone", tuck("step = 1"), "f.toml:8: piece.front.tuck.t.step: has no meaning without end = \"stepped\"\nhint: a step makes each fold longer or shorter than the one before"},
		{"step that is no length", ends("end = \"stepped\"\nstep = true"), "f.toml:11: piece.front.tuck.t.step: must be a length, but is true" + length},
		{"length of nothing", tuck("below = \"all\"\nlength = 0"), "f.toml:9: piece.front.tuck.t.length: must be more than 0, but is 0"},
		{"negative gap", tuck("gap = \"-1/8\""), "f.toml:8: piece.front.tuck.t.gap: must not be negative, but is \"-1/8\"\nhint: take the minus sign away"},
		{"unknown key of a tuck", tuck("depth = 1"), "f.toml:8: piece.front.tuck.t.depth: this key is not known\nhint: known here are beside, side, width, count, first, spacing, gap, groups, between, betweens, press, below, length, end, step, from, to, sewn, sample; `tuckmark help tuck` explains them"},
		{"from without to", tuck("from = \"all\""), "f.toml:8: piece.front.tuck.t.from: has no meaning without \"to\"" + between},
		{"to without from", tuck("to = \"all\""), "f.toml:8: piece.front.tuck.t.to: has no meaning without \"from\"" + between},
		{"below one edge and between two lines", tuck("below = \"all\"\nlength = 1\nfrom = \"all\"\nto = \"other\""), "f.toml:8: piece.front.tuck.t.below: cannot stand beside \"from\"\nhint: below and length end tucks so far below one edge, from and to at two lines: choose one"},
		{"groups alone", tuck("groups = 7"), "f.toml:8: piece.front.tuck.t.groups: has no meaning without \"between\"" + inGroups},
		{"between alone", tuck("between = 1"), "f.toml:8: piece.front.tuck.t.between: has no meaning without \"groups\"" + inGroups},
		{"one group", tuck("groups = 1\nbetween = 1"), "f.toml:8: piece.front.tuck.t.groups: is 1, which makes no groups\nhint: leave groups and between out: all tucks are one row then"},
		{"no group", tuck("groups = 0\nbetween = 1"), "f.toml:8: piece.front.tuck.t.groups: must be from 1 to 500, but is 0"},
		{"between and betweens", tuck("groups = 2\nbetween = 1\nbetweens = [1]"), "f.toml:9: piece.front.tuck.t.between: cannot stand beside \"betweens\"\nhint: between is the same for all groups, betweens has one for each but the last: leave one of them out"},
		{"too few betweens", tuck("groups = 7\nbetweens = [1, 2, 1]"), "f.toml:9: piece.front.tuck.t.betweens: has 3, and 7 groups have 6 between them\nhint: give one for each group but the last; or leave groups out, and they tell how many there are"},
		{"between below nought", tuck("groups = 2\nbetween = \"-1/8\""), "f.toml:9: piece.front.tuck.t.between: must not be negative, but is \"-1/8\"\nhint: take the minus sign away"},
		{"betweens below nought", tuck("betweens = [1, \"-1/8\"]"), "f.toml:8: piece.front.tuck.t.betweens: length 2: must not be negative, but is \"-1/8\"\nhint: take the minus sign away"},
		{"betweens that are one", tuck("groups = 2\nbetweens = 1"), "f.toml:9: piece.front.tuck.t.betweens: must be a list of lengths, but is 1" + inGroups},
		{"no betweens", tuck("groups = 2\nbetweens = []"), "f.toml:9: piece.front.tuck.t.betweens: has no length in it" + inGroups},
		{"more in all than are drawn", strings.Replace(tuck("groups = 100\nbetween = 1"), "count = 2", "count = 6", 1), "f.toml:3: piece.front.tuck.t: 100 groups of 6 are 600 tucks, and a set has at most 500\nhint: make it two sets"},

		{"empty pleat beside a line", small + "[piece.front.pleat.p]\nbeside = \"all\"", "f.toml:3: piece.front.pleat.p: \"depth\" is missing\nhint: it is how far the fold of the pleat lies over: depth = \"1\"\n" +
			"f.toml:3: piece.front.pleat.p: \"first\" is missing\nhint: it is measured from the edge or line to the first fold line, or to the middle of the first box pleat: first = \"2\""},
		{"pleat of another kind", pleat("kind = \"kick\""), "f.toml:7: piece.front.pleat.p.kind: \"kick\" is not known here\nhint: write \"knife\", \"box\" or \"inverted\""},
		{"box pleat that is pressed", pleat("kind = \"box\"\npress = \"away\""), "f.toml:8: piece.front.pleat.p.press: cannot stand beside \"kind\"\nhint: the two folds of a box or inverted pleat lie opposite ways; press is for knife pleats"},
		{"inverted pleat that is pressed", pleat("kind = \"inverted\"\npress = \"toward\""), "f.toml:8: piece.front.pleat.p.press: cannot stand beside \"kind\"\nhint: the two folds of a box or inverted pleat lie opposite ways; press is for knife pleats"},
		{"pleats with spacing and gap", pleat("spacing = 4\ngap = 1"), "f.toml:8: piece.front.pleat.p.gap: cannot stand beside \"spacing\"\nhint: spacing is from pleat to pleat on the flat cloth, gap is what shows between two: leave one of them out"},
		{"pleats below without length", pleat("below = \"all\""), "f.toml:7: piece.front.pleat.p.below: has no meaning without \"length\"" + together},
		{"pleats of a length without below", pleat("length = 3"), "f.toml:7: piece.front.pleat.p.length: has no meaning without \"below\"" + together},
		{"pleat across that names an edge", pleat("edge = \"all\""), "f.toml:4: piece.front.pleat.p.beside: cannot stand beside \"edge\"" + either},
		{"pleat of both kinds", pleat("edge = \"all\"\nfrom = \"all\"\nat = 1\ntoward = \"all\""), "f.toml:4: piece.front.pleat.p.beside: cannot stand beside \"edge\"" + either},
		{"pleat across laid toward an edge", pleat("toward = \"all\""), "f.toml:7: piece.front.pleat.p.toward: belongs to a pleat in one edge\nhint: which way a pleat across the piece is laid says press = \"toward\" or press = \"away\""},
		{"pleat of no depth", strings.Replace(pleat(""), "depth = 1", "depth = 0", 1), "f.toml:5: piece.front.pleat.p.depth: must be more than 0, but is 0"},
		{"no pleats", pleat("count = 0"), "f.toml:7: piece.front.pleat.p.count: must be from 1 to 500, but is 0"},

		{"block is a number", small + "[piece.front]\nblock = 1", "f.toml:4: piece.front.block: must be a table, but is 1\nhint: write [piece.front.block] on a line of its own, and what belongs to it below"},
		{"block in a list", small + "[[piece.front.block]]\nends = 1", "f.toml:3: piece.front.block: written as a list, in two pairs of brackets\nhint: write [piece.front.block] on a line of its own, and what belongs to it below"},
		{"unknown key of a block", small + "[piece.front.block]\nwidth = 1", "f.toml:4: piece.front.block.width: this key is not known\nhint: known here are ends, sides, measured; `tuckmark help block` explains them"},
		{"mistyped key of a block", small + "[piece.front.block]\nside = 1", "f.toml:4: piece.front.block.side: this key is not known\nhint: did you mean \"sides\"?"},
		{"ends below nought", small + "[piece.front.block]\nends = \"-1/2\"\nsides = -1", "f.toml:4: piece.front.block.ends: must not be negative, but is \"-1/2\"\nhint: take the minus sign away\nf.toml:5: piece.front.block.sides: must not be negative, but is -1\nhint: take the minus sign away"},
		{"block that measures nothing", small + "[piece.front.block]\nmeasured = 0", "f.toml:4: piece.front.block.measured: must be more than 0, but is 0"},

		{"print without fold", small + "[piece.front]\nprint = \"whole\"", "f.toml:4: piece.front.print: has no meaning without \"fold\"\nhint: print says whether half of a piece that lies on the fold is drawn, or the whole of it"},
		{"printed otherwise", small + "[piece.front]\nfold = \"all\"\nprint = \"both\"", "f.toml:5: piece.front.print: \"both\" is not known here\nhint: write \"half\", \"whole\" or \"left and right\""},
		{"print is true", small + "[piece.front]\nfold = \"all\"\nprint = true", "f.toml:5: piece.front.print: must be text in quotes, but is true\nhint: write \"half\", \"whole\" or \"left and right\""},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec, err := Read("f.toml", []byte(c.in), sketch.HasLetter)
			require.Error(t, err)
			assert.Nil(t, spec)
			assert.Equal(t, c.want, err.Error())
		})
	}
}
