package pdfout

import (
	"bytes"
	"fmt"
	"image"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: it hands the PDF to programs that others wrote, as a
// printer would, and measures what comes out. Where such a program is not
// installed the test is skipped; with TUCKMARK_RENDER=1 in the environment it
// fails instead.

// tool finds a program.
func tool(t *testing.T, name string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		if os.Getenv("TUCKMARK_RENDER") == "1" {
			require.NoError(t, err, "TUCKMARK_RENDER=1 asks for it")
		}
		t.Skipf("%s is not installed", name)
	}
	return path
}

// run runs a program, which must succeed without a word of complaint.
func run(t *testing.T, name string, args ...string) {
	t.Helper()
	cmd := exec.Command(tool(t, name), args...)
	var complaints bytes.Buffer
	cmd.Stderr = &complaints
	err := cmd.Run()
	require.NoError(t, err, "%s: %s", name, complaints.String())
	require.Empty(t, complaints.String(), name)
}

// onDisk draws a set into a file.
func onDisk(t *testing.T, set Set, paper string) (string, Summary) {
	t.Helper()
	p, err := FindPaper(paper)
	require.NoError(t, err)
	file := filepath.Join(t.TempDir(), "sheets.pdf")
	out, err := os.Create(file)
	require.NoError(t, err)
	summary, err := Draw(out, set, p)
	require.NoError(t, err)
	require.NoError(t, out.Close())
	return file, summary
}

func TestRenders(t *testing.T) {
	for name, set := range map[string]Set{
		"a bodice front": few(), "small pieces": many(9), "round skirt": ring(), "long titles": longTitle(), "a sample sewn first": sampleFirst(),
		"figures": withFigures(few(), dressFigures()),
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			file, _ := onDisk(t, set, "a4")
			dir := t.TempDir()
			run(t, "qpdf", "--check", file)
			// -N: without colour profiles, which some builds complain to lack.
			run(t, "mutool", "draw", "-q", "-N", "-r", "30", "-o", filepath.Join(dir, "m%d.pnm"), file)
			run(t, "pdftoppm", "-r", "30", file, filepath.Join(dir, "p"))
		})
	}
}

func TestTextsAreText(t *testing.T) {
	file, _ := onDisk(t, longTitle(), "letter")
	out := filepath.Join(t.TempDir(), "text")
	run(t, "pdftotext", "-layout", file, out)
	text, err := os.ReadFile(out)
	require.NoError(t, err)
	for _, want := range []string{"A pinafore with six pin tucks", "Skirt panel", "print at 100 %", "place on the fold", "gathered at the upper edge to 11 1/2 in", "“fit to page”"} {
		assert.Contains(t, string(text), want)
	}
}

// dots is the resolution of the pictures below, to the inch.
const dots = 300

// rendered draws one page in shades of grey.
func rendered(t *testing.T, file string, page int) *image.Gray {
	t.Helper()
	n := fmt.Sprint(page)
	base := filepath.Join(t.TempDir(), "page")
	run(t, "pdftoppm", "-r", fmt.Sprint(dots), "-gray", "-singlefile", "-f", n, "-l", n, file, base)
	data, err := os.ReadFile(base + ".pgm")
	require.NoError(t, err)
	var w, h, depth int
	_, err = fmt.Sscanf(string(data[:min(40, len(data))]), "P5\n%d %d\n%d\n", &w, &h, &depth)
	require.NoError(t, err)
	require.Equal(t, 255, depth)
	return &image.Gray{Pix: data[len(data)-w*h:], Stride: w, Rect: image.Rect(0, 0, w, h)}
}

// dark reports whether a dot is more black than white.
func dark(g *image.Gray, x, y int) bool { return g.GrayAt(x, y).Y < 128 }

// outside measures a black frame that stands in white: from the first dark
// dot to the last on a line through it, from a dot outside it on.
func outside(t *testing.T, g *image.Gray, from, step image.Point, reach int) int {
	t.Helper()
	first, last := -1, -1
	for i := range reach {
		at := from.Add(step.Mul(i))
		if dark(g, at.X, at.Y) {
			if first < 0 {
				first = i
			}
			last = i
		}
	}
	require.GreaterOrEqual(t, first, 1, "no frame found")
	return last - first + 1
}

// dotAt is the dot at a place of the page, in mm from its lower left corner.
func dotAt(g *image.Gray, p plane.Point) image.Point {
	return image.Pt(int(math.Floor(p.X/25.4*dots)), g.Rect.Dy()-1-int(math.Floor(p.Y/25.4*dots)))
}

