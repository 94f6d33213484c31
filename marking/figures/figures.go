package figures

import (
	"fmt"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
)

// Rules of this file. The figures are read at the cutting table, in the order in which
// they are needed there: what is torn first comes first. A table without rows is left
// out, and so is a section with nothing to say.

// Wording is how lengths are put into words.
type Wording int

// The ways: in the unit of the file, or in both systems.
const (
	OwnUnit Wording = iota
	AllUnits
)

// length gives a length with its unit.
func (w Wording) length(a length.Amount) string {
	if w == AllUnits {
		return a.Both()
	}
	return a.String()
}

// cell gives a length without its unit, which the head of the figures says.
func (w Wording) cell(a length.Amount) string { return w.paired(a, a.Bare()) }

// reading gives a place on a ruler, without its unit.
func (w Wording) reading(a length.Amount) string { return w.paired(a, a.Reading()) }

func (w Wording) paired(a length.Amount, own string) string {
	switch {
	case w == OwnUnit:
		return own
	case a.Foreign():
		own = length.Bare(a.InUnit())
	}
	return own + " (" + length.Bare(a.Other()) + ")"
}

// buy gives what is bought.
func (w Wording) buy(p length.Purchase) string {
	if w == AllUnits {
		return p.Both()
	}
	return p.String()
}

// Report gives the figures of the pattern for the cutting table.
func Report(p *garment.Pattern, w Wording) mark.Report {
	r := mark.Report{Title: p.Title, Notes: []string{scaleNote(p, w)}}
	if p.Size != "" {
		r.Title = strings.TrimPrefix(r.Title+", size "+p.Size, ", ")
	}
	for _, s := range []mark.Section{
		remarkSection(p), firstSection(p, w), foldSection(p, w), edgeSection(p, w), seamSection(p, w), trimSection(p, w),
		clothSection(p, lay.Of(p), w), sewingSection(p, w), cautionSection(p),
	} {
		if len(s.Tables)+len(s.Lines) > 0 || s.Picture != nil {
			r.Sections = append(r.Sections, s)
		}
	}
	return r
}

func scaleNote(p *garment.Pattern, w Wording) string {
	names := map[length.Unit]string{length.Inch: "inches, to the nearest 1/16", length.Centimetre: "centimetres, to the nearest millimetre", length.Millimetre: "millimetres"}
	note := "Lengths are in " + names[p.Unit] + ". Totals are those of the lengths as printed."
	if w == AllUnits {
		other := "inches"
		if p.Unit == length.Inch {
			other = "millimetres"
		}
		note += " In brackets is the exact length in " + other + ", rounded."
	}
	return note
}

// remarkSection lists what may not be meant, all but what a table below says by itself.
func remarkSection(p *garment.Pattern) mark.Section {
	s := mark.Section{Title: "Look at first"}
	for _, r := range p.Remarks {
		if r.InTable {
			continue
		}
		text := r.Text
		if r.Path != "" {
			text = r.Path + ": " + text
		}
		if r.Line > 0 {
			text = fmt.Sprintf("line %d, %s", r.Line, text)
		}
		s.Lines = append(s.Lines, mark.Sentence{Text: text, Warning: true})
	}
	return s
}
