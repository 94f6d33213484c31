package main

import (
	"tuckmark/marking/fault"
)

// Rules of this file: whatever ends a command is told as its cause, in lower case, with
// what to do about it on a line of its own, behind the place where it is: a file, or the
// command line.

// program is the place of what is wrong on the command line.
const program = "tuckmark"

// misuse is a command line that is not understood.
func misuse(cause, hint string) error {
	return &fault.Fault{Place: fault.Place{File: program}, Cause: cause, Hint: hint, Misuse: true}
}

// optionFault says which option on the command line has a value that is wrong.
func optionFault(name string, err error) error {
	f := fault.At(fault.Place{File: program, Path: "--" + name}, err)
	f.Misuse = true
	return f
}

// fileFault is a file that cannot be read or written, or not be drawn.
func fileFault(file, cause, hint string) error {
	return &fault.Fault{Place: fault.Place{File: file}, Cause: cause, Hint: hint}
}
