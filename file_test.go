package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A mistake that every view has is told once, and counted once where the mistakes are many.
func TestMistakesOfViewsAreCountedOnce(t *testing.T) {
	text := "title = \"Many\"\nunit = \"in\"\n[piece.front]\nrectangle = [4, 6]\n"
	for n := range 150 {
		text += fmt.Sprintf("[trim.t%d]\nalong = \"front.nowhere\"\nwidth = 1\n", n)
	}
	text += "[view.round]\ntitle = \"Round\"\n[view.deep]\ntitle = \"Deep\"\n"
	name := filepath.Join(t.TempDir(), "many.toml")
	require.NoError(t, os.WriteFile(name, []byte(text), 0o666))
	for _, words := range [][]string{{"figures", name}, {"figures", "--views", name}} {
		var said, wrong bytes.Buffer
		assert.Equal(t, 1, run(append([]string{"tuckmark"}, words...), &said, &wrong), "%s", wrong.String())
		assert.Equal(t, 100, strings.Count(wrong.String(), `"nowhere"`), "%s", wrong.String()[:300])
		assert.Contains(t, wrong.String(), "there are more mistakes: 50\n", words)
	}
}
