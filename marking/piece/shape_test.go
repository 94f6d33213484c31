package piece_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

func TestFlatPiecesFoldIntoTheFinishedOnes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := randomFront(t)
		piece := c.piece(t, "finished", c.text)
		flat := piece.Flat.Outline.Path
		if !flat.Closed() {
			t.Fatalf("the flat outline is open")
		}
		tree := plane.NewTree(flat)
		if at, _, _, crosses := plane.SelfCrossing(tree); crosses {
			t.Fatalf("the flat outline crosses itself at %v", c.local(at))
		}
		if flat.Area() <= 0 {
			t.Fatalf("the flat outline is clockwise")
		}
		if len(piece.Flat.Outline.Edges) != len(flat)-1 {
			t.Fatalf("%d segments, %d edges", len(flat)-1, len(piece.Flat.Outline.Edges))
		}
		if !c.mixed() {
			bounds := plane.Path{}
			for _, q := range flat {
				bounds = append(bounds, c.local(q))
			}
			box := bounds.Bounds()
			for range 40 {
				q := plane.Point{
					X: rapid.Float64Range(box.Min.X, box.Max.X).Draw(t, "x"),
					Y: rapid.Float64Range(box.Min.Y, box.Max.Y).Draw(t, "y"),
				}
				at, _, open := c.folded(q)
				if open || c.nearBreak(q) || c.onFold && q.X < 1e-3 {
					continue
				}
				onFlat, onPiece := sketch.Turned(q, c.angle), sketch.Turned(at, c.angle)
				if tree.Nearer(onFlat, 1e-3) || piece.Tree.Nearer(onPiece, 1e-3) {
					continue
				}
				if got, want := tree.Holds(onFlat), piece.Tree.Holds(onPiece); got != want {
					t.Fatalf("%v folds to %v: on the flat piece %v, on the finished piece %v", q, at, got, want)
				}
			}
		}
		c.checkArea(t, piece)
		c.checkEdges(t, piece)
	})
}

// checkArea holds the area of the flat front against the finished one's and what
// the flaps hold: twice each, on either side where the piece is half of one.
func (c frontCase) checkArea(t *rapid.T, p *piece.Piece) {
	if c.mixed() {
		return
	}
	var finished plane.Path
	for _, q := range p.Outline {
		finished = append(finished, c.local(q))
	}
	const far = 1e4
	type band struct {
		from, to, times float64
		level, top      float64
	}
	bands := func(s strips, least float64) []band {
		all := []band{{least, far, 1, -far, far}}
		for _, one := range s.all {
			from, to := one.seam, one.seam+one.width
			if one.toward {
				from, to = one.seam-one.width, one.seam
			}
			all = append(all, band{from, to, 2, max(one.level, -far), min(one.top, far)})
			if s.mirrored && from < 0 {
				all[len(all)-1].from = 0
				all = append(all, band{0, -from, 2, max(one.level, -far), min(one.top, far)})
			}
		}
		return all
	}
	want := 0.0
	for _, x := range bands(c.across, -far) {
		for _, y := range bands(c.up, -far) {
			want += x.times * y.times * areaIn(finished, x.from, x.to, max(y.from, x.level), min(y.to, x.top))
		}
	}
	// Where a strip is open the piece is spread by it.
	const thin = 1e-3
	for _, one := range c.across.all {
		if one.level > -far {
			from := one.seam
			if from < thin {
				from = thin
			}
			want += 2 * one.width * areaIn(finished, from-thin, from+thin, -far, one.level) / (2 * thin)
			want += 2 * one.width * areaIn(finished, from-thin, from+thin, one.top, far) / (2 * thin)
		}
	}
	if got := p.Flat.Outline.Path.Area(); math.Abs(got-want) > 1e-5*want+0.05 {
		t.Fatalf("the flat piece has %v mm², not %v", got, want)
	}
}

// areaIn returns the area of what a shape has inside a rectangle.
func areaIn(p plane.Path, x0, x1, y0, y1 float64) float64 {
	if x1 <= x0 || y1 <= y0 {
		return 0
	}
	clip := func(p plane.Path, inside func(plane.Point) float64) plane.Path {
		var q plane.Path
		for i := 1; i < len(p); i++ {
			a, b := inside(p[i-1]), inside(p[i])
			if a >= 0 {
				q = append(q, p[i-1])
			}
			if (a >= 0) != (b >= 0) {
				q = append(q, p[i-1].Toward(p[i], a/(a-b)))
			}
		}
		if len(q) > 0 {
			q = append(q, q[0])
		}
		return q
	}
	p = clip(p, func(q plane.Point) float64 { return q.X - x0 })
	p = clip(p, func(q plane.Point) float64 { return x1 - q.X })
	p = clip(p, func(q plane.Point) float64 { return q.Y - y0 })
	p = clip(p, func(q plane.Point) float64 { return y1 - q.Y })
	return math.Abs(p.Area())
}

