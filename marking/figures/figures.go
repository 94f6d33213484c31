package figures

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file. The figures are read at the cutting table, in the order in which
// they are needed there: what is torn first comes first. A table without rows is left
// out, and so is a section with nothing to say.

// Report gives the figures of a pattern for the cutting table, and the cautions.
func Report(p *garment.Pattern, units Units) mark.Report {
	r := Tables(p, units)
	r.Sections = append(r.Sections, cautionSection(p))
	return r
}

// Tables is the report without the cautions, for sheets that have them in front (Cautions).
func Tables(p *garment.Pattern, units Units) mark.Report {
	return tables(p, writer{unit: p.Unit, units: units})
}

func tables(p *garment.Pattern, w writer) mark.Report {
	r := mark.Report{Title: p.Title, Notes: []string{scaleNote(w)}}
	if p.Size != "" {
		r.Title = strings.TrimPrefix(r.Title+", size "+p.Size, ", ")
	}
	if n := p.Garments(); n > 1 {
		r.Title = strings.TrimPrefix(fmt.Sprintf("%s, for %d", r.Title, n), ", ")
		r.Notes = append(r.Notes, fmt.Sprintf("What is torn and cut, the cloth and what is to be bought are for %d garments. All else is of one.", n))
	}
	for _, s := range []mark.Section{
		remarkSection(p), cutSection(p, w), foldSection(p, w), edgeSection(p, w), seamSection(p, w), measureSection(p, w), trimSection(p, w),
		clothSection(p, lay.Of(p), w), settingSection(p, w),
	} {
		if !s.Empty() {
			r.Sections = append(r.Sections, s)
		}
	}
	return r
}

// scaleNote says in what units all lengths are, and how they are rounded.
func scaleNote(w writer) string {
	names := map[length.Unit]string{length.Inch: "inches, to the nearest 1/16", length.Centimetre: "centimetres, to the nearest millimetre", length.Millimetre: "millimetres"}
	note := "Lengths are in " + names[w.unit] + "; where less would not do, up to the next. Totals are those of the lengths as printed."
	if w.units == AllUnits {
		step := "1/16 in"
		if w.unit == length.Inch {
			step = "millimetre"
		}
		note += " In brackets is the exact length to the nearest " + step + "."
	}
	return note
}

// inFile says on which line of its file something stands; "" where that is not known.
func inFile(r piece.Remark) string {
	if r.Line == 0 {
		return ""
	}
	return fmt.Sprintf("line %d", r.Line)
}

// ofWhat says in words what the key of a place is of: a piece by its name, and what else
// it has by kind and name.
func ofWhat(p *garment.Pattern, place fault.Place) string {
	parts := place.Parts()
	var words []string
	for len(parts) > 1 {
		of := parts[0] + " " + parts[1]
		if n := slices.IndexFunc(p.Pieces, func(piece piece.Piece) bool { return piece.Key == parts[1] }); parts[0] == "piece" && n >= 0 {
			of = p.Pieces[n].Name
		}
		words, parts = append(words, of), parts[2:]
	}
	return strings.Join(append(words, parts...), ", ")
}

// remarkSection lists what may not be meant, all but what a table below says by itself.
func remarkSection(p *garment.Pattern) mark.Section {
	s := mark.Section{Title: "Look at first"}
	for _, r := range p.Remarks {
		if r.InTable {
			continue
		}
		text := r.Text
		if of := ofWhat(p, r.Place); of != "" {
			text = of + ": " + text
		}
		s.Lines = append(s.Lines, mark.Sentence{Text: text, Warning: true, Place: inFile(r)})
	}
	return s
}
