package fault

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// List is all that was found together. As an error it is not empty.
type List []*Fault

const (
	// mostTold is how many faults are told; nobody would read a longer list to its end.
	mostTold = 100
	// mostFound is at how many faults looking for more ends. It bounds the time and the memory of
	// wording them.
	mostFound = 1000
)

// Full reports whether so many faults have been found that no more are looked for.
func (all List) Full() bool { return len(all) >= mostFound }

// With returns the list with one more fault, or as it is where it is full.
func (all List) With(f *Fault) List {
	if all.Full() {
		return all
	}
	return append(all, f)
}

// Sorted returns the faults in the order of their lines, those of one line as they were
// found, and those of one file together. What is said of a line again, of another part that
// takes it over, is left out. Of more than a hundred it has the first hundred, and a last
// one that counts the rest; so has one that is made of such lists.
func (all List) Sorted() List {
	ended, left := all.Full(), 0
	files := map[string]int{} // in the order in which they come
	for _, f := range all {
		left, ended = left+f.left, ended || f.ended
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
		return again || f.left > 0 || f.ended
	})
	if n := len(all); n > mostTold {
		left += n - mostTold
		all = all[:mostTold]
	}
	if left == 0 && !ended {
		return all
	}
	more := &Fault{Place: Place{File: all[0].Place.File}, Hint: "put the first ones right and try again", left: left, ended: ended}
	more.Cause = "there are more mistakes: " + strconv.Itoa(left)
	if ended {
		more.Cause = fmt.Sprintf("there are more mistakes: %d were found, and then no more were looked for", mostFound)
	}
	return append(all, more)
}

// Error gives every fault on a line of its own, its hint under it.
func (all List) Error() string {
	lines := make([]string, len(all))
	for i, f := range all {
		lines[i] = f.Error()
	}
	return strings.Join(lines, "\n")
}
