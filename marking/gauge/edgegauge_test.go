package gauge

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// laidBack returns a path of a gauge as it lies on the piece, given where the gauge
// begins and ends along the edge.
func laidBack(path, edge plane.Path, part piece.Stretch) plane.Path {
	from, _ := edge.At(part.From)
	to, _ := edge.At(part.To)
	u := to.Sub(from).Unit()
	var back plane.Path
	for _, q := range path {
		back = append(back, from.Add(u.Mul(q.X)).Add(u.Left().Mul(q.Y)))
	}
	return back
}

const (
	near = 0.01 // mm: how far the two sides may be from the allowance apart
	// cornerPass is how much nearer an offset may lie where one rounded corner passes
	// into another, in mm, as plane.Offset has it.
	cornerPass = 0.0051
)

// bends is how an edge bends, which is how closely its gauge can be held against it.
type bends struct {
	// even: the two sides keep the allowance on the inner side throughout.
	even bool
	// curved: the stitch line passes by nothing but the insides of curves, where a sharp
	// corner has places that keep the allowance and lie behind where the line meets itself.
	curved bool
	// tight: the corners of the inner side may leave no room for a join.
	tight bool
}

// gentle is how an edge bends that does so nowhere as tightly as its allowance.
var gentle = bends{even: true, curved: true}

// heldEdge is an edge against which the parts of its gauge are held.
type heldEdge struct {
	path      plane.Path
	tree      *plane.Tree
	allowance float64
	parts     []piece.Stretch
	is        bends
}

// requireEdgeGauge holds the gauge of an edge against the edge.
func requireEdgeGauge(t require.TestingT, g *gaugedEdge, pattern *garment.Pattern, is bends) {
	e := g.edge()
	s, ok := newStrip(g.piece, g.index)
	require.True(t, ok)
	most, overlap := 152.4, 19.05
	if pattern.Unit != length.Inch {
		most, overlap = 150, 20
	}
	parts, all := s.divide(most, overlap), g.strips(pattern)
	if is.tight { // among deep corners there may be no place to divide it
		most *= 2
	}
	require.Len(t, all, len(parts), "parts")
	edge := heldEdge{e.Path, plane.NewTree(e.Path), e.Allowance, parts, is}
	require.Zero(t, parts[0].From, "the beginning of the edge has no gauge")
	require.InDelta(t, edge.tree.Length(), parts[len(parts)-1].To, 1e-9, "the end of the edge has no gauge")
	var before plane.Path // the last tick of the part before
	for k, part := range parts {
		requireCard(t, all[k])
		require.LessOrEqual(t, part.To-part.From, most+1e-3, "part %d is too long", k+1)
		if k > 0 {
			require.GreaterOrEqual(t, parts[k-1].To-part.From, overlap-1e-6, "the overlap before part %d", k+1)
			require.Greater(t, part.From, parts[k-1].From)
		}
		outer := laidBack(pathNamed(t, all[k], "cutting line"), e.Path, part)
		inner := laidBack(pathNamed(t, all[k], "stitch line"), e.Path, part)
		edge.requireSides(t, k, outer, inner)
		edge.requireSquareEnds(t, k, outer, inner)
		before = edge.requireTicks(t, k, pathsOf(all[k], mark.Match), before, overlap)
	}
}

// requireSides: the outer side of a part is the cutting line, and its inner side keeps the
// allowance from it.
func (e heldEdge) requireSides(t require.TestingT, k int, outer, inner plane.Path) {
	require.InDelta(t, e.parts[k].To-e.parts[k].From, outer.Length(), 1e-6, "length of part %d", k+1)
	for _, q := range sketch.Places(outer, 5) {
		require.Less(t, e.tree.Distance(q, 1), 1e-6, "part %d: %v is not on the cutting line", k+1, q)
	}
	for _, q := range sketch.Places(inner, 1) {
		away := e.tree.Distance(q, math.Inf(1))
		require.GreaterOrEqual(t, away, e.allowance-cornerPass, "part %d: %v is too near to the cutting line", k+1, q)
		if e.is.even {
			require.InDelta(t, e.allowance, away, near, "part %d: %v", k+1, q)
		}
	}
	inside := plane.NewTree(inner)
	for i := 1; i < len(outer); i++ {
		q, left := outer[i-1].Toward(outer[i], 0.5), outer[i].Sub(outer[i-1]).Unit().Left()
		away := inside.Distance(q, math.Inf(1))
		require.GreaterOrEqual(t, away, e.allowance-cornerPass, "part %d: the inner side is too near to %v", k+1, q)
		// Away from a tight curve nothing of the edge is nearer to the place beside q.
		if e.is.curved && e.tree.Distance(q.Add(left.Mul(e.allowance)), math.Inf(1)) > e.allowance-1e-6 {
			require.InDelta(t, e.allowance, away, near, "part %d: the inner side beside %v", k+1, q)
		}
	}
}

