package main

import (
	"fmt"
	"io"
	"path/filepath"
	"runtime"
	"strings"
)

// Rules of this file: where the program itself is wrong, one line says so and where, and no trace
// is printed, which is of no use to who sews.

// orMishap does something, and says where it panics.
func orMishap(stderr io.Writer, words []string, do func() int) (status int) {
	defer func() {
		if mishap := recover(); mishap != nil {
			sayMishap(stderr, words, mishap)
			status = statusMishap
		}
	}()
	return do()
}

// sayMishap says what went wrong in the program, in one line that can be sent on. It is called
// where a panic is recovered from.
func sayMishap(stderr io.Writer, words []string, mishap any) {
	var typed []string
	for _, word := range words {
		typed = append(typed, inShell(word))
	}
	what := strings.Join(strings.Fields(fmt.Sprint(mishap)), " ")
	fmt.Fprintln(stderr, fileFault(program, fmt.Sprintf("the program itself went wrong: %s, at %s, in `%s`", what, mishapAt(), strings.Join(typed, " ")),
		"your file may be right; please send this line, with the file, to whoever you have the program from"))
}

// mishapAt is the line of the program at which it panicked.
func mishapAt() string {
	calls := make([]uintptr, 64)
	frames := runtime.CallersFrames(calls[:runtime.Callers(0, calls)])
	for panicked := false; ; {
		frame, more := frames.Next()
		// Behind runtime.gopanic comes what called it: the runtime again, for a mistake that it
		// finds itself, or a library.
		ours := strings.HasPrefix(frame.Function, "main.") || strings.HasPrefix(frame.Function, "tuckmark")
		if panicked && ours {
			return fmt.Sprintf("%s:%d", filepath.Base(frame.File), frame.Line)
		}
		panicked = panicked || frame.Function == "runtime.gopanic"
		if !more {
			return "a place that is not known"
		}
	}
}
