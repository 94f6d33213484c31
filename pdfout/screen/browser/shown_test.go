package browser

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: what is shown is what the other commands make of the same file.

// made is what the program says to a command line about a file.
func made(t *testing.T, file string, args ...string) string {
	t.Helper()
	command := exec.Command(built(t), args...)
	command.Dir = filepath.Dir(file)
	says, err := command.Output()
	require.NoError(t, err, "%v", args)
	return string(says)
}

// The button gives the PDF that sheet writes, byte for byte, of the view that is looked at.
func TestThePrintButtonGivesTheSheets(t *testing.T) {
	file := copied(t, frock)
	b := openTab(t, desk, look(t, file, "--paper", "a4").address)
	for _, c := range []struct {
		address string
		flags   []string
	}{
		{"", nil},
		{"?view=square", []string{"--view", "square"}},
	} {
		b.open("/" + c.address)
		b.loaded()
		got := value[string](b, `fetch(document.getElementById("print").href).then(a => a.arrayBuffer()).then(d => crypto.subtle.digest("SHA-256", d)).then(h => new Uint8Array(h).toHex())`)
		out := filepath.Join(t.TempDir(), "sheets.pdf")
		made(t, file, append([]string{"sheet", "--paper", "a4", "-o", out, filepath.Base(file)}, c.flags...)...)
		pdf, err := os.ReadFile(out)
		require.NoError(t, err)
		want := sha256.Sum256(pdf)
		assert.Equal(t, hex.EncodeToString(want[:]), got, "the PDF at %q", c.address)
	}
}

// The figures are those that the command prints: every row of every table.
func TestTheFiguresAreThoseOfTheCommand(t *testing.T) {
	for _, source := range append(examples(t), frock) {
		t.Run(filepath.Base(source), func(t *testing.T) {
			file := copied(t, source)
			b := openTab(t, desk, look(t, file).address+"?show=figures")
			b.loaded()
			words := func(line string) string { return strings.Join(strings.Fields(line), " ") }
			printed := map[string]int{}
			for _, line := range strings.Split(made(t, file, "figures", filepath.Base(file)), "\n") {
				printed[words(line)]++
			}
			rows := value[[]string](b, `[...document.querySelectorAll("#figures tbody tr")].map(r => [...r.cells].map(c => c.textContent).join(" "))`)
			require.NotEmpty(t, rows)
			for _, row := range rows {
				printed[words(row)]--
				assert.GreaterOrEqual(t, printed[words(row)], 0, "a row that figures does not print, or not as often: %q", words(row))
			}
		})
	}
}

// examples are the files that stand in the examples' folder.
func examples(t testing.TB) []string {
	t.Helper()
	all, err := filepath.Glob(filepath.Join("..", "..", "..", "examples", "*.toml"))
	require.NoError(t, err)
	require.NotEmpty(t, all)
	return all
}

// A piece as it is sewn and pressed is there, with its layers; half of it is half as wide.
func TestFolded(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address+"?show=folded")
	b.loaded()
	parts := value[[]string](b, `[...document.querySelectorAll(".parts a")].map(a => a.textContent)`)
	assert.Contains(t, strings.Join(parts, "; "), "Front")
	layers := value[int](b, `document.querySelectorAll("#layers [data-layer]").length`)
	assert.Positive(t, layers)
	width := `document.getElementById("drawing").getBBox().width`
	whole := value[float64](b, width)
	b.click(`a[href="./?show=folded&lay=half"]`)
	b.until(fmt.Sprintf(`%s < %f * 0.8`, width, whole), "half of it is narrower")
	require.NoError(t, saves[0].save(l.file, changed(t, text(t, frock), "count = 3", "count = 2")))
	b.until(`document.getElementById("said").textContent !== ""`, "it follows the file")
}

// The views of a file lie beside one another, or over each other.
func TestViews(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address+"?show=views")
	b.loaded()
	width := `document.getElementById("drawing").getBBox().width`
	beside := value[float64](b, width)
	b.click(`a[href="./?show=views&lay=over"]`)
	b.until(fmt.Sprintf(`%s < %f * 0.8`, width, beside), "laid over each other they are narrower")
}