// requireSquareEnds: where the gauge is divided it is cut off square.
func (e heldEdge) requireSquareEnds(t require.TestingT, k int, outer, inner plane.Path) {
	var ends [][3]plane.Point // on the cutting line, on the stitch line; which way the edge runs
	if k > 0 {
		ends = append(ends, [3]plane.Point{outer[0], inner[len(inner)-1], outer.StartDirection()})
	}
	if k+1 < len(e.parts) {
		ends = append(ends, [3]plane.Point{outer[len(outer)-1], inner[0], outer.EndDirection()})
	}
	for _, end := range ends {
		require.InDelta(t, e.allowance, end[0].Distance(end[1]), 2*near, "an end is not as long as the allowance")
		if e.is.even { // at a sharp corner there are two directions
			require.InDelta(t, 0, end[1].Sub(end[0]).Unit().Dot(end[2]), 0.05, "an end is not square to the cutting line")
		}
	}
}

// requireTicks: two parts have ticks at one place, square to the cutting line, not at
// their ends. It returns the last tick of a part that another follows.
func (e heldEdge) requireTicks(t require.TestingT, k int, ticks []plane.Path, before plane.Path, overlap float64) plane.Path {
	part := e.parts[k]
	want := 2
	if k == 0 {
		want--
	}
	if k+1 == len(e.parts) {
		want--
	}
	require.Len(t, ticks, want, "ticks of part %d", k+1)
	if k > 0 {
		first := laidBack(ticks[0], e.path, part)
		for i := range first {
			require.Less(t, first[i].Distance(before[i]), 1e-6, "the ticks before part %d are not at one place", k+1)
		}
	}
	if !e.is.tight {
		for _, tick := range ticks {
			_, along := e.tree.Nearest(laidBack(tick, e.path, part)[0])
			require.Greater(t, min(along-part.From, part.To-along), overlap/5, "a tick of part %d lies at its end", k+1)
		}
	}
	if k+1 == len(e.parts) {
		return nil
	}
	last := laidBack(ticks[len(ticks)-1], e.path, part)
	require.Less(t, e.tree.Distance(last[0], 1), 1e-6, "the tick of part %d does not begin on the cutting line", k+1)
	require.InDelta(t, e.allowance, last[0].Distance(last[1]), 2*near, "the tick of part %d is not square", k+1)
	return last
}

