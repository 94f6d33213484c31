package sheet

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// wordsAt returns the words of a marking with their places, in inches, and the side on
// which they stand: "1 at 0.375,12.5 up".
func wordsAt(m mark.Marking, role mark.Role) []string {
	var all []string
	for _, w := range m.Words {
		if w.Role != role {
			continue
		}
		side := "aslant"
		for name, out := range map[string]plane.Point{"up": {Y: 1}, "down": {Y: -1}, "right": {X: 1}, "left": {X: -1}} {
			if w.Out.Distance(out) < 1e-9 {
				side = name
			}
		}
		all = append(all, fmt.Sprintf("%s at %s %s", w.Text, sketch.Inches(plane.Path{w.At}), side))
	}
	return all
}

// textsOf returns the texts of words, without heads, by the height at which they stand.
func textsOf(m mark.Marking, role mark.Role, y float64) string {
	var all []string
	for _, w := range m.Words {
		if w.Role == role && w.Head == nil && w.At.Y/25.4-y < 0.001 && y-w.At.Y/25.4 < 0.001 {
			all = append(all, w.Text)
		}
	}
	return strings.Join(all, ", ")
}

const tuckLength = "below = \"neck\"\nlength = 2\n"

// Two tucks from 3/8 in on, 3/8 in apart, from the torn edge at 12 1/2 in to their end at
// 7 5/8 in: the numbers stand at both ends, and in the row above, 4.5 mm up, how far the fold
// lines lie from the centre, with what that is at its last number.
func TestWordsOfATuckSheet(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+sketch.Tucked("cf", "1/8", 2, "3/8", "press = \"away\"\n"+tuckLength)+"\n[block]\n")
	m := tuckSheet(piece, pattern)
	assert.Equal(t, []string{
		"1 at 0.375,12.5 up", "2 at 0.75,12.5 up",
		"3/8 at 0.375,12.677 up", "3/4 at 0.75,12.677 up", "from cf at 0.75,12.677 right",
		"1 at 0.375,7.625 down", "2 at 0.75,7.625 down",
	}, wordsAt(m, mark.TuckFold))
	// 16 mm long, below the numbers and 3 mm clear of them, from the stitching on.
	assert.Equal(t, []string{"0.25,7.33 0.88,7.33"}, linesOf(m, mark.Arrow))
	assert.Equal(t, []string{"press at 0.565,7.33 down"}, wordsAt(m, mark.Arrow))
	// Measured 1/4 in beside the last stitching, which lies at 7/8 in.
	require.Len(t, m.Dimensions, 1)
	assert.Equal(t, "t tucks end 4 7/8 in below the torn edge", m.Dimensions[0].Text)
	assert.Equal(t, "1.125,12.5 1.125,7.625", sketch.Inches(plane.Path{m.Dimensions[0].From, m.Dimensions[0].To}))
}

// between writes lines across the bosom, 8 in up and from 3 in at the centre to 4 in at 5 in, and
// two tucks from the one to the other.
func between(to string) string {
	return sketch.Swap(sketch.Bosom, "---\n", "---\n\n[line.yoke]\npoints = [[0, 8], [5, 8]]\n[line.waist]\npoints = [[0, 3], [5, 3]]\n[line.slant]\npoints = [[0, 3], [5, 4]]\n") +
		sketch.Tucked("cf", "1/8", 2, "3/8", "press = \"away\"\nfrom = \"yoke\"\nto = \""+to+"\"") + "\n[block]\n"
}

