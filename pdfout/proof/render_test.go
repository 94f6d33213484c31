package proof

import (
	"bytes"
	"fmt"
	"image"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// Rules of this file: it hands the PDF to programs that others wrote, as a
// printer would, and measures what comes out.

// run runs a program, which must succeed without a word of complaint.
func run(t *testing.T, name string, args ...string) {
	t.Helper()
	cmd := exec.Command(Tool(t, name), args...)
	var complaints bytes.Buffer
	cmd.Stderr = &complaints
	err := cmd.Run()
	require.NoError(t, err, "%s: %s", name, complaints.String())
	require.Empty(t, complaints.String(), name)
}

// inFront is how many pages come before those that are true to scale.
func inFront(s pdfout.Summary) int { return s.Front + s.Figures }

// hasSquare reports whether a page, counted from 0, has a check square: the first and those
// that are true to scale have.
func hasSquare(s pdfout.Summary, i int) bool { return i == 0 || i >= inFront(s) }

// formsAsSheets are the forms as if each were a sheet of one page.
func formsAsSheets(s pdfout.Summary) []pdfout.SheetSummary {
	var sheets []pdfout.SheetSummary
	for _, form := range s.Forms {
		sheet := pdfout.SheetSummary{Pieces: []string{form.Piece}, Rows: 1, Columns: 1, First: form.Page, Last: form.Page}
		if form.Turned {
			sheet.Turned = sheet.Pieces
		}
		sheets = append(sheets, sheet)
	}
	return sheets
}

// read reads back what was drawn into a file.
func read(t *testing.T, file string) seen.Document {
	t.Helper()
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	return seen.Read(t, data, paper.Scale{})
}

// onDisk draws a set, with its cautions, into a file.
func onDisk(t *testing.T, set arrange.Set, paper string) (string, pdfout.Summary) {
	t.Helper()
	return onDiskOn(t, set, seen.Paper(t, paper))
}

// onDiskOn is onDisk for paper that is asked for with more than a name.
func onDiskOn(t *testing.T, set arrange.Set, p paper.Paper) (string, pdfout.Summary) {
	t.Helper()
	set.Cautions = sample.Cautions()
	file := filepath.Join(t.TempDir(), "sheets.pdf")
	out, err := os.Create(file)
	require.NoError(t, err)
	summary, err := pdfout.Draw(out, set, p)
	require.NoError(t, err)
	require.NoError(t, out.Close())
	return file, summary
}

func TestRenders(t *testing.T) {
	for name, set := range map[string]arrange.Set{
		"a bodice front": sets.Few(), "small pieces": sets.Many(9), "round skirt": sets.Ring(), "long titles": sets.LongTitle(), "a sample sewn first": sets.SampleFirst(),
		"figures": sets.WithFigures(sets.Few(), sample.DressFigures()),
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
	file, _ := onDisk(t, sets.LongTitle(), "letter")
	out := filepath.Join(t.TempDir(), "text")
	run(t, "pdftotext", "-layout", file, out)
	text, err := os.ReadFile(out)
	require.NoError(t, err)
	for _, want := range []string{"A pinafore with six pin tucks", "Skirt panel", "print at 100 %", "place on the fold", "gathered at the upper edge to 11 1/2 in", "“fit to page”"} {
		assert.Contains(t, string(text), want)
	}
}

// rendered draws one page in shades of grey.
func rendered(t *testing.T, file string, page int) *image.Gray {
	t.Helper()
	return renderers()[0].draw(t, file, page, page)[0]
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
	return image.Pt(int(math.Floor(p.X/dot)), g.Rect.Dy()-1-int(math.Floor(p.Y/dot)))
}

// Where the sides of a check square are measured: along lines that run besideCorner
// from its lower and its left side, where no text is, and no tick of the rules of
// millimetres and of sixteenths that stand against the first page's; and from aroundSquare
// outside it to lessAround beyond it, short of the larger frame round the inner one; in mm.
const (
	besideCorner = 3.5
	aroundSquare = 1.0
	lessAround   = 0.6
)

// sides measures the sides of a filled frame, across and up, in dots.
func sides(t *testing.T, g *image.Gray, f plane.Box) (across, up int) {
	t.Helper()
	reach := func(side float64) int { return int((side + aroundSquare + lessAround) / dot) }
	across = outside(t, g, dotAt(g, f.Min.Add(plane.Point{X: -aroundSquare, Y: besideCorner})), image.Pt(1, 0), reach(f.Width()))
	up = outside(t, g, dotAt(g, f.Min.Add(plane.Point{X: besideCorner, Y: -aroundSquare})), image.Pt(0, -1), reach(f.Height()))
	return across, up
}

// assertSquares measures the check squares of a page. One whose sides are whole dots,
// as 4 in and 1 in are, must have exactly these; of 100 mm, 1181.1 dots, and 25 mm,
// 295.3 dots, the next dot above or below is allowed.
func assertSquares(t *testing.T, g *image.Gray, page seen.Page) {
	t.Helper()
	frames := page.Frames()
	require.NotEmpty(t, frames)
	for _, f := range frames {
		want := squareSides(t, f)
		across, up := sides(t, g, f)
		for what, got := range map[string]int{"across": across, "up": up} {
			assert.True(t, float64(got) >= math.Floor(want) && float64(got) <= math.Ceil(want), "a square of %.1f dots has %d %s", want, got, what)
		}
	}
}

// sameSquare bounds how far what the PDF says of a square may be off for it still to
// be told which of the four it is meant to be, in mm.
const sameSquare = 0.2

// squareSides is how many dots the side of a check square must have, to a tenth.
func squareSides(t *testing.T, f plane.Box) float64 {
	t.Helper()
	for _, mm := range []float64{4 * 25.4, 100, 25.4, 25} {
		if math.Abs(f.Width()-mm) <= sameSquare {
			return math.Round(mm/dot*10) / 10
		}
	}
	require.Fail(t, "no check square", "%v", f)
	return 0
}

// Every page of every example, read by another program, says what lies on its sheet,
// where in it the page belongs, what the set is called and which page it is.
func TestPagesAreRead(t *testing.T) {
	t.Parallel()
	for name, set := range sets.Examples(t, "../../examples") {
		t.Run(name, func(t *testing.T) {
			file, s := onDisk(t, set, "letter")
			d := read(t, file)
			out := filepath.Join(t.TempDir(), "text")
			// In the order in which it was written: of a page with much text on its
			// side pdftotext otherwise takes that for upright.
			run(t, "pdftotext", "-raw", file, out)
			data, err := os.ReadFile(out)
			require.NoError(t, err)
			texts := strings.Split(string(data), "\f") // one behind every page
			require.Len(t, texts, s.Pages+1)
			for _, sheet := range append(formsAsSheets(s), s.Sheets...) {
				laid, _ := d.JoinUp(t, sheet.First, sheet.Last)
				require.Len(t, laid, sheet.Last-sheet.First+1)
				for _, name := range sheet.Pieces {
					named := slices.ContainsFunc(laid, func(page seen.LaidPage) bool { return strings.Contains(texts[page.Number-1], name) })
					assert.True(t, named || len(sheet.Pieces) > 3, "%q is on no page of its sheet", name)
				}
				pieces := seen.PiecesOn(t, laid, set.Pieces, sheet.Pieces, sheet.Turned)
				for _, page := range laid {
					checkPageText(t, texts[page.Number-1], set, s, sheet, page, laid, pieces)
				}
			}
		})
	}
}

// checkPageText looks at what a page says.
func checkPageText(t *testing.T, text string, set arrange.Set, s pdfout.Summary, sheet pdfout.SheetSummary, page seen.LaidPage, laid []seen.LaidPage, pieces []seen.Placed) {
	t.Helper()
	assert.Contains(t, text, fmt.Sprintf("page %d of %d", page.Number, s.Pages))
	for _, p := range pieces {
		if page.Core.Grown(-besideEach).Meets(p.On(p.Piece.Outline).Bounds()) {
			assert.Contains(t, seen.Squeezed(text), seen.Squeezed(p.Piece.Name), "page %d", page.Number)
		}
	}
	assert.Contains(t, text, set.Title, "page %d", page.Number)
	var got []int
	for _, of := range []string{"row", "column"} {
		if n := regexp.MustCompile(of + ` (\d+) of (\d+)`).FindStringSubmatch(text); n != nil {
			got = append(got, atoi(t, n[1]), atoi(t, n[2]))
		} else {
			got = append(got, 1, 1)
		}
	}
	var lefts, uppers []float64
	for _, other := range laid {
		lefts, uppers = append(lefts, other.Window.Min.X), append(uppers, -other.Window.Max.Y)
	}
	want := []int{rankIn(uppers, -page.Window.Max.Y), sheet.Rows, rankIn(lefts, page.Window.Min.X), sheet.Columns}
	assert.Equal(t, want, got, "row and column of page %d", page.Number)
}

// atoi reads a whole number.
func atoi(t *testing.T, text string) int {
	t.Helper()
	n, err := strconv.Atoi(text)
	require.NoError(t, err)
	return n
}

// besideEach is less than what lies between the sides of two pages of a joined sheet,
// and more than what they may be off, in mm.
const besideEach = 5.0

// rankIn tells the how manieth a place is of the rows or columns of a joined sheet.
func rankIn(all []float64, own float64) int {
	slices.Sort(all)
	rank, last := 1, math.Inf(-1)
	for _, at := range all {
		if at < own-besideEach && at > last+besideEach {
			rank++
			last = at
		}
	}
	return rank
}

// The squares of the first page and of the others, as two programs draw them, on
// pages that are to be joined and on one single page.
func TestSquaresMeasure(t *testing.T) {
	t.Parallel()
	for _, p := range []string{"letter", "a4", "either", "single"} {
		for _, unit := range []length.Unit{length.Inch, length.Centimetre, length.Millimetre} {
			set := sets.Few()
			set.Unit = unit
			file, s := onDisk(t, set, p)
			d := read(t, file)
			for _, r := range renderers() {
				t.Run(fmt.Sprintf("%s, %v, %s", p, unit, r.name), func(t *testing.T) {
					t.Parallel()
					for i, g := range r.draw(t, file, 1, s.Pages) {
						if hasSquare(s, i) {
							assertSquares(t, g, d.Pages[i])
						}
					}
				})
			}
		}
	}
}

// On a sheet for a printer that does not print true the squares are drawn larger or
// smaller by as much: what comes out of that printer is 4 in, to the dot.
func TestCorrectedSquaresMeasure(t *testing.T) {
	p := seen.Paper(t, "letter")
	p.Printed = paper.Scale{Across: 0.96875, Down: 0.984375} // 3 7/8 and 3 15/16 of 4 in
	file, s := onDiskOn(t, sets.Few(), p)
	d := read(t, file) // as it is before it is printed
	for _, r := range renderers() {
		for i, g := range r.draw(t, file, 1, s.Pages) {
			if !hasSquare(s, i) {
				continue
			}
			frames := d.Pages[i].Frames()
			require.NotEmpty(t, frames, "page %d", i+1)
			for k, f := range frames {
				want := float64(dots) // 1 in
				if i == 0 {
					want = []float64{4 * dots, 100 / dot}[k]
				}
				across, up := sides(t, g, f)
				assert.InDelta(t, want, float64(across)*p.Printed.Across, 1, "%s, page %d, across", r.name, i+1)
				assert.InDelta(t, want, float64(up)*p.Printed.Down, 1, "%s, page %d, up", r.name, i+1)
			}
		}
	}
}

// whiteStrip is the strip at the edges of paper that a home printer leaves white,
// in dots: 1/4 in (common practice).
const whiteStrip = dots / 4

// overStrip is how far into that strip the upper side of a title block reaches, in dots:
// half of its line, 0.18 mm wide, whose middle lies on the strip's edge.
const overStrip = 2

// inMargin says where something is printed that no home printer prints; "" if
// nothing is. Of a page, counted from 0, that has a title block its upper side may be there.
func inMargin(g *image.Gray, s pdfout.Summary, i int) string {
	inside := g.Rect.Inset(whiteStrip)
	if i >= inFront(s) {
		inside.Min.Y -= overStrip
	}
	for y := range g.Rect.Dy() {
		for x := 0; x < g.Rect.Dx(); x++ {
			if image.Pt(x, y).In(inside) {
				x = inside.Max.X
			}
			if g.Pix[y*g.Stride+x] < nearlyWhite {
				return fmt.Sprintf("a dot of grey %d, %d dots from the left and %d from the top", g.Pix[y*g.Stride+x], x, y)
			}
		}
	}
	return ""
}

// The pages of figures keep the margin as the others do; who asks for no margin gets
// none.
func TestMarginsRender(t *testing.T) {
	full := arrange.Set{Pieces: []mark.Marking{sample.Rectangle("p", "Panel", 300, 250)}}
	for _, r := range renderers() {
		for _, name := range []string{"letter", "a4", "either"} {
			t.Run(name+", "+r.name, func(t *testing.T) {
				t.Parallel()
				file, s := onDisk(t, sets.WithFigures(full, sample.DressFigures()), name)
				require.Positive(t, s.Figures)
				for i, g := range r.draw(t, file, 1, s.Pages) {
					assert.Empty(t, inMargin(g, s, i), "page %d", i+1)
				}
				bare, err := seen.Paper(t, name).WithMargin(0)
				require.NoError(t, err)
				file, s = onDiskOn(t, full, bare)
				for i, g := range r.draw(t, file, inFront(s)+1, s.Pages) {
					assert.NotEmpty(t, inMargin(g, s, inFront(s)+i), "page %d, without a margin", inFront(s)+1+i)
				}
			})
		}
	}
}

// A straight line of the piece lies on paper where it is said to lie, to the
// dot, and is as long.
func TestLinesMeasure(t *testing.T) {
	set := arrange.Set{Pieces: []mark.Marking{sample.Rectangle("p", "Pocket", 101.6, 127)}}
	file, s := onDisk(t, set, "letter")
	g := rendered(t, file, s.Front+1)
	d := read(t, file)
	outline := plane.EmptyBox()
	for _, q := range d.Pages[s.Front].Drawn("cutting line") {
		for _, part := range q.Parts {
			outline = outline.Union(part.Bounds())
		}
	}
	require.InDelta(t, 101.6, outline.Width(), 4*seen.Written)
	require.InDelta(t, 127, outline.Height(), 4*seen.Written)
	// From outside edge to outside edge: 4 in and 5 in and once the width of
	// the line.
	line := ink.PenOf(mark.Cut).Width / 25.4 * dots
	middle := outline.Min.Toward(outline.Max, 0.03)
	across := dotAt(g, plane.Point{X: outline.Min.X - 1, Y: middle.Y})
	up := dotAt(g, plane.Point{X: middle.X, Y: outline.Min.Y - 1})
	assert.InDelta(t, 4*dots+line, outside(t, g, across, image.Pt(1, 0), 4*dots+20), 1.5, "across")
	assert.InDelta(t, 5*dots+line, outside(t, g, up, image.Pt(0, -1), 5*dots+20), 1.5, "up")
}

// The strip of a sample is as long and as high on paper as it is said to be,
// and its two placement lines lie 6 in apart.
func TestFormMeasures(t *testing.T) {
	set := arrange.Set{Pieces: []mark.Marking{sample.TuckSample()}}
	file, s := onDisk(t, set, "letter")
	g := rendered(t, file, s.Forms[0].Page)
	d := read(t, file)
	outline := d.Pages[s.Forms[0].Page-1].BoundsOf(mark.Cut)
	line := ink.PenOf(mark.Cut).Width / 25.4 * dots
	across := dotAt(g, plane.Point{X: outline.Min.X - 1, Y: outline.Min.Y + 2})
	up := dotAt(g, plane.Point{X: outline.Min.X + 2, Y: outline.Min.Y - 1})
	assert.InDelta(t, 6.5*dots+line, outside(t, g, across, image.Pt(1, 0), 6.5*dots+20), 1.5, "across")
	assert.InDelta(t, 3*dots+line, outside(t, g, up, image.Pt(0, -1), 3*dots+20), 1.5, "up")
}