// Of a gauge in parts one may not be cut, where the edge turns so tightly that its sides would meet.
// The others have the numbers and the ends that they have among all, and say which one is missing.
func TestNumbersWhereAPartIsMissing(t *testing.T) {
	for name, c := range map[string]struct {
		path      plane.Path
		allowance float64
		want      string
	}{
		"the first of two": {plane.Path{{}, {X: -32, Y: -34}, {X: 12, Y: -49}, {X: 28, Y: -6}, {X: -13, Y: 16}, {X: -57}}, 20,
			"Tab curl: gauge 2 of 2 / begins 41 mm along the edge from the corner with top, and ends at the corner with side / gauge 1 cannot be cut, for its sides would meet: measure with a ruler there"},
		"the last of two": {plane.Path{{}, {X: 23, Y: -5}, {X: 45, Y: 1}, {X: 59, Y: -18}, {X: 81, Y: -25}, {X: 91, Y: -46}, {X: 68, Y: -51}, {X: 70, Y: -28}}, 15,
			"Tab curl: gauge 1 of 2 / to gauge 2 / top end / begins at the corner with top / gauge 2 cannot be cut, for its sides would meet: measure with a ruler there"},
		"the last of three": {plane.Path{{}, {X: -12, Y: -50}, {X: -22, Y: -100}, {X: 14, Y: -138}, {X: 19, Y: -87}, {X: 5, Y: -38}, {X: 52, Y: -17}}, 10,
			"Tab curl: gauge 1 of 3 / begins at the corner with top\nTab curl: gauge 2 of 3 / begins 96 mm along the edge from the corner with top / gauge 3 cannot be cut, for its sides would meet: measure with a ruler there"},
	} {
		t.Run(name, func(t *testing.T) {
			p := &piece.Piece{Key: "tab", Name: "Tab", Edges: []piece.Edge{{Key: "curl", Path: c.path, Allowance: c.allowance}, {Key: "side"}, {Key: "top"}}}
			var told []string
			for _, m := range (&gaugedEdge{piece: p}).cards(&garment.Pattern{Unit: length.Millimetre}) {
				said := []string{m.Name}
				for _, one := range m.Marks {
					if strings.HasPrefix(one.Name, "to gauge") || strings.HasSuffix(one.Name, " end") {
						said = append(said, one.Name)
					}
				}
				told = append(told, strings.Join(append(said, m.Notes[1:]...), " / "))
			}
			assert.Equal(t, c.want, strings.Join(told, "\n"))
		})
	}
}

// The neck of a front, in mm: the centre at x = 0, the hem at y = 0, all of it turned by
// some angle.
func TestEdgeGaugesOfRandomNecks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, from, to float64) float64 {
			return math.Round(rapid.Float64Range(from, to).Draw(t, name)*100) / 100
		}
		angle := draw("angle", -3, 3)
		write := func(all ...plane.Point) string { return sketch.TurnedPoints(angle, all...) }
		allowance := math.Round(draw("allowance", 0.5, 15)*10) / 10
		hem, high := plane.Point{X: draw("hem", 120, 190)}, plane.Point{Y: draw("height", 200, 320)}
		neck := high.Add(plane.Point{X: draw("neck", 40, 70), Y: draw("rise", 5, 60)})
		bend := plane.Point{X: neck.X / 2, Y: high.Y + (neck.Y-high.Y)*draw("bend", 0.35, 0.6)}
		shoulder := neck.Add(plane.Point{X: draw("shoulder", 20, 80), Y: -draw("drop", 0, 30)})
		head := rapid.SampledFrom([]string{"", "fold = \"centre\"\n"}).Draw(t, "fold")
		text := fmt.Sprintf("unit = \"mm\"\nallowance = %v\n", allowance) + sketch.Front(head+"centre: "+write(plane.Point{}, high)+
			"\nneck: "+write(high, bend, neck)+" | smooth = true; marked = true\nshoulder: "+write(neck, shoulder)+"\nside: "+write(shoulder, hem)+"\nhem: "+write(hem, plane.Point{})+"\n---\n")
		pattern, err := made.Pattern(text)
		if err != nil {
			t.Skip("too wide an allowance") // it is the matter of other tests
		}
		all := gaugedEdges(pattern)
		require.NotEmpty(t, all, "the neck is marked\n%s", text)
		for _, g := range all {
			requireEdgeGauge(t, g, pattern, gentle)
		}
	})
}

