package piece_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// meetsBeyond is by how much, in inches, the line at a meets the one at b past the end of
// its edge, at a corner between two straight edges that turns by so many degrees: (a
// cos t - b) / sin t (derived). Below 0 it meets it before.
func meetsBeyond(a, b, degrees float64) float64 {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return (a*cos - b) / sin
}

// rises is the angle of a step, in degrees.
func rises(x, y float64) float64 { return math.Atan2(y, x) * 180 / math.Pi }

// A bodice whose side meets the armhole at X, on a ledge as wide as X is beyond 5.
const narrowLedge = "fold = \"centre\"\ncentre: 0,0 0,12\nneck: 0,12 2,12 2,14 | allowance = 0.25\nshoulder: 2,14 5,13.5 | allowance = 0.375\n" +
	"armhole: 5,13.5 5,11 5.125,10 X,9 | smooth = true; allowance = ARMHOLE\nside: X,9 X,0 | allowance = SIDE\nhem: X,0 0,0 | hem = 1"

func TestSeamsBetweenCorners(t *testing.T) {
	gentle := func(x string) string { return sketch.Swap(sketch.PlacketAboveSeam, "X", x) }
	for _, c := range []struct {
		name, allowance, text, edge string
		want                        float64 // inches
	}{
		// At the end of a placket each seam ends square to its edge, whether the edges
		// turn there by a little less than 8 degrees or by a little more.
		{"a placket that turns by 7.9 degrees", "0.375", gentle("1.248853"), "placket", 6 - 0.375},
		{"its seam", "0.375", gentle("1.248853"), "seam", math.Hypot(9, 1.248853) + meetsBeyond(0.375, 0.375, rises(1.248853, 9))},
		{"a placket that turns by 8.1 degrees", "0.375", gentle("1.280890"), "placket", 6 - 0.375},
		{"its seam", "0.375", gentle("1.280890"), "seam", math.Hypot(9, 1.280890) + meetsBeyond(0.375, 0.375, rises(1.280890, 9))},
		{"one that turns by 25 degrees", "0.375", gentle("4.2"), "placket", 6 - 0.375},
		{"one that turns by 31 degrees meets its seam", "0.375", gentle("5.4"), "placket", 6 - 0.375 + meetsBeyond(1.25, 0.375, 90-rises(5.4, 9))},
		{"nearly equal allowances meet at 20 degrees", "0.375", sketch.Swap(gentle("3.3"), "hem = 1; turn = 0.25", "allowance = 0.5"), "placket",
			6 - 0.375 + meetsBeyond(0.5, 0.375, 90-rises(3.3, 9))},

		{"the underarm of a raglan sleeve", "0.5", sketch.RaglanSleeve, "under 1", math.Hypot(1, 5) +
			meetsBeyond(0.5, 1.25, rises(1, 5)) + meetsBeyond(0.5, 0.5, rises(-3.5, 6.5)-rises(1, 5))},
		{"its raglan", "0.5", sketch.RaglanSleeve, "raglan 2", math.Hypot(3.5, 6.5) +
			meetsBeyond(0.5, 0.25, 180-rises(-3.5, 6.5)) + meetsBeyond(0.5, 0.5, rises(-3.5, 6.5)-rises(1, 5))},
		{"a kimono: the side to the underarm", "0.5", sketch.KimonoBack, "side", math.Hypot(1, 8) +
			meetsBeyond(0.5, 1.25, rises(-1, 8)) + meetsBeyond(0.5, 0.375, rises(5, 1)-rises(-1, 8))},
		{"its underarm", "0.5", sketch.KimonoBack, "underarm", math.Hypot(5, 1) +
			meetsBeyond(0.375, 0.5, rises(5, 1)-rises(-1, 8)) + meetsBeyond(0.375, 0.75, rises(-0.5, 3.5)-rises(5, 1))},
		// A slash is sewn to its end: its lines would meet 1.8 in beyond.
		{"a slash for a gusset", "0.375", sketch.Slashed, "below", math.Hypot(3, 1) + meetsBeyond(0.25, 0.375, rises(-3, 1)-90)},
		{"the gusset", "0.375", sketch.GussetDiamond, "a", math.Hypot(1.5, 3) +
			meetsBeyond(0.375, 0.375, 2*rises(3, 1.5)) + meetsBeyond(0.375, 0.375, 2*rises(1.5, 3))},
		// The line lies at 8.625, where the edges beside it lie at these places.
		{"a strap between bare edges", "0.5", sketch.BareBib, "strap", (3.4 + 0.375*0.2/3) - (2.2 - 0.375*0.2/1.4)},
		{"the bare neck beside it", "0.5", sketch.BareBib, "neck", math.Hypot(2, 1.6) + math.Hypot(0.2, 1.4)*1.025/1.4},
		{"the front of a collar", "0", sketch.FlatSetCollar, "front", math.Hypot(1.3, 3.1) +
			meetsBeyond(0.25, 0.375, rises(1.3, 3.1)-rises(5.5, 1.3)) + meetsBeyond(0.25, 0.25, 360+rises(-6.8, -1.4)-rises(1.3, 3.1))},
		{"a placket that ends in a seam", "0.375", gentle("0.5"), "placket", 6 - 0.375},
		{"the seam below", "0.375", gentle("0.5"), "seam", math.Hypot(9, 0.5) + meetsBeyond(0.375, 0.375, rises(0.5, 9))},

		{"a bare edge that points into the piece takes nothing off its neighbour", "0.375",
			"hem: 0,0 8,0\nright: 8,0 8,6\nledge: 8,6 4,6 | allowance = 0\nslant: 4,6 3,10\ntop: 3,10 0,10\nleft: 0,10 0,0", "slant",
			math.Hypot(1, 4) + meetsBeyond(0.375, 0.375, 180-rises(-1, 4))},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, c.allowance, c.text)
			assert.InDelta(t, c.want, piece.Edges[piece.EdgeNumber(c.edge)].Sewn.Length()/25.4, 1e-4)
		})
	}
}

