package piece

import "strings"

// Rules of this file: a row is called by its key and by what it makes. A key that ends in that word
// does not say it twice; but no two rows of a piece are called alike, for in a sentence nobody could
// tell which of them is meant.

// Called is what the row is called in a sentence: "yoke tucks", or "growth tuck" where there is
// one; a key that says what it makes does not say so twice.
func (r FoldRow) Called() string {
	words, what := r.shortKey(), r.Makes.String()
	if r.keyWhole {
		words = r.Key
	}
	if r.InAll() > 1 {
		what += "s"
	}
	return strings.TrimSpace(words + " " + what)
}

// Does says that with what its tucks or pleats do: "yoke tucks end", "growth tuck ends".
func (r FoldRow) Does(verb string) string {
	if r.InAll() == 1 {
		verb += "s"
	}
	return r.Called() + " " + verb
}

// shortKey is the key without the word for what the row makes at its end. Of the words in one with
// another it is known in "pintuck" alone: "stuck" is none.
func (r FoldRow) shortKey() string {
	before, said := strings.CutSuffix(strings.TrimSuffix(r.Key, "s"), r.Makes.String())
	short := strings.TrimRight(before, " -_")
	if said && (before == "" || short != before || strings.HasSuffix(" "+before, " pin")) {
		return short
	}
	return r.Key
}

// nameRows notes of the rows of a piece that make one thing which keep their key whole: those that
// would else be called as another is, or may be.
func nameRows(rows []*FoldRow) {
	taken := map[string]int{}
	for _, r := range rows {
		taken[r.Key]++
		if short := r.shortKey(); short != r.Key {
			taken[short]++
		}
	}
	for _, r := range rows {
		r.keyWhole = taken[r.shortKey()] > 1
	}
}
