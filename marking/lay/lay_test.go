package lay

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// Things to lay are written in inches, one to a line, the points first, each as it
// is drawn, with the grain upward where nothing else is said:
//
//	front: 0,0 10,0 10,10 0,10 | fold 0,10 0,0
//	sleeve: 0,0 9,0 9,7 0,7 | cut 2
//	ruffle: 0,0 36,0 36,3 0,3 | torn; cut 3

// toCut reads things that are written so.
func toCut(t *testing.T, text string) []item {
	t.Helper()
	var items []item
	for _, line := range strings.Split(text, "\n") {
		name, rest, found := strings.Cut(strings.TrimSpace(line), ":")
		require.True(t, found, "a line without a name: %q", line)
		points, extra, _ := strings.Cut(rest, "|")
		item := item{name: name, grain: plane.Point{Y: 1}, count: 1, garments: 1, outline: inchPoints(t, points)}
		item.outline = append(item.outline, item.outline[0])
		for _, one := range strings.Split(extra, ";") {
			key, value, _ := strings.Cut(strings.TrimSpace(one), " ")
			switch key {
			case "cut":
				item.count, _ = strconv.Atoi(value)
			case "for":
				item.garments, _ = strconv.Atoi(value)
			case "fold":
				item.fold = inchPoints(t, value)
			case "grain":
				item.grain = inchPoints(t, value)[0].Unit()
			case "torn":
				item.torn = true
			}
		}
		items = append(items, item)
	}
	return items
}

// inchPoints reads points that are written in inches.
func inchPoints(t *testing.T, text string) plane.Path {
	t.Helper()
	p, err := sketch.FromInches(text)
	require.NoError(t, err)
	return p
}

// told writes a lay in inches: each part, and under it each thing with two opposite
// corners of its box.
func told(lay Lay) string {
	var lines []string
	for _, part := range lay.Parts {
		how := "single"
		if part.Folded {
			how = "folded"
		}
		lines = append(lines, fmt.Sprintf("%s, %s to %s", how, sketch.Number(part.From/25.4), sketch.Number(part.To/25.4)))
		for _, p := range part.Placed {
			box := p.Outline.Bounds()
			line := p.Name + ": " + sketch.Inches(plane.Path{box.Min, box.Max})
			if p.OnFold {
				line += " on the fold"
			}
			if p.Upper {
				line += " out of the upper layer"
			}
			lines = append(lines, line)
		}
	}
	for _, name := range lay.TooWide {
		lines = append(lines, name+" is too wide")
	}
	return strings.Join(lines, "\n")
}

// unindented takes the tabs off the lines of a text.
func unindented(text string) string { return strings.ReplaceAll(text, "\t", "") }

