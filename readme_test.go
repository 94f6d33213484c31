package main

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// block is a fenced block of the README: its language, and its text.
type block struct{ language, text string }

func readmeBlocks(t *testing.T) []block {
	t.Helper()
	data, err := os.ReadFile("README.md")
	require.NoError(t, err)
	var blocks []block
	open := false
	for _, line := range strings.SplitAfter(string(data), "\n") {
		switch fence, isFence := strings.CutPrefix(line, "```"); {
		case isFence && !open:
			blocks = append(blocks, block{language: strings.TrimSpace(fence)})
			open = true
		case isFence:
			open = false
		case open:
			blocks[len(blocks)-1].text += line
		}
	}
	require.False(t, open, "every fence is closed")
	return blocks
}

// typed takes a command line apart; what is in quotes is one word.
func typed(line string) []string {
	var words []string
	for i, part := range strings.Split(line, `"`) {
		if i%2 == 1 {
			words = append(words, part)
		} else {
			words = append(words, strings.Fields(part)...)
		}
	}
	return words
}

// runLook runs a command that goes on until it is told to end, and ends it as Ctrl-C does as soon
// as it has said where it shows the file. No browser is opened.
func runLook(words []string, out, errs io.Writer) int {
	self, err := os.FindProcess(os.Getpid())
	if err != nil {
		return statusFault
	}
	return run(append(words, "--no-browser"), writerFunc(func(said []byte) (int, error) {
		if bytes.Contains(said, []byte("http://127.0.0.1:")) {
			if err := self.Signal(os.Interrupt); err != nil {
				return 0, err
			}
		}
		return out.Write(said)
	}), errs)
}

// writerFunc is a function that is written to.
type writerFunc func([]byte) (int, error)

func (f writerFunc) Write(said []byte) (int, error) { return f(said) }

// The TOML of the README, block after block, is one file that can be drawn, with the drawings
// that stand before it; its commands run; its error message is what that mistake gives.
func TestReadme(t *testing.T) {
	root, err := os.Getwd()
	require.NoError(t, err)
	blocks := readmeBlocks(t)
	t.Chdir(t.TempDir())
	var orchard, message string
	var excerpts []string // of what commands print
	var commands []string
	for _, b := range blocks {
		language, name, _ := strings.Cut(b.language, " ")
		switch language {
		case "svg": // the words behind it name the file
			require.NoError(t, os.WriteFile(name, []byte(b.text), 0o644))
		case "toml":
			file, text := name, b.text // one with a name stands by itself
			if name == "" {
				orchard += b.text
				file, text = "orchard.toml", orchard
			}
			require.NoError(t, os.WriteFile(file, []byte(text), 0o644))
			_, err := readPattern(file, "") // the commands below draw what all blocks come to
			assert.NoError(t, err, "the file as far as\n%s", b.text)
		case "text":
			if strings.Contains(b.text, "\nhint: ") {
				message = b.text
			} else {
				excerpts = append(excerpts, b.text)
			}
		case "sh":
			commands = append(commands, strings.Split(strings.TrimSpace(b.text), "\n")...)
		}
	}
	ran, printed := 0, ""
	for _, line := range commands {
		if line == "go test ./..." {
			continue // that is what runs now
		}
		words := typed(strings.Replace(line, "go run .", "tuckmark", 1))
		require.Equal(t, "tuckmark", words[0], line)
		for i, w := range words {
			if strings.HasPrefix(w, "examples/") {
				words[i] = filepath.Join(root, w)
			}
		}
		var out, errs bytes.Buffer
		command := run
		if words[1] == "look" && !slices.Contains(words, "--help") {
			command = runLook
		}
		assert.Equal(t, 0, command(words, &out, &errs), "%s\n%s", line, errs.String())
		printed += out.String()
		ran++
	}
	assert.Equal(t, 39, ran, "commands of the README that were run")
	assert.Len(t, excerpts, 3, "what the README shows of what is printed")
	for _, text := range excerpts {
		assert.True(t, strings.Contains(printed, text), "no command of the README prints\n%s", text)
	}
	assert.FileExists(t, "pinafore.pdf")

	gap := strings.Replace(orchard, `[["2 3/4", 12], [5, "11 3/8"]]`, `[["2 3/4", "12 1/4"], [5, "11 3/8"]]`, 1)
	require.NoError(t, os.WriteFile("orchard.toml", []byte(gap), 0o644))
	var out, errs bytes.Buffer
	assert.Equal(t, 1, run([]string{"tuckmark", "sheet", "orchard.toml"}, &out, &errs))
	assert.Equal(t, message, errs.String(), "the mistake that the README shows")
}

// Every file, and every section, that the README links to is there.
func TestReadmeLinks(t *testing.T) {
	data, err := os.ReadFile("README.md")
	require.NoError(t, err)
	var sections []string
	for line := range strings.Lines(string(data)) {
		if heading := strings.TrimLeft(line, "#"); heading != line {
			sections = append(sections, strings.ReplaceAll(strings.ToLower(strings.TrimSpace(heading)), " ", "-"))
		}
	}
	found := 0
	for _, part := range strings.Split(string(data), "](")[1:] {
		target, _, _ := strings.Cut(part, ")")
		if strings.HasPrefix(target, "http") {
			continue
		}
		found++
		if section, inside := strings.CutPrefix(target, "#"); inside {
			assert.Contains(t, sections, section, "sections of the README")
			continue
		}
		assert.FileExists(t, target)
	}
	assert.NotZero(t, found)
}
