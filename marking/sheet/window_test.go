package sheet

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// Tucks that end inside the piece are ticked where they come out, and have a hole at
// the end of each line, beyond which nothing is ruled: there is no tick at the foot. Their end
// line needs none of its own, and no window.
func TestTucksThatEndHaveHoles(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "fold = \"left\"\n"+oblongPiece+"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 2\nfirst = 1\nspacing = \"3/8\"\nsewn = \"twin needle\"\nbelow = \"top\"\nlength = 3\n")
	assert.Contains(t, linesOf(m, mark.TuckFold), "1,10 1,9.764", "a tick at the top")
	assert.NotContains(t, linesOf(m, mark.TuckFold), "1,0 1,0.236", "none at the foot")
	ends := map[string]bool{}
	for _, line := range m.Marks {
		if line.Role == mark.Prick {
			ends[sketch.Inches(line.Path[:1])] = true
		}
	}
	assert.True(t, ends["1,6.625"] && ends["1.375,6.625"], "holes at the ends, 3 in below the stitch line: %v", ends)
	assert.Len(t, ends, 2, "%v", ends)
	assert.Empty(t, linesOf(m, mark.Window))
	assert.Contains(t, m.Steps, "rule the line between two ticks, two dots, or a tick and a dot, and no farther")
}

// A line with a corner is near a hole in more than one place: all of them are clear, and it
// comes to an end.
func TestWindowsKeepClearOfAHoleOverACorner(t *testing.T) {
	ring := plane.NewTree(plane.Path{{}, {X: 300}, {X: 300, Y: 300}, {Y: 300}, {}})
	for _, above := range []float64{0, 1, 3, 4, 5, 5.9, 8} {
		t.Run(fmt.Sprintf("%g mm above it", above), func(t *testing.T) {
			corner := plane.Point{X: 150, Y: 150 - above}
			lines := []mark.Mark{{Role: mark.Placement, Name: "vee", Path: plane.Path{corner.Add(plane.Point{X: -50, Y: 50}), corner, corner.Add(plane.Point{X: 50, Y: 50})}}}
			for k := range 11 {
				x := 85 + 13*float64(k)
				lines = append(lines, mark.Mark{Role: mark.TuckFold, Path: plane.Path{{X: x, Y: 300}, {X: x, Y: 150}}})
			}
			open := openingsFor(ring, lines)
			assert.Len(t, open.holes, 11, "one at the foot of each tuck")
			for _, w := range open.windows {
				side := plane.NewTree(w.Path[:len(w.Path)/2]) // on the line
				for _, hole := range open.holes {
					assert.GreaterOrEqual(t, side.Distance(hole.Path[0], math.Inf(1)), 4.9)
				}
			}
		})
	}
}

// Every line in the templates of the examples is marked: through windows, by a hole or the edge
// at both of its ends, or by holes all along it, of which a step tells.
func TestEveryLineOfATemplateIsMarked(t *testing.T) {
	bent, lines := 0, 0
	for _, example := range []string{"pinafore.toml", "shirt.toml", "nightgown.toml", "underwaist.toml"} {
		for _, m := range Of(Transferred(made.Example(t, example), []source.Transfer{source.Template})) {
			if m.Kind != mark.Template {
				continue
			}
			outline := plane.NewTree(m.Outline)
			var windows, holes plane.Path
			for _, one := range m.Marks {
				switch one.Role {
				case mark.Window:
					windows = append(windows, one.Path...)
				case mark.Prick:
					holes = append(holes, one.Path[0])
				}
			}
			for _, one := range m.Marks {
				if !hasWindows(one.Role) || one.Path.Length() < 6.1 { // a tick
					continue
				}
				lines++
				tree := plane.NewTree(one.Path)
				on := func(q plane.Point) bool { return tree.Nearer(q, 1e-6) }
				if slices.ContainsFunc(windows, on) {
					continue
				}
				held := func(end plane.Point) bool {
					return outline.Nearer(end, 6.1) || slices.ContainsFunc(holes, func(q plane.Point) bool { return q.Distance(end) <= 5 })
				}
				assert.True(t, held(one.Path[0]) && held(one.Path[len(one.Path)-1]), "%s: the ends of a %v", m.Key, one)
				if one.Path.Straightness() > 0.1 {
					bent++
					along := 0
					for _, q := range holes {
						if on(q) {
							along++
						}
					}
					assert.GreaterOrEqual(t, float64(along), one.Path.Length()/6.35, "%s: holes along a %v", m.Key, one)
					assert.Contains(t, strings.Join(m.Steps, "; "), "prick through the circles along", m.Key)
				}
			}
		}
	}
	assert.Positive(t, bent)
	assert.Greater(t, lines, 30)
}

