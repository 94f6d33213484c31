package fault

import (
	"cmp"
	"fmt"
	"slices"
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
// takes it over, is left out.
func (all List) Sorted() List {
	sorted := Together(all)
	if all.Full() {
		return sorted.ending()
	}
	return sorted
}

// Together are the faults of several lists, sorted as one. Looking for more has ended where it
// has for one of them.
func Together(lists ...List) List {
	all, files := slices.Concat(lists...), map[string]int{} // in the order in which they come
	for _, f := range all {
		if _, known := files[f.Place.File]; !known {
			files[f.Place.File] = len(files)
		}
	}
	slices.SortStableFunc(all, func(a, b *Fault) int {
		return cmp.Or(files[a.Place.File]-files[b.Place.File], a.Place.Line-b.Place.Line)
	})
	ended, told := all.ended(), map[Fault]bool{}
	all = slices.DeleteFunc(all, func(f *Fault) bool {
		same := Fault{Place: f.Place, Cause: f.Cause}
		same.Place.Key = f.Place.Last()
		again := told[same] && f.Place.Line > 0
		told[same] = true
		return again
	})
	if ended {
		return all.ending()
	}
	return all
}

// ending notes that no more were looked for than these, of which there are some.
func (all List) ending() List {
	last := *all[len(all)-1]
	last.ended = true
	return append(slices.Clone(all[:len(all)-1]), &last)
}

func (all List) ended() bool {
	return slices.ContainsFunc(all, func(f *Fault) bool { return f.ended })
}

// Told are the faults that a maker is told: of more than a hundred the first hundred, and a last
// one that counts the rest. A list is told when all of it is there, and not put together again.
func (all List) Told() List {
	left := len(all) - mostTold
	if left <= 0 && !all.ended() {
		return all
	}
	more := &Fault{Place: Place{File: all[0].Place.File}, Hint: "put the first ones right and try again"}
	more.Cause = fmt.Sprintf("there are more mistakes: %d", left)
	if all.ended() {
		more.Cause = fmt.Sprintf("there are more mistakes: %d were found, and then no more were looked for", mostFound)
	}
	return append(slices.Clone(all[:min(len(all), mostTold)]), more)
}

// Error gives every fault that is told on a line of its own, its hint under it.
func (all List) Error() string {
	var lines []string
	for _, f := range all.Told() {
		lines = append(lines, f.Error())
	}
	return strings.Join(lines, "\n")
}
