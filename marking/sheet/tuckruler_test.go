package sheet

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// checkRuler looks whether a ruler has a tick for every line of a tuck sheet, at the
// same places.
func checkRuler(t *testing.T, sheet, ruler mark.Marking) {
	t.Helper()
	places := func(m mark.Marking, role mark.Role) []string {
		var all []string
		for _, one := range m.Marks {
			if one.Role == role {
				assert.InDelta(t, one.Path[0].X, one.Path[1].X, 1e-9, "it stands upright")
				all = append(all, sketch.Number(one.Path[0].X/25.4))
			}
		}
		slices.Sort(all)
		return all
	}
	for _, role := range []mark.Role{mark.TuckFold, mark.TuckStitch, mark.PleatFold, mark.Placement} {
		assert.Equal(t, places(sheet, role), places(ruler, role), "%s", role)
	}
	a, b := sheet.Outline.Bounds(), ruler.Outline.Bounds()
	if slices.ContainsFunc(sheet.Marks, func(m mark.Mark) bool { return m.Name == "torn side" }) {
		assert.True(t, a.Min.X < b.Min.X+1e-9 && b.Max.X < a.Max.X+1e-9, "the sheet goes on to the torn side, the ruler does not")
	} else {
		assert.InDelta(t, a.Min.X, b.Min.X, 1e-9, "sheet and ruler begin at one place")
		assert.InDelta(t, a.Max.X, b.Max.X, 1e-9)
	}
	for _, one := range ruler.Marks {
		box := one.Path.Bounds()
		assert.True(t, box.Min.Y > b.Min.Y-1e-9 && box.Max.Y < b.Max.Y+1e-9, "ticks lie on the ruler")
		switch one.Role {
		case mark.TuckStitch, mark.Placement:
			assert.InDelta(t, 31.75/3, box.Height(), 1e-9, "a tick for stitching is a third of the ruler high")
		case mark.TuckFold, mark.PleatFold:
			assert.InDelta(t, 31.75*2/3, box.Height(), 1e-9, "a tick for a fold is two thirds of the ruler high")
		}
	}
	assert.InDelta(t, 31.75, b.Height(), 1e-9, "the ruler is 1 1/4 in high")
}

// A ruler says which tuck is which, where its end lies, and what lies there.
func TestWhatATuckRulerSays(t *testing.T) {
	const out, tick, rule, over = "cut it out", "tick the cloth at every line, and again along the other torn edge", "rule from tick to tick", "turn it over for the other half"
	const lay = "lay it along the torn edge"
	const layCentre = lay + ", with the end from which it counts on cf"
	names := func(m mark.Marking) []string {
		var all []string
		for _, one := range m.Marks {
			if one.Name != "" {
				all = append(all, one.Name)
			}
		}
		for _, w := range m.Words {
			all = append(all, w.Text)
		}
		return all
	}
	for _, c := range []struct {
		name, text string
		names      []string
		notes      []string
	}{
		{"on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "") + "\n[block]\n", []string{"1", "2", "3", "3/8", "3/4", "1 1/8", "from cf"},
			[]string{out, layCentre, tick, rule, over}},
		{"with a tuck on the fold", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "0", "") + "\n[block]\n", []string{"2", "3", "3/8", "3/4", "from cf"},
			[]string{out, layCentre, tick, rule, over}},
		{"beside another line of a piece on the fold", sketch.Bosom + "[line.rule]\nalong = \"cf\"\ndistance = 3\n\n" + sketch.Tucked("rule", "1/8", 3, "3/8", "") + "\n[block]\n",
			[]string{"rule", "1", "2", "3", "3/8", "3/4", "1 1/8", "from rule"}, []string{out, layCentre, tick, rule, over}},
		{"a whole piece", sketch.Bib + sketch.Tucked("middle", "1/4", 2, "1", "side = \"right\"") + "\n[block]\n", []string{"middle", "1", "2", "1", "1 3/4", "from middle"}, []string{out, lay, tick, rule}},
		// Torn at 12 1/2 in, ending at 7 5/8 in.
		{"ending on the piece", sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", "below = \"neck\"\nlength = 2") + "\n[block]\n", []string{"1", "2", "3", "3/8", "3/4", "1 1/8", "from cf"},
			[]string{"the t tucks end 4 7/8 in below the torn edge", out, layCentre, "tick the cloth at every line, and again along the end line", rule, over}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, c.text)
			ruler := tuckRuler(piece, pattern)
			assert.Equal(t, "front: tuck ruler", ruler.Name)
			assert.Equal(t, c.names, names(ruler))
			assert.Equal(t, c.notes, ruler.Told())
		})
	}
}

