package pdfout

import "strings"

// Refusal is why a set cannot be drawn.
type Refusal struct {
	Cause string
	Hint  string // "" when there is nothing to advise
}

// Error gives the cause, and the hint on a line of its own.
func (r *Refusal) Error() string {
	if r.Hint == "" {
		return r.Cause
	}
	return r.Cause + "\nhint: " + r.Hint
}

// unread refuses a size that is no length; the cause and the hint come as one text.
func unread(err error) error {
	cause, hint, _ := strings.Cut(err.Error(), "\nhint: ")
	return &Refusal{Cause: cause, Hint: hint}
}

// MaxPages is the most pages that one PDF may have, the pages in front and those
// of figures included. A set that needs more is refused before anything is drawn.
const MaxPages = 2000
