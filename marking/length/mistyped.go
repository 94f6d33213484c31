package length

import (
	"fmt"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: a letter that looks like a figure, a \ for the stroke and a word
// between a whole number and its fraction are slips of the hand where the text is a length
// without them. Then, and only then, the length that was meant is told.

// Mistyped is a text that is a length but for slips of the hand.
type Mistyped struct {
	Slip  string // what is wrong, behind the text itself: "has the letter O for the figure 0"
	Meant string // as Parse reads it: "10"
}

// alike are the letters that look like a figure.
var alike = []struct{ letter, figure string }{{"O", "0"}, {"o", "0"}, {"l", "1"}, {"I", "1"}}

// joinedBy is what may stand in place of the space before a fraction.
var joinedBy = wording.FormOf(`([0-9])\s*(and|&|\+)\s*([0-9]+/[0-9]|[¼-¾⅐-⅞])`)

// FindMistyped looks at a text that is no length; ok is false where no slip of these makes
// one of it.
func FindMistyped(s string) (m Mistyped, ok bool) {
	meant := strings.TrimSpace(s)
	if refuseLong(meant) != nil {
		return m, false
	}
	var slips []string
	for _, a := range alike {
		if strings.Contains(meant, a.letter) {
			slips = append(slips, fmt.Sprintf("the letter %s for the figure %s", a.letter, a.figure))
			meant = strings.ReplaceAll(meant, a.letter, a.figure)
		}
	}
	if strings.Contains(meant, `\`) {
		slips = append(slips, `a \ for the stroke /`)
		meant = strings.ReplaceAll(meant, `\`, "/")
	}
	if by := joinedBy().FindStringSubmatch(meant); by != nil {
		slips = append(slips, fmt.Sprintf("%q between its whole number and its fraction", by[2]))
		meant = joinedBy().ReplaceAllString(meant, "$1 $3")
	}
	number, unit := splitUnit(meant)
	if spelled, ok := UnitSpelled(unit); ok {
		meant = number + " " + spelled.String()
	}
	if _, err := parse(meant, Millimetre); slips == nil || err != nil {
		return m, false
	}
	m = Mistyped{Slip: "has " + wording.Listed(slips, "and"), Meant: meant}
	if len(meant) == 1 {
		m.Slip = fmt.Sprintf("is the letter %[1]s, not the figure %[2]s", strings.TrimSpace(s), meant)
	}
	return m, true
}

// fault tells of the slip in what was written.
func (m Mistyped) fault(written string) error {
	return &fault.Fault{
		Cause: strings.ReplaceAll(wording.Quoted(written), `\\`, `\`) + " " + m.Slip,
		Hint:  "write " + wording.Quoted(m.Meant),
	}
}
