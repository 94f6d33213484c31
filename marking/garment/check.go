package garment

import (
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Check works out every line of every piece, and what joins them. Of a Spec that no file
// could have brought it says only that. Else it goes on after a mistake as far as the
// mistake allows, and reports all it finds together. Either error is a fault.List.
func Check(spec *source.Spec) (*Pattern, error) {
	if faults := spec.Faults(); len(faults) > 0 {
		return nil, faults.Sorted()
	}
	pattern := &Pattern{
		Files:      append([]string{spec.File}, spec.Others...),
		View:       spec.View,
		Views:      spec.Views,
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
	found.TellUsual(spec.Allowance)
	checkNames(spec, found)
	if len(found.List) == 0 {
		join(pattern, spec, found)
	}
	if len(found.List) > 0 {
		return nil, found.List.Sorted()
	}
	pattern.Measures = measures(pattern, spec.Fit)
	pattern.Remarks = remarks(pattern, spec)
	return pattern, nil
}

// joiner works out what joins the pieces of a pattern and is sewn to them, once all
// pieces have been worked out and every name stands for something.
type joiner struct {
	*Pattern
	spec   *source.Spec
	names  source.Names // of that
	found  *piece.Findings
	cuts   map[*piece.Piece][]float64 // how long the edges of a piece are as they are cut
	ties   ties
	points int // of all that is joined, each as often as it is named
}

// join adds to a pattern all that joins its pieces and is sewn to them, but for what
// cannot be made.
func join(p *Pattern, spec *source.Spec, found *piece.Findings) {
	j := joiner{Pattern: p, spec: spec, names: spec.Names(), found: found, cuts: map[*piece.Piece][]float64{}}
	if j.ties = j.allTies(); j.points > mostSewnAlong {
		return
	}
	for _, s := range spec.Seams {
		p.Seams = append(p.Seams, j.seam(s))
	}
	for _, s := range spec.Trims {
		p.Trims = append(p.Trims, j.trim(s))
	}
	for _, s := range spec.Ruffles {
		p.Ruffles = append(p.Ruffles, j.ruffle(s))
	}
	for _, s := range spec.Bindings {
		p.Bindings = append(p.Bindings, j.binding(s))
	}
}
