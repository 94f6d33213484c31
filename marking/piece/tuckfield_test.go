package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Half a front whose neck is 3 in across as cut, and 3 3/8 in to where its stitch line ends,
// with tucks of 1/4 in whose gap is 1/4 in: finished, tuck k, from 0, is stitched at
// 1/4 + k/2 in, and reaches 1/4 in farther. All derived.
func TestHowFarAFieldOfTucksReaches(t *testing.T) {
	type change = []string
	const second = "length = 2\n[tuck.u]\nbeside = \"cf\"\nwidth = \"1/4\"\ncount = 2\nfirst = \"FROM\"\nspacing = 1\npress = \"away\"\nbelow = \"neck\"\nlength = 2"
	after := func(from string) string { return sketch.Swap(second, "FROM", from) }
	type want struct {
		short       bool
		tucks, neck float64 // in
		fill        int
		wider       float64 // in
	}
	for _, c := range []struct {
		name, drawn string
		set         change
		row         int
		want        want
	}{
		{"room for one more", "finished", nil, 0, want{true, 2.5, 3.375, 6, 0.5}},
		{"room for two more", "finished", change{"COUNT", "4"}, 0, want{true, 2, 3.375, 6, 1}},
		{"no room for another one", "finished", change{"COUNT", "6"}, 0, want{}},
		// Drawn 2 in wider, the cloth that four take up.
		{"flat", "flat", change{"COUNT", "4", "3,", "5,", "6,", "8,", "8,", "10,"}, 0, want{true, 2, 3.375, 6, 1}},
		// Pressed toward the centre they reach to their stitching.
		{"pressed toward", "finished", change{"COUNT", "4", "\"away\"", "\"toward\""}, 0, want{true, 1.75, 3.375, 7, 1.5}},
		{"pressed toward, flat", "flat", change{"COUNT", "4", "3,", "5,", "6,", "8,", "8,", "10,", "\"away\"", "\"toward\""}, 0, want{true, 1.75, 3.375, 7, 1.5}},
		// Beside a line 1 in from the fold the neck reaches 2 3/8 in, and three tucks 1 1/2.
		{"beside another line", "finished", change{"COUNT", "3", "beside = \"cf\"", "beside = \"rule\"", "[tuck.t]", "[line.rule]\nalong = \"cf\"\ndistance = 1\n[tuck.t]"}, 0, want{true, 1.5, 2.375, 4, 0.5}},
		{"a straight edge is no neck", "finished", change{"COUNT", "2", "neck: 0,10 3,10 3,12", "top: 0,10 3,10\nyoke: 3,10 3,12", "\"neck\"", "\"top\""}, 0, want{}},
		// Sewn it goes on 3/8 in to the line of the yoke; two tucks reach 1 in.
		{"a straight neck", "finished", change{"COUNT", "2", "neck: 0,10 3,10 3,12", "neck: 0,10 3,10\nyoke: 3,10 3,12"}, 0, want{true, 1, 3.375, 6, 2}},
		{"a straight neck in capitals", "finished", change{"COUNT", "2", "neck: 0,10 3,10 3,12", "Back_Neck: 0,10 3,10\nyoke: 3,10 3,12", "\"neck\"", "\"Back_Neck\""}, 0, want{true, 1, 3.375, 6, 2}},
		{"a single tuck is no field", "finished", change{"COUNT", "1"}, 0, want{}},
		{"gone on with by another set", "finished", change{"COUNT", "3", "length = 2", after("3 1/2")}, 0, want{}},
		// Three took 1 1/2 in: stitched at 1 3/4 and 2 1/4 in.
		{"that set", "finished", change{"COUNT", "3", "length = 2", after("3 1/2")}, 1, want{true, 2.5, 3.375, 3, 0.5}},
		// Drawn 2 1/2 in wider, and four take 2 in of that: stitched at 1 1/4 and 1 3/4 in.
		{"that set, flat", "flat", change{"COUNT", "2", "3,", "5.5,", "6,", "8.5,", "8,", "10.5,", "length = 2", after("2 1/2")}, 1, want{true, 2, 3.875, 5, 1.5}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := &made.Of(t, "unit = \"in\"\n"+frontOf(c.drawn, c.set...)).Pieces[0]
			got, short := p.Field(p.TuckRows[c.row], length.Inch)
			assert.Equal(t, c.want.short, short)
			if !short {
				return
			}
			assert.Contains(t, strings.ToLower(p.Edges[got.Edge].Key), "neck")
			assert.InDelta(t, c.want.tucks, got.Tucks/25.4, 1e-6, "the tucks")
			assert.InDelta(t, c.want.neck, got.Neck/25.4, 1e-6, "the neck")
			assert.Equal(t, c.want.fill, got.Fill)
			assert.InDelta(t, c.want.wider, got.Wider/25.4, 1e-6, "the cloth of the others")
		})
	}
}

// The neck of a whole front reaches 3 3/8 in to one side of its middle and 2 3/8 in to the
// other; three tucks reach 1 1/2 in.
func TestAFieldIsMeasuredOnItsOwnSide(t *testing.T) {
	const whole = "drawn = \"finished\"\nneck: 3,12 3,10 -2,10 -2,12\nleft shoulder: -2,12 -6,12\nleft: -6,12 -6,0\nhem: -6,0 6,0\nright: 6,0 6,12\nshoulder: 6,12 3,12\n---\n\n[line.middle]\npoints = [[0, 0], [0, 10]]\n\n"
	for side, fill := range map[string]int{"right": 6, "left": 4} {
		p := sketched(t, "0.375", whole+"[tuck.t]\nbeside = \"middle\"\nside = \""+side+"\"\nwidth = \"1/4\"\ncount = 3\nfirst = \"1/2\"\nspacing = 1\npress = \"away\"\nbelow = \"neck\"\nlength = 2\n")
		got, short := p.Field(p.TuckRows[0], length.Inch)
		assert.True(t, short, side)
		assert.Equal(t, fill, got.Fill, side)
	}
}

// Six tucks of 1/8 in that touch reach 1 in, and each more 1/8 in farther. The neck is drawn
// flat, 2 7/8 in to where its stitch line ends, of which they take 1 1/2: nine just fill it.
func TestTheTucksThatJustFillTheNeck(t *testing.T) {
	p := sketched(t, "0.375", sketch.Yoke("spacing", "press = \"away\"\nspacing"))
	got, _ := p.Field(p.TuckRows[0], length.Inch)
	assert.InDelta(t, 1.375, got.Neck/25.4, 1e-6)
	assert.Equal(t, 9, got.Fill)
}

// Four tucks reach 2 in, each more 1/2 in farther. A neck that is sewn to 2.985 in is read as 3 in
// on a ruler of sixteenths: who takes 2 in from it, as printed, has room for two more; 2.95 in is
// read as 2 15/16 in, with room for one. Derived.
func TestTucksFillTheNeckAsItIsPrinted(t *testing.T) {
	for neck, fill := range map[string]int{"2.61": 6, "2.575": 5} {
		p := &made.Of(t, "unit = \"in\"\n"+frontOf("finished", "COUNT", "4", "3,", neck+",")).Pieces[0]
		got, _ := p.Field(p.TuckRows[0], length.Inch)
		assert.InDelta(t, 2, got.Tucks/25.4, 1e-6)
		assert.Equal(t, fill, got.Fill, "%s in, sewn to %.3f in", neck, got.Neck/25.4)
	}
}