// Windows of one line keep apart as well, where it closes or comes back.
func TestWindowsOfALineThatComesBack(t *testing.T) {
	ring := plane.NewTree(plane.Path{{}, {X: 300}, {X: 300, Y: 300}, {Y: 300}, {}})
	middle := plane.Point{X: 150, Y: 150}
	for _, c := range []struct {
		name    string
		line    plane.Path
		windows bool
	}{
		{"a circle", arc(middle, 50, 2*math.Pi, 200), true},
		{"a closed square", plane.Path{{X: 50, Y: 50}, {X: 150, Y: 50}, {X: 150, Y: 150}, {X: 50, Y: 150}, {X: 50, Y: 50}}, true},
		{"a hairpin", plane.Path{{X: 50, Y: 50}, {X: 50, Y: 200}, {X: 52, Y: 200}, {X: 52, Y: 50}}, false},
		{"a zigzag", plane.Path{{X: 50, Y: 50}, {X: 57, Y: 100}, {X: 64, Y: 50}, {X: 71, Y: 100}, {X: 78, Y: 50}}, false},
		{"a very small circle", arc(middle, 2.5, 2*math.Pi, 200), false},
	} {
		t.Run(c.name, func(t *testing.T) {
			open := openingsFor(ring, []mark.Mark{{Role: mark.Fold, Name: "line", Path: c.line}})
			assert.Equal(t, c.windows, len(open.windows) > 0)
			if !c.windows {
				assert.Equal(t, []string{`"line"`}, open.dotted)
			}
			for i, w := range open.windows {
				tree := plane.NewTree(w.Path)
				for k, other := range open.windows {
					for _, q := range other.Path {
						assert.True(t, i == k || tree.Distance(q, math.Inf(1)) >= 7.5, "windows %d and %d are %.1f mm apart", i, k, tree.Distance(q, math.Inf(1)))
					}
				}
			}
		})
	}
}

// The windows of a straight line are alike, no longer than 50 mm, with bridges of 10 mm
// between them, and begin and end 1 mm within the line.
func TestWindowsOfAStraightLine(t *testing.T) {
	ring := plane.NewTree(plane.Path{{}, {X: 300}, {X: 300, Y: 300}, {Y: 300}, {}})
	for _, c := range []struct {
		name    string
		long    float64
		windows int
		each    float64
	}{
		{"one as long as can be", 52, 1, 50},
		{"a little more", 53, 2, (51 - 10) / 2.0},
		{"two as long as can be", 112, 2, 50},
		{"five", 260, 5, (258 - 4*10) / 5.0},
	} {
		t.Run(c.name, func(t *testing.T) {
			open := openingsFor(ring, []mark.Mark{{Role: mark.Fold, Path: plane.Path{{X: 20, Y: 100}, {X: 20 + c.long, Y: 100}}}})
			require.Len(t, open.windows, c.windows)
			from := 21.0
			for k, w := range open.windows {
				box := w.Path.Bounds()
				assert.InDelta(t, from, box.Min.X, 1e-6, "window %d begins", k)
				assert.InDelta(t, c.each, box.Width(), 1e-6, "length of window %d", k)
				assert.InDelta(t, 2, box.Height(), 1e-6, "width of window %d", k)
				assert.InDelta(t, 100, box.Min.Y, 1e-6, "one side of window %d lies on the line", k)
				from = box.Max.X + 10
			}
		})
	}
}

// A window keeps 8 mm from the edge of the template, and 10 mm from that of another line.
func TestWindowsKeepClear(t *testing.T) {
	ring := plane.NewTree(plane.Path{{}, {X: 300}, {X: 300, Y: 300}, {Y: 300}, {}})
	level := func(y float64) mark.Mark {
		return mark.Mark{Role: mark.Fold, Path: plane.Path{{X: 50, Y: y}, {X: 250, Y: y}}}
	}
	for _, c := range []struct {
		name  string
		lines []mark.Mark
		want  bool
	}{
		{"2 wide and 8 from the edge", []mark.Mark{level(10.01)}, true},
		{"nearer to the edge", []mark.Mark{level(9.99)}, false},
		{"2 wide each and 10 apart", []mark.Mark{level(100), level(114.01)}, true},
		{"nearer together", []mark.Mark{level(100), level(113.99)}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			open := openingsFor(ring, c.lines)
			assert.Equal(t, c.want, len(open.windows) > 0, "windows")
			assert.Equal(t, !c.want, len(open.holes) > 0, "holes at their ends instead")
			assert.Empty(t, open.ticks, "no line comes out at the edge")
		})
	}
}

