package main

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"github.com/urfave/cli/v2"
)

// Every option of every command that takes a value wants one, and once. Nothing is made then.
func TestEveryOptionWantsOneValue(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, os.WriteFile("bib.toml", []byte(smallBib), 0o666))
	options := 0
	for _, command := range newApp(nil, nil).Commands {
		for _, flag := range command.Flags {
			if !flag.(cli.DocGenerationFlag).TakesValue() {
				continue
			}
			options++
			long := "--" + flag.Names()[0]
			for _, typed := range strings.Split(typedNames(flag), ", ") {
				for _, c := range []struct {
					name, says string
					words      []string
				}{
					{"nothing", " was given without a value", []string{typed, ""}},
					{"nothing, joined", " was given without a value", []string{typed + "="}},
					{"spaces", " was given without a value", []string{typed, " \t "}},
					{"twice", " was given twice", []string{typed, "1", typed + "=1"}},
					{"twice, by its other name", " was given twice", []string{typed, "1", long, "2"}},
				} {
					var out, errs bytes.Buffer
					status := run(append([]string{"tuckmark", command.Name, "bib.toml"}, c.words...), &out, &errs)
					assert.Equal(t, statusUsage, status, "%s %s: %s", command.Name, typed, c.name)
					assert.Empty(t, out.String())
					said, hint, _ := strings.Cut(errs.String(), "\n")
					assert.Equal(t, "tuckmark: "+long+c.says, said, "%s %s: %s", command.Name, typed, c.name)
					assert.Contains(t, hint, "hint: ")
				}
			}
		}
	}
	assert.Positive(t, options)
	made, err := os.ReadDir(".")
	require.NoError(t, err)
	assert.Len(t, made, 1, "there is the file, and nothing that was made")
}

// An option that does nothing beside the others is not taken in silence.
func TestNoOptionIsTakenInVain(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, os.WriteFile("bib.toml", []byte(smallBib), 0o666))
	require.NoError(t, os.WriteFile("plain.toml", []byte("unit = \"in\"\n[piece.bib]\nrectangle = [4, 6]\n"), 0o666))
	for _, c := range []struct {
		line, says string
		status     int
	}{
		{"sheet bib.toml --dots 5mm", "--dots was given, and nothing is pricked", statusUsage},
		{"sheet bib.toml --dots 5mm --transfer mirror", "--dots was given, and nothing is pricked", statusUsage},
		{"look bib.toml --dots 5mm", "--dots was given, and nothing is pricked", statusUsage},
		{"sheet bib.toml --pieces bib --no-figures", "--no-figures was given, and with --pieces there are no figures", statusUsage},
		{"sheet bib.toml --pieces bib --times 3", "--times was given, and the figures, which it is for, are left out", statusUsage},
		{"sheet bib.toml --no-figures --times 3", "--times was given, and the figures, which it is for, are left out", statusUsage},
		{"sheet bib.toml --all-views", "the file has no views", statusFault},
		{"sheet bib.toml --paper single --landscape", "single cannot be turned", statusUsage},
		{"sheet bib.toml --paper 300x300mm --landscape", "--landscape: paper of 300 mm x 300 mm has no long side to lie on", statusUsage},
		{"sheet bib.toml --paper roll:36in --overlap 1", "no pages are joined", statusUsage},
		{"sheet bib.toml --paper single --overlap 1", "no pages are joined", statusUsage},
		{"sheet bib.toml --paper single --first-page-only", "there is no first page", statusFault},
		{"sheet bib.toml -o bib.svg --landscape", "single cannot be turned", statusUsage},
		{"sheet bib.toml -o bib.svg --overlap 1", "no pages are joined", statusUsage},
		{"sheet bib.toml -o bib.svg --paper a4", "an SVG is one single page", statusUsage},
		{"sheet bib.toml -o bib.svg --across 4 --down 4", "an SVG has its real size", statusUsage},
		{"sheet bib.toml -o bib.svg --first-page-only", "there is no first page", statusFault},
		{"sheet bib.toml --of 7", "--of was given without --across and --down", statusUsage},
		{"sheet plain.toml --gauges", "--gauges adds none: there is nothing to make a gauge for", statusDone},
		{"gauge plain.toml", "there is nothing to make a gauge for", statusFault},
		{"grid --of 7", "--of was given without --across and --down", statusUsage},
		{"figures bib.toml --json --all-units", "cannot be had together", statusUsage},
		{"figures bib.toml --json --views", "cannot be had together", statusUsage},
		{"figures bib.toml --view round --views", "cannot be had together", statusUsage},
		{"figures bib.toml --views", "the file has no views", statusFault},
		{"--version figures bib.toml", "--version stands by itself", statusUsage},
		{"sheet --help bib.toml", "--help stands by itself", statusUsage},
	} {
		var out, errs bytes.Buffer
		status := run(append([]string{"tuckmark"}, strings.Fields(c.line)...), &out, &errs)
		assert.Equal(t, c.status, status, c.line)
		assert.Contains(t, out.String()+errs.String(), c.says, c.line)
		if status != statusDone {
			assert.Empty(t, out.String(), c.line)
			assert.Contains(t, errs.String(), "\nhint: ", c.line)
		}
	}
}

// A word that makers write for an option leads to one that there is.
func TestOtherWordsLeadToOptions(t *testing.T) {
	known := map[string]bool{}
	for _, command := range newApp(nil, nil).Commands {
		for _, name := range optionNames(command) {
			known[name] = true
		}
	}
	for word, option := range otherWords {
		assert.True(t, known[option], "%s: there is no %s", word, option)
	}
}
