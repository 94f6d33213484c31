package start

import (
	"slices"
	"strings"

	"tuckmark/marking/wording"
)

// Rules of this file: a piece is what the English words of its name say; of several the one
// that narrows it down most, so that a neck band is a band and a back yoke a yoke. Words that
// say nothing of that, as in "lining front", tell which pieces belong together.

// kind is what a piece is.
type kind int

// The kinds, those first whose word tells more when several are there.
const (
	band kind = iota
	pocket
	collar
	sleeve
	bonnet
	yoke
	skirt
	front
	back
	plain // of any other name
)

var kindWords = [...]string{band: "band", pocket: "pocket", collar: "collar", sleeve: "sleeve", bonnet: "cap",
	yoke: "yoke", skirt: "skirt", front: "front", back: "back"}

// Words are those by which the name of a piece says what it is.
func Words() []string { return slices.Clone(kindWords[:]) }

// Unknown are those of some names that have none of the words: they become rectangles.
func Unknown(names []string) []string {
	var all []string
	for _, name := range names {
		if readName(name).kind == plain {
			all = append(all, name)
		}
	}
	return all
}

// Meant returns what a name was most likely meant to be that has none of the words: the name
// with such a word in the place of one that begins like it and is a slip or two away; "" for
// any other.
func Meant(name string) string {
	if readName(name).kind != plain {
		return ""
	}
	for _, word := range strings.FieldsFunc(name, func(r rune) bool { return strings.ContainsRune(" _-", r) }) {
		known := wording.Nearest(word, kindWords[:])
		if known != "" && strings.EqualFold(word[:1], known[:1]) {
			return strings.Replace(name, word, known, 1)
		}
	}
	return ""
}

// named is what a name says of a piece.
type named struct {
	name        string
	kind        kind
	ofFront     bool   // it says front ...
	ofBack      bool   // ... or back
	left, right bool   // it is worn on that side
	set         string // the words that are left: pieces with the same belong together
}

// readName takes up what a name says.
func readName(name string) named {
	words := strings.FieldsFunc(wording.InWords(name), func(r rune) bool { return r == ' ' || r == '-' })
	n := named{name: name, kind: plain}
	has := func(word string) bool {
		return slices.Contains(words, word) || slices.Contains(words, word+"s")
	}
	for k, word := range kindWords {
		if has(word) {
			n.kind = kind(k)
			break
		}
	}
	n.ofFront, n.ofBack, n.left, n.right = has("front"), has("back"), has("left"), has("right")
	n.set = strings.Join(slices.DeleteFunc(words, func(word string) bool {
		return slices.Contains(kindWords[:], strings.TrimSuffix(word, "s")) || word == "left" || word == "right"
	}), " ")
	return n
}

// isHalf reports whether a piece is the left or the right one of two that are drawn apart.
func (n named) isHalf() bool {
	return n.left != n.right && (n.kind == front || n.kind == back || n.kind == yoke || n.kind == sleeve)
}

// behind reports whether a piece lies behind, where another of its kind lies in front.
func (n named) behind() bool {
	return n.kind == back || (n.kind == yoke || n.kind == skirt) && n.ofBack
}

// centre is what the edge in the middle of the body is called.
func (n named) centre() string {
	if n.behind() {
		return "centre back"
	}
	return "centre front"
}

// facing are the points of a piece that has the middle of the body at its left, as they lie
// on the half that has it at its right: seen from outside, the right front and the left back.
func (n named) facing(points []point, wide int) []point {
	if n.isHalf() && n.right != n.behind() {
		return mirrored(points, wide)
	}
	return points
}
