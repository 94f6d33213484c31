package source

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
)

// Whatever is wrong, it is told which files were looked for, and what was read of them: who
// waits for a mistake to be put right has to know where it may be.
func TestWhichFilesAreOpened(t *testing.T) {
	const front = "[piece.front.edge.a]\npoints = [[0, 0], [3, 0], [3, 4], [0, 0]]\n"
	drawn := func(name string) string { return strings.Replace(onBib, "bib.svg", name, 1) }
	folder := folderOf("bib.svg", bib, "empty.svg", "", "broken.svg", "<svg>\n<g>", "dress.toml", front, "sub/on.toml", drawn("../lost.svg")+"\n", "sub/bib.toml", drawn("bib.svg"),
		"slip.toml", "title = \"Bib\n", "wrong.toml", "titel = 3\n"+front, "row.toml", "like = \"sub/no.toml\"\n", "large.svg", strings.Repeat(" ", MaxFileSize+5))
	for _, c := range []struct {
		name, text string
		want       map[string]string // what was read; "none" where it was looked for and could not be had
	}{
		{"none", front, map[string]string{}},
		{"a drawing", onBib, map[string]string{"in/bib.svg": bib}},
		{"a drawing of two pieces", onBib + strings.Replace(onBib, "piece.bib", "piece.back", 1), map[string]string{"in/bib.svg": bib}},
		{"a broken drawing", drawn("broken.svg"), map[string]string{"in/broken.svg": "<svg>\n<g>"}},
		{"an empty drawing", drawn("empty.svg"), map[string]string{"in/empty.svg": ""}},
		{"a drawing that is too large", drawn("large.svg"), map[string]string{"in/large.svg": strings.Repeat(" ", MaxFileSize+1)}},
		{"a drawing that is not there", drawn("lost.svg"), map[string]string{"in/lost.svg": "none"}},
		{"a drawing outside", drawn("../bib.svg"), map[string]string{}},
		{"a file that it is like", "like = \"dress.toml\"\n", map[string]string{"in/dress.toml": front}},
		{"one with a slip", "like = \"slip.toml\"\n", map[string]string{"in/slip.toml": "title = \"Bib\n"}},
		{"one with a mistake", "like = \"wrong.toml\"\n", map[string]string{"in/wrong.toml": "titel = 3\n" + front}},
		{"one that is not there", "like = \"no.toml\"\n", map[string]string{"in/no.toml": "none"}},
		{"a folder", "like = \"sub\"\n", map[string]string{"in/sub": "none"}},
		{"two in a row, the second not there", "like = \"row.toml\"\n", map[string]string{"in/row.toml": "like = \"sub/no.toml\"\n", "in/sub/no.toml": "none"}},
		{"the drawing of one below", "like = \"sub/bib.toml\"\n", map[string]string{"in/sub/bib.toml": drawn("bib.svg"), "in/sub/bib.svg": "none"}},
		{"only in a view", front + "[view.bib]\n[view.bib." + onBib[1:], map[string]string{"in/bib.svg": bib}},
	} {
		t.Run(c.name, func(t *testing.T) {
			opened := map[string]string{}
			rd := Reader{Printable: sketch.HasLetter, Folder: folder, Opened: func(file string, data []byte) {
				opened[file] = string(data)
				if data == nil {
					opened[file] = "none"
				}
			}}
			_, _ = rd.ReadAll("in/f.toml", []byte(c.text))
			assert.Equal(t, c.want, opened)
		})
	}
}
