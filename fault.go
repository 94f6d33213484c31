package main

import (
	"tuckmark/marking/fault"
)

// Rules of this file: whatever ends a command is told as its cause, in lower case, with
// what to do about it on a line of its own, behind the place where it is: a file, or the
// command line.

// program is the place of what is wrong on the command line.
const program = "tuckmark"

// usageFault is a command line that is not understood; any other fault is in what it names.
type usageFault struct{ *fault.Fault }

// Unwrap returns the fault itself.
func (m usageFault) Unwrap() error { return m.Fault }

// misuse says what is not understood of a command line.
func misuse(cause, hint string) error {
	return usageFault{&fault.Fault{Place: fault.Place{File: program}, Cause: cause, Hint: hint}}
}

// optionFault says which option on the command line has a value that is wrong.
func optionFault(name string, err error) error {
	return usageFault{fault.At(fault.Place{File: program, Key: "--" + name}, err)}
}

// fileFault is a file that cannot be read or written, or not be drawn.
func fileFault(file, cause, hint string) error {
	return &fault.Fault{Place: fault.Place{File: file}, Cause: cause, Hint: hint}
}
