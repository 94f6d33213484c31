package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/source"
)

// Whatever is drawn of a file that is looked at is told, in each of its views, with lines of the
// others on the sheets too; and what is told stands in a file that was read.
func TestLookTellsWhatItDraws(t *testing.T) {
	for _, file := range examples(t) {
		for name, p := range map[string]printing{
			"as it is": {times: 1},
			"with all": {times: 1, gauges: true, allViews: true, transfers: []source.Transfer{source.Trace, source.Template, source.Mirror, source.Prick}},
		} {
			l := &looking{printing: p, in: file}
			require.NoError(t, l.begin())
			require.Empty(t, l.scene.Mistakes)
			require.Len(t, l.scene.Views, len(l.good))
			for i, view := range l.scene.Views {
				told := map[mark.At]mark.Told{}
				for _, one := range view.Told() {
					told[one.At] = one
					for _, place := range one.Places {
						assert.Contains(t, l.files(), place.File, "%s, %s: %v", file, name, one.At)
					}
				}
				for _, m := range l.good[i].set().Pieces {
					for _, line := range m.Marks {
						if called := line.Called(); called != "" && m.Form == nil {
							assert.Contains(t, told, mark.At{Piece: m.Key, Line: called}, "%s, %s: a %s", file, name, line.Role)
						}
					}
				}
				for _, remark := range view.Remarks() {
					for _, at := range remark.At {
						assert.Contains(t, told, at, "%s, %s: %s", file, name, remark.Text)
					}
				}
			}
		}
	}
}

// Of a gap between two edges the lines of both are shown, for either may be the wrong one.
func TestLookShowsBothLinesOfAGap(t *testing.T) {
	file := filepath.Join(t.TempDir(), "bib.toml")
	text := "unit = \"in\"\n[piece.bib]\n[piece.bib.edge.top]\npoints = [[0, 8], [4, 8]]\n\n[piece.bib.edge.side]\npoints = [[4, \"8 1/4\"], [4, 0]]\n\n" +
		"[piece.bib.edge.rest]\npoints = [[4, 0], [0, 0], [0, 8]]\n"
	require.NoError(t, os.WriteFile(file, []byte(text), 0o600))
	l := &looking{printing: printing{times: 1}, in: file}
	require.NoError(t, l.begin())
	require.Len(t, l.scene.Mistakes, 1)
	var marked []int
	for _, line := range l.scene.Mistakes[0].Lines {
		if line.Caret != (fault.Caret{}) {
			marked = append(marked, line.Number)
		}
	}
	assert.Equal(t, []int{4, 7}, marked)
}

// What is shown follows the file, and nothing else: a mistake leaves the views of before, also
// one that the file is gone.
func TestLookFollowsTheFile(t *testing.T) {
	whole, err := os.ReadFile("examples/smock.toml")
	require.NoError(t, err)
	file := filepath.Join(t.TempDir(), "smock.toml")
	write := func(text string) { require.NoError(t, os.WriteFile(file, []byte(text), 0o600)) }
	write(string(whole))
	l := &looking{printing: printing{times: 1}, in: file}
	require.NoError(t, l.begin())
	first := l.scene
	require.Len(t, first.Views, 2, "as it stands, and square")

	require.False(t, l.follow(), "a file that has not changed is shown again")
	require.Same(t, first, l.scene)

	write(strings.Replace(string(whole), "title =", "titel =", 1))
	require.True(t, l.follow())
	wrong := l.scene
	require.Len(t, wrong.Mistakes, 1)
	assert.Contains(t, wrong.Mistakes[0].Text, "not known")
	require.NotEmpty(t, wrong.Mistakes[0].Lines)
	assert.Equal(t, first.Title, wrong.Title)
	assert.Len(t, wrong.Views, 2, "the views of before")
	assert.Greater(t, wrong.Version, first.Version)

	require.NoError(t, os.Remove(file))
	require.True(t, l.follow())
	require.Len(t, l.scene.Mistakes, 1)
	assert.Equal(t, "the file is not there any more", l.scene.Mistakes[0].Text)
	assert.Equal(t, "save it there again, under the same name, and the picture follows it", l.scene.Mistakes[0].Hint)
	assert.Contains(t, l.files(), file, "a file that is gone is waited for")
	require.False(t, l.follow(), "it is told once")

	require.NoError(t, os.Mkdir(file, 0o700))
	require.True(t, l.follow())
	assert.Contains(t, l.scene.Mistakes[0].Text, "folder", "what cannot be read in another way is told anew")
	require.NoError(t, os.Remove(file))

	write(strings.Replace(string(whole), "Lantern smock", "Lantern dress", 1))
	require.True(t, l.follow())
	assert.Empty(t, l.scene.Mistakes)
	assert.Contains(t, l.scene.Title, "Lantern dress")
}

// What cannot be read at the first time, and options that do not go with the file, end the command.
func TestLookThatCannotBegin(t *testing.T) {
	missing := &looking{printing: printing{times: 1}, in: filepath.Join(t.TempDir(), "none.toml")}
	assert.ErrorContains(t, missing.begin(), "there is no such file")
	strange := &looking{printing: printing{times: 1, pieces: []string{"hat"}}, in: "examples/pinafore.toml"}
	assert.ErrorAs(t, strange.begin(), new(usageFault))
	assert.Nil(t, strange.scene)
	picture := filepath.Join(t.TempDir(), "dress.pdf")
	require.NoError(t, os.WriteFile(picture, []byte("%PDF-1.4\n"), 0o600))
	printed := &looking{printing: printing{times: 1}, in: picture}
	assert.ErrorContains(t, printed.begin(), "this is a PDF")
}

// A mistake in one view is told, with those of others; at first the views that are right are shown.
func TestLookAtViewsOfWhichSomeAreWrong(t *testing.T) {
	whole, err := os.ReadFile("examples/smock.toml")
	require.NoError(t, err)
	file := filepath.Join(t.TempDir(), "smock.toml")
	wrong := "\n[view.narrow.piece.front.tuck.lantern]\nwidth = 4\n[view.strange.piece.front.tuck.lantern]\nwidth = 5\n"
	require.NoError(t, os.WriteFile(file, append(whole, wrong...), 0o600))
	l := &looking{printing: printing{times: 1}, in: file}
	require.NoError(t, l.begin())
	var views, lines []string
	for _, view := range l.scene.Views {
		views = append(views, view.Title)
	}
	for _, mistake := range l.scene.Mistakes {
		lines = append(lines, mistake.Place.InFile())
	}
	assert.Equal(t, []string{"as it stands", "square"}, views)
	last := strings.Count(string(whole)+wrong, "\n")
	assert.Equal(t, []string{fmt.Sprintf("%s:%d", file, last-3), fmt.Sprintf("%s:%d", file, last-1)}, lines)
}

// The picture is as new as the newest of the files that it is made of.
func TestLookSaysWhenItWasSaved(t *testing.T) {
	folder := t.TempDir()
	front := filepath.Join(folder, "front.toml")
	require.NoError(t, os.WriteFile(front, []byte("[piece.front]\nrectangle = [4, 6]\n"), 0o600))
	file := filepath.Join(folder, "dress.toml")
	require.NoError(t, os.WriteFile(file, []byte("like = \"front.toml\"\n"), 0o600))
	newer := time.Date(2031, 5, 4, 11, 42, 7, 0, time.Local)
	require.NoError(t, os.Chtimes(front, newer, newer))
	l := &looking{printing: printing{times: 1}, in: file}
	require.NoError(t, l.begin())
	assert.Equal(t, newer, l.scene.Saved)
}
