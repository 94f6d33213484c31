package fault

import (
	"errors"
)

// Rules of this file: a fault says the cause first, in lower case and without a
// full stop; what to do about it goes into the hint.

// Fault is why something cannot be done as it was asked for.
type Fault struct {
	Place Place  // the zero Place where whoever found it does not know
	Cause string // in a few words, never empty
	Hint  string // what to do about it; "" when there is nothing to advise
	Other Place  // where the other of two is that do not fit; the zero Place where it is about one

	ended bool // of the last of a list: no more were looked for
}

// Error gives the place and the cause, and the hint on a line of its own.
func (f *Fault) Error() string {
	message := f.Place.Before(f.Cause)
	if f.Hint != "" {
		message += "\nhint: " + f.Hint
	}
	return message
}

// At returns what is wrong as a fault at a place, or at its own where it has one. The error
// that is handed in stays as it is, and is not nil.
func At(at Place, err error) *Fault {
	var f *Fault
	if !errors.As(err, &f) {
		return &Fault{Place: at, Cause: err.Error()}
	}
	placed := *f
	if placed.Place == (Place{}) {
		placed.Place = at
	}
	return &placed
}

// Innermost is what the system itself said of an error, which is not nil: without the words that
// led to it, and so without names of files that nobody knows.
func Innermost(err error) string {
	for inner := err; inner != nil; inner = errors.Unwrap(inner) {
		err = inner
	}
	return err.Error()
}
