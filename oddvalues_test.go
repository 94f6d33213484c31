package main

import (
	"crypto/sha256"
	"fmt"
	"maps"
	"runtime/debug"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
	"tuckmark/pdfout/seen"
)

// Rules of this file: every key that a file may have is given every odd value, in a small file
// that has it; what then holds is in wholeway_test.go. The keys are those that the program
// knows: none has a place of its own here.

// use is a table of a small file that has a key.
type use struct{ file, table, key string }

// useOf is where a key of a kind of table is used; false where no small file has it. Then it is
// a table of that kind all the same.
func useOf(kind source.Table, key string) (u use, ok bool) {
	for _, file := range slices.Sorted(maps.Keys(sketch.EveryKey())) {
		text := sketch.EveryKey()[file]
		for _, table := range tablesIn(text) {
			if name, known := source.TableNamed(table); !known || name != kind.Name {
				continue
			}
			keys := keysIn(text, table)
			if slices.Contains(keys, key) && !slices.ContainsFunc(keys, func(k string) bool { return !slices.Contains(kind.Keys, k) }) {
				return use{file, table, key}, true
			}
			u = use{file, table, key}
		}
	}
	return u, false
}

// tablesIn are the tables of a text, and its top.
func tablesIn(text string) []string {
	all := []string{""}
	for _, t := range sketch.Tables(text) {
		all = append(all, t.Name)
	}
	return all
}

// keysIn are the keys of a table of a text: those of values, and those of the tables in it.
func keysIn(text, table string) []string {
	var all []string
	for _, v := range sketch.Values(text) {
		if v.Table == table {
			all = append(all, v.Key)
		}
	}
	above := fault.Place{Key: table}.Parts()
	for _, t := range sketch.Tables(text) {
		parts := fault.Place{Key: t.Name}.Parts()
		if len(parts) > len(above) && slices.Equal(parts[:len(above)], above) && !slices.Contains(all, parts[len(above)]) {
			all = append(all, parts[len(above)])
		}
	}
	return all
}

func TestOddValuesOfEveryKey(t *testing.T) {
	inAnotherStep(t)
	cases, tried := 0, oddCases{t: t, drawn: map[[sha256.Size]byte]bool{}}
	for _, kind := range source.Tables() {
		for nth, key := range kind.Keys {
			u, used := useOf(kind, key)
			assert.True(t, used, "sketch.EveryKey should have a [%s] with %s", kind.Name, key)
			values := oddValuesOf(u, nth)
			assert.GreaterOrEqual(t, len(values), 40)
			for _, value := range values {
				cases++
				name := fmt.Sprintf("%s of [%s] in %q is %.80s", u.key, u.table, u.file, value)
				tried.try(name, sketch.Saying(sketch.EveryKey()[u.file], u.table, u.key, value))
			}
		}
	}
	assert.Greater(t, cases, 4000)
	t.Logf("%d cases, of which %d are read and %d are drawn", cases, tried.read, len(tried.drawn))
}

// What a maker calls by a name of her own is called oddly.
func TestOddNames(t *testing.T) {
	inAnotherStep(t)
	cases, tried := 0, oddCases{t: t, drawn: map[[sha256.Size]byte]bool{}}
	for nth, kind := range source.Tables() {
		if !strings.HasSuffix(kind.Name, ".NAME") {
			continue
		}
		u, used := useOf(kind, kind.Keys[0])
		require.True(t, used, kind.Name)
		text := sketch.EveryKey()[u.file]
		own := fault.Place{Key: u.table}.Last()
		for i, name := range append(sketch.Odd(), own) {
			if i%(2*thinned) != nth%(2*thinned) { // a name is drawn, whatever it is: that takes longer
				continue
			}
			cases++
			other := strings.TrimSuffix(u.table, own) + name
			renamed := strings.NewReplacer("["+u.table+"]", "["+other+"]", "["+u.table+".", "["+other+".").Replace(text)
			tried.try(fmt.Sprintf("[%s] in %q is [%.80s]", u.table, u.file, other), renamed)
		}
	}
	t.Logf("%d cases, of which %d are read and %d are drawn", cases, tried.read, len(tried.drawn))
}

// thinned is every how many odd values a key is given one; its neighbours are given the others.
const thinned = 3

// oddValuesOf are the values that the nth key of a table is given: odd ones, its own names, and
// itself twice.
func oddValuesOf(u use, nth int) []string {
	var all []string
	for i, value := range sketch.Odd() {
		if i%thinned == nth%thinned {
			all = append(all, value)
		}
	}
	parts := fault.Place{Key: u.table}.Parts()
	for i := range parts {
		all = append(all, fmt.Sprintf("%q", strings.Join(parts[i:], ".")))
	}
	return append(all, fmt.Sprintf("%q", u.key), "1\n"+u.key+" = 2", "1\n"+u.key+".x = 2")
}

// oddCases are files that are tried one after the other. What one of them has the same lines
// and figures as another before it is not drawn again.
type oddCases struct {
	t     *testing.T
	read  int
	drawn map[[sha256.Size]byte]bool
}

// try takes a text the whole way.
func (c *oddCases) try(name, text string) {
	held := &heldCase{t: c.t, name: name}
	defer func() {
		if broken := recover(); broken != nil && broken != held {
			c.t.Errorf("%s: the program breaks: %v\n%s", name, broken, debug.Stack())
		}
	}()
	patterns := patternsOf(held, text)
	for _, p := range patterns {
		printing := printing{paper: seen.Paper(held, "letter"), figures: true, times: 1}
		o, err := printing.take(p, nil)
		require.NoError(held, err)
		told := holdFigures(held, o.pattern)
		if is := sha256.Sum256(fmt.Append(told, sheet.Of(p))); !c.drawn[is] {
			c.drawn[is] = true
			holdPages(held, text, printing, o)
		}
	}
	if len(patterns) > 0 {
		c.read++
	}
}

// heldCase is a test of one case among many: what fails names it, and the next is tried.
type heldCase struct {
	t    *testing.T
	name string
}

// Errorf reports what fails.
func (c *heldCase) Errorf(format string, args ...any) {
	c.t.Errorf("%s: %s", c.name, fmt.Sprintf(format, args...))
}

// FailNow ends the case.
func (c *heldCase) FailNow() { panic(c) }
