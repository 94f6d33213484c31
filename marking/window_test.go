package marking

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// of lists the marks of a role, in inches.
func of(m Marking, role Role) []string {
	var all []string
	for _, mark := range m.Marks {
		if mark.Role == role {
			all = append(all, inches(mark.Path))
		}
	}
	return all
}

const oblongPiece = "top: 0,10 8,10\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10\n---\n\n"

// Tucks that end inside the piece are ticked where they come out, and have a hole at
// the end of each line, beyond which nothing is ruled.
func TestTucksThatEndHaveHoles(t *testing.T) {
	_, m := templateOf(t, "0.375", "fold = \"left\"\n"+oblongPiece+"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 2\nfirst = 1\nspacing = \"3/8\"\nsewn = \"twin needle\"\nbelow = \"top\"\nlength = 3\n")
	assert.Contains(t, of(m, TuckFold), "1,10 1,9.764", "a tick at the top")
	assert.Contains(t, of(m, TuckFold), "1,0 1,0.236", "and where it would come out at the foot")
	ends := map[string]bool{}
	for _, mark := range m.Marks {
		if mark.Role == Prick {
			ends[inches(mark.Path[:1])] = true
		}
	}
	assert.True(t, ends["1,6.625"] && ends["1.375,6.625"], "holes at the ends, 3 in below the stitch line: %v", ends)
	assert.Contains(t, strings.Join(m.Notes, "; "), "rule from circle to circle, or from the edge to a circle, and no farther")
}

// A piece that is printed whole has no edge in its middle: there are no match marks,
// it is not laid by it, and the centre line has windows.
func TestTemplateOfAWholePiece(t *testing.T) {
	const text = "fold = \"left\"\nprint = \"whole\"\ntop: 0,10 4,9 8,10 | smooth = true\nright: 8,10 8,0\nfoot: 8,0 0,0\nleft: 0,0 0,10"
	piece, m := templateOf(t, "0.375", text)
	for _, mark := range of(m, Match) {
		x := strings.Split(strings.Fields(mark)[0], ",")[0]
		assert.NotEqual(t, "0", x, "a match mark in the middle: %s", mark)
	}
	assert.Contains(t, strings.Join(m.Notes, "; "), "with foot and right on the edge")
	assert.NotEmpty(t, of(m, Window), "of the centre line")
	assert.Len(t, of(m, Match), 2*4, "on both halves")
	sheet := markingSheet(piece, &Pattern{}, withTemplate)
	assert.Equal(t, of(sheet, Match), of(m, Match))
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
			open := openingsFor(ring, []Mark{{Role: Fold, Name: "line", Path: c.line}})
			assert.Equal(t, c.windows, len(open.windows) > 0)
			if !c.windows {
				assert.Equal(t, []string{`"line"`}, open.unmarked)
			}
			for i, w := range open.windows {
				tree := plane.NewTree(w.Path)
				for k, other := range open.windows {
					for _, q := range other.Path {
						assert.True(t, i == k || tree.Distance(q, math.Inf(1)) >= windowBridge*0.75, "windows %d and %d are %.1f mm apart", i, k, tree.Distance(q, math.Inf(1)))
					}
				}
			}
		})
	}
}

// Every line that the file asks for is brought onto the cloth, whatever its kind; and
// one that has only ticks takes no room from others.
func TestNoLineIsForgotten(t *testing.T) {
	_, m := templateOf(t, "0.375", oblongPiece+"[line.casing]\npoints = [[2, 2], [5, 2]]\nkind = \"stitch\"\n")
	assert.NotEmpty(t, of(m, Window), "a stitch line that is no edge's")
	_, m = templateOf(t, "0.375", "fold = \"left\"\n"+oblongPiece+"[tuck.yoke]\nbeside = \"left\"\nwidth = \"1/8\"\ncount = 12\nfirst = 1\nspacing = \"3/8\"\nsewn = \"twin needle\"\nbelow = \"top\"\nlength = 3\n")
	assert.NotEmpty(t, of(m, Window), "the end line of tucks that are too close for windows")
}

// Two marked edges whose lines cross before they come to the edge between them: one of
// them stays as it is cut, and the note says why.
func TestMarkedEdgesWhoseLinesCross(t *testing.T) {
	_, m := templateOf(t, "0.375", "top: 8,10 0.5,10 | marked = true\nchamfer: 0.5,10 0,9.5\nleft: 0,9.5 0,0 | marked = true\nfoot: 0,0 8,0\nright: 8,0 8,10")
	assert.Regexp(t, `the stitch line of (top|left) crosses another: mark it with a gauge`, strings.Join(m.Notes, "; "))
	assert.NotContains(t, strings.Join(m.Notes, "; "), "folds part")
}

// In a narrow place match marks are short enough to stay on the template.
func TestMatchMarksInANarrowPiece(t *testing.T) {
	for _, text := range []string{
		"top: 0,0.5 8,0.5 | marked = true; allowance = 0.25\nright: 8,0.5 8,0 | allowance = 0.125\nfoot: 8,0 0,0 | allowance = 0.125\nleft: 0,0 0,0.5 | allowance = 0.125",
		"a: 0,0 3,0\nb: 3,0 0,0.9\nc: 0,0.9 0,0",
	} {
		_, m := templateOf(t, "0.1", text)
		tree := plane.NewTree(m.Outline)
		marks := 0
		for _, mark := range m.Marks {
			if mark.Role == Match {
				marks++
				assert.True(t, tree.Holds(mark.Path[1]), "a match mark ends outside, at %s", inches(mark.Path[1:]))
			}
		}
		require.Positive(t, marks)
	}
}

// A step from a stitch line that ends beside its neighbour's edge is no stitch line.
func TestAStepIsNoStitchLine(t *testing.T) {
	_, m := templateOf(t, "0.375", "a: 8,10 4,10.1 | marked = true\nb: 4,10.1 0,10\nc: 0,10 0,0\nd: 0,0 8,0\ne: 8,0 8,10")
	for _, mark := range m.Marks {
		if mark.Name == "a: cut on the stitch line" {
			assert.LessOrEqual(t, mark.Path.Straightness(), straightness, "it goes round no corner: %s", inches(mark.Path))
		}
	}
}

// A small ring is not one dot, however far apart dots may be.
func TestDotsOfASmallRing(t *testing.T) {
	for radius, spacing := range map[float64]float64{7.9: 50, 6: 40, 2.5: 6.35} {
		p := arc(plane.Point{}, radius, 2*math.Pi, 100)
		p[100] = p[0]
		dots := dotsOf(Marking{Marks: []Mark{{Role: Stitch, Path: p}}}, spacing)[0]
		assert.GreaterOrEqual(t, len(dots)-1, 4, "round a circle of %v", radius)
	}
	// A bend makes dots closer only where it is.
	p := plane.Path{{}, {X: 500}}
	for i := range 21 {
		sin, cos := math.Sincos(float64(i) / 20 * math.Pi / 2)
		p = append(p, plane.Point{X: 500 + 3*sin, Y: 3 - 3*cos})
	}
	p = append(p, plane.Point{X: 503, Y: 100})
	dots := dotsOf(Marking{Marks: []Mark{{Role: Stitch, Path: p}}}, usualDots)[0]
	assert.Less(t, len(dots), 102)
}
