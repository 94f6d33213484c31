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

// askShell is a line of each shell that completes what is handed to it, and prints what it offers,
// a word a line.
var askShell = map[string][]string{
	"bash": {"bash", "--norc", "-c", `eval "$(tuckmark completion bash)"
		COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _tuckmark "$1"; printf '%s\n' "${COMPREPLY[@]}"`, "-"},
	"zsh": {"zsh", "-f", "-c", `compdef() { :; }; compset() { PREFIX=${PREFIX#-*=}; }
		_describe() { print -l -- ${${${${(P)2}//\\:/$'\1'}%%:*}//$'\1'/:} }
		_files() { local one; for one in ${~${=2}} *(/N:t); do [[ $one == ${(Q)PREFIX}* ]] && print -r -- $one; done; true }
		_path_files() { print -l -- *(/N:t) }; eval "$(tuckmark completion zsh)"
		words=("$@") CURRENT=$# PREFIX=${@[-1]}; _tuckmark`, "-"},
	"fish": {"fish", "--no-config", "-c", `tuckmark completion fish | source; complete -C "$argv" | string replace -r '\t.*' ''; true`},
}

// wordsTyped parts what was typed as a shell does that leaves quotes and backslashes in its words;
// at these signs too, which are words then.
func wordsTyped(line, signs string) []string {
	words, quote, escaped := []string{""}, rune(0), false
	for _, c := range line {
		last := &words[len(words)-1]
		switch {
		case escaped || c == '\\':
			escaped = !escaped
			*last += string(c)
		case quote != 0 || c == '\'' || c == '"':
			if quote == 0 {
				quote = c
			} else if quote == c {
				quote = 0
			}
			*last += string(c)
		case c == ' ':
			words = append(words, "")
		case strings.ContainsRune(signs, c):
			words = append(words, string(c), "")
		default:
			*last += string(c)
		}
	}
	if last := len(words) - 1; words[last] == "" && strings.ContainsAny(line[len(line)-1:], signs) {
		return words[:last] // the cursor is at the sign
	}
	return words
}

func TestShellsComplete(t *testing.T) {
	folder := t.TempDir()
	const dress = "[piece.front]\nrectangle = [4, 6]\n[piece.\"it's $5\"]\nrectangle = [4, 6]\n[piece.\"front band\"]\nrectangle = [4, 6]\n[view.round.piece.front]\nrectangle = [5, 6]\n"
	for _, name := range []string{"dress.toml", "my dress.toml", "it's $5.toml", "round:neck.toml"} {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte("unit = \"in\"\n"+dress), 0o666))
	}
	require.NoError(t, os.WriteFile(filepath.Join(folder, "wrong.toml"), []byte("unit = \"in\n"), 0o666))
	for _, name := range []string{"dress.pdf", "dress.svg", "notes.txt"} {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), nil, 0o666))
	}
	require.NoError(t, os.Mkdir(filepath.Join(folder, "summer"), 0o777))
	for name, line := range askShell {
		t.Run(name, func(t *testing.T) {
			proof.Tool(t, name)
			for _, c := range []struct {
				typed string
				want  []string
			}{
				{"tuckmark s", []string{"start", "sheet", "scale"}},
				{"tuckmark sheet --pa", []string{"--paper"}},
				{"tuckmark sheet dress.toml --land", []string{"--landscape"}},
				{"tuckmark sheet --paper a", []string{"a4", "a3"}},
				{"tuckmark sheet --paper=a", []string{"--paper=a4", "--paper=a3"}},
				{"tuckmark sheet --paper roll:", []string{"roll:36in"}},
				{"tuckmark sheet --paper=roll:3", []string{"--paper=roll:36in"}},
				{"tuckmark sheet --paper roll:36in dress.toml --land", []string{"--landscape"}},
				{"tuckmark look round:n", []string{"round:neck.toml"}},
				{"tuckmark grid --unit=", []string{"--unit=in", "--unit=cm", "--unit=mm"}},
				{"tuckmark sheet --transfer trace,t", []string{"trace,template"}},
				{"tuckmark completion z", []string{"zsh"}},
				{"tuckmark look dress", []string{"dress.toml"}},
				{"tuckmark look my", []string{"my dress.toml"}},
				{`tuckmark look my\ d`, []string{"my dress.toml"}},
				{"tuckmark look it", []string{"it's $5.toml"}},
				{"tuckmark look summ", []string{"summer"}},
				{"tuckmark start ", []string{"summer"}},
				{"tuckmark sheet -o dr", []string{"dress.pdf", "dress.svg"}},
				{"tuckmark sheet --margin d", nil},
				{"tuckmark sheet -- --pa", nil},
				{"tuckmark sheet dress.toml --pieces f", []string{"front", "front band"}},
				{`tuckmark sheet my\ dress.toml --pieces front,i`, []string{"front,it's $5"}},
				{`tuckmark sheet 'my dress.toml' --view r`, []string{"round"}},
				{`tuckmark sheet it\'s\ \$5.toml --view=`, []string{"--view=round"}},
				{"tuckmark sheet wrong.toml --pieces f", nil},
				{"tuckmark sheet none.toml --view r", nil},
			} {
				words, ahead := []string{c.typed}, ""
				switch name {
				case "bash": // which hands on what is behind an equals sign or a colon alone
					words = wordsTyped(c.typed, "=:")
					last := c.typed[strings.LastIndex(c.typed, " ")+1:]
					ahead = last[:strings.LastIndexAny(last, "=:")+1]
				case "zsh":
					words = wordsTyped(c.typed, "")
				}
				command := exec.Command(line[0], append(line[1:], words...)...)
				command.Dir = folder
				said, err := command.CombinedOutput()
				require.NoError(t, err, "%s", said)
				var offered, want []string
				for one := range strings.Lines(string(said)) {
					if one = strings.TrimRight(strings.ReplaceAll(one, `\`, ""), "/\n"); one != "" {
						offered = append(offered, one)
					}
				}
				for _, one := range c.want {
					want = append(want, strings.TrimPrefix(one, ahead))
				}
				assert.ElementsMatch(t, want, offered, "behind %q", c.typed)
			}
		})
	}
}

// What a script offers is what the program answers, and nothing that somebody wrote down.
func TestScriptsHoldNoWordsOfTheirOwn(t *testing.T) {
	app := newApp(io.Discard, io.Discard)
	for _, shell := range shells {
		assert.Contains(t, shell.script, finishOption, shell.name)
		words := strings.FieldsFunc(shell.script, func(r rune) bool { return !unicode.IsLetter(r) && r != '-' })
		for _, command := range app.Commands {
			assert.NotContains(t, words, command.Name, shell.name)
			for _, name := range optionNames(command) {
				assert.NotContains(t, words, "--"+name, shell.name)
			}
		}
	}
}
