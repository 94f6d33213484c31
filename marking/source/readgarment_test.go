package source

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/sketch"
)

func TestReadTakesEveryKeyOfSeams(t *testing.T) {
	spec, err := Read("pinafore.toml", []byte("unit = \"cm\"\n"+small+`[seam.shoulder]
join = ["front.shoulder", "back.shoulder"]
ease = "1/4 in"
within = 0.2
meet = "neck"
[seam."cap, eased"]
join = [
  "sleeve.cap",
  ["front.armhole", "back.armhole"],
]
[seam.waist]
join = [["skirt.waist"], ["front.waist", "back.waist"]]
meet = ["side", "side seam"]
gathered = true
`), sketch.HasLetter)
	require.NoError(t, err)
	texts := func(place fault.Place, names ...string) []Text {
		var all []Text
		for _, n := range names {
			all = append(all, GivenAt(n, place))
		}
		return all
	}
	shoulder, cap, waist := at("seam.shoulder.join", 5), at(`seam."cap, eased".join`, 10), at("seam.waist.join", 15)
	assert.Equal(t, []SeamSpec{
		{
			Key: "shoulder", Place: at("seam.shoulder", 4), Join: shoulder,
			Sides: [2][]Text{texts(shoulder, "front.shoulder"), texts(shoulder, "back.shoulder")},
			Ease:  GivenAt(6.35, at("seam.shoulder.ease", 6)), Within: GivenAt(2.0, at("seam.shoulder.within", 7)),
			Meet: [2]Text{GivenAt("neck", at("seam.shoulder.meet", 8)), GivenAt("neck", at("seam.shoulder.meet", 8))},
		},
		{
			Key: "cap, eased", Place: at(`seam."cap, eased"`, 9), Join: cap,
			Sides: [2][]Text{texts(cap, "sleeve.cap"), texts(cap, "front.armhole", "back.armhole")},
		},
		{
			Key: "waist", Place: at("seam.waist", 14), Join: waist,
			Sides:    [2][]Text{texts(waist, "skirt.waist"), texts(waist, "front.waist", "back.waist")},
			Meet:     [2]Text{GivenAt("side", at("seam.waist.meet", 16)), GivenAt("side seam", at("seam.waist.meet", 16))},
			Gathered: true,
		},
	}, spec.Seams)
}

