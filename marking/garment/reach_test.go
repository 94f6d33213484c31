package garment_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// arc returns points on a circle, from one angle to another, in degrees; lengths as they come.
func arc(x, y, radius, from, to float64, steps int) plane.Path {
	var p plane.Path
	for i := range steps + 1 {
		sin, cos := math.Sincos((from + (to-from)*float64(i)/float64(steps)) * math.Pi / 180)
		p = append(p, plane.Point{X: x + radius*cos, Y: y + radius*sin})
	}
	return p
}

// places writes the points of paths, in the numbers that they have, as one edge.
func places(all ...plane.Path) string {
	var edge plane.Path
	for _, p := range all {
		for _, q := range p {
			if len(edge) == 0 || q.Distance(edge[len(edge)-1]) > 1e-5 {
				edge = append(edge, q)
			}
		}
	}
	var words []string
	for _, q := range edge {
		words = append(words, fmt.Sprintf("%.6f,%.6f", q.X, q.Y))
	}
	return strings.Join(words, " ")
}

// bends writes corners or curves: turn x times: what each takes, in inches.
func bends(all []garment.Bend) string {
	var words []string
	for _, b := range all {
		words = append(words, fmt.Sprintf("%.0f x %d: %.2f", b.Turn, b.Times, b.Takes.MM/25.4))
	}
	return strings.Join(words, ", ")
}

// Collars and the like whose lower edges are curves; what closes them is at the top.
var (
	// quarter is a quarter circle of 4 in; its radius stands for R.
	quarter = "outer: " + places(arc(0, 0, 4, 0, 90, 45)) + "\nup: 0,4 0,0\nacross: 0,0 4,0\n"
	// half is a half circle of 3 in.
	half = "outer: " + places(arc(0, 0, 3, 180, 360, 180)) + "\ntop: 3,0 -3,0\n"
	// halved is that half circle on the fold: a quarter of it is drawn.
	halved = "fold = \"centre\"\ncentre: 0,0 0,-3\nouter: " + places(arc(0, 0, 3, 270, 360, 8)) + " | smooth = true\ntop: 3,0 0,0\n"
	// roundFronts is 20 in long, with quarter rounds of 2 in at both ends: between them
	// lie 20 - 2 pi in.
	roundFronts = "left: " + places(arc(2, 2, 2, 180, 270, 8)) + " | smooth = true\n" +
		"outer: 2,0 15.716815,0\n" +
		"right: " + places(arc(15.716815, 2, 2, 270, 360, 8)) + " | smooth = true\nneck: 17.716815,2 0,2\n"
	// oneEdge is the same in one edge, drawn with many points.
	oneEdge = "outer: " + places(arc(2, 2, 2, 180, 270, 60), arc(15.716815, 2, 2, 270, 360, 60)) + "\nneck: 17.716815,2 0,2\n"
	// scallops are four half circles of 1 in, side by side.
	scallops = "outer: " + places(arc(1, 0, 1, 180, 360, 60), arc(3, 0, 1, 180, 360, 60), arc(5, 0, 1, 180, 360, 60), arc(7, 0, 1, 180, 360, 60)) +
		"\nright: 8,0 8,3\ntop: 8,3 0,3\nleft: 0,3 0,0\n"
	// small are eight half circles of 1/4 in, side by side, and apart the same with 1/2 in of
	// straight edge after each.
	small = scalloped(1.0/4, 0)
	apart = scalloped(1.0/4, 1.0/2)
	// wave turns outward by 60 degrees, back by 60 and outward again by 60, always with a
	// radius of 4 in.
	wave = "hem: " + places(arc(0, 4, 4, 240, 300, 30), arc(4, -2.928203, 4, 120, 60, 30), arc(8, 4, 4, 240, 300, 30)) +
		"\nright: 10,0.535898 10,6\ntop: 10,6 -2,6\nleft: -2,6 -2,0.535898\n"
	// roundNeck is half a front whose neck is a quarter circle of 3 in.
	roundNeck = "fold = \"centre\"\ncentre: 0,0 0,7\nneck: " + places(arc(0, 10, 3, 270, 360, 8)) + " | smooth = true\nshoulder: 3,10 6,10\nside: 6,10 6,0\nhem: 6,0 0,0\n"
)

// scalloped is a piece with an outer edge of eight half circles of a radius, and so much of
// straight edge after each.
func scalloped(radius, straight float64) string {
	var outer plane.Path
	x := 0.0
	for range 8 {
		outer = append(outer, arc(x+radius, 0, radius, 180, 360, 30)...)
		x += 2*radius + straight
		outer = append(outer, plane.Point{X: x})
	}
	return "outer: " + places(outer) + fmt.Sprintf("\nright: %[1]f,0 %[1]f,3\ntop: %[1]f,3 0,3\nleft: 0,3 0,0\n", x)
}