// How far down the tucks end is told below the torn edge, which lies at 12 1/2 in, on the
// ruler; on the sheet of the block it is measured at them.
func TestHowFarDownTheTucksEnd(t *testing.T) {
	const below = "below = \"neck\"\nlength = 2\n"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"level", sketch.Tucked("cf", "1/8", 2, "3/8", below), []string{"the t tucks end 4 7/8 in below the torn edge"}},
		{"stepped", sketch.Tucked("cf", "1/8", 3, "3/8", below+"end = \"stepped\"\nstep = \"1/4\""),
			[]string{"the t tucks end, from the first to the last: 4 7/8, 5 1/8, 5 3/8 in below the torn edge"}},
		{"follow, where the neck is level", sketch.Tucked("cf", "1/8", 2, "3/8", below+"end = \"follow\""), []string{"the t tucks end 4 7/8 in below the torn edge"}},
		// The two folds of a box pleat end at one height, told once.
		{"box pleats", "[pleat.p]\nbeside = \"cf\"\nkind = \"box\"\ndepth = \"1/8\"\nfirst = \"1/2\"\n" + below, []string{"the p pleats end 4 7/8 in below the torn edge"}},
		{"edge to edge", sketch.Tucked("cf", "1/8", 2, "3/8", ""), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, sketch.Bosom+c.text+"\n[block]\n")
			var got []string
			for _, one := range tuckRuler(piece, pattern).Told() {
				if strings.Contains(one, "below the torn edge") {
					got = append(got, one)
				}
			}
			assert.Equal(t, c.want, got)
			m := tuckSheet(piece, pattern)
			assert.NotContains(t, strings.Join(m.Told(), " "), "torn edge", "on the sheet it stands at the tucks, once")
			told := slices.ContainsFunc(m.Dimensions, func(d mark.Dimension) bool { return strings.HasSuffix(d.Text, "below the torn edge") }) ||
				slices.ContainsFunc(m.Words, func(w mark.Word) bool { return w.Text == "below the torn edge" })
			assert.Equal(t, len(c.want) > 0, told)
		})
	}
}

// The tuck ruler is a strip 1 1/4 in high with one tick for every line, each from its
// lower edge: of a fold line two thirds of its height, of a stitching one third. Three
// touching tucks of 1/4 in from 3/4 in on have their folds 3/4 in apart (3w: Kinne &
// Cooley, Clothing and Health, 1916, p. 99), and stitching 1/4 in before and behind each.
// The strip lies where the centre line has its upper end, at 10 in.
func TestTicksOfTheTuckRuler(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+sketch.Tucked("cf", "1/4", 3, "3/4", "")+"\n[block]\n")
	ruler := tuckRuler(piece, pattern)
	assert.ElementsMatch(t, []string{
		"0.75,10 0.75,10.833", "1.5,10 1.5,10.833", "2.25,10 2.25,10.833",
	}, orderedLinesOf(ruler, mark.TuckFold), "one tick for each fold line")
	assert.ElementsMatch(t, []string{
		"0.5,10 0.5,10.417", "1,10 1,10.417", "1.25,10 1.25,10.417",
		"1.75,10 1.75,10.417", "2,10 2,10.417", "2.5,10 2.5,10.417",
	}, orderedLinesOf(ruler, mark.TuckStitch), "one tick for each stitching")
}

// Folds 0.45 in apart, from 3/8 in on, lie at 0.825 and 1.275 in: nearest to 13/16 and 1 1/4,
// but on neither. Those 3/8 in apart lie on steps of the ruler. Derived.
func TestATuckRulerSaysWhereItIsRounded(t *testing.T) {
	for spacing, want := range map[string][]string{
		"0.45": {"1", "2", "3", "3/8", "13/16", "1 1/4", "from cf, to the nearest 1/16 in"},
		"3/8":  {"1", "2", "3", "3/8", "3/4", "1 1/8", "from cf"},
	} {
		piece, pattern := made.Block(t, sketch.Bosom+"[tuck.t]\nbeside = \"cf\"\nwidth = \"1/8\"\ncount = 3\nfirst = \"3/8\"\nspacing = \""+spacing+"\"\n\n[block]\n")
		var words []string
		for _, w := range tuckRuler(piece, pattern).Words {
			words = append(words, w.Text)
		}
		assert.Equal(t, want, words)
	}
}
