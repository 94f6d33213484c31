package wording

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"
)

const (
	// maxSlips is by how many letters a mistyped key may differ from the
	// known one it is taken for. The right letters in a wrong order are one slip.
	maxSlips = 2
	// shortKey is up to how many letters a key counts as short: it may differ
	// by one letter only, or it could be any other.
	shortKey = 3
	// mostCompared is how many letters a key may have that is looked for, or found. It bounds the
	// time of comparing it with each that is known.
	mostCompared = 64
)

// Nearest returns the known key that a mistyped one is most likely meant
// for, the first of several equally near; "" when none is near, and for one of more than 64
// letters. Capitals are no slips.
func Nearest(key string, known []string) string {
	if len(key) > mostCompared*utf8.UTFMax {
		return ""
	}
	wanted := []rune(strings.ToLower(key))
	if len(wanted) > mostCompared {
		return ""
	}
	sorted := slices.Sorted(slices.Values(wanted))
	best, found := maxSlips+1, ""
	var letters, inOrder [mostCompared]rune
	for _, k := range known {
		if len(k) > mostCompared*utf8.UTFMax {
			continue
		}
		small := letters[:0]
		for _, c := range strings.ToLower(k) {
			small = append(small, c)
		}
		most := best - 1
		if len(small) <= shortKey {
			most = min(most, 1)
		}
		d := slips(wanted, small, most)
		if d > 1 && most > 0 && len(small) == len(wanted) {
			if again := append(inOrder[:0], small...); sameLetters(sorted, again) {
				d = 1
			}
		}
		if d <= most && len(small) <= mostCompared {
			best, found = d, k
		}
	}
	return found
}

// DidYouMean is the hint that a word was most likely meant for another.
func DidYouMean(other string) string { return fmt.Sprintf("did you mean %q?", other) }

// slips returns by how many letters two words differ, which may be more, less or other ones;
// most+1 where they are more than that. It goes at most 3^most ways through the words.
func slips(a, b []rune, most int) int {
	if len(a)-len(b) > most || len(b)-len(a) > most {
		return most + 1
	}
	for len(a) > 0 && len(b) > 0 && a[0] == b[0] {
		a, b = a[1:], b[1:]
	}
	switch {
	case len(a) == 0 || len(b) == 0:
		return len(a) + len(b)
	case most == 0:
		return 1
	}
	return 1 + min(slips(a[1:], b[1:], most-1), slips(a[1:], b, most-1), slips(a, b[1:], most-1))
}

// sameLetters reports whether a word has these letters in any order, which are sorted. It sorts
// those of the word.
func sameLetters(sorted, word []rune) bool {
	var sum rune // of all differences, which tells most words apart
	for i, c := range sorted {
		sum += c - word[i]
	}
	if sum != 0 {
		return false
	}
	slices.Sort(word)
	return slices.Equal(sorted, word)
}