// A filled 4 in square is 1200 x 1200 dots at 300 to the inch, one of 100 mm
// 1181 (1181.1).
func TestFirstPageMeasures(t *testing.T) {
	for _, paper := range []string{"letter", "a4"} {
		set := few()
		file, _ := onDisk(t, set, paper)
		g := rendered(t, file, 1)
		d, _ := drawn(t, set, paper)
		frames := d.pages[0].frames()
		for i, want := range []int{4 * dots, 1181} {
			// From 1 mm outside, close to the left and the lower side, where
			// no text is; to 0.6 mm beyond, short of the outer frame.
			f := frames[i]
			across := dotAt(g, f.Min.Add(plane.Point{X: -1, Y: 3}))
			up := dotAt(g, f.Min.Add(plane.Point{X: 3, Y: -1}))
			reach := int((f.Width() + 1.6) / 25.4 * dots)
			assert.InDelta(t, want, outside(t, g, across, image.Pt(1, 0), reach), 1, "%s, frame %d, across", paper, i)
			assert.InDelta(t, want, outside(t, g, up, image.Pt(0, -1), reach), 1, "%s, frame %d, up", paper, i)
		}
	}
}

func TestSmallSquaresMeasure(t *testing.T) {
	for _, c := range []struct {
		unit  marking.Unit
		paper string
		want  int // dots
	}{
		{marking.Inch, "letter", dots},
		{marking.Inch, "a4", dots},
		{marking.Centimetre, "a4", 354}, // 30 mm are 354.3
		{marking.Millimetre, "letter", 354},
	} {
		set := few()
		set.Unit = c.unit
		file, s := onDisk(t, set, c.paper)
		d, _ := drawn(t, set, c.paper)
		for n := s.Front + 1; n <= s.Pages; n++ {
			g := rendered(t, file, n)
			frame := d.pages[n-1].frames()[0]
			// Along lines at a quarter of the square, clear of its label.
			quarter := frame.Min.Toward(frame.Max, 0.2)
			across := dotAt(g, plane.Point{X: frame.Min.X - 1, Y: quarter.Y})
			up := dotAt(g, plane.Point{X: quarter.X, Y: frame.Min.Y - 1})
			reach := c.want + 2*dots/25
			assert.InDelta(t, c.want, outside(t, g, across, image.Pt(1, 0), reach), 1, "page %d of %s, across", n, c.paper)
			assert.InDelta(t, c.want, outside(t, g, up, image.Pt(0, -1), reach), 1, "page %d of %s, up", n, c.paper)
		}
	}
}

// A straight line of the piece lies on paper where it is said to lie, to the
// dot, and is as long.
func TestLinesMeasure(t *testing.T) {
	set := Set{Pieces: []marking.Marking{rectangle("p", "Pocket", 101.6, 127)}}
	file, s := onDisk(t, set, "letter")
	g := rendered(t, file, s.Front+1)
	d, _ := drawn(t, set, "letter")
	outline := plane.EmptyBox()
	for _, q := range d.pages[s.Front].drawn("cutting line") {
		for _, part := range q.parts {
			outline = outline.Union(part.Bounds())
		}
	}
	require.InDelta(t, 101.6, outline.Width(), 4*written)
	require.InDelta(t, 127, outline.Height(), 4*written)
	// From outside edge to outside edge: 4 in and 5 in and once the width of
	// the line.
	line := penOf(marking.Cut).width / 25.4 * dots
	middle := outline.Min.Toward(outline.Max, 0.03)
	across := dotAt(g, plane.Point{X: outline.Min.X - 1, Y: middle.Y})
	up := dotAt(g, plane.Point{X: middle.X, Y: outline.Min.Y - 1})
	assert.InDelta(t, 4*dots+line, outside(t, g, across, image.Pt(1, 0), 4*dots+20), 1.5, "across")
	assert.InDelta(t, 5*dots+line, outside(t, g, up, image.Pt(0, -1), 5*dots+20), 1.5, "up")
}

// The strip of a sample is as long and as high on paper as it is said to be,
// and its two placement lines lie 6 in apart.
func TestFormMeasures(t *testing.T) {
	set := Set{Pieces: []marking.Marking{sampleSheet()}}
	file, s := onDisk(t, set, "letter")
	g := rendered(t, file, s.Forms[0].Page)
	d, _ := drawn(t, set, "letter")
	outline := boundsOf(d.pages[s.Forms[0].Page-1], marking.Cut)
	line := penOf(marking.Cut).width / 25.4 * dots
	across := dotAt(g, plane.Point{X: outline.Min.X - 1, Y: outline.Min.Y + 2})
	up := dotAt(g, plane.Point{X: outline.Min.X + 2, Y: outline.Min.Y - 1})
	assert.InDelta(t, 6.5*dots+line, outside(t, g, across, image.Pt(1, 0), 6.5*dots+20), 1.5, "across")
	assert.InDelta(t, 3*dots+line, outside(t, g, up, image.Pt(0, -1), 3*dots+20), 1.5, "up")
}
