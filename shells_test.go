package main

import (
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/proof"
)

// Rules of this file: each script is read by its own shell, as far as that is installed,
// which is then asked what may follow on a line. How a shell asks a script is told by its
// manual: bash sets COMP_WORDS and COMP_CWORD (Programmable Completion), zsh words, CURRENT and
// PREFIX (Completion Widgets); fish answers `complete -C`.

// askShell is a line of each shell that completes the words $1 ... and prints what it
// offers, a word a line.
var askShell = map[string][]string{
	"bash": {"bash", "--norc", "-c", `eval "$(tuckmark completion bash)"
		COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _tuckmark "$1"; printf '%s\n' "${COMPREPLY[@]}"`, "-"},
	"zsh": {"zsh", "-f", "-c", `compdef() { :; }; _describe() { print -l -- ${${(P)2}%%:*} }; _files() { print -l -- ${~2} *(/N:t) }
		eval "$(tuckmark completion zsh)"
		words=("$@") CURRENT=$# PREFIX=${@[-1]}; _tuckmark | while read -r one; do [[ $one == $PREFIX* ]] && print -r -- $one; done; true`, "-"},
	"fish": {"fish", "--no-config", "-c", `tuckmark completion fish | source; complete -C "$argv" | string replace -r '\t.*' ''; true`},
}

func TestShellsComplete(t *testing.T) {
	folder := t.TempDir()
	for _, name := range []string{"dress.toml", "my dress.toml", "dress.pdf"} {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), nil, 0o666))
	}
	require.NoError(t, os.Mkdir(filepath.Join(folder, "summer"), 0o777))
	for name, line := range askShell {
		t.Run(name, func(t *testing.T) {
			proof.Tool(t, name)
			for _, c := range []struct{ typed, want string }{
				{"tuckmark s", "scale sheet start"},
				{"tuckmark sheet --pa", "--paper"},
				{"tuckmark sheet dress.toml --land", "--landscape"},
				{"tuckmark sheet --paper a", "a3 a4"},
				{"tuckmark completion z", "zsh"},
				{"tuckmark look dress", "dress.toml"},
				{"tuckmark look summ", "summer"},
			} {
				words := strings.Fields(c.typed)
				if name == "fish" {
					words = []string{c.typed}
				}
				command := exec.Command(line[0], append(line[1:], words...)...)
				command.Dir = folder
				said, err := command.CombinedOutput()
				require.NoError(t, err, "%s", said)
				offered := strings.Fields(strings.ReplaceAll(string(said), "/", ""))
				assert.ElementsMatch(t, strings.Fields(c.want), offered, "behind %q", c.typed)
			}
		})
	}
}

// What a script offers is what the program answers, and nothing that somebody wrote down.
func TestScriptsHoldNoWordsOfTheirOwn(t *testing.T) {
	app := newApp(io.Discard, io.Discard)
	for _, shell := range shells {
		assert.Contains(t, shell.script, "--generate-bash-completion", shell.name)
		words := strings.FieldsFunc(shell.script, func(r rune) bool { return !unicode.IsLetter(r) && r != '-' })
		for _, command := range app.Commands {
			assert.NotContains(t, words, command.Name, shell.name)
			for _, name := range optionNames(command) {
				assert.NotContains(t, words, "--"+name, shell.name)
			}
		}
	}
}
