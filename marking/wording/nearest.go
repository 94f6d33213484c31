package wording

import (
	"fmt"
	"slices"
	"strings"

	"github.com/agnivade/levenshtein"
)

const (
	// maxSlips is by how many letters a mistyped key may differ from the
	// known one it is taken for. The right letters in a wrong order are one slip.
	maxSlips = 2
	// shortKey is up to how many letters a key counts as short: it may differ
	// by one letter only, or it could be any other.
	shortKey = 3
)

// Nearest returns the known key that a mistyped one is most likely meant
// for, the first of several equally near; "" when none is near. Capitals are no slips.
func Nearest(key string, known []string) string {
	key = strings.ToLower(key)
	best, found := maxSlips+1, ""
	for _, k := range known {
		small := strings.ToLower(k)
		// A letter has four bytes at most. What is longer or shorter by more
		// cannot be near, and measuring it would only take time.
		if max(len(key), len(small)) > min(len(key), len(small))+4*maxSlips {
			continue
		}
		d := levenshtein.ComputeDistance(key, small)
		if sameLetters(key, small) {
			d = 1
		}
		if len(k) <= shortKey && d > 1 {
			continue
		}
		if d < best {
			best, found = d, k
		}
	}
	return found
}

// DidYouMean is the hint that a word was most likely meant for another.
func DidYouMean(other string) string { return fmt.Sprintf("did you mean %q?", other) }

// sameLetters reports whether two words have the same letters in any order.
func sameLetters(a, b string) bool {
	x, y := []rune(a), []rune(b)
	slices.Sort(x)
	slices.Sort(y)
	return slices.Equal(x, y)
}
