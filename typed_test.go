package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// What is advised can be typed as it stands.
func TestInShell(t *testing.T) {
	for value, want := range map[string]string{
		"pinafore.toml": "pinafore.toml", "3 15/16": `"3 15/16"`, `4"`: `'4"'`, "": `""`, "my dress.toml": `"my dress.toml"`, "2⅛": `"2⅛"`,
		"a$HOME.toml": "'a$HOME.toml'", `a"it's.toml`: `'a"it'\''s.toml'`, "it's.toml": `"it's.toml"`,
	} {
		assert.Equal(t, want, typedOn("linux", value))
	}
	for value, want := range map[string]string{
		`examples\pinafore.toml`: `examples\pinafore.toml`, `my things\dress.toml`: `"my things\dress.toml"`, "3 15/16": `"3 15/16"`, `4"`: `"4\""`, "": `""`, "a$b!.toml": `"a$b!.toml"`,
	} {
		assert.Equal(t, want, typedOn("windows", value))
	}
}
