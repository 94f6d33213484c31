//go:build unix

package main

import (
	"os/exec"
	"syscall"
)

// setApart starts a program that the terminal knows nothing of: Ctrl-C there would end a
// browser as well, with all its tabs.
func setApart(command *exec.Cmd) { command.SysProcAttr = &syscall.SysProcAttr{Setsid: true} }
