//go:build !unix

package main

import "os/exec"

// setApart does nothing: elsewhere Ctrl-C reaches no browser.
func setApart(*exec.Cmd) {}