// On cloth 36 in wide, which folds to 18; between pieces there is 1/8 in.
func TestLay(t *testing.T) {
	for _, c := range []struct{ name, items, want string }{
		{"on the fold", "front: 0,0 10,0 10,10 0,10 | fold 0,10 0,0",
			`folded, 0 to 10
			front: 0,0 10,10 on the fold`},
		{"on the fold, drawn with it at the right and the other way round", "front: 0,0 4,0 4,10 0,10 | fold 4,10 4,0",
			`folded, 0 to 10
			front: 0,0 4,10 on the fold`},
		{"two on the fold lie one after the other: 10 + 1/8 + 10", "front: 0,0 9,0 9,10 0,10 | fold 0,0 0,10; cut 2",
			`folded, 0 to 20.125
			front: 0,0 9,10 on the fold
			front: 0,10.125 9,20.125 on the fold`},
		{"side by side: 10 + 1/8", "a: 0,0 10,0 10,10 0,10\nb: 0,0 10,0 10,10 0,10",
			`single, 0 to 10
			a: 0,0 10,10
			b: 10.125,0 20.125,10`},
		{"three times 12 and twice 1/8 is more than 36", "a: 0,0 12,0 12,5 0,5\nb: 0,0 12,0 12,5 0,5\nc: 0,0 12,0 12,5 0,5",
			`single, 0 to 10.125
			a: 0,0 12,5
			b: 12.125,0 24.125,5
			c: 0,5.125 12,10.125`},
		{"a pair lies once", "sleeve: 0,0 10,0 10,10 0,10 | cut 2",
			`folded, 0 to 10
			sleeve: 0,0 10,10`},
		{"of three, a pair and one, where 36 takes no three of 12 and the room between", "gore: 0,0 12,0 12,10 0,10 | cut 3",
			`folded, 0 to 10
			gore: 0,0 12,10
			single, 10 to 20.125
			gore: 0,10.125 12,20.125`},
		{"of five, two pairs and one", "gore: 0,0 12,0 12,6 0,6 | cut 5",
			`folded, 0 to 12.125
			gore: 0,0 12,6
			gore: 0,6.125 12,12.125
			single, 12.125 to 18.25
			gore: 0,12.25 12,18.25`},
		{"of four, two pairs beside each other only up to 18", "gore: 0,0 9,0 9,6 0,6 | cut 4",
			`folded, 0 to 12.125
			gore: 0,0 9,6
			gore: 0,6.125 9,12.125`},
		{"beside what lies on the fold: 8 + 1/8", "front: 0,0 8,0 8,14 0,14 | fold 0,14 0,0\nback: 0,0 9,0 9,13 0,13 | cut 2",
			`folded, 0 to 14
			front: 0,0 8,14 on the fold
			back: 8.125,0 17.125,13`},
		{"the longest first, and then as in the file", "short: 0,0 5,0 5,4 0,4\na: 0,0 5,0 5,6 0,6\nlong: 0,0 5,0 5,9 0,9\nb: 0,0 5,0 5,6 0,6",
			`single, 0 to 9
			long: 0,0 5,9
			a: 5.125,0 10.125,6
			b: 10.25,0 15.25,6
			short: 15.375,0 20.375,4`},
		{"the grain runs along the cloth", "cuff: 0,0 10,0 10,4 0,4 | grain 1,0",
			`single, 0 to 10
			cuff: 0,0 4,10`},
		{"whichever way it is drawn", "cuff: 0,0 10,0 10,4 0,4 | grain -1,0",
			`single, 0 to 10
			cuff: 0,0 4,10`},
		{"just as wide as the cloth", "panel: 0,0 36,0 36,5 0,5",
			`single, 0 to 5
			panel: 0,0 36,5`},
		{"wider than the cloth, but once by its name", "panel: 0,0 36.1,0 36.1,5 0,5 | cut 2\npanel: 0,0 40,0 40,5 0,5\ncuff: 0,0 4,0 4,8 0,8",
			`single, 0 to 8
			cuff: 0,0 4,8
			panel is too wide`},
		{"half as wide as the cloth, on the fold", "front: 0,0 18,0 18,10 0,10 | fold 0,10 0,0",
			`folded, 0 to 10
			front: 0,0 18,10 on the fold`},
		{"half of it wider than half the cloth", "front: 0,0 18.1,0 18.1,10 0,10 | fold 0,10 0,0",
			`front is too wide`},
		{"a pair too wide for folded cloth", "back: 0,0 20,0 20,5 0,5 | cut 2",
			`single, 0 to 10.125
			back: 0,0 20,5
			back: 0,5.125 20,10.125`},
		{"a fold across the grain: the whole is twice 4 long", "yoke: 0,0 6,0 6,4 0,4 | fold 0,0 6,0",
			`single, 0 to 8
			yoke: 0,0 6,8`},
		{"so are both of two", "yoke: 0,0 6,0 6,4 0,4 | fold 0,0 6,0; cut 2",
			`single, 0 to 8
			yoke: 0,0 6,8
			yoke: 6.125,0 12.125,8`},
		// The half is a square of 10 and the whole 20 by 10; on the bias it measures
		// (20 + 10)/√2 both ways.
		{"a fold on the bias", "yoke: 0,0 10,0 10,10 0,10 | fold 0,0 0,10; grain 1,1",
			`single, 0 to 21.213
			yoke: 0,0 21.213,21.213`},
		// The sine of a third of a degree is 0.0058.
		{"a fold a third of a degree off the grain", "front: 0,0 10,0 10,10 0,10 | fold 0,10 0,0; grain 0.0058,1",
			`folded, 0 to 10
			front: 0,0 10,10 on the fold`},
		// The whole is 20 by 10; with sin 0.01 and cos 0.99995 it measures 20 cos + 10 sin
		// across and 10 cos + 20 sin along.
		{"a fold six tenths of a degree off the grain", "front: 0,0 10,0 10,10 0,10 | fold 0,10 0,0; grain 0.01,1",
			`single, 0 to 10.199
			front: 0,0 20.099,10.199`},
		{"torn strips across the cloth", "ruffle: 0,0 36,0 36,3 0,3 | torn; cut 3",
			`single, 0 to 9
			ruffle: 0,0 36,3
			ruffle: 0,3 36,6
			ruffle: 0,6 36,9`},
		{"torn side by side, the longest first: 20 + 16 make a strip", "a: 0,0 20,0 20,5 0,5 | torn\nb: 0,0 16,0 16,4 0,4 | torn\nc: 0,0 20,0 20,6 0,6 | torn",
			`single, 0 to 11
			c: 0,0 20,6
			a: 0,6 20,11
			b: 20,0 36,4`},
		{"torn and wider than the cloth", "block: 0,0 37,0 37,5 0,5 | torn",
			`block is too wide`},
		{"torn, of which half is drawn: twice 9 beside each other", "block: 0,0 9,0 9,12 0,12 | torn; fold 0,12 0,0; cut 2",
			`single, 0 to 12
			block: 0,0 18,12
			block: 18,0 36,12`},
		{"all of it, one part after another", "apron: 0,0 20,0 20,4 0,4\nfront: 0,0 9,0 9,12 0,12 | fold 0,12 0,0\nruffle: 0,0 36,0 36,3 0,3 | torn\nsleeve: 0,0 8,0 8,10 0,10 | cut 2",
			`single, 0 to 3
			ruffle: 0,0 36,3
			folded, 3 to 15
			front: 0,3 9,15 on the fold
			sleeve: 9.125,3 17.125,13
			single, 15 to 19.125
			apron: 0,15.125 20,19.125`},
		{"single cloth right after a torn edge is one part with what is torn", "cuff: 0,0 5,0 5,4 0,4\nruffle: 0,0 36,0 36,3 0,3 | torn",
			`single, 0 to 7
			ruffle: 0,0 36,3
			cuff: 0,3 5,7`},
		// Common practice: so many breadths of cloth, each torn as long as the skirt and
		// its hem, and strips from selvage to selvage for the ruffle: 2 × 20 + 3 × 4 in.
		{"a skirt of two breadths and a ruffle half as full again", "breadth: 0,0 36,0 36,20 0,20 | torn; cut 2\nruffle: 0,0 36,0 36,4 0,4 | torn; cut 3",
			`single, 0 to 52
			breadth: 0,0 36,20
			breadth: 0,20 36,40
			ruffle: 0,40 36,44
			ruffle: 0,44 36,48
			ruffle: 0,48 36,52`},
		{"nothing is cut of it", "cuff: 0,0 50,0 50,4 0,4 | cut 0\nline: 0,0 5,0 2,0", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			lay := layOut(toCut(t, c.items), 36*25.4)
			assert.Equal(t, unindented(c.want), told(lay))
			assert.Equal(t, 36*25.4, lay.Width)
			if n := len(lay.Parts); n > 0 {
				assert.Equal(t, lay.Parts[n-1].To, lay.Length, "the length of the lay")
			} else {
				assert.Zero(t, lay.Length)
			}
		})
	}
}

