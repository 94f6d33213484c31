package fault

import (
	"cmp"
	"slices"
	"strconv"
	"strings"
)

// List is all that was found together. As an error it is not empty.
type List []*Fault

// mostTold is how many faults are told; nobody would read a longer list to its end.
const mostTold = 100

// Sorted returns the faults in the order of their lines, those of one line as they were
// found, and those of one file together. What is said of a line again, of another part that
// takes it over, is left out. Of more than a hundred it has the first hundred, and a last
// one that counts the rest.
func (all List) Sorted() List {
	files := map[string]int{} // in the order in which they come
	for _, f := range all {
		if _, known := files[f.Place.File]; !known {
			files[f.Place.File] = len(files)
		}
	}
	all = slices.SortedStableFunc(slices.Values(all), func(a, b *Fault) int {
		return cmp.Or(files[a.Place.File]-files[b.Place.File], a.Place.Line-b.Place.Line)
	})
	told := map[Fault]bool{}
	all = slices.DeleteFunc(all, func(f *Fault) bool {
		same := Fault{Place: f.Place, Cause: f.Cause}
		same.Place.Key = f.Place.Last()
		again := told[same] && f.Place.Line > 0
		told[same] = true
		return again
	})
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
