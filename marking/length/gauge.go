package length

import (
	"slices"
)

// AddOnce adds a note that is not there yet.
func AddOnce(notes []string, note string) []string {
	if slices.Contains(notes, note) {
		return notes
	}
	return append(notes, note)
}
