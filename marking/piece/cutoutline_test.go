package piece_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

const netDrawn = "drawn-to = \"stitching\"\n"

// Everything here is worked out by hand: an allowance of a and one of b beside a corner of
// the inner angle t meet (b + a cos t) / sin t beyond the end of the edge with a (derived).
func TestCuttingLinesOutsideStitchLines(t *testing.T) {
	square := "bottom: 0,0 4,0 | %s\nright: 4,0 4,3 | %s\ntop: 4,3 0,3 | %s\nleft: 0,3 0,0 | %s"
	each := func(allowances ...any) string {
		for i, a := range allowances {
			if !strings.Contains(a.(string), "hem") {
				allowances[i] = "allowance = " + a.(string)
			}
		}
		return fmt.Sprintf(square, allowances...)
	}
	squareNeck := "near: 1,5 1,3 | allowance = %s\nbottom: 1,3 3,3 | allowance = %s\nfar: 3,3 3,5 | allowance = %s\nrest: 3,5 4,5 4,0 0,0 0,5 1,5 | allowance = 0"
	vNeck := "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 3,12 | allowance = 0.375\nrest: 3,12 6,12 6,0 0,0 | allowance = 0"
	for _, c := range []struct {
		name, text, edge string
		cut, line, sewn  string // in inches
	}{
		{"all round, with square corners", each("0.5", "0.5", "0.5", "0.5"), "bottom", "-0.5,-0.5 4.5,-0.5", "-0.5,0 4.5,0", "0,0 4,0"},
		{"each edge its own allowance", each("0.5", "1", "0.25", "0.375"), "bottom", "-0.375,-0.5 5,-0.5", "-0.375,0 5,0", "0,0 4,0"},
		{"beside an edge without allowance", each("0.5", "1", "0.25", "0"), "bottom", "0,-0.5 5,-0.5", "0,0 5,0", "0,0 4,0"},
		{"an edge without allowance is lengthened to its neighbours", each("0.5", "1", "0.25", "0"), "left", "0,3.25 0,-0.5", "0,3.25 0,-0.5", "0,3 0,0"},
		{"a hem and its turn outside the fold", each("hem = 1; turn = 0.25", "0.5", "0.5", "0.5"), "bottom", "-0.5,-1.25 4.5,-1.25", "-0.5,0 4.5,0", "0,0 4,0"},
		{"a side goes straight on beside a hem", each("hem = 1; turn = 0.25", "0.5", "0.5", "0.5"), "right", "4.5,-1.25 4.5,3.5", "4,-1.25 4,3.5", "4,0 4,3"},
		{"no allowance at all", each("0", "0", "0", "0"), "bottom", "0,0 4,0", "0,0 4,0", "0,0 4,0"},
		{"edges that run the other way round", "bottom: 4,0 0,0 | allowance = 0.5\nleft: 0,0 0,3 | allowance = 0\nrest: 0,3 4,3 4,0 | allowance = 1",
			"bottom", "0,-0.5 5,-0.5", "0,0 5,0", "0,0 4,0"},
		{"a square neck of one edge", "neck: 1,5 1,3 3,3 3,5 | allowance = 0.5\nrest: 3,5 4,5 4,0 0,0 0,5 1,5 | allowance = 0",
			"neck", "2.5,5 2.5,3.5 1.5,3.5 1.5,5", "3,5 3,3 1,3 1,5", "3,5 3,3 1,3 1,5"},
		{"inner corners are trimmed where the cutting lines cross", fmt.Sprintf(squareNeck, "0.25", "0.5", "0.75"), "bottom", "2.25,3.5 1.25,3.5", "3,3 1,3", "3,3 1,3"},
		{"and so is the edge beside them", fmt.Sprintf(squareNeck, "0.25", "0.5", "0.75"), "near", "1.25,3.5 1.25,5", "1,3 1,5", "1,3 1,5"},
		{"an edge without allowance ends where it is covered", fmt.Sprintf(squareNeck, "0.25", "0", "0.25"), "bottom", "2.75,3 1.25,3", "2.75,3 1.25,3", "3,3 1,3"},
		{"a V neck runs on to the fold, lengthened", vNeck, "neck", "2.531,12 0,8.625", "", ""},
		{"and the fold with it", vNeck, "centre", "0,8.625 0,0", "0,8.625 0,0", "0,8 0,0"},
		{"a narrow V, too, which turns by 14 degrees there", "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 1,12 | allowance = 0.25\nrest: 1,12 6,12 6,0 0,0 | allowance = 0",
			"centre", "0,9.031 0,0", "0,9.031 0,0", "0,8 0,0"},
		{"an acute corner keeps its point", "a: 0,0 4,0 | allowance = 0.5\nb: 4,0 0,4 | allowance = 0.5\nc: 0,4 0,0 | allowance = 0",
			"a", "0,-0.5 5.207,-0.5", "0,0 4.707,0", "0,0 4,0"},
		{"where the allowance steps in a straight line, the lesser has the step", "one: 0,0 2,0 | allowance = 1\ntwo: 2,0 4,0 | allowance = 0.25\nrest: 4,0 4,3 0,3 0,0 | allowance = 0",
			"two", "2,-1 2,-0.25 4,-0.25", "2,0 4,0", "2,0 4,0"},
		{"and the wider ends square", "one: 0,0 2,0 | allowance = 1\ntwo: 2,0 4,0 | allowance = 0.25\nrest: 4,0 4,3 0,3 0,0 | allowance = 0",
			"one", "0,-1 2,-1", "0,0 2,0", "0,0 2,0"},
		{"a step to no allowance belongs to the edge that has one", "one: 0,0 2,0 | allowance = 1\ntwo: 2,0 4,0 | allowance = 0\nrest: 4,0 4,3 0,3 0,0 | allowance = 0",
			"one", "0,-1 2,-1 2,0", "0,0 2,0", "0,0 2,0"},
		{"equal allowances in a straight line join end to end", "one: 0,0 2,0 | allowance = 0.5\ntwo: 2,0 4,0 | allowance = 0.5\nrest: 4,0 4,3 0,3 0,0 | allowance = 0",
			"one", "0,-0.5 2,-0.5", "0,0 2,0", "0,0 2,0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := sketched(t, "0", netDrawn+c.text)
			e := p.Edges[p.EdgeNumber(c.edge)]
			assert.Equal(t, c.cut, sketch.Inches(e.Path), "the cutting line")
			if c.line != "" {
				assert.Equal(t, c.line, sketch.Inches(e.Line), "the stitch line")
				assert.Equal(t, c.sewn, sketch.Inches(e.Sewn), "the sewn part")
			}
			assert.Equal(t, e.Given, e.Sewn, "it is sewn as it is drawn")
		})
	}
}

