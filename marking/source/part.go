package source

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// Rules of this file: it holds each value of a Spec against its own bounds, and says
// where it stands; a faulty one counts as given. Which values go together is not known here.

// part is a part of a Spec that is being looked at: what a table is in a file.
type part struct {
	place  fault.Place
	faults *fault.List
}

func (p part) report(at fault.Place, cause string) { p.note(at, &fault.Fault{Cause: cause}) }

// note reports what is wrong at a place, if anything is.
func (p part) note(at fault.Place, err error) {
	if err != nil {
		*p.faults = p.faults.With(fault.At(at, err))
	}
}

// at is where a value stands: at its own place, or under the part.
func (p part) at(key string, own fault.Place) fault.Place {
	if own == (fault.Place{}) {
		return p.place.Under(key)
	}
	return own
}

func (p part) under(key string) part { return part{p.place.Under(key), p.faults} }

// within is the part under a key that may have a place of its own.
func (p part) within(key string, own fault.Place) part { return part{p.at(key, own), p.faults} }

// group is all of one kind that stand beside each other, each under its key.
type group struct {
	part
	kind string
	seen map[string]bool // the keys so far
}

func (p part) group(kind string, n int) group {
	g := group{p.under(kind), kind, map[string]bool{}}
	g.note(g.place, refuseMany(kind, n))
	return g
}

// next is the part of the next one of the group.
func (g group) next(key string, own fault.Place) part {
	p := g.within(key, own)
	p.note(p.place, checkKey(key, anyLetter))
	if g.seen[key] {
		p.note(p.place, &fault.Fault{Cause: "another " + g.kind + " has the same key", Hint: "give each a key of its own"})
	}
	g.seen[key] = true
	return p
}

// said is whether a value was given, and where.
type said struct {
	key   string
	at    fault.Place
	given bool
}

const (
	notGiven  = "is set, but not given"
	givenHint = "source.Given makes a value that counts"
)

// look holds a value that was given against its bounds. One that is set without being
// given would count here and not there.
func look[T comparable](p part, key string, v Value[T], check func(T) error) said {
	var none T
	s := said{key, p.at(key, v.Place), v.given}
	switch {
	case v.given:
		p.note(s.at, check(v.V))
	case v.V != none:
		s.given = true // or it would be missing as well
		p.note(s.at, &fault.Fault{Cause: notGiven, Hint: givenHint})
	}
	return s
}

func (p part) printed(key string, v Text) said { return look(p, key, v, checkLine) }

// checkLine is checkLetters for whatever font there will be.
func checkLine(s string) error { return checkLetters(s, anyLetter) }

func anyLetter(rune) bool { return true }

func (p part) text(key string, v Text) said { return look(p, key, v, checkName) }

func (p part) flag(key string, v Flag) said {
	return look(p, key, v, func(bool) error { return nil })
}

func (p part) count(key string, v Count, most int) said {
	return look(p, key, v, func(n int) error { return refuseCount(int64(n), most) })
}

func (p part) factor(key string, v Factor, allowed factors) said {
	return look(p, key, v, func(n float64) error { return allowed.refuse(n, n) })
}

func (p part) length(key string, v Length, allowed span) said {
	return look(p, key, v, allowed.check)
}

// check is refuse of a length of which it is not known how it was written.
func (allowed span) check(mm float64) error {
	if _, err := length.Bounded(inMM(mm), mm); err != nil {
		return err
	}
	return allowed.refuse(mm, inMM(mm))
}

// inMM gives a length of which it is not known how it was written.
func inMM(mm float64) string { return asGiven(mm) + " mm" }

// word looks whether a choice is one of those that have a word, or the one that stands
// for none.
func word[E ~int](p part, key string, v Value[E], words []string) said {
	return look(p, key, v, func(e E) error {
		if e < 0 || int(e) >= len(words) {
			return &fault.Fault{Cause: fmt.Sprintf("%d is none of the choices", int(e)), Hint: "known here are " + choices(words)}
		}
		return nil
	})
}

func (p part) transfers(v Value[[]Transfer]) {
	at := p.at("transfer", v.Place)
	switch {
	case !v.given && len(v.V) > 0:
		p.note(at, &fault.Fault{Cause: notGiven, Hint: givenHint})
	case v.given && len(v.V) == 0:
		p.report(at, "names no way to bring lines onto cloth")
	}
	for i, way := range v.V {
		switch {
		case way < 0 || int(way) >= len(transferWords):
			p.note(at, &fault.Fault{Cause: fmt.Sprintf("%d is none of the choices", int(way)), Hint: "known here are " + choices(transferWords[:])})
		case slices.Contains(v.V[:i], way):
			p.report(at, fmt.Sprintf("%q is named twice", way))
		}
	}
}

// points looks at a list of at least two points.
func (p part) points(key string, v Points) said {
	s := said{key, p.at(key, v.Place), v.given}
	switch {
	case !v.given && len(v.V) > 0:
		s.given = true
		p.note(s.at, &fault.Fault{Cause: notGiven, Hint: givenHint})
	case v.given:
		p.note(s.at, refuseFew(len(v.V)))
	}
	for i, q := range v.V {
		p.point(s.at, i+1, q)
	}
	return s
}

// centre looks at the centre of an arc, and what stands beside it.
func (p part) centre(v Point, smooth bool, points said, n int) {
	centre := look(p, "centre", v, func(q plane.Point) error {
		for _, mm := range []float64{q.X, q.Y} {
			if _, err := length.Bounded(inMM(mm), mm); err != nil {
				return err
			}
		}
		return refuseArc(n)
	})
	p.refuseWithout(centre, points)
	p.refuseBeside(said{"smooth", p.place.Under("smooth"), smooth}, centre)
}

// point looks at the nth point, counted from 1.
func (p part) point(at fault.Place, nth int, q plane.Point) {
	for _, mm := range []float64{q.X, q.Y} {
		if _, err := length.Bounded(inMM(mm), mm); err != nil {
			p.note(at, ofNth("point", nth, err))
		}
	}
}

// along looks at the edges that something runs along.
func (p part) along(names []Text) {
	at := p.place.Under("along")
	p.note(at, refuseNames(len(names), alongHint))
	p.names(names, at)
}

// names looks at each of the names of edges, which stand at a place together.
func (p part) names(names []Text, at fault.Place) {
	for _, name := range names {
		own := at
		if name.Place != (fault.Place{}) {
			own = name.Place
		}
		p.note(own, checkName(name.V))
	}
}

// need reports what was not given of these.
func (p part) need(all ...said) {
	for _, s := range all {
		if !s.given {
			p.report(p.place, missing(s.key))
		}
	}
}

// refuseBeside reports a value that must not stand beside another one.
func (p part) refuseBeside(one, other said) {
	if one.given && other.given {
		p.report(one.at, notBeside(other.key))
	}
}

// refuseWithout reports a value that has no sense without another one.
func (p part) refuseWithout(one, other said) {
	if one.given && !other.given {
		p.report(one.at, notWithout(other.key))
	}
}
