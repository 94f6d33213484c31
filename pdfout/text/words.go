package text

import (
	"fmt"
	"strings"

	"tuckmark/marking/wording"
)

// Rules of this file: notes, names, pages and how many of them, as a sentence says them.
// What messages about a file have as well is in package wording.

// JoinedNotes joins notes into one text: with commas, or with semicolons where a
// note has a comma in it; after a sign that ends a note, or parts it from the
// next, with a space alone.
func JoinedNotes(notes []string) string {
	mark := ","
	for _, note := range notes {
		if strings.Contains(note, ",") {
			mark = ";"
		}
	}
	var b strings.Builder
	for i, note := range notes {
		if i > 0 {
			if !strings.ContainsAny(notes[i-1][max(0, len(notes[i-1])-1):], ".,;:!?") {
				b.WriteString(mark)
			}
			b.WriteString(" ")
		}
		b.WriteString(note)
	}
	return b.String()
}

// PageRange names pages with their verb: "page 2 holds", "pages 2 to 4 hold".
func PageRange(first, last int, one, many string) string {
	if first == last {
		return strings.TrimSpace(fmt.Sprintf("page %d %s", first, one))
	}
	return strings.TrimSpace(fmt.Sprintf("pages %d to %d %s", first, last, many))
}

// Numbers names things by their numbers, which rise: "page 5", "pages 2 to 4, 7 and 9".
func Numbers(noun string, numbers []int) string {
	if len(numbers) == 1 {
		return fmt.Sprintf("%s %d", noun, numbers[0])
	}
	var runs []string
	for i := 0; i < len(numbers); {
		first, last := numbers[i], numbers[i]
		for i++; i < len(numbers) && numbers[i] == last+1; i++ {
			last = numbers[i]
		}
		if first == last {
			runs = append(runs, fmt.Sprint(first))
		} else {
			runs = append(runs, fmt.Sprintf("%d to %d", first, last))
		}
	}
	return noun + "s " + wording.Listed(runs, "and")
}

// IsAre is the verb of one or of many.
func IsAre(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

// HasHave is the verb of one or of many.
func HasHave(n int) string {
	if n == 1 {
		return "has"
	}
	return "have"
}

// FromTo names rows or columns from first to last, counted from 0: "row 7",
// "columns 1 to 3".
func FromTo(noun string, first, last int) string {
	if first == last {
		return fmt.Sprintf("%s %d", noun, first+1)
	}
	return fmt.Sprintf("%ss %d to %d", noun, first+1, last+1)
}

// someNames joins the first names and counts the others.
func someNames(names []string, shown int) string {
	text := strings.Join(names[:shown], ", ")
	if rest := len(names) - shown; rest > 0 {
		text += fmt.Sprintf(" and %d more", rest)
	}
	return text
}

// PageCount is how many pages there are: "0 pages", "1 page", "18,432 pages".
func PageCount(n int) string {
	if n == 1 {
		return "1 page"
	}
	return wording.Thousands(n) + " pages"
}
