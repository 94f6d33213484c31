package source

import (
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: one piece may be brought onto cloth in several ways; their sheets
// come in the order of the ways, each once, however they are written.

// Transfer is how lines come onto the cloth.
type Transfer int

// The ways, in the order in which their sheets come.
const (
	Trace Transfer = iota
	Template
	Mirror
	Prick
)

var transferWords = [...]string{Trace: "trace", Template: "template", Mirror: "mirror", Prick: "prick"}

// String gives the word that a file writes.
func (t Transfer) String() string { return transferWords[t] }

// TransferNames are the words of all ways, in their order.
func TransferNames() []string { return slices.Clone(transferWords[:]) }

// TransferChoices lists the words of all ways in a sentence: "trace, template or mirror".
func TransferChoices() string { return wording.Listed(transferWords[:], "or") }

// ParseTransfers reads names of transfers with commas between them: "trace,template".
// The error is a *fault.Fault without a place.
func ParseTransfers(text string) ([]Transfer, error) {
	return transfersNamed(strings.Split(text, ","))
}

// transfersNamed returns the ways of these names in their order, each once. The fault
// names all that are none.
func transfersNamed(names []string) ([]Transfer, error) {
	var all []Transfer
	var unknown []string
	for _, name := range names {
		switch i := slices.Index(transferWords[:], strings.TrimSpace(name)); {
		case i < 0:
			unknown = append(unknown, name)
		case !slices.Contains(all, Transfer(i)):
			all = append(all, Transfer(i))
		}
	}
	if len(unknown) > 0 {
		return nil, &fault.Fault{Cause: wording.Listed(wording.QuotedFew(unknown), "or") + " is no way to bring lines onto cloth", Hint: "write " + TransferChoices() + "; more than one where more than one is wanted"}
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
	return value(t, "transfer", func(v any) ([]Transfer, error) {
		var names []string
		switch v := v.(type) {
		case string:
			names = []string{v}
		case []any:
			for _, one := range v {
				name, isText := one.(string)
				if !isText {
					return nil, &fault.Fault{Cause: "must hold nothing but text in quotes, but has " + asGiven(one), Hint: `write transfer = ["trace", "template"]`}
				}
				names = append(names, name)
			}
		}
		if len(names) == 0 {
			return nil, &fault.Fault{
				Cause: "must be text in quotes, or a list of such, but is " + asGiven(v),
				Hint:  `write transfer = "template", or transfer = ["trace", "template"]`,
			}
		}
		return transfersNamed(names)
	})
}
