package source

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"tuckmark/marking/drawing"
	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: a key that is not known, is missing, or has no sense beside another is
// reported where it stands. An unknown one that was most likely meant for a known one is
// reported once, and that one does not count as missing.

// fileReader collects what is wrong with a file while it is read.
type fileReader struct {
	file      string
	folder    fs.FS                // of that and of what it names; nil where there is none
	opened    func(string, []byte) // is told of files of the folder; nil where nobody asks
	alsoRead  map[string]bool      // files of the folder that were read, as messages name them
	unit      length.Unit
	printable func(rune) bool
	drawings  map[string]*drawing.Drawing // by their names in the folder; nil those that cannot be had
	drawn     *drawing.Reader             // of those
	inherited *int                        // how many values pieces took from those that they are like
	bytes     int                         // of the files so far that are like each other
	unspaced  []Value[length.Unspaced]
	outlined  []string // the pieces that have edges
	partial   []string // those that lack what they were to take from another
	faults    fault.List
}

func (r *fileReader) report(at fault.Place, cause, hint string) {
	r.faults = r.faults.With(&fault.Fault{Place: at, Cause: cause, Hint: hint})
}

// note reports what is wrong at a place, if anything is.
func (r *fileReader) note(at fault.Place, err error) {
	if err != nil {
		r.faults = r.faults.With(fault.At(at, err))
	}
}

// fileTable is one table of the file.
type fileTable struct {
	*fileReader
	written
	name string // the last part of its place
	// meant are the known keys that unknown ones were taken for; they are not
	// reported as missing as well.
	meant []string
}

// know reports every key of the table that is none of these.
func (t *fileTable) know(known ...string) {
	for _, key := range t.keys() {
		if slices.Contains(known, key) {
			continue
		}
		if t.faults.Full() {
			return
		}
		hint := fmt.Sprintf("known here are %s; `tuckmark help%s` explains them", strings.Join(known, ", "), t.helpWord())
		if otherwise := writtenOtherwise(t.place, key, known); otherwise != "" {
			hint = otherwise
		} else if k := wording.Nearest(key, known); k != "" {
			hint = wording.DidYouMean(k)
			t.meant = append(t.meant, k)
		}
		if of, isTable := t.values[key].(map[string]any); isTable && of["points"] != nil && slices.Contains(known, "edge") {
			hint = fmt.Sprintf("an edge stands under [%s]", t.place.Under("edge").Under(key).Key)
		}
		t.report(t.at(key), "this key is not known", hint)
	}
}

// helpWord is the word behind a space that help explains the keys of the table by; "" for those at
// the top of the file.
func (t *fileTable) helpWord() string {
	if table, known := TableNamed(t.place.Key); known && table != "" {
		return " " + Kind(table)
	}
	return ""
}

// need reports a key that the table does not hold. The hint says what the key
// is for.
func (t *fileTable) need(key, hint string) {
	if !t.has(key) && !slices.Contains(t.meant, key) {
		t.report(t.place, missing(key), hint)
	}
}

// needSome reports that no table stands under a key.
func (t *fileTable) needSome(key, hint string) {
	v, ok := t.values[key]
	if m, isTable := v.(map[string]any); ok && (!isTable || len(m) > 0) || slices.Contains(t.meant, key) {
		return
	}
	t.report(t.place, noneDescribed(key), hint)
}

// refuseBeside reports a key that must not stand beside another one.
func (t *fileTable) refuseBeside(key, other, hint string) {
	if t.has(key) && t.has(other) {
		t.report(t.at(key), notBeside(other), hint)
	}
}

// refuseWithout reports a key that has no sense without another one.
func (t *fileTable) refuseWithout(key, other, hint string) {
	if t.has(key) && !t.has(other) && !slices.Contains(t.meant, other) {
		t.report(t.at(key), notWithout(other), hint)
	}
}

// The causes of what a file or a program leaves out, or says beside something else.

func missing(key string) string { return fmt.Sprintf("%q is missing", key) }

func noneDescribed(kind string) string { return "no " + kind + " is described" }

func notBeside(other string) string { return fmt.Sprintf("cannot stand beside %q", other) }

func notWithout(other string) string { return fmt.Sprintf("has no meaning without %q", other) }

// table returns the table under a key, nil when there is none.
func (t *fileTable) table(key string) *fileTable {
	v, ok := t.values[key]
	if !ok {
		return nil
	}
	return t.asTable(key, v, fmt.Sprintf("write [%s] on a line of its own, and what belongs to it below", t.at(key).Key))
}

func (t *fileTable) asTable(key string, v any, hint string) *fileTable {
	switch v := v.(type) {
	case map[string]any:
		return &fileTable{fileReader: t.fileReader, name: key, written: written{v, t.spot.child(key), t.at(key)}}
	case []map[string]any:
		t.report(t.at(key), "written as a list, in two pairs of brackets", hint)
	default:
		t.report(t.at(key), "must be a table, but is "+asGiven(v), hint)
	}
	return nil
}

// named returns the tables [key.NAME] under a key, in the order of the file.
// A name is printed on the sheets, so its letters are checked.
func (t *fileTable) named(key string) []*fileTable {
	v, ok := t.values[key]
	if !ok {
		return nil
	}
	hint := fmt.Sprintf("write [%s.NAME] on a line of its own, with a name for each", t.at(key).Key)
	all := t.asTable(key, v, hint)
	if all == nil {
		return nil
	}
	var tables []*fileTable
	if err := refuseMany(key, len(all.values)); err != nil {
		t.note(t.at(key), err)
		return nil
	}
	for _, name := range all.keys() {
		if t.faults.Full() {
			break
		}
		t.note(all.at(name), checkKey(name, t.printable))
		if one := all.asTable(name, all.values[name], hint); one != nil {
			tables = append(tables, one)
		}
	}
	return tables
}

// refuseMany refuses more of a kind, such as "edge", than are drawn.
func refuseMany(kind string, n int) error {
	if most := MostOf(kind); n > most {
		return &fault.Fault{Cause: fmt.Sprintf("there are %d here; at most %d are drawn", n, most), Hint: "divide the file"}
	}
	return nil
}

// each reads every table [key.NAME] under a key.
func each[T any](t *fileTable, key string, read func(*fileTable) T) []T {
	var all []T
	for _, one := range t.named(key) {
		if t.faults.Full() {
			break
		}
		all = append(all, read(one))
	}
	return all
}
