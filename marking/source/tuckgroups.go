package source

import (
	"fmt"

	"tuckmark/marking/fault"
)

// Rules of this file. Tucks in groups have as many groups as the file says, and what shows
// from each to the next: between, the same for all, or betweens, one for each but the last,
// which then tell how many groups there are.

const (
	groupsHint  = `tucks in groups have groups = 7 and between = "3/4", what shows between two groups once they are sewn; or betweens = ["3/4", "1/2"], what shows behind each group but the last`
	betweenOnce = "between is the same for all groups, betweens has one for each but the last: leave one of them out"
	groupOfAll  = "is 1, which makes no groups"
	oneGroup    = "leave groups and between out: all tucks are one row then"
	noBetweens  = "has no length in it"
)

// groups is how many groups the tucks are in; 1 where they are in none.
func (s TuckSpec) groups() int {
	if len(s.Betweens.V) > 0 {
		return len(s.Betweens.V) + 1
	}
	return s.Groups.Or(1)
}

// InAll is how many tucks the set has, in all groups.
func (s TuckSpec) InAll() int { return s.Count.V * s.groups() }

// wrongCount says that there are as many betweens as there must not be; "" where they fit
// the groups.
func (s TuckSpec) wrongCount() string {
	if n := s.groups(); s.Groups.given && len(s.Betweens.V) > 0 && s.Groups.V != n {
		return fmt.Sprintf("has %d, and %d groups have %d between them", n-1, s.Groups.V, s.Groups.V-1)
	}
	return ""
}

// tooMany says that all groups together have more tucks than a set may have; "" where they
// have not.
func (s TuckSpec) tooMany() string {
	if all := s.InAll(); s.groups() > 1 && all > maxFolds {
		return fmt.Sprintf("%d groups of %d are %d tucks, and a set has at most %d", s.groups(), s.Count.V, all, maxFolds)
	}
	return ""
}

// inGroups reports which of the keys of groups do not go together.
func (t *fileTable) inGroups(s TuckSpec) {
	t.refuseBeside("between", "betweens", betweenOnce)
	t.refuseWithout("between", "groups", groupsHint)
	switch wrong, many := s.wrongCount(), s.tooMany(); {
	case t.values["groups"] == int64(1): // a faulty one counts as 1, too
		t.report(s.Groups.Place, groupOfAll, oneGroup)
	case t.has("groups") && !t.has("between") && !t.has("betweens"):
		t.report(s.Groups.Place, notWithout("between"), groupsHint)
	case wrong != "":
		t.report(s.Betweens.Place, wrong, "give one for each group but the last; or leave groups out, and they tell how many there are")
	case many != "":
		t.report(t.place, many, "make it two sets")
	}
}

// groupFaults looks at what a Spec says of groups.
func (s TuckSpec) groupFaults(p part) {
	groups, between := p.count("groups", s.Groups, maxFolds), p.length("between", s.Between, fromZero)
	betweens := p.lengths("betweens", s.Betweens, fromZero)
	p.refuseBeside(between, betweens)
	p.refuseWithout(between, groups)
	switch wrong, many := s.wrongCount(), s.tooMany(); {
	case s.Groups.given && s.Groups.V == 1:
		p.report(groups.at, groupOfAll)
	case groups.given && !between.given && !betweens.given:
		p.report(groups.at, notWithout("between"))
	case wrong != "":
		p.report(betweens.at, wrong)
	case many != "":
		p.report(p.place, many)
	}
}

// lengths reads a list of at least one length.
func (t *fileTable) lengths(key string, allowed span) Lengths {
	return value(t, key, func(v any) ([]float64, error) {
		list, ok := v.([]any)
		if !ok {
			return nil, &fault.Fault{Cause: "must be a list of lengths, but is " + asGiven(v), Hint: groupsHint}
		}
		if len(list) == 0 {
			return nil, &fault.Fault{Cause: noBetweens, Hint: groupsHint}
		}
		var all []float64
		for i, one := range list {
			mm, err := t.measure(one, allowed)
			t.noteUnspaced(t.at(key), one, err)
			if err != nil {
				return nil, ofNth("length", i+1, err)
			}
			all = append(all, mm)
		}
		return all, nil
	})
}

// lengths looks at a list of at least one length.
func (p part) lengths(key string, v Lengths, allowed span) said {
	s := said{key, p.at(key, v.Place), v.given}
	switch {
	case !v.given && len(v.V) > 0:
		s.given = true
		p.note(s.at, &fault.Fault{Cause: notGiven, Hint: givenHint})
	case v.given && len(v.V) == 0:
		p.report(s.at, noBetweens)
	}
	for i, mm := range v.V {
		if err := allowed.check(mm); err != nil {
			p.note(s.at, ofNth("length", i+1, err))
		}
	}
	return s
}