func TestLayOfNothing(t *testing.T) {
	items := toCut(t, "cuff: 0,0 5,0 5,4 0,4")
	assert.Equal(t, Lay{Width: 914.4}, layOut(nil, 914.4), "nothing to cut")
	for _, width := range []float64{0, -914.4, math.NaN()} {
		assert.Equal(t, Lay{}, layOut(items, width), "cloth of %g", width)
	}
}

// What is equally long lies in the order of the file, however much of it there is, and
// though a turned outline may measure a rounding more or less.
func TestLayKeepsTheOrderOfTheFile(t *testing.T) {
	for _, rest := range []string{"", " | torn"} {
		var lines, want []string
		for k := range 60 {
			lines = append(lines, fmt.Sprintf("strip %d: 0,0 30,0 30,%[2]d 0,%[2]d%[3]s", k, 4-k%3, rest))
		}
		for k := range 60 { // those of 4 in, then of 3 in, then of 2 in
			want = append(want, fmt.Sprintf("strip %d", k%20*3+k/20))
		}
		items := toCut(t, strings.Join(lines, "\n"))
		for k := range items {
			angle := float64(k)
			for i, q := range items[k].outline {
				items[k].outline[i] = sketch.Turned(q, angle)
			}
			items[k].grain = sketch.Turned(items[k].grain, angle)
		}
		lay := layOut(items, 36*25.4)
		require.Len(t, lay.Parts, 1)
		var got []string
		for _, p := range lay.Parts[0].Placed {
			got = append(got, p.Name)
		}
		assert.Equal(t, want, got)
	}
}

