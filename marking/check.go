package marking

import (
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/source"
)

// Check works out every line of every piece, and what joins them, and turns a Spec into
// a Pattern. It goes on after a mistake as far as the mistake allows, and reports all it
// finds together, as a fault.List. What is no mistake but may not be meant becomes a
// remark of the pattern, and so does what of it does not lie on its cloth.
func Check(spec *source.Spec) (*garment.Pattern, error) {
	pattern, err := garment.Check(spec)
	if err != nil {
		return nil, err
	}
	whole := *pattern
	whole.Remarks = slices.Concat(pattern.Remarks, lay.Remarks(pattern))
	return &whole, nil
}