// Flat lace along an outward curve has an outer edge that is longer by its width times the
// angle of the turn, in radians: 1.5708 widths round a quarter circle, where a square corner
// takes 2 (plane geometry; derived). Each outward curve takes its own, however hollow the
// line is beside it.
func TestLaceRoundACurve(t *testing.T) {
	for _, c := range []struct {
		name, piece, trim      string
		corners, curves, spare string
		total                  float64 // inches
	}{
		{"a quarter circle", quarter, `along = "front.outer"; width = 1`, "", "90 x 1: 1.57", "0 in", 2*math.Pi + math.Pi/2},
		{"a half circle", half, `along = "front.outer"; width = 1`, "", "180 x 1: 3.14", "0 in", 3*math.Pi + math.Pi},
		{"a half circle over the fold", halved, `along = "front.outer"; width = 1`, "", "180 x 1: 3.14", "0 in", 3*math.Pi + math.Pi},
		{"a quarter circle and its sides", quarter, `along = ["front.outer", "front.up", "front.across"]; width = 1`, "90 x 3: 2.00", "90 x 1: 1.57", "0 in", 8 + 6 + 2*math.Pi + math.Pi/2},
		// 20 + 3/4 x pi = 22.356 (derived)
		{"a collar with two round fronts", roundFronts, `along = ["front.left", "front.outer", "front.right"]; width = "3/4"`, "", "90 x 2: 1.18", "0 in", 22.356},
		{"the same drawn with points", oneEdge, `along = "front.outer"; width = "3/4"`, "", "90 x 2: 1.18", "0 in", 22.356},
		{"on a collar with round fronts it is the inner edge", oneEdge, `along = "front.outer"; width = "3/4"; lies = "on"`, "", "", "2 3/8 in", 20},
		{"narrower lace takes less", oneEdge, `along = "front.outer"; width = "1/4"`, "", "90 x 2: 0.39", "0 in", 20 + math.Pi/4},
		{"of no known width", oneEdge, `along = "front.outer"`, "", "90 x 2: 0.00", "0 in", 20},
		// Each is a half circle; at the points between them nothing is added.
		{"scallops", scallops, `along = "front.outer"; width = "1/2"`, "", "180 x 4: 1.57", "0 in", 4*math.Pi + 2*math.Pi},
		// However small, each turns by all of its half circle, and the point beside it by none.
		{"small scallops", small, `along = "front.outer"; width = "1/2"`, "", "180 x 8: 1.57", "0 in", 8*math.Pi/4 + 8*1.5708},
		{"small scallops with straight edge between", apart, `along = "front.outer"; width = "1/2"`, "", "180 x 8: 1.57", "0 in", 4 + 8*math.Pi/4 + 8*1.5708},
		// 60 degrees twice, and hollow by 60 between them, which gives nothing to either
		{"a line that turns both ways", wave, `along = "front.hem"; width = 1`, "", "60 x 2: 1.05", "1 1/16 in", 4*math.Pi + 2*math.Pi/3},
		{"the same on the piece", wave, `along = "front.hem"; width = 1; lies = "on"`, "", "60 x 1: 1.05", "2 1/8 in", 4*math.Pi + math.Pi/3},
		// The neck is 3 in x pi / 2 on either half.
		{"in a hollow neck", roundNeck, `along = "front.neck"; width = 1`, "", "", "3 1/8 in", 3 * math.Pi},
		{"on the front, round a neck", roundNeck, `along = "front.neck"; width = 1; lies = "on"`, "", "180 x 1: 3.14", "0 in", 3*math.Pi + math.Pi},
		// 14.04 degrees = 0.245 rad, less than a corner: eased round
		{"a turn too slight for a corner", "top: 0,4 6,4\nrest: 6,4 6,1 3,0.25 0,1 0,4", `along = "front.rest"; width = 1`, "76 x 2: 1.56", "28 x 1: 0.49", "0 in", 6 + 2*3.0923 + 2*1.5617 + 0.49},
		// Ten chords of 9 degrees, 0.63 in long: a curve that somebody drew with a ruler
		{"a quarter circle of ten straight lines", "outer: " + places(arc(0, 0, 4, 0, 90, 10)) + "\nup: 0,4 0,0\nacross: 0,0 4,0\n", `along = "front.outer"; width = 1`, "", "90 x 1: 1.57", "0 in", 80*math.Sin(math.Pi/40) + math.Pi/2},
		// 1/2 of 2 pi is more than the 1.57 that are needed
		{"gathers give what is needed", quarter, `along = "front.outer"; width = 1; fullness = 1.5`, "", "90 x 1: 0.00", "0 in", 3 * math.Pi},
		// 1/8 of 2 pi is 0.785: 1.571 less that is lacking
		{"gathers give half of it", quarter, `along = "front.outer"; width = 1; fullness = "1 1/8"`, "", "90 x 1: 0.79", "0 in", 2.25*math.Pi + math.Pi/4},
	} {
		t.Run(c.name, func(t *testing.T) {
			trim := garmentOf(t, c.piece, "[trim.x]\njoin-takes = 0\n"+strings.ReplaceAll(c.trim, "; ", "\n")+"\n").Trims[0]
			assert.Equal(t, c.corners, bends(trim.Corners), "corners")
			assert.Equal(t, c.curves, bends(trim.Curves), "curves")
			assert.Equal(t, c.spare, trim.Spare.String(), "spare where it is hollow")
			assert.InDelta(t, c.total, trim.Total.MM/25.4, 0.01, "inches in all")
		})
	}
}

