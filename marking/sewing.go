package marking

import (
	"fmt"
	"strings"
)

// Rules of this file. How a garment was sewn is written down, so that it can be done
// again: what the file says, and a line to write on for what it leaves out.

// Setting is one thing to be noted of how a garment is sewn.
type Setting struct {
	Name  string // "needle"
	Value string // "" where the file does not say
}

// settings lists what a file says of how it is sewn, and what it leaves out.
func settings(s SewingSpec) []Setting {
	return []Setting{
		{"stitch length", s.Stitch.V},
		{"needle", s.Needle.V},
		{"thread", s.Thread.V},
		{"tension", s.Tension.V},
		{"needle position", s.Position.V},
	}
}

// sewingSection notes how the garment is sewn.
func sewingSection(p *Pattern, w Wording) Section {
	s := Section{Title: "Settings to keep"}
	for _, one := range p.Sewing {
		s.Lines = append(s.Lines, Sentence{Text: strings.TrimSuffix(one.Name+": "+one.Value, " "), Blank: one.Value == ""})
	}
	for i := range p.Pieces {
		for _, t := range p.Pieces[i].Tucks {
			name := fmt.Sprintf("sample of %s, %s: ", p.Pieces[i].Name, t.Key)
			if t.Sampled {
				s.Lines = append(s.Lines, Sentence{Text: name + fmt.Sprintf("%s took up %s", counted(t.Sample.Tucks.V, "tuck"),
					w.length(p.Unit.amount(t.Sample.Flat.V-t.Sample.Sewn.V)))})
			} else if wantsSample(t) {
				s.Lines = append(s.Lines, Sentence{Text: strings.TrimSuffix(name, " "), Blank: true})
			}
		}
	}
	return s
}
