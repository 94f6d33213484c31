package main

import (
	"bytes"
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// Rules of this file: pages are held against small grey pictures of them in golden/pages,
// as a reader sees them, who neither counts dots nor minds which program drew them. `go
// test . -update` draws the pictures anew, where the renderer is there; look at them.

const (
	// pictureDots is how many dots a picture has in an inch: a word of 9 points is just
	// seen in it.
	pictureDots = 40
	// blurReach is how far each dot of a picture is spread before two are compared, in
	// dots: 2.5 mm. So a line that one renderer draws half a dot aside is the same line.
	blurReach = 4
	// mostUnlike is how much two blurred dots may differ, of 255: less than what a line of
	// 0.6 mm makes that lies 2 mm aside, or a short word that is missing (TestMostApart).
	mostUnlike = 6.0
)

// goldenPages are the pages with a picture: the first one with certain words.
var goldenPages = []struct {
	name  string
	args  []string // of `tuckmark sheet`
	words string   // "" for the first page of all
}{
	{"pinafore-first", []string{"examples/pinafore.toml"}, ""},
	{"nightgown-figures", []string{"examples/nightgown.toml"}, "Tear and cut first"},
	{"shirt-sample", []string{"examples/shirt.toml"}, "What to do"},
	{"shirt-tuck-sheet", []string{"examples/shirt.toml"}, "Front: tuck sheet"},
	{"shirt-cutting-sheet", []string{"examples/shirt.toml"}, "Front: cutting sheet"},
	{"pinafore-template", []string{"--transfer", "template", "examples/pinafore.toml"}, "Front: template"},
}

func TestPagesLookAsBefore(t *testing.T) {
	for _, c := range goldenPages {
		t.Run(c.name, func(t *testing.T) {
			drawn := pictureOfPage(t, c.args, c.words)
			file := filepath.Join("golden", "pages", c.name+".png")
			if *update {
				var b bytes.Buffer
				require.NoError(t, (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&b, drawn))
				require.NoError(t, os.WriteFile(file, b.Bytes(), 0o644))
			}
			kept, err := os.ReadFile(file)
			require.NoError(t, err)
			golden, err := png.Decode(bytes.NewReader(kept))
			require.NoError(t, err)
			unlike, at, err := mostApart(golden, drawn)
			require.NoError(t, err)
			assert.LessOrEqual(t, unlike, mostUnlike, "the page looks otherwise than %s, most of all %.0f mm from the left and %.0f mm from the top: see whether it is meant, then go test . -update",
				file, float64(at.X)*25.4/pictureDots, float64(at.Y)*25.4/pictureDots)
		})
	}
}

// pictureOfPage draws the first page of sheets that has some words.
func pictureOfPage(t *testing.T, args []string, words string) image.Image {
	renderer := tool(t, "pdftoppm")
	dir := t.TempDir()
	pdf := filepath.Join(dir, "sheets.pdf")
	var out, errs bytes.Buffer
	require.Equal(t, 0, run(append([]string{"tuckmark", "sheet", "--paper", "letter", "-o", pdf}, args...), &out, &errs), errs.String())
	data, err := os.ReadFile(pdf)
	require.NoError(t, err)
	n := 0
	if words != "" {
		// The pages in front name the others.
		pages := seen.Read(t, data, paper.Scale{}).Pages
		front := 1 + slices.IndexFunc(pages, func(p seen.Page) bool { return slices.Contains(p.Words(), "The order of work") })
		n = front + slices.IndexFunc(pages[front:], func(p seen.Page) bool { return slices.Contains(p.Words(), words) })
		require.Positive(t, n, "no page has %q", words)
	}
	page := fmt.Sprint(n + 1)
	cmd := exec.Command(renderer, "-r", fmt.Sprint(pictureDots), "-gray", "-png", "-f", page, "-l", page, "-singlefile", pdf, filepath.Join(dir, "page"))
	said, err := cmd.CombinedOutput()
	require.NoError(t, err, string(said))
	drawn, err := os.ReadFile(filepath.Join(dir, "page.png"))
	require.NoError(t, err)
	picture, err := png.Decode(bytes.NewReader(drawn))
	require.NoError(t, err)
	return picture
}

// mostApart is how much two pictures of one size differ where they do most, of 255, each
// blurred, and where that is.
func mostApart(a, b image.Image) (float64, image.Point, error) {
	if a.Bounds() != b.Bounds() {
		return 0, image.Point{}, fmt.Errorf("a picture of %v and one of %v", a.Bounds(), b.Bounds())
	}
	box := a.Bounds()
	wide := box.Dx()
	apart := make([]float64, wide*box.Dy())
	for i := range apart {
		x, y := box.Min.X+i%wide, box.Min.Y+i/wide
		apart[i] = level(a, x, y) - level(b, x, y)
	}
	// Blurring is a sum, so the difference may be blurred in place of the two.
	for range 2 {
		apart = spread(apart, wide, 1)
		apart = spread(apart, wide, wide)
	}
	most, at := 0.0, 0
	for i, d := range apart {
		if math.Abs(d) > most {
			most, at = math.Abs(d), i
		}
	}
	return most, image.Pt(box.Min.X+at%wide, box.Min.Y+at/wide), nil
}

// level is how light a dot is, of 255.
func level(p image.Image, x, y int) float64 {
	r, g, b, _ := p.At(x, y).RGBA()
	return float64(r+g+b) / 3 / 257
}

// spread is the mean of each dot and its neighbours in a row of dots that are a step apart; a
// row is never longer than the picture is wide or high.
func spread(dots []float64, wide, step int) []float64 {
	all := make([]float64, len(dots))
	for i := range dots {
		sum, n := 0.0, 0
		for k := -blurReach; k <= blurReach; k++ {
			j := i + k*step
			if j >= 0 && j < len(dots) && (step == wide || j/wide == i/wide) {
				sum, n = sum+dots[j], n+1
			}
		}
		all[i] = sum / float64(n)
	}
	return all
}

// What a reader does not see is passed over, and what a maker would miss is not.
func TestMostApart(t *testing.T) {
	blank := func() *image.Gray {
		p := image.NewGray(image.Rect(0, 0, 120, 100))
		for i := range p.Pix {
			p.Pix[i] = 255
		}
		return p
	}
	fill := func(p *image.Gray, box image.Rectangle, grey uint8) *image.Gray {
		for y := box.Min.Y; y < box.Max.Y; y++ {
			for x := box.Min.X; x < box.Max.X; x++ {
				p.Pix[p.PixOffset(x, y)] = grey
			}
		}
		return p
	}
	line := fill(blank(), image.Rect(60, 10, 61, 90), 0)
	for _, c := range []struct {
		name string
		a, b *image.Gray
		like bool
	}{
		{"the same", line, line, true},
		{"a line half a dot aside", line, fill(blank(), image.Rect(60, 10, 62, 90), 128), true},
		{"a tint a little lighter", fill(blank(), image.Rect(20, 20, 80, 80), 230), fill(blank(), image.Rect(20, 20, 80, 80), 235), true},
		{"a line 2 mm aside", line, fill(blank(), image.Rect(63, 10, 64, 90), 0), false},
		{"a line that is missing", line, blank(), false},
		{"a fine line that is missing", fill(blank(), image.Rect(60, 10, 61, 90), 150), blank(), false},
		{"a word that is missing", fill(blank(), image.Rect(60, 50, 68, 53), 120), blank(), false},
	} {
		unlike, _, err := mostApart(c.a, c.b)
		require.NoError(t, err)
		t.Logf("%s: %.1f", c.name, unlike)
		assert.Equal(t, c.like, unlike <= mostUnlike, "%s: %.1f", c.name, unlike)
	}
	_, _, err := mostApart(image.NewGray(image.Rect(0, 0, 1, 2)), image.NewGray(image.Rect(0, 0, 2, 1)))
	assert.Error(t, err)
}