func TestReadSaysWhatIsWrongWithSeams(t *testing.T) {
	const form = "\nhint: write join = [\"front.shoulder\", \"back.shoulder\"]; a side of several edges is a list of its own: join = [\"sleeve.cap\", [\"front.armhole\", \"back.armhole\"]]"
	const length = "\nhint: a length is a whole number, a fraction or a decimal, such as \"2\", \"3/8\", \"2 1/8\" or \"2.125\""
	const named = "\nhint: write [seam.NAME] on a line of its own, with a name for each"
	const meet = "\nhint: write meet = \"hem\", or meet = [\"hem\", \"lower edge\"] where the second side calls it otherwise"
	seam := func(s string) string { return small + "[seam.s]\n" + s }
	with := func(s string) string { return seam("join = [\"a.b\", \"c.d\"]\n" + s) }
	var many []string
	for i := range 101 {
		many = append(many, fmt.Sprintf("\"a.%d\"", i))
	}
	for _, c := range []struct{ name, in, want string }{
		{"nothing", seam(""), "f.toml:3: seam.s: \"join\" is missing\nhint: it names the two edges that are sewn together: join = [\"front.shoulder\", \"back.shoulder\"]"},
		{"join is text", seam("join = \"front.shoulder\""), "f.toml:4: seam.s.join: must be a list of two edges, but is \"front.shoulder\"" + form},
		{"join is a number", seam("join = 2"), "f.toml:4: seam.s.join: must be a list of two edges, but is 2" + form},
		{"join is a table", seam("join = {front = \"shoulder\"}"), "f.toml:4: seam.s.join: must be a list of two edges, but is a table" + form},
		{"join in two pairs of brackets", small + "[[seam.s.join]]\nfront = 1", "f.toml:3: seam.s.join: must be a list of two edges, but is a list of tables" + form},
		{"no side", seam("join = []"), "f.toml:4: seam.s.join: joins two sides, but names 0" + form},
		{"one side", seam("join = [\"front.shoulder\"]"), "f.toml:4: seam.s.join: joins two sides, but names 1" + form},
		{"one side of two edges", seam("join = [[\"front.shoulder\", \"back.shoulder\"]]"), "f.toml:4: seam.s.join: joins two sides, but names 1" + form},
		{"three sides", seam("join = [\"a.b\", \"c.d\", \"e.f\"]"), "f.toml:4: seam.s.join: joins two sides, but names 3" + form},
		{"an empty side", seam("join = [\"a.b\", []]"), "f.toml:4: seam.s.join: side 2 names no edge" + form},
		{"two empty sides", seam("join = [[], []]"), "f.toml:4: seam.s.join: side 1 names no edge" + form + "\nf.toml:4: seam.s.join: side 2 names no edge" + form},
		{"a number in place of a name", seam("join = [3, \"c.d\"]"), "f.toml:4: seam.s.join: side 1 must be the name of an edge, but is 3" + form},
		{"true in place of a name", seam("join = [\"a.b\", true]"), "f.toml:4: seam.s.join: side 2 must be the name of an edge, but is true" + form},
		{"a table in place of a name", seam("join = [\"a.b\", {c = 1}]"), "f.toml:4: seam.s.join: side 2 must be the name of an edge, but is a table" + form},
		{"a number among names", seam("join = [\"a.b\", [\"c.d\", 3]]"), "f.toml:4: seam.s.join: name 2 must be text in quotes, but is 3" + form},
		{"a list among names", seam("join = [\"a.b\", [\"c.d\", [\"e.f\"]]]"), "f.toml:4: seam.s.join: name 2 must be text in quotes, but is a list" + form},
		{"an empty name", seam("join = [\"a.b\", \"\"]"), "f.toml:4: seam.s.join: the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"a long name", seam("join = [\"a.b\", \"" + strings.Repeat("x", 201) + "\"]"), "f.toml:4: seam.s.join: the text has 201 letters\nhint: a text has at most 200 letters"},
		{"too many names", seam("join = [\"a.b\", [" + strings.Join(many, ", ") + "]]"), "f.toml:4: seam.s.join: names 101 edges; at most 100 are measured\nhint: divide it"},

		{"negative ease", with("ease = \"-1/4\""), "f.toml:5: seam.s.ease: must not be negative, but is \"-1/4\"\nhint: take the minus sign away"},
		{"ease that is no length", with("ease = true"), "f.toml:5: seam.s.ease: must be a length, but is true" + length},
		{"negative tolerance", with("within = -1"), "f.toml:5: seam.s.within: must not be negative, but is -1\nhint: take the minus sign away"},
		{"a decimal comma", with("within = \"0,1\""), "f.toml:5: seam.s.within: \"0,1\" is written with a comma\nhint: write a decimal with a point: \"0.1\""},
		{"gathered in quotes", with("gathered = \"yes\""), "f.toml:5: seam.s.gathered: must be true or false, but is \"yes\"\nhint: write gathered = true without quotes"},
		{"within beside gathered", with("gathered = true\nwithin = 1"), "f.toml:6: seam.s.within: cannot stand beside \"gathered\"\nhint: a gathered side is drawn up to the other, whatever it measures: leave within out"},
		{"negative ease beside gathered", with("gathered = true\nease = -1"), "f.toml:6: seam.s.ease: must not be negative, but is -1\nhint: take the minus sign away"},

		{"meet is a number", with("meet = 3"), "f.toml:5: seam.s.meet: must be the name of an edge, but is 3" + meet},
		{"meet names three", with("meet = [\"a\", \"b\", \"c\"]"), "f.toml:5: seam.s.meet: must name one edge, or two, in quotes" + meet},
		{"meet names a number", with("meet = [\"a\", 2]"), "f.toml:5: seam.s.meet: must name one edge, or two, in quotes" + meet},
		{"meet names nothing", with("meet = [\"a\", \"\"]"), "f.toml:5: seam.s.meet: the name or text is empty\nhint: write at least one letter, or leave the line out"},

		{"mistyped key", with("gatherd = true"), "f.toml:5: seam.s.gatherd: this key is not known\nhint: did you mean \"gathered\"?"},
		{"mistyped join", seam("joins = [\"a.b\", \"c.d\"]"), "f.toml:4: seam.s.joins: this key is not known\nhint: did you mean \"join\"?"},
		{"unknown key", with("stitch = \"French\""), "f.toml:5: seam.s.stitch: this key is not known\nhint: known here are join, meet, ease, within, gathered; `tuckmark help seam` explains them"},

		{"a seam without a name of its own", small + "[seam]\njoin = [\"a.b\", \"c.d\"]", "f.toml:4: seam.join: must be a table, but is a list" + named},
		{"seams in a list", small + "[[seam]]\njoin = [\"a.b\", \"c.d\"]", "f.toml:3: seam: written as a list, in two pairs of brackets" + named},
		{"seam is text", "seam = \"shoulder\"\n" + small, "f.toml:1: seam: must be a table, but is \"shoulder\"" + named},
		{"an empty name of a seam", small + "[seam.\"\"]\njoin = [\"a.b\", \"c.d\"]", "f.toml:3: seam.\"\": the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"a seam whose name cannot be printed", small + "[seam.\"✂\"]\njoin = [\"a.b\", \"c.d\"]", "f.toml:3: seam.\"✂\": the sheets' font has no \"✂\" (U+2702)\nhint: write it with other letters"},
		{"mistyped table", small + "[seem.s]\njoin = [\"a.b\", \"c.d\"]", "f.toml:3: seem: this key is not known\nhint: did you mean \"seam\"?"},

		{"several at once", seam("join = [\"a.b\"]\nease = -1\n[seam.t]\nwithn = 1"), "f.toml:4: seam.s.join: joins two sides, but names 1" + form +
			"\nf.toml:5: seam.s.ease: must not be negative, but is -1\nhint: take the minus sign away" +
			"\nf.toml:6: seam.t: \"join\" is missing\nhint: it names the two edges that are sewn together: join = [\"front.shoulder\", \"back.shoulder\"]" +
			"\nf.toml:7: seam.t.withn: this key is not known\nhint: did you mean \"within\"?"},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec, err := Read("f.toml", []byte(c.in), sketch.HasLetter)
			require.Error(t, err)
			assert.Nil(t, spec)
			assert.Equal(t, c.want, err.Error())
		})
	}
}