// Where a corner has a step, no line is ruled on, nor is any other line inside the
// same edge; and what is measured from seam to seam ends at the seams.
func TestStepAtTheEndOfAPlacket(t *testing.T) {
	p := sketched(t, "0.375", sketch.Swap(sketch.PlacketAboveSeam, "X", "1.280890")+
		"\n---\n\n[line.guide]\nalong = \"placket\"\ndistance = 2\n\n[line.across]\npoints = [[0, 9.5], [5, 9.5]]\n\n[line.below]\npoints = [[0.2, 8], [5, 8]]")
	placket, seam := p.Edges[p.EdgeNumber("placket")], p.Edges[p.EdgeNumber("seam")]
	assert.Equal(t, piece.CornerStep, p.Corners[p.EdgeNumber("placket")].Kind)
	assert.Equal(t, "1.25,15 1.25,9", sketch.Inches(placket.Line))
	assert.Contains(t, drawnMarks(p, mark.Fold), "placket turn 0.25,15 0.25,9", "what is turned in")
	assert.Equal(t, "2,15 2,9", sketch.Inches(p.Line("guide").Path), "a line along the placket")
	// Square to the seam from (0, 9): 0.375 along (9, 1.28089), made 1 long.
	assert.Equal(t, "0.371,9.053", sketch.Inches(seam.Line[:1]), "the seam below begins square to its edge")
	length := func(key string) float64 { return p.Line(key).FinishedLength / 25.4 }
	assert.InDelta(t, 5-1.25, length("across"), 1e-4, "from the hem of the placket")
	from := 1.28089/9 + 0.375*math.Hypot(9, 1.28089)/9
	assert.InDelta(t, 5-from, length("below"), 1e-4, "from the seam")
}

// A short edge that turns out by 29 degrees beside a wrist ends before it meets the fold
// of the wrist's hem, and the underarm, which goes straight up from there, begins in it.
func TestShortEdgeInAHem(t *testing.T) {
	sleeve := func(long float64) string {
		sin, cos := math.Sincos(29 * math.Pi / 180)
		return sketch.Swap("wrist: 8,0 8,6 | hem = 2\nsleeve: 8,6 END | allowance = 1\nunderarm: END X,16 | allowance = 0.75\ntop: X,16 0,16\nleft: 0,16 0,0\nbottom: 0,0 8,0",
			"END", fmt.Sprintf("%.6f,%.6f", 8-long*sin, 6+long*cos), "X", fmt.Sprintf("%.6f", 8-long*sin))
	}
	_, err := made.Pattern("allowance = 0.375\n" + sketch.Front(sleeve(0.5)))
	require.Error(t, err)
	// Where they meet is 0.75 inside x = 7.7576, and 1 inside the sleeve (worked out).
	assert.Equal(t, "pinafore.toml:3: piece.front.edge.wrist: the allowances of \"wrist\" and \"underarm\", 2 in and 3/4 in, leave nothing between them at (7 in, 5 3/4 in): the edges come within 1/2 in of each other\nhint: make the allowances narrower, or the piece wider there", err.Error())
	piece := sketched(t, "0.375", sleeve(3.5))
	assert.InDelta(t, 6-0.375+meetsBeyond(2, 1, 29), piece.Edges[piece.EdgeNumber("wrist")].Sewn.Length()/25.4, 1e-4, "the wrist meets a longer sleeve")
}

