package proof

import (
	"fmt"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"

	"tuckmark/pdfout"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// Rules of this file: a program that others wrote draws an SVG as another draws the single
// page of the PDF. The two smooth thin lines each in its own way, so what is compared is
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

// lacking counts the black dots of a picture, and those of them about which another has
// nothing.
func lacking(of, in image.Image) (all, missing int) {
	for y := of.Bounds().Min.Y; y < of.Bounds().Max.Y; y++ {
		for x := of.Bounds().Min.X; x < of.Bounds().Max.X; x++ {
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

func TestSVGLooksLikeThePDF(t *testing.T) {
	tool(t, "rsvg-convert")
	withGoFonts(t)
	set := sets.Examples(t, "../../examples")["linden.toml"]
	dir := t.TempDir()
	pdf, _ := onDisk(t, set, "single")
	dots := fmt.Sprint(svgDots)
	run(t, "pdftoppm", "-r", dots, "-png", "-singlefile", pdf, filepath.Join(dir, "pdf"))

	svg, err := os.Create(filepath.Join(dir, "sheets.svg"))
	require.NoError(t, err)
	set.Cautions = sample.Cautions() // as onDisk has them
	_, err = pdfout.DrawSVG(svg, set, seen.Paper(t, "single"))
	require.NoError(t, err)
	require.NoError(t, svg.Close())
	run(t, "rsvg-convert", "-d", dots, "-p", dots, "-b", "white", "-o", filepath.Join(dir, "svg.png"), svg.Name())

	printed, drawn := picture(t, filepath.Join(dir, "pdf.png")), picture(t, filepath.Join(dir, "svg.png"))
	assert.InDelta(t, printed.Bounds().Dx(), drawn.Bounds().Dx(), 1, "dots across")
	assert.InDelta(t, printed.Bounds().Dy(), drawn.Bounds().Dy(), 1, "dots down")
	for name, pair := range map[string][2]image.Image{"the PDF": {printed, drawn}, "the SVG": {drawn, printed}} {
		all, missing := lacking(pair[0], pair[1])
		assert.Greater(t, all, 10_000, "black dots of %s", name)
		assert.LessOrEqual(t, float64(missing), blots*float64(all), "black dots of %s that the other has nothing about", name)
		t.Logf("%s: %d black dots, %d without any about them", name, all, missing)
	}
}
