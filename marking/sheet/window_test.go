package sheet

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// of lists the marks of a role, in inches.
func of(m mark.Marking, role mark.Role) []string {
	var all []string
	for _, mark := range m.Marks {
		if mark.Role == role {
			all = append(all, sketch.Inches(mark.Path))
		}
	}
	return all
}

const oblongPiece = "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n"

// Tucks that end inside the piece are ticked where they come out, and have a hole at
// the end of each line, beyond which nothing is ruled.
func TestTucksThatEndHaveHoles(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "fold = \"left\"\n"+oblongPiece+"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 2\nfirst = 1\nspacing = \"3/8\"\nsewn = \"twin needle\"\nbelow = \"top\"\nlength = 3\n")
	assert.Contains(t, of(m, mark.TuckFold), "1,10 1,9.764", "a tick at the top")
	assert.Contains(t, of(m, mark.TuckFold), "1,0 1,0.236", "and where it would come out at the foot")
	ends := map[string]bool{}
	for _, theMark := range m.Marks {
		if theMark.Role == mark.Prick {
			ends[sketch.Inches(theMark.Path[:1])] = true
		}
	}
	assert.True(t, ends["1,6.625"] && ends["1.375,6.625"], "holes at the ends, 3 in below the stitch line: %v", ends)
	assert.Contains(t, strings.Join(m.Notes, "; "), "rule from circle to circle, or from the edge to a circle, and no farther")
}

// A piece that is printed whole has no edge in its middle: there are no match marks,
// it is not laid by it, and the centre line has windows.
func TestTemplateOfAWholePiece(t *testing.T) {
	const text = "fold = \"left\"\nprint = \"whole\"\ntop: 0,10 4,9 8,10 | smooth = true\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10"
	piece, m := sketchedTemplate(t, "0.375", text)
	for _, theMark := range of(m, mark.Match) {
		x := strings.Split(strings.Fields(theMark)[0], ",")[0]
		assert.NotEqual(t, "0", x, "a match mark in the middle: %s", theMark)
	}
	assert.Contains(t, strings.Join(m.Notes, "; "), "with foot and right on the edge")
	assert.NotEmpty(t, of(m, mark.Window), "of the centre line")
	assert.Len(t, of(m, mark.Match), 2*4, "on both halves")
	sheet := markingSheet(piece, &garment.Pattern{}, templateOf(piece, &garment.Pattern{}))
	assert.Equal(t, of(sheet, mark.Match), of(m, mark.Match))
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
				assert.Equal(t, []string{`"line"`}, open.unmarked)
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
			assert.Equal(t, !c.want, len(open.ticks) > 0, "ticks instead")
		})
	}
}

// Match marks stand 8 mm long at a third and at two thirds of every edge by which the
// template is laid.
func TestMatchMarksAtThirds(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "top: 0,9 9,9 | marked = true\nright: 9,9 9,0\nfoot: 9,0 0,0\nleft: 0,0 0,9")
	assert.ElementsMatch(t, []string{
		"0,3 0.315,3", "0,6 0.315,6",
		"3,0 3,0.315", "6,0 6,0.315",
		"9,3 8.685,3", "9,6 8.685,6",
	}, of(m, mark.Match))
}

// Every line that the file asks for is brought onto the cloth, whatever its kind; and
// one that has only ticks takes no room from others.
func TestNoLineIsForgotten(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", oblongPiece+"[line.casing]\npoints = [[2, 2], [5, 2]]\nkind = \"stitch\"\n")
	assert.NotEmpty(t, of(m, mark.Window), "a stitch line that is no edge's")
	_, m = sketchedTemplate(t, "0.375", "fold = \"left\"\n"+oblongPiece+"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 12\nfirst = 1\nspacing = \"3/8\"\nsewn = \"twin needle\"\nbelow = \"top\"\nlength = 3\n")
	assert.NotEmpty(t, of(m, mark.Window), "the end line of tucks that are too close for windows")
}

// Two marked edges whose lines cross before they come to the edge between them: one of
// them stays as it is cut, and the note says why.
func TestMarkedEdgesWhoseLinesCross(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "top: 8,10 0.5,10 | marked = true\nchamfer: 0.5,10 0,9.5\nleft: 0,9.5 0,0 | marked = true\nfoot: 0,0 8,0\nright: 8,0 8,10")
	assert.Regexp(t, `the stitch line of (top|left) crosses another: mark it with a gauge`, strings.Join(m.Notes, "; "))
	assert.NotContains(t, strings.Join(m.Notes, "; "), "folds part")
}

// In a narrow place match marks are short enough to stay on the template.
func TestMatchMarksInANarrowPiece(t *testing.T) {
	for _, text := range []string{
		"top: 0,0.5 8,0.5 | marked = true; allowance = 0.25\nright: 8,0.5 8,0 | allowance = 0.125\nfoot: 8,0 0,0 | allowance = 0.125\nleft: 0,0 0,0.5 | allowance = 0.125",
		"a: 0,0 3,0\nb: 3,0 0,0.9\nc: 0,0.9 0,0",
	} {
		_, m := sketchedTemplate(t, "0.1", text)
		tree := plane.NewTree(m.Outline)
		marks := 0
		for _, theMark := range m.Marks {
			if theMark.Role == mark.Match {
				marks++
				assert.True(t, tree.Holds(theMark.Path[1]), "a match mark ends outside, at %s", sketch.Inches(theMark.Path[1:]))
			}
		}
		require.Positive(t, marks)
	}
}

// A step from a stitch line that ends beside its neighbour's edge is no stitch line.
func TestAStepIsNoStitchLine(t *testing.T) {
	_, m := sketchedTemplate(t, "0.375", "a: 8,10 4,10.1 | marked = true\nb: 4,10.1 0,10\nc: 0,10 0,0\nd: 0,0 8,0\ne: 8,0 8,10")
	for _, mark := range m.Marks {
		if mark.Name == "a: cut on the stitch line" {
			assert.LessOrEqual(t, mark.Path.Straightness(), 0.05, "it goes round no corner: %s", sketch.Inches(mark.Path))
		}
	}
}

// A small ring is not one dot, however far apart dots may be.
func TestDotsOfASmallRing(t *testing.T) {
	for radius, spacing := range map[float64]float64{7.9: 50, 6: 40, 2.5: 6.35} {
		p := arc(plane.Point{}, radius, 2*math.Pi, 100)
		p[100] = p[0]
		dots := dotsOf(mark.Marking{Marks: []mark.Mark{{Role: mark.Stitch, Path: p}}}, spacing)[0]
		assert.GreaterOrEqual(t, len(dots)-1, 4, "round a circle of %v", radius)
	}
	// A bend makes dots closer only where it is.
	p := plane.Path{{}, {X: 500}}
	for i := range 21 {
		sin, cos := math.Sincos(float64(i) / 20 * math.Pi / 2)
		p = append(p, plane.Point{X: 500 + 3*sin, Y: 3 - 3*cos})
	}
	p = append(p, plane.Point{X: 503, Y: 100})
	dots := dotsOf(mark.Marking{Marks: []mark.Mark{{Role: mark.Stitch, Path: p}}}, 25.4/4)[0]
	assert.Less(t, len(dots), 102)
}