// Where the hem of a cape goes on into a rounded corner, a ruler laid along the fold of
// the hem would lead over the corner and out at its other end.
func TestNothingIsRuledOverWhatIsSewn(t *testing.T) {
	piece := sketched(t, "0", "fold = \"centre\"\ncentre: 3.25,0 14,0\n"+
		"hem: 14,0 13.381,4.117 11.5787,7.8698 8.7524,10.9268 5.1522,13.0175 1.0964,13.957 -3.0564,13.6623 -6.9389,12.1594 -10.2078,9.5813 | smooth = true; hem = 2; turn = 0\n"+
		"corner: -10.2078,9.5813 -11.0796,8.1316 -11.5528,6.9165 -11.6082,6.0125 -11.2268,5.4963 | smooth = true; hem = 1; turn = 0.375\n"+
		"front: -11.2268,5.4963 -2.919,1.429 | hem = 0.75; turn = 0\n"+
		"neck: -2.919,1.429 -1.6108,2.8227 0.2545,3.24 2.0318,2.5366 3.25,0 | smooth = true")
	hem := piece.Edges[piece.EdgeNumber("hem")]
	assert.Equal(t, hem.Sewn[len(hem.Sewn)-1], hem.Line[len(hem.Line)-1], "the fold of the hem ends where it meets that of the corner")
}

// A side whose allowance is wider than the ledge under a narrow armhole.
func TestNarrowLedge(t *testing.T) {
	ledge := func(x, armhole, side string) string {
		return sketch.Swap(sketch.Swap(sketch.Swap(narrowLedge, "X", x), "ARMHOLE", armhole), "SIDE", side)
	}
	scooped := "fold = \"centre\"\ncentre: 0,0 0,6.5\nneck: 0,6.5 1.125,6.695 1.9575,7.25 2.25,8 | smooth = true\nshoulder: 2.25,8 4.75,7.5\n" +
		"armhole: 4.75,7.5 4.5,5.3 5.166666666666667,3.875 6,3.5 | smooth = true\nside: 6,3.5 8,0 | allowance = 0.625\nhem: 8,0 0,0 | hem = 0.5; turn = 0.25"
	for _, c := range []struct{ name, text, want string }{
		{"a bare armhole, its ledge narrower than the allowance", ledge("5.3", "0", "0.375"),
			"17: piece.front.edge.side: the allowance of \"side\", 3/8 in, runs past \"armhole\": its line does not come out at that edge\nhint: make it narrower, or the piece wider there"},
		{"the same with an allowance that reaches to the shoulder", ledge("5.6", "0", "0.75"),
			"17: piece.front.edge.side: the allowance of \"side\", 3/4 in, runs past \"armhole\": its line does not come out at that edge\nhint: make it narrower, or the piece wider there"},
		{"a scooped bare armhole", scooped,
			"16: piece.front.edge.side: the allowance of \"side\", 5/8 in, runs past \"armhole\": its line does not come out at that edge\nhint: make it narrower, or the piece wider there"},
		{"as wide as the ledge of a step", "bottom: 0,0 6,0\nside: 6,0 6,5 | allowance = 0.5\nledge: 6,5 5.5,5\narm: 5.5,5 5.5,9\ntop: 5.5,9 0,9\nleft: 0,9 0,0",
			"9: piece.front.edge.ledge: the allowances of \"side\" and \"arm\" leave nothing of this edge, which is 1/2 in long, to be sewn\nhint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0\n" + sketch.Front(c.text))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}

	// With an allowance at the armhole the two lines meet. Ruled on, that of the side
	// would come out at the shoulder, so it ends there.
	piece := sketched(t, "0", ledge("5.8", "0.5", "1"))
	side, armhole := piece.Edges[piece.EdgeNumber("side")], piece.Edges[piece.EdgeNumber("armhole")]
	end := side.Line[len(side.Line)-1]
	assert.Less(t, sketch.Away(end, armhole.Sewn), 1e-6, "the line of the side ends at that of the armhole")
	assert.InDelta(t, 4.8, end.X/25.4, 1e-9, "1 in from the side")
	assert.InDelta(t, side.Sewn.Length()+25.4, side.Line.Length(), 1e-6, "the line is drawn as far as it is sewn, and through the hem of 1 in")
}

