package sketch

import (
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
)

// Rules of this file: a text is edited as text, so that it need not be TOML before or after.

// Saying is the text of a file in which a table says something of a key: in the place of what
// it says of it, whether on one line or in tables of its own, or besides. The table is called
// as it is written there; "" is the top of the file, and one that the text does not have is
// put at its end.
func Saying(text, table, key, value string) string {
	line := key + " = " + value
	for _, v := range Values(text) {
		if v.Table == table && v.Key == key {
			return v.Line.Put(text, line)
		}
	}
	under := key
	if table != "" {
		under = table + "." + key
	}
	text = without(text, under)
	if table == "" {
		return line + "\n" + text
	}
	for _, one := range Tables(text) {
		if one.Name == table {
			return one.Header.Put(text, one.Header.In(text)+"\n"+line)
		}
	}
	return text + "\n[" + table + "]\n" + line + "\n"
}

// without is the text without a table and those in it.
func without(text, table string) string {
	var left strings.Builder
	at := 0
	for _, one := range Tables(text) {
		if one.Name == table || strings.HasPrefix(one.Name, table+".") {
			left.WriteString(text[at:one.Whole.From])
			at = one.Whole.To
		}
	}
	left.WriteString(text[at:])
	return left.String()
}

// mostEdits and longestEdited bound what Edited does, so that a test of it is quick.
const (
	mostEdits     = 8
	longestEdited = 32 << 10
)

// Edited is the text of a file after edits that keep most of it as it is: a value is another,
// numbers change their places or sizes, something is left out, stands twice, or comes from
// another file. Which edits is told by bytes, four for each, whatever these are; what cannot be
// done is passed over.
func Edited(text string, script []byte) string {
	for n := 0; n < mostEdits && len(script) >= 4; n++ {
		how, at, by := script[0], int(script[1])<<8|int(script[2]), int(script[3])
		script = script[4:]
		if edited := edits[int(how)%len(edits)](text, at, by); len(edited) <= longestEdited {
			text = edited
		}
	}
	return text
}

// Edits is how many ways to edit there are; the first byte of four says which.
func Edits() int { return len(edits) }

// edits are the ways to edit a text: at is where, and by with what, each counted on from the
// first again when there are fewer.
var edits = []func(text string, at, by int) string{
	// A value becomes an odd one.
	func(text string, at, by int) string { return nth(Values(text), at).Value.Put(text, nth(Odd(), by)) },
	// A number, or a text, becomes an odd one.
	func(text string, at, by int) string { return nth(atomsOf(text), at).Put(text, nth(Odd(), by)) },
	// A number becomes another number.
	func(text string, at, by int) string { return nth(atomsOf(text), at).Put(text, nth(sizes, by)) },
	// A number is so many sixteenths of what it was.
	func(text string, at, by int) string { return scaled(text, nth(atomsOf(text), at), float64(by)/16) },
	// All numbers of a table are so many sixteenths of what they were.
	func(text string, at, by int) string {
		table := nth(Tables(text), at).Whole
		for _, a := range slices.Backward(atomsOf(text)) {
			if table.From <= a.From && a.To <= table.To {
				text = scaled(text, a, float64(by)/16)
			}
		}
		return text
	},
	// A number is in another unit.
	func(text string, at, by int) string {
		a := nth(atomsOf(text), at)
		return a.Put(text, `"`+strings.Trim(a.In(text), `"`)+" "+nth([]string{"in", "cm", "mm"}, by)+`"`)
	},
	// Two numbers, or texts, change places; mostly near ones, as those of a point.
	func(text string, at, by int) string {
		all := atomsOf(text)
		return swapped(text, nth(all, at), nth(all, at+1+by%8))
	},
	// Two values change places.
	func(text string, at, by int) string {
		all := Values(text)
		return swapped(text, nth(all, at).Value, nth(all, at+1+by).Value)
	},
	// A value is left out.
	func(text string, at, _ int) string { return nth(Values(text), at).Line.Put(text, "") },
	// A table is left out.
	func(text string, at, _ int) string { return nth(Tables(text), at).Whole.Put(text, "") },
	// A table stands there again, under another name.
	func(text string, at, by int) string {
		one := nth(Tables(text), at)
		return text + "\n" + strings.Replace(one.Whole.In(text), one.Name, one.Name+nth([]string{"", "2", ".x"}, by), 1)
	},
	// A value stands in another table as well.
	func(text string, at, by int) string {
		v := nth(Values(text), at)
		return Saying(text, nth(Tables(text), by).Name, v.Key, v.Value.In(text))
	},
	// A value of another file stands in a table.
	func(text string, at, by int) string {
		other := nth(otherFiles(), by)
		v := nth(Values(other), at)
		return Saying(text, nth(Tables(text), at>>4).Name, v.Key, v.Value.In(other))
	},
	// A table of another file stands there too.
	func(text string, at, by int) string {
		other := nth(otherFiles(), by)
		return text + "\n" + nth(Tables(other), at).Whole.In(other)
	},
}

// sizes are numbers as garments have them, and a few that they hardly have.
var sizes = []string{`0`, `1`, `2`, `3`, `7`, `12`, `40`, `500`, `-1`, `0.001`, `"1/16"`, `"1/8"`, `"3/8"`, `"1 1/2"`, `0.01`, `1e-9`, `99`, `1000`, `20000`}

// otherFiles are the files that something is taken from.
func otherFiles() []string {
	all := []string{Frock}
	files := EveryKey()
	for _, name := range slices.Sorted(maps.Keys(files)) {
		all = append(all, files[name])
	}
	return all
}

// nth is the nth of some, counted on from the first again; of none it is the zero value.
func nth[T any](all []T, n int) (one T) {
	if len(all) == 0 {
		return one
	}
	return all[n%len(all)]
}

// atomsOf are the atoms of all values.
func atomsOf(text string) []Span {
	var all []Span
	for _, v := range Values(text) {
		all = append(all, Atoms(text, v.Value)...)
	}
	return all
}

// scaled is a text with a number so many times as large; what is no plain number stays.
func scaled(text string, a Span, times float64) string {
	n, err := strconv.ParseFloat(a.In(text), 64)
	if err != nil || math.IsNaN(n) || math.IsInf(n*times, 0) {
		return text
	}
	return a.Put(text, strconv.FormatFloat(n*times, 'f', -1, 64))
}

// swapped is a text with two parts in each other's place; what lies in one another stays.
func swapped(text string, a, b Span) string {
	if a.From > b.From {
		a, b = b, a
	}
	if a.To > b.From {
		return text
	}
	return text[:a.From] + b.In(text) + text[a.To:b.From] + a.In(text) + text[b.To:]
}
