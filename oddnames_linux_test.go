package main

import (
	"bytes"
	"os"
	"os/exec"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A name of a file that holds orders to the terminal, or ends of lines, is spelled out wherever
// it is said: as many lines come as of a plain name, and no letter that cannot be seen.
func TestOddNamesOfFiles(t *testing.T) {
	t.Chdir(t.TempDir())
	commands := [][]string{
		{"sheet", "NAME.toml"}, {"gauge", "NAME.toml", "--pieces", "bib"}, {"scale", "--across", "4", "--down", "4", "NAME.toml"},
		{"scale", "--across", "3", "--down", "3", "NAME.toml"}, {"scale", "NAME.toml"}, {"sheet", "--first-page-only", "NAME.toml"},
		{"sheet", "bib.toml", "-o", "NAME.pdf"}, {"sheet", "bib.toml", "-o", "NAME/out.pdf"}, {"sheet", "bib.toml", "-o", "NAME.png"},
		{"sheet", "NAME-none.toml"}, {"sheet", "NAME"}, {"NAME.toml"}, {"sheet", "bib.toml", "NAME"}, {"sheet", "bib.toml", "-o", "folder NAME"},
		{"start", "NAME.toml"}, {"start", "NAME-new.toml"}, {"start", "NAME"}, {"grid", "-o", "NAME.pdf"}, {"grid", "NAME"},
		{"figures", "NAME-wrong.toml"}, {"figures", "NAME-none.toml"}, {"look", "NAME-none.toml"}, {"look", "NAME-wrong"},
	}
	said := func(name string) []string {
		require.NoError(t, os.Mkdir("folder "+name, 0o755))
		require.NoError(t, os.WriteFile("bib.toml", []byte(bib), 0o644))
		require.NoError(t, os.WriteFile(name+".toml", []byte(bib), 0o644))
		require.NoError(t, os.WriteFile(name+"-wrong.toml", []byte("unit = \"ell\"\nsise = 3\n"), 0o644))
		var all []string
		for _, words := range commands {
			args := []string{"tuckmark"}
			for _, word := range words {
				args = append(args, strings.ReplaceAll(word, "NAME", name))
			}
			var out bytes.Buffer
			run(args, &out, &out)
			all = append(all, out.String())
		}
		return all
	}
	plain := said("plain")
	for _, name := range []string{"red\x1b[31m", "two\nlines", "title\x1b]0;x\a", "back\u202ewards", "no-break\u00a0space", "no\xffletter", "it's\t\\"} {
		for i, text := range said(name) {
			assert.Equal(t, strings.Count(plain[i], "\n"), strings.Count(text, "\n"), "lines of %q of %q:\n%s", commands[i], name, text)
			for _, c := range strings.ReplaceAll(text, "\n", "") {
				assert.True(t, unicode.IsPrint(c) && c != unicode.ReplacementChar, "%q prints %q of %q", commands[i], c, name)
			}
		}
	}
}

// What is given back to be typed is what a shell takes it for: bash, which knows that a letter
// may be spelled out.
func TestInShellAsBashReadsIt(t *testing.T) {
	for _, value := range []string{
		"bib.toml", "my bib.toml", "", "a\"b", "it's", "$HOME `x` \\", "red\x1b[31m", "two\nlines", `it's "a"` + "\t\\", "é\u00a0ü", "\u202e", "no\xffletter", `\"` + "\n", "=x", "~",
	} {
		got, err := exec.Command("bash", "-c", "printf %s "+inShell(value)).Output()
		require.NoError(t, err)
		assert.Equal(t, value, string(got), "as it is typed: %s", inShell(value))
	}
}
