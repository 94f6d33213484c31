package main

import (
	"bytes"
	"fmt"
	"runtime"
	"testing"

	"github.com/stretchr/testify/assert"
)

// A mistake of the program is said in one line, with where it is, and with what was typed.
func TestMishap(t *testing.T) {
	for name, c := range map[string]struct {
		do   func(n int)
		at   int // the line of this file
		want string
	}{
		"an index": {func(n int) { _ = []int{1}[n] }, thisLine(), "runtime error: index out of range [3] with length 1"},
		"nought":   {func(n int) { _ = 1 / (n - 3) }, thisLine(), "runtime error: integer divide by zero"},
		"words":    {func(int) { panic("two\nlines") }, thisLine(), "two lines"},
	} {
		t.Run(name, func(t *testing.T) {
			var said bytes.Buffer
			status := orMishap(&said, []string{"tuckmark", "sheet", "my bib.toml"}, func() int { c.do(3); return 0 })
			assert.Equal(t, 3, status)
			assert.Equal(t, fmt.Sprintf("tuckmark: the program itself went wrong: %s, at mishap_test.go:%d, in `tuckmark sheet \"my bib.toml\"`\n", c.want, c.at)+
				"hint: your file may be right; please send this line, with the file, to whoever you have the program from\n", said.String())
		})
	}
	assert.Equal(t, 2, orMishap(nil, nil, func() int { return 2 }), "what goes right is as it was")
}

// thisLine is the line of this file on which it stands.
func thisLine() int {
	_, _, line, _ := runtime.Caller(1)
	return line
}
