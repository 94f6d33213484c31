package marking

import (
	"fmt"
	"strings"
)

// Rules of this file. The figures are read at the cutting table, in the order in which
// they are needed there: what is torn first comes first. A table without rows is left
// out, and so is a section with nothing to say.

// wording is how lengths are put into words: in the unit of the file, or in both
// systems.
type wording struct{ both bool }

// length gives a length with its unit.
func (w wording) length(a Amount) string {
	if w.both {
		return a.Both()
	}
	return a.String()
}

// cell gives a length without its unit, which the head of the figures says.
func (w wording) cell(a Amount) string { return w.paired(a, a.bare()) }

// reading gives a place on a ruler, without its unit.
func (w wording) reading(a Amount) string { return w.paired(a, a.reading()) }

func (w wording) paired(a Amount, own string) string {
	switch {
	case !w.both:
		return own
	case a.foreign():
		own = bare(a.inUnit())
	}
	return own + " (" + bare(a.other()) + ")"
}

// buy gives what is bought.
func (w wording) buy(p Purchase) string {
	if w.both {
		return p.Both()
	}
	return p.String()
}

// ReportOf gives the figures of the pattern for the cutting table, with lengths in its
// own unit, or in inches and millimetres both.
func ReportOf(p *Pattern, both bool) Report {
	w := wording{both}
	r := Report{Title: p.Title, Notes: []string{scaleNote(p, both)}}
	if p.Size != "" {
		r.Title = strings.TrimPrefix(r.Title+", size "+p.Size, ", ")
	}
	for _, s := range []Section{
		remarkSection(p), firstSection(p, w), foldSection(p, w), edgeSection(p, w), seamSection(p, w), trimSection(p, w),
		clothSection(p, w), sewingSection(p, w), cautionSection(p),
	} {
		if len(s.Tables)+len(s.Lines) > 0 || s.Picture != nil {
			r.Sections = append(r.Sections, s)
		}
	}
	return r
}

func scaleNote(p *Pattern, both bool) string {
	names := map[Unit]string{Inch: "inches, to the nearest 1/16", Centimetre: "centimetres, to the nearest millimetre", Millimetre: "millimetres"}
	note := "Lengths are in " + names[p.Unit] + ". Totals are those of the lengths as printed."
	if both {
		other := "inches"
		if p.Unit == Inch {
			other = "millimetres"
		}
		note += " In brackets is the exact length in " + other + ", rounded."
	}
	return note
}

// remarkSection lists what may not be meant, all but what a table below says by itself.
func remarkSection(p *Pattern) Section {
	s := Section{Title: "Look at first"}
	for _, r := range p.Remarks {
		if r.inTable {
			continue
		}
		text := r.Text
		if r.Path != "" {
			text = r.Path + ": " + text
		}
		if r.Line > 0 {
			text = fmt.Sprintf("line %d, %s", r.Line, text)
		}
		s.Lines = append(s.Lines, Sentence{Text: text, Warning: true})
	}
	return s
}