// A skirt is given 6 in more than its finished length: 1/2 in turn, 5 in hem and 1/2 in
// seam (Ontario Teachers' Manuals, Household Science in Rural Schools, 1918, pp. 130-133);
// 3 1/2 in hem, 1/4 in turn and 1/4 in seam make 4 in (Kinne and Cooley, Clothing and
// Health, 1916, p. 36).
func TestSkirtsAreCutLongerThanTheyAreDrawn(t *testing.T) {
	for _, c := range []struct {
		name, hem, seam string
		more            float64 // inches
	}{
		{"Ontario", "hem = 5; turn = 0.5", "allowance = 0.5", 6},
		{"Kinne and Cooley", "hem = 3.5; turn = 0.25", "allowance = 0.25", 4},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := sketched(t, "0", netDrawn+"hem: 0,0 30,0 | "+c.hem+"\nright: 30,0 30,20\nwaist: 30,20 0,20 | "+c.seam+"\nleft: 0,20 0,0")
			assert.InDelta(t, 20+c.more, p.Outline.Bounds().Height()/25.4, 1e-9)
			assert.InDelta(t, 20, p.Edges[p.EdgeNumber("left")].Sewn.Length()/25.4, 1e-9, "finished")
		})
	}
}

// The underwaist of 1910 (McGlauflin, Handicraft for Girls, p. 53; sums derived), taken as it
// is sewn: its side is 5.0249 in long and its shoulder 2.6926, whatever the allowances.
func TestADraftIsSewnAsLongAsItIsDrawn(t *testing.T) {
	for _, allowance := range []string{"0", "0.25", "0.5", "1"} {
		p := sketched(t, allowance, netDrawn+straightUnderwaist)
		assert.InDelta(t, math.Sqrt(5*5+0.5*0.5), p.Edges[p.EdgeNumber("side")].Sewn.Length()/25.4, 1e-9, allowance)
		assert.InDelta(t, math.Hypot(2.5, 1), p.Edges[p.EdgeNumber("shoulder")].Sewn.Length()/25.4, 1e-9, allowance)
	}
}

// A point of 7.125 degrees would run out 16 allowances.
func TestAPointIsCutOffAtTheMitreLimit(t *testing.T) {
	p := sketched(t, "0", netDrawn+"a: 0,0 8,0 | allowance = 0.25\nb: 8,0 0,1 | allowance = 0.25\nc: 0,1 0,0 | allowance = 0")
	tip := plane.Point{X: 8 * 25.4}
	middle := plane.Point{X: math.Cos(math.Atan(0.125) / 2), Y: -math.Sin(math.Atan(0.125) / 2)}
	far := 0.0
	for _, q := range p.Outline {
		far = max(far, q.Sub(tip).Dot(middle))
	}
	assert.InDelta(t, 4*0.25*25.4, far, 1e-9, "how far it runs out, in mm")
	a, b := p.Edges[p.EdgeNumber("a")], p.Edges[p.EdgeNumber("b")]
	last := len(a.Path) - 1
	assert.InDelta(t, 0, a.Path[last].Sub(a.Path[last-1]).Dot(middle), 1e-9, "it is cut off square")
	assert.Equal(t, b.Path[0], a.Path[last])
	assert.InDelta(t, math.Sqrt(65), b.Sewn.Length()/25.4, 1e-9, "sewn as it is drawn")
}

