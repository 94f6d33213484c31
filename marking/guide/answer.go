package guide

import (
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/source"
)

// Rules of this file: what the guide says of a word of the file (a kind of table, a key, a word
// that a key is given, the heading of a section) or of the trade, as lines of a screen.

// mostSaid is to how many sections of the guide a reader is led at most, those that speak most of
// what was asked.
const mostSaid = 3

// SpeakOf are the headings of the sections that speak of a word outside their examples, those
// first that do so most: what they are about counts for several times.
func (guide Guide) SpeakOf(word string) []string {
	const about = 5
	times := map[string]int{}
	var said []string
	for _, s := range guide {
		heading := strings.ToLower(s.heading)
		n := timesIn(strings.Join(s.spoken, " "), word)
		if slices.ContainsFunc(s.about, func(t term) bool { return hasWords(strings.Join(t.words, " "), word) }) {
			n += about
		}
		if n > 0 && times[heading] == 0 {
			said = append(said, heading)
		}
		times[heading] += n
	}
	slices.SortStableFunc(said, func(a, b string) int { return times[b] - times[a] })
	return said[:min(len(said), mostSaid)]
}

// Answer is what the guide says of a word; nil where it says nothing. A kind of table, or the
// heading of a section, is answered by the whole of that section; a key, and a word that a key is
// given, by what is said of it wherever it may stand.
func (guide Guide) Answer(word string) []string {
	if table, key, isPlace := placeOf(word); isPlace {
		if key == "" {
			return guide.Answer(source.Kind(table))
		}
		if isTable(table, key) {
			return guide.Answer(key)
		}
		return rowsOf(guide, func(under string, row keyRow) bool { return under == table && slices.Contains(row.keys, key) })
	}
	var answer []string
	first := slices.IndexFunc(guide, func(s section) bool { return slices.ContainsFunc(s.kinds(), Alike(word)) })
	if first < 0 {
		first = slices.IndexFunc(guide, func(s section) bool { return Alike(word)(s.heading) })
	}
	if first >= 0 {
		answer = guide[first].whole()
		guide = slices.Delete(slices.Clone(guide), first, first+1)
	}
	small := strings.ToLower(word)
	isKey := func(key string) bool { return key == small }
	if first < 0 && !hasKey(guide, small) {
		isKey = Alike(word) // but for one or several
	}
	answer = Apart(answer, rowsOf(guide, func(under string, row keyRow) bool {
		return Alike(word)(source.Kind(under)) || row.gives(small) ||
			slices.ContainsFunc(row.keys, func(key string) bool { return isKey(key) && !isTable(under, key) })
	}))
	return Apart(answer, besides(guide, Alike(word)))
}

// hasKey reports whether a section has a row for a key.
func hasKey(guide Guide, key string) bool {
	return slices.ContainsFunc(guide, func(s section) bool { return slices.Contains(s.keyNames(), key) })
}

// gives reports whether a row has this word, in quotes, as one that its keys are given. What is part
// of an example still has its backquotes.
func (row keyRow) gives(word string) bool {
	for i, part := range strings.Split(row.says, "`") {
		if i%2 == 0 && word != "" && strings.Contains(part, `"`+word+`"`) {
			return true
		}
	}
	return false
}

// shortestPart is how many letters a word has at least by which a section is found that has it in
// its heading: shorter ones are those of every sentence.
const shortestPart = 4

// InPart are the sections that have a word among others in their headings, or what the guide says
// of a thing that has it among others in its name; nil where these are more than mostSaid.
func (guide Guide) InPart(word string) []string {
	if len(plainWords(word)) < shortestPart {
		return nil
	}
	var answer []string
	found := 0
	for _, s := range guide {
		if hasWords(s.heading, word) {
			answer = Apart(answer, s.whole())
			found++
		}
	}
	if found > mostSaid {
		return nil
	}
	if found > 0 {
		return answer
	}
	return besides(guide, func(other string) bool { return hasWords(other, word) })
}

// besides are the rows of words of the trade, and the paragraphs, that are about a word.
func besides(guide Guide, wanted func(string) bool) []string {
	var answer []string
	for _, s := range guide {
		cells := [][]string{{s.heading}}
		for _, row := range s.trade {
			if slices.ContainsFunc(row.keys, wanted) {
				cells = append(cells, []string{strings.Join(row.keys, ", "), row.says})
			}
		}
		if len(cells) > 1 {
			answer = Apart(answer, Table(cells, Width))
		}
		for _, term := range s.about {
			if slices.ContainsFunc(term.words, wanted) {
				answer = append(Apart(answer, []string{s.heading + ":"}), term.lines...)
			}
		}
	}
	return answer
}

// rowsOf is what sections say of some keys, which may stand under some tables of the file. A row
// that does no more than send a reader on is left out.
func rowsOf(guide Guide, wanted func(under string, row keyRow) bool) []string {
	var answer []string
	for _, s := range guide {
		for _, k := range s.keys {
			rows := slices.DeleteFunc(slices.Clone(k.rows), func(row keyRow) bool {
				return strings.HasPrefix(row.says, "see ") || !wanted(k.under, row)
			})
			if len(rows) > 0 {
				answer = Apart(answer, k.lines(s.heading, rows))
			}
		}
	}
	return answer
}

// placeOf takes apart what messages call a place, "piece.front.tuck.yoke.first": its table, as
// source calls it, and the key in it, "" where the whole of the table is meant.
func placeOf(word string) (table, key string, isPlace bool) {
	if !strings.Contains(word, ".") {
		return "", "", false
	}
	if table, known := source.TableNamed(word); known {
		return table, "", true
	}
	key = fault.Place{Key: word}.Last()
	table, known := source.TableNamed(strings.TrimSuffix(strings.TrimSuffix(word, key), "."))
	return table, key, known
}

// isTable reports whether a key of a table of the file is a table itself, as edge is in a piece.
func isTable(under, key string) bool {
	at := fault.Place{Key: under}.Under(key)
	_, alone := source.TableNamed(at.Key)
	_, named := source.TableNamed(at.Under("NAME").Key)
	return alone || named
}

// kinds are the words for the tables of the file whose keys a section explains.
func (s section) kinds() []string {
	var all []string
	for _, k := range s.keys {
		if kind := source.Kind(k.under); kind != "" && !slices.Contains(all, kind) {
			all = append(all, kind)
		}
	}
	return all
}