// A long edge that waves, tighter than its allowance in places, smooth or with corners.
func TestEdgeGaugesOfRandomWaves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		smooth := rapid.Bool().Draw(t, "smooth")
		unit := rapid.SampledFrom([]string{"mm", "in"}).Draw(t, "unit")
		scale := map[string]float64{"mm": 1, "in": 25.4}[unit]
		allowance := math.Round(rapid.Float64Range(1, 30).Draw(t, "allowance"))
		n := rapid.IntRange(2, 9).Draw(t, "points")
		step := rapid.Float64Range(15, 120).Draw(t, "step")
		angle := rapid.Float64Range(-3, 3).Draw(t, "angle")
		points := []plane.Point{{X: -20}}
		for i := range n {
			points = append(points, plane.Point{X: float64(i) * step, Y: rapid.Float64Range(-40, 40).Draw(t, "y")})
		}
		end := float64(n-1)*step + 20
		points = append(points, plane.Point{X: end})
		write := func(all ...plane.Point) string {
			var scaled []plane.Point
			for _, q := range all {
				scaled = append(scaled, q.Mul(1/scale))
			}
			return sketch.TurnedPoints(angle, scaled...)
		}
		at := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
		text := fmt.Sprintf("unit = %q\nallowance = 0\n", unit) + sketch.Front("wave: "+write(points...)+
			fmt.Sprintf(" | allowance = \"%v mm\"; marked = true; smooth = %v", allowance, smooth)+
			"\nright: "+write(at(end, 0), at(end, 500))+"\ntop: "+write(at(end, 500), at(-20, 500))+"\nleft: "+write(at(-20, 500), at(-20, 0))+"\n---\n")
		pattern, err := made.Pattern(text)
		if err != nil {
			t.Skip("not to be sewn")
		}
		all := gaugedEdges(pattern)
		require.Len(t, all, 1, text)
		// A wave of corners is not held to the allowance at those that stand out.
		requireEdgeGauge(t, all[0], pattern, bends{curved: smooth, tight: step < 4*allowance})
	})
}

// The length of an edge along x, with a marked stitch line, and what its parts are.
func TestPartsOfAnEdgeGauge(t *testing.T) {
	for _, c := range []struct {
		name  string
		unit  string
		long  float64 // in the unit
		parts []float64
	}{
		{"as long as one", "in", 6, []float64{6}},
		{"hardly longer", "in", 6.25, []float64{3.5, 3.5}},
		{"shorter than an overlap", "in", 0.25, []float64{0.25}},
		{"as long as two", "in", 11.25, []float64{6, 6}},
		{"three", "in", 12, []float64{4.5, 4.5, 4.5}},
		{"metric, as long as one", "mm", 150, []float64{150}},
		{"metric, three", "mm", 320, []float64{120, 120, 120}},
		{"centimetres, two", "cm", 28, []float64{15, 15}},
	} {
		t.Run(c.name, func(t *testing.T) {
			at := func(x, y float64) string { return fmt.Sprintf("%v,%v", x, y) }
			up := 100 * c.long
			pattern := made.Of(t, fmt.Sprintf("unit = %q\nallowance = 0\n", c.unit)+sketch.Front("a: "+at(0, 0)+" "+at(c.long, 0)+" | allowance = \"2 mm\"; marked = true\nb: "+
				at(c.long, 0)+" "+at(c.long, up)+"\nc: "+at(c.long, up)+" "+at(0, up)+"\nd: "+at(0, up)+" "+at(0, 0)+"\n---\n"))
			all := edgeGauges(pattern)
			var long []float64
			for _, m := range all {
				requireCard(t, m)
				long = append(long, cutLength(m)/pattern.Unit.MM())
			}
			require.Len(t, long, len(c.parts))
			for i := range long {
				assert.InDelta(t, c.parts[i], long[i], 1e-9, "part %d", i+1)
			}
			requireEdgeGauge(t, gaugedEdges(pattern)[0], pattern, gentle)
		})
	}
}

// Beside an inner corner of the edge nothing can be cut off square, so the join moves
// back from it: by 1 in before the corner the stitch line is no longer square to it.
func TestAGaugeIsNotDividedInACorner(t *testing.T) {
	pattern := made.Of(t, "allowance = 0\n"+sketch.Front("sides: 10,10 10,4.375 0,4.375 0,10 | allowance = 1; marked = true\ntop: 0,10 10,10\n---\n"))
	g := gaugedEdges(pattern)[0]
	requireEdgeGauge(t, g, pattern, gentle)
	s, ok := newStrip(g.piece, g.index)
	require.True(t, ok)
	for _, part := range s.divide(152.4, 19.05)[:1] {
		// Past the place beside the inner corner the cut is longer than the allowance: by
		// less than can be cut, for a little.
		little := math.Sqrt(2 * 25.4 * near)
		assert.LessOrEqual(t, part.To, 4.625*25.4+little, "it ends beside the corner at 5 5/8 in")
		assert.Greater(t, part.To, 4.625*25.4-1)
	}
}

