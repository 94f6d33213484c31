package source

import (
	"maps"
	"slices"

	"tuckmark/marking/fault"
)

// Rules of this file: a table may be laid over another. What both give is that of the upper
// one, but for tables in them, which are laid over each other in turn; what the upper one
// says in another way, such as a gap where the lower one has a spacing, takes its place.
// Nothing that was read is changed: a new table has what it needs of both.

// written is a table as it is written: its values, where they stand, and its own place.
type written struct {
	values map[string]any
	spot   *spot
	place  fault.Place
}

// inPlaceOf are the keys that a key leaves no room for in the table under its own.
var inPlaceOf = map[string][]string{
	"allowance": {"hem", "turn"}, "hem": {"allowance"},
	"gap": {"spacing"}, "spacing": {"gap"},
	"rectangle": {"outline"}, "outline": {"rectangle"},
	"between": {"betweens"}, "betweens": {"between"},
	"centre": {"smooth"}, "smooth": {"centre"},
	"from": {"below"}, "to": {"below", "length", "end", "step"}, "below": {"from", "to"}, "length": {"to"},
	"points": {"centre", "along", "distance", "beside", "at", "side", "length"},
	"along":  {"points", "smooth", "centre", "from", "to", "beside", "at", "side", "length"},
	"beside": {"points", "smooth", "centre", "along", "distance"},
	"within": {"gathered"}, "gathered": {"within"},
}

// keys returns the keys of the table in the order of the file.
func (w written) keys() []string {
	keys := slices.Sorted(maps.Keys(w.values))
	if w.spot == nil {
		return keys
	}
	order := make(map[string]int, len(keys))
	for i, c := range w.spot.within {
		order[c.name] = i
	}
	slices.SortStableFunc(keys, func(a, b string) int { return order[a] - order[b] })
	return keys
}

// at returns the place of a key of the table.
func (w written) at(key string) fault.Place {
	s := w.spot.child(key)
	at := w.place.Under(key).On(s.lineOf())
	if s != nil && s.file != "" {
		at.File = s.file
	}
	return at
}

// has reports whether the table holds the key.
func (w written) has(key string) bool {
	_, ok := w.values[key]
	return ok
}

// within returns the table under a key; ok is false where there is none.
func (w written) within(key string) (table written, ok bool) {
	values, ok := w.values[key].(map[string]any)
	return written{values, w.spot.child(key), w.at(key)}, ok
}

// filled returns a table in the place of this one, with all that add is called for.
func (w written) filled(fill func(add func(key string, v any, s *spot))) written {
	values := map[string]any{}
	var within []*spot
	fill(func(key string, v any, s *spot) {
		values[key] = v
		if s != nil {
			within = append(within, s)
		}
	})
	return written{values, w.spot.holding(within), w.place}
}

// with returns the table with another one under a key of it.
func (w written) with(key string, table written) written {
	return w.filled(func(add func(string, any, *spot)) {
		for _, k := range w.keys() {
			if k == key {
				add(key, table.values, table.spot)
			} else {
				add(k, w.values[k], w.spot.child(k))
			}
		}
	})
}

// less returns the table without some keys.
func (w written) less(keys ...string) written {
	return w.filled(func(add func(string, any, *spot)) {
		for _, key := range w.keys() {
			if !slices.Contains(keys, key) {
				add(key, w.values[key], w.spot.child(key))
			}
		}
	})
}

// none returns the table with nothing in it.
func (w written) none() written {
	return w.filled(func(func(string, any, *spot)) {})
}

// over returns the table laid over another one. It stands where it stood, or, where it
// stands nowhere, where the other one did.
func (w written) over(lower written) written {
	merged := w
	if w.spot == nil {
		merged.spot = lower.spot
	}
	return merged.filled(func(add func(string, any, *spot)) {
		for _, key := range lower.keys() {
			upper, tables := w.within(key)
			under, both := lower.within(key)
			switch {
			case tables && both:
				one := upper.over(under)
				add(key, one.values, one.spot)
			case w.has(key):
				add(key, w.values[key], w.spot.child(key).laidOver())
			case !w.replaces(key, lower):
				add(key, lower.values[key], lower.spot.child(key))
			}
		}
		for _, key := range w.keys() {
			if !lower.has(key) {
				add(key, w.values[key], w.spot.child(key))
			}
		}
	})
}

// replaces reports whether the table leaves no room for a key of one below it. A table under a
// key may be no more than a thing that is called so, as an edge "outline" is: it has the place
// of a value alone, and a value that of either.
func (w written) replaces(key string, lower written) bool {
	_, isTable := lower.within(key)
	for own := range w.values {
		_, ownTable := w.within(own)
		if slices.Contains(inPlaceOf[own], key) && !(ownTable && isTable) {
			return true
		}
	}
	return false
}

// without returns the table without what a name such as "tuck.yoke" stands for, which may
// have points of its own; ok is false where it stands for nothing.
func (w written) without(name string) (left written, ok bool) {
	if w.has(name) {
		return w.less(name), true
	}
	for i, r := range name {
		table, is := w.within(name[:i])
		if r != '.' || !is {
			continue
		}
		if rest, ok := table.without(name[i+1:]); ok {
			return w.with(name[:i], rest), true
		}
	}
	return w, false
}

// names lists what without may name: each thing of the table, and what stands in its tables.
func (w written) names() []string {
	var all []string
	for _, key := range w.keys() {
		table, is := w.within(key)
		if !is {
			all = append(all, key)
		}
		for _, name := range table.keys() {
			all = append(all, key+"."+name)
		}
	}
	return all
}
