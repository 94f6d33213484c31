package proof

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// Rules of this file: what a print shop looks at before it prints, and what is read aloud or
// copied, as another program finds it.

// told is what a program says of a file, which it must do without a word of complaint.
func told(t *testing.T, name string, args ...string) string {
	t.Helper()
	cmd := exec.Command(Tool(t, name), args...)
	var complaints strings.Builder
	cmd.Stderr = &complaints
	out, err := cmd.Output()
	require.NoError(t, err, "%s: %s", name, complaints.String())
	require.Empty(t, complaints.String(), name)
	return string(out)
}

// Every page is its paper: nothing is cut off it, and it has no bleed.
func TestPageBoxes(t *testing.T) {
	for _, name := range []string{"letter", "a4", "tabloid", "roll:36in"} {
		file, summary := onDiskOn(t, sets.WithFigures(sets.Ring(), sample.DressFigures()), seen.Paper(t, name))
		boxes := map[string][]string{}
		for line := range strings.Lines(told(t, "pdfinfo", "-box", "-f", "1", "-l", "9999", file)) {
			if what, box, is := strings.Cut(line, "Box:"); is {
				kind := strings.Fields(what)
				boxes[kind[len(kind)-1]] = append(boxes[kind[len(kind)-1]], strings.Join(strings.Fields(box), " "))
			}
		}
		require.Len(t, boxes["Media"], summary.Pages, name)
		for _, kind := range []string{"Crop", "Bleed", "Trim", "Art"} {
			assert.Equal(t, boxes["Media"], boxes[kind], "%s on %s", kind, name)
		}
	}
}

// Fonts are in the file, as far as their letters are used, and every letter can be read.
func TestFonts(t *testing.T) {
	file, _ := onDisk(t, sets.WithFigures(sets.Few(), sample.DressFigures()), "a4")
	lines := strings.Split(strings.TrimSpace(told(t, "pdffonts", file)), "\n")
	require.Len(t, lines, 2+2, "two fonts under two lines of heading")
	for _, line := range lines[2:] {
		assert.Regexp(t, `^[A-Z]{6}\+Go\S+ +CID TrueType +Identity-H +yes yes yes `, line, "embedded, a subset, and Unicode known")
	}
	info, err := os.Stat(file)
	require.NoError(t, err)
	assert.Less(t, info.Size(), int64(140_000), "less than one of the fonts whole")
}

func TestWhatTheFileSays(t *testing.T) {
	file, _ := onDisk(t, sets.Few(), "a4")
	said := map[string]string{}
	for line := range strings.Lines(told(t, "pdfinfo", file)) {
		what, is, _ := strings.Cut(line, ":")
		said[what] = strings.TrimSpace(is)
	}
	assert.Equal(t, "Sunday pinafore, size 18 months", said["Title"])
	assert.Equal(t, "full size: print at 100 %, on one side of the paper", said["Subject"])
	assert.Equal(t, "tuckmark", said["Creator"])
	assert.Equal(t, "tuckmark", said["Producer"])
	assert.Equal(t, "yes", said["Metadata Stream"])
	assert.Equal(t, "1.7", said["PDF version"])
	assert.NotContains(t, said, "CreationDate", "the same file is the same whenever it is made")
}

// Fractions, built of small figures, and signs are read as they are written.
func TestWhatIsReadAloud(t *testing.T) {
	set := sets.Few()
	set.Pieces[0].Notes = []string{"tucks 3/16 in wide, 17 11/16\" over all, 2⅛ – “pressed” → up"}
	file, _ := onDisk(t, set, "letter")
	out := filepath.Join(t.TempDir(), "text")
	run(t, "pdftotext", "-raw", file, out)
	text, err := os.ReadFile(out)
	require.NoError(t, err)
	words := strings.Join(strings.Fields(string(text)), " ")
	for _, want := range []string{"tucks 3/16 in wide, 17 11/16\" over all, 2⅛ – “pressed” → up", "print at 100 %"} {
		assert.Contains(t, words, want)
	}
}
