package figures

import (
	"fmt"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/marking/wording"
)

// Rules of this file. How a garment was sewn is written down, so that it can be done
// again: what the file says, and a line to write on for what it leaves out.

// settingSection notes how the garment is sewn.
func settingSection(p *garment.Pattern, w writer) mark.Section {
	s := mark.Section{Title: "Settings to keep"}
	note := func(name, value string) {
		if value == "" {
			s.Lines.Ask(name + ":")
		} else {
			s.Lines.Say("%s: %s", name, value)
		}
	}
	for _, one := range p.Sewing {
		note(one.Name, one.Value)
	}
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		for _, t := range piece.TuckRows {
			took := ""
			if t.Sampled {
				took = fmt.Sprintf("%s took up %s", wording.Counted(t.Sample.Tucks.V, "tuck"), w.length(p.Unit.Amount(t.Sample.Flat.V-t.Sample.Sewn.V)))
			}
			if t.Sampled || sheet.WantsSample(piece, t) {
				note(fmt.Sprintf("sample of the %s of %s", t.Called(), piece.Name), took)
			}
		}
	}
	for _, line := range sheet.SampleLines(p) {
		s.Lines.Hint("once the sample is sewn, write %s", line)
	}
	return s
}
