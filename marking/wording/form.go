package wording

import (
	"regexp"
	"sync"
)

// Rules of this file: nothing is made ready before it is asked. Most runs are over in less time
// than it takes to make all forms ready, and ask few of them.

// Form is how words look that are looked for in others: a regular expression.
type Form func() *regexp.Regexp

// FormOf returns the form that a regular expression describes. One that cannot be read panics
// where the form is first asked.
func FormOf(expression string) Form {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expression) })
}

// MatchString reports whether a text has such words.
func (f Form) MatchString(text string) bool { return f().MatchString(text) }
