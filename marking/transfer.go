package marking

import (
	"fmt"
	"slices"
	"strings"
)

// Rules of this file. Sheer cloth lies over the sheet and is traced. Every other
// cloth has a template of paper, along whose edges and in whose windows it is marked;
// a mirrored sheet, laid on the wrong side with tracing paper and gone over with a
// wheel; or a pricked sheet, through whose holes it is dotted. What the command line
// asks for goes before what a piece asks for, and that before what the cloth asks
// for. What is no pattern of a piece stays as it is: a sample to be sewn, and the
// ruler of a tucked block. A piece that has nothing to be drawn along or through has no
// template.

// Transfer is how lines come onto the cloth.
type Transfer int

// The ways, in the order in which their sheets come.
const (
	Trace Transfer = iota
	Template
	Mirror
	Pricked
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
			unknown = append(unknown, shown(name))
		case !slices.Contains(all, Transfer(i)):
			all = append(all, Transfer(i))
		}
	}
	if len(unknown) > 0 {
		return nil, &Fault{Cause: listed(unknown, "or") + " is no way to bring lines onto cloth", Hint: "write " + listed(transferNames[:], "or") + "; more than one where more than one is wanted"}
	}
	slices.Sort(all)
	return all, nil
}

// usualTransfers are how lines come onto a cloth of which only this is known: cloth
// that may be either is traced.
func usualTransfers(seeThrough Flag) []Transfer {
	if seeThrough.Given() && !seeThrough.V {
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
		t.faults = append(t.faults, FaultAt(at, err))
	}
	return GivenAt(all, at)
}

// Transferred returns the pattern with every piece transferred in the ways given,
// whatever the file says.
func Transferred(p *Pattern, ways []Transfer) *Pattern {
	other := *p
	other.Pieces = slices.Clone(p.Pieces)
	for i := range other.Pieces {
		other.Pieces[i].Transfers = ways
	}
	return &other
}

// Dotted returns the pattern with lines pricked no farther apart than mm. The error
// is a *Fault without a place.
func Dotted(p *Pattern, mm float64) (*Pattern, error) {
	if !(mm >= leastDots && mm <= mostDots) {
		return nil, &Fault{Cause: "these dots are too close together or too far apart",
			Hint: fmt.Sprintf("they may be from %.0f mm to %.0f mm apart; 1/4 in serves most cloth", leastDots, mostDots)}
	}
	other := *p
	other.Dots = mm
	return &other, nil
}

// transferBy says whether a template comes with the sheet that a piece is cut by, which
// then has the same match marks.
type transferBy int

const (
	withoutTemplate transferBy = iota
	withTemplate
)

// sheetsOf returns the sheets of a piece, for every way in which its lines come onto
// the cloth.
func sheetsOf(piece *Piece, pattern *Pattern) []Marking {
	ways := transfersOf(piece, pattern)
	by := withoutTemplate
	var template Marking
	if slices.Contains(ways, Template) {
		if m, useful := templateSheet(piece, pattern); useful {
			template, by = m, withTemplate
		}
	}
	sheets := patternSheets(piece, pattern, by)
	var all []Marking
	add := func(m Marking) {
		if piece.Pair {
			all = append(all, asPair(m)...)
		} else {
			all = append(all, m)
		}
	}
	for _, way := range ways {
		if way == Template && by == withTemplate {
			add(template)
		}
		for _, s := range sheets {
			switch {
			case way == Template && !s.tool:
			case s.tool: // it serves whichever way the cloth is marked
				all = append(all, s.Marking)
			case way == Mirror && !s.onTucked && (piece.Pair || !piece.OnFold && piece.Cut/piece.Layers > 1):
				all = append(all, forWrongSides(s.Marking)...)
			case way == Mirror && !s.onTucked:
				all = append(all, forWrongSide(s.Marking))
			case way == Pricked && !s.onTucked:
				add(pricked(s.Marking, dotsApart(pattern), otherHalf(piece)...))
			default:
				add(s.Marking)
			}
		}
	}
	return withoutRepeats(all)
}

// patternSheet is a sheet by which a piece is marked or cut.
type patternSheet struct {
	Marking
	tool     bool // it is a ruler, the same for all ways
	onTucked bool // it is laid on the tucked cloth, and cut by
}

// patternSheets returns the sheets by which a piece is marked and cut.
func patternSheets(piece *Piece, pattern *Pattern, by transferBy) []patternSheet {
	if piece.Block == nil {
		return []patternSheet{{Marking: markingSheet(piece, pattern, by)}}
	}
	return []patternSheet{
		{Marking: tuckSheet(piece, pattern)},
		{Marking: tuckRuler(piece, pattern), tool: true},
		{Marking: cuttingSheet(piece, pattern, by), onTucked: true},
	}
}

// withoutRepeats returns the markings without those of which there is one of the same
// key already: a tool comes once.
func withoutRepeats(all []Marking) []Marking {
	seen := map[string]bool{}
	return slices.DeleteFunc(all, func(m Marking) bool {
		was := seen[m.Key]
		seen[m.Key] = true
		return was
	})
}

// dotsApart is how far apart dots are pricked, in mm.
func dotsApart(pattern *Pattern) float64 {
	if pattern.Dots > 0 {
		return pattern.Dots
	}
	return usualDots
}

// transfersOf returns how the lines of a piece come onto the cloth.
func transfersOf(piece *Piece, pattern *Pattern) []Transfer {
	if len(piece.Transfers) > 0 {
		return piece.Transfers
	}
	return pattern.Transfers
}
