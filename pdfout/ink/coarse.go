package ink

import (
	"tuckmark/marking/plane"
)

// PictureDetail is the size, in mm, of what lines in pictures leave out.
const PictureDetail = 0.12

// Coarse leaves out points nearer than least to the one kept before them; it
// keeps both ends.
func Coarse(p plane.Path, least float64) plane.Path {
	var kept plane.Path
	for i, q := range p {
		if i == 0 || i == len(p)-1 || q.Distance(kept[len(kept)-1]) >= least {
			kept = append(kept, q)
		}
	}
	return kept
}
