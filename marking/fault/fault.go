package fault

import (
	"errors"
)

// Rules of this file: a fault says the cause first, in lower case and without a
// full stop; what to do about it goes into the hint. The place is the file, the
// line, and the dotted key a reader can search for. Whoever first knows the place
// says it: a length does not know where it is written, the file does.

// Fault is why something cannot be done as it was asked for.
type Fault struct {
	Place Place
	Cause string
	Hint  string // "" when there is nothing to advise
}

// Error gives the place and the cause, and the hint on a line of its own.
func (f *Fault) Error() string {
	message := f.Place.Before(f.Cause)
	if f.Hint != "" {
		message += "\nhint: " + f.Hint
	}
	return message
}

// At returns what is wrong as a fault with a place, unless it has one of its
// own.
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
