package fault

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Rules of this file: a fault says the cause first, in lower case and without a
// full stop; what to do about it goes into the hint. The place is the file, the
// line, and the dotted key a reader can search for. Whoever first knows the place
// says it: a length does not know where it is written, the file does.

// Place is where something stands that somebody wrote. The zero Place is nowhere.
type Place struct {
	File string // as it was named; "" where it is not known, or there is none
	Path string // dotted key, such as piece.front.edge.neck; "" is the file as a whole
	Line int    // counted from 1; 0 when it is not known
}

// bareKey is a key that stands without quotes.
var bareKey = regexp.MustCompile(`^[A-Za-z0-9_-]+$`)

// Under returns the place of a key under this one, on the same line.
func (p Place) Under(key string) Place {
	if !bareKey.MatchString(key) {
		key = strconv.Quote(key)
	}
	if p.Path != "" {
		key = p.Path + "." + key
	}
	p.Path = key
	return p
}

// On returns the place on another line.
func (p Place) On(line int) Place {
	p.Line = line
	return p
}

// Before begins a message with the place: "linden.toml:31: piece.front: ...".
func (p Place) Before(message string) string {
	if p.Path != "" {
		message = p.Path + ": " + message
	}
	switch {
	case p.File == "":
		return message
	case p.Line == 0:
		return p.File + ": " + message
	}
	return fmt.Sprintf("%s:%d: %s", p.File, p.Line, message)
}

// Fault is why something cannot be done as it was asked for.
type Fault struct {
	Place Place
	Cause string
	Hint  string // "" when there is nothing to advise
	// Misuse tells that the command line is not understood, else that something it
	// names is wrong.
	Misuse bool
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

// List are all that was found together.
type List []*Fault

// MaxFaults is how many faults are listed; the rest is counted.
const MaxFaults = 100

// Sorted puts faults in the order of their lines and cuts off a list that nobody would
// read to its end.
func (all List) Sorted() List {
	slices.SortStableFunc(all, func(a, b *Fault) int { return a.Place.Line - b.Place.Line })
	if more := len(all) - MaxFaults; more > 0 {
		all = append(all[:MaxFaults:MaxFaults], &Fault{
			Place: Place{File: all[0].Place.File},
			Cause: "there are more mistakes: " + strconv.Itoa(more),
			Hint:  "put the first ones right and try again",
		})
	}
	return all
}

// Error gives every fault on a line of its own, its hint under it.
func (all List) Error() string {
	lines := make([]string, len(all))
	for i, f := range all {
		lines[i] = f.Error()
	}
	return strings.Join(lines, "\n")
}