func TestHowLaidIsShort(t *testing.T) {
	assert.LessOrEqual(t, len(HowLaid), 300, "it is to be read at a glance: a sentence or two")
}

// fromLowest returns the corners of an outline in inches, from the lowest on, of
// equally low ones the leftmost.
func fromLowest(outline plane.Path) string {
	ring := outline[:len(outline)-1]
	first := 0
	for k, q := range ring {
		up := q.Y - ring[first].Y
		if up < -piece.SamePoint || up < piece.SamePoint && q.X < ring[first].X {
			first = k
		}
	}
	return sketch.Inches(slices.Concat(ring[first:], ring[:first]))
}

// Here the outlines themselves are looked at.
func TestLayTurnsPieces(t *testing.T) {
	for _, c := range []struct {
		name  string
		width float64 // of the cloth, in inches
		items string
		want  []string
	}{
		// The second triangle lies on the slope of the first, which falls by 2 in for 1 in
		// across. Beside a column of 1/16 in, and above it, nothing lies for 1/8 in: so the
		// second slope is 2 × (1/8 + 1/16) + 1/8 in above the first.
		{"two triangles, head to foot", 10, "a: 0,0 10,0 0,20\nb: 0,0 10,0 0,20", []string{
			"a 0,0 10,0 0,20",
			"b 10,0.5 10,20.5 0,20.5"}},
		{"with 1/4 in more across they need no more length", 10.25, "a: 0,0 10,0 0,20\nb: 0,0 10,0 0,20", []string{
			"a 0,0 10,0 0,20",
			"b 10.25,0 10.25,20 0.25,20"}},
		{"nothing is turned where that saves nothing", 10, "a: 0,0 10,0 10,8 0,8\nb: 0,0 10,0 0,8", []string{
			"a 0,0 10,0 10,8 0,8",
			"b 0,8.125 10,8.125 0,16.125"}},
		// The neck of the first rises by 4 in over 10 in, and so does the turned hem of
		// the second: over 1/8 + 1/16 in by 0.075 in, to which comes 1/8 in.
		{"on the fold, over into the neck of the other", 20, "a: 0,0 10,0 10,8 0,4 | fold 0,0 0,4\nb: 0,0 10,0 10,4 0,8 | fold 0,0 0,8", []string{
			"a 0,0 10,0 10,8 0,4",
			"b 0,4.2 10,8.2 10,12.2 0,12.2"}},
		{"every second one is turned over", 20, "back: 0,0 20,0 20,5 0,10 | cut 3", []string{
			"back 0,0 20,0 20,5 0,10",
			"back 0,10.125 20,10.125 20,20.125 0,15.125",
			"back 0,20.25 20,20.25 20,25.25 0,30.25"}},
		{"a pair on folded cloth lies as it is drawn", 40, "back: 0,0 20,0 20,5 0,10 | cut 2", []string{
			"back 0,0 20,0 20,5 0,10"}},
		{"of three beside each other on single cloth too", 40, "back: 0,0 10,0 10,5 0,10 | cut 3", []string{
			"back 0,0 10,0 10,5 0,10",
			"back 10.125,0 20.125,0 20.125,10 10.125,5",
			"back 20.25,0 30.25,0 30.25,5 20.25,10"}},
		{"and beside a torn block", 40, "block: 0,0 18,0 18,12 0,12 | torn\nback: 0,0 10,0 10,5 0,10 | cut 2", []string{
			"block 0,0 18,0 18,12 0,12",
			"back 18,0 28,0 28,5 18,10",
			"back 28.125,0 38.125,0 38.125,10 28.125,5"}},
		// As the two triangles above, 12 in off the left selvage.
		{"two triangles beside a torn block, head to foot", 22, "block: 0,0 12,0 12,21 0,21 | torn\na: 0,0 10,0 0,20\nb: 0,0 10,0 0,20", []string{
			"block 0,0 12,0 12,21 0,21",
			"a 12,0 22,0 12,20",
			"b 22,0.5 22,20.5 12,20.5"}},
		{"opened beside a torn block, its fold a third of a degree off the grain but along the cloth", 40, "block: 0,0 18,0 18,12 0,12 | torn\nyoke: 0,0 10,0 10,5 0,10 | fold 0,0 0,10; grain 0.0058,1", []string{
			"block 0,0 18,0 18,12 0,12",
			"yoke 18,0 28,0 38,0 38,5 28,10 18,5"}},
		// The whole is 20 by 10 and lies with a grain of 3 to 4: the corner of 6 by 8 in of
		// the one is over that of the other, 12 1/2 in higher. Their slopes rise by 3/4 in for
		// 1 in across, over 1/8 + 1/16 in by 0.141 in, to which comes 1/8 in.
		{"two opened along a slanting fold lie alike", 22, "yoke: 0,0 10,0 10,10 0,10 | fold 0,0 0,10; grain 3,4; cut 2", []string{
			"yoke 6,0 14,6 22,12 16,20 8,14 0,8",
			"yoke 6,12.766 14,18.766 22,24.766 16,32.766 8,26.766 0,20.766"}},
		{"opened along a fold across the grain", 20, "yoke: 0,0 6,0 4,3 0,4 | fold 0,0 6,0", []string{
			"yoke 0,0 4,1 6,4 4,7 0,8 0,4"}},
		{"the same, drawn below the fold", 20, "yoke: 0,0 0,-4 4,-3 6,0 | fold 0,0 6,0", []string{
			"yoke 0,0 4,1 6,4 4,7 0,8 0,4"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, part := range layOut(toCut(t, c.items), c.width*25.4).Parts {
				for _, p := range part.Placed {
					require.Positive(t, p.Outline.Area(), "%s runs clockwise", p.Name)
					got = append(got, p.Name+" "+fromLowest(p.Outline))
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// wavyPiece is an outline of so many points about a radius.
func wavyPiece(points int, radius float64) plane.Path {
	var p plane.Path
	for k := range points {
		angle := 2 * math.Pi * float64(k) / float64(points)
		r := radius * (1 + 0.3*math.Sin(5*angle))
		sin, cos := math.Sincos(angle)
		p = append(p, plane.Point{X: r * cos, Y: 1.5 * r * sin})
	}
	return append(p, p[0])
}

func BenchmarkLay(b *testing.B) {
	for _, pieces := range []int{50, 1_000} {
		b.Run(fmt.Sprintf("%d pieces", pieces), func(b *testing.B) {
			var items []item
			for k := range pieces {
				items = append(items, item{
					name:     fmt.Sprintf("piece %d", k+1),
					outline:  wavyPiece(3_000, 40+float64(k*37%120)),
					grain:    plane.Point{Y: 1},
					count:    1 + k%3,
					garments: 1,
				})
			}
			for b.Loop() {
				layOut(items, 1_500)
			}
		})
	}
}