// Two tucks that begin 8 in up and end 3 in up, on a block whose torn top lies 12 1/2 in up: their
// lines run between the two end lines, with a row of numbers at both.
func TestATuckSheetOfTucksBetweenLines(t *testing.T) {
	piece, pattern := made.Block(t, between("waist"))
	m := tuckSheet(piece, pattern)
	assert.Equal(t, []string{
		"1 at 0.375,8 up", "2 at 0.75,8 up",
		"3/8 at 0.375,8.177 up", "3/4 at 0.75,8.177 up", "from cf at 0.75,8.177 right",
		"1 at 0.375,3 down", "2 at 0.75,3 down",
	}, wordsAt(m, mark.TuckFold))
	assert.Equal(t, []string{"0.375,8 0.375,3", "0.75,8 0.75,3"}, linesOf(m, mark.TuckFold))
	names := map[string]string{}
	for _, one := range m.Marks {
		if one.Role == mark.TuckEnd {
			names[one.Name] = sketch.Inches(one.Path)
		}
	}
	assert.Equal(t, map[string]string{"t tucks end here, open below": "0.25,3 0.875,3", "t tucks begin here, open above": "0.25,8 0.875,8"}, names)
	require.Len(t, m.Dimensions, 2)
	assert.Equal(t, "t tucks begin 4 1/2 in below the torn edge", m.Dimensions[0].Text)
	assert.Equal(t, "1.125,12.5 1.125,8", sketch.Inches(plane.Path{m.Dimensions[0].From, m.Dimensions[0].To}))
	assert.Equal(t, "t tucks: 5 in long", m.Dimensions[1].Text)
	assert.Equal(t, "1.125,8 1.125,3", sketch.Inches(plane.Path{m.Dimensions[1].From, m.Dimensions[1].To}))
	assert.Contains(t, m.Notes, "stitched from yoke to waist")
	assert.Contains(t, blockSteps(piece, pattern.Unit), "fold the t tucks on their fold lines and stitch them 1/8 in from the fold, from yoke to waist")
	assert.Contains(t, blockSteps(piece, pattern.Unit), "measure across the tucks: it must be 12 in")
	ruler := tuckRuler(piece, pattern)
	assert.Equal(t, []string{"the t tucks begin 4 1/2 in below the torn edge", "the t tucks end 9 1/2 in below the torn edge"}, ruler.Notes)
	assert.Contains(t, ruler.Steps, "lay it along the line where the tucks begin, with the end from which it counts on cf")
	cut := cuttingSheet(piece, pattern, nil)
	assert.Contains(t, texts(cut), "open below: draw in to 12 in")
	assert.Contains(t, texts(cut), "open above: draw in to 12 in")
	assert.ElementsMatch(t, []string{"0.25,3 0.375,3", "0.25,8 0.375,8", "0.375,3 0.5,3", "0.375,8 0.5,8"}, linesOf(cut, mark.TuckEnd), "across both flaps, at both ends")
}

// Finished, they are stitched 1/4 in and 3/8 in out, where the slant lies 3.05 and 3.075 in up: 9.45
// and 9.425 in below the torn edge. They begin at one depth, which is measured.
func TestATuckSheetOfTucksToASlant(t *testing.T) {
	piece, pattern := made.Block(t, between("slant"))
	m := tuckSheet(piece, pattern)
	require.Len(t, m.Dimensions, 1)
	assert.Equal(t, "t tucks begin 4 1/2 in below the torn edge", m.Dimensions[0].Text)
	assert.Subset(t, texts(m), []string{"below the torn edge", "9 7/16"})
}

// Opened out, a sheet has the words of both halves, and what stands on the centre once.
func TestWordsOfATuckSheetOpenedOut(t *testing.T) {
	text := sketch.Bosom + sketch.Tucked("cf", "1/8", 2, "3/8", "press = \"toward\"\n"+tuckLength) + "\n[block]\n"
	piece, pattern := made.Block(t, sketch.Swap(text, "fold =", "print = \"whole\"\nfold ="))
	m := tuckSheet(piece, pattern)
	assert.Equal(t, "1, 2, 1, 2", textsOf(m, mark.TuckFold, 7.625))
	assert.ElementsMatch(t, []string{"0.88,7.33 0.25,7.33", "-0.88,7.33 -0.25,7.33"}, linesOf(m, mark.Arrow), "toward the centre, from both sides")
	assert.Equal(t, []string{"A at 0,9.125 right"}, wordsAt(m, mark.Cross))
	mirrored := fromBehind(m)
	assert.Contains(t, wordsAt(mirrored, mark.TuckFold), "1 at -0.375,12.5 up", "at the mirrored place")
	assert.Equal(t, len(m.Words), len(mirrored.Words))
	for i := range m.Words {
		assert.Equal(t, m.Words[i].Text, mirrored.Words[i].Text, "and read as it is")
	}
}

// Numbers stand at every tuck while they have room: a digit takes 1.8 mm, and 1 mm is left
// between two. Touching tucks lie 3w apart (Kinne and Cooley, Clothing and Health, 1916,
// p. 99): of 1/16 in 4.76 mm, of 1/32 in 2.38 mm.
func TestNumbersWithRoom(t *testing.T) {
	for _, c := range []struct {
		name, width   string
		count         int
		numbers, from string
		row           float64 // where the second row begins: two digits are 3.6 mm wide, and 2.5 mm is left
	}{
		{"1/8 in", "1/8", 4, "1, 2, 3, 4", "1, 1 3/8, 1 3/4, 2 1/8", 4.5},
		{"two digits at 1/16 in", "1/16", 12, "1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12", "1, 1 3/4, 2 11/16, 3 1/16", 6.1},
		{"1/32 in", "1/32", 12, "1, 5, 10, 12", "1, 1 3/8, 2 1/16", 6.1},
		{"1/32 in, few", "1/32", 3, "1, 3", "1", 4.5},
		{"the fifth too near to the last", "1/32", 6, "1, 6", "1, 1 1/2", 4.5},
		{"one", "1/32", 1, "1", "1", 4.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, sketch.Bosom+sketch.Tucked("cf", c.width, c.count, "1", tuckLength)+"\n[block]\n")
			m := tuckSheet(piece, pattern)
			assert.Equal(t, c.numbers, textsOf(m, mark.TuckFold, 12.5))
			assert.Equal(t, c.numbers, textsOf(m, mark.TuckFold, 7.625))
			assert.Equal(t, c.from, textsOf(m, mark.TuckFold, 12.5+c.row/25.4))
		})
	}
}

