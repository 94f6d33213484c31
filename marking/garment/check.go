package garment

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Check works out every line of every piece, and what joins them. It goes on
// after a mistake as far as the mistake allows, and reports all it finds together, as
// Faults.
func Check(spec *source.Spec) (*Pattern, error) {
	pattern := &Pattern{
		Title:      spec.Title.V,
		Size:       spec.Size.V,
		Unit:       spec.Unit.V,
		ClothWidth: spec.ClothWidth.V,
		SeeThrough: spec.SeeThrough.V,
		Transfers:  spec.UsualTransfers(),
		Sleepwear:  spec.Sleepwear,
		Sewing:     spec.Sewing.Settings(),
	}
	found := &piece.Findings{Unit: spec.Unit.V}
	piece.CheckNames(spec, found)
	for _, ps := range spec.Pieces {
		if p := piece.Check(ps, spec, found); p != nil {
			pattern.Pieces = append(pattern.Pieces, *p)
		}
	}
	if checkNamesAlong(spec, found) && len(found.List) == 0 {
		pattern.checkGarment(spec, found)
	}
	if len(found.List) > 0 {
		return nil, found.List.Sorted()
	}
	remarkOmissions(pattern, spec)
	for i := range pattern.Pieces {
		pattern.Remarks = append(pattern.Remarks, pattern.Pieces[i].Remarks(spec.Unit.V)...)
	}
	pattern.remarkGarment()
	return pattern, nil
}

// remarkOmissions notes what a maker may have left out.
func remarkOmissions(p *Pattern, spec *source.Spec) {
	if !spec.Unit.Given() {
		p.Remarks = append(p.Remarks, piece.Remark{Place: fault.Place{File: spec.File}, Text: `no unit is given, so bare numbers were taken for inches; unit = "in", "cm" or "mm" says it`})
	}
	for _, piece := range p.Pieces {
		for _, e := range piece.Edges {
			if e.Allowance > 0 {
				return
			}
		}
	}
	p.Remarks = append(p.Remarks, piece.Remark{Place: fault.Place{File: spec.File}, Text: `no edge has an allowance or a hem, so there are no stitch lines; allowance = "3/8" at the top gives one to every edge`})
}