// The hem of a flared side runs straight on with it.
func TestAHemRunsOnWithASlantingSide(t *testing.T) {
	p := sketched(t, "0", netDrawn+"hem: 0,0 5,0 | hem = 2\nside: 5,0 4,4 | allowance = 0\ntop: 4,4 0,4\nleft: 0,4 0,0")
	assert.Equal(t, "0,-2 5.5,-2", sketch.Inches(p.Edges[p.EdgeNumber("hem")].Path))
	assert.Equal(t, "5.5,-2 4,4", sketch.Inches(p.Edges[p.EdgeNumber("side")].Path))
}

// What is measured along an edge, or from it, is measured on the line that is drawn.
func TestMeasuredOnTheLineThatIsDrawn(t *testing.T) {
	text := netDrawn + `bottom: 0,0 6,0 | hem = 1; turn = 0.25
right: 6,0 6,8 | allowance = 0.5
top: 6,8 0,8 | allowance = 0.375
left: 0,8 0,0 | allowance = 0.5
---

[notch.sleeve]
edge = "right"
from = "bottom"
at = 2

[line.pocket]
along = "bottom"
distance = 3
kind = "placement"

[line.stay]
along = "right"
distance = 0.25
kind = "stitch"

[line.slit]
beside = "left"
at = 5
from = "top"
length = 3
kind = "placement"

[pleat.front]
edge = "top"
from = "left"
at = 2
depth = 0.5
toward = "right"
length = 1.5

[tuck.foot]
beside = "bottom"
width = 0.25
count = 1
first = 2
`
	p := sketched(t, "0", text)
	marks := map[string]string{}
	for _, m := range p.AsDrawn.Marks {
		marks[m.Name] = sketch.Inches(m.Path)
	}
	assert.Equal(t, "6.5,2 6.303,2", marks["sleeve"], "a notch 2 in from the drawn corner, 5 mm into the allowance")
	assert.Equal(t, "-0.5,3 6.5,3", marks["pocket"], "a line 3 in from the fold of the hem")
	assert.Equal(t, "5.75,-1.25 5.75,8.375", marks["stay stitch line"], "a line 1/4 in inside the stitch line")
	assert.Equal(t, "5,8.375 5,5", marks["slit"], "a line 5 in from the side, 3 in long from the stitch line, run out to the edge")
	assert.Equal(t, "2,8.375 2,6.5", marks["fold here"], "a pleat at 2 in, 1 1/2 in long from the stitch line, run out to the edge")
	assert.Equal(t, "3,8.375 3,6.5", marks["lay to here"])
	assert.Equal(t, "-0.5,-1 6.5,-1", marks["bottom turn"])
	require.Len(t, p.TuckRows, 1)
	row := p.TuckRows[0]
	assert.Equal(t, "bottom fold", row.Base.Name)
	assert.Equal(t, "-0.5,2 6.5,2", sketch.Inches(row.Folds[0].Lines[0].Flat[0]), "a tuck 2 in from the fold of the hem")
	assert.InDelta(t, 5, p.Edges[p.EdgeNumber("top")].FinishedLength/25.4, 1e-9, "6 in less what the pleat takes")
	assert.InDelta(t, 7.5, p.Edges[p.EdgeNumber("right")].FinishedLength/25.4, 1e-9, "8 in less what the tuck takes")
	var told []string
	for _, d := range p.AsDrawn.Dimensions(length.Inch) {
		told = append(told, d.Text)
	}
	assert.Contains(t, told, "pocket: 3 in from the bottom fold")
	assert.Contains(t, told, "stay stitch line: 1/4 in from the right stitch line")
	assert.Contains(t, told, "bottom fold: 1 1/4 in from the cut edge, hem 1 in and turn 1/4 in")
}

// The block of a piece is torn for all of its cloth: 6 in and two seams wide with 4 tucks
// of 1/8 in, which take 1 in; 8 in, a seam and a hem of 2 in long.
func TestABlockHoldsWhatIsAdded(t *testing.T) {
	p, _ := made.Block(t, "fold = \"centre\"\ndrawn = \"finished\"\n"+netDrawn+`centre: 0,0 0,8
neck: 0,8 2,8 | allowance = 0.5
side: 2,8 3,8 3,0 | allowance = 0.5
hem: 3,0 0,0 | hem = 2
---

[tuck.yoke]
beside = "centre"
width = 0.125
count = 2
first = 0.375
below = "neck"
length = 3

[block]
ends = 0.5
`)
	assert.InDelta(t, 6+2*0.5+4*0.25, p.Block.Width/25.4, 1e-6)
	assert.InDelta(t, 8+0.5+2+2*0.5, p.Block.Length/25.4, 1e-6)
}

