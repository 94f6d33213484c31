package proof

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"

	"tuckmark/marking/plane"
	"tuckmark/pdfout"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// Rules of this file: a program that others wrote draws an SVG, or a picture, as another draws
// the single page of the PDF. The two smooth thin lines each in its own way, so what is compared is
// where there is ink: every dot that one has black, the other has something about.

const (
	svgDots = 96   // to the inch
	black   = 96   // of 255, and darker: no smoothed edge
	blank   = 248  // and lighter: nothing is there
	astray  = 2    // dots that ink may lie elsewhere
	blots   = 5e-4 // the share of black dots that may have nothing about them, in letters
)

// withGoFonts lets programs find the fonts that texts are set in.
func withGoFonts(t *testing.T) {
	t.Helper()
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, "Go-Regular.ttf"), goregular.TTF, 0o644))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "Go-Bold.ttf"), gobold.TTF, 0o644))
	conf := filepath.Join(dir, "fonts.conf")
	text := fmt.Sprintf("<?xml version=\"1.0\"?><fontconfig><dir>%s</dir><cachedir>%s</cachedir></fontconfig>", dir, dir)
	require.NoError(t, os.WriteFile(conf, []byte(text), 0o644))
	t.Setenv("FONTCONFIG_FILE", conf)
}

// picture reads a picture.
func picture(t *testing.T, file string) image.Image {
	t.Helper()
	f, err := os.Open(file)
	require.NoError(t, err)
	defer f.Close()
	p, err := png.Decode(f)
	require.NoError(t, err)
	return p
}

// lightness of a dot; outside of the picture it is white.
func lightness(p image.Image, x, y int) uint32 {
	if !(image.Point{X: x, Y: y}).In(p.Bounds()) {
		return 255
	}
	r, g, b, _ := p.At(x, y).RGBA()
	return (299*r + 587*g + 114*b) / 1000 >> 8
}

// lacking counts the black dots of a picture in a part of it, and those of them about which
// another has nothing.
func lacking(of, in image.Image, part image.Rectangle) (all, missing int) {
	for y := part.Min.Y; y < part.Max.Y; y++ {
		for x := part.Min.X; x < part.Max.X; x++ {
			if lightness(of, x, y) > black {
				continue
			}
			all++
			found := false
			for dy := -astray; dy <= astray && !found; dy++ {
				for dx := -astray; dx <= astray && !found; dx++ {
					found = lightness(in, x+dx, y+dy) < blank
				}
			}
			if !found {
				missing++
			}
		}
	}
	return all, missing
}

// asSVG writes elements as an SVG of a page of a size in mm, a step to the right and down.
func asSVG(elements string, size, step plane.Point) []byte {
	return fmt.Appendf(nil, `<svg xmlns="http://www.w3.org/2000/svg" width="%gmm" height="%gmm" viewBox="%g %g %g %g">%s</svg>`,
		size.X, size.Y, -step.X, -step.Y, size.X, size.Y, elements)
}

// A page of the PDF is drawn by one program, and by another the SVG of it, its picture, and the
// picture of the sheet, which has all of the page but what stands over its window.
func TestSVGLooksLikeThePDF(t *testing.T) {
	Tool(t, "rsvg-convert")
	withGoFonts(t)
	set := sets.Examples(t, "../../examples")["pinafore.toml"]
	dir := t.TempDir()
	pdf, summary := onDisk(t, set, "single")
	dots := fmt.Sprint(svgDots)
	run(t, "pdftoppm", "-r", dots, "-png", "-singlefile", pdf, filepath.Join(dir, "pdf"))
	printed := picture(t, filepath.Join(dir, "pdf.png"))

	set.Cautions = sample.Cautions() // as onDisk has them
	single := seen.Paper(t, "single")
	var file bytes.Buffer
	_, err := pdfout.DrawSVG(&file, set, single)
	require.NoError(t, err)
	book, err := pdfout.Plan(set, single)
	require.NoError(t, err)
	page, sheet := ink.NewPicture("page", plane.Point{}), ink.NewPicture("sheet", plane.Point{})
	book.DrawPage(page, 1)
	book.DrawSheet(sheet, 0)
	size, window := summary.Paper.Size(), summary.Paper.Window()
	step := plane.Point{X: window.Min.X, Y: size.Y - window.Min.Y - sheet.Size().Y}
	under := printed.Bounds()
	under.Min.Y = int(math.Ceil(step.Y/25.4*svgDots)) + astray

	for _, c := range []struct {
		name string
		svg  []byte
		part image.Rectangle
	}{
		{"svg", file.Bytes(), printed.Bounds()},
		{"picture of the page", asSVG(page.Elements(), size, plane.Point{}), printed.Bounds()},
		{"picture of the sheet", asSVG(sheet.Elements(), size, step), under},
	} {
		t.Run(c.name, func(t *testing.T) {
			in, out := filepath.Join(dir, c.name+".svg"), filepath.Join(dir, c.name+".png")
			require.NoError(t, os.WriteFile(in, c.svg, 0o644))
			run(t, "rsvg-convert", "-d", dots, "-p", dots, "-b", "white", "-o", out, in)
			drawn := picture(t, out)
			assert.InDelta(t, printed.Bounds().Dx(), drawn.Bounds().Dx(), 1, "dots across")
			assert.InDelta(t, printed.Bounds().Dy(), drawn.Bounds().Dy(), 1, "dots down")
			for name, pair := range map[string][2]image.Image{"the PDF": {printed, drawn}, "the " + c.name: {drawn, printed}} {
				all, missing := lacking(pair[0], pair[1], c.part)
				assert.Greater(t, all, 10_000, "black dots of %s", name)
				assert.LessOrEqual(t, float64(missing), blots*float64(all), "black dots of %s that the other has nothing about", name)
				t.Logf("%s: %d black dots, %d without any about them", name, all, missing)
			}
		})
	}
}