// Every line that the file asks for is brought onto the cloth, whatever its kind; and
// one that has only ticks takes no room from others.
func TestNoLineIsForgotten(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", oblongPiece+"[line.casing]\npoints = [[2, 2], [5, 2]]\nkind = \"stitch\"\n")
	assert.NotEmpty(t, linesOf(m, mark.Window), "a stitch line that is no edge's")
	_, m = sketchedTemplate(t, "0.375", "fold = \"left\"\n"+oblongPiece+"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 12\nfirst = 1\nspacing = \"3/8\"\nsewn = \"twin needle\"\nbelow = \"top\"\nlength = 3\n")
	assert.Empty(t, linesOf(m, mark.Window))
	assert.Len(t, linesOf(m, mark.Prick), 12, "the end line of tucks that are too close for windows runs from hole to hole")
}

// Each window is hatched, all of it and no more, and has an arrow of 6 mm that ends in the
// middle of its side on the line, and comes from the paper on the other side.
func TestWindowsAreHatchedAndHaveArrows(t *testing.T) {
	ring := plane.NewTree(plane.Path{{}, {X: 300}, {X: 300, Y: 300}, {Y: 300}, {}})
	line := plane.Path{{X: 20, Y: 100}, {X: 132, Y: 100}}
	waste, arrows := 0.0, 0
	for _, m := range openingsFor(ring, []mark.Mark{{Role: mark.Fold, Path: line}}).marks() {
		switch m.Role {
		case mark.Waste:
			waste += math.Abs(m.Path.Area())
		case mark.DrawHere:
			arrows++
			assert.InDelta(t, 6, m.Path.Length(), 1e-6, "mm")
			assert.InDelta(t, 100, m.Path[1].Y, 1e-6, "it ends on the line")
			assert.Less(t, m.Path[0].Y, 100.0, "the window lies above the line")
		}
	}
	assert.InDelta(t, 2*50*2.0, waste, 1e-6, "two windows of 50 by 2 mm, in mm²")
	assert.Equal(t, 2, arrows)
}

// A window keeps 5 mm from a hole that is pricked, and a line that has too little left beside
// holes has none.
func TestNoWindowWhereHolesArePricked(t *testing.T) {
	ring := plane.NewTree(plane.Path{{}, {X: 300}, {X: 300, Y: 300}, {Y: 300}, {}})
	across := mark.Mark{Role: mark.TuckEnd, Path: plane.Path{{X: 50, Y: 150}, {X: 250, Y: 150}}}
	for _, c := range []struct {
		name    string
		tucks   int // 3 mm apart, which come down to the middle of that line from the top
		windows bool
	}{
		{"a few", 4, true}, {"all along it", 60, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			lines := []mark.Mark{across}
			for k := range c.tucks {
				x := 150 + 3*(float64(k)-float64(c.tucks-1)/2)
				lines = append(lines, mark.Mark{Role: mark.TuckFold, Path: plane.Path{{X: x, Y: 300}, {X: x, Y: 150}}})
			}
			open := openingsFor(ring, lines)
			assert.Len(t, open.ticks, c.tucks, "each comes out at the top")
			assert.GreaterOrEqual(t, len(open.holes), c.tucks, "and ends at a hole")
			assert.Equal(t, c.windows, len(open.windows) > 0)
			for _, w := range open.windows {
				for _, hole := range open.holes {
					assert.GreaterOrEqual(t, plane.NewTree(w.Path).Distance(hole.Path[0], math.Inf(1)), 5-1e-6, "mm from a window to a hole")
				}
			}
		})
	}
}

