package figures

import (
	"fmt"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/marking/wording"
)

// Rules of this file. How a garment was sewn is written down, so that it can be done
// again: what the file says, and a line to write on for what it leaves out.

// sewingSection notes how the garment is sewn.
func sewingSection(p *garment.Pattern, w Wording) mark.Section {
	s := mark.Section{Title: "Settings to keep"}
	for _, one := range p.Sewing {
		s.Lines = append(s.Lines, mark.Sentence{Text: strings.TrimSuffix(one.Name+": "+one.Value, " "), Blank: one.Value == ""})
	}
	for i := range p.Pieces {
		for _, t := range p.Pieces[i].TuckRows {
			name := fmt.Sprintf("sample of %s, %s: ", p.Pieces[i].Name, t.Key)
			if t.Sampled {
				s.Lines = append(s.Lines, mark.Sentence{Text: name + fmt.Sprintf("%s took up %s", wording.Counted(t.Sample.Tucks.V, "tuck"),
					w.length(p.Unit.Amount(t.Sample.Flat.V-t.Sample.Sewn.V)))})
			} else if sheet.WantsSample(t) {
				s.Lines = append(s.Lines, mark.Sentence{Text: strings.TrimSuffix(name, " "), Blank: true})
			}
		}
	}
	return s
}
