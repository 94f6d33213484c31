package main

import (
	"errors"
	"strings"

	"tuckmark/pdfout"
)

// Rules of this file: whatever ends a command is told as its cause, in lower case, with
// what to do about it on a line of its own.

// usageError is a command line that is not understood.
type usageError struct{ cause, hint string }

func (e *usageError) Error() string {
	if e.hint == "" {
		return "tuckmark: " + e.cause
	}
	return "tuckmark: " + e.cause + "\nhint: " + e.hint
}

// optionFault says which option on the command line has a value that is wrong.
func optionFault(name string, err error) error {
	cause, hint, _ := strings.Cut(err.Error(), "\nhint: ")
	return &usageError{"--" + name + ": " + cause, hint}
}

// fileError is a file that cannot be read or written, or not be drawn.
type fileError struct{ file, cause, hint string }

func (e *fileError) Error() string {
	s := e.file + ": " + e.cause
	if e.hint != "" {
		s += "\nhint: " + e.hint
	}
	return s
}

// asRefused says in which file what cannot be drawn is.
func asRefused(in string, err error) error {
	var refused *pdfout.Refusal
	if errors.As(err, &refused) {
		return &fileError{in, refused.Cause, refused.Hint}
	}
	return err
}