// checkEdges holds what each edge of the flat front measures outside the strips
// against the finished one; and what it is said to measure with the folds in, which
// is more by what is spread below an end line.
func (c frontCase) checkEdges(t *rapid.T, p *piece.Piece) {
	outside, open := map[int]float64{}, map[int]float64{}
	for _, run := range p.Flat.Outline.Runs() {
		for i := 1; i < len(run.Path); i++ {
			a, b := c.local(run.Path[i-1]), c.local(run.Path[i])
			for _, s := range c.between(a, b) {
				_, taken, spread := c.folded(a.Toward(b, (s.From+s.To)/2))
				l := (s.To - s.From) * a.Distance(b)
				switch {
				case spread:
					open[run.Edge] += l
				case !taken:
					outside[run.Edge] += l
				}
			}
		}
	}
	for i, e := range p.Edges {
		if e.Key == "centre" && len(c.across.all) > 0 && c.across.all[0].near == 0 {
			continue // it may lie along a seam, and so may any of its parts
		}
		if want := e.Path.Length(); math.Abs(outside[i]-want) > 1e-3 {
			t.Fatalf("outside the strips %q measures %v, and finished %v", e.Key, outside[i], want)
		}
		if c.seamAt(e.Path[0]) || c.seamAt(e.Path[len(e.Path)-1]) {
			continue // what is spread there may count with either edge
		}
		if want := outside[i] + open[i]; math.Abs(e.FinishedLength-want) > 1e-3 && !c.mixed() {
			t.Fatalf("with its folds in %q is said to measure %v, not %v", e.Key, e.FinishedLength, want)
		}
	}
}

// between cuts a straight line of the flat front wherever it may enter a strip.
func (c frontCase) between(a, b plane.Point) []piece.Stretch {
	at := []float64{0, 1}
	cut := func(from, to, level float64) {
		if (from < level) != (to < level) {
			at = append(at, (level-from)/(to-from))
		}
	}
	for _, one := range c.across.all {
		cut(a.X, b.X, one.near)
		cut(a.X, b.X, one.near+2*one.width)
		ya, _, _ := c.up.folded(a.Y, 0)
		yb, _, _ := c.up.folded(b.Y, 0)
		cut(ya, yb, one.level)
		cut(ya, yb, one.top)
	}
	for _, one := range c.up.all {
		cut(a.Y, b.Y, one.near)
		cut(a.Y, b.Y, one.near+2*one.width)
	}
	slices.Sort(at)
	var all []piece.Stretch
	for i := 1; i < len(at); i++ {
		all = append(all, piece.Stretch{From: at[i-1], To: at[i]})
	}
	return all
}

// Drawn flat as it came out, with the same tucks and pleats, the front measures
// what the finished one did.
func TestFlatDrawnAsFinished(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := randomFront(t)
		p := c.piece(t, "finished", c.text)
		head := ""
		if c.onFold {
			head = "fold = \"centre\"\n"
		}
		// An edge that the folds part keeps its name in its last part, which
		// reaches the centre.
		text, times := "", map[string]int{}
		runs := p.Flat.Outline.Runs()
		for i := len(runs) - 1; i >= 0; i-- {
			key := p.Edges[runs[i].Edge].Key
			if path := runs[i].Path; path[0].Distance(path[len(path)-1]) < 0.2 {
				return // too short an edge for a file
			}
			if off := runs[i].Path.Straightness(); off > 0.005 && off <= 0.25 {
				return // its steps are so small that it is taken for a straight line that was traced
			}
			times[key]++
			if n := times[key]; n > 1 {
				key = fmt.Sprintf("%s %d", key, n)
			}
			var local []plane.Point
			for _, q := range runs[i].Path {
				// What lies nearer is one point to a file.
				if q = c.local(q); len(local) > 0 && q.Distance(local[len(local)-1]) < 2*0.001 {
					local = local[:len(local)-1]
				}
				local = append(local, q)
			}
			text += key + ": " + sketch.TurnedPoints(c.angle, local...) + "\n"
		}
		again := c.piece(t, "flat", head+text+"---\n")
		if len(c.across.all)+len(c.up.all) == 0 {
			return
		}
		if got, want := again.FinishedOutline.Bounds(), p.Outline.Bounds(); got.Min.Distance(want.Min) > 0.01 || got.Max.Distance(want.Max) > 0.01 {
			t.Fatalf("folded again it lies over %v, not %v", got, want)
		}
		folded := map[string]float64{}
		for _, e := range again.Edges {
			key, _, _ := strings.Cut(e.Key, " ")
			folded[key] += e.FinishedLength
		}
		for _, e := range p.Edges {
			if math.Abs(folded[e.Key]-e.FinishedLength) > 0.01 {
				t.Fatalf("with its folds in %q measures %v, and drawn flat %v", e.Key, e.FinishedLength, folded[e.Key])
			}
		}
		for i, tuck := range again.TuckRows {
			for k, one := range tuck.Folds {
				if math.Abs(one.Stitching-p.TuckRows[i].Folds[k].Stitching) > 1e-6 {
					t.Fatalf("tuck %d is stitched %v from its base, not %v", k, one.Stitching, p.TuckRows[i].Folds[k].Stitching)
				}
			}
		}
	})
}

