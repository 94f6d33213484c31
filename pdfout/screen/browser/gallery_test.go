package browser

import (
	"bytes"
	"cmp"
	"flag"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: the pictures of the page that the README shows are made here, with `go
// test ./pdfout/screen/browser -run Gallery -update`; look at them. They are held against the
// page as somebody sees it who minds neither single dots nor the browser's edges of letters.

var update = flag.Bool("update", false, "make the pictures of the page anew")

const (
	tileDots   = 24 // a picture is compared in squares of so many dots
	mostUnlike = 12 // of 255, that the mean of a square may differ
)

func TestGallery(t *testing.T) {
	for _, c := range []struct{ name, example, address string }{
		{"look-sheets", "pinafore.toml", ""},
		{"look-folded", "smock.toml", "?show=folded"},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := openTab(t, screen{wide: 1400, high: 860}, look(t, copied(t, filepath.Join("..", "..", "..", "examples", c.example))).address+c.address)
			b.loaded()
			// When the file was saved is other every time.
			value[any](b, `void document.querySelectorAll("time").forEach(e => e.textContent = "11:42:07")`)
			b.settled()
			shot := run(b, "a picture of the window", chromedp.CaptureScreenshot())
			file := filepath.Join("..", "..", "..", "golden", c.name+".png")
			if *update {
				require.NoError(t, os.WriteFile(file, smaller(t, shot), 0o644))
			}
			kept, err := os.ReadFile(file)
			require.NoError(t, err)
			unlike, at := mostApart(t, kept, shot)
			assert.LessOrEqual(t, unlike, mostUnlike, "the page looks otherwise than %s, most of all about %v: see whether it is meant, then -run Gallery -update", file, at)
		})
	}
}

// smaller is a picture in a table of its colours, as far as 256 go.
func smaller(t *testing.T, data []byte) []byte {
	t.Helper()
	picture := decoded(t, data)
	var out bytes.Buffer
	require.NoError(t, (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&out, fewColours(picture)))
	return out.Bytes()
}

func decoded(t *testing.T, data []byte) image.Image {
	t.Helper()
	picture, err := png.Decode(bytes.NewReader(data))
	require.NoError(t, err)
	return picture
}

// mostApart is how much the squares of two pictures differ where they do most, in the mean of
// all their dots, of 255, and where that is.
func mostApart(t *testing.T, a, b []byte) (int, image.Point) {
	t.Helper()
	one, other := decoded(t, a), decoded(t, b)
	require.Equal(t, one.Bounds(), other.Bounds(), "the size of the window")
	most, where := 0, image.Point{}
	for y := 0; y < one.Bounds().Dy(); y += tileDots {
		for x := 0; x < one.Bounds().Dx(); x += tileDots {
			tile := image.Rect(x, y, x+tileDots, y+tileDots).Intersect(one.Bounds())
			apart := max(mean(one, tile)-mean(other, tile), mean(other, tile)-mean(one, tile))
			if apart > most {
				most, where = apart, image.Pt(x, y)
			}
		}
	}
	return most, where
}

// mean is how light a square is, of 255.
func mean(p image.Image, tile image.Rectangle) int {
	sum := 0
	for y := tile.Min.Y; y < tile.Max.Y; y++ {
		for x := tile.Min.X; x < tile.Max.X; x++ {
			r, g, b, _ := p.At(x, y).RGBA()
			sum += int(r+g+b) / 3 / 257
		}
	}
	return sum / (tile.Dx() * tile.Dy())
}

// fewColours is a picture with the 256 colours that it has most of; the others are drawn as the
// nearest of these.
func fewColours(picture image.Image) image.Image {
	count := map[color.RGBA]int{}
	box := picture.Bounds()
	for y := box.Min.Y; y < box.Max.Y; y++ {
		for x := box.Min.X; x < box.Max.X; x++ {
			count[color.RGBAModel.Convert(picture.At(x, y)).(color.RGBA)]++
		}
	}
	most := slices.SortedFunc(maps.Keys(count), func(a, b color.RGBA) int {
		return cmp.Or(cmp.Compare(count[b], count[a]), cmp.Compare(a.R, b.R), cmp.Compare(a.G, b.G), cmp.Compare(a.B, b.B))
	})
	palette := color.Palette{}
	for _, c := range most[:min(len(most), 256)] {
		palette = append(palette, c)
	}
	few := image.NewPaletted(box, palette)
	draw.Draw(few, box, picture, box.Min, draw.Src)
	return few
}
