package source

import (
	"errors"

	"github.com/BurntSushi/toml"

	"tuckmark/marking/fault"
)

// Rules of this file: the TOML library tells one slip and stops. Where there is no doubt
// what was meant, the text is put right and read on, so that all slips of a file are told
// in one run. Nothing that was put right is ever drawn.

const (
	// mostSlips is how many slips of one text are looked for.
	mostSlips = 100
	// mostReread bounds the time of that, in bytes: a text is read again for every slip.
	mostReread = MaxFileSize
)

// readOn returns the values of a text, and where they stand. The faults are the slips in
// it, up to the first of which it is not certain what was meant.
func readOn(text string) (root *spot, values map[string]any, faults fault.List) {
	for rest := mostReread; ; rest -= len(text) {
		root, f := findSpots(text)
		if f != nil {
			return nil, nil, append(faults, f)
		}
		values, f, mended := valuesOf(text, root)
		if f == nil {
			return root, values, faults
		}
		faults = withSlip(faults, f)
		if mended == "" || len(faults) == mostSlips || rest < len(text) {
			return nil, nil, faults
		}
		text = mended
	}
}

// withSlip returns slips and one more, without what is told of its line already. Of a line that
// has been put right it is not known any more at which of its letters another slip was.
func withSlip(faults fault.List, f *fault.Fault) fault.List {
	for _, told := range faults {
		if told.Place.Line != f.Place.Line {
			continue
		}
		if told.Cause == f.Cause && told.Hint == f.Hint && told.Place.Key == f.Place.Key {
			return faults
		}
		f.Place.Column = 0
	}
	return append(faults, f)
}

// valuesOf returns the values of a text that findSpots has let pass, or its first slip and
// the text without it, "" where it is not certain what was meant. root is what findSpots
// found in it.
func valuesOf(text string, root *spot) (values map[string]any, f *fault.Fault, mended string) {
	_, err := toml.Decode(text, &values)
	var syntax toml.ParseError
	switch {
	case err == nil:
		return values, nil, ""
	case errors.As(err, &syntax):
		f, mended = syntaxFault(text, syntax, root)
		return nil, f, mended
	}
	return nil, &fault.Fault{Cause: err.Error()}, ""
}
