package paper

import (
	"fmt"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: paper is asked for by a name, or by its size. A size has its
// unit, because that of the pattern is no hint of how paper is measured. Capitals
// and spaces around it do not matter.

// Names that the rules know: of the paper that fits in two printers, and of paper that
// has no size of its own.
const (
	eitherName = "either"
	rollName   = "roll"
	singleName = "single"
)

// Names returns the names of the papers that have one size.
func Names() []string {
	var names []string
	for _, p := range All() {
		names = append(names, p.Name)
	}
	return names
}

// Choices says in one line how paper is asked for.
func Choices() string {
	return strings.Join(Names(), ", ") + "; roll:36in (of that width), single (one page for all), or a size such as 210x297mm"
}

// named returns the paper of a name in All, and whether there is one.
func named(name string) (Paper, bool) {
	for _, p := range All() {
		if p.Name == name {
			return p, true
		}
	}
	return Paper{}, false
}

// Either is as wide as the narrower and as high as the lower of letter and A4.
func Either() Paper {
	p, _ := named(eitherName)
	return p
}

// Find returns the paper of a name ("letter"), of a size ("210x297mm",
// "11 x 17 in"), from a roll of a width ("roll:36in"), or one single page for
// everything ("single"). The error is a *fault.Fault without a place.
func Find(text string) (Paper, error) {
	wanted := strings.ToLower(strings.TrimSpace(text))
	if p, known := named(wanted); known {
		return p, nil
	}
	if wanted == singleName {
		p := newPaper(singleName, "one single page", LongestSide, LongestSide)
		p.Cut = Single
		return p, nil
	}
	if name, width, _ := strings.Cut(wanted, ":"); strings.TrimSpace(name) == rollName {
		return rollOf(text, width)
	}
	if width, height, found := strings.Cut(strings.ReplaceAll(wanted, "×", "x"), "x"); found && strings.ContainsAny(width, "0123456789") {
		return paperOf(text, width, height)
	}
	return Paper{}, &fault.Fault{
		Cause: fmt.Sprintf("no paper is called %q", text),
		Hint:  "the papers are " + wording.Listed(Names(), "and") + "; or write roll:36in, single, or a size such as 210x297mm",
	}
}

// rollOf returns paper from a roll.
func rollOf(text, width string) (Paper, error) {
	const hint = "write roll:36in or roll:91cm"
	if strings.TrimSpace(width) == "" {
		return Paper{}, &fault.Fault{Cause: fmt.Sprintf("%q does not say how wide the roll is", text), Hint: hint}
	}
	unit, known := length.WrittenUnit(width)
	mm, err := length.Parse(width, unit)
	if err != nil {
		return Paper{}, err
	}
	if !known {
		return Paper{}, &fault.Fault{Cause: fmt.Sprintf("%q has no unit", text), Hint: hint}
	}
	p := newPaper(rollName, "a roll of paper "+unit.AsWritten(mm)+" wide", mm, LongestSide)
	p.Cut = Roll
	return p, p.Check()
}

// paperOf returns paper of a size of its own. The unit behind the height counts for
// a width without one.
func paperOf(text, width, height string) (Paper, error) {
	unit, known := length.WrittenUnit(height)
	high, err := length.Parse(height, unit)
	if err != nil {
		return Paper{}, err
	}
	wide, err := length.Parse(width, unit)
	if err != nil {
		return Paper{}, err
	}
	if !known {
		return Paper{}, &fault.Fault{
			Cause: fmt.Sprintf("%q has no unit", text),
			Hint:  "write in, cm or mm behind it, such as 210x297mm",
		}
	}
	size := unit.AsWritten(wide) + " x " + unit.AsWritten(high)
	p := newPaper(strings.TrimSpace(text), "paper of "+size, wide, high)
	return p, p.Check()
}