// Windows keep what is said of them, whatever lines a piece has.
func TestWindowsKeepTheirWidths(t *testing.T) {
	windows, ticked := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		wide, high := rapid.Float64Range(60, 400).Draw(t, "width"), rapid.Float64Range(60, 400).Draw(t, "height")
		ring := plane.Path{{}, {X: wide}, {X: wide, Y: high}, {Y: high}, {}}
		outline := plane.NewTree(ring)
		at := func(name string) plane.Point {
			return plane.Point{X: rapid.Float64Range(0, wide).Draw(t, name+" x"), Y: rapid.Float64Range(0, high).Draw(t, name+" y")}
		}
		var lines []mark.Mark
		for k := range rapid.IntRange(1, 5).Draw(t, "lines") {
			path := plane.Path{at("from"), at("to")}
			if rapid.Bool().Draw(t, "bent") { // an arc
				centre, radius := at("centre"), rapid.Float64Range(15, 120).Draw(t, "radius")
				path = arc(centre, radius, 2, 40)
			}
			lines = append(lines, insideOf(outline, mark.Mark{Role: mark.Fold, Name: sketch.Number(float64(k)), Path: path})...)
		}
		open := openingsFor(outline, lines)
		ticked += len(open.ticks)
		var trees []*plane.Tree
		of := make([]int, len(open.windows)) // the line each window is of
		for k, w := range open.windows {
			windows++
			tree := plane.NewTree(w.Path)
			trees = append(trees, tree)
			require.Equal(t, w.Path[0], w.Path[len(w.Path)-1], "closed")
			_, _, _, crosses := plane.SelfCrossing(tree)
			require.False(t, crosses)
			long := 0.0
			of[k] = -1
			for i, line := range lines {
				on := plane.NewTree(line.Path)
				beside := 0
				farthest := 0.0
				for _, q := range w.Path {
					away := on.Distance(q, math.Inf(1))
					farthest = math.Max(farthest, away)
					if away < 1e-6 {
						beside++
					}
				}
				if beside >= 2 && farthest < 3 {
					of[k] = i
					require.InDelta(t, 2, farthest, 0.05, "width of a window, in mm")
				}
			}
			require.GreaterOrEqual(t, of[k], 0, "one side lies on a line")
			long = w.Path.Length() / 2
			require.LessOrEqual(t, long, 50*1.2+2, "length of a window, in mm; round a bend its outer side is longer")
			for _, q := range w.Path {
				require.GreaterOrEqual(t, outline.Distance(q, math.Inf(1)), 8-1e-6, "clear of the template's edge")
				require.True(t, outline.Holds(q))
			}
		}
		for i := range trees {
			for k := range i {
				least := 10.0
				if of[i] == of[k] {
					least = 7.5 // round a bend the inner sides come nearer
				}
				for _, q := range open.windows[i].Path {
					require.GreaterOrEqual(t, trees[k].Distance(q, math.Inf(1)), least-1e-6, "windows of lines %d and %d", of[i], of[k])
				}
			}
		}
		for _, tick := range open.ticks {
			require.True(t, outline.Nearer(tick.Path[0], 1e-6), "a tick begins at the edge")
			require.InDelta(t, 6, tick.Path.Length(), 1e-6)
		}
	})
	assert.Positive(t, windows)
	assert.Positive(t, ticked)
}

// Tucks of 1/8 in, 3/8 in apart, lie too close for windows: each of their lines is
// ticked where it comes out, at the top and at the foot.
func TestCloseTucksAreTicked(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n"+
		"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 3\nfirst = 2\nspacing = \"3/8\"\nsewn = \"twin needle\"\n")
	var ticks []string
	for _, line := range m.Marks {
		require.NotEqual(t, mark.Window, line.Role)
		if line.Role == mark.TuckFold && line.Path.Length() < 10 {
			ticks = append(ticks, sketch.Inches(line.Path))
		}
	}
	assert.ElementsMatch(t, []string{
		"2,10 2,9.764", "2,0 2,0.236", "2.375,10 2.375,9.764", "2.375,0 2.375,0.236", "2.75,10 2.75,9.764", "2.75,0 2.75,0.236",
	}, ticks)
	// Twice as far apart there is room.
	_, m = sketchedTemplate(t, "0.375", "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n"+
		"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 3\nfirst = 2\nspacing = \"3/4\"\nsewn = \"twin needle\"\n")
	windows := 0
	for _, line := range m.Marks {
		if line.Role == mark.Window {
			windows++
		}
	}
	assert.Equal(t, 3*5, windows, "five in each of three lines of 10 in")
}