// Of tucks in groups the first of each has its number where not all have room. Of 1/32 in they
// lie 2.38 mm apart, and of 1/64 in 1.19 mm; a group of three of those goes on after 3.97 mm,
// where two digits take 4.6.
func TestNumbersOfTucksInGroups(t *testing.T) {
	for _, c := range []struct{ name, width, groups, numbers string }{
		{"room for all", "1/8", "groups = 2\nbetween = \"1/4\"", "1, 2, 3, 4, 5, 6"},
		{"room for the first", "1/32", "groups = 4\nbetween = \"1/4\"", "1, 4, 7, 10, 12"},
		{"room for every second", "1/64", "groups = 6\nbetween = \"1/64\"", "1, 7, 13, 18"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, pattern := made.Block(t, sketch.Bosom+sketch.Tucked("cf", c.width, 3, "1", tuckLength+c.groups)+"\n[block]\n")
			m := tuckSheet(piece, pattern)
			assert.Equal(t, c.numbers, textsOf(m, mark.TuckFold, 12.5))
			assert.Equal(t, c.numbers, textsOf(m, mark.TuckFold, 7.625))
		})
	}
}

// Where tucks end at depths of their own, each depth stands at its tuck.
func TestDepthsAtTheEndsOfTucks(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+sketch.Tucked("cf", "1/8", 3, "3/8", tuckLength+"end = \"stepped\"\nstep = \"1/4\"")+"\n[block]\n")
	m := tuckSheet(piece, pattern)
	assert.Empty(t, m.Dimensions, "no one depth")
	assert.Subset(t, wordsAt(m, mark.TuckFold), []string{"4 7/8 at 0.375,7.448 down", "5 1/8 at 0.75,7.198 down", "5 3/8 at 1.125,6.948 down"})
	assert.Contains(t, texts(m), "below the torn edge")
}

func texts(m mark.Marking) []string {
	var all []string
	for _, w := range m.Words {
		all = append(all, w.Text)
	}
	return all
}

// The sheet of a flat piece has the numbers at the cut edge and at the end, and below that
// what a ruler needs. The neck of a yoke is level as far as its fourth tuck; the depths are
// those of depthtable_test.go of package figures.
func TestWordsOfTucksOnAFlatPiece(t *testing.T) {
	piece, pattern := made.Front(t, "0.375\nunit = \"in\"", sketch.Yoke("count = 6", "count = 4"))
	m := markingSheet(piece, pattern, nil)
	require.Len(t, m.Dimensions, 1)
	assert.Equal(t, "yoke tucks end 2 1/2 in below the cut edge", m.Dimensions[0].Text)
	assert.InDelta(t, 2.5, m.Dimensions[0].From.Distance(m.Dimensions[0].To)/25.4, 1e-9)
	piece, pattern = made.Front(t, "0.375\nunit = \"in\"", sketch.Yoke())
	m = markingSheet(piece, pattern, nil)
	assert.Contains(t, texts(m), "below the cut edge")
	assert.Contains(t, texts(m), "3 1/4")
	assert.Contains(t, texts(m), "from centre front")
	heads := map[string]plane.Point{}
	for _, w := range m.Words {
		if w.Head != nil {
			heads[w.Text] = w.At
			assert.Equal(t, plane.Point{Y: -1}, w.Head.Along, "below the ends")
		}
	}
	require.Len(t, heads, 2)
	apart := heads["from centre front"].Sub(heads["below the cut edge"])
	assert.InDelta(t, 0, apart.X, 1e-9, "both at the last tuck")
	assert.InDelta(t, 11, apart.Y, 1e-9, "a head of 10 mm has room over its column")
}

