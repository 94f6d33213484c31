package fault

import (
	"slices"
	"strconv"
	"strings"
)

// List is all that was found together. As an error it is not empty.
type List []*Fault

// mostTold is how many faults are told; nobody would read a longer list to its end.
const mostTold = 100

// Sorted returns the faults in the order of their lines, those of one line as they were
// found. Of more than a hundred it has the first hundred, and a last one that counts the
// rest.
func (all List) Sorted() List {
	all = slices.SortedStableFunc(slices.Values(all), func(a, b *Fault) int { return a.Place.Line - b.Place.Line })
	if more := len(all) - mostTold; more > 0 {
		all = append(all[:mostTold], &Fault{
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