// The last short step of an edge that was measured off does not turn its line.
func TestRoughEnd(t *testing.T) {
	// The side rises from (321, 0.1) by 399.9 over 59; its line lies 10 mm inside, that
	// of the left edge at 10 (worked out).
	rise := math.Hypot(59, 399.9)
	from, up := 321-10*399.9/rise, 0.1+10*59/rise
	want := from + 59*(60-up)/399.9 - 10
	skirt := "left: 0,400 0,0\nhem: %s | hem = 60\nright: 321,0.1 380,400\ntop: 380,400 0,400"
	for _, c := range []struct{ name, hem string }{
		{"a last step that rises by a tenth of a millimetre", "0,0 320,0 321,0.1"},
		{"two steps, to and fro", "0,0 319,0.1 320,0 321,0.1"},
		{"an edge in one step", "0,0 321,0.1"},
		{"a first step that falls", "0,0 1,-0.1 321,0.1"},
		{"the other way", "321,0.1 320,0 0,0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern, err := made.Pattern("unit = \"mm\"\nallowance = 10\n" + sketch.Front(fmt.Sprintf(skirt, c.hem)))
			require.NoError(t, err)
			piece := &pattern.Pieces[0]
			hem := piece.Edges[piece.EdgeNumber("hem")]
			assert.InDelta(t, want, hem.Sewn.Length(), 0.1)
			for _, q := range sketch.Places(hem.Line, 2) {
				assert.InDelta(t, 60, q.Y, 0.3, "at %v", q)
			}
		})
	}
	// Through places 1 mm apart on a round line, off by 0.05 mm in and out, it is
	// lengthened as the round line runs in the middle of its last 5 mm: 2.5/200 less than
	// half a radian round, and 0.1 mm on 5 off.
	var round []string
	for k := range 101 {
		sin, cos := math.Sincos(float64(k)/200 - math.Pi/2)
		radius := 200 + 0.05*float64(1-k%2*2)
		round = append(round, fmt.Sprintf("%.3f,%.3f", radius*cos, radius*sin+200))
	}
	end := round[100]
	pattern, err := made.Pattern("unit = \"mm\"\nallowance = 20\n" + sketch.Front("round: "+strings.Join(round, " ")+"\nright: "+end+" 95,200\ntop: 95,200 0,200\nleft: 0,200 "+round[0]))
	require.NoError(t, err)
	piece := &pattern.Pieces[0]
	line := piece.Edges[piece.EdgeNumber("round")].Line
	way := line.EndDirection()
	assert.InDelta(t, 0.5-2.5/200, math.Atan2(way.Y, way.X), 0.021, "about half a radian round")
}

// A place written twice, in inches and in millimetres, is one point of a curve: two so
// near to each other would make it swing.
func TestTwinPoints(t *testing.T) {
	front := func(twin string) string {
		return "unit = \"in\"\nallowance = 0.375\n" + sketch.Front("fold = \"c\"\nc: 0,0 0,14\nneck: 0,14 1.75,14.125"+twin+" 3,14.875 3.625,16.75 | smooth = true\n"+
			"shoulder: 3.625,16.75 6,16.25\nside: 6,16.25 8,0\nhem: 8,0 0,0")
	}
	_, err := made.Pattern(front(` "44.45mm","358.8mm"`))
	require.Error(t, err)
	assert.Equal(t, "pinafore.toml:9: piece.front.edge.neck: points 2 and 3 are the same\nhint: take one of them out", err.Error())
	_, err = made.Pattern(front(` "45.45mm","359.1mm"`))
	assert.NoError(t, err, "points a millimetre apart are two")
}

// A tab that is all seam is a mistake, whether it is part of an edge or edges of its own.
func TestTabThatIsAllSeam(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"in one edge", "top: 0,3 4,3 4,5 4.7,5 4.7,3 9,3\nright: 9,3 9,0\nbottom: 9,0 0,0\nleft: 0,0 0,3",
			"3: piece.front.edge.top: an allowance of 3/8 in is too wide: the line inside this edge meets itself at (4 5/16 in, 2 5/8 in)\nhint: make it narrower, or the piece wider there; the allowance in line 1 is for every edge that gives none"},
		{"in three", "top 1: 0,3 4,3\ntab 1: 4,3 4,5\ntab: 4,5 4.7,5\ntab 2: 4.7,5 4.7,3\ntop 2: 4.7,3 9,3\nright: 9,3 9,0\nbottom: 9,0 0,0\nleft: 0,0 0,3",
			"9: piece.front.edge.tab: the allowances of \"tab 2\" and \"tab 1\" leave nothing of this edge, which is 11/16 in long, to be sewn\nhint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it; the allowance in line 1 is for every edge that gives none"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0.375\n" + sketch.Front(c.text))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}
