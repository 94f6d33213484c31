package source

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: what a file says may lie in layers: a file that it is like, the file
// itself, one of its views. Each is laid over those below it, once what it names under
// "without" is taken out of them. A piece that is like another has all of that, as it is
// with every layer, but for its name; and its own layers over it.

// mostTaken bounds how many values pieces may take from others that they are like, over all
// views together. It bounds the time and the memory of reading them.
const mostTaken = 2_000_000

// mostLeftOut is how many names may stand in one "without". It bounds the time, for the table
// is gone through for each.
const mostLeftOut = 100

// laid returns the layers of a file, the lowest of which is the first, as one table.
func (r *fileReader) laid(layers []written) written {
	var all written
	of := map[string][]written{} // the layers of each piece
	for i, l := range layers {
		if i == 0 {
			all = l.none()
		}
		for _, name := range r.leftOut(l) {
			key, isPiece := strings.CutPrefix(name.V, "piece.")
			if pieces, _ := all.within("piece"); isPiece && pieces.has(key) {
				all, of[key] = all.with("piece", pieces.less(key)), nil
			} else {
				all = r.without(all, name)
			}
		}
		all = l.less("like", "without", "view").over(all)
		all.place = fault.Place{File: r.file}
		pieces, _ := l.within("piece")
		for _, key := range pieces.keys() {
			if one, is := pieces.within(key); is {
				of[key] = append(of[key], one)
			}
		}
	}
	pieces, _ := all.within("piece")
	if n := len(pieces.values); n == 0 || n > mostOfAKind { // so many are refused, as they stand
		return all
	}
	p := likes{r, of, map[string]written{}}
	return all.with("piece", pieces.filled(func(add func(string, any, *spot)) {
		for _, key := range pieces.keys() {
			if len(of[key]) > 0 {
				one := p.whole(key, nil)
				add(key, one.values, one.spot)
			} else {
				add(key, pieces.values[key], pieces.spot.child(key))
			}
		}
	}))
}

// leftOut reads what a layer leaves out of those below it.
func (r *fileReader) leftOut(l written) []Text {
	const form = `write what is left out, with its kind: without = ["tuck.yoke"]`
	var names []Text
	given, ok := l.values["without"]
	if !ok {
		return nil
	}
	list, isList := given.([]any)
	if !isList {
		r.report(l.at("without"), "must be a list of names, but is "+asGiven(given), form)
	}
	if n := len(list); n > mostLeftOut {
		r.report(l.at("without"), fmt.Sprintf("there are %d names here; at most %d are left out", n, mostLeftOut), "name the tables that they stand in")
		return nil
	}
	for i, v := range list {
		at := l.at("without")
		if line := l.spot.child("without").element(i).lineOf(); line > 0 {
			at = at.On(line)
		}
		name, isText := v.(string)
		if !isText {
			r.report(at, "must be names in quotes, but has "+asGiven(v), form)
		} else if err := checkName(name); err != nil {
			r.note(at, err)
		} else {
			names = append(names, GivenAt(name, at))
		}
	}
	return names
}

// without returns a table without what a name stands for, or notes that it stands for
// nothing there.
func (r *fileReader) without(all written, name Text) written {
	left, ok := all.without(name.V)
	if ok {
		return left
	}
	hint := `name the kind too, such as "tuck.yoke"`
	if near := wording.Nearest(name.V, all.names()); near != "" {
		hint = wording.DidYouMean(near)
	}
	r.report(name.Place, fmt.Sprintf("there is no %s to leave out", wording.Quoted(name.V)), hint)
	return all
}

// likes are pieces on their way to having all that they take from each other.
type likes struct {
	*fileReader
	of   map[string][]written // the layers of each
	done map[string]written
}

// whole returns a piece with all that it has and takes; before are those that wait for it,
// as they are like it, the last of which asks.
func (p likes) whole(key string, before []string) written {
	if one, done := p.done[key]; done {
		return one
	}
	layers := p.of[key]
	top := layers[len(layers)-1]
	one := top.none()
	for _, l := range slices.Backward(layers) {
		if l.has("like") {
			one = p.taken(key, l, before).over(one)
			break
		}
	}
	for _, l := range layers {
		for _, name := range p.leftOut(l) {
			one = p.without(one, name)
		}
		one = l.less("like", "without").over(one)
	}
	one.place = top.place
	p.done[key] = one
	return one
}

// taken returns what a piece takes from the one that its layer names.
func (p likes) taken(key string, l written, before []string) written {
	at := l.at("like")
	other, isText := l.values["like"].(string)
	before = append(before, key)
	switch {
	case !isText:
		p.report(at, "must be the name of a piece in quotes, but is "+asGiven(l.values["like"]), `write like = "front"`)
	case other == key:
		p.report(at, "the piece is like itself", "name the piece that it takes from")
	case len(p.of[other]) == 0:
		known := p.others(key)
		hint := "there is " + wording.Listed(wording.QuotedFew(known), "or")
		if near := wording.Nearest(other, known); near != "" {
			hint = wording.DidYouMean(near)
		}
		p.report(at, "there is no piece "+wording.Quoted(other), hint)
	case slices.Contains(before, other):
		p.report(at, fmt.Sprintf("the piece is like %s, and that is like this one", wording.Quoted(other)), "give one of them all that it has")
	default:
		whole := p.whole(other, before)
		if *p.inherited += weight(whole.values); *p.inherited <= mostTaken {
			return whole.less("name")
		}
		p.report(at, "pieces take more than "+wording.Thousands(mostTaken)+" values from those that they are like", "divide the file")
	}
	p.partial = append(p.partial, before...)
	return l.none()
}

// others are the keys of the other pieces, sorted.
func (p likes) others(key string) []string {
	if p.faults.Full() {
		return nil // nobody is told
	}
	known := slices.Sorted(maps.Keys(p.of))
	return slices.DeleteFunc(known, func(k string) bool { return k == key || len(p.of[k]) == 0 })
}

// weight counts the values in a value.
func weight(v any) int {
	n := 1
	switch v := v.(type) {
	case map[string]any:
		for _, one := range v {
			n += weight(one)
		}
	case []any:
		for _, one := range v {
			n += weight(one)
		}
	}
	return n
}