// Seams along the straight edge of a half circle cut its stitch line off where they cross it:
// a circle of radius r - a turns by 180 degrees less twice the angle whose sine is a / (r - a)
// (derived). Of 6 in and 1/4 in: asin(0.25 / 5.75) = 2.492 degrees, so 175.016, of which lace
// 1 in wide takes 3.0546 in, told as 3 1/16; 176 degrees would be 3.0718, told as 3 1/8.
func TestLaceRoundACurveThatIsCutOff(t *testing.T) {
	capeOf := func(t require.TestingT, radius, allowance float64) []garment.Bend {
		cape := fmt.Sprintf("fold = \"back\"\nback: 0,0 0,-%[1]f\nouter: 0,-%[1]f %[1]f,0 | centre = [0, 0]; allowance = %[2]f\ntop: %[1]f,0 0,0 | allowance = %[2]f\n", radius, allowance)
		return garmentOf(t, cape, "[trim.x]\nalong = \"front.outer\"\nwidth = 1\n").Trims[0].Curves
	}
	curves := capeOf(t, 6, 0.25)
	require.Len(t, curves, 1)
	assert.Equal(t, "3 1/16 in", curves[0].Takes.String())
	rapid.Check(t, func(t *rapid.T) {
		radius, allowance := rapid.Float64Range(1.5, 24).Draw(t, "radius"), rapid.Float64Range(0.1, 0.5).Draw(t, "allowance")
		curves := capeOf(t, radius, allowance)
		require.Len(t, curves, 1)
		require.InDelta(t, 180-2*math.Asin(allowance/(radius-allowance))*180/math.Pi, curves[0].Turn, 0.1, "degrees")
	})
}

// At an inside corner the outer edge has too much what it lacks at an outside one: two widths
// where it is square (derived). Nothing of it is taken from what is cut.
func TestLaceAtInsideCorners(t *testing.T) {
	for _, c := range []struct{ name, piece, trim, spare string }{
		{"a square neck, half of it drawn", "fold = \"up\"\nup: 0,0 0,4\nneck: 0,4 2,4 2,6\nside: 2,6 6,6 6,0 0,0\n", `along = "front.neck"; width = "5/8"`, "2 1/2 in"},
		{"on a square corner", "sides: 0,5 0,0 5,0\nrest: 5,0 5,5 0,5\n", `along = "front.sides"; width = 1; lies = "on"`, "2 in"},
		{"round a square corner", "sides: 0,5 0,0 5,0\nrest: 5,0 5,5 0,5\n", `along = "front.sides"; width = 1`, "0 in"},
		// A bend of 60 degrees: 2 tan 30 = 1.155.
		{"a bend of 60 degrees", "top: 0,6 3,4.268 6,6\nrest: 6,6 6,0 0,0 0,6\n", `along = "front.top"; width = 1`, "1 1/8 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			trim := garmentOf(t, c.piece, "[trim.x]\njoin-takes = 0\n"+strings.ReplaceAll(c.trim, "; ", "\n")+"\n").Trims[0]
			assert.Equal(t, c.spare, trim.SpareAtCorners.String())
			assert.Equal(t, "0 in", trim.Spare.String(), "no curve is hollow")
		})
	}
}

