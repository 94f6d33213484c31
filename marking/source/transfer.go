package source

import (
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Transfer is how lines come onto the cloth.
type Transfer int

// The ways, in the order in which their sheets come.
const (
	Trace Transfer = iota
	Template
	Mirror
	Prick
	transferCount
)

var transferNames = [transferCount]string{"trace", "template", "mirror", "prick"}

// String gives the name as a file writes it.
func (t Transfer) String() string { return transferNames[t] }

// ParseTransfers reads names of transfers with commas between them: "trace,template".
// The error is a *Fault without a place.
func ParseTransfers(text string) ([]Transfer, error) {
	return transfersNamed(strings.Split(text, ","))
}

// transfersNamed returns the ways of these names in their order, each once. The fault
// names all that are none.
func transfersNamed(names []string) ([]Transfer, error) {
	var all []Transfer
	var unknown []string
	for _, name := range names {
		switch i := slices.Index(transferNames[:], strings.TrimSpace(name)); {
		case i < 0:
			unknown = append(unknown, wording.Quoted(name))
		case !slices.Contains(all, Transfer(i)):
			all = append(all, Transfer(i))
		}
	}
	if len(unknown) > 0 {
		return nil, &fault.Fault{Cause: wording.Listed(unknown, "or") + " is no way to bring lines onto cloth", Hint: "write " + wording.Listed(transferNames[:], "or") + "; more than one where more than one is wanted"}
	}
	slices.Sort(all)
	return all, nil
}

// UsualTransfers are how lines come onto the cloth of the garment where a piece does not
// say: cloth that may or may not be seen through is traced.
func (s *Spec) UsualTransfers() []Transfer {
	if s.SeeThrough.Given() && !s.SeeThrough.V {
		return []Transfer{Trace, Template}
	}
	return []Transfer{Trace}
}

// transfers reads how lines come onto the cloth: one way, or a list of ways.
func (t *fileTable) transfers() Value[[]Transfer] {
	v, given := t.values["transfer"]
	if !given {
		return Value[[]Transfer]{}
	}
	at := t.at("transfer")
	faulty := GivenAt[[]Transfer](nil, at)
	var names []string
	switch v := v.(type) {
	case string:
		names = []string{v}
	case []any:
		for _, one := range v {
			name, isText := one.(string)
			if !isText {
				t.report(at, "must hold nothing but text in quotes, but has "+asGiven(one), `write transfer = ["trace", "template"]`)
				return faulty
			}
			names = append(names, name)
		}
	}
	if len(names) == 0 {
		t.report(at, "must be text in quotes, or a list of such, but is "+asGiven(v), `write transfer = "template", or transfer = ["trace", "template"]`)
		return faulty
	}
	all, err := transfersNamed(names)
	if err != nil {
		t.faults = append(t.faults, fault.At(at, err))
	}
	return GivenAt(all, at)
}