// Three sides of a pocket, 10 cm and 9 cm long. Three even parts of 11 cm would be
// divided 1 cm before and behind each corner: the inner corner lies beside both places,
// and no tick between them would be square. So the parts end before the corners.
func TestGaugesOfAPocket(t *testing.T) {
	pattern := withMarkedPocket(t, "nightgown.toml")
	for _, g := range gaugedEdges(pattern) {
		if g.piece.Name != "Pocket" {
			continue
		}
		requireEdgeGauge(t, g, pattern, gentle)
		s, ok := newStrip(g.piece, g.index)
		require.True(t, ok)
		var parts []string
		for _, part := range s.divide(150, 20) {
			parts = append(parts, pattern.Unit.OnRuler(part.From)+" to "+pattern.Unit.OnRuler(part.To))
		}
		assert.Equal(t, []string{"0 cm to 9 cm", "7 cm to 18 cm", "16 cm to 29 cm"}, parts)
		return
	}
	assert.Fail(t, "the pocket has no gauge")
}

// withMarkedPocket is an example; the straight sides of its pocket, if it has one,
// are marked.
func withMarkedPocket(t testing.TB, name string) *garment.Pattern {
	pattern := made.Example(t, name)
	for i := range pattern.Pieces {
		piece := &pattern.Pieces[i]
		if e := piece.EdgeNumber("sides"); piece.Name == "Pocket" && e >= 0 {
			piece.Edges[e].Marked = true
		}
	}
	return pattern
}

func TestEdgesThatShareAGauge(t *testing.T) {
	// A curve along x from one place to another, beside which the piece lies above.
	curve := func(key string, x, lift float64, mirrored bool) string {
		second := 30.0
		if mirrored {
			second = 70
		}
		return fmt.Sprintf("[piece.%s]\n[piece.%s.edge.curve]\npoints = [[%v, 0], [%v, %v], [%v, 0]]\nsmooth = true\n", key, key, x, x+second, lift, x+100) +
			fmt.Sprintf("[piece.%s.edge.rest]\npoints = [[%v, 0], [%v, 200], [%v, 200], [%v, 0]]\nallowance = 0\n", key, x+100, x+100, x, x)
	}
	upsideDown := "[piece.down]\n[piece.down.edge.curve]\npoints = [[0, 0], [-30, -15], [-100, 0]]\nsmooth = true\n" +
		"[piece.down.edge.rest]\npoints = [[-100, 0], [-100, -200], [0, -200], [0, 0]]\nallowance = 0\n"
	for _, c := range []struct {
		name, other string
		alike       bool
	}{
		{"moved", curve("other", 500, 15, false), true},
		{"turned about", upsideDown, true},
		{"turned over", curve("other", 0, 15, true), false},
		{"hardly different", curve("other", 0, 15.05, false), true},
		{"different", curve("other", 0, 15.5, false), false},
		{"bent to the other side", curve("other", 0, -15, false), false},
		{"another allowance", curve("other", 0, 15, false) + "\n[piece.other.edge.more]", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := "unit = \"mm\"\nallowance = 8\n" + curve("one", 0, 15, false) + c.other
			if strings.Contains(text, "edge.more") {
				text = strings.Replace(strings.TrimSuffix(text, "\n[piece.other.edge.more]"), "[piece.other.edge.curve]\n", "[piece.other.edge.curve]\nallowance = 8.5\n", 1)
			}
			pattern := made.Of(t, text)
			all := edgeGauges(pattern)
			if !c.alike {
				assert.Len(t, all, 2)
				return
			}
			require.Len(t, all, 1)
			assert.Equal(t, "the same for the curve of "+pattern.Pieces[1].Name, all[0].Told()[1])
		})
	}
}