// Lace 1 in wide round a collar whose outer edge is a whole circle, 24 5/8 in long and 25 1/8
// with a join of 1/2 in, has an outer edge that is longer by 2 pi in (derived): 31.4 in.
func TestLaceRoundARoundCollar(t *testing.T) {
	radius := 24.625 / 2 / math.Pi
	collar := fmt.Sprintf("fold = \"back\"\nback: 0,%f 0,2\nneck: %s | smooth = true\nfront: 0,-2 0,%f\nouter: %s | smooth = true\n",
		radius, places(arc(0, 0, 2, 90, -90, 8)), -radius, places(arc(0, 0, radius, -90, 90, 12)))
	trim := garmentOf(t, collar, "[trim.x]\nalong = \"front.outer\"\nwidth = 1\n").Trims[0]
	assert.Equal(t, "360 x 1: 6.28", bends(trim.Curves))
	assert.InDelta(t, 31.4, trim.Total.MM/25.4, 0.02)
	assert.Equal(t, "31 7/16 in", trim.Total.String(), "24 5/8, 6 5/16 and 1/2")
}

// A line of a piece that runs along an edge turns as the edge does; to the right of one that
// is drawn by points is beyond it, whichever way the piece lies.
func TestLaceBesideALine(t *testing.T) {
	round := places(arc(0, 0, 3, 0, 90, 45))
	back := places(arc(0, 0, 3, 0, 90, 45).Reversed())
	for _, c := range []struct{ name, line, lies, curves, spare string }{
		{"along an edge", "along = \"outer\"\ndistance = 1\n", "beyond", "90 x 1: 1.57", "0 in"},
		{"along an edge, on the piece", "along = \"outer\"\ndistance = 1\n", "on", "", "1 9/16 in"},
		{"turning left", "points = [[" + strings.ReplaceAll(round, " ", "], [") + "]]\n", "beyond", "90 x 1: 1.57", "0 in"},
		{"turning right", "points = [[" + strings.ReplaceAll(back, " ", "], [") + "]]\n", "beyond", "", "1 9/16 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			trim := garmentOf(t, quarter+"---\n\n[line.band]\n"+c.line, "[trim.x]\nalong = \"front.band\"\nwidth = 1\nlies = \""+c.lies+"\"\n").Trims[0]
			assert.Equal(t, c.curves, bends(trim.Curves))
			assert.Equal(t, c.spare, trim.Spare.String())
		})
	}
}

// Gathered half as full again, lace 1/2 in wide along 10 in takes 15 in, and round the square
// corner in their middle 2 widths more: 2 1/2 widths on each width of edge beside it are 5 on
// 2, of which the fullness is 3 (McGlauflin, Handicraft for Girls, 1910, p. 88; derived).
func TestGatheredLaceRoundASquareCorner(t *testing.T) {
	trim := garmentOf(t, "sides: 0,5 0,0 5,0\nrest: 5,0 5,5 0,5\n",
		"[trim.lace]\nalong = \"front.sides\"\nwidth = \"1/2\"\nfullness = \"1 1/2\"\njoins = 1\njoin-takes = \"1/16\"\n").Trims[0]
	assert.Equal(t, "15 in", trim.Gathered.String())
	assert.Equal(t, "90 x 1: 1.00", bends(trim.Corners))
	assert.Equal(t, "16 1/16 in", trim.Total.String())
}

// traced returns a line as it comes off a paper: a place in each mm, each up to 0.1 mm off.
func traced(line plane.Path, seed uint64) plane.Path {
	r := rand.New(rand.NewPCG(seed, 0))
	var all plane.Path
	for at := 0.0; at < line.Length()-1; at++ {
		q, _ := line.At(at)
		all = append(all, q.Add(plane.Point{X: 0.2*r.Float64() - 0.1, Y: 0.2*r.Float64() - 0.1}))
	}
	return append(all, line[len(line)-1])
}

