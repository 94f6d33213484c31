package main

import (
	"io"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestInOrder(t *testing.T) {
	for _, c := range []struct{ name, typed, want string }{
		{"options first", "tuckmark sheet --paper a4 a.toml", "tuckmark sheet --paper=a4 -- a.toml"},
		{"options behind", "tuckmark sheet a.toml --paper a4 --landscape", "tuckmark sheet --paper=a4 --landscape -- a.toml"},
		{"a short name", "tuckmark sheet a.toml -o a.pdf", "tuckmark sheet --output=a.pdf -- a.toml"},
		{"one dash", "tuckmark sheet a.toml -paper=a4", "tuckmark sheet --paper=a4 -- a.toml"},
		{"a value that begins with a dash", "tuckmark scale a.toml --within -1", "tuckmark scale --within=-1 -- a.toml"},
		{"a value that is two dashes", "tuckmark sheet -o -- a.toml", "tuckmark sheet --output=-- -- a.toml"},
		{"a value with an equals sign", "tuckmark sheet a.toml -o=a=b.pdf", "tuckmark sheet --output=a=b.pdf -- a.toml"},
		{"names that begin with a dash", "tuckmark sheet --landscape -- -a.toml --paper", "tuckmark sheet --landscape -- -a.toml --paper"},
		{"a dash alone", "tuckmark sheet - --landscape", "tuckmark sheet --landscape -- -"},
		{"an option that is not known", "tuckmark sheet a.toml --papr a4", "tuckmark sheet --papr -- a.toml a4"},
		{"a value that is missing", "tuckmark sheet a.toml --landscape -o", "tuckmark sheet --landscape -o"},
		{"an option that help is asked for", "tuckmark help --paper a4 -h -- --help", "tuckmark help -h -- --paper a4 --help"},
		{"nothing behind the command", "tuckmark sheet", "tuckmark sheet --"},
		{"no command", "tuckmark", "tuckmark"},
		{"an option of no command", "tuckmark --help", "tuckmark --help"},
		{"a command that is not known", "tuckmark shet a.toml --paper a4", "tuckmark shet a.toml --paper a4"},
		{"a name before the command", "tuckmark a.toml sheet --paper a4", "tuckmark a.toml sheet --paper a4"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.Fields(c.want), inOrder(strings.Fields(c.typed), newApp(io.Discard, io.Discard)))
		})
	}
	assert.Empty(t, inOrder(nil, newApp(io.Discard, io.Discard)), "not even a name of the program")
}

// Wherever the names stand among the options, the same comes of it.
func TestNamesStandAnywhere(t *testing.T) {
	app := newApp(io.Discard, io.Discard)
	rapid.Check(t, func(t *rapid.T) {
		options := rapid.SliceOf(rapid.SampledFrom([][]string{
			{"--landscape"}, {"--paper", "a4"}, {"--paper=a4"}, {"-o", "-x.pdf"}, {"--margin", "--"}, {"--pieces", "a,b"}, {"--unknown"}, {"-h"},
		})).Draw(t, "options")
		names := rapid.SliceOfN(rapid.SampledFrom([]string{"a.toml", "-", "", "sheet"}), 0, 3).Draw(t, "names")
		first := append([]string{"tuckmark", "sheet"}, slices.Concat(options...)...)
		mixed := []string{"tuckmark", "sheet"}
		rest := names
		for _, option := range options {
			n := rapid.IntRange(0, len(rest)).Draw(t, "names before an option")
			mixed = slices.Concat(mixed, rest[:n], option)
			rest = rest[n:]
		}
		assert.Equal(t, inOrder(append(first, names...), app), inOrder(append(mixed, rest...), app))
	})
}
