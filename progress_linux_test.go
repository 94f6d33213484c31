package main

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestProgressOnATerminal(t *testing.T) {
	terminal, err := os.OpenFile("/dev/ptmx", os.O_RDWR, 0)
	if err != nil {
		t.Skip("there is no terminal to be had: ", err)
	}
	defer terminal.Close()
	p := progressOn(terminal)
	assert.NotNil(t, p)
	assert.Equal(t, 80, p.width(), "it has no width of its own yet")
}