// A line that was traced turns to and fro by far more than the line that was meant, and takes
// what that does, within a twentieth; within a tenth where a curve ends free or between
// points, and a seventh beside straight lengths, whose last points now and then look like
// a slight curve.
func TestTracedLines(t *testing.T) {
	fronts := slices.Concat(plane.Path{{X: 0, Y: 100}}, arc(50, 50, 50, 180, 270, 90), arc(350, 50, 50, 270, 360, 90), plane.Path{{X: 400, Y: 100}})
	scalloped := slices.Concat(plane.Path{{X: 0, Y: 60}}, arc(40, 20, 40, 200, 340, 90), arc(115.175, 20, 40, 200, 340, 90), plane.Path{{X: 155.175, Y: 60}})
	for _, c := range []struct {
		name    string
		line    plane.Path  // in mm
		closing plane.Point // the piece lies between it and the line
		corners int
		takes   float64 // times the width
		within  float64 // a share of that
	}{
		{"a square corner", plane.Path{{X: 0, Y: 0}, {X: 300, Y: 0}, {X: 300, Y: 100}}, plane.Point{X: 0, Y: 100}, 1, 2, 0.05},
		{"a quarter circle", arc(0, 0, 80, 0, 90, 90), plane.Point{}, 0, math.Pi / 2, 0.1},
		{"round fronts", fronts, plane.Point{X: 200, Y: 150}, 0, math.Pi, 1.0 / 7},
		// They turn by 140 degrees each, and from a line into the first, and out of the
		// last, by 20 less atan(2.412 / 53.681) = 2.57.
		{"scallops", scalloped, plane.Point{X: 80, Y: 150}, 0, (280 + 2*17.43) * math.Pi / 180, 0.1},
	} {
		t.Run(c.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				line := traced(c.line, rapid.Uint64().Draw(t, "seed"))
				closing := plane.Path{line[len(line)-1], c.closing, line[0]}
				trim := made.Of(t, "unit = \"mm\"\nallowance = 0\n"+sketch.Front("outer: "+places(line)+"\nrest: "+places(closing)+"\n")+
					"\n[trim.x]\nalong = \"front.outer\"\nwidth = 10\n").Trims[0]
				corners := 0
				for _, corner := range trim.Corners {
					corners += corner.Times
				}
				if c.name != "scallops" { // between which a point may be taken for a small corner
					require.Equal(t, c.corners, corners, "corners: %s", bends(trim.Corners))
				}
				require.InDelta(t, c.takes, trim.Takes().MM/10, c.within*c.takes, "widths, of corners %s and curves %s", bends(trim.Corners), bends(trim.Curves))
			})
		})
	}
}

// Beside a line that turns outward only, what lace takes is by how much the line at its width
// from it is longer, with corners sharp: another way to the same length.
func TestReachIsTheLengthOfTheOuterEdge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at, heading, left := plane.Point{}, rapid.Float64Range(-180, 180).Draw(t, "heading"), 170.0
		line := plane.Path{at}
		run := func(long float64) {
			sin, cos := math.Sincos(heading * math.Pi / 180)
			at = at.Add(plane.Point{X: long * cos, Y: long * sin})
			line = append(line, at)
		}
		run(rapid.Float64Range(30, 90).Draw(t, "first"))
		for range rapid.IntRange(1, 4).Draw(t, "bends") {
			turn := rapid.Float64Range(35, 110).Draw(t, "turn")
			if left -= turn; left < 0 {
				break
			}
			if rapid.Bool().Draw(t, "sharp") {
				heading += turn
			} else {
				steps := math.Ceil(turn / 2)
				radius := rapid.Float64Range(8, 120).Draw(t, "radius")
				for range int(steps) {
					heading += turn / steps / 2
					run(2 * radius * math.Sin(turn/steps*math.Pi/360))
					heading += turn / steps / 2
				}
			}
			run(rapid.Float64Range(30, 90).Draw(t, "straight"))
		}
		if line.Straightness() < 1 {
			t.Skip("no bend was drawn")
		}
		width := rapid.Float64Range(3, 40).Draw(t, "width")
		outer, ok := plane.Offset(line.Reversed(), width, 0)
		require.True(t, ok)

		reach := garment.ReachAlong(line, width)
		require.InDelta(t, outer.Path.Length()-line.Length(), reach.Takes().MM, 0.02*width+0.1, "corners %s, curves %s", bends(reach.Corners), bends(reach.Curves))
	})
}

// A hollow curve as narrow as the lace has no room for its outer edge, and that is told; a
// wider one, an inside corner and an outward curve have.
func TestLaceInANarrowHollow(t *testing.T) {
	const said = "the line has a hollow curve of 3 in radius, and lace as wide as that has no room there for its outer edge: take it narrower, or fold it there as in a corner"
	for _, c := range []struct{ name, piece, trim, want string }{
		{"wider than the radius", roundNeck, `width = 4`, said},
		{"narrower", roundNeck, `width = "2 3/4"`, ""},
		{"on the front", roundNeck, `width = 4; lies = "on"`, ""},
		{"an inside corner", sketch.SquareNeck, `width = 4`, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := garmentOf(t, c.piece, "[trim.x]\nalong = \"front.neck\"\n"+strings.ReplaceAll(c.trim, "; ", "\n")+"\n")
			var said []string
			for _, r := range p.Remarks {
				if r.Key == "trim.x" {
					said = append(said, r.Text)
				}
			}
			assert.Equal(t, c.want, strings.Join(said, "\n"))
		})
	}
}