func TestCuttingLinesThatCannotBe(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"a gap of the drawn outline, between drawn points", "a: 0,0 4,0\nb: 4,0.5 4,4\nc: 4,4 0,0",
			"4: piece.front.edge.a: the outline is open between \"a\" and \"b\": their ends at (4 in, 0 in) and, in line 7, (4 in, 1/2 in) are 1/2 in apart\nhint: give both edges the same point for their corner, or add the edge that is missing between them"},
		{"a crossing of the drawn outline", "a: 0,0 4,0\nb: 4,0 0,4\nc: 0,4 4,4\nd: 4,4 0,0",
			"6: piece.front.edge.b: the outline crosses or touches itself: \"b\" and \"d\" meet at (2 in, 2 in)\nhint: a number may be wrong, or two points stand in the wrong order"},
		{"a gap narrower than its allowances", "rest: 0,0 6,0 6,6 3.5,6 | allowance = 0\nnear: 3.5,6 3.5,2 | allowance = 0.375\nfoot: 3.5,2 2.9,2 | allowance = 0.25\nfar: 2.9,2 2.9,6 | allowance = 0.375\nleft: 2.9,6 0,6 0,0 | allowance = 0",
			"9: piece.front.edge.foot: nothing is left of the cutting line of this edge between those of \"near\" and \"far\"\nhint: make their allowances narrower, or this edge longer"},
		{"a curve too hollow for its allowance", "neck: 1,6 1.2,5.5 1.5,5.4 1.8,5.5 2,6 | smooth = true; allowance = 1\nrest: 2,6 6,6 6,0 0,0 0,6 1,6 | allowance = 0",
			"3: piece.front.edge.neck: an allowance of 1 in leaves no line outside this edge\nhint: make it narrower, or make this curve part of the edge beside it"},
		{"a bay whose mouth is narrower than its allowances", "bay: 4,6 4,5.5 3.6,5 3.2,4 4,3 5.5,3 6.2,4 5.6,5 5,5.5 5,6 | allowance = 0.625\nrest: 5,6 8,6 8,0 0,0 0,6 4,6 | allowance = 0",
			"3: piece.front.edge.bay: an allowance of 5/8 in is too wide: the line outside this edge meets itself at (4 1/2 in, 5 1/8 in)\nhint: make it narrower, or the hollow wider there"},
		{"two arms that come near each other", "rest: 0,0 6,0 6,6 3.3,6 | allowance = 0\nnear: 3.3,6 3.05,4 | allowance = 0.25\nin 1: 3.05,4 5,2 | allowance = 0.25\nfoot: 5,2 1,2 | allowance = 0.25\nin 2: 1,2 2.75,4 | allowance = 0.25\nfar: 2.75,4 2.7,6 | allowance = 0.25\nleft: 2.7,6 0,6 0,0 | allowance = 0",
			"6: piece.front.edge.near: the cutting lines outside \"near\" and \"far\", for allowances of 1/4 in and 1/4 in, cross or touch at (2 15/16 in, 5 3/8 in)\nhint: make the allowances narrower, or the gap between the two edges wider"},
		{"an allowance on the fold", "fold = \"a\"\na: 0,4 0,0 | allowance = 0.5\nb: 0,0 4,0 4,4 0,4",
			"4: piece.front.edge.a: the edge lies on the fold of the cloth, where nothing is sewn\nhint: leave its allowance and hem out; allowance = 0 takes away what it has of another piece"},
		{"an edge that hardly leaves the fold", "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 0.05,12 | allowance = 0.375\nrest: 0.05,12 6,12 6,0 0,0 | allowance = 0",
			"7: piece.front.edge.neck: the cutting line outside this edge, for an allowance of 3/8 in, does not come to \"centre\", which lies on the fold of the cloth\nhint: make the allowance narrower, or lead the edge to the fold more squarely"},
		{"a notch beyond the drawn edge", "a: 0,0 4,0 | allowance = 0.5\nb: 4,0 4,4 | allowance = 0.5\nc: 4,4 0,0 | allowance = 0.5\n---\n\n[notch.n]\nedge = \"a\"\nfrom = \"b\"\nat = 4.25\n",
			"16: piece.front.notch.n.at: the notch leaves \"a\": it lies 4 1/4 in from \"b\", and the edge is 4 in long\nhint: measure from the other corner, or from another edge"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(sketch.Front(netDrawn + c.text))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}