// A row right behind another with the same head goes on under one head, behind its last word.
func TestHeadOfRowsSideBySide(t *testing.T) {
	right := plane.Point{X: 1}
	for _, c := range []struct {
		name  string
		first float64     // where the second row begins, in mm; the first ends at 20
		level float64     // how high its words stand
		out   plane.Point // where its base has its folds
		head  string
		want  []float64 // where heads stand
	}{
		{"right behind", 30, 5, right, "from cf", []float64{40}},
		{"as far as a head is long", 65, 5, right, "from cf", []float64{20, 75}},
		{"before it", 0, 5, right, "from cf", []float64{20, 10}},
		{"on another level", 30, 9, right, "from cf", []float64{20, 40}},
		{"at the other side of the base", -30, 5, right.Mul(-1), "from cf", []float64{20, -20}},
		{"from another base", 30, 5, right, "from side", []float64{20, 40}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var m mark.Marking
			two := func(x, up float64) []toldFold {
				end := func(x float64) lineEnd { return lineEnd{plane.Point{X: x, Y: up}, plane.Point{Y: 1}} }
				return []toldFold{{1, 0, end(x), "1"}, {2, 0, end(x + 10), "2"}}
			}
			foldWords{&m, mark.TuckFold, right}.row(two(10, 0), 5, "from cf")
			foldWords{&m, mark.TuckFold, c.out}.row(two(c.first, 0), c.level, c.head)
			var at []float64
			for _, w := range m.Words {
				if w.Head != nil {
					at = append(at, w.At.X)
				}
			}
			assert.Equal(t, c.want, at)
		})
	}
}

// A growth tuck that runs on through the fold of the cloth has no end there.
func TestNoNumberOnTheFoldOfTheCloth(t *testing.T) {
	piece, pattern := made.Front(t, "0.375\nunit = \"in\"", sketch.Bosom+sketch.Tucked("hem", "1/2", 2, "3", "press = \"away\""))
	m := markingSheet(piece, pattern, nil)
	got := wordsAt(m, mark.TuckFold)
	require.Len(t, got, 2)
	for _, w := range got {
		assert.NotContains(t, w, " 0,", "on the centre")
	}
	assert.Len(t, linesOf(m, mark.Arrow), 1)
}

// The cutting sheet has the number of each tuck at both ends of its stitching, and a letter
// at each cross: right of the centre, half an arm up.
func TestWordsOfACuttingSheet(t *testing.T) {
	piece, pattern := made.Block(t, sketch.Bosom+sketch.Tucked("cf", "1/8", 3, "3/8", tuckLength)+"\n[block]\n")
	m := cuttingSheet(piece, pattern, nil)
	assert.ElementsMatch(t, []string{
		"1 at 0.25,7.625 down", "2 at 0.375,7.625 down", "3 at 0.5,7.625 down", "1 at 0.25,10 up", "2 at 0.375,10 up", "3 at 0.5,10 up",
	}, wordsAt(m, mark.TuckStitch))
	assert.Equal(t, []string{"A at 0,9.125 right", "B at 0,1.125 right"}, wordsAt(m, mark.Cross))
	assert.Contains(t, m.Steps, "lay cross A on that of the block and cross B on cf of the block")
}

// Below their end six tucks of 1/8 in are open: 1 1/2 in. The block of 12 in + 1 1/2 in is
// drawn in to 12 in there, as at its top; when it is let go, half of the hem is 6 in and 3/4 in.
// Derived: twice the width of each tuck (Baldt, Clothing for Women, 1916, Self-Trimmings);
// that the bottom is drawn in is common practice.
func TestWhatTucksThatEndMeanWhereThePieceIsCut(t *testing.T) {
	set := sketch.Bosom + sketch.Tucked("cf", "1/8", 3, "3/8", tuckLength)
	piece, pattern := made.Block(t, set+"\n[block]\n")
	m := cuttingSheet(piece, pattern, nil)
	assert.Equal(t, []string{
		"below their end the tucks are open: there the block is 1 1/2 in wider than at its top",
		"cut and let go, this half is 6 3/4 in wide at the hem, where they are open",
	}, m.Notes)
	assert.Equal(t, "beyond the end of the tucks draw the block in, by folds that run on or by gathers, until it is 12 in across there", m.Steps[0])
	// The last tuck has its stitching at 1/2 in and its fold at 5/8 in.
	assert.Equal(t, []string{"open below: draw in to 12 in at 0.625,7.625 right"}, wordsAt(m, mark.TuckEnd))
	// Measured at 12 1/2 in, they took 1 in.
	piece, pattern = made.Block(t, set+"\n[block]\nmeasured = \"12 1/2\"\n")
	m = cuttingSheet(piece, pattern, nil)
	assert.Contains(t, m.Notes, "below their end the tucks are open: there the block is 1 in wider than at its top")
	assert.Contains(t, m.Steps[0], "12 1/2 in across")
	piece, pattern = made.Block(t, sketch.Bosom+sketch.Tucked("cf", "1/8", 3, "3/8", "")+"\n[block]\n")
	m = cuttingSheet(piece, pattern, nil)
	assert.Empty(t, m.Notes, "they run on to the bottom")
}