func TestNotesOfAnEdgeGauge(t *testing.T) {
	for _, c := range []struct {
		example, name string
		want          []string
	}{
		{"pinafore.toml", "Front neck: gauge", []string{
			"for the neck of Front: allowance 3/8 in",
			"reaches from the corner with shoulder to the corner with centre front",
			"lay it on before the tucks and pleats that run into the edge are in",
			"turn it over for the other half",
		}},
		{"pinafore.toml", "Back armhole: gauge 1 of 2", []string{
			"for the armhole of Back: allowance 3/8 in",
			"begins at the corner with side",
			"where one is for the left and one for the right, turn it over for the second",
		}},
		{"smock.toml", "Front armhole: gauge", []string{
			"for the armhole of Front: allowance 3/8 in",
			"the same for the armhole of Back",
			"reaches from the corner with side to the corner with shoulder",
			"turn it over for the other half, and for the second where one is for the left and one for the right",
		}},
		{"nightgown.toml", "Skirt front hem: gauge 2 of 3", []string{
			"for the hem of Skirt front: allowance 1 cm",
			"the same for the hem of Skirt back",
			"begins 9 cm along the edge from the corner with centre",
			"turn it over for the other half",
		}},
		{"nightgown.toml", "Pocket sides: gauge 3 of 3", []string{
			"for the sides of Pocket: allowance 1 cm",
			"begins 16 cm along the edge from the corner with top, and ends at the corner with top",
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, m := range Of(withMarkedPocket(t, c.example)) {
				if m.Name == c.name {
					assert.Equal(t, c.want, m.Told())
					return
				}
			}
			assert.Fail(t, "no gauge of that name")
		})
	}
}

// What every gauge is used for is told once, and only of those that there are.
func TestWorkWithGauges(t *testing.T) {
	const out, ticks = "Cut the gauges out in card", "Where another gauge follows, draw the tick too, and lay its tick on that"
	const draw = "Draw the stitch line along an edge gauge, its hatched side on the cut edge, its handle off the cloth"
	told := func(all []mark.Marking) map[string]int {
		by := map[string]int{}
		for _, task := range Work(all) {
			by[task.Do] = len(task.Keys)
		}
		return by
	}
	all := Of(withMarkedPocket(t, "nightgown.toml")) // of a hem and a pocket in three parts each
	assert.Equal(t, map[string]int{out: 12, draw: 11, ticks: 6}, told(all))
	assert.Equal(t, map[string]int{out: 1}, told(all[len(all)-1:]), "the straight gauge")
	assert.Empty(t, told(nil))
	assert.Empty(t, told([]mark.Marking{{Key: "front", Kind: mark.Piece}}))
	template := mark.Marking{Key: "front template", Kind: mark.Template}
	assert.Equal(t, map[string]int{out: 12, strings.Replace(draw, "Draw the stitch line", "Where no stitch line is drawn yet, draw it", 1): 11, ticks: 6}, told(append(all, template)))
}

func TestANarrowStripSaysSo(t *testing.T) {
	const narrow = "paste it on stiff card before it is cut out, for its strip is narrow"
	for allowance, want := range map[string]bool{"1/16": true, "7/64": true, "1/8": false, "2.9 mm": true, "0.001": true} {
		pattern := made.Of(t, "allowance = "+fmt.Sprintf("%q", allowance)+"\n"+sketch.Front(dipped))
		all := edgeGauges(pattern)
		require.Len(t, all, 2, allowance)
		for _, m := range all {
			requireCard(t, m)
			assert.Equal(t, want, slices.Contains(m.Steps, narrow), "an allowance of %s", allowance)
		}
	}
}

// The gauge of two edges that are alike says of either what has to be seen to: here the
// tucks of the second, which run up into its neck.
func TestAGaugeOfTwoEdgesSpeaksForBoth(t *testing.T) {
	plain := strings.TrimSuffix(dipped, "---\n\n")
	pattern := made.Of(t, "allowance = 0.375\n"+sketch.Piece("front", plain)+
		sketch.Piece("back", sketch.Swap(plain, "Front", "Back")+"---\n\n"+sketch.Tucked("left", "1/8", 3, "1", "")))
	notes := edgeGauges(pattern)[0].Told()
	assert.Contains(t, notes, "the same for the neck of Back")
	assert.Contains(t, notes, "lay it on before the tucks and pleats that run into the edge are in")
}
