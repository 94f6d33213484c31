package main

import (
	"bytes"
	"fmt"
	"image"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/likeness"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/proof"
	"tuckmark/pdfout/seen"
)

// Rules of this file: the pictures of the README and of the guide are pages as they are printed
// now, and a page that looks otherwise than its picture fails. Those of the browser are made
// and held in pdfout/screen/browser, by tests of the same name.

const (
	// pictureDots is how many dots a picture has in an inch: words of 9 points can be read.
	pictureDots = 60
	// makePictures is the one command that makes all pictures anew.
	makePictures = "go test . ./pdfout/screen/browser -run Pictures -update"
)

// pictures are the pages with a picture: of what a command draws, the first one with certain
// words that stands behind the order of work, where there is one.
var pictures = []struct {
	name  string
	args  []string
	words string // "" for the first page of all
}{
	{"bib-page", []string{"sheet", "bib.toml"}, "cut 1 on the fold"}, // of the README
	{"pinafore-first-page", []string{"sheet", "examples/pinafore.toml"}, ""},
	{"pinafore-page", []string{"sheet", "examples/pinafore.toml"}, "cut 1 on the fold"},
	{"pinafore-template", []string{"sheet", "--transfer", "template", "examples/pinafore.toml"}, "Front: template"},
	{"pinafore-mirrored", []string{"sheet", "--transfer", "mirror", "examples/pinafore.toml"}, "Front: mirrored"},
	{"pinafore-pricked", []string{"sheet", "--transfer", "prick", "examples/pinafore.toml"}, "Front: to be pricked"},
	{"nightgown-figures-page", []string{"sheet", "examples/nightgown.toml"}, "Trims, ruffles and bindings"},
	{"shirt-sample", []string{"sheet", "examples/shirt.toml"}, "Front: sample of the bosom tucks"},
	{"shirt-tuck-sheet", []string{"sheet", "examples/shirt.toml"}, "Front: tuck sheet"},
	{"shirt-cutting-sheet", []string{"sheet", "examples/shirt.toml"}, "Front: cutting sheet"},
	{"shirt-gauges", []string{"gauge", "examples/shirt.toml"}, "Straight"},
	{"smock-necks", []string{"sheet", "--all-views", "examples/smock.toml"}, "Front: cutting sheet"},
	{"grid-guide", []string{"grid"}, "How a piece is read off"},
}

func TestPictures(t *testing.T) {
	for _, c := range pictures {
		t.Run(c.name, func(t *testing.T) {
			drawn := pictureOfPage(t, c.args, c.words)
			file := filepath.Join("golden", c.name+".png")
			if *update {
				likeness.Keep(t, file, drawn)
			}
			likeness.Hold(t, file, drawn, makePictures)
		})
	}
}

// pictureOfPage draws the first page that has some words of what a command makes.
func pictureOfPage(t *testing.T, args []string, words string) image.Image {
	renderer := proof.Tool(t, "pdftoppm")
	dir := t.TempDir()
	pdf := filepath.Join(dir, "sheets.pdf")
	var out, errs bytes.Buffer
	line := slices.Concat([]string{"tuckmark", args[0], "--paper", "letter", "-o", pdf}, args[1:])
	for _, b := range fences(t, "README.md") {
		if name, whole := strings.CutPrefix(b.kind, "toml "); whole && name == args[len(args)-1] {
			line[len(line)-1] = filepath.Join(dir, name)
			require.NoError(t, os.WriteFile(line[len(line)-1], []byte(b.text), 0o644))
		}
	}
	require.Equal(t, 0, run(line, &out, &errs), errs.String())
	data, err := os.ReadFile(pdf)
	require.NoError(t, err)
	n := 0
	if words != "" {
		// The pages in front name the others.
		pages := seen.Read(t, data, paper.Scale{}).Pages
		front := 1 + slices.IndexFunc(pages, func(p seen.Page) bool { return slices.Contains(p.Words(), "The order of work") })
		behind := slices.IndexFunc(pages[front:], func(p seen.Page) bool { return slices.Contains(p.Words(), words) })
		require.NotEqual(t, -1, behind, "no page has %q", words)
		n = front + behind
	}
	page := fmt.Sprint(n + 1)
	cmd := exec.Command(renderer, "-r", fmt.Sprint(pictureDots), "-png", "-f", page, "-l", page, "-singlefile", pdf, filepath.Join(dir, "page"))
	said, err := cmd.CombinedOutput()
	require.NoError(t, err, string(said))
	drawn, err := os.ReadFile(filepath.Join(dir, "page.png"))
	require.NoError(t, err)
	return likeness.Decoded(t, drawn)
}

// Every picture is shown by a page, and every picture of a page is made by a test.
func TestEveryPictureIsShown(t *testing.T) {
	var shown []string
	for _, page := range guidePages(t) {
		for _, target := range linksOf(t, page) {
			if filepath.Ext(target) == ".png" {
				shown = append(shown, filepath.Base(target))
			}
		}
	}
	made := []string{"look-folded.png", "look-sheets.png"} // in the browser
	for _, c := range pictures {
		made = append(made, c.name+".png")
	}
	assert.ElementsMatch(t, made, shown, "pictures that are made, and those that pages show, each once")
}
