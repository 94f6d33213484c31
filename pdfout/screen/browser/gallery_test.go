package browser

import (
	"flag"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"

	"tuckmark/pdfout/likeness"
)

// Rules of this file: the pictures of the page that the guide shows are made here, and held
// against the page as it looks now. makePictures makes all pictures of the guide; look at them.

var update = flag.Bool("update", false, "make the pictures of the page anew")

const makePictures = "go test . ./pdfout/screen/browser -run Pictures -update"

func TestPictures(t *testing.T) {
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
			drawn := likeness.Decoded(t, run(b, "a picture of the window", chromedp.CaptureScreenshot()))
			file := filepath.Join("..", "..", "..", "golden", c.name+".png")
			if *update {
				likeness.Keep(t, file, drawn)
			}
			likeness.Hold(t, file, drawn, makePictures)
		})
	}
}