// A line drawn on the finished front lies on the flat one wherever it folds back to
// itself, and on all of it.
func TestLinesComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := randomFront(t)
		if c.mixed() {
			return
		}
		x := rapid.Float64Range(1, 15)
		a := plane.Point{X: x.Draw(t, "ax"), Y: rapid.Float64Range(20, 180).Draw(t, "ay")}
		b := plane.Point{X: 35 + x.Draw(t, "bx")/10, Y: rapid.Float64Range(20, 180).Draw(t, "by")}
		ends := strings.Fields(sketch.TurnedPoints(c.angle, a, b))
		c.rows = fmt.Sprintf("\n[line.ruled]\npoints = [[%s], [%s]]\n", ends[0], ends[1]) + c.rows
		piece := c.piece(t, "finished", c.text)
		drawn := piece.Line("ruled").Path
		tree := plane.NewTree(drawn)
		var parts []*plane.Tree
		for _, m := range piece.Flat.Marks {
			if m.Role != mark.Fold {
				continue
			}
			parts = append(parts, plane.NewTree(m.Path))
			for i := 1; i < len(m.Path); i++ {
				middle := c.local(m.Path[i-1].Toward(m.Path[i], 0.37))
				at, _, open := c.folded(middle)
				if open || c.nearBreak(middle) {
					continue
				}
				if away := tree.Distance(sketch.Turned(at, c.angle), 10); away > 1e-3 {
					t.Fatalf("%v lies on the flat line and folds to %v, which lies %v mm beside it", middle, at, away)
				}
			}
		}
		for k := range 20 {
			q := c.local(tree.At(tree.Length() * (float64(k) + 0.5) / 20))
			// Its place beside every strip.
			flat := q
			for _, one := range c.across.all {
				if q.X > one.seam {
					flat.X = q.X + one.near - one.seam + 2*one.width
				}
			}
			for _, one := range c.up.all {
				if q.Y > one.seam {
					flat.Y = q.Y + one.near - one.seam + 2*one.width
				}
			}
			nearest := 10.0
			for _, p := range parts {
				nearest = p.Distance(sketch.Turned(flat, c.angle), nearest)
			}
			if nearest > 1e-3 && !c.nearBreak(flat) {
				t.Fatalf("%v lies at %v on the flat piece, %v mm beside every part of its line", q, flat, nearest)
			}
		}
	})
}

// Without tucks or pleats a piece drawn finished is the piece drawn flat, to the
// bit.
func TestFinishedWithoutFolds(t *testing.T) {
	for _, text := range []string{sketch.Yoke(), sketch.Pleated()} {
		outline, _, _ := strings.Cut(text, "\n[tuck")
		flat, finished := sketched(t, "0.375", outline), sketched(t, "0.375", "drawn = \"finished\"\n"+outline)
		require.Equal(t, flat.Flat, finished.Flat)
		for i := range flat.Edges {
			require.Equal(t, flat.Edges[i].FinishedLength, finished.Edges[i].FinishedLength)
		}
	}
}

// seamAt reports whether the seam of a strip runs through a corner of the finished piece.
func (c frontCase) seamAt(corner plane.Point) bool {
	return slices.ContainsFunc(c.across.all, func(one oneStrip) bool { return math.Abs(c.local(corner).X-one.seam) < 1e-3 })
}
